import { erfc } from './errorFunction.js';
import { polynomial } from './polynomial.js';

const CENTRE_OVER = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
  1971.5909503065513, 133.14166789178438, 3.3871328727963665,
];
const CENTRE_UNDER = [
  5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
  687.1870074920579, 42.31333070160091, 1,
];
const TAIL_OVER = [
  0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const TAIL_UNDER = [
  1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const FAR_OVER = [
  2.0103343992922881e-7, 0.000027115555687434876, 0.0012426609473880784, 0.026532189526576124,
  0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const FAR_UNDER = [
  2.0442631033899397e-15, 1.421511758316446e-7, 0.000018463183175100548, 0.0007868691311456133,
  0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
];

/**
 * Standard normal quantile, by algorithm AS 241 (Wichura 1988, Applied Statistics 37, 477): relative error about 1e-16.
 * @param p - chance of a lower value, 0 to 1
 * @returns in standard deviations; −∞ at 0, ∞ at 1
 */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(CENTRE_OVER, r)) / polynomial(CENTRE_UNDER, r);
  }
  const tail = q < 0 ? p : 1 - p;
  if (tail === 0) return q < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const r = Math.sqrt(-Math.log(tail));
  const z =
    r <= 5
      ? polynomial(TAIL_OVER, r - 1.6) / polynomial(TAIL_UNDER, r - 1.6)
      : polynomial(FAR_OVER, r - 5) / polynomial(FAR_UNDER, r - 5);
  return q < 0 ? -z : z;
}

/**
 * Standard normal distribution function.
 * @param z - in standard deviations
 * @returns chance of a lower value, 0 to 1
 */
export function normalCdf(z: number): number {
  return 0.5 * erfc(-z / Math.SQRT2);
}
