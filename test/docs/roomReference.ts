/** The README of a room: its public names, formulas and methods, as they are declared. */
import { readdirSync, readFileSync } from 'node:fs';
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
  const intro = `${NOTE}\n\n# ${room}\n\nOwns ${ROOMS.get(room)}.`;
  return `${[intro, ...text].join('\n\n')}\n`;
}

/** The first sentence of what is said of a name. */
const briefly = (doc: string) =>
  linked(doc)
    .replaceAll('\n', ' ')
    .split(/(?<=[.;]) /)[0]!
    .replace(/[.;]$/, '');
const inFile = (entry: Entry) => `[\`${entry.name}\`](${entry.file})`;

/** Names with a line each. */
const lines = (entries: Entry[]) =>
  entries.map((entry) => `- ${inFile(entry)}: ${briefly(entry.doc)}`).join('\n');
/** Names only. */
const names = (entries: Entry[]) => entries.map(inFile).join(', ');

const LIB = `${PROJECT}lib/`;
const sources = readdirSync(LIB, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);
const texts = new Map(sources.map((file) => [file, readFileSync(LIB + file, 'utf8')]));

/** A card or a formula with the file that declares it. */
function declared(name: string): string {
  const [file] = [...texts].find(([, text]) => text.includes(`export const ${name} = `))!;
  return `[\`${name}\`](${file})`;
}

const byName = ([a]: [string, unknown], [b]: [string, unknown]) => (a < b ? -1 : 1);

/** The README of `lib/`: what can be imported, rooms, and the index of formulas and methods. */
export function libReference(api: Entry[]): string {
  const from = (front: string) => api.filter((entry) => entry.from === front);
  const values = (entries: Entry[]) => entries.filter(({ kind }) => kind !== 'type');
  const types = (entries: Entry[]) => entries.filter(({ kind }) => kind === 'type');
  const formulas = Object.entries(everyFormula)
    .sort(byName)
    .map(([name, { title, symbol, expression, unit, source }]) => [
      declared(name),
      title,
      `\`${symbol} = ${expression}\``,
      unit,
      source,
    ]);
  const methods = Object.entries(everyMethod)
    .sort(byName)
    .map(([name, { title }]) => [declared(name), title]);
  const physics = [...new Set(api.map((entry) => entry.from))]
    .filter((front) => front.startsWith('underpond/physics '))
    .map((front) => [front.split(' ')[1]!, String(values(from(front)).length)])
    .map(([room, count]) => [`\`${room}\``, ROOMS.get(room!)!, count!]);
  return `${NOTE}

# Reference

What is said here in a line stands in full beside the code, where the editor shows it; \`npm run reference\` writes it as one
page a room into \`out/reference\`.

## From \`underpond\`

${lines(values(from('underpond')))}

Types: ${names(types(from('underpond')))}.

\`figures\`, as plain data: ${names(values(from('underpond figures')))}.

## From \`underpond/node\`, with all of the above

${lines(values(from('underpond/node')))}

Types: ${names(types(from('underpond/node')))}.

## From \`underpond/section\`, the vertical section solved

${lines(values(from('underpond/section')))}

Types: ${names(types(from('underpond/section')))}.

## From \`underpond/physics\`, numbers in and numbers out

${table(['room', 'what it owns', 'names'], physics)}

Beside them: ${names(from('underpond/physics'))}.

## Formulas

${formulas.length} formulas. Each has its ranges and validity where it is declared, and a check in \`test/checks/\`.

${table(['name', 'title', 'equation', 'unit', 'source'], formulas)}

## Methods

What steps, fits or solves, told on a card with its assumptions and source.

${table(['name', 'title'], methods)}
`;
}
