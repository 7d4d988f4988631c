export * from './candidates.js';
export * from './cutoffDrain.js';
export * from './depthCurve.js';
export * from './lawfulOutlets.js';
export * from './option.js';
export * from './options.js';
export * from './outlets.js';
