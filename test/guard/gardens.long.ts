/** Many gardens through the guard, and what it could not judge. */
import { expect, test } from 'vitest';
import { generatedGarden } from './generate.js';
import { guard } from './guard.js';
import { decidedByRounding, offByABillionth } from './rounding.js';
import { asTold } from './run.js';

/** A thousand take an hour on two cores: they were run when the pond's own year had come in, and none was dangerous. */
const GARDENS = 250;
/** One garden in so many is told again with every length off by a billionth. */
const TAPED_AGAIN = 10;

test('nothing called safe in many gardens fails', () => {
  const dangers: string[] = [];
  let [judged, unjudged] = [0, 0];
  for (let seed = 1; seed <= GARDENS; seed++) {
    const { files } = generatedGarden(seed);
    const told = asTold(files);
    const ruling = guard(files, told);
    judged += ruling.judged;
    unjudged += ruling.unjudged.length;
    dangers.push(
      ...ruling.dangers.map(({ kind, verdict, why }) => `garden ${seed}: ${kind}, ${verdict}: ${why}`),
    );
    if (seed % TAPED_AGAIN === 0)
      dangers.push(
        ...decidedByRounding(told, asTold(offByABillionth(files, seed))).map(
          (what) => `garden ${seed}: rounding, ${what}`,
        ),
      );
  }
  expect(dangers).toEqual([]);
  // Most gardens can be judged in most of what is told of them.
  expect(judged).toBeGreaterThan(30 * GARDENS);
  expect(unjudged).toBeLessThan(0.5 * GARDENS);
});
