/** Every number of the sheet to sign is the result of a numbered step, and most of those of the drain. */
import { describe, expect, it } from 'vitest';
import { briefDemo } from '../folder.js';
import { sweep } from '../sweep.js';
import { amountsOf, between, chancesOf, numbersOf } from './covered.js';
import { stepsOf } from './parse.js';
import { printed } from './printed.js';

const DEMOS = ['clay-slope', 'clay-hollow', 'loam-terrace', 'meadow-scrape', 'old-garden-pond'];
/** Sizes that are part of the name of a pipe, and what pipes without a bed would leave: that is found in a map of the flow. */
const NAMED = /\d+ mm (?:stiff|drain|perforated|solid)|alone would leave [\d.]+ c?m/g;
/** A thickness that is put in as it stands, and has its origin there. */
const BED = /bed 0\.15 m thick/g;

describe.each(sweep(DEMOS, 2))('%s', (demo) => {
  const page = printed(briefDemo(demo), 64).text('metric');
  const steps = stepsOf(page);

  it('has every number and chance of the verdict in its steps', () => {
    const verdict = [
      page.slice(page.indexOf('pond and groundwater'), page.indexOf('Which water wins?')),
      between(page, 'How deep, with what\n', 'Your year'),
      between(page, 'What is in hand, situation by situation', 'Levels count from'),
    ]
      .join('\n')
      .replace(BED, '');
    const numbers = numbersOf(verdict, steps);
    expect(numbers.length).toBeGreaterThan(12);
    expect(numbers.filter(({ found }) => !found)).toEqual([]);
    const chances = chancesOf(verdict, steps);
    expect(chances.length).toBeGreaterThan(2);
    expect(chances.filter(({ found }) => !found)).toEqual([]);
    // A number, or a chance, that no step has is missed.
    expect(
      numbersOf(verdict.replace(/\d+\.\d{2} m/, '77.77 m'), steps).filter(({ found }) => !found),
    ).toHaveLength(1);
    const planted = chancesOf(`${verdict} It fails about 1 year in 3 and 11 % of years.`, steps);
    expect(planted.filter(({ found }) => !found)).toHaveLength(2);
  });

  it('has every number of the sheet to sign in its steps', () => {
    const sheet = between(
      page,
      'Of what is recommended',
      'Levels count from the lowest natural ground at the rim. The liner',
    );
    const numbers = numbersOf(sheet, steps);
    expect(numbers.length).toBeGreaterThan(15);
    expect(numbers.filter(({ found }) => !found)).toEqual([]);
    // A number that no step has is missed.
    const wrong = numbersOf(sheet.replace(/\d+\.\d{3} m/, '77.777 m'), steps);
    expect(wrong.filter(({ found }) => !found)).toHaveLength(1);
  });

  it('has every amount of the build list in its steps, and the hours', () => {
    const list = between(page, 'To buy and to dig', 'A bucket is');
    const amounts = amountsOf(list, steps);
    const nothing = demo === 'old-garden-pond';
    expect(amounts.length).toBeGreaterThan(nothing ? -1 : 6);
    expect(amounts.filter(({ found }) => !found)).toEqual([]);
    if (nothing) return;
    const wrong = amountsOf(list.replace(/\| ([\d.]+) m³/, '| 777 m³'), steps);
    expect(wrong.filter(({ found }) => !found)).toHaveLength(1);
    const hours = Number(/By hand it takes about (\d+) hours/.exec(page)![1]);
    const step = steps.find(({ title }) => title === 'Hours of digging and filling by hand')!;
    expect(Math.ceil(step.result)).toBe(hours);
  });

  it('has the numbers of the drain in its steps', () => {
    const build = between(page, 'Build', 'To look after').replace(/\nTo buy and to dig[\s\S]*/, '');
    const drain = (between(page, 'The drain in numbers', 'The pond cut through') + build).replace(NAMED, '');
    expect(numbersOf(drain, steps).filter(({ found }) => !found)).toEqual([]);
    const wrong = numbersOf(drain.replace(/\d+ L\/day/, '777 L/day'), steps);
    expect(wrong.filter(({ found }) => !found).length).toBe(/L\/day/.test(drain) ? 1 : 0);
  });
});
