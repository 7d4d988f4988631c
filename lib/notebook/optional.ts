/** Packages that only notebooks and pages need; the rest of the library works without them. */

/**
 * Loads an optional peer.
 * @param name the package
 * @param purpose what it is needed for, to finish the sentence "needed to …"
 * @throws Error naming the package and how to install it, when it is missing
 */
export async function optional<T>(name: string, purpose: string, load: () => T | Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (cause) {
    const code = (cause as { code?: unknown }).code;
    if (code !== 'ERR_MODULE_NOT_FOUND' && code !== 'MODULE_NOT_FOUND') throw cause;
    throw new Error(`missing package '${name}', needed to ${purpose}: npm install ${name}`, { cause });
  }
}
