/** The same site half a year away, in the other hemisphere. */
import { dayNumber, isoDate } from '../../lib/climate/index.js';
import { changed, eachCell, eachItem, type Files } from './sheets.js';

/** From 1 October to 1 April; a date between the 4th and the 25th stays within its opposite month. */
const HALF_YEAR = 183;
const opposite = (month: number) => ((month + 5) % 12) + 1;
const later = (date: string) => {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  return isoDate(dayNumber(year, month, day) + HALF_YEAR);
};

/** A survey of the same ground and seasons at the opposite latitude. */
export function mirrored(files: Files): Files {
  const month = (cell: string) => (/^\d+$/.test(cell) ? String(opposite(Number(cell))) : cell);
  const steps: ((all: Files) => Files)[] = [
    (all) => eachCell(all, 'heads.csv', /^month$/, month),
    (all) => eachCell(all, 'climate.csv', /^month$/, month),
    (all) => eachCell(all, 'water.csv', /^date$/, later),
    (all) => eachCell(all, 'weather.csv', /^date$/, later),
    (all) =>
      eachItem(all, 'pond.csv', /^(emptied_in|built_in|filled_in)$/, (value, unit) => [
        value.split(';').map(month).join(';'),
        unit,
      ]),
    (all) => eachItem(all, 'site.csv', /^latitude$/, (value, unit) => [String(-Number(value)), unit]),
    (all) =>
      changed(all, 'site.csv', ({ header, rows }) => ({
        header,
        rows: rows.some(([item]) => item === 'latitude') ? rows : [...rows, ['latitude', '-50', 'deg', '']],
      })),
  ];
  return steps.reduce((all, step) => step(all), files);
}

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);
const NAMES = new RegExp(`\\b(${MONTHS.join('|')})\\b`, 'g');

/** What a row of situations, of the sheet or of the ladder is of. */
function placeOf(row: unknown): string {
  const { of, situation, highest_of, exceeded, month } = row as Record<string, unknown>;
  return [of, situation, highest_of, exceeded, String(month ?? '').padStart(2, '0')].join(' ');
}

/** An answer's months as if in the same hemisphere: its twelves from July, its words a bag. */
export function seenFromNorth(value: unknown, turned: boolean, key = ''): unknown {
  if (typeof value === 'string') {
    const said = turned
      ? value
          .replace(NAMES, (name) => MONTHS[(MONTHS.indexOf(name) + 6) % 12]!)
          .replace(/^--(\d\d)$/, (_, month) => `--${String(opposite(Number(month))).padStart(2, '0')}`)
      : value;
    // Months are listed from January on.
    return NAMES.test(said)
      ? said
          .split(/[\s,]+/)
          .sort()
          .join(' ')
      : said;
  }
  if (typeof value === 'number') return turned && key === 'month' ? opposite(value) : value;
  if (Array.isArray(value)) {
    if (
      /^(months|danger_months|emptied_in|cast_in|at)$/.test(key) &&
      value.every((one) => typeof one === 'number')
    )
      return (turned ? value.map(opposite) : [...value]).sort((a, b) => a - b);
    const yearly = value.length === 12 && key !== 'assumed';
    const twelve = turned && yearly ? [...value.slice(6), ...value.slice(0, 6)] : value;
    const seen = twelve.map((one) => seenFromNorth(one, turned, key));
    // Rows that name their month are listed from January on.
    return /^(situations|ladder|rows)$/.test(key)
      ? seen.sort((a, b) => (placeOf(a) < placeOf(b) ? -1 : 1))
      : seen;
  }
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, seenFromNorth(one, turned, name)]),
  );
}
