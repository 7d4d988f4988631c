/** The claims of the tables, of the page as of a notebook. */
import { LENGTH, lengthIn, monthIn, oftenIn, percentIn } from './amounts.js';
import type { Claimer } from './claim.js';
import type { Page } from './html.js';
import { safeDepth } from './page.js';
import { OPTIONS, type Told } from './survey.js';

const SITUATION: Record<string, string> = {
  'full to the brim': 'full',
  'as low as it gets in use': 'drawn-down',
  emptied: 'emptied',
  'drain blocked or stopped': 'drain-blocked',
  'power out': 'power-out',
  'emptied, outlet in flood': 'outlet-flood',
  'while it is dug': 'dig',
  'water below the clay, while it is dug': 'seam',
  'water below the clay, pond full to the brim': 'seam-full',
  'water below the clay, pond as low as it gets in use': 'seam-drawn-down',
  'water below the clay, emptied': 'seam-emptied',
};

type Table = Page['tables'][number];

export function tableClaims(tables: Table[], told: Told, said: Claimer) {
  for (const table of tables) {
    const at = (row: string[], column: RegExp) =>
      row[table.columns.findIndex((name) => column.test(name))] ?? '';
    if (table.name.startsWith('Options compared')) options(table, at, said);
    if (table.name.startsWith('What is in hand')) inHand(table, told, said);
    if (table.name.startsWith('Water and the pond by month')) months(table, said);
    if (table.name.startsWith('How high the water comes')) ladder(table, said);
  }
}

function options({ rows }: Table, at: (row: string[], column: RegExp) => string, said: Claimer) {
  for (const row of rows) {
    const option = OPTIONS[row[0]!.toLowerCase()];
    if (!option) throw new Error(`no option: '${row[0]}'`);
    said.says(`possible|${option}`, 'options', row[0]!, 'yes');
    safeDepth(said, 'options', option, at(row, /safe depth/));
    const risk = at(row, /chance a year/);
    said.span(`risk|${option}`, 'options', risk, /1 year in/.test(risk) ? oftenIn(risk) : percentIn(risk));
    const spare = at(row, /to spare/);
    said.span(`to spare|${option}`, 'options', spare, lengthIn(spare, 'near'));
  }
}

function inHand({ rows }: Table, told: Told, said: Claimer) {
  for (const [when = '', level = '', water = '', spare = '', verdict = ''] of rows) {
    const [, name = '', month] = /^(.*?)(?:, ([A-Z][a-z]+))?$/.exec(when)!;
    const key = `${told.of}|${SITUATION[name]}|${month ? monthIn(month) : 'year'}`;
    if (!SITUATION[name]) throw new Error(`no situation: '${when}'`);
    said.span(`level|${key}`, 'in hand', `${when}: ${level}`, lengthIn(level, 'near'));
    const outside = new RegExp(LENGTH).exec(water)?.[0];
    if (outside) said.span(`outside|${key}`, 'in hand', `${when}: ${water}`, lengthIn(outside, 'near'));
    const holds = /^(holds|rare enough)/.test(verdict);
    said.says(`allowed|${key}`, 'in hand', `${when}: ${verdict}`, holds ? 'yes' : 'no');
    const size = new RegExp(LENGTH).exec(spare)?.[0];
    if (!size) continue;
    const lacks = /too little/.test(spare);
    const span = lengthIn(size, lacks ? 'up' : 'down', true);
    said.span(
      `margin|${key}`,
      'in hand',
      `${when}: ${spare}`,
      lacks ? { low: -span.high, high: -span.low } : span,
    );
  }
}

function months({ columns, rows }: Table, said: Claimer) {
  for (const row of rows) {
    const month = monthIn(row[0]!);
    columns.forEach((column, at) => {
      const cell = row[at] ?? '';
      const near = (about: string, sign: 1 | -1) => {
        const { low, high } = lengthIn(cell, 'near');
        said.span(`${about}|${month}`, column, cell, sign > 0 ? { low, high } : { low: -high, high: -low });
      };
      if (!/\d|may be emptied/.test(cell)) return;
      if (/middle of its days/.test(column)) near('day|p50', -1);
      else if (/uphill wall/.test(column)) near('uphill|p10', -1);
      else if (/1 in 10 nearer/.test(column)) near('clay|p10', -1);
      else if (/middle year/.test(column)) near('clay|p50', -1);
      else if (/level in the ring/.test(column)) near('ring|p90', 1);
      else if (/floor is dry/.test(column)) {
        const share = percentIn(cell);
        // Whole percents, down; below one as every chance.
        const whole = /^\d+ %/.test(cell) && Number.parseInt(cell, 10) / 100;
        said.span(`dry floor|${month}`, column, cell, whole ? { low: whole, high: whole + 0.01 } : share);
      } else if (/keep the pond above/.test(column)) {
        const about = `lowest|${OPTIONS[column.split(': ')[1]!]}|${month}`;
        if (/may be emptied/.test(cell)) said.says(about, column, cell, 'floor');
        else said.span(about, column, cell, lengthIn(cell, 'up'));
      }
    });
  }
}

function ladder({ columns, rows }: Table, said: Claimer) {
  for (const row of rows) {
    const name = row[0]!;
    const day = /ordinary day in (\w+)/.exec(name)?.[1];
    const month = /highest of (\w+) in a middle year/.exec(name)?.[1];
    const years = /1 year in (\d+)/.exec(name)?.[1];
    const key = day
      ? `day|0.5|${monthIn(day)}`
      : month
        ? `month|0.5|${monthIn(month)}`
        : `year|${years ? Number((1 / Number(years)).toPrecision(6)) : 0.5}|year`;
    columns.forEach((column, at) => {
      const cell = row[at] ?? '';
      const place = /uphill/.test(column)
        ? 'uphill'
        : /ring/.test(column)
          ? 'ring'
          : /highest of these/.test(column)
            ? 'outside'
            : /in the clay/.test(column)
              ? 'low'
              : undefined;
      if (place && /\d/.test(cell))
        said.span(`rung|${key}|${place}`, 'ladder', `${name}: ${cell}`, lengthIn(cell, 'near'));
    });
  }
}
