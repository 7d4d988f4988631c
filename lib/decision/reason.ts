import { isoDate } from '../climate/index.js';
import type { Governs, MonthlyLimits, OptionName, SiteDrain } from '../contract/index.js';
import type { OpenFact } from '../digging/index.js';
import { BED_THICKNESS } from '../drain/index.js';
import type { OwnReading } from '../heads/index.js';
import { floorLevel, oldDrainOf, reliefBounds } from '../heads/index.js';
import type { Option } from '../options/index.js';
import { questionOf } from '../options/index.js';
import type { Site } from '../site/index.js';
import {
  chanceText,
  changeWords,
  drainWords,
  isUpkeep,
  monthWords,
  orderText,
  sayer,
  WITH_OPTION,
} from '../text/index.js';
import type { Decision } from './decide.js';
import type { NextMeasurement } from './measureNext.js';
import { oldDrainQuestion } from './oldDrainRule.js';
import { lacksEvidence, stopOf } from './stops.js';

const FAILURE: Record<Governs, string> = {
  'lift-full': 'the water outside would stand above even the full pond and lift the liner',
  'lift-drawn-down':
    'the water outside would stand above the pond at its usual lowest level and lift the liner',
  'lift-emptied': 'the water outside would lift the liner while the pond stands empty',
  'lift-power-out': 'the liner would lift when the power fails',
  'floor-heave': 'the water under pressure below the clay would heave the floor',
  'side-slump': 'the sides would not stand with enough safety',
  'wet-dig':
    'more water would come into the hole than can be taken out while it is dug, or boil up through its floor',
  fall: 'there is not enough fall to the outlet',
  'outlet-flood': 'the ditch in flood stands above the floor',
  envelope: 'the stone would silt up',
  capacity: 'the drain could not carry the water that would come',
  discharge: 'there is no lawful place for the water',
  footing: 'the dig would cut the 45° line from a footing',
  gas: 'gas from organic ground would gather under the liner',
  protected: 'the ground is protected',
  evidence: 'nothing is known of the water in the wet half-year',
  none: 'nothing lifts the liner as it is planned',
};

/** What is not known, as far as the depth it would fail at. */
const OPEN_FACT: Record<OpenFact, string> = {
  seam: 'How high the water rises in the layer under the clay is not known: as high as it may, it would heave a floor',
  footing:
    'How deep the footing of the house goes is not known: as shallow as it may be, it would be undermined by a dig',
};

/** What a reason is told from. */
interface Decided {
  site: Site;
  options: Option[];
  decision: Decision;
  limits: MonthlyLimits;
  drain: SiteDrain | null;
  measureNext: NextMeasurement[];
}

/** Why this is recommended, in a few sentences with the numbers that decide. */
export function reasonOf(decided: Decided): string {
  const stop = stopOf(decided.site);
  if (stop) return stop.reason;
  const ask = questionOf(decided.site, decided.decision.measures);
  const changed = changedWords(decided);
  return `${ask ? `Ask first ${ask}. ` : ''}${changed ?? whyOf(decided)}`;
}

/** The pond as wished does not hold, and with the least change it does. */
function changedWords({ site, decision: d }: Decided): string | undefined {
  if (!d.change || !d.verdict) return undefined;
  const { pond } = site;
  const say = sayer(site);
  const first = d.rejected[0]?.verdict;
  const done = [
    ...(d.depth < pond.depth ? [`dug ${say.length(d.depth)} deep`] : []),
    ...changeWords(d.change, say.length),
    ...(d.measures.way === 'keptOut' ? ['with surface water kept out of the ring'] : []),
    ...(d.measures.raise > 0 ? [`with rim and floor raised ${say.length(d.measures.raise)}`] : []),
  ];
  const wish = first
    ? `As wished, ${FAILURE[first.governs]} in ${chanceText(first.chance.perYear)} of years. `
    : '';
  return `${wish}As wished but ${done.join(' and ')} it holds: ${chanceText(d.verdict.chance.perYear)} of years fail (${chanceText(pond.acceptedRisk)} a year is accepted). No drain is needed.`;
}

