import { method } from '../formula/index.js';

export const runoffCoefficientTable = method({
  title: 'Share of a storm that runs off (run-off coefficients)',
  what: 'Share of the rain of a design storm that a surface sheds: low, likely and high end of the tables.',
  assumptions: [
    'lawn on clay from a county table for flat ground (0.16) to tight clay (0.40–0.60), wet clay as the latter',
    'roof and paving by ASCE; woodland half of what lawn sheds, as in the daily model; the rest common practice',
  ],
  source:
    'HERPICC county table, ASCE and Schwab as read in teaching sheets; rational problems of practice sites',
});

/** Run-off coefficients by surface, 0–1; see {@link runoffCoefficientTable}. */
export const RUNOFF_COEFFICIENT = {
  lawn: { low: 0.16, likely: 0.5, high: 0.6 },
  bare: { low: 0.3, likely: 0.6, high: 0.8 },
  paved: { low: 0.75, likely: 0.9, high: 0.95 },
  woodland: { low: 0.08, likely: 0.25, high: 0.5 },
  roof: { low: 0.75, likely: 0.95, high: 1 },
} as const;

/** What woodland sheds over what lawn does. Common practice. */
export const WOODLAND_SHARE = 0.5;
