import type { Basis } from '../basis/index.js';
import { firstOfSeason } from '../climate/index.js';
import type { Measurement, NextMeasurement } from '../contract/index.js';
import { method } from '../formula/index.js';
import type { Draws } from '../heads/index.js';
import type { Option } from '../options/index.js';
import { candidatesOf } from '../options/index.js';
import { verdictAmong, verdictAt, verdictsAt } from '../reliability/index.js';
import { latinNormals, measurementValue, Remembered } from '../sampling/index.js';
import { REPLICATES, type Site } from '../site/index.js';
import { type Decision, decide } from './decide.js';
import { type Loss, lossesOf } from './loss.js';

export const measureNextMethod = method({
  title: 'The measurement most likely to change the answer',
  what:
    'Every sample says what a measurement would read there. Its worth is the expected loss saved by choosing after it; ' +
    'its chance to change the answer is the share of readings, at sixteen steps, for which something else is recommended.',
  assumptions: [
    'a season of dips shows the middle of the yearly highs, off by as much as the model of the table misses dips',
    'a recovery test shows the permeability within a factor of 1.4 (one standard deviation; our choice)',
    'measure first is recommended when what takes a wet season is worth more than the season costs',
  ],
  source: 'preposterior analysis (Raiffa & Schlaifer 1961); loss our choice',
});

/** A measurement still open. */
interface Open {
  what: Measurement;
  month: number;
  /** takes a wet half-year */
  waits: boolean;
  /** what it would read, one a sample */
  reading: Float64Array;
  /** samples whose readings are alike */
  groups: Uint32Array[];
}

/** Readings tried, at equal steps of chance. Our choice. */
const READINGS = 16;
/** Model error of the table where no fit tells it, m. Our choice. */
const TABLE_ERROR = 0.1;
/** Standard deviation of ln k that a recovery test leaves: a factor of 1.4. */
const RECOVERY_ERROR = Math.log(1.4);

/** Measurements still open, the most telling first. */
export function measureNext(basis: Basis, options: Option[], base: Decision, loss: Loss): NextMeasurement[] {
  if (!base.verdict) return [];
  const where = basis.site.survey.layers[0]?.pit ?? null;
  const { depth } = base;
  const choices = undominated(
    candidatesOf(basis, options)
      .filter(({ measures }) => verdictAt(basis, measures, depth).diggable)
      .map(({ measures }) => lossesOf(basis, measures, depth, loss)),
  );
  const list = measurementsOf(basis).map(({ what, month, waits, reading, groups }) => {
    const worth = choices.length > 1 ? measurementValue(choices, reading, REPLICATES).value.value : 0;
    return {
      what,
      where,
      month,
      waits,
      chance_to_change: changeOf(basis, options, base, groups),
      worth_drains: Math.max(worth, 0),
    };
  });
  // What the owner is sent to measure first is named, however unlikely it is to change anything.
  const asked = base.option === 'measure-first' ? list[0] : undefined;
  return list.filter((m) => m === asked || m.chance_to_change > 0).sort(mostTelling);
}

/** Losses without those that another is at most as high as in every sample: such a choice is never made. */
function undominated(losses: Float64Array[]): Float64Array[] {
  return losses.reduce<Float64Array[]>((kept, loss) => {
    const under = (a: Float64Array, b: Float64Array) => a.every((v, s) => v <= b[s]);
    if (kept.some((other) => under(other, loss))) return kept;
    return [...kept.filter((other) => !under(loss, other)), loss];
  }, []);
}

/** Order of measurements: by what they are worth, then by their chance to change the answer. */
export const mostTelling = (a: NextMeasurement, b: NextMeasurement) =>
  b.worth_drains - a.worth_drains || b.chance_to_change - a.chance_to_change;

/** Whether a measurement that takes a wet season is worth more than the season. */
export function worthWaiting(next: NextMeasurement[], loss: Loss): boolean {
  return next.some((m) => m.waits && m.worth_drains > loss.waiting);
}

const open = new Remembered<Open[]>();

function measurementsOf({ site, draws }: Basis): Open[] {
  return open.of(draws, '', () =>
    readingsOf(site, draws).map((measurement) => ({ ...measurement, groups: grouped(measurement.reading) })),
  );
}

function readingsOf(site: Site, draws: Draws): Omit<Open, 'groups'>[] {
  const { samples, years, clayHigh, tub } = draws;
  const noise = latinNormals(samples, 2, site.seed + 61);
  const missing = site.fit?.modelError;
  const high = Float64Array.from({ length: samples }, (_, s) => {
    let sum = 0;
    for (let i = s * years; i < (s + 1) * years; i++)
      sum += Math.max(clayHigh[i], tub ? tub.asIs[i] : Number.NEGATIVE_INFINITY);
    return sum / years;
  });
  return [
    {
      what: 'season-of-dips',
      month: site.latitude >= 0 ? 3 : 9,
      waits: true,
      reading: high.map((level, s) => level + (missing ? missing[s] : TABLE_ERROR) * noise[2 * s]),
    },
    {
      what: 'recovery-test',
      month: firstOfSeason(site.wetMonths),
      waits: false,
      reading: site.water.permeability.map((k, s) => Math.log(k) + RECOVERY_ERROR * noise[2 * s + 1]),
    },
  ];
}

/**
 * Groups of samples about readings at equal steps of chance, each about an eighth of all and overlapping its neighbours;
 * at the ends as narrow as the end is near.
 */
function grouped(reading: Float64Array): Uint32Array[] {
  const order = Uint32Array.from(reading, (_, s) => s).sort((a, b) => reading[a] - reading[b]);
  const n = order.length;
  return Array.from({ length: READINGS }, (_, k) => {
    const centre = ((k + 0.5) * n) / READINGS;
    const half = Math.min(n / 16, centre, n - centre);
    return order.subarray(Math.floor(centre - half), Math.max(Math.ceil(centre + half), 1));
  });
}

/** Share of the readings for which something else is recommended. */
function changeOf(basis: Basis, options: Option[], base: Decision, groups: Uint32Array[]): number {
  const among = (group: Uint32Array) =>
    decide(
      basis,
      options,
      (m, depths, changed = basis) =>
        verdictsAt(changed, m, depths).map((verdict) => verdictAmong(changed, verdict, group)),
      base.change ?? null,
    );
  return groups.filter((group) => among(group).option !== base.option).length / groups.length;
}
