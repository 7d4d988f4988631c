export * from './carrying.js';
export * from './chance.js';
export * from './countedYears.js';
export * from './depths.js';
export * from './drivers.js';
export * from './monthlyLimits.js';
export * from './upliftCheck.js';
export * from './verdict.js';
