export * from './calendar.js';
export * from './extraterrestrialRadiation.js';
export * from './hargreaves.js';
export * from './record.js';
export * from './rootZone.js';
export * from './snow.js';
