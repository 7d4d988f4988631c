/** Which numbers of a part of a page are the result of a step, found by their print alone. */
import type { Read } from './parse.js';

/** SI per unit, and the unit of a step that has it. */
const UNITS: Record<string, [factor: number, of: string[]]> = {
  m: [1, ['m']],
  cm: [0.01, ['m']],
  mm: [0.001, ['m']],
  kPa: [1000, ['Pa', 'N or Pa']],
  'm²': [1, ['m²']],
  'm³': [1, ['m³']],
  L: [0.001, ['m³']],
  'm³/day': [1 / 86400, ['m³/s']],
  'L/day': [0.001 / 86400, ['m³/s']],
  'L a minute': [0.001 / 60, ['m³/s']],
  kWh: [1, ['kWh']],
  min: [1 / 60, ['h']],
  h: [1, ['h']],
  days: [24, ['h']],
};
const NUMBER =
  /(?<![\w.×])([+−-]?\d+(?:\.\d+)?) ?(m³\/day|L\/day|L a minute|kPa|kWh|m²|m³|cm|mm|min|days|h|L|m)(?![\w²³/])/g;

/** A number of a text with its unit. */
export interface Told {
  text: string;
  found: boolean;
}

/** Every number with a unit in a text, and whether a step has it: its size, within a unit of its last digit. */
export function numbersOf(text: string, steps: Read[]): Told[] {
  return [...text.matchAll(NUMBER)].map(([all, digits, unit]) => {
    const [factor, of] = UNITS[unit!]!;
    const value = Math.abs(Number(digits!.replace('−', '-'))) * factor;
    const last = 10 ** -(digits!.split('.')[1]?.length ?? 0) * factor;
    const found =
      value === 0 ||
      steps.some(
        (step) =>
          of.includes(step.unit) && Math.abs(Math.abs(step.result) - value) <= 1.001 * last + 1e-4 * value,
      );
    return { text: all, found };
  });
}

/** A chance as it is told. */
const CHANCE =
  /(exceeded in |highest water of )?1 year (?:in|of) (\d+)|less than 0\.1 %|([\d.]+) % (?:a year is accepted|of years)|nearly every year|most years|about every other year/g;

/** Every chance of a text, and whether a step has it: as near as chances are told. */
export function chancesOf(text: string, steps: Read[]): Told[] {
  const counted = steps.filter(({ title }) => /chance/i.test(title)).map(({ result }) => result);
  const accepted = steps.flatMap(({ expression }) => {
    const drawn = /^quantile\(\w+, ([\d.]+)\)$/.exec(expression);
    return drawn ? [1 - Number(drawn[1])] : [];
  });
  const near = (chance: number, among: number[], by: number) =>
    among.some((each) => Math.abs(Math.log(each / chance)) <= Math.log(by));
  return [...text.matchAll(CHANCE)].map(([all, water, years, percent]): Told => {
    const found =
      water !== undefined
        ? near(1 / Number(years), accepted, 1.001)
        : years !== undefined
          ? Number(years) === 1000
            ? counted.some((each) => each < 1e-3)
            : near(1 / Number(years), counted, 1.23)
          : percent !== undefined
            ? near(Number(percent) / 100, [...accepted, ...counted], 1.06)
            : /^less/.test(all)
              ? counted.some((each) => each < 1e-3)
              : /^nearly/.test(all)
                ? counted.some((each) => each >= 0.95)
                : counted.some((each) => each >= (/^most/.test(all) ? 0.6 : 0.4) && each < 0.95);
    return { text: all, found };
  });
}

/** Steps in which a shop sells, by unit: an amount is rounded up to the next. */
const SOLD: Record<string, number> = { 'm³': 0.1, 'm²': 0.5, m: 0.5 };
const AMOUNT = /^\s*\|\s*([^|]+?)\s*\|\s*\|\s*([\d.]+) ?(m³|m²|m)?(?:, ([\d.]+) × ([\d.]+) m)?\s*\|/gm;

/** Every amount of the build list that is no count of pieces, and whether it is a step's result rounded up; a sheet by its sides. */
export function amountsOf(text: string, steps: Read[]): Told[] {
  const soldAs = (sold: number, unit: string) =>
    steps.some(({ result, unit: of }) => {
      const over = sold - result;
      return of === unit && over > -1e-4 * result && over < SOLD[unit]!;
    });
  return [...text.matchAll(AMOUNT)].flatMap(([, item, amount, unit, long, wide]): Told[] => {
    if (!unit) return [];
    const found = long
      ? [long, wide].every((side) => soldAs(Number(side), 'm'))
      : soldAs(Number(amount), unit);
    return [{ text: `${item}: ${amount} ${unit}`, found }];
  });
}

/** The text of a section of a page between two headings. */
export function between(text: string, from: string, to: string): string {
  const start = text.lastIndexOf(`\n${from}`);
  return start < 0 ? '' : text.slice(start, text.indexOf(`\n${to}`, start));
}
