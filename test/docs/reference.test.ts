import { join } from 'node:path';
import { expect, test } from 'vitest';
import { everyFormula, everyMethod } from '../formula/rooms.js';
import { PROJECT } from '../notebook/notebooks.js';
import { publicApi } from './publicApi.js';
import { libReference } from './roomReference.js';

const api = publicApi();

test('the reference is what the source says (else: npm run docs)', async () => {
  await expect(libReference(api)).toMatchFileSnapshot(join(PROJECT, 'lib', 'README.md'));
});

test('the front has some sixty names, and few are needed to begin', () => {
  const front = api.filter(({ from }) => from === 'underpond');
  expect(front.length).toBeLessThanOrEqual(70);
  expect(front.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['parseSurvey', 'siteModel', 'assess', 'recommend', 'reportOf', 'pageHtml']),
  );
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
