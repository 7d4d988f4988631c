export * from './openWater.js';
export * from './pondBalance.js';
export * from './pondLosses.js';
export * from './pondStage.js';
