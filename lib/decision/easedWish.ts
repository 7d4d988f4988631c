import type { Basis } from '../basis/index.js';
import type { OptionName, WishChange } from '../contract/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import type { Candidate } from '../options/index.js';
import { deepestOf } from '../options/index.js';
import type { Verdict } from '../reliability/index.js';
import { depthsOf } from '../reliability/index.js';
import { type Changed, changesOf, isJust } from './leastChange.js';

/** A candidate with its verdict. */
export interface Weighed {
  candidate: Candidate;
  verdict: Verdict;
}

/** Less depth than was wished, perhaps used otherwise. */
export type Less = Weighed & { depth: number } & Partial<Changed>;

/** Gives the verdicts of measures at depths, of the pond as wished or as `changed`. */
export type Judge = (m: Measures, depths: number[], changed?: Basis) => Verdict[];

/**
 * Shallowest answer worth digging: a third of the wish, at least 0.3 m and at most 0.4 m, which is a pond whatever was wished;
 * below that another spot is better. Our choice.
 */
const WORTH_DIGGING = (wish: number) => Math.min(Math.max(0.3, 0.33 * wish), 0.4);
/** What comes first is passed over for what gives more where it gives less than this share of that. Our choice. */
const NEARLY_AS_DEEP = 0.9;

/** What is tried with a change of the wish, before anything dearer. */
export const EASY: OptionName[] = ['no-drain', 'surface-water-only', 'raise-pond'];

/**
 * The least change of the wish with which something easy is safe at it; undefined where none is.
 * @param only - no other change than this is tried; null: none
 */
export function easedBy(
  basis: Basis,
  candidates: readonly Candidate[],
  judge: Judge,
  only?: WishChange | null,
): (Weighed & Changed) | undefined {
  if (only === null) return undefined;
  const { depth, acceptedRisk } = basis.site.pond;
  const easy = candidates
    .filter(({ option }) => EASY.includes(option))
    .map((candidate) => ({ candidate, verdict: judge(candidate.measures, [depth])[0] }))
    .filter(({ verdict }) => verdict.diggable);
  const emptied = ({ modes }: Verdict['chance']) =>
    Math.max(modes['lift-emptied'] ?? 0, modes['floor-heave'] ?? 0, modes['side-slump'] ?? 0);
  const mends = (things: readonly string[], { kept, chance }: Verdict) =>
    (kept || things.includes('kept_within_m')) &&
    (emptied(chance) <= acceptedRisk || things.includes('emptied_in') || things.includes('days_empty'));
  const changes = changesOf(basis, (things) =>
    only ? isJust(only, things) : easy.some(({ verdict }) => mends(things, verdict)),
  );
  for (const { change, basis: changed } of changes)
    for (const { candidate } of easy) {
      const [verdict] = judge(candidate.measures, [depth], changed);
      if (verdict.safe) return { candidate, verdict, change, basis: changed };
    }
  return undefined;
}

/**
 * Less depth and a change of the wish with which something easy is safe: the deepest, of the least change; undefined where
 * none is worth digging.
 * @param over - no shallower than this, m
 */
export function easedShallower(
  basis: Basis,
  candidates: readonly Candidate[],
  judge: Judge,
  only?: WishChange | null,
  over = 0,
): (Weighed & Changed & { depth: number }) | undefined {
  if (only === null) return undefined;
  const easy = candidates.filter(({ option }) => EASY.includes(option));
  let best: (Weighed & Changed & { depth: number }) | undefined;
  for (const { change, basis: changed } of changesOf(basis, (things) => !only || isJust(only, things))) {
    const found = deepestSafe(basis, easy, (m, depths) => judge(m, depths, changed), false);
    if (found && found.depth > (best?.depth ?? over) + LEVEL_RESOLUTION)
      best = { ...found, change, basis: changed };
  }
  return best;
}

/** Candidates that are dearer to have or to keep than a pipe to an outlet. */
export const DEARER: OptionName[] = ['drain-to-sump', 'ballast'];

/**
 * The depth above the wish that is safe with every shallower one: the first that is had without pump or concrete and is nearly
 * as deep as the deepest had so, lest a deeper wish is answered by much less; else of the first that has one worth digging.
 */
export function deepestSafe(
  basis: Basis,
  passedOver: readonly Candidate[],
  judge: Judge,
  emptyingRuled: boolean,
): (Weighed & { depth: number }) | undefined {
  const { depth: wish } = basis.site.pond;
  const depths = depthsOf(basis.site).filter((d) => d < wish);
  if (depths.length === 0) return undefined;
  const deepest = (candidate: Candidate) => {
    const verdicts = judge(candidate.measures, depths);
    const at = deepestOf(verdicts.map((v) => v.safe || (emptyingRuled && v.diggable && v.kept)));
    return at >= 0 && depths[at] >= WORTH_DIGGING(wish) - 1e-9
      ? [{ candidate, depth: depths[at], verdict: verdicts[at] }]
      : [];
  };
  const dear = ({ option }: Candidate) => DEARER.includes(option);
  const plain = passedOver.filter((each) => !dear(each)).flatMap(deepest);
  const most = Math.max(...plain.map(({ depth }) => depth));
  const first = plain.find(({ depth }) => depth >= NEARLY_AS_DEEP * most);
  if (first) return first;
  for (const candidate of passedOver.filter(dear)) {
    const [found] = deepest(candidate);
    if (found) return found;
  }
  return undefined;
}
