/** A catalogue of what can be said: by its code the values that are spoken of, SI. */
export type Said<Catalogue> = {
  [Code in keyof Catalogue]: { code: Code; values: Catalogue[Code] };
}[keyof Catalogue];

/** What is said without a value. */
export type Nothing = Record<never, never>;

/**
 * What is said, without what else an object of it holds.
 * @param said - with its code and values
 * @returns code and values alone
 */
export function saidOf<Catalogue>({ code, values }: Said<Catalogue>): Said<Catalogue> {
  return { code, values };
}
