export * from './earthworks.js';
export * from './envelope.js';
export * from './inflow.js';
export * from './pipe.js';
export * from "./design.js";
