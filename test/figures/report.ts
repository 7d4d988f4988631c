/** A report with invented numbers that agree with each other, for figures and page without the engine. */
import type {
  DepthCurve,
  Governs,
  OptionName,
  OptionResult,
  Report,
  WaterDay,
} from '../../lib/risk/index.js';

const ACCEPTED = 0.02;
const WISH = 1;
const FULL = 0.3;
const DRAWDOWN = 0.05;
const DEPTHS = Array.from({ length: 31 }, (_, at) => Number((0.3 + 0.05 * at).toFixed(2)));

/** Depth to the table of a month, m, middle of years: near the ground in February, deep in August. */
const tableDepth = (month: number) => 0.75 - 0.65 * Math.cos(((month - 2) / 6) * Math.PI);
const around = (p50: number, low: number, high: number) => ({ p10: p50 - low, p50, p90: p50 + high });

interface Shape {
  option: OptionName;
  whyNot?: string;
  /** depth at which the chance passes 2 %, m; undefined: below 0.1 % at every depth */
  turn?: number;
  steep?: number;
  governs: (depth: number) => Governs;
  spare: number;
  emptied: boolean;
}

const emptiedThenSlump = (depth: number): Governs => (depth < 1.5 ? 'lift-emptied' : 'side-slump');
const SHAPES: Shape[] = [
  { option: 'no-drain', turn: 0.46, steep: 9, governs: emptiedThenSlump, spare: 0.31, emptied: false },
  {
    option: 'surface-water-only',
    turn: 0.46,
    steep: 9,
    governs: emptiedThenSlump,
    spare: 0.31,
    emptied: false,
  },
  {
    option: 'cutoff-drain',
    turn: 0.58,
    steep: 8,
    governs: emptiedThenSlump,
    spare: 0.38,
    emptied: false,
  },
  {
    option: 'drain-to-outlet',
    turn: 1.45,
    steep: 4,
    governs: (depth) => (depth < 1.2 ? 'envelope' : depth < 1.5 ? 'fall' : 'side-slump'),
    spare: 1.25,
    emptied: true,
  },
  {
    option: 'drain-to-sump',
    turn: 1.4,
    steep: 1.5,
    governs: () => 'lift-power-out',
    spare: 1.2,
    emptied: true,
  },
  {
    option: 'raise-pond',
    whyNot: 'highest_raise is 0 m',
    governs: () => 'none',
    spare: 0.31,
    emptied: false,
  },
  { option: 'ballast', turn: 0.86, steep: 9, governs: emptiedThenSlump, spare: 0.56, emptied: false },
];

const chance = ({ turn, steep = 1 }: Shape, depth: number): number => {
  if (turn === undefined) return 0;
  const per = 1 / (1 + Math.exp(-steep * (depth - turn) + Math.log(1 / ACCEPTED - 1)));
  return per < 5e-4 ? 0 : per;
};
const slump = (depth: number) => (depth > 1.5 ? 0.04 : 0.004);

function optionOf(shape: Shape): OptionResult {
  const safe = DEPTHS.filter((depth) => chance(shape, depth) <= ACCEPTED && slump(depth) <= ACCEPTED).at(-1);
  const possible = shape.whyNot === undefined;
  return {
    option: shape.option,
    possible,
    why_not: shape.whyNot ?? null,
    safe_depth_m: possible ? (safe ?? 0) : 0,
    depth_searched_m: DEPTHS.at(-1)!,
    governs: shape.governs(WISH),
    risk_at_wish: { per_year: chance(shape, WISH), standard_error: chance(shape, WISH) / 30 },
    risk_in_life: 1 - (1 - chance(shape, WISH)) ** 20,
    per_dig: { heave: 0, slump: slump(WISH), wet_floor: 0.011, factor: { heave: 1.25, slump: 1.5 } },
    full: { net_head_m: around(shape.spare + 0.1, 0.1, 0.15), where: 'uphill wall', safe: true },
    lowest_safe_level_m: Array.from({ length: 12 }, (_, at) => {
      const level = -tableDepth(at + 1) + 0.15;
      return shape.emptied || level < -WISH ? null : Number(level.toFixed(3));
    }),
    work: null,
    hours_empty_safe: Array.from({ length: 12 }, (_, at) =>
      shape.emptied || tableDepth(at + 1) > 1.1 ? null : 30,
    ),
  };
}

function curveOf(shape: Shape): DepthCurve {
  return {
    option: shape.option,
    possible: shape.whyNot === undefined,
    depth_m: DEPTHS,
    per_year: DEPTHS.map((depth) => chance(shape, depth)),
    per_dig: DEPTHS.map(slump),
    governs: DEPTHS.map((depth) => (chance(shape, depth) === 0 ? 'none' : shape.governs(depth))),
    safe: DEPTHS.map((depth) => chance(shape, depth) <= ACCEPTED && slump(depth) <= ACCEPTED),
  };
}

