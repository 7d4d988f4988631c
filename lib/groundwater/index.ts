export * from './columnRun.js';
export * from './fitTable.js';
export * from './relief.js';
export * from './tableStore.js';
export * from './tub.js';
