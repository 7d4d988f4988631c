export { formatBound, formatGap, formatQuantity, type QuantityKind, type UnitSystem } from './display.js';
export { QuantityError, type QuantityFault } from './error.js';
export type { DecimalSign } from './number.js';
export { parseQuantity, type Quantity, readQuantity } from './quantity.js';
export { type Dimension, EXAMPLES, findUnit } from './unit.js';
