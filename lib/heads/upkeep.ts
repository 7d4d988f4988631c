import { formula } from '../formula/index.js';
import type { Assumptions } from '../site/index.js';
import type { SiteFacts } from '../survey/index.js';

/**
 * How rarely what is built fails, by how it is kept: facts of site.csv, else these. Years from one time to the next, and
 * the upkeep that they suppose. Common practice, our choice.
 */
export const UPKEEP = {
  drain_blocked_once_in: [200, 'filtered, looked into every autumn and flushed'],
  flap_stuck_once_in: [20, 'freed every autumn'],
  pump_out_once_in: [200, 'two pumps and an alarm, tested every month, and somebody to hear it'],
  power_cut_once_in: [10, 'a long cut that comes with high water'],
} as const satisfies Partial<Record<keyof SiteFacts, readonly [number, string]>>;
/** An old drain whose bed nobody knows blocks twice as often, even where it is looked after. Our choice. */
const OLD_DRAIN = [100, 'an old drain whose bed nobody knows, looked into every autumn and flushed'] as const;

/** Years from one time to the next where the survey does not say, and why. */
function usual(item: OnceIn, old: boolean): readonly [number, string] {
  return old && item === 'drain_blocked_once_in' ? OLD_DRAIN : UPKEEP[item];
}

/** Item of site.csv that says how rarely a part fails. */
export type OnceIn = keyof typeof UPKEEP;

/** A power cut that is reckoned with, s: the longest of ten winters. Our choice. */
export const POWER_CUT = 24 * 3600;
/** Chance that the pump on a battery fails when the power does. Our choice. */
export const BATTERY_FAILS = 0.05;
/** Log standard deviation, from site to site, of how rarely a drain blocks and a pump stands unattended. Our choice. */
export const DRAIN_SPREAD = 0.8;
export const PUMP_SPREAD = 0.5;

/** Chance of what comes once in some years. */
export const onceIn = formula({
  title: 'Chance a year of what comes once in so many years',
  symbol: 'q',
  unit: '-',
  expression: '1/T',
  parameters: { T: { meaning: 'years from one time to the next', unit: 'years', min: 1, max: 10000 } },
  compute: (T: number) => 1 / T,
  validity: 'each year as likely',
  source: 'geometric distribution: mean of the waiting time',
});

/** Chances a year of what fails by wear and neglect, at the middle of what is likely. */
export interface Reliability {
  blocked: number;
  flapStuck: number;
  /** both pumps out and nobody there */
  pumpOut: number;
  /** a power cut of `cutSeconds` at high water, and the battery fails */
  powerOut: number;
  cutSeconds: number;
}

/**
 * Chances a year by the survey, see {@link UPKEEP}; all but the flood and the water itself. Common practice, our choice.
 * @param old - the drain is one that lay there
 */
export function reliabilityOf(facts: SiteFacts, old: boolean): Reliability {
  const yearly = (item: OnceIn) => onceIn.compute(facts[item] ?? usual(item, old)[0]);
  return {
    blocked: yearly('drain_blocked_once_in'),
    flapStuck: yearly('flap_stuck_once_in'),
    pumpOut: yearly('pump_out_once_in'),
    powerOut: yearly('power_cut_once_in') * BATTERY_FAILS,
    cutSeconds: facts.power_cut_hours ?? POWER_CUT,
  };
}

/** What a drain ends in; one uphill of the pond has no flap that the pond hangs on. */
export type DrainKind = 'outlet' | 'sump' | 'cutoff';

const ITEMS: Record<DrainKind, OnceIn[]> = {
  cutoff: ['drain_blocked_once_in'],
  outlet: ['drain_blocked_once_in', 'flap_stuck_once_in'],
  sump: ['drain_blocked_once_in', 'pump_out_once_in', 'power_cut_once_in'],
};

/** How rarely each part of a drain fails: years from one time to the next, and whether the survey says so. */
export function upkeepOf(
  kind: DrainKind,
  facts: SiteFacts,
  old: boolean,
): { item: OnceIn; years: number; said: boolean }[] {
  return ITEMS[kind].map((item) => ({
    item,
    years: facts[item] ?? usual(item, old)[0],
    said: facts[item] !== undefined,
  }));
}

/** Lists what is assumed of the upkeep of a drain. */
export function assumeUpkeep(kind: DrainKind, facts: SiteFacts, old: boolean, assume: Assumptions): void {
  for (const item of ITEMS[kind]) {
    const [years, reason] = usual(item, old);
    assume.or(facts[item], item, years, 'years', reason);
  }
  if (kind !== 'sump') return;
  assume.or(
    facts.power_cut_hours,
    'power_cut_hours',
    POWER_CUT,
    's',
    'a day: the longest cut of ten winters',
  );
  assume.add('chance that the battery fails with the power', BATTERY_FAILS, '', 'tested every month');
}
