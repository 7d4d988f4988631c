/** A catalogue of what can be said: by its code the values that are spoken of, SI. */
export type Coded<Catalogue> = {
  [Code in keyof Catalogue]: { code: Code; values: Catalogue[Code] };
}[keyof Catalogue];

/** What is said without a value. */
export type Nothing = Record<never, never>;

/**
 * What is said, without what else an object of it holds.
 * @param said - with its code and values
 * @returns code and values alone
 */
export function codeAndValues<Catalogue>({ code, values }: Coded<Catalogue>): Coded<Catalogue> {
  return { code, values };
}
