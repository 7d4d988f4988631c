export * from './bank.js';
export * from './drainFor.js';
export * from './linerEdge.js';
export * from './loweredGround.js';
export * from './pondGoods.js';
export * from './storm.js';
