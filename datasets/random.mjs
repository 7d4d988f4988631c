/**
 * A seeded stream of random numbers, so that the invented records come out the same on every machine.
 * Generator: mulberry32 (32 bits of state, public domain). Normal: Box and Muller 1958.
 * Gamma: Marsaglia and Tsang 2000, "A simple method for generating gamma variables".
 */

/**
 * @param {number} seed any 32-bit integer
 * @returns {() => number} draws from [0, 1)
 */
export function mulberry32(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * @param {() => number} uniform
 * @returns {number} a draw of mean 0, standard deviation 1
 */
export function normal(uniform) {
  const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
  return radius * Math.cos(2 * Math.PI * uniform());
}

/**
 * @param {() => number} uniform
 * @param {number} shape above 0
 * @param {number} mean above 0
 * @returns {number} a draw above 0 with that mean and variance mean² / shape
 */
export function gamma(uniform, shape, mean) {
  const a = shape < 1 ? shape + 1 : shape;
  const d = a - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  let v;
  let accepted = false;
  do {
    const x = normal(uniform);
    v = (1 + c * x) * (1 + c * x) * (1 + c * x);
    accepted = v > 0 && Math.log(1 - uniform()) < (x * x) / 2 + d - d * v + d * Math.log(v);
  } while (!accepted);
  // Below shape 1 the draw for shape + 1 is thinned by U^(1/shape).
  const thinned = shape < 1 ? Math.exp(Math.log(1 - uniform()) / shape) : 1;
  return (d * v * thinned * mean) / shape;
}
