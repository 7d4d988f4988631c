import { expect, test } from 'vitest';
import { formula } from '../../lib/formula/index.js';

const speed = formula({
  title: 'Mean speed',
  symbol: 'v',
  unit: 'm/s',
  expression: 's/t',
  parameters: {
    s: { meaning: 'way', unit: 'm', min: 0, max: 1e6 },
    t: { meaning: 'time', unit: 's', min: 1, max: 1e6 },
  },
  compute: (s: number, t: number) => s / t,
  validity: 'any',
  source: 'definition',
});

test('a formula takes its own symbols: a wrong or a missing one fails in the editor, and when it runs', () => {
  expect(speed.of({ s: 6, t: 3 })).toBe(2);
  // @ts-expect-error: it is called t
  expect(() => speed.of({ s: 6, time: 3 })).toThrow('unknown argument time; it takes s, t');
  // @ts-expect-error: without a time there is no speed
  expect(() => speed.of({ s: 6 })).toThrow('missing t (s)');
});