function whyOf({ site, options, decision: d, limits, drain, measureNext }: Decided): string {
  const say = sayer(site);
  const first = d.rejected[0];
  const tooDeep = first?.verdict.conditions.find((c) => c.met === 'no' && c.governs === 'side-slump');
  const untreated = d.open
    ? `${OPEN_FACT[d.open]} ${say.length(site.pond.depth)} deep. `
    : tooDeep
      ? `${say.length(site.pond.depth)} cannot be dug: ${tooDeep.text}. `
      : first
        ? `With nothing done, ${FAILURE[first.verdict.governs]}${
            first.verdict.diggable ? ` in ${chanceText(first.verdict.chance.perYear)} of years` : ''
          }. `
        : '';
  if (!serves(d)) return tooDeep ? untreated.trim() : stillFails(site, d, untreated);
  const fails = failsIn(site, d, limits);
  const words = drain && drainWords(drain, site.survey.site.show_units ?? 'metric');
  const carried = words ? ` ${words.inflow} ${words.weakest}` : '';
  switch (d.option) {
    case 'no-drain':
      return d.emptyingRuled
        ? `Kept full it stays put; ${wronglyEmptied(site, d)}. ${keepTo(limits)}${noDrainServes(site, options, d, limits)}`
        : `${asPlanned(site, limits)}${fails} No drain is needed.`;
    case 'surface-water-only':
      return `${untreated}Kept out of the ring, surface water no longer gets behind the liner${fails}`;
    case 'raise-pond':
      return `${untreated}With rim and floor raised ${say.length(d.measures.raise)} the pond stands above the water outside${fails} It has no moving parts and needs no outlet.`;
    case 'cutoff-drain':
      return `${untreated}A drain uphill takes the water that stands behind the upper wall${d.measures.raise > 0 ? `, and the low rim goes up ${say.length(d.measures.raise)}` : ''}${fails}`;
    case 'drain-to-outlet': {
      const to = d.measures.drain;
      if (to?.kind !== 'outlet') throw new Error('a drain to an outlet without one');
      if (to.asBuilt) return `${oldDrainWords(site)}${fails}`;
      const { most: level } = reliefBounds(d.measures, floorLevel(d.depth, d.measures), 'works', to.flood);
      return `${untreated}A filtered bed ${say.length(BED_THICKNESS)} thick with a pipe to ${to.outlet.name} holds the water under the liner at ${say.level(level)}${fails}${carried}`;
    }
    case 'drain-to-sump': {
      const { why } = options.find(({ name }) => name === 'drain-to-outlet')!;
      const pumped = why && !why.asks ? 'No lower ground can take the water by gravity, so it' : 'The water';
      return `${untreated}${pumped} is pumped from a sump, as long as the alarm is heeded${fails}${outletFails(d)}${carried}`;
    }
    case 'ballast':
      return `${untreated}A concrete slab with facings inside the liner holds down ${say.length(d.measures.ballast)} of head on floor and sides${fails}${outletFails(d)}`;
    case 'shallower':
      return `${untreated}At ${say.length(d.depth)} it is safe${d.emptyingRuled ? ', emptied only in the months given' : ''}.${outletFails(d)}`;
    case 'move':
      if (d.spot)
        return `${untreated}At the spot ${d.spot.name} the water stands ${say.length(d.spot.depth)} below the ground, and the same pond is safe there without drain or concrete.`;
      return `${untreated}No depth worth digging is safe here: another spot is the answer.${outletFails(d)}`;
    case 'vent':
      return 'Organic ground lies under or near the floor: the gas it gives off gathers under a liner. A vent from the high point lets it out; a water drain at the low point would not.';
    case 'measure-first':
      return `${untreated}${whyWait(site, d, options, measureNext)}`;
    default:
      return untreated;
  }
}

/** What the looks into the dip pipe tell of the drain that is there. */
function oldDrainWords(site: Site): string {
  const { looks, highest } = oldDrainOf(site)!;
  const date = ({ day }: OwnReading) => isoDate(Math.floor(day));
  return `The old drain works: in ${looks.length} looks of wet months from ${date(looks[0])} to ${date(looks.at(-1)!)} the water under the liner stood no higher than ${sayer(site).level(highest!)}. Nothing is rebuilt`;
}

/** Whether an option is what is recommended, and not only tried in its place. */
function serves({ option, verdict, emptyingRuled }: Decision): boolean {
  return !(option in WITH_OPTION) || !verdict || verdict.safe || emptyingRuled;
}

/** What an option that was tried leaves as it is. */
function stillFails({ pond }: Site, { option, verdict }: Decision, untreated: string): string {
  const { governs, diggable, chance } = verdict!;
  const often = `in ${chanceText(chance.perYear)} of years (${chanceText(pond.acceptedRisk)} a year is accepted)`;
  const before = option === 'no-drain' ? '' : untreated;
  return `${before}${WITH_OPTION[option as OptionName]}, ${FAILURE[governs]}${diggable ? ` ${often}` : ''}.`;
}

/** How often it fails as it is recommended: emptied as planned, or only when the rules allow it. */
function failsIn(
  { pond }: Site,
  { verdict, emptyingRuled, measures }: Decision,
  { barred }: MonthlyLimits,
): string {
  const { perYear = 0, modes = {}, upkeep = 0 } = verdict?.chance ?? {};
  const share = emptyingRuled ? (modes['lift-drawn-down'] ?? 0) : perYear;
  const when = barred.includes(null) ? 'emptied only in the months given' : 'never emptied';
  const how = emptyingRuled ? `${when}, ` : '';
  if (!emptyingRuled && isUpkeep({ per_year: perYear, upkeep }))
    return `: it fails ${orderText(perYear)}, set by how drain${measures.drain?.kind === 'sump' ? ' and pump are' : ' and flap are'} kept (${chanceText(pond.acceptedRisk)} a year is accepted).`;
  return `: ${how}${chanceText(share)} of years fail (${chanceText(pond.acceptedRisk)} a year is accepted).`;
}

