import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { everyFormula, everyMethod } from '../formula/rooms.js';
import { PROJECT } from '../notebook/notebooks.js';
import { publicApi } from './publicApi.js';
import { libReference, ROOMS, roomReference } from './roomReference.js';

const api = publicApi();

describe('the reference is what the source says (else: npm run docs)', () => {
  test.each([...ROOMS.keys()])('of the room %s', async (room) => {
    await expect(roomReference(room, api)).toMatchFileSnapshot(join(PROJECT, 'lib', room, 'README.md'));
  });

  test('of all rooms, with the index of formulas', async () => {
    await expect(libReference(api)).toMatchFileSnapshot(join(PROJECT, 'lib', 'README.md'));
  });
});

test('every public name says what it is', () => {
  const declared = (name: string) => name in everyFormula || name in everyMethod;
  expect(api.filter(({ doc, name }) => doc === '' && !declared(name)).map(({ name }) => name)).toEqual([]);
});

test('every public function says what it takes and gives', () => {
  const silent = api.flatMap(({ name, kind, parameters, givesNothing, tags }) => {
    if (kind !== 'function') return [];
    const told = tags.filter((tag) => tag.name === 'param').map(({ text }) => text.split(/\s/)[0]);
    const untold = parameters.filter((parameter) => parameter !== undefined && !told.includes(parameter));
    const returns = givesNothing || tags.some((tag) => tag.name === 'returns');
    return untold.length === 0 && told.length >= parameters.length && returns ? [] : [name];
  });
  expect(silent).toEqual([]);
});
