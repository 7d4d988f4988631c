/** Every way of surveying the same site otherwise, and what may differ in the answer then. */
import { siteModel } from '../../lib/site/index.js';
import { surveyOf } from '../folder.js';
import { type Answer, answerOf, differences } from './answer.js';
import { mirrored, seenFromNorth } from './mirror.js';
import {
  atOtherHours,
  inAnotherOrder,
  inOtherUnits,
  onAnotherMark,
  onOtherAxes,
  WORSE_PLACES,
  withDefaultsSaid,
  withHoleDryTooSoon,
  withNothingSaid,
  withWorse,
} from './otherwise.js';
import { type Files, sheetOf } from './sheets.js';

/** A way to survey the same site otherwise. */
export interface Way {
  name: string;
  /** undefined where it cannot be applied to this survey */
  to(files: Files): Files | undefined;
  /** warnings that it may add, and such as it takes away */
  adds?: string[];
  removes?: string[];
  /** what differs in the answers; absent: all that is not the same */
  compare?(before: Answer, after: Answer): string[];
}

const levelled = (change: (files: Files) => Files) => (files: Files) =>
  files['levels.csv'] ? change(files) : undefined;
const hasRole = (files: Files, role: string) => {
  const { header, rows } = sheetOf(files['levels.csv'] ?? 'role\n');
  return rows.some((row) => row[header.indexOf('role')] === role);
};
const looked = (change: (files: Files) => Files | undefined) => (files: Files) =>
  files['water.csv'] ? change(files) : undefined;

/** An answer without the entries of a point and without its name in the assumptions. */
function without(point: string, value: unknown): unknown {
  if (Array.isArray(value))
    return value
      .filter((one) => !(one !== null && typeof one === 'object' && Object.values(one).includes(point)))
      .map((one) => without(point, one));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, without(point, one)]));
}

/** Four weeks in hours and seconds. */
const WEEKS: Record<string, number> = { hours: 672, hours_empty_safe: 672, seconds: 672 * 3600 };

/** An answer with every time of more than four weeks as that. */
function withoutWeeks(value: unknown, key = ''): unknown {
  if (typeof value === 'number') return Math.min(value, WEEKS[key] ?? Number.POSITIVE_INFINITY);
  if (Array.isArray(value)) return value.map((one) => withoutWeeks(one, key));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, withoutWeeks(one, name)]));
}

/** Share of the accepted risk from which another month's length may turn it. */
const EDGE = 0.75;

/** Two answers without the other use that would do, where only one has it and it all but fails: a day more of a wet month turns it. */
function onTheEdge(before: unknown, after: unknown): [unknown, unknown] {
  const uses = [before, after].map(
    (one) => JSON.stringify(one).match(/"instead":(?!null)\{.*?"per_year":([\d.]+)/)?.[1],
  );
  const [only] = uses.filter((each) => each !== undefined);
  const aside = (one: unknown) =>
    JSON.parse(JSON.stringify(one, (key, value) => (key === 'instead' ? null : value)));
  const edge = uses.includes(undefined) && Number(only) > EDGE * ACCEPTED;
  return edge ? [aside(before), aside(after)] : [before, after];
}

/** A year, where the survey says nothing else. */
const ACCEPTED = 0.02;

const assumedAside = ({ report }: Answer): unknown => {
  const { assumed: _assumed, ...rest } = report as Record<string, unknown>;
  return rest;
};

/** Roles of which one is chosen: with none there, the worse one is the best. */
const CHOSEN = ['outlet', 'discharge'];

export const WAYS: Way[] = [
  ...[5, 11].map(
    (seed): Way => ({
      name: `rows in another order (${seed})`,
      to: (files) => inAnotherOrder(files, seed),
      adds: ['out-of-order'],
    }),
  ),
  { name: 'axes elsewhere', to: levelled((files) => onOtherAxes(files, { east: 37, north: -12 })) },
  { name: 'axes turned by 90°', to: levelled((files) => onOtherAxes(files, { degrees: 90 })) },
  { name: 'axes turned by 17°', to: levelled((files) => onOtherAxes(files, { degrees: 17 })) },
  { name: 'levels above another mark', to: levelled((files) => onAnotherMark(files, 63.25)) },
  { name: 'looks three hours later', to: looked((files) => atOtherHours(files, 180)) },
  { name: 'looks an hour earlier', to: looked((files) => atOtherHours(files, -60)) },
  { name: 'in other units', to: inOtherUnits },
  {
    name: 'rows that say nothing',
    to: withNothingSaid,
    adds: ['duplicate-row'],
  },
  {
    name: 'a hole in clay dry too soon',
    to: looked(withHoleDryTooSoon),
    adds: ['dry-too-soon', 'hole-without-ground'],
  },
  ...Object.entries(WORSE_PLACES).flatMap(([kind, { point, role }]) =>
    [true, false].map(
      (first): Way => ({
        name: `a worse ${kind} ${first ? 'before' : 'after'} the others`,
        to: levelled((files) =>
          CHOSEN.includes(role) && !hasRole(files, role) ? files : withWorse(files, kind, first),
        ),
        // A worse one may be one that is hard to believe.
        adds: ['doubtful-value'],
        compare: (before, after) => differences(assumedAside(before), without(point, assumedAside(after))),
      }),
    ),
  ),
  {
    name: 'defaults said',
    to: (files) => withDefaultsSaid(files, siteModel(surveyOf(files), { samples: 8 }).assumptions),
    removes: ['missing-latitude'],
    compare: (before, after) => differences(assumedAside(before), assumedAside(after)),
  },
  {
    name: 'half a year later in the other hemisphere',
    // With weather the days of a month are other ones; that is compared by itself.
    to: (files) =>
      files['weather.csv'] || !/^latitude,/m.test(files['site.csv'] ?? '') ? undefined : mirrored(files),
    adds: ['out-of-order'],
    // An emptying of weeks runs into months of other lengths.
    compare: (before, after) =>
      differences(
        ...onTheEdge(
          seenFromNorth(withoutWeeks(before.report), false),
          seenFromNorth(withoutWeeks(after.report), true),
        ),
      ),
  },
];

/** What differs when a site is surveyed another way; undefined where the way leads to the same files or nowhere. */
export function violations(files: Files, way: Way, before: Answer): string[] | undefined {
  const other = way.to(files);
  if (!other || JSON.stringify(other) === JSON.stringify(files)) return undefined;
  const after = answerOf(other);
  const compare = way.compare ?? ((one, two) => differences(one.report, two.report));
  const aside = [...(way.adds ?? []), ...(way.removes ?? [])];
  const unexpected = (codes: readonly string[]) => codes.filter((code) => !aside.includes(code));
  return [
    ...compare(before, after),
    ...differences(unexpected(before.codes), unexpected(after.codes), 'warnings'),
  ];
}