/** What emptying in the months wished would do. */
function wronglyEmptied({ pond }: Site, { verdict }: Decision): string {
  const { emptiedIn } = pond;
  if (emptiedIn === 'any' || emptiedIn.length === 0 || !verdict || verdict.safe)
    return 'emptied at the wrong time it does not';
  const how =
    verdict.governs === 'side-slump'
      ? 'its sides slump'
      : verdict.governs === 'floor-heave'
        ? 'its floor heaves'
        : 'the liner lifts';
  return `emptied in ${monthWords(emptiedIn)} as wished ${how} in ${chanceText(verdict.chance.perYear)} of years`;
}

const HEAVES =
  'water under pressure below the clay would heave the floor, which no drain under the liner relieves and no dip pipe shows';
const SLIPS =
  'as steep as they are the bared sides would slip even with no water behind them, which no drain mends';

/** The months to keep to; where none is free the dip pipe tells, but of the water under the liner only. */
function keepTo(limits: MonthlyLimits): string {
  if (limits.lowestSafeLevel.includes(null)) return 'Keep to the months given and no drain is needed.';
  const { barred } = limits;
  if (!barred.includes(null))
    return `It is not emptied in any month: ${barred.includes('floor-heave') ? HEAVES : SLIPS}.`;
  const never = barred.flatMap((by, i) => (by === null ? [] : [i + 1]));
  const but = never.length > 0 ? `, never in ${monthWords(never)}` : '';
  return `By what is known of the water no month is free for it: empty it only when the dip pipe shows the water below the floor${but}, and no drain is needed.`;
}

/** Why no drain lets the pond be emptied in the months wished. */
function noDrainServes({ pond }: Site, options: Option[], d: Decision, { barred }: MonthlyLimits): string {
  if (pond.emptiedIn === 'any' || pond.emptiedIn.some((month) => barred[month - 1])) return '';
  const option = options.find(({ name }) => name === 'drain-to-outlet')!;
  return option.why ? ` No drain would serve the emptied pond: ${option.why.text}.` : outletFails(d);
}

/** Why drains were passed over: more water than they take; else where it was the outlet's fault. */
function outletFails({ rejected }: Decision): string {
  const lacking = rejected.filter(({ verdict }) => verdict.chance.lacks);
  if (lacking.length > 0)
    return lacking
      .map(
        ({ candidate, verdict }) =>
          ` ${WITH_OPTION[candidate.option]} it does not serve: ${verdict.chance.lacks!.text}.`,
      )
      .filter((text, i, all) => all.indexOf(text) === i)
      .join('');
  const tried = rejected.find(({ candidate }) => candidate.option === 'drain-to-outlet');
  const to = tried?.candidate.measures.drain;
  if (!tried || to?.kind !== 'outlet') return '';
  const { governs } = tried.verdict;
  if (governs !== 'fall' && governs !== 'outlet-flood') return '';
  return ` A drain to ${to.outlet.name} would not serve the emptied pond: ${FAILURE[governs]}.`;
}

/** What a plan without a drain owes its safety to, where some months would lift an emptied liner. */
function asPlanned({ pond }: Site, { lowestSafeLevel }: MonthlyLimits): string {
  const bound = lowestSafeLevel.some((level) => level !== null);
  if (!bound || pond.emptiedIn === 'any') return 'Nothing lifts the liner';
  if (pond.emptiedIn.length === 0) return 'As long as it is not emptied, nothing lifts the liner';
  const brief = pond.emptiedIn.filter((month) => lowestSafeLevel[month - 1] !== null);
  return brief.length === 0
    ? `Emptied only in ${monthWords(pond.emptiedIn)}, nothing lifts the liner`
    : `Emptied in ${monthWords(brief)} it is full again before enough water comes through the clay to lift the liner`;
}

/** Nothing known of the wet season, a question not asked, or a season worth more than it costs. */
function whyWait(site: Site, d: Decision, options: Option[], next: NextMeasurement[]): string {
  if (lacksEvidence(site))
    return 'The survey says too little of the wet half-year to decide; a wet season of dips in sealed standpipes would.';
  const old = oldDrainQuestion(site);
  if (old) return `${old.known} ${old.ask}`;
  if (d.open === 'seam') return 'A pipe that is open in that layer only would tell.';
  if (d.open === 'footing') return 'A small hole beside the wall, down to its underside, would tell.';
  if (d.governs !== 'evidence') {
    const open =
      options.find(({ why }) => why?.asks) ?? options.find(({ why }) => why?.governs === 'discharge');
    return `A drain may be the answer, but ${open!.why!.text}.`;
  }
  const season = next.find(({ waits }) => waits)!;
  return `The answer hangs on how high the water stands in the wet half-year: a season of dips is worth about ${season.worth_drains.toPrecision(2)} times the price of a drain, more than the season costs.`;
}
