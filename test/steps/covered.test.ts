/** Every number of verdict, sheet to sign, drain, build list and card is the result of a numbered step. */
import { describe, expect, it } from 'vitest';
import { briefDemo } from '../folder.js';
import { sweep } from '../sweep.js';
import { amountsOf, chancesOf, levelsOf, numbersOf, partsOf } from './covered.js';
import { stepsOf } from './parse.js';
import { printed } from './printed.js';

const DEMOS = ['clay-slope', 'clay-hollow', 'loam-terrace', 'meadow-scrape', 'old-garden-pond'];
describe.each(sweep(DEMOS, 2))('%s', (demo) => {
  const { text, card } = printed(briefDemo(demo), 64);
  const page = text('metric');
  const steps = stepsOf(page);
  const { verdict, sheet, drain, list } = partsOf(page);

  it('has every number and chance of the verdict in its steps', () => {
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
    const numbers = numbersOf(sheet, steps);
    expect(numbers.length).toBeGreaterThan(15);
    expect(numbers.filter(({ found }) => !found)).toEqual([]);
    // A number that no step has is missed.
    const wrong = numbersOf(sheet.replace(/\d+\.\d{3} m/, '77.777 m'), steps);
    expect(wrong.filter(({ found }) => !found)).toHaveLength(1);
  });

  it('has every amount of the build list in its steps, and the hours', () => {
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
    expect(numbersOf(drain, steps).filter(({ found }) => !found)).toEqual([]);
    const wrong = numbersOf(drain.replace(/\d+ L\/day/, '777 L/day'), steps);
    expect(wrong.filter(({ found }) => !found).length).toBe(/L\/day/.test(drain) ? 1 : 0);
  });

  it('has every level of the pond card in its steps', () => {
    const levels = levelsOf(card('metric'), steps);
    expect(levels.length).toBeGreaterThan(0);
    expect(levels.filter(({ found }) => !found)).toEqual([]);
    const wrong = levelsOf(card('metric').replace(/\d+ cm above/, '97 cm above'), steps);
    expect(wrong.filter(({ found }) => !found)).toHaveLength(1);
  });
});
