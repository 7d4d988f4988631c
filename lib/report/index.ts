export * from './cost.js';
export * from './lowerToday.js';
export * from './nextDoor.js';
export * from './reportOf.js';
export * from './resultOf.js';
export * from './work.js';
export * from './workedFrom.js';
export * from './workedSheet.js';
