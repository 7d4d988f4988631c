/** Packages that only notebooks and pages need; the rest of the library works without them. */

import { EnvironmentError } from './environmentError.js';

/**
 * Loads an optional peer.
 * @param name the package
 * @param purpose what it is needed for, to finish the sentence "needed to …"
 * @throws EnvironmentError naming the package and how to install it, when it is missing
 */
export async function optional<T>(name: string, purpose: string, load: () => T | Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (cause) {
    throw missingPackage(name, purpose, cause);
  }
}

/** What is thrown where a package could not be loaded: how to get it, or what else went wrong. */
export function missingPackage(name: string, purpose: string, cause: unknown): unknown {
  const code = (cause as { code?: unknown }).code;
  if (code !== 'ERR_MODULE_NOT_FOUND' && code !== 'MODULE_NOT_FOUND') return cause;
  return new EnvironmentError(
    'missing-package',
    `missing package '${name}', needed to ${purpose}: npm install ${name}`,
    { cause },
  );
}
