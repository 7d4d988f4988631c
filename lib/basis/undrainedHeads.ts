import type { Draws, Measures } from '../heads/index.js';
import { undrainedHead } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import type { Emptyings } from './basis.js';

/** Heads outside without a drain, m above the datum. */
export interface UndrainedHeads {
  /** highest of each year; index sample × years + year */
  yearly: Float64Array;
  /** of each emptying; index (sample × months + place) × years + rank, the years of a place from the highest clay down */
  emptied: Float64Array;
  /** year, head by which the clay gives water, and level in the ring, of each rank; −Infinity where it is dry or there is none */
  year: Uint16Array;
  clay: Float64Array;
  ring: Float64Array;
  /** height by which the clay's water is shifted, m */
  shift: number;
}

const ordered = new Remembered<UndrainedHeads>(6);

/** Heads of a way of keeping water, with the clay's shifted by a height. */
export function undrainedHeads(
  draws: Draws,
  emptyings: Emptyings,
  { way, cutoff }: Pick<Measures, 'way' | 'cutoff'>,
  shift: number,
): UndrainedHeads {
  return ordered.of(emptyings, `${way} ${cutoff} ${shift}`, () =>
    inOrder(draws, emptyings, way, cutoff, shift),
  );
}

function inOrder(
  { samples, years, clayLow, clayHigh, tub }: Draws,
  { months, low, high, tub: tubs, stored }: Emptyings,
  way: Measures['way'],
  cutoff: number | undefined,
  shift: number,
): UndrainedHeads {
  const ringYear = tub?.[way];
  const ringEmptied = tubs?.[way];
  const none = Number.NEGATIVE_INFINITY;
  const yearly = new Float64Array(samples * years);
  for (let i = 0; i < yearly.length; i++)
    yearly[i] = undrainedHead(cutoff, clayLow[i] + shift, clayHigh[i] + shift, ringYear ? ringYear[i] : none);
  const size = low.length;
  const emptied = new Float64Array(size);
  const clay = new Float64Array(size);
  const ring = new Float64Array(size).fill(none);
  const year = new Uint16Array(size);
  for (let s = 0; s < samples; s++)
    for (let q = 0; q < months.length; q++) {
      const first = (s * months.length + q) * years;
      for (let y = 0; y < years; y++) {
        const i = (s * years + y) * months.length + q;
        const level = ringEmptied ? ringEmptied[i] : none;
        const own = undrainedHead(cutoff, low[i] + shift, high[i] + shift, none);
        const head = Math.max(own, level);
        const gives = stored ? own : head;
        let at = first + y;
        for (; at > first && clay[at - 1] < gives; at--) {
          emptied[at] = emptied[at - 1];
          clay[at] = clay[at - 1];
          ring[at] = ring[at - 1];
          year[at] = year[at - 1];
        }
        emptied[at] = head;
        clay[at] = gives;
        ring[at] = level;
        year[at] = y;
      }
    }
  return { yearly, emptied, clay, ring, year, shift };
}
