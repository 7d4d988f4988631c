import { describe, expect, test } from 'vitest';
import { CHECKS } from '../checks/index.js';
import { everyFormula, everyMethod } from './rooms.js';

const all = Object.values(CHECKS).flat();

describe.each(Object.entries(CHECKS))('%s against the outside', (_, checks) => {
  test.each(checks.map((c) => [`${c.what} — ${c.source}`, c] as const))('%s', (_, check) => {
    expect(Math.abs(check.ours() - check.expected)).toBeLessThanOrEqual(check.tolerance);
  });
});

test('every formula has a source, and a check against something published or exact', () => {
  const covered = new Set(all.filter((c) => c.kind !== 'recalled').flatMap((c) => c.covers));
  for (const [name, formula] of Object.entries(everyFormula)) {
    expect(formula.source, name).toMatch(/\w{4}/);
    expect(covered, name).toContain(name);
  }
});

test('a check names formulas and methods that exist', () => {
  const others = new Set(['calendarOf', 'rootZoneBalance']);
  const known = { ...everyFormula, ...everyMethod };
  for (const name of all.flatMap((c) => c.covers)) if (!others.has(name)) expect(known).toHaveProperty(name);
});

/** Published sources of a group, rows of one table or example counted once. */
const published = (group: string) =>
  new Set(CHECKS[group].filter((c) => c.kind === 'published').map((c) => c.source.replace(/ \(.*/, ''))).size;

test('at least 25 published sources, four or more each for soil, water, uplift and drain', () => {
  const groups = Object.fromEntries(Object.keys(CHECKS).map((g) => [g, published(g)]));
  for (const g of ['soil', 'water', 'uplift', 'drain']) expect(groups[g], g).toBeGreaterThanOrEqual(4);
  expect(Object.values(groups).reduce((a, b) => a + b, 0)).toBeGreaterThanOrEqual(25);
});
