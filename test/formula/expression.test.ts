import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { FormulaError } from '../../lib/formula/index.js';
import { uniforms } from '../../lib/sampling/index.js';
import { everyFormula, everyMethod } from './rooms.js';

describe.each(Object.entries(everyFormula))('%s', (name, f) => {
  test('the equation shown is the equation used', () => {
    const next = uniforms(name.length);
    let compared = 0;
    // Arguments that do not fit together are refused, and drawn again.
    for (let i = 0; compared < 200 && i < 20000; i++) {
      const scope = Object.fromEntries(
        Object.entries(f.parameters).map(([p, { min, max }]) => {
          const u = next();
          // Ranges over decades are walked in the logarithm.
          return [p, min > 0 && max / min > 1000 ? min * (max / min) ** u : min + u * (max - min)];
        }),
      );
      const values = Object.values(scope);
      if (f.together && !f.together.holds(...values)) {
        expect(() => f.of(scope)).toThrow(`${f.together.says} must hold`);
        continue;
      }
      if (f.together) expect(evaluate(f.together.says, { ...scope })).toBe(true);
      const shown = evaluate(f.expression, { ...scope });
      const used = f.compute(...values);
      expect(Number.isFinite(used)).toBe(true);
      expect(used).toBeCloseTo(shown, 12 - Math.ceil(Math.log10(Math.abs(shown) + 1)));
      expect(Math.abs(used - shown)).toBeLessThanOrEqual(1e-12 * Math.abs(shown));
      expect(f.of(scope)).toBe(used);
      compared++;
    }
    expect(compared).toBe(200);
  });

  test('says what it is and where it holds', () => {
    expect(f.title.length).toBeGreaterThan(4);
    expect(f.validity.length).toBeGreaterThan(4);
    for (const p of Object.values(f.parameters)) {
      expect(p.meaning.length).toBeGreaterThan(2);
      expect(p.min).toBeLessThan(p.max);
    }
    expect(f.compute.length).toBe(Object.keys(f.parameters).length);
  });

  test('refuses what is outside, unknown or missing, with the value and the range', () => {
    const [first, { min, unit }] = Object.entries(f.parameters)[0];
    const inside = Object.fromEntries(Object.entries(f.parameters).map(([p, q]) => [p, q.max]));
    expect(() => f.of({ ...inside, [first]: min - 1 })).toThrow(FormulaError);
    expect(() => f.of({ ...inside, [first]: min - 1 })).toThrow(`${min - 1} ${unit} is outside`);
    expect(() => f.of({ ...inside, [first]: Number.NaN })).toThrow('outside');
    expect(() => f.of({ ...inside, bogus: 1 })).toThrow('unknown argument bogus');
    const { [first]: _, ...rest } = inside;
    expect(() => f.of(rest)).toThrow(`missing ${first}`);
  });
});

test.each(Object.entries(everyMethod))(
  'method card %s says what, on which assumptions, from where',
  (_, m) => {
    expect(m.what.length).toBeGreaterThan(20);
    expect(m.assumptions.length).toBeGreaterThan(0);
    expect(m.source.length).toBeGreaterThan(5);
  },
);
