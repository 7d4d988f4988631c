/** What an output says of one subject, and when two that speak of the same cannot both be true. */
import type { Span } from './amounts.js';

export interface Claim {
  /** what is spoken of: `margin|recommended|emptied|3` */
  about: string;
  /** the output and the place in it */
  where: string;
  /** what the value may be */
  span?: Span;
  /** what the words leave open */
  says?: string[];
  /** as it is read */
  text: string;
}

/** Six digits are written in `result.json`. */
const DIGITS = 2e-5;

function differ(a: Claim, b: Claim): boolean {
  if (a.span && b.span) return a.span.low > b.span.high + DIGITS || b.span.low > a.span.high + DIGITS;
  if (a.says && b.says) return !a.says.some((word) => b.says!.includes(word));
  // A number against a word on one subject: one of them speaks of something else.
  return true;
}

/** Every two claims on one subject that cannot both be true. */
export function disagreements(claims: readonly Claim[]): string[] {
  const on = new Map<string, Claim[]>();
  for (const claim of claims) on.set(claim.about, [...(on.get(claim.about) ?? []), claim]);
  return [...on].flatMap(([about, said]) =>
    said.flatMap((a, at) =>
      said
        .slice(at + 1)
        .filter((b) => differ(a, b))
        .map((b) => `${about}: ${a.where} '${a.text}', ${b.where} '${b.text}'`),
    ),
  );
}

/** How many claims each output makes on each kind of subject: a reader that reads nothing would find no fault. */
export function counted(claims: readonly Claim[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { about, where } of claims) {
    const key = `${where.split(':')[0]} ${about.split('|')[0]}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

/** Makes claims of one output. */
export function claimer(output: string) {
  const claims: Claim[] = [];
  return {
    claims,
    span: (about: string, place: string, text: string, span: Span) =>
      claims.push({ about, where: `${output}: ${place}`, text, span }),
    says: (about: string, place: string, text: string, ...says: string[]) =>
      claims.push({ about, where: `${output}: ${place}`, text, says }),
  };
}

export type Claimer = ReturnType<typeof claimer>;
