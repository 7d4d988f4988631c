export * from './candidates.js';
export * from './depthCurve.js';
export * from './lawfulOutlets.js';
export * from './options.js';
export * from './outlets.js';
