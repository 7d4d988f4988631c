import { type DigDraws, digDraws, type Sides, sidesOf } from '../digging/index.js';
import type { DesignHighs } from '../heads/index.js';
import { type Draws, drawsOf } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import { type MonthlyLevels, RUNGS, type Site, type WaterEnsemble, type Way } from '../site/index.js';

/** What every judgement of a site rests on, whatever the option and the depth. */
export interface Basis {
  site: Site;
  draws: Draws;
  highs: DesignHighs;
  sides: Sides;
  dig: DigDraws;
  emptyings: Emptyings;
  /** under this chances are kept: the same as long as they do not differ at any depth */
  counted: object;
  /** the same for a pond that stands empty: it does not matter how high it is kept, nor where the outlets are */
  emptied: object;
}

/** The water over the days the pond may stand empty, in the months in which it may be. */
export interface Emptyings {
  /** 0–11 */
  months: number[];
  /** places in `months` that count together; where no month was named each by itself, and the worst counts */
  plans: number[][];
  /** highest levels; index (sample × years + year) × months + place */
  low: Float32Array;
  high: Float32Array;
  tub?: Record<Way, Float32Array>;
  /** the ring's own water is all it can give: a store of known size; else what was seen under the liner comes as the clay's */
  stored: boolean;
  /** mean heights of the clay's water, of the same index */
  rises: Float32Array;
}

const emptied = new Remembered<Emptyings>();

function emptyingsOf({ pond, water, tub }: Site): Emptyings {
  return emptied.of(water, `${pond.emptiedIn}`, () => windowsOf(pond.emptiedIn, water, tub !== undefined));
}

function windowsOf(emptiedIn: Site['pond']['emptiedIn'], water: WaterEnsemble, stored: boolean): Emptyings {
  const any = emptiedIn === 'any';
  const months = any ? ALL_MONTHS : emptiedIn.map((month) => month - 1);
  const picked = (values: Float32Array, each: number) => {
    if (any) return values;
    const out = new Float32Array((values.length / 12) * months.length);
    for (let i = 0, o = 0; i < values.length; i += 12 * each)
      for (const month of months) for (let k = 0; k < each; k++) out[o++] = values[i + month * each + k];
    return out;
  };
  const pick = ({ emptied }: MonthlyLevels) => picked(emptied, 1);
  return {
    months,
    plans: any ? months.map((_, place) => [place]) : [months.map((_, place) => place)],
    low: pick(water.clayLow),
    high: pick(water.clayHigh),
    tub: water.tub && { asIs: pick(water.tub.asIs), keptOut: pick(water.tub.keptOut) },
    stored,
    rises: picked(water.rises, RUNGS.length),
  };
}

const ALL_MONTHS = Array.from({ length: 12 }, (_, month) => month);

/**
 * What judgements of a site rest on.
 * @param before - of an earlier judgement: what the change since leaves as it was is taken over
 */
export function basisOf(site: Site, before?: Basis): Basis {
  if (before && sameChances(site, before.site)) return { ...before, site };
  const draws = before && sameWater(site, before.site) ? before.draws : drawsOf(site);
  const sides = sidesOf(site, draws);
  return {
    site,
    draws,
    highs: draws.highs,
    sides,
    dig: digDraws(site, draws, sides),
    emptyings: emptyingsOf(site),
    counted: {},
    emptied: before && sameEmptied(site, before.site) ? before.emptied : {},
  };
}

function sameWater(a: Site, b: Site): boolean {
  return a.water === b.water && a.unknowns === b.unknowns;
}

/** Whether the chances at any depth are the same: what is wished, accepted and allowed does not matter. */
function sameChances(a: Site, b: Site): boolean {
  const rest = ({ pond: { depth, acceptedRisk, margin, highestRaise, ...pond } }: Site) =>
    JSON.stringify(pond);
  return sameGround(a, b) && rest(a) === rest(b);
}

/** Whether ponds of two sites fare alike while they stand empty. */
function sameEmptied(a: Site, b: Site): boolean {
  const rest = ({ pond: { shape, floorBallast, edgingLoad, emptiedIn, daysEmpty } }: Site) =>
    JSON.stringify([shape, floorBallast, edgingLoad, emptiedIn, daysEmpty]);
  return sameGround(a, b) && rest(a) === rest(b);
}

function sameGround(a: Site, b: Site): boolean {
  return sameWater(a, b) && a.ground === b.ground && a.tub === b.tub;
}
