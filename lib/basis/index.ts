export * from './basis.js';
export * from './decidingWater.js';
export * from './keptPond.js';
export * from './onsets.js';
export * from './pondYear.js';
export * from './standing.js';
export * from './undrainedHeads.js';
