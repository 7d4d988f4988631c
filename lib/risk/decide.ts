import type { Site, SpotHead } from '../site/index.js';
import type { Basis } from './basis.js';
import { type Candidate, candidatesOf } from './candidates.js';
import { depthsOf } from './depths.js';
import { type Measures, NOTHING, namesOf } from './measures.js';
import type { Option } from './options.js';
import type { Advice, Governs } from './result.js';
import type { Shift } from './shift.js';
import { gasUnder, lacksEvidence, stopOf } from './stops.js';
import { type Verdict, verdictsAt } from './verdict.js';

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
  /** verdicts that were passed over, in order */
  rejected: Weighed[];
}

/** A candidate with its verdict. */
export interface Weighed {
  candidate: Candidate;
  verdict: Verdict;
}

/** Shallowest answer worth digging: 0.3 m and a third of the wish; below that another spot is better. Our choice. */
const WORTH_DIGGING = (wish: number) => Math.max(0.3, 0.33 * wish);

/** Gives the verdicts of measures at depths. */
export type Judge = (m: Measures, depths: number[]) => Verdict[];

/** Judges with the inputs shifted, counting at the depths that are asked for only. */
export function shiftedBy(basis: Basis, shift: Shift): Judge {
  return (m, depths) => verdictsAt(basis, m, depths, shift);
}

/**
 * The decision for a site: stops first, then the first candidate that is safe, then what can be had instead.
 * @param judge - where the inputs are not as they were simulated
 */
export function decide(
  basis: Basis,
  options: Option[],
  judge: Judge = (m, depths) => verdictsAt(basis, m, depths),
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
    const names = namesOf(candidate.measures).filter((n) => n !== candidate.option && n !== 'no-drain');
    const option: Advice = extra.option ?? candidate.option;
    const also: Advice[] =
      option === candidate.option || candidate.option === 'no-drain' ? names : [candidate.option, ...names];
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

  const undone = { candidate: candidates[0], verdict: nothing };
  if (lacksEvidence(site) && !nothing.dry)
    return decided(undone, { option: 'measure-first', governs: 'evidence' });
  const gas = gasUnder(site) && ({ option: 'vent', governs: 'gas' } as const);
  for (const candidate of candidates) {
    const [verdict] = candidate.measures === NOTHING ? [nothing] : judge(candidate.measures, [wish]);
    const ruled = ruledAnyway && verdict.diggable && verdict.kept && !verdict.safe;
    if (verdict.safe || ruled) return decided({ candidate, verdict }, { ...gas, emptyingRuled: ruled });
    rejected.push({ candidate, verdict });
  }

  const dry = rejected.filter(({ verdict }) => verdict.dry || (ruledAnyway && verdict.kept));
  if (dry.length > 0) {
    // The water would be in order: the dig itself is what limits the depth.
    const limited = deepestSafe(basis, dry, judge, ruledAnyway);
    if (!limited) return decided(dry[0], { option: 'move' });
    const emptyingRuled = ruledAnyway && !limited.verdict.safe;
    return decided(limited, { option: 'shallower', depth: limited.depth, emptyingRuled });
  }
  const kept = rejected.find(({ verdict }) => verdict.kept && verdict.diggable);
  const shallower = deepestSafe(basis, rejected.slice(0, 2), judge, false);
  if (shallower && (shallower.depth >= 0.7 * wish || !kept))
    return decided(shallower, { option: 'shallower', depth: shallower.depth });
  if (kept) return decided(kept, { emptyingRuled: true });
  // A question not yet asked; a flow that would never end is no question.
  const asked = site.survey.site.discharge_allowed ?? 'unknown';
  if (asked === 'unknown' && options.some((o) => o.why?.governs === 'discharge'))
    return decided(undone, { option: 'measure-first', governs: nothing.governs });
  return decided(undone, { option: 'move' });
}

/** The deepest safe depth above the wish of the first candidate that has one worth digging. */
function deepestSafe(
  basis: Basis,
  passedOver: Weighed[],
  judge: Judge,
  emptyingRuled: boolean,
): (Weighed & { depth: number }) | undefined {
  const { depth: wish } = basis.site.pond;
  const depths = depthsOf(basis.site).filter((d) => d < wish && d >= WORTH_DIGGING(wish) - 1e-9);
  if (depths.length === 0) return undefined;
  for (const { candidate } of passedOver) {
    const verdicts = judge(candidate.measures, depths);
    const at = verdicts.findLastIndex((v) => v.safe || (emptyingRuled && v.diggable && v.kept));
    if (at >= 0) return { candidate, depth: depths[at], verdict: verdicts[at] };
  }
  return undefined;
}

/** The verdict could go either way: a chance that decided lies within its 95 % sampling band of what is accepted. */
export function isCloseCall(site: Site, decision: Decision): boolean {
  const accepted = site.pond.acceptedRisk;
  const near = ({ chance }: Verdict) => Math.abs(chance.perYear - accepted) <= 1.96 * chance.standardError;
  const decisive = decision.rejected.filter((r) => r.verdict.diggable).map((r) => r.verdict);
  return [...decisive, ...(decision.verdict ? [decision.verdict] : [])].some(near);
}
