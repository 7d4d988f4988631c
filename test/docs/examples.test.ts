import * as underpond from 'underpond/node';
import { expect, test } from 'vitest';
import { publicApi } from './publicApi.js';

const examples = publicApi().flatMap(({ name, tags }) =>
  tags
    .filter((tag) => tag.name === 'example')
    .map(({ text }) => [name, text.match(/^```ts\n([\s\S]*?)\n```$/)?.[1] ?? ''] as const),
);

/** A line `expression; // value` as a call that keeps both. */
const kept = (line: string) =>
  line.replace(
    /^(.*?); \/\/ (.+)$/,
    (_, expression, value) => `told(${expression}, ${JSON.stringify(value)});`,
  );

test('there are examples', () => {
  expect(examples.length).toBeGreaterThan(12);
});

test.each(examples)('the example of %s gives what it says, from the built library', (_, code) => {
  let compared = 0;
  const told = (ours: unknown, said: string) => {
    const value = new Function(`return ${said};`)();
    // A number is given to the digits that are written.
    const digits = said
      .replace(/e.*$/, '')
      .replace(/^-?[0.]*/, '')
      .replace('.', '').length;
    if (typeof ours === 'number' && typeof value === 'number')
      expect(Number(ours.toPrecision(digits))).toBe(value);
    else expect(ours).toEqual(value);
    compared++;
  };
  const body = code.split('\n').map(kept).join('\n');
  new Function('told', ...Object.keys(underpond), body)(told, ...Object.values(underpond));
  expect(compared).toBeGreaterThan(0);
});
