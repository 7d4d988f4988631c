export { formatBound, formatGap, formatQuantity, type QuantityKind, type UnitSystem } from './display.js';
export { QuantityError } from './error.js';
export { InputError } from './inputError.js';
export type { DecimalSign } from './number.js';
export { parseQuantity, readQuantity } from './quantity.js';
export { UnderpondError } from './underpondError.js';
export { type Dimension, FOOT, findUnit, INCH } from './unit.js';
