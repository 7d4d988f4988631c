import type { Basis } from '../basis/index.js';
import type { Governs, Instead, OpenFact, OptionName, WishChange } from '../contract/index.js';
import { type Advice, isOption, OPTIONS } from '../contract/index.js';
import { openFactAt, worstDig } from '../digging/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import type { Shift } from '../heads/index.js';
import { isAsBuilt, type Measures, NOTHING, namesOf, oldDrainOf } from '../heads/index.js';
import type { Option } from '../options/index.js';
import { type Candidate, candidatesOf } from '../options/index.js';
import { type Verdict, verdictsAt } from '../reliability/index.js';
import type { Site, SpotHead } from '../site/index.js';
import {
  DEARER,
  deepestSafe,
  EASY,
  easedBy,
  easedShallower,
  type Judge,
  type Less,
  type Weighed,
} from './easedWish.js';
import { gasUnder, lacksEvidence, stopOf } from './stops.js';
import { worthOf } from './worth.js';

/** What is recommended, before it is put into words. */
export interface Decision {
  option: Advice;
  also: Advice[];
  measures: Measures;
  /** as `depth_m` of the {@link Recommendation}, m */
  depth: number;
  /** what fails at the wish when nothing is done */
  governs: Governs;
  /** of the measures at the depth; absent where a stop decided */
  verdict?: Verdict;
  /** a levelled spot where less is needed: the one to move to */
  spot?: SpotHead;
  /** safe as long as the pond is emptied only in some months */
  emptyingRuled: boolean;
  /** what is done otherwise than wished, and makes it safe */
  change?: WishChange;
  /** what the verdict rests on where that is done */
  changed?: Basis;
  /** what nobody looked up and alone stands against the wish with nothing done */
  open?: OpenFact;
  /** deeper, up to the wish, where it is never emptied; told beside less depth that may be */
  unemptied?: Weighed & { depth: number };
  /** verdicts that were passed over, in order */
  rejected: Weighed[];
}

/** The option that an answer builds; of several at once the first in the order of their names. */
export function builtBy({ option, also, measures }: Decision): OptionName {
  return [option, ...also].find(isOption) ?? namesOf(measures)[0];
}

/** Answers with a liner laid, which gas gathers under. */
const VENTED: ReadonlySet<Advice> = new Set([...OPTIONS, 'shallower']);

/** Judges with the inputs shifted, counting at the depths that are asked for only. */
export function shiftedBy(basis: Basis, shift: Shift): Judge {
  return (m, depths, changed = basis) => verdictsAt(changed, m, depths, shift);
}

/**
 * The decision for a site: stops first, then the first candidate that is safe, then what can be had instead.
 * @param judge - where the inputs are not as they were simulated
 * @param only - no other change of the wish than this is tried; null: none
 */
