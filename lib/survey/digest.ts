import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const bytesOf = (content: string | Uint8Array) =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

/** SHA-256 of each file by itself, by name, as `sha256sum` gives it; text counts as UTF-8. */
export function digestsOf(
  files: Readonly<Partial<Record<string, string | Uint8Array>>>,
): Record<string, string> {
  return Object.fromEntries(
    Object.keys(files)
      .sort()
      .map((name) => [name, bytesToHex(sha256(bytesOf(files[name] as string | Uint8Array)))]),
  );
}

/**
 * SHA-256 over files: for each, by name, the length and bytes of its name, then of its content, so that no two
 * different sets of files run together to the same bytes. Lengths are 4 bytes, least first; text counts as UTF-8.
 * @param files by name
 * @returns 64 hexadecimal digits
 */
export function digestOf(files: Readonly<Partial<Record<string, string | Uint8Array>>>): string {
  const hash = sha256.create();
  const add = (content: string | Uint8Array) => {
    const bytes = bytesOf(content);
    const length = new Uint8Array(4);
    new DataView(length.buffer).setUint32(0, bytes.length, true);
    hash.update(length).update(bytes);
  };
  for (const name of Object.keys(files).sort()) {
    add(name);
    add(files[name] as string | Uint8Array);
  }
  return bytesToHex(hash.digest());
}
