/** The README of a room: its public names, formulas and methods, as they are declared. */
import { readFileSync } from 'node:fs';
import type { Formula, Method } from '../../lib/formula/index.js';
import { everyFormula, everyMethod } from '../formula/rooms.js';
import { PROJECT } from '../notebook/notebooks.js';
import type { Entry } from './publicApi.js';

const NOTE = '<!-- Made from the source by `npm run docs`: change it there. -->';

/** What a room owns, as the contributors' guide has it, in the order of the rooms. */
export const ROOMS: Map<string, string> = new Map(
  [
    ...readFileSync(`${PROJECT}DEVELOPERS.md`, 'utf8')
      .split('\n## ')[1]
      .matchAll(/^\| `(\w+)` +\| (.+?) +\|$/gm),
  ].map((m) => [m[1], m[2]]),
);

const fenced = (code: string) => `\`\`\`ts\n${code}\n\`\`\``;
const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const table = (head: string[], rows: string[][]) =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');
/** What is linked as code. */
const linked = (text: string) => text.replace(/\{@link (\w+)\}/g, '`$1`');
const source = (entry: Entry) => `[${entry.file}](${entry.file.slice(entry.room.length + 1)})`;

function functionText(entry: Entry): string {
  const of = (name: string) => entry.tags.filter((tag) => tag.name === name);
  const parameter = ({ text }: { text: string }) => {
    const [, name, meaning] = text.match(/^(\S+)\s+(?:-\s+)?([\s\S]*)$/) ?? [text, text, ''];
    return `- \`${name}\`: ${linked(meaning).replaceAll('\n', ' ')}`;
  };
  return [
    `### \`${entry.name}\``,
    fenced(entry.code),
    linked(entry.doc),
    of('param').map(parameter).join('\n'),
    ...of('returns').map(({ text }) => `Returns: ${linked(text).replaceAll('\n', ' ')}.`),
    ...of('throws').map(({ text }) => `Throws: ${linked(text).replaceAll('\n', ' ')}.`),
    ...of('example').map(({ text }) => text),
    source(entry),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

function formulaText(name: string, f: Formula, entry: Entry): string {
  const rows = Object.entries(f.parameters).map(([symbol, { meaning, unit, min, max }]) => [
    `\`${symbol}\``,
    meaning,
    unit,
    `${min} to ${max}`,
  ]);
  return [
    `### \`${name}\``,
    `${f.title}: \`${f.symbol} = ${f.expression}\` in ${f.unit}`,
    linked(entry.doc),
    table(['symbol', 'meaning', 'unit', 'range'], rows),
    `Holds: ${f.validity}. Source: ${f.source}. ${source(entry)}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

function methodText(name: string, m: Method, entry: Entry): string {
  const assumptions = m.assumptions.map((assumption) => `- ${assumption}`).join('\n');
  return `### \`${name}\`\n\n${m.title}: ${m.what}\n\n${assumptions}\n\nSource: ${m.source}. ${source(entry)}`;
}

function constantText(entry: Entry): string {
  if (!entry.code.includes('\n') && entry.code.length < 90)
    return `- \`${entry.code.replaceAll('`', "'")}\`: ${linked(entry.doc).replaceAll('\n', ' ')} ${source(entry)}`;
  return `### \`${entry.name}\`\n\n${linked(entry.doc)}\n\n${fenced(entry.code)}\n\n${source(entry)}`;
}

/** The README of a room. */
export function roomReference(room: string, api: Entry[]): string {
  const own = api.filter((entry) => entry.room === room);
  const isMethod = (entry: Entry) => entry.name in everyMethod;
  const isFormula = (entry: Entry) => entry.name in everyFormula;
  const parts: [string, string[]][] = [
    ['Functions', own.filter((e) => e.kind === 'function').map(functionText)],
    ['Formulas', own.filter(isFormula).map((e) => formulaText(e.name, everyFormula[e.name], e))],
    ['Methods', own.filter(isMethod).map((e) => methodText(e.name, everyMethod[e.name], e))],
    [
      'Constants',
      own.filter((e) => e.kind === 'constant' && !isFormula(e) && !isMethod(e)).map(constantText),
    ],
    ['Types', own.filter((e) => e.kind === 'type' || e.kind === 'class').map(constantText)],
  ];
  const text = parts
    .filter(([, texts]) => texts.length > 0)
    .map(([heading, texts]) => `## ${heading}\n\n${texts.join('\n\n')}`);
  const intro = `${NOTE}\n\n# ${room}\n\nOwns ${ROOMS.get(room)}. [All rooms and the index of formulas](../README.md)`;
  return `${[intro, ...text].join('\n\n')}\n`;
}

/** The README of `lib/`: rooms, and the index of formulas and methods. */
export function libReference(api: Entry[]): string {
  const rooms = [...ROOMS].map(([room, owns]) => [`[${room}](${room}/README.md)`, owns]);
  const at = ({ room, name }: Entry) => `[\`${name}\`](${room}/README.md#${name.toLowerCase()})`;
  const formulas = api
    .filter(({ name }) => name in everyFormula)
    .map((entry) => {
      const { title, symbol, expression, unit } = everyFormula[entry.name];
      return [at(entry), title, `\`${symbol} = ${expression}\``, unit];
    });
  const methods = api
    .filter(({ name }) => name in everyMethod)
    .map((entry) => [at(entry), everyMethod[entry.name].title]);
  return `${NOTE}

# Reference

${table(['room', 'what it owns'], rooms)}

## Formulas

${formulas.length} formulas, each with its ranges, validity and source in the README of its room and a check in \`test/checks/\`.

${table(['name', 'title', 'equation', 'unit'], formulas)}

## Methods

What steps, fits or solves, told on a card with its assumptions and source.

${table(['name', 'title'], methods)}
`;
}
