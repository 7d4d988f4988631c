/** Columns of months, days and times of day. */

import { SECONDS_PER_DAY } from '../formula/index.js';
import { CellFault, type Column } from './column.js';
import { type Calendar, commonOrder, isDay, namedMonth, writtenDate } from './dateOrder.js';

/** A calendar month, 1 to 12 or its English name. */
export function month(): Column<number> {
  return {
    read(cell) {
      const found = /^(0?[1-9]|1[0-2])$/.test(cell) ? Number(cell) : namedMonth(cell);
      if (found !== undefined) return found;
      throw new CellFault(
        'invalid-month',
        `invalid '${cell}' - not a month`,
        '1 to 12',
        'Write the month as a number, 1 to 12, or by its name.',
      );
    },
  };
}

/** Months apart by semicolons, commas or 'and', in order and each once; 'March to May' is all of them. */
export function months(): Column<number[]> {
  const one = month();
  const read = (part: string) => one.read(part.trim(), {});
  return {
    read(cell) {
      const hyphen = /^([^-–]+)[-–]([^-–]+)$/.exec(cell);
      if (hyphen) {
        const [first, last] = [read(hyphen[1] as string), read(hyphen[2] as string)];
        throw new CellFault(
          'invalid-month',
          `invalid '${cell}' - it can be ${first} and ${last}, or ${first} to ${last}`,
          'months apart by semicolons',
          `Write '${first};${last}' or '${first} to ${last}'.`,
        );
      }
      const list = cell.split(/[;,&]|\band\b/i).flatMap((part) => {
        const [from, to, ...more] = part.split(/\bto\b/i);
        if (to === undefined || more.length > 0) return [read(part)];
        const [first, last] = [read(from as string), read(to)];
        return Array.from({ length: ((last - first + 12) % 12) + 1 }, (_, at) => ((first - 1 + at) % 12) + 1);
      });
      return [...new Set(list)].sort((a, b) => a - b);
    },
  };
}

const DAY_MS = 86_400_000;
const DATE_REMEDY = 'Write year-month-day, such as 2024-11-03.';
/** What spreadsheets put behind a day without a time. */
const MIDNIGHT = /[ T]0?0:00(:00(\.0+)?)?$/;
const dayAlone = (cell: string) => cell.replace(MIDNIGHT, '');

/** A day: whole days since 1970-01-01. */
export function date(): Column<number> {
  return {
    study(cells) {
      const days = cells.map(dayAlone);
      const dates = commonOrder(days);
      const example = days.find((day) => {
        const written = writtenDate(day);
        return written !== undefined && 'open' in written && written.open.size > 0;
      });
      if (dates === undefined || example === undefined) return { style: {} };
      const told = `dates such as '${example}' are read ${dates}: ${dateText(date().read(example, { dates }))}`;
      return { style: { dates }, told };
    },
    read(cell, { dates }) {
      const written = writtenDate(dayAlone(cell));
      if (!written) throw notADate(cell);
      const found = 'sure' in written ? [written.sure] : [...written.open.values()];
      const fitting =
        'open' in written && dates !== undefined && written.open.has(dates)
          ? [written.open.get(dates) as Calendar]
          : found;
      const days = [...new Set(fitting.filter(isDay).map(dayOf))].sort((a, b) => a - b);
      const [day] = days;
      if (day === undefined)
        throw new CellFault(
          'invalid-date',
          `invalid '${cell}' - no such day`,
          'a day of the calendar',
          DATE_REMEDY,
        );
      if (days.length > 1) {
        const readings = days.map(dateText).join(' or ');
        throw new CellFault(
          'ambiguous-date',
          `invalid '${cell}' - it can be ${readings}, and no row of the column says which`,
          'YYYY-MM-DD',
          `Write ${readings}.`,
        );
      }
      const { year } = fitting.find((one) => dayOf(one) === day) as Calendar;
      if (year < 1800 || year > 2200)
        throw new CellFault(
          'outside-range',
          `outside '${cell}' - years 1800 to 2200 are possible`,
          '1800 to 2200',
          DATE_REMEDY,
        );
      return day;
    },
  };
}