export function decide(
  basis: Basis,
  options: Option[],
  judge: Judge = (m, depths, changed = basis) => verdictsAt(changed, m, depths),
  only?: WishChange | null,
): Decision {
  const { site } = basis;
  const wish = site.pond.depth;
  const base = {
    measures: NOTHING,
    depth: wish,
    also: [] as Advice[],
    emptyingRuled: false,
    rejected: [] as Weighed[],
  };
  const stop = stopOf(site);
  if (stop)
    return {
      ...base,
      option: stop.option,
      governs: stop.governs,
      depth: stop.option === 'do-not-dig' ? 0 : wish,
    };
  const candidates = candidatesOf(basis, options);
  const [nothing] = judge(NOTHING, [wish]);
  // Where no month is wished any will do; a pond that is there already is not rebuilt for one.
  const ruledAnyway = site.pond.emptiedIn === 'any' || site.pond.existing;
  const rejected: Weighed[] = [];

  const decided = ({ candidate, verdict }: Weighed, extra: Partial<Decision> = {}): Decision => {
    const option: Advice = extra.option ?? candidate.option;
    const also = besides(site, candidate, option, extra.depth ?? wish);
    return {
      ...base,
      governs: nothing.governs,
      measures: candidate.measures,
      verdict,
      rejected,
      ...extra,
      option,
      also,
    };
  };

  const undone: Weighed = { candidate: { option: 'no-drain', measures: NOTHING }, verdict: nothing };
  const open = openFactAt(site, NOTHING, wish, nothing.governs);
  /** No depth is safe: the look that decides whether it is, or another spot. */
  const nowhere = () =>
    open
      ? decided(undone, { option: 'measure-first', governs: nothing.governs, open })
      : decided(undone, { option: 'move' });
  const lessDeep = (found: Less, extra: Partial<Decision> = {}) =>
    decided(found, {
      option: 'shallower',
      depth: found.depth,
      open,
      ...(found.change && { change: found.change, changed: found.basis }),
      ...extra,
    });
  if (lacksEvidence(site) && !nothing.dry)
    return decided(undone, { option: 'measure-first', governs: 'evidence' });
  // A drain that a look at the place may make possible comes before pump, concrete, less depth, and no pond.
  const asking = options.some(({ why }) => why?.asks);
  const askFirst = () => decided(undone, { option: 'measure-first', governs: nothing.governs });
  // What an old drain does is looked up before anything is laid, raised or poured in its place.
  const unread = oldDrainOf(site) !== undefined;
  const rebuilds = ({ drain, raise, ballast }: Measures) => drain !== undefined || raise > 0 || ballast > 0;
  const gas = gasUnder(site, wish) && ({ option: 'vent', governs: 'gas' } as const);
  /** Used otherwise it may be safe with little built. */
  const eased = (): Decision | undefined => {
    const found = easedBy(basis, candidates, judge, only);
    return found && decided(found, { change: found.change, changed: found.basis });
  };
  for (const candidate of candidates) {
    const [verdict] = candidate.measures === NOTHING ? [nothing] : judge(candidate.measures, [wish]);
    const ruled = ruledAnyway && verdict.diggable && verdict.kept && !verdict.safe;
    if (verdict.safe || ruled) {
      const change = DEARER.includes(candidate.option) && eased();
      if (change) return change;
      if (asking && DEARER.includes(candidate.option)) return askFirst();
      if (unread && rebuilds(candidate.measures) && !isAsBuilt(candidate.measures)) return askFirst();
      return decided({ candidate, verdict }, { ...gas, emptyingRuled: ruled });
    }
    rejected.push({ candidate, verdict });
  }

  // A slab that cannot be cast brings nothing in order.
  const cast = ({ conditions }: Verdict) => !conditions.some(({ code }) => code === 'slab-cast');
  const dry = rejected.filter(
    ({ verdict }) => cast(verdict) && (verdict.dry || (ruledAnyway && verdict.kept)),
  );
  if (dry.length > 0) {
    // The water would be in order: the dig itself is what limits the depth.
    const limited = deepestSafe(
      basis,
      (dry.some(({ candidate }) => !DEARER.includes(candidate.option)) ? rejected : dry).map(
        ({ candidate }) => candidate,
      ),
      judge,
      ruledAnyway,
    );
    if (!limited) {
      const used = easedShallower(basis, candidates, judge, only);
      return used ? lessDeep(used) : nowhere();
    }
    const emptyingRuled = ruledAnyway && !limited.verdict.safe;
    return decided(limited, { option: 'shallower', depth: limited.depth, emptyingRuled, open });
  }
  const change = eased();
  if (change) return change;
  if (asking || unread) return askFirst();
  const kept = rejected.find(({ verdict }) => verdict.kept && verdict.diggable);
  const passed = rejected.map(({ candidate }) => candidate);
  const wished = deepestSafe(basis, passed, judge, false);
  // A question not yet asked; a flow that would never end is no question.
  const asked = site.survey.site.discharge_allowed ?? 'unknown';
  const discharge = asked === 'unknown' && options.some((o) => o.why?.governs === 'discharge');
  if (!wished && !kept && discharge) return askFirst();
  const worthIt = (never: number, emptied = 0) =>
    worthOf(site.pond, never, true) > worthOf(site.pond, emptied, false);
  // All of the wish, never emptied, comes before less of it used otherwise.
  if (kept && worthIt(wish, wished?.depth)) return decided(kept, { emptyingRuled: true });
  const emptied = easedShallower(basis, candidates, judge, only, wished?.depth) ?? wished;
  const never = kept ? { ...kept, depth: wish } : deepestSafe(basis, passed, judge, true);
  if (!kept && never && worthIt(never.depth, emptied?.depth)) return lessDeep(never, { emptyingRuled: true });
  const deeper = never && emptied && never.depth > emptied.depth + LEVEL_RESOLUTION;
  return emptied ? lessDeep(emptied, { unemptied: deeper ? never : undefined }) : nowhere();
}

