import { UnderpondError } from '../../units/index.js';

/** The heads of a section were not found, though nothing speaks against what was given. */
export class SolverError extends UnderpondError {
  override readonly name = 'SolverError';
  override readonly code = 'not-settled';
}
