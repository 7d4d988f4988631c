/** Parts of a pond in its ground: what is filled back, bed and pipe, and where floor is left out. */
import type { Report } from '../contract/index.js';
import { box, paint, path } from './drawing.js';
import { px } from './svgParts.js';
import type { WaterPanel } from './waterPanels.js';

/** Where a panel draws: pixels of a place and of a level, and the pond's own measures, m. */
export interface Places {
  X: (metres: number) => number;
  Y: (level: number) => number;
  wide: number;
  inset: (level: number) => number;
  floor: number;
}

/** Loose fill round the liner. */
export function ringParts(
  { raise_m }: WaterPanel,
  { pond }: Report,
  { X, Y, wide, inset, floor }: Places,
): string[] {
  const w = pond.ring_width_m;
  const top = Math.min(raise_m, 0);
  const foot = Math.max(floor, raise_m - pond.ring_depth_m);
  const sides: [number, number][][] = [
    [
      [-w, top],
      [0, raise_m],
      [inset(foot), foot],
      [inset(foot) - w, foot],
    ],
    [
      [wide + w, top],
      [wide, raise_m],
      [wide - inset(foot), foot],
      [wide - inset(foot) + w, foot],
    ],
  ];
  return sides.map(
    (side) =>
      `<path d="${path(
        side.map(([x, z]) => [X(x), Y(z)] as const),
        true,
      )}" ${paint('ring')}/>`,
  );
}

/** The bed under the floor and the pipe in it. */
export function drainParts(
  { row }: WaterPanel,
  { X, Y, wide, inset, floor }: Places,
  per_m: number,
): string[] {
  const [x0, x1] = [X(inset(floor)), X(wide - inset(floor))];
  const bed = Math.max(0.15, row.water?.which === 'drain' ? floor - row.water.level_m : 0);
  const r = Math.max(0.04 * per_m, 3.5);
  return [
    box('stone', x0, Y(floor), x1 - x0, bed * per_m),
    `<circle cx="${px((x0 + 3 * x1) / 4)}" cy="${px(Y(floor - bed) - r)}" r="${px(r)}" ${paint('paper')}/><circle cx="${px((x0 + 3 * x1) / 4)}" cy="${px(Y(floor - bed) - r)}" r="${px(r)}" ${paint('edge')} stroke-width="1.5"/>`,
  ];
}

/** Two waves where some of the floor is left out. */
export function breakParts(x: number, top: number, foot: number): string[] {
  const wave = (at: number) => {
    const steps = Math.max(2, Math.round((foot - top) / 14));
    const step = (foot - top) / steps;
    return `M${px(at)} ${px(top)}${Array.from({ length: steps }, (_, i) => `q${i % 2 ? -5 : 5} ${px(step / 2)} 0 ${px(step)}`).join('')}`;
  };
  return [
    `<path d="${wave(x)}" ${paint('erased')} stroke-width="8"/>`,
    `<path d="${wave(x - 4)}${wave(x + 4)}" ${paint('rule')} stroke-width="1"/>`,
  ];
}
