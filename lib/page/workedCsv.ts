import type { WorkedPart } from '../report/index.js';
import { csvText } from './csv.js';

const COLUMNS = [
  'part',
  'step',
  'title',
  'equation',
  'symbol',
  'meaning',
  'value',
  'unit',
  'from',
  'role',
  'validity',
  'source',
];

/**
 * `worked.csv`: every step of the worked calculation, a row for each number put in and one for the result, full digits.
 * @param parts - from {@link workedSheet}
 * @returns header and rows ended by CR LF (RFC 4180)
 */
export function workedCsv(parts: WorkedPart[]): string {
  const rows = parts.flatMap(({ heading, steps }) =>
    steps.flatMap((step) => {
      const lead = [heading, step.number, step.title, `${step.symbol} = ${step.expression}`];
      const tail = [step.validity, step.source];
      return [
        ...step.inputs.map((i) => [...lead, i.symbol, i.meaning, i.value, i.unit, i.from, 'put in', ...tail]),
        [...lead, step.symbol, step.title, step.result, step.unit, '', 'result', ...tail],
      ];
    }),
  );
  return csvText([COLUMNS, ...rows]);
}
