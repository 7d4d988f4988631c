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
  /(exceeded in |highest water of )?1 (?:year|time|dig) (?:in|of) (\d+)|less than 0\.1 %|([\d.]+) % (?:a year is accepted|of years)|nearly every year|most years|about every other year/g;

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
            : near(1 / Number(years), counted, 1.3)
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

/** Sizes that are part of the name of a pipe or a stone, and what pipes without a bed would leave: that is found in a map of the flow. */
const NAMED = /\d+ mm (?:stiff|drain|perforated|solid|stone)|alone would leave [\d.]+ c?m/g;
/**
 * What is put in as it stands, and has its origin there: a bed, a raise or a slab of the answer, the wish; days of use; what
 * a rule for digging or a hole to be looked into has; and where sides meet, which is of the wish alone.
 */
const PUT_IN =
  /bed 0\.15 m thick|(?:raised|raised by) [\d.]+ m|as [\d.]+ m of water lifts|[\d.]+ m deep, as wished|[\d.]+ days|side 1\.50 m high|a deeper hole, [\d.]+ m|sides meet at [\d.]+ m|the survey has [^:]*, and no direction/g;

/** The parts of a page of which every number is to have a step. */
export function partsOf(page: string): Record<'verdict' | 'sheet' | 'drain' | 'list', string> {
  const build = between(page, 'Build', 'To look after').replace(/\nTo buy and to dig[\s\S]*/, '');
  return {
    verdict: [
      page.slice(page.indexOf('pond and groundwater'), page.indexOf('Which water wins?')),
      between(page, 'How deep, with what\n', 'Your year'),
      between(page, 'What is in hand, situation by situation', 'Levels count from'),
    ]
      .join('\n')
      .replace(PUT_IN, ''),
    sheet:
      between(page, 'Of what is recommended', SHEET_ENDS) || between(page, 'With nothing done, ', SHEET_ENDS),
    drain: (between(page, 'The drain in numbers', 'The pond cut through') + build).replace(NAMED, ''),
    list: between(page, 'To buy and to dig', 'A bucket is'),
  };
}
const SHEET_ENDS = 'Levels count from the lowest natural ground at the rim. The liner';

const LOWERED = /([\d.]+) cm (below full|above that water)/g;

/** Every level of the card, and whether a step has it, rounded to the centimetre on the safe side. */
export function levelsOf(card: string, steps: Read[]): Told[] {
  const of = (title: RegExp) => steps.filter((step) => title.test(step.title)).map(({ result }) => result);
  const [fall, over] = [of(/let fall below full/), of(/over the water in the dip pipe/)];
  const near = (said: number, exact: number) => said <= exact + 2e-5 && exact < said + 0.01002;
  return [...card.matchAll(LOWERED)].map(([text, cm, which]) => ({
    text,
    found:
      which === 'below full'
        ? fall.some((each) => near(Number(cm) / 100, each))
        : over.some((each) => near(-Number(cm) / 100, -each)),
  }));
}

/** Everything that a page and its card tell and no step has, part by part. */
export function missedOf(page: string, card: string, steps: Read[]): string[] {
  const { verdict, sheet, drain, list } = partsOf(page);
  const missed = {
    verdict: [...numbersOf(verdict, steps), ...chancesOf(verdict, steps)],
    sheet: numbersOf(sheet, steps),
    drain: numbersOf(drain, steps),
    list: amountsOf(list, steps),
    card: levelsOf(card, steps),
  };
  return Object.entries(missed).flatMap(([part, all]) =>
    all.filter(({ found }) => !found).map(({ text }) => `${part}: ${text}`),
  );
}
