export * from './changeWords.js';
export * from './drainWords.js';
export * from './monthWords.js';
export * from './say.js';
