/** The steps of the worked calculation numbered through, and each made of the numbers as they are printed. */

import type { Step } from '../formula/index.js';
import type { HeadColumn, InputOrigins, Known, Recording, WorkedPart, WorkedStep } from './workedFrom.js';
import { YEARLY_HEADS } from './workedFrom.js';

/** Digits printed of every number. */
export const STEP_DIGITS = 6;
/** Decimals of a percentile, as of the values it is drawn from, m. */
export const DRAWN_DECIMALS = 5;
/** What rounding leaves of nought, in any unit. */
const NOUGHT = 1e-15;

/** Origin of a number that nobody told of. */
const UNTOLD = 'assumed: as the answer has it';

/** What an origin that is no step begins with. */
const ORIGIN = /^([a-z-]+\.csv\b|assumed: |by trial: )/;

const rounded = (value: number) => (Math.abs(value) < NOUGHT ? 0 : Number(value.toPrecision(STEP_DIGITS)));

/**
 * Parts with their steps numbered from 1. A step that was made before is not made again. An input comes from where it is
 * told to come from, or what is known of such a number, else from the latest step before it with the same result and unit,
 * of its own part first.
 */
export function numbered(recordings: Recording[]): WorkedPart[] {
  const all: WorkedStep[] = [];
  const made = new Map<string, WorkedStep>();
  return recordings.flatMap(({ heading, note, from, steps, told, known, equals }) => {
    const left = [...told];
    const own = new Set<WorkedStep>();
    /** of this part, those made before too; the latest first */
    const near: WorkedStep[] = [];
    const stepOf = new Map<Step, WorkedStep>();
    for (const step of steps) {
      const words = wordsFor(step, left);
      const key = JSON.stringify([step.title, step.expression, step.inputs, step.result]);
      const worked = made.get(key) ?? workedOf(step, words, known, all.length + 1, near, all);
      stepOf.set(step, worked);
      near.unshift(worked);
      if (made.has(key)) continue;
      made.set(key, worked);
      own.add(worked);
      all.push(worked);
    }
    if (near.length === 0) return [];
    const used = [...new Set(near)].sort((a, b) => a.number - b.number);
    return [
      {
        heading,
        note,
        from,
        steps: used.filter((step) => own.has(step)),
        again: used.filter((step) => !own.has(step)).map(({ number }) => number),
        equals: equals.map(({ path, of, per }) => ({ path, step: stepOf.get(of)!.number, per })),
      },
    ];
  });
}

/** Forces by the square metre are pressures. */
const PRESSURES = ['Pa', 'N', 'N or Pa'];
const alike = (a: string, b: string) => a === b || (PRESSURES.includes(a) && PRESSURES.includes(b));

/** What is told of a step: the first telling of its formula, which is used up where another follows. */
function wordsFor({ title }: Step, left: InputOrigins[]): Record<string, string | undefined> {
  const of = left.filter(([formula]) => formula.title === title);
  if (of.length > 1) left.splice(left.indexOf(of[0]), 1);
  return of[0]?.[1] ?? {};
}

function workedOf(
  step: Step & { drawn?: HeadColumn[] },
  words: Record<string, string | undefined>,
  known: Known[],
  number: number,
  near: WorkedStep[],
  all: WorkedStep[],
): WorkedStep {
  if (step.drawn) {
    const inputs = step.inputs.map((input) => ({
      ...input,
      shown: input.value,
      from: `${YEARLY_HEADS}, ${input.symbol}`,
    }));
    const shown = step.unit === 'm' ? Number(step.result.toFixed(DRAWN_DECIMALS)) : rounded(step.result);
    return { ...step, number, inputs, shown };
  }
  const inputs = step.inputs.map((input) => {
    const asKnown = known.find(({ value, unit }) => value === input.value && alike(unit, input.unit))?.words;
    // Nought may be what a step leaves.
    const told = words[input.symbol] ?? (input.value === 0 ? undefined : asKnown);
    if (told !== undefined) {
      if (!ORIGIN.test(told)) throw new Error(`invalid origin of ${input.symbol} in ${step.title}: ${told}`);
      return { ...input, shown: rounded(input.value), from: told };
    }
    const same = (one: WorkedStep) => one.result === input.value && alike(one.unit, input.unit);
    // Nought equals nought by chance.
    const earlier = near.find(same) ?? (input.value === 0 ? undefined : all.findLast(same));
    // A page that lacks an origin is better than none; the tests fail for one.
    if (!earlier) return { ...input, shown: rounded(input.value), from: asKnown ?? UNTOLD };
    return { ...input, shown: earlier.shown, from: `step ${earlier.number}` };
  });
  return { ...step, number, inputs, shown: rounded(step.compute(...inputs.map(({ shown }) => shown))) };
}
