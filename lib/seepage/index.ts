export * from './discInflow.js';
export * from './dupuit.js';
export * from './hvorslev.js';
