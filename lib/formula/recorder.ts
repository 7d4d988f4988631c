import type { Formula } from './formula.js';

/** Evaluates a formula; what a model takes in order to be recorded. */
export type Use = <C extends (...args: number[]) => number>(f: Formula<C>, ...args: Parameters<C>) => number;

/** Evaluation without a record, for ordinary use. */
export const unrecorded: Use = (f, ...args) => f.compute(...args);

/** One formula evaluated: what a reader with a calculator needs. */
export interface Step {
  title: string;
  symbol: string;
  unit: string;
  /** in plain maths, in the symbols of `inputs` */
  expression: string;
  inputs: { symbol: string; meaning: string; unit: string; value: number }[];
  result: number;
  validity: string;
  source: string;
  /** in the order of `inputs` */
  compute(...args: number[]): number;
}

/**
 * A {@link Use} that keeps a step for every formula evaluated through it.
 * @returns `use`, to be handed to a model, and the `steps` it fills
 */
export function recorder(): { use: Use; steps: Step[] } {
  const steps: Step[] = [];
  const use: Use = (f, ...args) => {
    const result = f.compute(...args);
    const { title, symbol, unit, expression, validity, source } = f;
    const inputs = Object.entries(f.parameters).map(([name, p], i) => ({
      symbol: name,
      meaning: p.meaning,
      unit: p.unit,
      value: args[i],
    }));
    steps.push({ title, symbol, unit, expression, inputs, result, validity, source, compute: f.compute });
    return result;
  };
  return { use, steps };
}
