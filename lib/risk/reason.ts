import { BED_THICKNESS, reliefLevel } from '../drain/index.js';
import type { Site } from '../site/index.js';
import type { Decision } from './decide.js';
import type { SiteDrain } from './drainAround.js';
import { drainWords } from './drainWords.js';
import type { NextMeasurement } from './measureNext.js';
import type { Option } from './options.js';
import type { Governs } from './result.js';
import { sayChance as percent, sayer } from './say.js';
import { lacksEvidence, stopOf } from './stops.js';

const FAILURE: Record<Governs, string> = {
  'lift-full': 'the water outside would stand above even the full pond and lift the liner',
  'lift-drawn-down':
    'the water outside would stand above the pond at its usual lowest level and lift the liner',
  'lift-emptied': 'the water outside would lift the liner while the pond stands empty',
  'lift-power-out': 'the liner would lift when the power fails',
  'floor-heave': 'the water under pressure below the clay would heave the floor while it is dug',
  'side-slump': 'the sides would not stand with enough safety',
  'wet-dig': 'more water would come into the hole than can be bailed',
  fall: 'there is not enough fall to an outlet',
  'outlet-flood': 'the ditch in flood stands too high',
  envelope: 'the stone would silt up',
  discharge: 'there is no lawful place for the water',
  footing: 'the dig would cut the 45° line from a footing',
  gas: 'gas from organic ground would gather under the liner',
  protected: 'the ground is protected',
  evidence: 'nothing is known of the water in the wet half-year',
  none: 'nothing lifts the liner as it is planned',
};

/** What a reason is told from. */
interface Decided {
  site: Site;
  options: Option[];
  decision: Decision;
  drain: SiteDrain | null;
  measureNext: NextMeasurement[];
}

/** Why this is recommended, in a few sentences with the numbers that decide. */
export function reasonOf({ site, options, decision: d, drain, measureNext }: Decided): string {
  const stop = stopOf(site);
  if (stop) return stop.reason;
  const say = sayer(site);
  const risk = d.verdict?.chance.perYear;
  const first = d.rejected[0];
  const untreated = first
    ? `With nothing done, ${FAILURE[first.verdict.governs]}${
        first.verdict.diggable ? ` in ${percent(first.verdict.chance.perYear)} of years` : ''
      }. `
    : '';
  const accepted = `(${percent(site.pond.acceptedRisk)} a year is accepted)`;
  const words = drain && drainWords(drain, site.survey.site.show_units ?? 'metric');
  const carried = words ? ` ${words.inflow} ${words.weakest}` : '';
  switch (d.option) {
    case 'no-drain':
      return d.emptyingRuled
        ? `Kept full it stays put; emptied at the wrong time it does not. Keep to the months given and no drain is needed.`
        : `Nothing lifts the liner: ${percent(risk ?? 0)} of years fail ${accepted}. No drain is needed.`;
    case 'surface-water-only':
      return `${untreated}Kept out of the ring, surface water no longer gets behind the liner: ${percent(risk ?? 0)} of years fail ${accepted}.`;
    case 'raise-pond':
      return `${untreated}With rim and floor raised ${say.length(d.measures.raise)} the pond stands above the water outside: ${percent(risk ?? 0)} of years fail ${accepted}. It has no moving parts and needs no outlet.`;
    case 'cutoff-drain':
      return `${untreated}A drain uphill takes the water that stands behind the upper wall${d.measures.raise > 0 ? `, and the low rim goes up ${say.length(d.measures.raise)}` : ''}: ${percent(risk ?? 0)} of years fail ${accepted}.`;
    case 'drain-to-outlet': {
      const to = d.measures.drain;
      const outlet = to?.kind === 'outlet' ? to.outlet : undefined;
      const level = outlet ? reliefLevel(d.measures.raise - d.depth, outlet.level, outlet.distance) : 0;
      return `${untreated}A filtered bed ${say.length(BED_THICKNESS)} thick with a pipe to ${outlet?.name ?? 'the outlet'} holds the water under the liner at ${say.level(level)}: ${percent(risk ?? 0)} of years fail ${accepted}.${carried}`;
    }
    case 'drain-to-sump':
      return `${untreated}No lower ground can take the water by gravity, so it is pumped from a sump: ${percent(risk ?? 0)} of years fail ${accepted}, as long as the alarm is heeded.${carried}`;
    case 'ballast':
      return `${untreated}A concrete slab with facings inside the liner holds down ${say.length(d.measures.ballast)} of head on floor and sides: ${percent(risk ?? 0)} of years fail ${accepted}.`;
    case 'shallower':
      return `${untreated}At ${say.length(d.depth)} it is safe.`;
    case 'move':
      return `${untreated}No depth worth digging is safe here: another spot is the answer.`;
    case 'vent':
      return 'Organic ground lies under or near the floor: the gas it gives off gathers under a liner. A vent from the high point lets it out; a water drain at the low point would not.';
    case 'measure-first':
      return `${untreated}${whyWait(site, d, options, measureNext)}`;
    default:
      return untreated;
  }
}

/** Nothing known of the wet season, a question not asked, or a season worth more than it costs. */
function whyWait(site: Site, d: Decision, options: Option[], next: NextMeasurement[]): string {
  if (lacksEvidence(site))
    return 'The survey says too little of the wet half-year to decide; a wet season of dips in sealed standpipes would.';
  if (d.governs !== 'evidence')
    return `A drain may be the answer, but ${options.find(({ why }) => why?.governs === 'discharge')!.why!.text}.`;
  const season = next.find(({ waits }) => waits)!;
  return `The answer hangs on how high the water stands in the wet half-year: a season of dips is worth about ${season.worth_drains.toPrecision(2)} times the price of a drain, more than the season costs.`;
}
