import { UnderpondError } from './underpondError.js';

/** Why a text is not the quantity asked for. */
type QuantityFault =
  | 'missing-value'
  | 'invalid-number'
  | 'ambiguous-comma'
  | 'unknown-unit'
  | 'missing-unit'
  | 'wrong-unit';

/** A quantity that could not be read; `message` begins with the word of the error vocabulary and the text found. */
export class QuantityError extends UnderpondError {
  override readonly name = 'QuantityError';

  /**
   * @param code which fault
   * @param found the text at fault
   * @param why what is wrong with it, in words
   * @param remedy what to write instead, as a sentence
   */
  constructor(
    override readonly code: QuantityFault,
    readonly found: string,
    readonly why: string,
    readonly remedy: string,
  ) {
    super(`${VERDICT[code]} '${found}' - ${why}`);
  }
}

const VERDICT: Record<QuantityFault, string> = {
  'missing-value': 'missing',
  'invalid-number': 'invalid',
  'ambiguous-comma': 'invalid',
  'unknown-unit': 'unknown',
  'missing-unit': 'missing unit in',
  'wrong-unit': 'invalid',
};
