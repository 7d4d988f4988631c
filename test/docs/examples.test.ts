import * as underpond from 'underpond/node';
import * as physics from 'underpond/physics';
import * as section from 'underpond/section';
import { expect, test } from 'vitest';
import { publicApi } from './publicApi.js';

/** Every public name, those of an object beside those of the front. */
const names: Record<string, unknown> = Object.assign(
  {},
  ...Object.values(physics).filter((room) => typeof room === 'object'),
  underpond.figures,
  section,
  physics,
  underpond,
);

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
  new Function('told', ...Object.keys(names), body)(told, ...Object.values(names));
  expect(compared).toBeGreaterThan(0);
});
