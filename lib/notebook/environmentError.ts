import { UnderpondError } from '../units/index.js';

/** What lies around the library is not as it is needed: a folder, a package, a file that is built, a kernel. */
export class EnvironmentError extends UnderpondError {
  override readonly name = 'EnvironmentError';

  /**
   * @param code - what it lacks
   * @param message - what is wrong and what to do
   */
  constructor(
    override readonly code:
      | 'missing-folder'
      | 'folder-not-empty'
      | 'missing-package'
      | 'not-built'
      | 'invalid-notebook'
      | 'kernel-failed',
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}
