/** Names of pegs, and what is to be known before anything is set out by them. */
import type { Peg, Report, SettingOut } from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

const NAMES: Record<Peg['of'], string> = {
  rim: 'rim',
  crest: 'top of the bank, inner edge',
  shelf: 'inner edge of the shelf',
  toe: 'foot of the side',
  'pipe-head': 'head of the pipe, inspection pipe',
  'pipe-round': 'pipe round the floor',
  'branch-head': 'head of a branch',
  'pipe-joins': 'pipe turns out of the bed',
  'pipe-leaves-bed': 'pipe leaves the bed',
  'pipe-at-rim': 'pipe under the rim',
  chainage: 'pipe',
  mouth: 'mouth of the pipe',
  trench: 'trench',
  sump: 'sump, corner',
};

/**
 * What a peg marks.
 * @param peg - of a setting-out table
 * @param units - how numbers are written
 * @returns such as `rim, corner A` or `pipe, 10.00 m from its head`
 */
export function pegName({ of, corner, angle_deg, chainage_m, edge }: Peg, units: UnitSystem): string {
  const from = chainage_m === undefined ? '' : `, ${plain(chainage_m, units)} from its head`;
  if (edge !== undefined)
    return `${edge} edge of the trench ${chainage_m === undefined ? '' : `at ${plain(chainage_m, units)}`}`.trim();
  if (corner !== undefined) return `${NAMES[of]}, corner ${corner}`;
  if (angle_deg !== undefined) return `${NAMES[of]}, at ${angle_deg}°`;
  return `${NAMES[of]}${from}`;
}

const FROM: Record<NonNullable<Peg['ground_from']>, string> = {
  plane: 'plane through the rim points',
  nearest: 'nearest point levelled',
  'level-rim': 'level ground at the rim',
};

/** Where the level of the ground at a peg comes from, or that nobody knows it. */
export function groundWords({ ground_from }: Peg): string {
  return ground_from === null ? 'not levelled' : FROM[ground_from];
}

/** Names of the two points that distances are taped from. */
export function referenceNames({ references }: SettingOut): [string, string] {
  return [references[0].name ?? 'peg A', references[1].name ?? 'peg B'];
}

/**
 * What is to be known before anything is set out.
 * @param report - from {@link reportOf}, with something to set out
 * @param units - how numbers are written
 * @returns sentences
 */
export function settingOutWords(report: Report, units: UnitSystem): string[] {
  const set = report.setting_out;
  if (!set) return [];
  const { pond, result } = report;
  const size = (v: number) => formatQuantity(v, 'length', units);
  const [a, b] = referenceNames(set);
  const round = pond.shape !== 'box';
  const { pipe } = set;
  return [
    set.axes === 'survey'
      ? `x and y are those of levels.csv. The pond's middle is taken as the mean of its rim points, its length along the ${Math.abs(set.along.x) > 0.5 ? 'x' : 'y'} axis, on which they reach farther. That is an assumption: turn the pond on the ground first if you mean it otherwise.`
      : 'levels.csv has no x and y for the rim, so x runs along the length of the pond and y across it, to the left, both from its middle. Which way the length points is yours to choose: as drawn, the drain leaves along +x.',
    ...(set.rim_off_m !== null && set.rim_off_m > 0.1
      ? [
          `A rim point of the survey lies ${size(set.rim_off_m)} off the rim set out here. Find out which is right before you dig.`,
        ]
      : []),
    set.references[0].name === null
      ? `Distances are taped from two pegs, A and B, that you drive beside the pond before you dig: A at x ${plain(set.references[0].x_m, units)}, y ${plain(set.references[0].y_m, units)}, B at x ${plain(set.references[1].x_m, units)}, y ${plain(set.references[1].y_m, units)}.`
      : `Distances are taped level from ${a} and ${b}.`,
    `The side of a peg is that of somebody who stands at ${a} and looks to ${b}.`,
    `The datum is the lowest natural ground at the rim; it stands at ${levelPlain(set.datum_mark_m, units)} on the mark of levels.csv.`,
    'Dig to the level named. At the foot of the side that is the underside of what is laid there, in the bed the groove under the pipe. In the trench dig deeper by the wall of the pipe and what it lies on. Where the cut has a minus sign, fill up. Left and right of the trench are those of somebody who looks down the pipe.',
    ...cutBackWords(report, set, size),
    ...(round
      ? [
          'Angles are turned in the middle of the pond, against the clock, from the direction of its length towards growing x or y.',
        ]
      : []),
    ...(set.pegs.some(({ ground_m }) => ground_m === null)
      ? [
          `Where the ground was not levelled, no ground and no cut is told: level it at the peg and take the level dug to from it. ${pond.high_rim_m > 0 ? `At the rim it lies between 0 and ${levelPlain(pond.high_rim_m, units, '+')}.` : ''}`.trim(),
        ]
      : []),
    ...(pipe ? pipeWords(report, pipe, units) : []),
    ...(result.recommendation.option === 'cutoff-drain' || result.recommendation.also.includes('cutoff-drain')
      ? ['The drain uphill is not set out: its place follows the ground there, which nobody levelled.']
      : []),
  ];
}

