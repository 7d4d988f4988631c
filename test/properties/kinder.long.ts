/** The kinder a site, the deeper its answer: every way, for every pond asked for. */
import { describe, expect, test } from 'vitest';
import { ASKED, KINDER, kinderSites, lessenings } from './kinder.js';

describe.each(Object.keys(ASKED))('%s', (asked) => {
  test.each(Object.keys(KINDER))('%s', (way) => {
    expect(lessenings(kinderSites(way, asked))).toEqual([]);
  });
});
