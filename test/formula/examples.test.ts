import { describe, expect, test } from 'vitest';
import type { Formula } from '../../lib/formula/index.js';
import { CHECKS } from '../checks/index.js';
import { everyFormula } from './rooms.js';

/** Arguments with which a check evaluates one of the formulas it covers. */
function argumentsIn(run: () => number, f: Formula): number[][] {
  const { compute } = f;
  const seen: number[][] = [];
  f.compute = (...args: number[]) => {
    seen.push(args);
    return compute(...args);
  };
  try {
    run();
  } finally {
    f.compute = compute;
  }
  return seen;
}

const cited = Object.values(CHECKS)
  .flat()
  .filter(({ kind }) => kind !== 'exact')
  .flatMap((check) => check.covers.filter((name) => name in everyFormula).map((name) => ({ name, check })));

describe('every worked example cited passes through the checked form of its formula', () => {
  test.each(cited.map(({ name, check }) => [name, check.what, check] as const))(
    '%s: %s',
    (name, _, check) => {
      const f = everyFormula[name]!;
      for (const args of argumentsIn(check.ours, f)) {
        const named = Object.fromEntries(Object.keys(f.parameters).map((p, at) => [p, args[at]!]));
        expect(f.of(named)).toBe(f.compute(...args));
      }
    },
  );

  test('at least a third of all formulas have one', () => {
    const names = new Set(cited.map(({ name }) => name));
    // Sums and differences that only carry a number on have nothing outside to be held against.
    const carried = new Set(CHECKS['numbers carried on']!.flatMap(({ covers }) => covers));
    const others = Object.keys(everyFormula).filter((name) => !carried.has(name));
    expect(others.length).toBeGreaterThan(110);
    expect(names.size).toBeGreaterThan(others.length / 3);
  });
});
