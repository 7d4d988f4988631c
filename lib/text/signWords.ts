/** Who answers for what, and what must be consented to. */

/** A line to sign: who, and what the signature covers. */
interface SignLine {
  who: string;
  covers: string;
}

/** Lines to sign, in the order in which they are signed. */
export const SIGN_LINES: readonly SignLine[] = [
  { who: 'Recorded by', covers: 'the survey is what was seen and measured' },
  {
    who: 'Owner',
    covers:
      'the wish, the accepted chance of failing, and to keep the pond and any drain by the rules of this page',
  },
  {
    who: 'Designer, licence number (not an engineer unless licensed)',
    covers: 'the sheet of design situations: its waters, actions, factors and every row that is not met',
  },
  {
    who: 'Builder',
    covers: 'it is dug, drained and lined as the page says, and what was found otherwise is written down',
  },
  { who: 'Reviewed by, licence number', covers: 'what was checked, and by which edition' },
  { who: 'Neighbour', covers: 'has seen this (not: agreed to it)' },
];

/**
 * When it was issued, with room for the revision.
 * @param issued - date, ISO 8601
 * @returns a line
 */
export function issuedLine(issued?: string): string {
  return `Date of issue: ${issued ?? 'not said'}. Revision: ________`;
}

/** What may need somebody's leave, and when. */
interface Consent {
  what: string;
  /** only where water is led away or pumped */
  drained?: true;
}

/** Leave that may be needed; whoever is in charge says whether it is. */
export const CONSENTS: readonly Consent[] = [
  { what: 'Building or planning authority: the pond, raised ground, the hole' },
  { what: 'Authority for protected ground, trees, remains and wetland' },
  { what: 'Owners of buried services: located on the ground' },
  { what: 'Owner of the ditch, sewer or road: water led to it', drained: true },
  { what: 'Water authority: taking water from the ground and leading it away', drained: true },
  { what: 'Neighbour: pipe or water over the boundary', drained: true },
];

/** How the digest over all files is made, for somebody who does it again. */
export const DIGEST_RECIPE =
  'Over all: SHA-256 of the files in the order of their names; of each the length of its name, the name, the length of its content, the content; lengths as 4 bytes, the least first. Of each file by itself it is what sha256sum gives.';
