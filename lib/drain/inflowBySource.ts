import { method, type Use, unrecorded } from '../formula/index.js';
import { CAP_LEAK } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import { type GardenCover, RUNOFF_COEFFICIENT } from '../soil/index.js';
import {
  type DrainInflow,
  inflowLeft,
  orificeFlow,
  overBrim,
  rainIntensity,
  rainWithRoof,
  rationalRunoff,
  ringInStorm,
  soundInflow,
  throughRing,
} from './inflow.js';

export const designInflow = method({
  title: 'Design inflow by source',
  what:
    'Seepage through the clay, rain on the ring, roof, run-off from uphill, overflow over the brim and a leak, each with ' +
    'a low, a likely and a high end; what comes over ground to the ring goes down to the drain, as it fills the ring where there is none.',
  assumptions: [
    'clay at the yearly highest water outside; its spread is that of the permeability',
    'storm as the survey gives it; run-off coefficients from the low to the high end of the tables, or what wet ground ' +
      'cannot take in where that is more',
    'no ring takes in less than comes to it: fill settles, and gapes at the liner; a cap of clay lets a twentieth through',
    'the pond spills over only what its usual drawdown does not hold; at the high end it is full to the brim',
    'leak: a hole of 1, 3 or 10 mm; our choice',
  ],
  source: 'disc on a half-space, rational method, orifice; common practice for the cap',
});

/** Low, likely and high end. */
export interface Ends {
  low: number;
  likely: number;
  high: number;
}

/** Cheap measures that keep a source away, by name. */
export type Measure = 'cap' | 'downpipe' | 'swale' | 'spout' | 'tested-liner';

/** Inflow from one source, m³/s, and what keeps it away. */
export interface SourceInflow extends Ends {
  source: keyof DrainInflow | 'overflow';
  /** the cheap measure above ground that removes it; absent where there is none */
  measure?: Measure;
  /** share of it that still passes, and likely inflow left then */
  passes: number;
  left: number;
}

/** What the sources of inflow are reckoned from, SI. */
export interface InflowInput {
  /** permeability of the ground, m/s */
  permeability: Ends;
  /** radius of the disc of equal area, m, and head outside above the drain, m */
  radius: number;
  head: number;
  /** rain of the storm, m, and its duration, s */
  rain: number;
  seconds: number;
  /** the dug ring; absent where nothing permeable touches the liner */
  ring?: { area: number; capped: boolean };
  /** m²; the ring's too */
  roofArea: number;
  uphillArea: number;
  /** of the ground uphill */
  cover: GardenCover;
  /** share of the storm, 0–1, that the ground uphill cannot take in while its water is at its highest; absent: not known */
  shed?: number;
  /** m², a roof led into it, m², and usual drawdown, m */
  pondArea: number;
  pondRoof: number;
  drawdown: number;
  /** net head across the liner at the usual lowest level, m */
  leakHead: number;
}

/** Permeability of loose fill, m/s; right within a factor of about 3. Common practice. */
export const FILL_PERMEABILITY = { clay: 1e-6, topsoil: 1e-5, sand: 3e-4, gravel: 2e-2 } as const;
/** Area of a hole of 1, 3 and 10 mm, m². Our choice. */
const HOLES: Ends = { low: 8e-7, likely: 7e-6, high: 8e-5 };
/** Share of the run-off that still passes a swale dug above the pond. Common practice. */
const PASSES_SWALE = 0.05;

const ENDS = ['low', 'likely', 'high'] as const;
const ends = (f: (end: keyof Ends) => number): Ends => ({
  low: f('low'),
  likely: f('likely'),
  high: f('high'),
});

/**
 * Share of what comes over ground to the ring that goes down to the drain.
 * @param ring - the dug ring, and whether clay is tamped over it; absent: none
 * @returns 0–1
 */
export function ringLets(ring: { capped: boolean } | undefined): number {
  return ring ? (ring.capped ? CAP_LEAK : 1) : 0;
}

/**
 * Inflow source by source, see {@link designInflow}.
 * @param input - ground, ring, storm, roof, slope and pond, SI; see {@link InflowInput}
 * @param use - what evaluates the formulas of what comes, for a record
 * @param recorded - end that is recorded
 * @returns each source at its low, likely and high end, m³/s, with the measure that removes it
 */
