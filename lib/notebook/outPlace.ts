/** Where the output of a survey goes: `out/`, a folder for each survey, whatever they are called. */
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { basename, join } from 'node:path';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** In an output folder, whose it is: a digest, for the path itself is nobody's business who gets the folder. */
export const OWNER = '.survey';

/** What {@link OWNER} holds for a survey. */
export function ownerOf(survey: string): string {
  return `${bytesToHex(sha256(utf8ToBytes(realpathSync(survey))))}\n`;
}

/**
 * The output folder of a survey: of its name, or with a number behind it where another survey of that name has one.
 * @param survey path of its folder
 * @param parent of output folders
 */
export function outPlace(survey: string, parent: string): string {
  return placeOf(basename(survey), ownerOf(survey), parent);
}

/** The output folder of what an owner makes, by a name that others may have too. */
export function placeOf(name: string, owner: string, parent: string): string {
  for (let number = 1; ; number++) {
    const place = join(parent, `${name}${number === 1 ? '' : `-${number}`}`);
    const mark = join(place, OWNER);
    if (!existsSync(mark) || readFileSync(mark, 'utf8') === owner) return place;
  }
}
