import { UnderpondError } from './underpondError.js';

/** Something given to a function that it cannot work with. */
export class InputError extends UnderpondError {
  override readonly name = 'InputError';

  /**
   * @param code - whether it is of no use, or not there
   * @param message - what was given, what it may be, and what to do
   */
  constructor(
    override readonly code: 'invalid-input' | 'missing-input',
    message: string,
  ) {
    super(message);
  }
}
