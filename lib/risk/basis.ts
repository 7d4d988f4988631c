import type { MonthlyLevels, Site, WaterEnsemble, Way } from '../site/index.js';
import type { DesignHighs } from './designHighs.js';
import { type DigDraws, digDraws } from './digging.js';
import { type Draws, drawsOf } from './draws.js';
import { Remembered } from './remembered.js';
import { type SideHeights, sideHeights } from './sides.js';

/** What every judgement of a site rests on, whatever the option and the depth. */
export interface Basis {
  site: Site;
  draws: Draws;
  highs: DesignHighs;
  /** absent where no clay was logged */
  sides?: SideHeights;
  dig: DigDraws;
  emptyings: Emptyings;
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
}

const emptied = new Remembered<WaterEnsemble, Emptyings>();

function emptyingsOf({ pond, water }: Site): Emptyings {
  return emptied.of(water, `${pond.emptiedIn}`, () => windowsOf(pond.emptiedIn, water));
}

function windowsOf(emptiedIn: Site['pond']['emptiedIn'], water: WaterEnsemble): Emptyings {
  const any = emptiedIn === 'any';
  const months = any ? ALL_MONTHS : emptiedIn.map((month) => month - 1);
  const pick = ({ window }: MonthlyLevels) => {
    if (any) return window;
    const out = new Float32Array((window.length / 12) * months.length);
    for (let i = 0, o = 0; i < window.length; i += 12)
      for (const month of months) out[o++] = window[i + month];
    return out;
  };
  return {
    months,
    plans: any ? months.map((_, place) => [place]) : [months.map((_, place) => place)],
    low: pick(water.clayLow),
    high: pick(water.clayHigh),
    tub: water.tub && { asIs: pick(water.tub.asIs), keptOut: pick(water.tub.keptOut) },
  };
}

const ALL_MONTHS = Array.from({ length: 12 }, (_, month) => month);

/** @param draws - those of the site as simulated, where only geometry or operation changed since */
export function basisOf(site: Site, draws: Draws = drawsOf(site)): Basis {
  const sides = sideHeights(site, draws);
  return {
    site,
    draws,
    highs: draws.highs,
    sides,
    dig: digDraws(site, draws, sides),
    emptyings: emptyingsOf(site),
  };
}
