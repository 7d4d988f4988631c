/** What makes the amounts of a list: volumes, areas and lengths, and what is bought over them for waste and laps. */
import { type Formula, formula, type Use } from '../formula/index.js';

const size = (meaning: string, unit = 'm', max = 500) => ({ meaning, unit, min: 0, max });

/** A layer. */
export const layerVolume = formula({
  title: 'Volume of a layer',
  symbol: 'V',
  unit: 'm³',
  expression: 'A*t',
  parameters: { A: size('area', 'm²', 1e4), t: size('thickness', 'm', 10) },
  compute: (A: number, t: number) => A * t,
  validity: 'even thickness',
  source: 'geometry',
});

/** What is dug or filled along a line, as deep at its end as at its beginning or not. */
export const trenchVolume = formula({
  title: 'Volume of a trench that comes up evenly',
  symbol: 'V',
  unit: 'm³',
  expression: 'L*w*(a + b)/2',
  parameters: {
    L: size('length'),
    w: size('width', 'm', 10),
    a: size('depth at its beginning', 'm', 10),
    b: size('depth at its end', 'm', 10),
  },
  compute: (L: number, w: number, a: number, b: number) => (L * w * (a + b)) / 2,
  validity: 'upright sides',
  source: 'geometry: a prism on a trapezium',
});

/** A pit. */
export const pitVolume = formula({
  title: 'Volume of a square pit',
  symbol: 'V',
  unit: 'm³',
  expression: 'a^2*d',
  parameters: { a: size('side', 'm', 10), d: size('depth', 'm', 10) },
  compute: (a: number, d: number) => a ** 2 * d,
  validity: 'upright sides',
  source: 'geometry',
});

/** Fabric around the stone in a trench. */
export const trenchLining = formula({
  title: 'Fabric over the bottom and up both sides of a trench',
  symbol: 'A',
  unit: 'm²',
  expression: 'L*(w + 2*t)',
  parameters: { L: size('length'), w: size('width', 'm', 10), t: size('height', 'm', 10) },
  compute: (L: number, w: number, t: number) => L * (w + 2 * t),
  validity: 'without what is folded over',
  source: 'geometry',
});

type Unit = 'm' | 'm²' | 'm³';

const wasted = (unit: Unit) =>
  formula({
    title: `Amount to buy, with waste and laps (${unit})`,
    symbol: 'B',
    unit,
    expression: 'a*(1 + w)',
    parameters: { a: size('amount as measured', unit, 1e5), w: size('waste and laps, as a share', '-', 1) },
    compute: (a: number, w: number) => a * (1 + w),
    validity: 'before it is rounded up to what is sold',
    source: 'common practice for the share',
  });

/** What is bought for what is measured, by its unit. */
export const withWaste = { m: wasted('m'), 'm²': wasted('m²'), 'm³': wasted('m³') };

function sumOf(unit: Unit, n: number): Formula {
  const parts = Array.from({ length: n }, (_, i) => `a${i + 1}`);
  return formula({
    title: `Together (${n}, ${unit})`,
    symbol: 'S',
    unit,
    expression: parts.join(' + '),
    parameters: Object.fromEntries(parts.map((part) => [part, { ...size('a part', unit, 1e5), min: -100 }])),
    compute: (...args: number[]) => args.reduce((sum, each) => sum + each, 0),
    validity: 'all of one unit',
    source: 'sum of what is put in',
  });
}

/**
 * Parts together; what is nought is none.
 * @param unit - of all of them
 * @param parts - 0 and more
 * @param use - what evaluates the formula, for a record
 * @returns their sum
 */
export function together(unit: Unit, parts: number[], use: Use): number {
  const some = parts.filter((part) => part !== 0);
  return some.length < 2 ? (some[0] ?? 0) : use(sumOf(unit, some.length), ...some);
}
