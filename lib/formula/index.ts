export { catalogue } from './catalogue.js';
export { GRAVITY, LEVEL_RESOLUTION, SECONDS_PER_DAY, UNIT_WEIGHT_OF_WATER } from './constants.js';
export { type Formula, FormulaError, formula, type Parameter } from './formula.js';
export { type Method, method } from './method.js';
export { recorder, type Step, type Use, unrecorded } from './recorder.js';
