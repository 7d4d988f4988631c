import fc from 'fast-check';
import { unit as mathjsUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { type Dimension, parseQuantity, QuantityError, readQuantity } from '../../lib/units/index.js';

const FOOT = 0.3048;
const INCH = 0.0254;

describe('what people write', () => {
  // Feet and inches worked by hand from 1 in = 25.4 mm exactly.
  test.each([
    ['0.95 m', 0.95],
    ['95cm', 0.95],
    ['.5 m', 0.5],
    ['1 m 20 cm', 1.2],
    ['3 ft 2 1/2 in', 38.5 * INCH],
    [`3'2"`, 38 * INCH],
    [`3' 2"`, 38 * INCH],
    [`3'-2 1/2"`, 38.5 * INCH],
    ['3ft2in', 38 * INCH],
    ['3′ 2½″', 38.5 * INCH],
    [`3''`, 3 * INCH],
    ['38"', 38 * INCH],
    ['1 1/2 in', 1.5 * INCH],
    ['1-1/2 in.', 1.5 * INCH],
    ['½ in', 0.5 * INCH],
    ['99 ft 10 in', 1198 * INCH],
    ['2 yards 1 foot', 7 * FOOT],
    ['-0.4 m', -0.4],
    ['−2.5 in', -2.5 * INCH],
    ['-3 ft 2 in', -38 * INCH],
    ['+5 cm', 0.05],
    ['0,95 m', 0.95],
    ['0,950 m', 0.95],
    ['12,5 cm', 0.125],
    ['1,2345 m', 1.2345],
    ['1234,567 m', 1234.567],
    ['1,200.5 m', 1200.5],
    ['1,200,300 mm', 1200.3],
    ['1.200,5 m', 1200.5],
    ['12\u202f345 m', 12_345],
  ])('length %s', (text, metres) => {
    expect(parseQuantity(text, 'length')).toBeCloseTo(metres, 12);
  });

  test.each<[string, Dimension, number]>([
    ['12 m²', 'area', 12],
    ['12 sq. ft.', 'area', 12 * FOOT ** 2],
    ['2 ft²', 'area', 2 * FOOT ** 2],
    ['300 L', 'volume', 0.3],
    ['2 cu yd', 'volume', 2 * (3 * FOOT) ** 3],
    ['2 h 30 min', 'time', 9000],
    ['10 days', 'time', 864_000],
    ['1e-7 cm/s', 'speed', 1e-9],
    ['1×10⁻⁷ cm/s', 'speed', 1e-9],
    ['2 x 10^-9 m/s', 'speed', 2e-9],
    ['10^-8 m/s', 'speed', 1e-8],
    ['8,64 mm per day', 'speed', 1e-7],
    ['0.06 in/hr', 'speed', (0.06 * INCH) / 3600],
    ['3 m3/d', 'flow', 3 / 86_400],
    ['12 L/min', 'flow', 0.0002],
    ['60 kPa', 'pressure', 60_000],
    ['2 %', 'fraction', 0.02],
    ['2', 'fraction', 0.02],
    ['68 °F', 'temperature', 20],
    ['-3.5 C', 'temperature', -3.5],
    ['52°', 'angle', 52],
    ['7', 'none', 7],
  ])('%s as %s', (text, dimension, value) => {
    expect(parseQuantity(text, dimension, dimension === 'fraction' ? '%' : undefined)).toBeCloseTo(value, 12);
  });

  test.each([
    ['1,200', 'comma', 1.2],
    ['1.200,5', 'comma', 1200.5],
    ['0.95', 'comma', 0.95],
    ['1.200.300', 'comma', 1_200_300],
    ['1.2000', 'either', 1.2],
    ['1.200', 'point', 1.2],
  ] as const)('%s where the sign before decimals is: %s', (text, decimals, value) => {
    expect(readQuantity(text, 'length', 'm', decimals).value).toBeCloseTo(value, 9);
  });

  test.each([
    ['1.200', 'comma', 'Write 1200 or 1,200.'],
    ['1,200', 'either', 'Write 1200 or 1.2000.'],
    ['1.200 m', 'either', 'Write 1200 or 1.2000.'],
    ['(0.4)', 'point', 'Write 0.4, and in the note that it is a guess; or -0.4.'],
    ['~0.4 m', 'point', 'Write 0.4 m, and in the note that it is a guess.'],
  ] as const)('%s is refused with what each reading is written like (%s)', (text, decimals, remedy) => {
    expect(() => readQuantity(text, 'length', 'm', decimals)).toThrow(
      expect.objectContaining({ remedy }) as never,
    );
  });

  test('a bare number takes the default unit, and says so', () => {
    expect(readQuantity('43', 'length', 'cm')).toEqual({ value: 0.43, units: [] });
    expect(readQuantity('1 1/2', 'length', 'in')).toEqual({ value: expect.closeTo(0.0381, 12), units: [] });
    expect(readQuantity('50', 'temperature', 'F').value).toBeCloseTo(10, 12);
  });

  test('its own unit goes before the default', () => {
    expect(readQuantity('3 ft 2 in', 'length', 'm')).toEqual({
      value: expect.closeTo(38 * INCH, 12),
      units: ['ft', 'in'],
    });
  });
});

describe('what is refused', () => {
  test.each<[string, Dimension, string, RegExp]>([
    ['', 'length', 'missing-value', /Write a number/],
    ['3', 'length', 'missing-unit', /Write m, cm, mm, ft or in/],
    [`3' 2`, 'length', 'missing-unit', /behind every number/],
    ['3-4 in', 'length', 'missing-unit', /behind every number/],
    ['1 200 m', 'length', 'missing-unit', /behind every number/],
    ['1,200 m', 'length', 'ambiguous-comma', /Write 1200 or 1\.200\./],
    ['4 ft head', 'length', 'invalid-number', /nothing else/],
    ['3 qm', 'length', 'unknown-unit', /Use m, cm/],
    ['3 m2', 'length', 'wrong-unit', /Use m, cm/],
    ['5 %', 'length', 'wrong-unit', /Use m, cm/],
    ['2 m', 'area', 'wrong-unit', /Use m2 or ft2/],
    ['2 m/s/s', 'speed', 'unknown-unit', /Use m\/s/],
    ['2 m/d', 'flow', 'wrong-unit', /Use m3\/d/],
    ['5 m', 'none', 'wrong-unit', /no unit/],
    ['3 x 100', 'none', 'unknown-unit', /no unit/],
    ['3 ft 14 in', 'length', 'invalid-number', /one unit/],
    ['3.5 ft 2 in', 'length', 'invalid-number', /one unit/],
    ['2 in 1 ft', 'length', 'invalid-number', /one unit/],
    ['1 m 2 in', 'length', 'invalid-number', /one unit/],
    ['1,2,3 m', 'length', 'invalid-number', /decimal point/],
    ['1..2 m', 'length', 'invalid-number', /decimal point/],
    ['1/0 in', 'length', 'invalid-number', /fraction/],
    ['NaN', 'length', 'invalid-number', /one number/],
    ['Infinity m', 'length', 'invalid-number', /one number/],
    ['1e999', 'none', 'invalid-number', /power of ten/],
    ['1e999 m', 'length', 'invalid-number', /power of ten|decimal point/],
    ['about 3 m', 'length', 'invalid-number', /that it is a guess/],
    ['3 m deep', 'length', 'invalid-number', /nothing else/],
    ['0x10 m', 'length', 'unknown-unit', /Use m, cm/],
    ['--3 m', 'length', 'invalid-number', /nothing else/],
  ])("'%s' as %s: %s", (text, dimension, code, remedy) => {
    const error = catchError(() => parseQuantity(text, dimension));
    expect(error.code).toBe(code);
    expect(error.message).toMatch(/^(invalid|unknown|missing)/);
    expect(error.message).toContain(error.found);
    expect(error.remedy).toMatch(remedy);
    expect(error.remedy).toMatch(/\.$/);
  });
});

describe('factors agree with an independent table (mathjs)', () => {
  // mathjs rounds the acre, the gallon and the pound force to 6 to 10 figures, hence the tolerance.
  test.each<[string, string, Dimension, string]>([
    ['1 m', 'm', 'length', 'm'],
    ['1 cm', 'cm', 'length', 'm'],
    ['1 mm', 'mm', 'length', 'm'],
    ['1 km', 'km', 'length', 'm'],
    ['1 ft', 'ft', 'length', 'm'],
    ['1 in', 'in', 'length', 'm'],
    ['1 yd', 'yd', 'length', 'm'],
    ['1 ha', 'hectare', 'area', 'm^2'],
    ['1 ft2', 'ft^2', 'area', 'm^2'],
    ['1 in2', 'in^2', 'area', 'm^2'],
    ['1 yd2', 'yd^2', 'area', 'm^2'],
    ['1 acre', 'acre', 'area', 'm^2'],
    ['1 L', 'L', 'volume', 'm^3'],
    ['1 ml', 'mL', 'volume', 'm^3'],
    ['1 gal', 'gallon', 'volume', 'm^3'],
    ['1 ft3', 'ft^3', 'volume', 'm^3'],
    ['1 yd3', 'yd^3', 'volume', 'm^3'],
    ['1 week', 'week', 'time', 's'],
    ['1 day', 'day', 'time', 's'],
    ['1 h', 'h', 'time', 's'],
    ['1 min', 'minute', 'time', 's'],
    ['1 in/h', 'in/h', 'speed', 'm/s'],
    ['1 ft/d', 'ft/day', 'speed', 'm/s'],
    ['1 gpm', 'gallon/minute', 'flow', 'm^3/s'],
    ['1 gph', 'gallon/hour', 'flow', 'm^3/s'],
    ['1 gal/day', 'gallon/day', 'flow', 'm^3/s'],
    ['1 cfs', 'ft^3/s', 'flow', 'm^3/s'],
    ['1 kPa', 'kPa', 'pressure', 'Pa'],
    ['1 bar', 'bar', 'pressure', 'Pa'],
    ['1 psi', 'psi', 'pressure', 'Pa'],
    ['1 psf', 'lbf/ft^2', 'pressure', 'Pa'],
    ['1 rad', 'rad', 'angle', 'deg'],
  ])('%s', (text, theirs, dimension, si) => {
    const expected = mathjsUnit(`1 ${theirs}`).toNumber(si);
    expect(parseQuantity(text, dimension) / expected).toBeCloseTo(1, 5);
  });

  test('exact by definition (NIST SP 811, from memory)', () => {
    expect(parseQuantity('1 gal', 'volume')).toBeCloseTo(3.785411784e-3, 17);
    expect(parseQuantity('1 psf', 'pressure')).toBeCloseTo(47.88025898, 8);
    expect(parseQuantity('1 tsf', 'pressure')).toBeCloseTo(2000 * 47.88025898, 4);
    expect(parseQuantity('1 acre', 'area')).toBeCloseTo(4046.8564224, 9);
    expect(parseQuantity('1 kgf/cm2', 'pressure')).toBe(98_066.5);
  });
});

function catchError(run: () => unknown): QuantityError {
  try {
    run();
  } catch (error) {
    if (error instanceof QuantityError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

test('the same amount is the same number in whatever unit it is written', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -99_999, max: 99_999 }),
      fc.integer({ min: 0, max: 4 }),
      (figures, down) => {
        const metres = figures / 10 ** down;
        const inches = `${metres / 0.0254} in`;
        expect(parseQuantity(inches, 'length')).toBe(parseQuantity(String(metres), 'length', 'm'));
        expect(parseQuantity(`${metres * 1000}`, 'length', 'mm')).toBe(
          parseQuantity(`${metres} m`, 'length'),
        );
        const celsius = figures / 1000;
        expect(parseQuantity(`${celsius * 1.8 + 32} F`, 'temperature')).toBe(
          parseQuantity(`${celsius} C`, 'temperature'),
        );
      },
    ),
  );
  // Freezing is freezing: 32 °F is no fraction of a degree above 0 °C.
  expect(parseQuantity('32', 'temperature', 'F')).toBe(0);
});

test.each(['1.2¹', '0.9⁵ m', '3² m', '1.2²³'])(
  'a superscript behind a digit, %s, is no digit of it',
  (text) => {
    expect(() => parseQuantity(text, 'length', 'm')).toThrow(QuantityError);
    expect(parseQuantity('10⁻⁷ m/s', 'speed')).toBeCloseTo(1e-7, 20);
  },
);
