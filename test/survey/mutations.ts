/** Surveys made wrong the way people, programs and the malicious make them wrong; seeded. */
import { type Dice, filesOf, type Sheet, type Sheets } from './generated.js';
import { ITEMS, ROWS } from './items.js';

type Files = Record<string, string | Uint8Array>;
type OnSheet = (sheet: Sheet, dice: Dice) => void;

const NUMBERS = [
  '0',
  '-0',
  '-1',
  '1',
  '0.001',
  '12',
  '30',
  '99',
  '1e3',
  '1e-12',
  '1e308',
  '-1e308',
  '1e999',
  '0,95',
  '1,200',
  '3 ft 2',
  '3 ft 2 in',
  '38"',
  '3\'2"',
  '1 m 20 cm',
  '0.95 m',
  '½',
  '1e-7 cm/s',
  'NaN',
  'Infinity',
  '-',
  '٣',
  '0x10',
  '1_000',
  '1.2.3',
  '9007199254740993',
  '1e-320',
  '5 %',
  '20 F',
  '7 days',
];
const WORDS = [
  'clay',
  'caly',
  'sand',
  'peat',
  'rock',
  'gravel',
  'made ground',
  'loam',
  'massive',
  'cracked',
  'grey',
  'many',
  'soft',
  'hard',
  'opened',
  'bailed',
  'level',
  'dry',
  'strike',
  'yes',
  'no',
  'unknown',
  'rim',
  'pit',
  'spot',
  'outlet',
  'ditch',
  'flood',
  'pond',
  'dip-pipe',
  'dig',
  'footing',
  'boundary',
  'spill',
  'well',
  'site',
  'uphill',
  'below:P1',
  'high',
  'never',
  '1;2;3',
  '12',
  'round',
  'oval',
  'box',
  'slab',
  'none',
  'mat',
  'existing',
  'planned',
  'metric',
  'us',
  'woodland',
];
const HOSTILE = [
  '<script>alert(1)</script>',
  '</script><img src=x onerror=alert(1)>',
  '=cmd|calc',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '`process.exit(1)`',
  "'; DROP TABLE pits;--",
  '\u202egnp',
  '\u0000',
  '\ufffd',
  '\ud800',
  '💧'.repeat(40),
  '"',
  '""',
  '"""',
  'a,b',
  'line\nbreak',
  '\u2028',
  '../../etc/passwd',
  'x'.repeat(5000),
  '#',
  ' ',
  '\t',
  '%s%n',
  '\ufeffpit',
];
const UNITS = ['m', 'cm', 'mm', 'ft', 'in', 'c', 'f', 'pct', 'kpa', 'psf', 'm_s', 'm_d', 'mm_h', 'in_h'];
const DATES = [
  '2024-02-29',
  '2023-02-29',
  '1799-01-01',
  '2200-12-31',
  '03/11/2024',
  '2024-13-01',
  '0000-00-00',
  '2024-6-1',
];
const TIMES = ['09:00', '24:00', '9', '23:59:59', '00:00'];

const pick = (dice: Dice, of: readonly unknown[]) => Math.floor(dice.uniform() * of.length);
const nextCell = (sheet: Sheet, dice: Dice): [string[], number] => {
  const row = dice.one(sheet.rows);
  return [row, pick(dice, row)];
};
const setCell =
  (values: readonly string[]): OnSheet =>
  (sheet, dice) => {
    const [row, at] = nextCell(sheet, dice);
    row[at] = dice.one(values);
  };
const scaled: OnSheet = (sheet, dice) => {
  const at = pick(dice, sheet.header);
  const times = dice.one([10, 0.1, 3.28, 1 / 3.28, -1, 100, 0.001, 0]);
  for (const row of dice.chance(0.5) ? sheet.rows : [dice.one(sheet.rows)])
    if (row[at] !== undefined && row[at] !== '' && Number.isFinite(Number(row[at])))
      row[at] = String(Number(row[at]) * times);
};

/** On the rows and cells of one file that has at least one row. */
const ON_SHEET: OnSheet[] = [
  (sheet, dice) => sheet.rows.splice(pick(dice, sheet.rows), dice.whole(1, 3)),
  (sheet, dice) => sheet.rows.splice(pick(dice, sheet.rows), 0, [...dice.one(sheet.rows)]),
  (sheet, dice) => sheet.rows.push(...sheet.rows.splice(0, pick(dice, sheet.rows))),
  (sheet) => sheet.rows.reverse(),
  (sheet, dice) => {
    const at = pick(dice, sheet.header);
    for (const row of [sheet.header, ...sheet.rows]) row.splice(at, 1);
  },
  (sheet, dice) => {
    const [at, to] = [pick(dice, sheet.header), pick(dice, sheet.header)];
    for (const row of [sheet.header, ...sheet.rows]) row.splice(to, 0, ...row.splice(at, 1));
  },
  (sheet, dice) => {
    const at = pick(dice, sheet.header);
    for (const row of [sheet.header, ...sheet.rows]) row.push(row[at] ?? '');
  },
  (sheet, dice) => {
    const at = pick(dice, sheet.header);
    sheet.header[at] = `${sheet.header[at]?.replace(/_[a-z]+$/, '')}_${dice.one(UNITS)}`;
  },
  (sheet, dice) => {
    const at = pick(dice, sheet.header);
    sheet.header[at] = dice.one([
      '',
      sheet.header[at]?.toUpperCase() ?? '',
      sheet.header[at]?.slice(1) ?? '',
      ...HOSTILE,
    ]);
  },
  (sheet, dice) => {
    const [row, at] = nextCell(sheet, dice);
    row.splice(at, 1, ...(dice.chance(0.5) ? [] : ['', row[at] ?? '']));
  },
  (sheet, dice) => {
    const [one, at] = nextCell(sheet, dice);
    const [other, to] = nextCell(sheet, dice);
    [one[at], other[to]] = [other[to] ?? '', one[at] ?? ''];
  },
  (sheet, dice) => {
    const at = pick(dice, sheet.header);
    for (const row of sheet.rows) row[at] = '';
  },
  (sheet, dice) => {
    const [row] = nextCell(sheet, dice);
    const at = sheet.header.indexOf('value');
    if (at >= 0) row[at] = dice.one([...NUMBERS, ...WORDS]);
  },
  setCell(NUMBERS),
  setCell(NUMBERS),
  setCell(WORDS),
  setCell(WORDS),
  setCell(HOSTILE),
  setCell(DATES),
  setCell(TIMES),
  setCell(['']),
  scaled,
  scaled,
];

