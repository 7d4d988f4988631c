export * from './chooseTableModel.js';
export * from './columnRun.js';
export * from './fitTable.js';
export * from './relief.js';
export * from './tableModels.js';
export * from './tableStore.js';
export * from './tub.js';
export * from './waterTablePlane.js';
