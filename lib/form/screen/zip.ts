/** A survey folder as one file, and back. */
import { gunzipSync, unzipSync, zipSync } from 'fflate';
import { MOST_BYTES } from '../../survey/index.js';

/** More of it unpacked is no survey. */
const MOST_IN_ALL = 4 * MOST_BYTES;
const MOST_FILES = 400;

/**
 * The zip of a folder, its files at the top.
 * @param files bytes by name
 */
export function zipOf(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  return zipSync(files as Record<string, Uint8Array>, { level: 6 });
}

/**
 * The folder in a zip: its files by name, without a folder they all lie in; hidden files are no part of it.
 * @throws Error when it is no zip, or holds more than a survey does
 */
export function unzipped(zip: Uint8Array): Record<string, Uint8Array> {
  let bytes = 0;
  let count = 0;
  let found: Record<string, Uint8Array>;
  const tooMuch = 'it holds more than a survey does';
  try {
    found = unzipSync(zip, {
      filter: ({ name, originalSize }) => {
        if (!isPart(name)) return false;
        bytes += originalSize;
        count += 1;
        if (bytes > MOST_IN_ALL || count > MOST_FILES) throw new Error(tooMuch);
        return true;
      },
    });
  } catch (error) {
    const why =
      error instanceof Error && error.message === tooMuch ? tooMuch : 'it is no zip, or a damaged one';
    throw new Error(`This file cannot be opened: ${why}.`);
  }
  const names = Object.keys(found);
  const [top] = names[0]?.split('/') ?? [];
  const inside = top !== undefined && names.every((name) => name.startsWith(`${top}/`));
  const strip = inside ? (top?.length ?? 0) + 1 : 0;
  return plain(Object.fromEntries(names.map((name) => [name.slice(strip), found[name]!])));
}

/** Hidden files, what an operating system adds, folders, and names that lead out of a folder are no part of it. */
function isPart(name: string): boolean {
  const parts = name.split('/');
  return (
    !name.endsWith('/') && !name.includes('\\') && parts.every((part) => !/^\.|^__MACOSX$|^$/.test(part))
  );
}

/**
 * Files as they came, those packed by themselves unpacked, as weather services hand them out.
 * @throws Error for one that is damaged or far too large
 */
export function plain(files: Readonly<Record<string, Uint8Array>>): Record<string, Uint8Array> {
  return Object.fromEntries(
    Object.entries(files).map(([name, bytes]) => {
      if (!/\.(csv|tsv|dly|txt)\.gz$/i.test(name)) return [name, bytes];
      return [name.replace(/\.gz$/i, ''), gunzipped(name, bytes)];
    }),
  );
}

function gunzipped(name: string, bytes: Uint8Array): Uint8Array {
  // The last four bytes say how long it is unpacked.
  const size =
    bytes.length < 18 ? 0 : new DataView(bytes.buffer, bytes.byteOffset).getUint32(bytes.length - 4, true);
  try {
    if (size > MOST_BYTES) throw new Error();
    return gunzipSync(bytes);
  } catch {
    throw new Error(`'${name}' cannot be unpacked: it is damaged, or far too large.`);
  }
}
