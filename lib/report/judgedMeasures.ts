import type { Basis } from '../basis/index.js';
import type { MonthlyLimits, Situation } from '../contract/index.js';
import type { Measures } from '../heads/index.js';
import type { Verdict } from '../reliability/index.js';

/** What situations are told of: measures at a depth, and how they are judged. */
export interface JudgedMeasures {
  of: Situation['of'];
  basis: Basis;
  measures: Measures;
  depth: number;
  verdict: Verdict;
  limits: MonthlyLimits;
  /** months (1–12) in which it is emptied as planned, and for no longer */
  planned: number[];
  /** what was assumed, by item */
  assumed: string[];
}
