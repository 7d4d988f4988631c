/** The edge of the liner: how high it ends, and how far outside the rim. */
import { formula, type Use, unrecorded } from '../formula/index.js';

/** The liner goes up above the full pond, m. Common practice. */
const FREEBOARD = 0.1;

/** Edge of the liner above the lowest ground. */
export const edgeLevel = formula({
  title: 'Edge of the liner above the lowest ground at the rim',
  symbol: 'e',
  unit: 'm',
  expression: 'max(z + f, 0)',
  parameters: {
    z: { meaning: 'level of the full pond before the rim is raised', unit: 'm', min: -10, max: 2 },
    f: { meaning: 'freeboard', unit: 'm', min: 0, max: 1 },
  },
  compute: (z: number, f: number) => Math.max(z + f, 0),
  validity: 'not below the ground',
  source: 'common practice for the freeboard',
});

/** How far outside the rim the liner ends, or a line beyond it. */
export const edgeOut = formula({
  title: 'How far outside the rim',
  symbol: 'x',
  unit: 'm',
  expression: 'm*e + c',
  parameters: {
    m: { meaning: 'slope of the sides, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    e: { meaning: 'edge of the liner above the lowest ground', unit: 'm', min: 0, max: 2 },
    c: { meaning: 'beyond that edge', unit: 'm', min: 0, max: 5 },
  },
  compute: (m: number, e: number, c: number) => m * e + c,
  validity: 'the sides go on at their slope up to the edge of the liner',
  source: 'geometry',
});

/** Edge of the liner above the lowest ground at the rim, m; before the rim is raised. */
export const linerEdge = (fullLevel: number, use: Use = unrecorded) => use(edgeLevel, fullLevel, FREEBOARD);