/** On the bytes of a file as it stands in the folder. */
const ON_BYTES: ((text: string, dice: Dice) => string | Uint8Array)[] = [
  (text, dice) => text.slice(0, pick(dice, [...text.slice(0, 4000)])),
  (text) => `\ufeff${text.replaceAll('\n', '\r\n')}`,
  (text) => text.replaceAll('\n', '\r'),
  (text) => Uint8Array.from(`${text}½`, (sign) => sign.charCodeAt(0) & 255),
  (text) =>
    new Uint8Array([0xff, 0xfe, ...[...text.slice(0, 200)].flatMap((sign) => [sign.charCodeAt(0) & 255, 0])]),
  (text) => text.replaceAll(',', ';'),
  (text) => text.replaceAll(',', '\t'),
  (text) => text.replace('\n', '\n# a remark\n#P1,0,1,clay\n\n'),
  (text, dice) => text + dice.one(HOSTILE),
  (text, dice) => {
    const at = pick(dice, [...text.slice(0, 4000)]);
    return (
      text.slice(0, at) + dice.one([...HOSTILE, '"', '"', ',', '\n', '']) + text.slice(at + dice.whole(0, 3))
    );
  },
  (text, dice) => {
    const bytes = new TextEncoder().encode(text);
    bytes[pick(dice, Array.from({ length: Math.min(bytes.length, 4000) }))] = dice.whole(0, 255);
    return bytes;
  },
  () => '',
];

/** What can be read and is rarely seen together: a fact set, or a row added, at the ends of what is possible. */
function strained(sheets: Sheets, dice: Dice): void {
  if (dice.chance(0.6)) {
    const file = dice.one(['pond.csv', 'site.csv'] as const);
    const item = dice.one(Object.keys(ITEMS[file]));
    const [value, unit] = dice.one(ITEMS[file][item] ?? []);
    const sheet = sheets[file] ?? { header: ['item', 'value', 'unit', 'note'], rows: [] };
    sheets[file] = {
      ...sheet,
      rows: [...sheet.rows.filter(([name]) => name !== item), [item, value, unit, '']],
    };
    return;
  }
  const file = dice.one(Object.keys(ROWS));
  const said = dice.one(ROWS[file] ?? []);
  const sheet = sheets[file] ?? { header: Object.keys(said).map(headerOf), rows: [] };
  const header = [...sheet.header];
  for (const name of Object.keys(said))
    if (!header.some((one) => bare(one) === name)) header.push(headerOf(name));
  const row = header.map((name) => {
    const value = said[bare(name)] ?? '';
    return value !== '' && /_(ft|in|cm|mm)$/.test(name) ? `${value} m` : value;
  });
  const rows = sheet.rows.map((cells) => [
    ...cells,
    ...Array<string>(header.length - sheet.header.length).fill(''),
  ]);
  sheets[file] = { header, rows: [...rows, row] };
}

const UNIT_OF: Record<string, string> = {
  sand: 'pct',
  silt: 'pct',
  clay: 'pct',
  stones: 'pct',
  organic: 'pct',
  ksat: 'm_s',
  strength: 'kpa',
};
const PLAIN = new Set([
  'pit',
  'point',
  'role',
  'place',
  'month',
  'date',
  'reading',
  'covered',
  'test',
  'minutes',
  'texture',
  'source',
  'time',
]);
const headerOf = (name: string) => (PLAIN.has(name) ? name : `${name}_${UNIT_OF[name] ?? 'm'}`);
const bare = (header: string) => header.replace(/_(m_s|m_d|mm_h|in_h|kpa|psf|pct|m|cm|mm|ft|in)$/, '');

/** The folder strained, and with up to three mistakes in it. */
export function mutated(sheets: Sheets, dice: Dice): Files {
  const copy: Sheets = structuredClone(sheets);
  for (let n = dice.whole(0, 4); n > 0; n--) strained(copy, dice);
  const names = Object.keys(copy);
  for (let n = dice.one([0, 0, 1, 1, 1, 2, 3]); n > 0; n--) {
    const sheet = copy[dice.one(names)];
    if (sheet && sheet.rows.length > 0 && sheet.header.length > 0) dice.one(ON_SHEET)(sheet, dice);
  }
  const files: Files = filesOf(copy);
  if (dice.chance(0.15)) {
    const name = dice.one(names);
    files[name] = dice.one(ON_BYTES)(String(files[name]), dice);
  }
  if (dice.chance(0.05)) delete files[dice.one(names)];
  if (dice.chance(0.05))
    files[dice.one(['levls.csv', 'Pond.csv', 'pits.csv.bak', '__proto__', 'constructor', 'notes.txt'])] = 'x';
  return files;
}