/** What goes with an answer: the works it rests on, and a vent where gas gathers. */
function besides(site: Site, { option, measures }: Candidate, advice: Advice, depth: number): Advice[] {
  const names = namesOf(measures).filter((name) => name !== option && name !== 'no-drain');
  return [
    ...(advice === option || option === 'no-drain' ? [] : [option]),
    ...names,
    ...(VENTED.has(advice) && gasUnder(site, depth) ? (['vent'] as const) : []),
  ];
}

/**
 * Beside works that serve the wish: the least change of it that makes them needless; beside less depth: more of it, never
 * emptied. Null where there is none, or nothing is built.
 */
export function insteadOf(
  basis: Basis,
  options: Option[],
  { option, measures, verdict, unemptied }: Decision,
): Instead | null {
  if (unemptied) return neverEmptied(basis, unemptied);
  const built = OPTIONS.find((name) => name === option);
  if (!built || EASY.includes(built) || isAsBuilt(measures) || !verdict?.safe) return null;
  const found = easedBy(basis, candidatesOf(basis, options), (m, depths, changed = basis) =>
    verdictsAt(changed, m, depths),
  );
  if (!found) return null;
  const { change, candidate } = found;
  return {
    depth_m: basis.site.pond.depth,
    change,
    option: candidate.option,
    also: besides(basis.site, candidate, candidate.option, basis.site.pond.depth),
    raise_m: candidate.measures.raise,
    per_year: found.verdict.chance.perYear,
  };
}

function neverEmptied({ site }: Basis, { candidate, verdict, depth }: Weighed & { depth: number }): Instead {
  return {
    depth_m: depth,
    change: { emptied_in: [] },
    option: candidate.option,
    also: besides(site, candidate, candidate.option, depth),
    raise_m: candidate.measures.raise,
    per_year: verdict.chance.modes['lift-drawn-down'] ?? 0,
  };
}

/** In order, beyond its limit, or too near to it to tell. */
type Standing = 'in' | 'out' | 'near';

/**
 * The verdict could go either way: nothing that counts for it is surely out of order, and something lies so near its
 * limit that other samples or other years of weather may tell otherwise.
 */
export function isCloseCall(site: Site, decision: Decision): boolean {
  const { acceptedRisk, existing } = site.pond;
  const against = (chance: number, error: number): Standing =>
    Math.abs(chance - acceptedRisk) <= error ? 'near' : chance > acceptedRisk ? 'out' : 'in';
  const dug = ({ dig, conditions }: Verdict): Standing[] => {
    const { chance } = worstDig(dig);
    const error = 1.96 * Math.sqrt((chance * (1 - chance)) / site.water.samples);
    const met = { yes: 'in', no: 'out', doubtful: 'near' } as const;
    return existing ? [] : [against(chance, error), ...conditions.map((c) => met[c.met])];
  };
  const open = (standings: Standing[]) => !standings.includes('out') && standings.includes('near');
  const couldTurn = (verdict: Verdict): boolean => {
    const { chance } = verdict;
    const drawn = against(chance.modes['lift-drawn-down'] ?? 0, chance.drawnError.halfWidth95);
    const any = against(chance.perYear, chance.error.halfWidth95);
    const dig = dug(verdict);
    // Kept full and emptied by rule where that is how it is decided.
    return open([any, ...dig]) || (decision.emptyingRuled && open([drawn, ...dig]));
  };
  const weighed = decision.rejected.map(({ verdict }) => verdict);
  return [...weighed, ...(decision.verdict ? [decision.verdict] : [])].some(couldTurn);
}
