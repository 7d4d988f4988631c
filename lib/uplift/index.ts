export * from './ballast.js';
export * from './floorHeave.js';
export * from './netHead.js';
export * from './pondShape.js';
export * from './sideStability.js';
export * from './timeToLift.js';
