/**
 * A grammar of survey folders. Everything is made from the top down: a folder of entries, files of rows, rows of cells,
 * cells of what people, spreadsheets and the malicious write. Nothing is a mutation of a survey that was right.
 */
import { gzipSync } from 'node:zlib';
import { Dice } from '../survey/generated.js';
import { factsFile } from './facts.js';
import { bytesOf, HOSTILE_NAMES, hostileText } from './hostile.js';
import {
  climateFile,
  headsFile,
  levelsFile,
  pitsFile,
  pricesFile,
  soakageFile,
  waterFile,
  weatherFile,
} from './rows.js';

/** What stands in the folder under a name. */
export type Entry =
  | { kind: 'file'; bytes: Uint8Array }
  /** so many bytes, of which none is written */
  | { kind: 'hole'; size: number }
  | { kind: 'folder' }
  | { kind: 'pipe' }
  | { kind: 'link'; to: string };

export interface Folder {
  /** of the folder itself */
  name: string;
  entries: [name: string, entry: Entry][];
  /** every hostile text in it holds this, so that it is known again wherever it comes out */
  mark: string;
  /** nothing but the facts was made to be wrong */
  orderly: boolean;
}

/** Cells of a file as they are written, header first. */
export type Rows = string[][];

/** What the rows of one survey have in common. */
export interface Ground {
  dice: Dice;
  pits: string[];
  /** levels.csv is there, with a rim, the pond and its dip pipe */
  levelled: boolean;
  /** some text of a stranger: hostile in some surveys, harmless in others */
  text(): string;
  /** a length as the survey writes it: the same unit in its headers and cells, sometimes another in a cell */
  length(metres: number): string;
  unit: string;
}

const METRES: Record<string, number> = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254 };

function groundOf(dice: Dice, mark: string, hostile: boolean): Ground {
  const unit = dice.one(['m', 'm', 'm', 'cm', 'mm', 'ft', 'in']);
  const text = () =>
    hostile && dice.chance(0.7) ? hostileText(dice, mark) : dice.one(['lawn', 'by the fence', '']);
  const name = (at: number) => (hostile && dice.chance(0.4) ? `${hostileText(dice, mark)} ${at}` : `P${at}`);
  return {
    dice,
    unit,
    text,
    levelled: dice.chance(0.6),
    pits: Array.from({ length: dice.one([1, 1, 2, 2, 3, 6]) }, (_, at) => name(at + 1)),
    length(metres) {
      const digits = (value: number) => String(Number(value.toPrecision(12)));
      if (dice.chance(0.03)) return `${digits(metres)} m`;
      if (dice.chance(0.03)) return `${digits(metres / 0.3048)} ft`;
      return digits(metres / METRES[unit]!);
    },
  };
}

/** Writes rows as a file; those that are hostile in their bytes write them in other ways. */
function written(rows: Rows, dice: Dice, hostile: boolean): Uint8Array {
  const eol = dice.one(['\n', '\n', '\r\n']);
  const quoted = (cell: string) =>
    /[",\r\n]/.test(cell) || dice.chance(0.02) ? `"${cell.replaceAll('"', '""')}"` : cell;
  const text =
    rows.map((cells) => cells.map(quoted).join(',')).join(eol) + dice.one([eol, eol, '', eol + eol]);
  return hostile ? bytesOf(text, dice) : new TextEncoder().encode(dice.chance(0.1) ? `\ufeff${text}` : text);
}

/** The folder of a seed. */
export function folderOf(seed: number, withWeather: number): Folder {
  const dice = new Dice(seed * 104_729 + 17);
  const mark = `zq${seed.toString(36)}`;
  const [text, bytes, disk] = [dice.chance(0.35), dice.chance(0.12), dice.chance(0.2)];
  const ground = groundOf(dice, mark, text);
  const files: [string, Rows][] = [
    ['pond.csv', factsFile('pond.csv', ground)],
    ['site.csv', factsFile('site.csv', ground)],
    ['pits.csv', pitsFile(ground)],
    ['levels.csv', levelsFile(ground)],
    ['heads.csv', headsFile(ground)],
    ['water.csv', waterFile(ground)],
    ['soakage.csv', soakageFile(ground)],
    ['climate.csv', climateFile(ground)],
    ['prices.csv', pricesFile(ground)],
    ...(dice.chance(withWeather) ? [['weather.csv', weatherFile(ground)] as [string, Rows]] : []),
  ];
  const needed = (name: string) => name === 'pond.csv' || name === 'pits.csv' || name === 'weather.csv';
  const kept = files.filter(([name]) => {
    if (needed(name)) return !dice.chance(0.02);
    return name === 'levels.csv' ? ground.levelled !== dice.chance(0.02) : dice.chance(0.55);
  });
  const entries: Folder['entries'] = kept.map(([name, rows]) => [
    name,
    { kind: 'file', bytes: written(rows, dice, bytes && dice.chance(0.5)) },
  ]);
  if (disk) for (let n = dice.whole(1, 3); n > 0; n--) disturb(entries, dice);
  return {
    name:
      text && dice.chance(0.5)
        ? hostileText(dice, mark).replace(/[/\0]/g, '_').slice(0, 60).trim() || 'x'
        : 'survey',
    entries: [...new Map(entries)],
    mark,
    orderly: !bytes && !disk,
  };
}

const SURVEYS = ['pond.csv', 'pits.csv', 'site.csv', 'water.csv', 'levels.csv', 'prices.csv'];
const TARGETS = [
  'pond.csv',
  'nowhere',
  '.',
  '..',
  '/dev/zero',
  '/dev/null',
  '/etc/passwd',
  'loop.csv',
  '/dev/stdin',
];

/** One thing that no survey holds, in the place of a file or beside the files. */
function disturb(entries: Folder['entries'], dice: Dice): void {
  const name = dice.chance(0.5) ? dice.one(SURVEYS) : dice.one(HOSTILE_NAMES);
  const entry = dice.one<() => Entry>([
    () => ({ kind: 'file', bytes: gzipSync(dice.one(['', 'item,value\n', '0'.repeat(40_000_000)])) }),
    () => ({ kind: 'folder' }),
    () => ({ kind: 'pipe' }),
    () => ({ kind: 'link', to: dice.one(TARGETS) }),
    () => ({ kind: 'hole', size: dice.one([0, 1, 4096, 33 * 1024 * 1024, 5 * 1024 ** 3]) }),
    () => ({
      kind: 'file',
      bytes: new TextEncoder().encode(dice.one(['', '\n', ',', 'item,value\n', '\0\0', 'x'.repeat(3000)])),
    }),
  ])();
  entries.push([name, entry]);
}
