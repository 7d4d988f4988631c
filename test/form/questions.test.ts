/** The form asks all that a survey can say, and offers nothing that its reader refuses. */
import { describe, expect, test } from 'vitest';
import { COLUMNS, type TableFile } from '../../lib/form/answers.js';
import type { Question } from '../../lib/form/questions.js';
import { labelOf, QUESTIONS, STEPS, stepOfItem } from '../../lib/form/steps.js';
import type { Column } from '../../lib/survey/column.js';
import { FACT_COLUMNS } from '../../lib/survey/facts.js';
import { POND_ITEMS } from '../../lib/survey/pondFacts.js';
import { SITE_ITEMS } from '../../lib/survey/siteFacts.js';

const names = (questions: readonly Question[]) => questions.map(({ name }) => name).sort();

/** Asked otherwise: by the switch of units, and of a layer by the hole it stands under. */
const ELSEWHERE: Record<string, string[]> = { 'site.csv': ['show_units'], 'pits.csv': ['pit'] };

const readers: [file: keyof typeof QUESTIONS, Readonly<Record<string, Column<unknown>>>][] = [
  ['pond.csv', POND_ITEMS],
  ['site.csv', SITE_ITEMS],
  ...Object.entries(COLUMNS).flatMap(([file, columns]) =>
    columns === FACT_COLUMNS
      ? []
      : [
          [file as TableFile, columns as Readonly<Record<string, Column<unknown>>>] as [
            TableFile,
            Readonly<Record<string, Column<unknown>>>,
          ],
        ],
  ),
];

describe.each(readers)('%s', (file, columns) => {
  const questions = QUESTIONS[file];

  test('each item or column is asked, once', () => {
    expect([...names(questions), ...(ELSEWHERE[file] ?? [])].sort()).toEqual(Object.keys(columns).sort());
  });

  test('each choice is a word the reader takes, and no word of its own is left out', () => {
    for (const { name, choices = [], word, how } of questions) {
      const column = columns[name]!;
      for (const { value } of [...choices, ...(word ? [word] : [])])
        expect(() => column.read(value, {}), `${name} ${value}`).not.toThrow();
      if (how === 'choice') expect(choices.length, name).toBeGreaterThan(1);
    }
  });

  test('each unit is one of that quantity', () => {
    for (const { name, unit } of questions)
      for (const each of Object.values(unit ?? {}).filter(Boolean))
        expect(() => columns[name]!.read('1', { unit: each }), `${name} in ${each}`).not.toThrow(/unit/);
  });
});

test('each question says why it is asked, in a sentence, and none is put in the words of the files', () => {
  for (const questions of Object.values(QUESTIONS))
    for (const { ask, why } of questions) {
      expect(why).toMatch(/^[A-Z0-9].*\.$/);
      expect(`${ask} ${why}`).not.toMatch(/_|\.csv|—|\btexture\b|\bksat\b|hydraulic|conductivity|datum/i);
    }
});

test('every step has its files, and an item that is assumed its step', () => {
  const files = STEPS.flatMap((step) => step.files);
  expect(Object.keys(QUESTIONS).filter((file) => !files.includes(file))).toEqual([]);
  expect(stepOfItem('ring_width')).toEqual({ step: 'pond', file: 'pond.csv' });
  expect(stepOfItem('power_cut_hours')?.step).toBe('keeping');
  expect(stepOfItem('winter water')).toBeUndefined();
  expect(labelOf('pond.csv', 'depth')).toBe('How deep do you wish it');
});
