import { UnderpondError } from '../units/index.js';

/** One symbol of a formula: what it means, its SI unit, and the range in which the formula holds. */
export interface Parameter {
  meaning: string;
  unit: string;
  min: number;
  max: number;
}

type Compute = (...args: number[]) => number;

/** What a formula says about itself; see {@link formula}. */
interface Declaration<C extends Compute, Name extends string> {
  /** the name a practitioner would look up */
  title: string;
  /** symbol and SI unit of the result */
  symbol: string;
  unit: string;
  /** plain maths in the parameters' symbols; evaluated against `compute` by the tests */
  expression: string;
  /** in the order in which `compute` takes them */
  parameters: Record<Name, Parameter>;
  compute: C;
  /** what the arguments must be to each other, in their symbols, where ranges cannot say it */
  together?: {
    says: string;
    holds: C extends (...args: infer A) => number ? (...args: A) => boolean : never;
  };
  /** where it holds and what it leaves out */
  validity: string;
  /** publication, and 'from memory' where it was not seen */
  source: string;
}

/** A declared formula: the declaration, and `of`, which checks its arguments. */
export interface Formula<C extends Compute = Compute, Name extends string = string>
  extends Declaration<C, Name> {
  kind: 'formula';
  /**
   * The formula by named arguments in SI units, each checked against its range, and all against each other.
   * @throws FormulaError naming the argument, its value, unit and allowed range, or what does not fit together
   */
  of(values: Record<Name, number>): number;
}

/** A value outside the range in which a formula holds, or one that is missing. */
export class FormulaError extends UnderpondError {
  override readonly name = 'FormulaError';

  /**
   * @param code - which fault
   * @param message - begins with the formula's title
   */
  constructor(
    override readonly code: 'unknown-argument' | 'missing-argument' | 'outside-range' | 'do-not-fit',
    message: string,
  ) {
    super(message);
  }
}

/**
 * Declares a formula once: `compute` is what loops call, `expression` is what a reader is shown, and a test
 * holds the two together.
 * @param declaration - what it says of itself, and `compute`
 * @returns the declaration with `of`, which checks its arguments
 */
export function formula<C extends Compute, Name extends string>(
  declaration: Declaration<C, Name>,
): Formula<C, Name> {
  const { title, parameters, compute, together } = declaration;
  const names = Object.keys(parameters) as Name[];
  return {
    kind: 'formula',
    ...declaration,
    of(values) {
      for (const name of Object.keys(values))
        if (!(name in parameters))
          throw new FormulaError(
            'unknown-argument',
            `${title}: unknown argument ${name}; it takes ${names.join(', ')}`,
          );
      const args = names.map((name) => {
        const { unit, min, max } = parameters[name]!;
        const value = values[name];
        if (value === undefined)
          throw new FormulaError('missing-argument', `${title}: missing ${name} (${unit})`);
        if (!(value >= min && value <= max))
          throw new FormulaError(
            'outside-range',
            `${title}: ${name} = ${value} ${unit} is outside ${min} to ${max} ${unit}`,
          );
        return value;
      });
      if (together && !together.holds(...args)) {
        const given = names.map((name) => `${name} = ${values[name]} ${parameters[name]!.unit}`).join(', ');
        throw new FormulaError('do-not-fit', `${title}: ${together.says} must hold, but ${given}`);
      }
      return compute(...args);
    },
  };
}
