/** How often it fails: the failing years counted, as often as a drain is found so. */

import type { Basis } from '../basis/index.js';
import type { Situation } from '../contract/index.js';
import { decidingSituations } from '../contract/index.js';
import { type Assessment, changesOf, isJust, type Judged } from '../decision/index.js';
import {
  BATTERY_FAILS,
  type DrainKind,
  floorLevel,
  type Measures,
  NOTHING,
  oldDrainWorks,
  onceIn,
  upkeepOf,
} from '../heads/index.js';
import { candidatesOf } from '../options/index.js';
import { type Chance, verdictAt } from '../reliability/index.js';
import type { Site } from '../site/index.js';
import { type CountedStateName, countedNote, countedWords, emptiedState } from '../text/chanceStepWords.js';
import { recordCounted } from './countedSteps.js';
import { emptiedCounted } from './emptiedCounted.js';
import { tellLevels } from './workedBasics.js';
import { assumed, Recording, siteRow, YEARLY_HEADS } from './workedFrom.js';

/** Chances of what is recommended, state by state, of the pond as wished with nothing done, and of what would do instead. */
export function chanceParts(a: Judged & Partial<Assessment>, situations: Situation[]): Recording[] {
  const { basis, site, decision, instead } = a;
  const rows = decidingSituations(situations);
  const advised = rows.some(({ of }) => of === 'recommended') && decision.verdict;
  const parts = advised ? advisedParts(a, rows) : [];
  // Nothing done at the wish may be what is recommended.
  if (!advised || decision.measures !== NOTHING || decision.depth !== site.pond.depth || decision.changed) {
    const r = partOf('dug as wished, with nothing done', NOTHING);
    const { chance } = verdictAt(basis, NOTHING, site.pond.depth);
    recordChance(r, basis, chance, 'any', 'undone', 'options[no-drain].risk_at_wish.per_year');
    parts.push(r);
  }
  if (!instead) return parts;
  const { change, option, raise_m, depth_m: depth } = instead;
  const candidate = candidatesOf(basis, a.options).find(
    ({ option: name, measures }) => name === option && measures.raise === raise_m,
  );
  if (!candidate) return parts;
  const { measures } = candidate;
  const part = (so: Basis, state: CountedStateName) => {
    const r = partOf('as wished, used otherwise, without what is recommended', measures);
    floorLevel(depth, measures, tellLevels(r, so.site, measures, depth).use);
    const { chance } = verdictAt(so, measures, depth);
    recordChance(r, so, chance, state, 'instead', 'instead.per_year');
    parts.push(r);
  };
  // Never emptied it is used as wished in all else.
  if (change.emptied_in?.length === 0) part(basis, 'drawn');
  else for (const so of changesOf(basis, (things) => isJust(change, things))) part(so.basis, 'any');
  return parts;
}

function advisedParts({ basis, decision }: Judged, rows: Situation[]): Recording[] {
  const { measures, depth, changed = basis } = decision;
  const { chance } = decision.verdict!;
  const r = partOf('what is recommended', measures);
  const path = ({ of, situation, month }: Situation) =>
    `situations[${[of, situation, month ?? []].flat().join('/')}].chance`;
  for (const [state, situation] of [
    ['full', 'full'],
    ['drawn', 'drawn-down'],
    ['power-out', 'power-out'],
  ] as const) {
    const row = rows.find((each) => each.situation === situation && each.month === null);
    if (row) recordChance(r, changed, chance, state, '', path(row));
  }
  // Emptied as planned, or never: the year as a whole.
  const emptied = rows.filter(({ situation, allowed }) => situation === 'emptied' && allowed);
  const planned = emptied.find((row) => alike(row.chance!.middle, chance.perYear));
  recordChance(r, changed, chance, 'any', '', planned && path(planned));
  const worst = emptied.reduce<Situation | undefined>(
    (a, b) => (a && a.chance!.middle >= b.chance!.middle ? a : b),
    undefined,
  );
  if (worst && !alike(worst.chance!.middle, chance.perYear)) {
    const month = worst.month!;
    const alone = changed.site.pond.emptiedIn === 'any';
    const counted = alone
      ? chance.counted('any', month - 1)
      : emptiedCounted(changed, measures, depth, month, true).counted;
    recordCounted(r, changed, counted, { name: '', ...emptiedState(month, alone) }, path(worst));
  }
  return [...upkeepPart(changed.site, measures), r];
}

/** Chances alike but for rounding. */
const alike = (a: number, b: number) => Math.abs(a - b) < 1e-9;

function partOf(what: string, m: Measures): Recording {
  const drained = m.drain !== undefined || m.cutoff !== undefined;
  return new Recording(`How often it fails: ${what}`, countedNote(YEARLY_HEADS, drained));
}

function recordChance(
  r: Recording,
  basis: Basis,
  chance: Chance,
  state: CountedStateName,
  name: string,
  path?: string,
): void {
  recordCounted(r, basis, chance.counted(state), { name, ...countedWords(state) }, path);
}

/** How often what is built fails, at the middle of what is likely. */
function upkeepPart(site: Site, { drain, cutoff }: Measures): Recording[] {
  const kind: DrainKind | undefined = drain?.kind ?? (cutoff === undefined ? undefined : 'cutoff');
  if (!kind) return [];
  const facts = site.survey.site;
  const r = new Recording(
    'How often what is built is found out of order',
    'At the middle of what is likely.',
  );
  const once = (years: number, words: string) => {
    r.tell(onceIn, { T: words });
    return r.use(onceIn, years);
  };
  for (const { item, years, said } of upkeepOf(kind, facts, oldDrainWorks(site)))
    once(years, said ? siteRow(site, item) : assumed(item));
  if (kind === 'sump')
    r.note += ` A power cut counts where the battery fails with it: ${BATTERY_FAILS} of the times, our choice.`;
  if (kind === 'outlet')
    once(
      site.floodEvery,
      facts.flood_every === undefined ? assumed('flood_every') : siteRow(site, 'flood_every'),
    );
  return [r];
}
