export * from './digConditions.js';
export * from './digging.js';
export * from './gravelLeftOut.js';
export * from './heave.js';
export * from './hole.js';
export * from './openFactAt.js';
export * from './sides.js';
export * from './wetDig.js';
