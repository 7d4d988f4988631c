export * from './latinHypercube.js';
export * from './normal.js';
export * from './percentile.js';
export * from './uniforms.js';
