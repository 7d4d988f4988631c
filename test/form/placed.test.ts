/** What the reader finds stands at the field it belongs to, in words that name no file. */
import { describe, expect, test } from 'vitest';
import { type Answers, noAnswers, withCell, withFact, withRow } from '../../lib/form/answers.js';
import { readable } from '../../lib/form/folder.js';
import { openedFolder } from '../../lib/form/opened.js';
import { type Remark, remarksOf } from '../../lib/form/placed.js';
import { readingOf } from '../../lib/form/reading.js';
import { labelOf, stepOfKey } from '../../lib/form/steps.js';

function saidOf(answers: Answers): Map<string, readonly Remark[]> {
  const { findings } = readingOf({ files: readable(answers, new Map()), name: 'x' });
  return new Map(remarksOf(answers, findings.problems, findings.warnings, labelOf));
}
const pond = (depth: string) => {
  const with2 = withFact(
    withFact(noAnswers(), 'pond.csv', 'length', '4', 'm'),
    'pond.csv',
    'width',
    '3',
    'm',
  );
  return withFact(with2, 'pond.csv', 'depth', depth, 'm');
};
const layer = (answers: Answers, top: string, bottom: string) =>
  withRow(
    answers,
    'pits.csv',
    {
      pit: { text: 'P1' },
      top: { text: top, unit: 'm' },
      bottom: { text: bottom, unit: 'm' },
      texture: { text: 'clay' },
    },
    { draft: false },
  );

test('an empty form waits, and finds no fault', () => {
  const said = [...saidOf(noAnswers()).values()].flat();
  expect(said.map(({ kind }) => kind)).toEqual(['open', 'open']);
});

test('what is needed and not said waits at its own question', () => {
  const answers = layer(withFact(noAnswers(), 'pond.csv', 'length', '4', 'm'), '0', '2');
  const said = saidOf(answers);
  expect(said.get('pond.csv depth')).toEqual([
    { kind: 'open', text: 'Needed before there can be an answer.' },
  ]);
  expect(said.get('pond.csv width')?.[0]?.kind).toBe('open');
});

describe('a fault', () => {
  test.each([
    ['of a fact', pond('1,200'), 'pond.csv depth', /^Invalid '1,200' - the comma can mean 1200 or 1\.200/],
    ['of a cell', layer(pond('1'), '0', 'two'), 'pits.csv 4 bottom', /'two'/],
    [
      'of two rows',
      layer(layer(pond('1'), '0', '1'), '0.8', '2'),
      'pits.csv 5 top',
      /the layer in row 1 of pit P1 ends deeper/,
    ],
  ])('%s', (_, answers, key, words) => {
    const [remark] = saidOf(layer(answers, '9', '9.5')).get(key) ?? [];
    expect(remark).toMatchObject({ kind: 'wrong', text: expect.stringMatching(words) });
    expect(remark?.text).not.toMatch(/\.csv|_|\bline\b/);
  });

  test('between two facts names the other by its question', () => {
    const answers = withFact(layer(pond('1'), '0', '2'), 'pond.csv', 'shelf_depth', '2', 'm');
    const [remark] = saidOf(answers).get('pond.csv shelf_depth') ?? [];
    expect(remark?.text).toContain('Check “How deep is the plant shelf” and depth.');
  });
});

test('a row that is only begun waits, a draft is passed over, a doubt is told', () => {
  let answers = layer(pond('1'), '0', '2');
  answers = withRow(answers, 'water.csv', { pit: { text: 'P1' }, date: { text: '2024-02-03' } });
  expect(saidOf(answers).size).toBe(0);
  const id = answers.rows['water.csv'][0]!.id;
  answers = withCell(answers, 'water.csv', id, 'reading', 'level');
  expect(saidOf(answers).get(`water.csv ${id} depth`)?.[0]?.kind).toBe('open');
  answers = withCell(answers, 'water.csv', id, 'depth', '0.4', 'm');
  answers = withCell(answers, 'water.csv', id, 'pit', 'p1');
  const doubt = saidOf(answers).get(`water.csv ${id}`)?.[0];
  expect(doubt).toMatchObject({ kind: 'noticed', text: expect.stringContaining("did you mean 'P1'") });
});

test('lines of a file as it came are its rows, remarks counted', () => {
  const text = '# one\n# two\nitem,value,unit\ndepth,1,m\nlenght,4,m\nwidth,x,m\n';
  const { answers } = openedFolder({ 'pond.csv': new TextEncoder().encode(text) });
  const said = saidOf(answers);
  expect(said.get('pond.csv lenght')?.[0]?.kind).toBe('wrong');
  expect(said.get('pond.csv width')?.[0]?.text).toContain("'x'");
});

test('every key has its step', () => {
  expect(stepOfKey('site.csv latitude')).toBe('place');
  expect(stepOfKey('site.csv power_cut_hours')).toBe('keeping');
  expect(stepOfKey('water.csv 4 depth')).toBe('looks');
  expect(stepOfKey('weather.csv')).toBe('weather');
  expect(stepOfKey('notes.txt')).toBeUndefined();
});
