import { expect, test } from 'vitest';
import { Remembered } from '../../lib/sampling/remembered.js';

test('what was not asked for the longest is forgotten first, and every object has its own', () => {
  const worked: string[] = [];
  const remembered = new Remembered<string>(2);
  const [here, there] = [{}, {}];
  const ask = (object: object, key: string) =>
    remembered.of(object, key, () => {
      worked.push(key);
      return key;
    });
  for (const key of ['a', 'b', 'a', 'c', 'a']) expect(ask(here, key)).toBe(key);
  expect(worked).toEqual(['a', 'b', 'c']);
  ask(here, 'b');
  ask(there, 'a');
  expect(worked).toEqual(['a', 'b', 'c', 'b', 'a']);
});
