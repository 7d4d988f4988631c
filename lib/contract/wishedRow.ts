import type { Report } from './report.js';

/** Row of the digging window nearest to the depth wished. */
export function wishedRow({ digging, pond }: Report): number {
  const off = digging!.depths.map((depth) => Math.abs(depth - pond.depth_m));
  return off.indexOf(Math.min(...off));
}
