/** The kinder a site, the deeper its answer: a few steps of what was once traded otherwise; kinder.long.ts has all. */
import { expect, test } from 'vitest';
import { sweep } from '../sweep.js';
import { kinderSites, lessenings } from './kinder.js';

const WAYS: [way: string, asked: string, by?: number][] = [
  // What nobody looked up once kept the dig from being moved.
  ['a deeper seam, read: one look in July', 'emptied in September', 0.4],
  // The wish never emptied once hid less depth emptied in another month.
  ['a deeper seam, read: year', 'wide and deep', 0.35],
  ['stronger clay', 'wide and deep'],
];

test.each(sweep(WAYS, 2))('%s, %s', (way, asked, by) => {
  expect(lessenings(kinderSites(way, asked, by))).toEqual([]);
});
