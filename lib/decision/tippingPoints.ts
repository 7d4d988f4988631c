import { type Basis, basisOf } from '../basis/index.js';
import type { MovedInput, TurningPoint } from '../contract/index.js';
import { method } from '../formula/index.js';
import { NO_SHIFT, type Shift } from '../heads/index.js';
import type { Option } from '../options/index.js';
import { type Percentiles, percentiles } from '../sampling/index.js';
import { strengthAt } from '../site/index.js';
import { logPercentiles } from '../soil/index.js';
import { decide, shiftedBy } from './decide.js';

export const tippingMethod = method({
  title: 'Tipping points',
  what: 'The nearest value of an input, with all others as they are, at which the recommendation changes.',
  assumptions: [
    'the whole distribution of the input is shifted or stretched',
    'options are decided again; their design stays as it is',
  ],
  source: 'search outwards in steps, then bisection on the decision',
});

/** An input that is moved: from −1 to 1, 0 where it is now. */
interface Moved {
  input: MovedInput;
  unit: string;
  now: number | Percentiles;
  value(t: number): number;
  at(t: number): { basis?: Basis; shift?: Shift };
}

/** Values tried on the way to the farthest, and halvings of the step in which the answer changes. */
const TRIALS = 6;
const STEPS = 5;

/** Tipping points of what is decided among the options, an input at a time. */
export function tippingPoints(basis: Basis, options: Option[]): TurningPoint[] {
  // Not of what is told: an option tried, another spot and a season to wait are put in its place afterwards.
  const base = decide(basis, options);
  if (!base.verdict) return [];
  // No change of the wish but the one that is advised: others take the weather to be run again.
  const only = base.change ?? null;
  return movedInputs(basis).flatMap(({ input, unit, now, value, at }) => {
    const decided = (t: number) => {
      const { basis: moved = basis, shift } = at(t);
      // What is accepted moves no chance: those counted already stand.
      return moved.counted === basis.counted && !shift
        ? decide(moved, options, undefined, only)
        : decide(moved, options, shiftedBy(moved, shift ?? NO_SHIFT), only);
    };
    return [1, -1].flatMap((direction) => {
      // From here outwards: an answer may change and change back.
      const steps = Array.from({ length: TRIALS }, (_, i) => (i + 1) / TRIALS);
      // An input at the end of its range stays there.
      const stays = (i: number) => i > 0 && value(direction * steps[i]) === value(direction * steps[i - 1]);
      const at = steps.findIndex((t, i) => !stays(i) && decided(direction * t).option !== base.option);
      if (at < 0) return [];
      let [inside, outside] = [steps[at - 1] ?? 0, steps[at]];
      for (let i = 0; i < STEPS; i++) {
        const middle = (inside + outside) / 2;
        if (decided(direction * middle).option === base.option) inside = middle;
        else outside = middle;
      }
      const t = direction * outside;
      const { option: to, emptyingRuled: emptying_ruled } = decided(t);
      return [{ input, value: value(t), unit, now, from: base.option, to, emptying_ruled }];
    });
  });
}

function movedInputs(basis: Basis): Moved[] {
  const { site, draws } = basis;
  const { pond, ground } = site;
  const withPond = (change: Partial<typeof pond>) => ({
    basis: basisOf({ ...site, pond: { ...pond, ...change } }, basis),
  });
  const high = percentiles(draws.clayHigh);
  const k = percentiles(site.water.permeability);
  const moved: Moved[] = [
    {
      input: 'water-outside',
      unit: 'm',
      now: high,
      value: (t) => high.p50 + 1.5 * t,
      at: (t) => ({ shift: { ...NO_SHIFT, water: 1.5 * t } }),
    },
    {
      input: 'full-level',
      unit: 'm',
      now: pond.fullLevel,
      value: (t) => pond.fullLevel + 0.6 * t,
      at: (t) => withPond({ fullLevel: pond.fullLevel + 0.6 * t }),
    },
    {
      input: 'permeability',
      unit: 'm/s',
      now: k,
      value: (t) => k.p50 * 100 ** t,
      at: (t) => ({ shift: { ...NO_SHIFT, permeability: 100 ** t } }),
    },
    {
      input: 'accepted-risk',
      unit: '',
      now: pond.acceptedRisk,
      value: (t) => Math.min(pond.acceptedRisk * 10 ** t, 1),
      at: (t) => withPond({ acceptedRisk: Math.min(pond.acceptedRisk * 10 ** t, 1) }),
    },
  ];
  if ('held' in pond.kept) {
    const now = pond.kept.held;
    const held = (t: number) => Math.max(now + 0.5 * t, 0);
    moved.push({
      input: 'held-level',
      unit: 'm',
      now,
      value: held,
      at: (t) => withPond({ kept: { held: held(t) } }),
    });
  }
  const strength = strengthAt(ground, pond.depth);
  const stronger = (factor: number) =>
    ground.strengths.map(({ from, strength: of }) => ({
      from,
      strength: of && { ...of, median: of.median * factor },
    }));
  if (strength)
    moved.push({
      input: 'clay-strength',
      unit: 'Pa',
      now: logPercentiles(strength),
      value: (t) => strength.median * 5 ** t,
      at: (t) => ({
        basis: basisOf({ ...site, ground: { ...ground, strengths: stronger(5 ** t) } }, basis),
      }),
    });
  return moved;
}
