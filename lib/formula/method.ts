/** A method card: what a store, fit or solver does, for the same index as the formulas. */
export interface Method {
  kind: 'method';
  title: string;
  what: string;
  assumptions: string[];
  source: string;
}

/**
 * Declares a method card beside the code it describes.
 * @param card - title, what it does, assumptions and source
 * @returns the card, marked as one
 */
export function method(card: Omit<Method, 'kind'>): Method {
  return { kind: 'method', ...card };
}