export function inflowBySource(
  input: InflowInput,
  use: Use = unrecorded,
  recorded: keyof Ends = 'likely',
): SourceInflow[] {
  const { ring, rain, seconds } = input;
  const intensity = use(rainIntensity, rain, seconds);
  const by = (end: keyof Ends, comes: boolean) => (end === recorded && comes ? use : unrecorded);
  const { roof } = RUNOFF_COEFFICIENT;
  const uphill = RUNOFF_COEFFICIENT[input.cover];
  const wettest = Math.max(uphill.high, input.shed ?? 0);
  const over = {
    ring_storm: ends((e) => by(e, ring !== undefined)(rationalRunoff, 1, intensity, ring?.area ?? 0)),
    roof: ends((e) => by(e, input.roofArea > 0)(rationalRunoff, roof[e], intensity, input.roofArea)),
    uphill: ends((e) =>
      by(e, input.uphillArea > 0)(
        rationalRunoff,
        e === 'high' ? wettest : uphill[e],
        intensity,
        input.uphillArea,
      ),
    ),
    overflow: ends((e) =>
      e === 'low'
        ? 0
        : by(e, input.pondArea > 0)(
            overBrim,
            input.pondArea > 0 && input.pondRoof > 0
              ? by(e, true)(rainWithRoof, rain, input.pondArea, roof[e], input.pondRoof)
              : rain,
            e === 'high' ? 0 : input.drawdown,
            seconds,
            input.pondArea,
          ),
    ),
  };
  const lets = ringLets(ring);
  const surface = (source: keyof typeof over, measure: Measure, passes: number): SourceInflow => {
    const flow = ends((e) => by(e, over[source][e] > 0 && lets < 1)(throughRing, over[source][e], lets));
    return { source, ...flow, ...(flow.high > 0 ? { measure } : {}), passes, left: flow.likely * passes };
  };
  const clay = ends((e) => by(e, true)(discInflow, input.permeability[e], input.radius, input.head));
  const leak = ends((e) => by(e, true)(orificeFlow, HOLES[e], input.leakHead));
  return [
    { source: 'clay', ...clay, passes: 1, left: clay.likely },
    surface('ring_storm', 'cap', ring?.capped ? 1 : CAP_LEAK),
    surface('roof', 'downpipe', 0),
    surface('uphill', 'swale', PASSES_SWALE),
    surface('overflow', 'spout', 0),
    { source: 'leak', ...leak, measure: 'tested-liner', passes: 0, left: 0 },
  ];
}

/**
 * The source that brings most while the liner is sound, and what is left of the whole once its measure is taken. A hole
 * in the liner is an accident that the drain must carry, not where its water comes from.
 * @param sources - from {@link inflowBySource}
 * @param use - what evaluates the formulas, for a record
 * @param recorded - end that is recorded
 * @returns that source; all of them together and what is left, m³/s
 */
export function governingSource(
  sources: SourceInflow[],
  use: Use = unrecorded,
  recorded: keyof Ends = 'likely',
): {
  source: SourceInflow;
  total: Ends;
  left: number;
} {
  const sound = sources.filter((s) => s.source !== 'leak');
  const source = sound.reduce((a, b) => (b.likely > a.likely ? b : a));
  const at = (name: SourceInflow['source'], end: keyof Ends) =>
    sources.find((s) => s.source === name)?.[end] ?? 0;
  const total = ends((e) =>
    (e === recorded ? use : unrecorded)(
      soundInflow,
      at('clay', e),
      at('ring_storm', e),
      at('roof', e),
      at('uphill', e),
      at('overflow', e),
    ),
  );
  const left = (recorded === 'likely' ? use : unrecorded)(
    inflowLeft,
    total.likely,
    source.likely,
    source.passes,
  );
  return { source, total, left };
}

/**
 * The likely inflow in the contract's five sources; what spills over the brim goes into the ring.
 * @param sources - from {@link inflowBySource}
 * @param use - what evaluates the formula, for a record
 * @returns m³/s
 */
export function likelyInflow(sources: SourceInflow[], use: Use = unrecorded): DrainInflow {
  const of = (name: SourceInflow['source']) => sources.find((s) => s.source === name)?.likely ?? 0;
  return {
    clay: of('clay'),
    ring_storm: use(ringInStorm, of('ring_storm'), of('overflow')),
    roof: of('roof'),
    uphill: of('uphill'),
    leak: of('leak'),
  };
}

/**
 * Sum of all sources at each end, m³/s.
 * @param sources - from {@link inflowBySource}
 * @returns low, likely and high, m³/s
 */
export function inflowEnds(sources: SourceInflow[]): Ends {
  const [low, likely, high] = ENDS.map((e) => sources.reduce((sum, s) => sum + s[e], 0));
  return { low, likely, high };
}
