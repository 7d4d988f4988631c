export * from './drainablePorosity.js';
export * from './estimate.js';
export * from './permeability.js';
export * from './saxtonRawls.js';
export * from './textureClass.js';
export * from './typicalComposition.js';
export * from './undrainedStrength.js';
export * from './words.js';
