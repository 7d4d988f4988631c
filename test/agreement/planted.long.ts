/** Contradictions put into outputs that have none, each of which must be found where it was put. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withItem } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { baseSurvey } from '../risk/base.js';
import { disagreements } from './claim.js';
import { type Outputs, outputsOf, type Report } from './outputs.js';
import { claimsOf } from './read.js';

const SAMPLES = 16;

type Files = Record<string, string>;

function demo(): Files {
  const folder = new URL('../../datasets/clay-slope/', import.meta.url);
  const csv = readdirSync(folder).filter((file) => file.endsWith('.csv'));
  return Object.fromEntries(csv.map((file) => [file, readFileSync(new URL(file, folder), 'utf8')]));
}

/** Water that swings between 0.6 m in winter and 1.2 m in August, when it is emptied: time alone keeps the liner down. */
function emptiedInTime(): Record<string, string> {
  const rows = Array.from({ length: 12 }, (_, m) => {
    const depth = 0.6 + 0.3 * (1 - Math.cos(((m - 1) * Math.PI) / 6));
    return `site,${m + 1},${depth.toFixed(3)},0.1,six winters in a sealed pipe`;
  });
  const files = {
    ...baseSurvey({ level: -0.05 }),
    'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
  };
  return withItem(withItem(files, 'pond.csv', 'depth', '1.1', 'm'), 'pond.csv', 'emptied_in', '8');
}

/** A drained pond on a slope, one not to be dug yet that may lift even full, one never emptied, one emptied for a time only. */
const FILES = {
  slope: demo(),
  wait: generatedGarden(5).files,
  never: generatedGarden(7).files,
  briefly: emptiedInTime(),
};
type Name = keyof typeof FILES;
const made = new Map<Name, Outputs>();
function sound(name: Name): Outputs {
  const outputs = made.get(name) ?? outputsOf(FILES[name], SAMPLES);
  made.set(name, outputs);
  return outputs;
}

/** A text with one thing in it said otherwise; there must be such a thing. */
function otherwise(text: string, from: RegExp, to: string): string {
  const changed = text.replace(from, to);
  expect(changed).not.toBe(text);
  return changed;
}

interface Planted {
  name: string;
  into: Name;
  plant: (outputs: Outputs) => Outputs;
  /** what the two that disagree speak of */
  about: RegExp;
}

const inPage =
  (units: 'metric' | 'us', from: RegExp, to: string) =>
  (outputs: Outputs): Outputs => ({
    ...outputs,
    pages: { ...outputs.pages, [units]: otherwise(outputs.pages[units], from, to) },
  });
const inCard =
  (from: RegExp, to: string) =>
  (outputs: Outputs): Outputs => ({
    ...outputs,
    cards: { ...outputs.cards, metric: otherwise(outputs.cards.metric, from, to) },
  });

const PLANTED: Planted[] = [
  {
    name: 'a month of the year in words',
    into: 'slope',
    plant: inPage('metric', /(<li>August: .*?With nothing done: )it may be emptied/, '$1do not empty it'),
    about: /^empty\|no-drain\|8: /,
  },
  {
    name: 'a sign in the table of options',
    into: 'slope',
    plant: inPage('metric', /(data-label="to spare when full, 1 year in 10">)\+/, '$1−'),
    about: /^to spare\|no-drain: /,
  },
  {
    name: 'a unit of what is in hand',
    into: 'slope',
    plant: inPage('metric', /(in 50 stays \d+[ \u00a0])cm below/, '$1mm below'),
    about: /^margin\|recommended\|/,
  },
  {
    name: 'a level to keep',
    into: 'slope',
    plant: inPage('metric', /(its level must not fall below \+0\.)\d\d/, '$199'),
    about: /^lowest\|no-drain\|\d+: /,
  },
  {
    name: 'a verdict in the terminal',
    into: 'slope',
    plant: (outputs) => ({
      ...outputs,
      lines: {
        ...outputs.lines,
        us: [otherwise(outputs.lines.us[0]!, /^.*$/, 'Do not dig'), ...outputs.lines.us.slice(1)],
      },
    }),
    about: /^go: /,
  },
  {
    name: 'a chance by ten',
    into: 'slope',
    plant: inPage('us', /(<dd>It fails about 1 year in \d+)0/, '$1'),
    about: /^risk\|drain-to-outlet: /,
  },
  {
    name: "'keep full' for what is not safe even full",
    into: 'wait',
    plant: inCard(/(January.*?<td[^>]*>)not safe even full/s, '$1keep full'),
    about: /^even full\|no-drain\|1: /,
  },
  {
    name: 'an order that is missing',
    into: 'never',
    plant: inPage('us', /, (?:after that )?never emptied\./, '.'),
    about: /^empty\|[\w-]+\|\d+: /,
  },
  {
    name: 'an order without how long',
    into: 'briefly',
    plant: inPage('metric', /(emptied only in \w+) for at most \d+\s\w+/, '$1'),
    about: /^empty\|[\w-]+\|\d+: /,
  },
  {
    name: 'a longer time in the terminal',
    into: 'briefly',
    plant: (outputs) => ({
      ...outputs,
      lines: {
        ...outputs.lines,
        metric: outputs.lines.metric.map((line) =>
          line.startsWith('emptied') ? otherwise(line, /\d+ days/, '60 days') : line,
        ),
      },
    }),
    about: /^hours\|[\w-]+\|\d+: /,
  },
  {
    name: 'a depth in feet left in metres',
    into: 'slope',
    plant: inPage('us', /(<p class="order">Yes, )[^<]*? deep/, '$11.00\u00a0m deep'),
    about: /^units\|us: /,
  },
  {
    name: 'a month of the card',
    into: 'slope',
    plant: inCard(/(title="January".*?<\/td><td[^>]*>.*?<\/td><td[^>]*>)may be emptied/s, '$1keep full'),
    about: /^empty\|recommended\|1: /,
  },
  {
    name: 'a row of the water year',
    into: 'wait',
    plant: (outputs) => ({
      ...outputs,
      waterYear: otherwise(outputs.waterYear, /^(--03),([^,]*),([^,]*)/m, '$1,9$2,9$3'),
    }),
    about: /^clay\|p\d0\|3: /,
  },
];

test.each(PLANTED)('$name is found', ({ into, plant, about }) => {
  const before = sound(into);
  expect(disagreements(claimsOf(before))).toEqual([]);
  const found = disagreements(claimsOf(plant(before)));
  expect(found.filter((words) => about.test(words))).not.toEqual([]);
});

test('a datum of one report is found', () => {
  const raised = (report: Report): Report => ({
    ...report,
    result: {
      ...report.result,
      situations: report.result.situations.map((row) =>
        row.of === 'recommended' && row.situation === 'emptied' && row.month === 5
          ? { ...row, allowed: false, why: 'lifts', margin_m: -0.2 }
          : row,
      ),
    },
  });
  const found = disagreements(claimsOf(outputsOf(FILES.slope, SAMPLES, raised)));
  expect(found.filter((words) => /^empty\|recommended\|5: /.test(words))).not.toEqual([]);
});
