/** How spreadsheet programs save a table, by kind of program and region. */
import type { Sheet } from './generated.js';

type DateForm = (year: string, month: string, day: string) => string;

export interface Saved {
  name: string;
  separator: ',' | ';' | '\t';
  decimal: '.' | ',';
  date: DateForm;
  time(hours: number, minutes: string): string;
  /** rows, and remarks above them, filled up with empty cells */
  padded: boolean;
  /** text in quotes always, or only where it must */
  quoted: boolean;
  lineEnd: '\n' | '\r\n';
  encoding: 'utf-8' | 'utf-8 with mark' | 'utf-16';
}

const bare = (figures: string) => String(Number(figures));
const clock = (hours: number, minutes: string) => `${String(hours).padStart(2, '0')}:${minutes}:00`;
const halves = (hours: number, minutes: string) =>
  `${hours % 12 || 12}:${minutes}:00 ${hours < 12 ? 'AM' : 'PM'}`;
const short = (year: string) => year.slice(2);

const REGIONS = {
  'United States': {
    decimal: '.',
    long: ((y, m, d) => `${bare(m)}/${bare(d)}/${y}`) as DateForm,
    brief: ((y, m, d) => `${m}/${d}/${short(y)}`) as DateForm,
    time: halves,
  },
  Britain: {
    decimal: '.',
    long: ((y, m, d) => `${d}/${m}/${y}`) as DateForm,
    brief: ((y, m, d) => `${d}/${m}/${short(y)}`) as DateForm,
    time: clock,
  },
  Germany: {
    decimal: ',',
    long: ((y, m, d) => `${d}.${m}.${y}`) as DateForm,
    brief: ((y, m, d) => `${d}.${m}.${short(y)}`) as DateForm,
    time: clock,
  },
  Sweden: {
    decimal: ',',
    long: ((y, m, d) => `${y}-${m}-${d}`) as DateForm,
    brief: ((y, m, d) => `${y}-${m}-${d}`) as DateForm,
    time: clock,
  },
} as const;

/** The three kinds of program in the four regions. */
export const SAVED: Saved[] = Object.entries(REGIONS).flatMap(([region, { decimal, long, brief, time }]) => {
  const list = decimal === ',' ? ';' : ',';
  return [
    {
      name: `desktop, ${region}`,
      separator: list,
      decimal,
      date: long,
      time,
      padded: true,
      quoted: false,
      lineEnd: '\r\n',
      encoding: 'utf-8 with mark',
    },
    {
      name: `desktop as Unicode text, ${region}`,
      separator: '\t',
      decimal,
      date: long,
      time,
      padded: true,
      quoted: false,
      lineEnd: '\r\n',
      encoding: 'utf-16',
    },
    {
      name: `free desktop, ${region}`,
      separator: list,
      decimal,
      date: brief,
      time,
      padded: true,
      quoted: true,
      lineEnd: '\n',
      encoding: 'utf-8',
    },
    {
      name: `in a browser, ${region}`,
      separator: ',',
      decimal,
      date: long,
      time,
      padded: false,
      quoted: false,
      lineEnd: '\r\n',
      encoding: 'utf-8',
    },
  ] as Saved[];
});

/** A sheet as it was typed, and saved so; a remark stands above it. */
export function save({ header, rows }: Sheet, how: Saved, remark = '# typed in, and saved'): Uint8Array {
  const cell = (text: string) => {
    const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
    if (year && month && day) return how.date(year, month, day);
    const [, hours, minutes] = /^(\d{2}):(\d{2})$/.exec(text) ?? [];
    if (hours && minutes) return how.time(Number(hours), minutes);
    return /^-?\d+\.\d+$/.test(text) ? text.replace('.', how.decimal) : text;
  };
  const written = (text: string) =>
    text.includes(how.separator) || text.includes('"') || (how.quoted && /[a-z]/i.test(text))
      ? `"${text.replaceAll('"', '""')}"`
      : text;
  const line = (cells: string[]) => cells.map((text) => written(cell(text))).join(how.separator);
  const width = header.length + (how.padded ? 2 : 0);
  const filled = (cells: string[]) => [
    ...cells,
    ...Array<string>(Math.max(0, width - cells.length)).fill(''),
  ];
  const text = [[remark], header, ...rows]
    .map((cells) => `${line(how.padded ? filled(cells) : cells)}${how.lineEnd}`)
    .join('');
  return encoded(text, how.encoding);
}

function encoded(text: string, encoding: Saved['encoding']): Uint8Array {
  if (encoding !== 'utf-16') return new TextEncoder().encode(encoding === 'utf-8' ? text : `\ufeff${text}`);
  const units = new DataView(new ArrayBuffer(2 * text.length + 2));
  [...`\ufeff${text}`].forEach((sign, at) => {
    units.setUint16(2 * at, sign.charCodeAt(0), true);
  });
  return new Uint8Array(units.buffer);
}
