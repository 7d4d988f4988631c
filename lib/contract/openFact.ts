/** A fact that nobody looked up and that alone stands against a depth. */
export type OpenFact = 'seam' | 'footing';
