export * from './drainFor.js';
export * from './loweredGround.js';
export * from './storm.js';
