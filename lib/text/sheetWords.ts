/** What stands on the drawings to dig by. */
import type { Report } from '../contract/index.js';
import { FOOT, formatQuantity, type UnitSystem } from '../units/index.js';
import { slabLabel } from './slabWords.js';

/** A scale as it is written: `1:50`, `1 in = 4 ft (1:48)`. */
export function scaleText(scale: number, units: UnitSystem): string {
  return units === 'us' ? `1 in = ${Number((scale / 12).toFixed(2))} ft (1:${scale})` : `1:${scale}`;
}

/** A length on a dimension line. */
export function dimensionText(value: number, units: UnitSystem): string {
  return formatQuantity(value, 'length', units);
}

/** A level on the datum, and the same on the surveyor's mark: `+0.300 (10.300)`; metres, or decimal feet. */
export function levelsText(level: number, datum: number, units: UnitSystem): string {
  return `${signedLevel(level, units)} (${bareLevel(level + datum, units)})`;
}

/** A level with its sign, without its unit, which the title block tells. */
export function signedLevel(level: number, units: UnitSystem): string {
  const bare = bareLevel(level, units);
  return Number(bare.replace('−', '-')) > 0 ? `+${bare}` : bare;
}

/** A level without sign where it is above nought. */
export function bareLevel(level: number, units: UnitSystem): string {
  const text = units === 'us' ? (level / FOOT).toFixed(2) : level.toFixed(3);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** Slope of a side as it is cut. */
export function slopeText(slope: number): string {
  return `1 : ${slopeNumber(slope)}`;
}

/**
 * Sides as they are reckoned.
 * @param slope - horizontal to 1 vertical
 * @param drawn - as wished, where the ground has them laid back
 */
export function sidesText(slope: number, drawn: number | undefined): string {
  return drawn === undefined
    ? slopeText(slope)
    : `${slopeText(slope)}, for they do not stand at ${slopeText(drawn)}`;
}

/** How far a side goes out for each 1 down. */
export const slopeNumber = (slope: number): string => String(Number(slope.toFixed(2)));

/** Names of the parts of a sheet. */
const SHEET_PARTS = {
  pond: 'Plan of the pond, with pegs',
  site: 'Plan of the garden',
  section: 'Section',
  profile: 'Long profile of the pipe',
  bed: 'Bed, cut across the pipe',
  side: 'Side and bank',
} as const;

/** Names of sheets. */
export const SHEET_NAMES = ['Plans', 'Section and details'] as const;

/** The name of a part and its scale. */
export function partTitle(part: keyof typeof SHEET_PARTS, scale: string): string {
  return `${SHEET_PARTS[part]}, ${scale}`;
}

/** Both scales of a long profile. */
export function profileScale(level: number, upright: number, units: UnitSystem): string {
  return `along ${scaleText(level, units)}, up ${scaleText(upright, units)}`;
}

/** What stands in the title block, a row each. */
export function titleRows(
  report: Report,
  { sheet, issued, units }: { sheet: number; issued: string | undefined; units: UnitSystem },
): [name: string, ...rest: string[]] {
  const unit = units === 'us' ? 'decimal feet' : 'metres';
  return [
    `${report.result.survey.name}: ${SHEET_NAMES[sheet]}`,
    `Sheet ${sheet + 1} of ${SHEET_NAMES.length}. Date of issue: ${issued ?? 'not said'}. Levels in ${unit} from the lowest ground at the rim, in brackets on the mark of levels.csv.`,
    `From the survey of ${report.result.survey.name}, ${report.result.survey.sha256.slice(0, 12)}. Print at 100 %, then hold a ruler to the bars.`,
    'Not for construction without the checks named on the page. What has no room here stands in the setting-out table.',
  ];
}

/** Short names on the sheets. */
export const MARKED = {
  rim: 'rim',
  crest: 'top of bank',
  full: 'full',
  floor: 'floor',
  dug: 'dug to',
  slab: 'top of slab',
  ground: 'ground',
  liner: 'liner, fleece, fabric',
  pipe: 'pipe',
  undisturbed: 'undisturbed ground',
  fabric: 'drainage fabric',
  sump: 'sump',
  chainage: 'from the head',
  invert: 'invert',
  mark: 'on the mark',
  overflow: 'runs over here',
  north: 'north not surveyed',
  unknown: 'ground not levelled',
} as const;

/** What a sheet shows, for whoever does not see it. */
export function sheetAlt(report: Report, sheet: number, units: UnitSystem): string {
  const { pond, setting_out: set, result } = report;
  const size = (v: number) => formatQuantity(v, 'length', units);
  const { depth_m, raise_m } = result.recommendation;
  return sheet === 0
    ? `Plans to scale: the pond, ${size(pond.length_m)} by ${size(pond.width_m)} at the rim, with ${set?.pegs.length ?? 0} numbered pegs, and the garden with the points distances are taped from. Places are in the table below.`
    : `Section to scale: floor at ${formatQuantity(raise_m - depth_m, 'level', units)}, rim at ${formatQuantity(raise_m, 'level', units)}, sides ${slopeText(pond.side_slope)}${report.slab ? `, with a ${slabLabel(report.slab, units)} thick on the liner` : ''}${set?.pipe ? ', the long profile of the pipe and its bed' : ''}. Levels are in the table below.`;
}
