import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  formatBound,
  formatQuantity,
  InputError,
  parseQuantity,
  type QuantityKind,
  type UnitSystem,
} from '../../lib/units/index.js';

const INCH = 0.0254;

test.each<[number, QuantityKind, string, string]>([
  [0.95, 'length', '0.95 m', '3 ft 1 1/2 in'],
  [0.045, 'length', '4.5 cm', '1 3/4 in'],
  [0.0025, 'length', '2.5 mm', '1/8 in'],
  [3e-5, 'length', '0.03 mm', '0.001 in'],
  [0.0999, 'length', '0.10 m', '4 in'],
  [0, 'length', '0 mm', '0 in'],
  [12_345.678, 'length', '12\u202f345.68 m', '40\u202f504 ft 2 1/2 in'],
  [0.045, 'depth', '0.05 m', '1 3/4 in'],
  [-0.0042, 'depth', '−0.004 m', '−3/16 in'],
  [-0.35, 'level', '−0.35 m', '−1 ft 2 in'],
  [0.35, 'level', '+0.35 m', '+1 ft 2 in'],
  [0.045, 'level', '+0.05 m', '+1 3/4 in'],
  [-0.0042, 'level', '−0.004 m', '−3/16 in'],
  [0, 'level', '0 m', '0 in'],
  [12.34, 'area', '12.3 m²', '133 ft²'],
  [0.5, 'volume', '500 L', '132 gal'],
  [0.9996, 'volume', '1 m³', '264 gal'],
  [3, 'bulk', '3 m³', '3.92 yd³'],
  [2e-7, 'flow', '17.3 L/day', '4.56 gal/day'],
  [1e-3, 'flow', '86.4 m³/day', '22\u202f800 gal/day'],
  [1e-8, 'permeability', '1.0×10⁻⁸ m/s (0.86 mm/day)', '1.0×10⁻⁸ m/s (0.034 in/day)'],
  [0, 'permeability', '0 m/s (0 mm/day)', '0 m/s (0 in/day)'],
  [3000, 'pressure', '3 kPa', '62.7 lb/ft²'],
  [-500, 'pressure', '−0.5 kPa', '−10.4 lb/ft²'],
  [0.025, 'fraction', '2.5 %', '2.5 %'],
  [1800, 'time', '30 min', '30 min'],
  [36_000, 'time', '10 h', '10 h'],
  [864_000, 'time', '10 days', '10 days'],
  [-3.2, 'temperature', '−3.2 °C', '26.2 °F'],
])('%d as %s', (value, kind, metric, us) => {
  expect(formatQuantity(value, kind, 'metric')).toBe(metric);
  expect(formatQuantity(value, kind, 'us')).toBe(us);
});

test('inches never reach twelve', () => {
  for (let sixteenths = 1; sixteenths < 16 * 48; sixteenths++) {
    for (const nudge of [-1e-9, 0, 1e-9, INCH / 33]) {
      expect(formatQuantity((sixteenths * INCH) / 16 + nudge, 'length', 'us')).not.toMatch(/(^|ft )12 in/);
    }
  }
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is never shown', (value) => {
  expect(() => formatQuantity(value, 'length', 'metric')).toThrow(InputError);
});

describe('what is shown reads back to the rounding shown', () => {
  // kind, dimension, largest value, relative rounding, absolute rounding
  const kinds: [QuantityKind, Dimension, number, number, number][] = [
    ['length', 'length', 1000, 0.06, INCH / 4],
    ['level', 'length', 1000, 0.06, INCH / 4],
    ['area', 'area', 1e5, 0.0051, 0],
    ['volume', 'volume', 1e5, 0.0051, 0],
    ['bulk', 'volume', 1e5, 0.0051, 0],
    ['flow', 'flow', 10, 0.0051, 0],
    ['permeability', 'speed', 0.1, 0.051, 0],
    ['pressure', 'pressure', 1e6, 0.0051, 0],
    ['fraction', 'fraction', 1, 0.0051, 0],
    ['time', 'time', 1e9, 0.0051, 0],
    ['temperature', 'temperature', 60, 0, 0.051],
  ];
  test.each(kinds)('%s', (kind, dimension, largest, relative, absolute) => {
    const value = fc.oneof(
      fc.double({ min: -largest, max: largest, noNaN: true }),
      fc
        .tuple(fc.constantFrom(-1, 1), fc.double({ min: -9, max: 0, noNaN: true }))
        .map(([sign, power]) => sign * largest * 10 ** power),
    );
    fc.assert(
      fc.property(value, fc.constantFrom<UnitSystem>('metric', 'us'), (si, system) => {
        const shown = formatQuantity(si, kind, system).replace(/ \(.*/, '');
        const back = parseQuantity(shown, dimension);
        expect(Math.abs(back - si), shown).toBeLessThanOrEqual(relative * Math.abs(si) + absolute + 1e-12);
      }),
      { seed: 20_241_103, numRuns: 300 },
    );
  });

  test('a length in feet and inches is the nearest mark of the tape', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3048, max: 100, noNaN: true }), (si) => {
        expect(
          Math.abs(parseQuantity(formatQuantity(si, 'length', 'us'), 'length') - si),
        ).toBeLessThanOrEqual(INCH / 4 + 1e-9);
      }),
      { seed: 20_241_103 },
    );
  });
});

describe.each<UnitSystem>(['metric', 'us'])('a bound in %s', (system) => {
  const read = (text: string) => parseQuantity(text.replace(/^\+/, ''), 'length');

  test('never promises more than there is, nor asks for less than there must be', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.constantFrom('length', 'level'),
        (si, kind) => {
          const down = read(formatBound(si, kind, system, 'down'));
          const up = read(formatBound(si, kind, system, 'up'));
          expect(down).toBeLessThanOrEqual(si + 1e-7);
          expect(up).toBeGreaterThanOrEqual(si - 1e-7);
          // No coarser than the mark of the tape.
          expect(up - down).toBeLessThanOrEqual((system === 'us' ? INCH / 2 : 0.01) + 1e-7);
        },
      ),
    );
  });

  test('is what it is where it lies on a mark', () => {
    for (const mark of system === 'us' ? [INCH / 8, 5 * INCH, 20.5 * INCH] : [0.0031, 0.047, 1.37])
      for (const side of ['down', 'up'] as const)
        expect(formatBound(mark, 'length', system, side)).toBe(formatQuantity(mark, 'length', system));
  });
});

test('a bound that does not exist is refused', () => {
  expect(() => formatBound(Number.NaN, 'level', 'metric', 'up')).toThrow(InputError);
});
