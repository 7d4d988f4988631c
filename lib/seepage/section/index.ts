export * from './conjugateGradients.js';
export * from './flows.js';
export * from './grid.js';
export * from './pipeHole.js';
export * from './sample.js';
export * from './saturated.js';
export * from './section.js';
export * from './soil.js';
