import { UnderpondError } from './underpondError.js';

/** Of no use, or not there. */
type InputFault = 'invalid-input' | 'missing-input';

/** Something given to a function that it cannot work with. */
export class InputError extends UnderpondError {
  override readonly name = 'InputError';

  /**
   * @param code - whether it is of no use, or not there
   * @param message - what was given, what it may be, and what to do
   */
  constructor(
    override readonly code: InputFault,
    message: string,
  ) {
    super(message);
  }
}
