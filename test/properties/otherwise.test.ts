/** A site surveyed otherwise has the same answer, in numbers and words. */
import { describe, expect, test } from 'vitest';
import { answerOf } from './answer.js';
import { bareGarden, dippedGarden, plannedGarden } from './sites.js';
import { violations, WAYS } from './ways.js';

/** Every site all ways is in `otherwise.long.ts`; here each way once, where it says something. */
const SITES: [string, Record<string, string>, RegExp][] = [
  ['a garden with a plan', plannedGarden(), /order|axes|mark|units|nothing|worse|half a year|defaults/],
  ['a hole dipped through a winter', dippedGarden(), /looks|hole/],
  ['little said', bareGarden(), /defaults/],
];

describe.each(SITES)('%s', (_, files, chosen) => {
  const before = answerOf(files);
  test.each(WAYS.filter(({ name }) => chosen.test(name)).map((way) => [way.name, way] as const))(
    '%s',
    (_name, way) => {
      expect(violations(files, way, before) ?? []).toEqual([]);
    },
  );
});
