import { formula, method } from '../formula/index.js';

/** Water a root zone can hold for plants. */
export const availableWater = formula({
  title: 'Total available water of the root zone',
  symbol: 'TAW',
  unit: 'm',
  expression: '(a - b)*Z',
  parameters: {
    a: { meaning: 'field capacity', unit: 'm³/m³', min: 0.05, max: 0.6 },
    b: { meaning: 'wilting point', unit: 'm³/m³', min: 0.01, max: 0.4 },
    Z: { meaning: 'rooting depth', unit: 'm', min: 0.1, max: 2 },
  },
  compute: (a: number, b: number, Z: number) => (a - b) * Z,
  validity: 'one uniform root zone',
  source: 'FAO Irrigation and Drainage Paper 56, eq. 82 (there in mm)',
});

/** Water that runs down cracks past the roots. */
export const crackBypass = formula({
  title: 'Water that bypasses the roots down cracks',
  symbol: 'B',
  unit: 'm',
  expression: 'c*P*D/W',
  parameters: {
    c: { meaning: 'share that bypasses a dry root zone', unit: '-', min: 0, max: 1 },
    P: { meaning: 'water reaching the ground in the day', unit: 'm', min: 0, max: 0.5 },
    D: { meaning: 'deficit of the root zone', unit: 'm', min: 0, max: 0.5 },
    W: { meaning: 'total available water', unit: 'm', min: 0.01, max: 0.5 },
  },
  compute: (c: number, P: number, D: number, W: number) => ((c * P) / W) * D,
  validity: 'deficit within the available water; cracks close in proportion as the clay wets',
  source: 'our choice: straight line between closed (wet) and open (dry) cracks',
});

/** Water that plants draw in a day. */
export const rootEvaporation = formula({
  title: 'Evaporation from the root zone',
  symbol: 'E_a',
  unit: 'm',
  expression: 'min(E, E*A/R, A)',
  parameters: {
    E: { meaning: 'demand of the day', unit: 'm', min: 0, max: 0.02 },
    A: { meaning: 'water left for plants', unit: 'm', min: 0, max: 0.5 },
    R: { meaning: 'water left at which stress begins, (1 − p)·TAW', unit: 'm', min: 0.001, max: 0.5 },
  },
  compute: (E: number, A: number, R: number) => {
    let drawn = (E * A) / R;
    if (drawn > E) drawn = E;
    if (drawn > A) drawn = A;
    return drawn;
  },
  validity: 'one uniform root zone; stress grows in a straight line',
  source: 'FAO Irrigation and Drainage Paper 56, eq. 84',
});

export const rootZoneBalance = method({
  title: 'Daily soil-moisture balance of the root zone',
  what: 'Turns rain and evaporative demand into recharge below the roots, and keeps the demand that stayed unmet.',
  assumptions: [
    "order of the day: water enters first, what exceeds the deficit is recharge, then the day's demand is drawn " +
      '(the order that gives the printed figures of FAO-56 Example 38)',
    'demand falls linearly once the deficit exceeds the share p of the available water',
    'a share of the water bypasses the roots down cracks, in proportion to the deficit: none once the clay is wet and closed',
  ],
  source: 'FAO Irrigation and Drainage Paper 56, chapter 8',
});

/** Share of available water drawn without stress, 0–1: turf 0.40 (FAO-56 Table 22), 7.5 % less in clay. */
export const DEPLETION_FRACTION = 0.37;
