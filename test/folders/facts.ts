/** pond.csv and site.csv: any facts that may stand together, from one end of what is possible to the other. */
import type { Ground, Rows } from './grammar.js';

/** A number in SI with its ends, in the way its unit cell says it. */
interface Range {
  low: number;
  high: number;
  /** what is usual, SI */
  usual: number;
  unit: string;
  /** SI a unit; absent: a length in the survey's own unit */
  per?: number;
}
const length = (low: number, high: number, usual: number): Range => ({ low, high, usual, unit: 'm' });
const other = (low: number, high: number, usual: number, unit: string, per: number): Range => ({
  low,
  high,
  usual,
  unit,
  per,
});
type Fact = Range | readonly string[];

const YES_NO = ['yes', 'no', 'unknown'];
const MONTHS = ['1', '3;9', '12;1;2', '1;2;3;4;5;6;7;8;9;10;11;12', '7'];
const [DAY, YEARS] = [86_400, (usual: number, high: number) => other(1, high, usual, '', 1)];

const SITE: Record<string, Fact> = {
  latitude: other(-90, 90, 52, 'deg', 1),
  show_units: ['metric', 'us'],
  country: ['GB', 'us', 'IE', 'DE', 'United States'],
  uphill_area: other(0, 1e6, 100, 'm2', 1),
  uphill_cover: ['lawn', 'bare', 'paved', 'woodland'],
  roof_area: other(0, 1e4, 60, 'm2', 1),
  roof_into_pond: other(0, 1e4, 40, 'm2', 1),
  storm_rain: other(0.001, 2, 0.04, 'mm', 0.001),
  storm_hours: other(300, 14 * DAY, 3600, 'min', 60),
  mains_power: YES_NO,
  pump_acceptable: YES_NO,
  discharge_allowed: YES_NO,
  protected_ground: ['no', 'no', 'no', ...YES_NO],
  wet_plants: YES_NO,
  shrinkable_clay: YES_NO,
  organic_smell: YES_NO,
  outlet_setback: length(0, 1000, 5),
  outlet_within_boundary: YES_NO,
  drain_blocked_once_in: YEARS(200, 10_000),
  flap_stuck_once_in: YEARS(20, 10_000),
  pump_out_once_in: YEARS(50, 10_000),
  power_cut_once_in: YEARS(2, 10_000),
  power_cut_hours: other(0, 30 * DAY, 7200, 'h', 3600),
  abstraction_limit: other(0, 1, 2e-4, 'm3/d', 1 / DAY),
  flood_every: YEARS(20, 1000),
  highest_water_mark: length(5, 12, 9.8),
  life: other(1, 200, 25, '', 1),
};

const POND: Record<string, Fact> = {
  side_slope: other(0, 10, 1, '', 1),
  ring_width: length(0, 5, 0.4),
  ring_depth: length(0, 6, 0.5),
  ring_fill: ['clay', 'topsoil', 'sand', 'gravel'],
  ring_cap: ['yes', 'no'],
  liner: ['epdm', 'pvc', 'hdpe', 'other'],
  wall: ['none', 'block', 'concrete'],
  floor_fall: other(0, 0.5, 0.02, '%', 0.01),
  edging_load: other(0, 200_000, 3000, 'kPa', 1000),
  overflow: ['ring', 'away'],
  emptied_in: [...MONTHS, 'never'],
  days_empty: other(3600, 366 * DAY, 3 * DAY, 'd', DAY),
  built_in: MONTHS,
  filled_in: MONTHS,
  highest_raise: length(0, 3, 0.4),
  margin: length(0, 1, 0.1),
  accepted_risk: other(1e-5, 0.9, 0.02, '%', 0.01),
};

/** Facts of which each rules others out: one line of each group, in full. */
const TOGETHER: Record<string, Fact>[][] = [
  [{}, { full_level: length(7, 13, 9.95) }, { water_above_rim_ground: length(-3, 3, 0) }],
  [
    {},
    { bedding: ['none'] },
    { bedding: ['sand', 'gravel', 'mat'] },
    { bedding: ['sand', 'gravel', 'mat'], bedding_thickness: length(0, 1, 0.05) },
  ],
  [{}, { ballast: ['none'] }, { ballast: ['gravel', 'slab'], ballast_thickness: length(0, 1.5, 0.1) }],
  [
    {},
    { state: ['planned'] },
    { state: ['existing'] },
    { state: ['existing'], bulge: ['yes', 'no'], old_drain: ['yes', 'no'] },
  ],
];

export function factsFile(file: 'pond.csv' | 'site.csv', ground: Ground): Rows {
  const { dice, text, length: tape, unit, levelled } = ground;
  const wild = dice.chance(0.4);
  /** A number of the range: usual, at an end, or anywhere between. */
  const number = ({ low, high, usual }: Range, most = high): number => {
    const top = Math.min(high, most);
    if (!wild && !dice.chance(0.1)) return Math.min(top, usual * dice.between(0.6, 1.5));
    if (dice.chance(0.4)) return dice.chance(0.5) ? low : top;
    // Sizes count by the factor where they are above nought.
    return low > 0 && top / low > 100 ? low * (top / low) ** dice.uniform() : dice.between(low, top);
  };
  const row = (item: string, fact: Fact, most?: number): string[] => {
    if (!('low' in fact)) return [item, dice.one(fact as readonly string[]), '', text()];
    const value = number(fact, most);
    return fact.per === undefined
      ? [item, tape(value), unit, text()]
      : [item, String(Number((value / fact.per).toPrecision(7))), fact.unit, text()];
  };
  const rows: Rows = [];
  const some = (facts: Record<string, Fact>, share: number) => {
    for (const [item, fact] of Object.entries(facts)) if (dice.chance(share)) rows.push(row(item, fact));
  };
  if (file === 'site.csv') {
    if (dice.chance(0.5)) rows.push(['name', text() || 'Nowhere', '', '']);
    some(SITE, dice.one([0.1, 0.4, 0.9]));
  } else {
    const depth = number(length(0.1, 6, 1));
    const shape = dice.one(['box', 'round', 'oval']);
    const side = () => number(length(0.3, 200, 4));
    const [long, wide] = [side(), side()];
    rows.push(['shape', shape, '', text()], ['depth', tape(depth), unit, text()]);
    if (dice.chance(0.15)) rows.push(row('area', other(0.1, 20_000, 12, 'm2', 1)));
    else {
      rows.push(['length', tape(long), unit, '']);
      if (shape !== 'round') rows.push(['width', tape(wide), unit, '']);
    }
    some(POND, dice.one([0.1, 0.3, 0.8]));
    for (const group of TOGETHER)
      some(dice.one(group.filter((facts) => levelled || !('full_level' in facts))), 1);
    if (dice.chance(0.3))
      rows.push(row('shelf_depth', length(0, 3, 0.3), depth * 0.999), row('shelf_width', length(0, 20, 0.3)));
    const kept = dice.whole(0, 3);
    if (kept === 1) rows.push(row('usual_drawdown', length(0, 6, 0.1), depth * 0.999));
    if (kept === 2) rows.push(row('kept_within', length(0.005, 3, 0.1), depth * 0.999));
    if (kept === 3) rows.push(['kept_within', 'never', '', '']);
  }
  return [['item', 'value', 'unit', 'note'], ...rows];
}
