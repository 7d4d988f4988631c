import { formula, method } from '../formula/index.js';

export const timeToLiftMethod = method({
  title: 'Time until an emptied liner lifts',
  what: 'Counts the liner lifted when the water that can arrive equals 20 mm over the floor.',
  assumptions: [
    '20 mm over the floor is our choice; 10 and 50 mm halve and multiply the time by 2.5',
    'head outside steady at its highest of the days it stands empty; sides and floor gather water like a disc of ' +
      'their mean plan',
    'water standing in the ring above the floor is there at once',
  ],
  source: 'balance of volumes',
});

/** Water over the floor that counts as lifted, m. */
export const LIFT_VOLUME_DEPTH = 0.02;

/** Time for a steady inflow to bring a depth of water over a floor. */
export const fillTime = formula({
  title: 'Time for an inflow to bring a depth of water over the floor',
  symbol: 't',
  unit: 's',
  expression: 'd*A/Q',
  parameters: {
    d: { meaning: 'depth of water', unit: 'm', min: 0, max: 0.2 },
    A: { meaning: 'floor area', unit: 'm²', min: 0.01, max: 1000 },
    Q: { meaning: 'inflow', unit: 'm³/s', min: 1e-12, max: 1 },
  },
  compute: (d: number, A: number, Q: number) => (d * A) / Q,
  validity: 'steady inflow',
  source: 'balance of volumes',
});
