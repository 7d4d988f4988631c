import type { Formula } from './formula.js';
import type { Method } from './method.js';

/**
 * The formulas and method cards among a module's exports, under their export names.
 * @param module - namespace of an import, `import * as soil from …`
 * @returns formula or card by name
 */
export function catalogue(module: Record<string, unknown>): Record<string, Formula | Method> {
  return Object.fromEntries(
    Object.entries(module).filter(
      (entry): entry is [string, Formula | Method] =>
        typeof entry[1] === 'object' &&
        entry[1] !== null &&
        ((entry[1] as Formula).kind === 'formula' || (entry[1] as Method).kind === 'method'),
    ),
  );
}
