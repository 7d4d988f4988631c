export * from './openWater.js';
export * from './pondBalance.js';
export * from './pondStage.js';
