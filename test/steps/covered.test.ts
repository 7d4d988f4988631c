/** Every number of the sheet to sign, and of what the drain carries, is the result of a numbered step. */
import { describe, expect, it } from 'vitest';
import { briefDemo } from '../folder.js';
import { between, numbersOf } from './covered.js';
import { stepsOf } from './parse.js';
import { printed } from './printed.js';

const DEMOS = ['clay-slope', 'clay-hollow', 'loam-terrace', 'meadow-scrape', 'old-garden-pond'];

describe.each(DEMOS)('%s', (demo) => {
  const page = printed(briefDemo(demo), 64).text('metric');
  const steps = stepsOf(page);

  it('has every number of the sheet to sign in its steps', () => {
    const sheet = between(page, 'Of what is recommended', 'Levels count from the lowest natural ground at the rim. The liner');
    const numbers = numbersOf(sheet, steps);
    console.log(demo, 'sheet', numbers.length, numbers.filter(({ found }) => !found).map(({ text }) => text).join(', '));
    expect(numbers.length).toBeGreaterThan(15);
  });

  it('has every number of the drain in its steps', () => {
    const drain = between(page, 'The drain in numbers', 'The pond cut through') + between(page, 'Build', 'To look after').replace(/\nTo buy and to dig[\s\S]*/, '');
    const numbers = numbersOf(drain, steps);
    console.log(demo, 'drain', numbers.length, numbers.filter(({ found }) => !found).map(({ text }) => text).join(', '));
  });
});
