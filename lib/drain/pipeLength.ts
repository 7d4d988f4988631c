/** How much perforated pipe a layout takes. */

import { formula } from '../formula/index.js';

/** Pipe of a ring. */
export const ringPipe = formula({
  title: 'Perforated pipe around the foot of the sides',
  symbol: 'P',
  unit: 'm',
  expression: '2*(L + W)',
  parameters: {
    L: { meaning: 'length of the floor', unit: 'm', min: 0.1, max: 100 },
    W: { meaning: 'width of the floor', unit: 'm', min: 0.1, max: 100 },
  },
  compute: (L: number, W: number) => 2 * (L + W),
  validity: 'a floor counted by its length and width',
  source: 'geometry',
});

/** Pipe with branches. */
export const branchedPipe = formula({
  title: 'Perforated pipe along the floor with branches across',
  symbol: 'P',
  unit: 'm',
  expression: 'L + n*W',
  parameters: {
    L: { meaning: 'length of the floor', unit: 'm', min: 0.1, max: 100 },
    n: { meaning: 'branches on each side', unit: '-', min: 0, max: 200 },
    W: { meaning: 'width of the floor', unit: 'm', min: 0.1, max: 100 },
  },
  compute: (L: number, n: number, W: number) => L + n * W,
  validity: 'branches half as long as the floor is wide, to both sides',
  source: 'geometry',
});

/** Spacing of branches. */
export const branchSpacing = formula({
  title: 'Spacing of the branches',
  symbol: 's',
  unit: 'm',
  expression: 'L/n',
  parameters: {
    L: { meaning: 'length of the floor', unit: 'm', min: 0.1, max: 100 },
    n: { meaning: 'branches on each side', unit: '-', min: 1, max: 200 },
  },
  compute: (L: number, n: number) => L / n,
  validity: 'branches at even spaces',
  source: 'geometry',
});