const dayOf = ({ year, month: monthOfYear, day }: Calendar) => Date.UTC(year, monthOfYear - 1, day) / DAY_MS;

/** Day 0 of the two systems in which spreadsheets number days. */
const SERIAL_FROM = [Date.UTC(1899, 11, 30) / DAY_MS, Date.UTC(1904, 0, 1) / DAY_MS] as const;

function notADate(cell: string): CellFault {
  const refuse = (why: string, remedy: string) =>
    new CellFault('invalid-date', `invalid '${cell}' - ${why}`, 'YYYY-MM-DD', remedy);
  if (/^\d{5}$/.test(cell)) {
    const [since1900, since1904] = SERIAL_FROM.map((from) => dateText(from + Number(cell)));
    return refuse(
      `a spreadsheet's number of a day can be ${since1900} or ${since1904}`,
      'Format the column as dates, year-month-day, and save it again.',
    );
  }
  const [, day, time] = /^(.*?\d)[ T,]+(\d{1,2}:\d{2}.*)$/.exec(cell) ?? [];
  if (day !== undefined && writtenDate(day))
    return refuse(
      'a time stands behind the day',
      `Leave '${day}' here and write ${time} in the column time.`,
    );
  return refuse('not a date', DATE_REMEDY);
}

/** A day number as `2024-11-03`. */
export function dateText(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}

/** A time of day as `09:00`, `9am`, `9h30` or `noon`: fraction of the day. */
export function timeOfDay(): Column<number> {
  return {
    read(cell) {
      const text = cell.toLowerCase().replace(/\s|\.(?=m)|\.$/g, '');
      const clock =
        /^(\d{1,2})(?::|h)(\d{2})?(?::(\d{2}))?([ap]m)?$/.exec(text) ?? /^(\d{1,2})()()([ap]m)$/.exec(text);
      const [, hours, minutes = '0', seconds = '0', half] = text === 'noon' ? ['', '12'] : (clock ?? []);
      const least = half ? 1 : 0;
      const most = half ? 12 : 23;
      if (
        hours === undefined ||
        Number(hours) < least ||
        Number(hours) > most ||
        Number(minutes) > 59 ||
        Number(seconds) > 59
      )
        throw notATime(cell);
      const hour = half ? (Number(hours) % 12) + (half === 'pm' ? 12 : 0) : Number(hours);
      return (hour * 3600 + Number(minutes) * 60 + Number(seconds)) / SECONDS_PER_DAY;
    },
  };
}

function notATime(cell: string): CellFault {
  const refuse = (why: string, remedy: string) =>
    new CellFault('invalid-time', `invalid '${cell}' - ${why}`, 'HH:MM, 00:00 to 23:59', remedy);
  const [, hours, minutes] = /^(\d{1,2})(?:[.,](\d{2}))?$/.exec(cell) ?? [];
  if (hours === undefined || Number(hours) > 23)
    return refuse('not a time of day', 'Write it like 09:00 or 17:30.');
  const at = (hour: number, minute: number) => timeText((hour + minute / 60) / 24).slice(0, 5);
  const readings =
    minutes === undefined
      ? Number(hours) >= 1 && Number(hours) < 12
        ? [at(Number(hours), 0), at(Number(hours) + 12, 0)]
        : [at(Number(hours), 0)]
      : [
          ...(Number(minutes) < 60 ? [at(Number(hours), Number(minutes))] : []),
          at(Number(hours), 0.6 * Number(minutes)),
        ];
  const all = [...new Set(readings)].join(' or ');
  return refuse(`it can be ${all}`, `Write ${all}.`);
}

/** A fraction of the day as `09:00:00`. */
export function timeText(fraction: number): string {
  return new Date(Math.round(fraction * SECONDS_PER_DAY) * 1000).toISOString().slice(11, 19);
}
