import { expect, test } from 'vitest';
import { emptyingTimes } from '../../lib/text/emptyingTimes.js';

test('months that end alike are told once, however they came to be allowed', () => {
  expect(emptyingTimes({ months: [6, 7, 8], days: 2 }, { months: [9], days: 2.01 })).toBe(
    'from June to September for at most 2 days',
  );
  expect(emptyingTimes({ months: [7, 8], days: 0 }, { months: [6], days: 1.875 })).toBe(
    'from July to August, or in June for at most 45 hours',
  );
  expect(emptyingTimes({ months: [12, 1], days: 3 }, { months: [2], days: 3 })).toBe(
    'from December to February for at most 3 days',
  );
});
