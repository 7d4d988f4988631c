/** Pipes in plain clay under a tight floor by closed forms: what the mapped pit and the section are held against. */
import { headLeftInPit, pitMap } from '../../lib/seepage/index.js';

/**
 * Head that one pipe takes off a floor level with the water outside, by flow a metre over the conductivity, m, twice the
 * depth of the pipe over the width, and distance from the middle over half the width.
 */
export function lonePipeRelief(flow: number, depth: number, x: number): number {
  const [c, s] = [Math.sqrt(1 + depth ** 2), Math.sqrt(1 - x ** 2)];
  return (flow / (2 * Math.PI)) * Math.log((c + s) / (c - s));
}

/** Head taken off at the pipe itself; `width` of the floor over twice the radius of the pipe. */
export function lonePipeDrawdown(flow: number, depth: number, width: number): number {
  return (flow / (2 * Math.PI)) * Math.log((2 * width * (1 + depth ** 2)) / depth);
}

/** Head left under a floor of a pit, level with the water outside where none is given. */
export function headLeftUnderFloor(
  width: number,
  pipes: Parameters<typeof headLeftInPit>[1],
  head: number,
  pit = { depth: 0, slope: 0 },
) {
  return headLeftInPit(pitMap({ width, ...pit }), pipes, head);
}
