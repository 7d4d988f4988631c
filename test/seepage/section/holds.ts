import { expect } from 'vitest';
import {
  FAR_LEFT,
  FAR_RIGHT,
  linerUplift,
  type PondGround,
  pondSection,
  solveFreeSurface,
} from '../../../lib/seepage/section/index.js';
import { COARSE } from './randomGround.js';

/** What holds in any ground: the balance closes, outlets only let out, no head beyond those given. */
export function holds(ground: PondGround): void {
  const { section } = pondSection(ground, COARSE);
  const { head, contactFlow, flows } = solveFreeSurface(section);
  const fastest = Math.max(...section.soils.map((s) => s.across));
  // Where less moves than rounding in the fastest soil makes, a share of it says nothing.
  const closed = 1e-8 * flows.through + 1e-14 * fastest;
  expect(Math.abs(flows.imbalance) * flows.through).toBeLessThan(closed);
  const given = section.contacts.map((c) => c.head);
  const [low, high] = [Math.min(...given), Math.max(...given)];
  const rise = ground.rain > 0 ? Number.POSITIVE_INFINITY : high + 1e-6;
  for (const h of head) {
    if (Number.isNaN(h)) continue;
    expect(h).toBeGreaterThan(low - 1e-6);
    expect(h).toBeLessThan(rise);
  }
  section.contacts.forEach(({ outOnly, cell, head: level }, c) => {
    if (!outOnly) return;
    expect(contactFlow[c]).toBeGreaterThanOrEqual(0);
    if (head[cell] < level) expect(contactFlow[c]).toBe(0);
  });
}

/** What holds where both sides are alike: the answer is alike too. */
export function symmetric(ground: PondGround): void {
  const level = ground.far.left - ground.surface[0].z;
  const flat = ground.surface.map(({ x }) => ({ x, z: 0 }));
  const even = { ...ground, surface: flat, far: { left: level, right: level } };
  const pond = pondSection(even, COARSE);
  const state = solveFreeSurface(pond.section);
  const { out, through } = state.flows;
  expect(Math.abs(out[FAR_LEFT] - out[FAR_RIGHT])).toBeLessThan(1e-5 * through + 1e-14);
  const along = linerUplift(pond, state);
  along.forEach(({ head }, i) => {
    expect(Math.abs(head - along[along.length - 1 - i].head)).toBeLessThan(1e-4);
  });
}
