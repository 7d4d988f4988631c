/**
 * Daily weather of a station in the forms of GHCN-Daily, the Global Historical Climatology Network of NOAA/NCEI.
 *
 * Forms, units and flags by its readme.txt (section III, fixed-width `.dly`) and readme-by_station.txt (lines with
 * commas), seen as quoted in public repositories: precipitation in tenths of mm, temperatures in tenths of °C, -9999
 * missing, a quality flag for a value that failed a check, measurement flag T for a trace.
 */

import type { Findings } from './problem.js';
import type { Sheet, SheetRow } from './sheet.js';

const STATION = '[A-Z]{2}[A-Z0-9][A-Z0-9_-]{8}';
const BY_STATION = new RegExp(
  `^(?<id>${STATION}),(?<y>\\d{4})(?<m>\\d{2})(?<d>\\d{2}),(?<element>[A-Z0-9]{4}),(?<value>-?\\d{1,5}),(?<mark>[^,]?),(?<quality>[^,]?),[^,]?(,\\d{0,4})?$`,
);
const FIXED_WIDTH = new RegExp(
  `^(?<id>${STATION})(?<y>\\d{4})(?<m>0[1-9]|1[0-2])(?<element>[A-Z0-9]{4})(?<days>(?:[ \\d-]{4}\\d...){28,31})`,
);
/** The last flags of a line may have been trimmed off. */
const WIDTH = 269;
const OF_A_DAY = 8;

/** The elements that are used, with the columns they become. */
const USED = { PRCP: 'rain', TMIN: 'tmin', TMAX: 'tmax' } as const;
type Used = keyof typeof USED;
const isUsed = (element: string): element is Used => element in USED;

const MISSING = -9999;
const DAY_MS = 86_400_000;

interface Reading {
  line: number;
  id: string;
  date: string;
  element: string;
  value: number;
  mark: string;
  quality: string;
}

/** Is a text in one of the two forms, by its first line? */
export function isGhcnDaily(text: string): boolean {
  const end = text.indexOf('\n');
  const first = (end === -1 ? text : text.slice(0, end)).replace(/\r$/, '');
  return BY_STATION.test(first) || FIXED_WIDTH.test(first.padEnd(WIDTH));
}

/**
 * The days of a station as a sheet of `date,rain_mm,tmin_c,tmax_c`. What failed a check of the network counts as
 * missing; what was left out is told.
 * @param text in either form
 * @param findings receives what can't be read, and what was not used
 */
export function readGhcnDaily(file: string, text: string, findings: Findings): Sheet {
  const days = new Map<string, { line: number; values: Partial<Record<Used, string>> }>();
  const stations = new Set<string>();
  const unused = new Set<string>();
  const count = { failed: 0, presumed: 0, several: 0 };
  for (const { line, id, date, element, value, mark, quality } of readings(file, text, findings)) {
    stations.add(id);
    if (stations.size > 1) continue;
    if (element === 'MDPR' && value !== MISSING) count.several++;
    if (!isUsed(element)) {
      unused.add(element);
      continue;
    }
    if (value === MISSING) continue;
    if (quality !== '') {
      count.failed++;
      continue;
    }
    if (mark === 'P') count.presumed++;
    const said = days.get(date) ?? { line, values: {} };
    days.set(date, said);
    const written = String(value / 10);
    if (said.values[element] !== undefined && said.values[element] !== written)
      findings.refuse({
        file,
        line,
        code: 'contradiction',
        message: `invalid '${value}' - ${element} of ${date} was ${said.values[element]} already`,
        found: String(value),
        remedy: 'Keep the line that is right.',
      });
    said.values[element] ??= written;
  }
  if (stations.size > 1)
    findings.refuse({
      file,
      code: 'contradiction',
      message: `invalid stations - ${[...stations].slice(0, 5).join(', ')} stand in one file`,
      expected: 'one station',
      remedy: 'Keep the lines of the station nearest to the pond.',
    });
  const rows: SheetRow[] = [...days]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, { line, values }]) => ({
      line,
      cells: [date, values.PRCP ?? '', values.TMIN ?? '', values.TMAX ?? ''],
    }));
  const parts = [
    `${[...stations][0]} of GHCN-Daily`,
    rows.length > 0 && `${rows[0]?.cells[0]} to ${rows.at(-1)?.cells[0]}`,
    count.failed > 0 && `${count.failed} values that failed a check of the network count as missing`,
    count.several > 0 &&
      `${count.several} sums over several days (MDPR) are not used: those days count as missing`,
    count.presumed > 0 && `${count.presumed} missing days are presumed dry there`,
    unused.size > 0 && `not used: ${[...unused].sort().join(', ')}`,
  ];
  findings.warn({
    file,
    code: 'read-as',
    message: `read as the station ${parts.filter(Boolean).join('; ')}`,
  });
  return {
    file,
    header: { line: 1, cells: ['date', 'rain_mm', 'tmin_c', 'tmax_c'] },
    rows,
    decimals: 'point',
  };
}

function* readings(file: string, text: string, findings: Findings): Generator<Reading> {
  let at = 0;
  for (const written of text.split('\n')) {
    at++;
    if (written.trim() === '') continue;
    const line = written.replace(/\r$/, '');
    const fields = BY_STATION.exec(line)?.groups ?? FIXED_WIDTH.exec(line.padEnd(WIDTH))?.groups;
    if (!fields) {
      findings.refuse({
        file,
        line: at,
        code: 'ragged-row',
        message: `invalid row '${line.slice(0, 40)}' - not in the form of the first`,
        expected: 'ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,OBSTIME, or 31 days of a month at fixed width',
        remedy: 'Take the file as it was downloaded.',
      });
      continue;
    }
    const { id = '', y = '', m = '', d, element = '', value, mark = '', quality = '', days = '' } = fields;
    const one = { line: at, id, element };
    if (d !== undefined) {
      yield {
        ...one,
        date: `${y}-${m}-${d}`,
        value: Number(value),
        mark: mark.trim(),
        quality: quality.trim(),
      };
      continue;
    }
    const last = new Date(Date.UTC(Number(y), Number(m), 1) - DAY_MS).getUTCDate();
    for (let day = 1; day <= last; day++) {
      const cell = days.slice((day - 1) * OF_A_DAY, day * OF_A_DAY);
      yield {
        ...one,
        date: `${y}-${m}-${String(day).padStart(2, '0')}`,
        value: Number(cell.slice(0, 5)),
        mark: cell.charAt(5).trim(),
        quality: cell.charAt(6).trim(),
      };
    }
  }
}
