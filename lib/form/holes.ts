/** The holes that the survey knows, by name. */
import { RESERVED_PITS } from '../survey/index.js';
import { type Answers, type Cell, textOf, withRow, withRows } from './answers.js';
import type { Choice } from './questions.js';

/** Names of holes in the order in which they were written down. */
export function holesIn({ rows }: Answers): string[] {
  const names = [
    ...rows['pits.csv'].map((row) => textOf(row, 'pit')),
    ...rows['water.csv'].map((row) => textOf(row, 'pit')),
    ...rows['levels.csv'].flatMap((row) => (textOf(row, 'role') === 'pit' ? [textOf(row, 'point')] : [])),
  ];
  return [...new Set(names)].filter((name) => name !== '' && !RESERVED_PITS.includes(name.toLowerCase()));
}

const PLACES: Readonly<Record<string, string>> = {
  pond: 'The pond itself',
  'dip-pipe': 'The dip pipe',
  dig: 'The dig for the pond',
};

/** Holes to choose, with the places that are no holes. */
export function holeChoices(answers: Answers, places: readonly string[] = []): Choice[] {
  return [...holesIn(answers), ...places].map((value) => ({ value, words: PLACES[value] ?? value }));
}

/** A name no hole has yet. */
export function newHoleName(answers: Answers): string {
  const known = new Set(holesIn(answers).map((name) => name.toLowerCase()));
  let number = 1;
  while (known.has(`p${number}`)) number++;
  return `P${number}`;
}

/** A name as it may begin a line: after # nothing would be read. */
export const holeName = (typed: string) => typed.replace(/^\s*#+\s*/, 'No. ');

/** With a hole called otherwise, wherever it is named. */
export function renamedHole(answers: Answers, from: string, to: string): Answers {
  const name = (cell: Cell | undefined): Cell =>
    cell?.text === from ? { text: to } : (cell ?? { text: '' });
  let all = answers;
  for (const [file, column] of [
    ['pits.csv', 'pit'],
    ['water.csv', 'pit'],
    ['soakage.csv', 'pit'],
    ['heads.csv', 'place'],
    ['levels.csv', 'point'],
  ] as const) {
    const meant = (row: (typeof all.rows)[typeof file][number]) =>
      textOf(row, column) === from && (file !== 'levels.csv' || textOf(row, 'role') === 'pit');
    if (!all.rows[file].some(meant)) continue;
    all = withRows(
      all,
      file,
      all.rows[file].map((row) =>
        meant(row) ? { ...row, cells: { ...row.cells, [column]: name(row.cells[column]) } } : row,
      ),
    );
  }
  return all;
}

/** With a layer below the last of a hole, beginning where that ends. */
export function withLayer(answers: Answers, pit: string): Answers {
  const last = answers.rows['pits.csv'].filter((row) => textOf(row, 'pit') === pit).at(-1);
  const top: Cell = last ? (last.cells.bottom ?? { text: '' }) : { text: '0' };
  return withRow(answers, 'pits.csv', { pit: { text: pit }, top }, { behind: last?.id });
}
