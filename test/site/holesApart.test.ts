import { expect, test } from 'vitest';
import type { PitDip } from '../../lib/site/dips.js';
import { holesApart, type Seam } from '../../lib/site/index.js';

const dip = (pit: string, day: number, depth: number, error = 0.01): PitDip => ({
  pit,
  day,
  depth,
  says: 'level',
  error,
});

test('two holes that tell of two waters are told, the higher first; order does not matter', () => {
  const dips = [dip('P1', 100, 0.1), dip('P2', 101, 0.9), dip('P1', 130, 0.2), dip('P2', 130, 0.5)];
  for (const each of [dips, [...dips].reverse()])
    expect(holesApart(each, []).map(({ message }) => message)).toEqual([
      expect.stringMatching(/^the water in P1 stands 0\.80 m higher than in P2 /),
    ]);
});

test('not on different days, not within what ground and tape explain, not in a layer under pressure', () => {
  expect(holesApart([dip('P1', 100, 0.1), dip('P2', 110, 0.9)], [])).toEqual([]);
  expect(holesApart([dip('P1', 100, 0.1), dip('P2', 100, 0.55)], [])).toEqual([]);
  expect(holesApart([dip('P1', 100, 0.1), dip('P2', 100, 0.9, 0.2)], [])).toEqual([]);
  const seam = { pit: 'P1', from: [{ file: 'water.csv' }] } as unknown as Seam;
  expect(holesApart([dip('P1', 100, 0.1), dip('P2', 100, 0.9)], [seam])).toEqual([]);
});
