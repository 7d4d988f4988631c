/** How long water stands in what was dug, what else speaks of its highest level, and when to dig, in words. */

import type { Report } from '../contract/index.js';
import { wishedRow } from '../contract/index.js';
import type { Table } from '../figures/table.js';
import { monthName } from '../text/monthWords.js';
import { dryWords, evidenceWords, pumpTitle, ringWords } from '../text/standingWater.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { html, list, type Markup, paragraph, table } from './markup.js';

/** Water to pump a day from a dig to about the depth wished. */
function pumpTable(report: Report, units: UnitSystem): Table | undefined {
  const { digging } = report;
  if (!digging) return undefined;
  const row = wishedRow(report);
  const shown = (flow: number) => (flow > 0 ? formatQuantity(flow, 'flow', units) : 'none');
  return {
    name: pumpTitle(digging.depths[row]!, units),
    columns: [
      { key: 'month', label: 'month' },
      { key: 'usual', label: 'usual' },
      { key: 'wet', label: 'one dig in ten more than' },
    ],
    rows: digging.pumped.p50[row].map((usual, m) => [
      monthName(m + 1),
      shown(usual),
      shown(digging.pumped.p90[row][m]),
    ]),
  };
}

/** All of it, for the section on the year. */
export function standingWater(report: Report, units: UnitSystem): Markup {
  const pumped = pumpTable(report, units);
  const group = (title: string, sentences: string[]) =>
    sentences.length > 0 ? html`<h3>${title}</h3>${list(sentences)}` : '';
  return html`${[
    group('When the dig stays dry', dryWords(report, units)),
    pumped ? table(pumped) : '',
    pumped ? paragraph('At the highest water of the month, through the floor of the open dig.', 'note') : '',
    group('Water in the ring', ringWords(report, units)),
    group('What else tells of the highest water', evidenceWords(report, units)),
  ]}`;
}