/** What a cut at the rim means: a peg there marks the foot of what is still to be laid back. */
function cutBackWords({ pond, result }: Report, { pegs }: SettingOut, size: (v: number) => string): string[] {
  const { raise_m } = result.recommendation;
  // A plane through the rim points may stand higher at a corner than at any of them.
  const cuts = pegs.flatMap(({ of, cut_m }) => (of === 'rim' && cut_m !== null ? [cut_m] : []));
  const cut = Math.max(pond.high_rim_m - raise_m, ...cuts);
  if (!(cut > LEVEL_RIM) || pond.side_slope === 0) return [];
  return [
    `Where a rim peg has a cut, do not dig an upright face there: above the rim the sides go on at the same slope, ${Number(pond.side_slope.toFixed(2))} to 1, up to the ground. The cut is at most ${size(cut)}, so its top lies up to ${size(pond.side_slope * cut)} farther out than the rim, and more where the ground rises on. No peg marks it.`,
  ];
}

function pipeWords(
  { drain, outlet }: Report,
  pipe: NonNullable<SettingOut['pipe']>,
  units: UnitSystem,
): string[] {
  const size = (v: number) => formatQuantity(v, 'length', units);
  const [rim, last] = [pipe.way[pipe.leaves_bed]!, pipe.way.at(-1)!];
  const run = last.chainage_m - rim.chainage_m;
  const end = drain?.input.end;
  const place = outlet?.name ?? (end?.kind === 'sump' ? end.to : undefined) ?? end?.name ?? '';
  return [
    pipe.known_way
      ? `The pipe is drawn straight from the pond ${pipe.sump ? 'to a sump on the side of' : 'to'} ${place}: ${size(run)} from the bed on, with a fall of ${percent(pipe.fall)}.`
      : `Which way ${place} lies the survey does not say. The pipe is drawn in line with the length: ${size(run)} from the bed on, with a fall of ${percent(pipe.fall)}. Lay it where it must go, and measure that way.`,
    ...(pipe.fall < pipe.least_fall - 1e-9
      ? [
          `That is flatter than the ${percent(pipe.least_fall)} a pipe is laid at: the way drawn is longer than the one the drain was designed for. Do not dig it so.`,
        ]
      : []),
  ];
}

const percent = (fall: number) => `${(100 * fall).toFixed(1).replace('-', '−')} %`;

/** A place or a distance as a tape has it. */
export function plain(value: number, units: UnitSystem): string {
  return formatQuantity(value, 'depth', units);
}

/** A level or a cut, to the millimetre in metres: a pipe falls by few of them. */
export function levelPlain(value: number, units: UnitSystem, sign = ''): string {
  if (units === 'us') return formatQuantity(value, sign === '' ? 'depth' : 'level', units);
  const size = Math.abs(value).toFixed(3);
  return `${Number(size) === 0 ? '' : value < 0 ? '−' : sign}${size} m`;
}

/** Heading of the distances from a reference. */
export function tieText(name: string): string {
  return `from ${name}`;
}