function waterDay(date: string, month: number): WaterDay {
  const depth = tableDepth(month);
  const rounded = (value: number) => Number(value.toFixed(4));
  const table = { p10: rounded(depth - 0.12), p50: rounded(depth), p90: rounded(depth + 0.2) };
  const head = { p10: -table.p90, p50: -table.p50, p90: -table.p10 };
  const drained = (level: number) => Math.min(level, -1.12);
  return {
    date,
    table_depth_m: table,
    tub_level_m: null,
    head_undrained_m: head,
    head_drained_m: { p10: drained(head.p10), p50: drained(head.p50), p90: drained(head.p90) },
  };
}

/** Three and a half years, a row a day. */
function days(): WaterDay[] {
  const start = Date.UTC(2019, 9, 1);
  return Array.from({ length: 1280 }, (_, at) => {
    const day = new Date(start + at * 86_400_000);
    const wiggle = 0.35 * Math.sin(at / 9) * Math.cos(at / 23);
    return waterDay(day.toISOString().slice(0, 10), day.getUTCMonth() + 1 + day.getUTCDate() / 31 + wiggle);
  });
}

/** A clay slope where a drain to a ditch is the answer. */
export function invented(change: (report: Report) => void = () => {}): Report {
  const report: Report = {
    result: {
      contract: 1,
      survey: { name: 'Sedge Corner (invented)', sha256: '5'.repeat(64) },
      ground: {
        layers: [
          layer('P1', 0, 0.28, 'clay loam', 2e-6, ['table for clay loam']),
          layer('P1', 0.28, 1.2, 'clay', 3.2e-7, ['measured here once']),
          layer('P1', 1.2, 2.2, 'clay', 2.5e-8, ['table for clay, blocky']),
          layer('P2', 0, 0.25, 'clay loam', 2e-6, ['table for clay loam']),
          layer('P2', 0.25, 2, 'clay', 2.7e-7, ['measured here once']),
        ],
      },
      water: {
        seasonal_high_depth_m: { p10: -0.02, p50: 0.1, p90: 0.3 },
        seasonal_high_evidence: [],
        spill_level_m: 0,
        model: 'store with spill, fitted to dips',
        closure_mm: 1e-9,
        by_month: Array.from({ length: 12 }, (_, at) => ({
          month: at + 1,
          table_depth_m: waterDay('', at + 1).table_depth_m,
          tub_level_m: null,
          dry_floor_chance: tableDepth(at + 1) > 1.05 ? 0.94 : 0.02,
        })),
      },
      options: SHAPES.map(optionOf),
      recommendation: {
        option: 'drain-to-outlet',
        also: ['surface-water-only'],
        depth_m: 1,
        raise_m: 0,
        governs: 'lift-emptied',
        reason:
          'emptied each March, when the water outside stands 0.9 m above the floor; the ditch is low enough',
        rules: [
          { code: 'dip-pipe', text: 'Put a dip pipe to the low point and look before every lowering.' },
          { code: 'empty-only-in', months: [6, 7, 8, 9], text: 'Empty only when the dip pipe is dry.' },
          {
            code: 'keep-above-level',
            months: [11, 12, 1, 2, 3, 4],
            level_m: 0.05,
            text: 'Keep the pond above this level while the drain is not yet proved.',
          },
          { code: 'flap', text: 'Fit a flap at the outlet and free it each autumn.' },
        ],
        close_call: false,
        measure_next: [
          {
            what: 'a dip in the standpipe',
            where: 'P2',
            month: 2,
            waits: true,
            chance_to_change: 0.12,
            worth_drains: 0.3,
          },
        ],
      },
      drain: {
        inflow_m3_s: { clay: 2.4e-7, ring_storm: 0, roof: 0, uphill: 3e-6, leak: 1e-7 },
        pipe_diameter_m: 0.1,
        pipe_capacity_m3_s: 0.0042,
        fall_needed_m: 0.18,
        fall_available_m: 0.49,
        outlet: 'pipe-end',
        weakest_link: 'envelope',
        reserve: { pipe: 1200, envelope: 1.6, fall: 2.7, 'outlet in flood': 9.3 },
        quantities: [
          { item: 'perforated pipe, 100 mm', amount: 3, unit: 'm' },
          { item: 'solid pipe, 100 mm', amount: 18, unit: 'm' },
          { item: 'concrete sand for the blanket, 10 % waste', amount: 2.64, unit: 'm³' },
          { item: 'filter fabric under the liner, 15 % laps', amount: 19.5, unit: 'm²' },
          { item: 'flap valve', amount: 1, unit: 'piece' },
        ],
      },
      uplift_check: [
        {
          option: 'no-drain',
          depth_m: 1,
          high_m: -0.03,
          pond_m: 0.25,
          floor_m: -1,
          ballast_m: 0,
          lifting_pa: 9515.7,
          holding_pa: 11036.25,
          utilisation: 0.862222,
          met: true,
        },
      ],
      tipping_points: [
        {
          input: 'water outside',
          value: -0.35,
          unit: 'm',
          now: { p10: -0.3, p50: -0.1, p90: 0 },
          from: 'drain-to-outlet',
          to: 'no-drain',
          emptying_ruled: false,
        },
      ],
      drivers: [{ input: 'ground and water together', first_order: 0.9, total: 0.92 }],
      spots: [],
      assumptions: [{ item: 'edging_load', value: 0, unit: 'Pa', reason: 'no heavy edging mentioned' }],
      warnings: [
        {
          code: 'dry-too-soon',
          message: "'dry' in P1 says nothing",
          file: 'water.csv',
          line: 7,
          column: 'reading',
        },
      ],
    },
    units: 'metric',
    curves: SHAPES.map(curveOf),
    accepted_risk: ACCEPTED,
    pond: {
      shape: 'box',
      length_m: 4.6,
      width_m: 3.4,
      depth_m: WISH,
      side_slope: 0.8,
      full_level_m: FULL,
      usual_drawdown_m: DRAWDOWN,
      ring_width_m: 0,
      ring_depth_m: 0,
      bedding_m: 0,
      high_rim_m: 0.12,
      emptied_in: [3],
      margin_m: 0.1,
    },
    emptying: Array.from({ length: 12 }, (_, at) => ({
      month: at + 1,
      hours: null,
      ends: 'none' as const,
      lift_hours: [0.01, 0.02, 0.05].map((water_m) => ({ water_m, hours: null })),
    })),
    drain: null,
    outlet: { name: 'pipe-end', level_m: -1.64, distance_m: 18, flood_m: -1.28 },
    water_year: days(),
    dips: [
      { day: 18_300, date: '2020-02-08', depth_m: 0.13, says: 'level', pit: 'P1' },
      { day: 18_500, date: '2020-08-26', depth_m: 1.37, says: 'level', pit: 'P1' },
      { day: 18_700, date: '2021-03-14', depth_m: 0.25, says: 'above', pit: 'P2' },
      { day: 18_850, date: '2021-08-11', depth_m: 1.2, says: 'below', pit: 'P2' },
    ],
    digging: null,
    tub: null,
    limits: {
      lowestSafeLevel: [0.12, 0.12, 0.1, 0.02, -0.31, null, null, null, null, -0.4, 0.05, 0.12],
      empty: Array.from({ length: 12 }, () => ({ seconds: 108_000, governs: 'lift' as const })),
      liftTimes: [],
    },
    next_door: {
      exit: { kind: 'outlet', name: 'pipe-end', level_m: -1.64, distance_m: 18, to_boundary_m: 2 },
      boundary_m: 20,
      winter_day: { before: 2.5e-7, brim: 2.5e-7, drain: 2.4e-7 },
      storm: { rain_m: 0.03, seconds: 3600, named: true, before: 6.5e-5, brim: 1.3e-4, drain: 3.3e-6 },
      lowered: [
        { name: 'boundary', distance_m: 20, likely_m: 0.001, most_m: 0.004, words: 'not noticeable' },
      ],
      felt_m: 4.2,
    },
    lower_today: null,
    points: [
      { name: 'rim-low', role: 'rim', x_m: 0, y_m: -1.7, distance_m: null, level_m: 0 },
      { name: 'rim-high', role: 'rim', x_m: 0, y_m: 1.7, distance_m: null, level_m: 0.12 },
      { name: 'rim-left', role: 'rim', x_m: -2.3, y_m: 0, distance_m: null, level_m: 0.06 },
      { name: 'pipe-end', role: 'outlet', x_m: 0, y_m: -18, distance_m: null, level_m: -1.64 },
      { name: 'fence-a', role: 'boundary', x_m: -12, y_m: -21, distance_m: null, level_m: -1.8 },
      { name: 'fence-b', role: 'boundary', x_m: 12, y_m: -21, distance_m: null, level_m: -1.8 },
    ],
    pits: [{ pit: 'P1', photo: 'p1.jpg', note: 'dug in October' }],
  };
  change(report);
  return report;
}

/** The same by months of an ordinary year, as where there is no weather. */
export function inventedByMonth(): Report {
  return invented((report) => {
    report.water_year = Array.from({ length: 12 }, (_, at) =>
      waterDay(`--${String(at + 1).padStart(2, '0')}`, at + 1),
    );
  });
}

function layer(
  pit: string,
  top_m: number,
  bottom_m: number,
  texture: string,
  ksat: number,
  evidence: string[],
) {
  return { pit, top_m, bottom_m, texture, ksat_m_s: { p10: ksat / 3, p50: ksat, p90: ksat * 3 }, evidence };
}
