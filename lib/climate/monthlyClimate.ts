import { method } from '../formula/index.js';
import { InputError } from '../units/index.js';
import { type MonthlyBalance, ordinaryYear } from './monthlyBookkeeping.js';
import { thornthwaiteYear } from './thornthwaite.js';

export const monthlyClimate = method({
  title: 'Surplus water of an ordinary year',
  what:
    'From monthly means of rain and temperature: in which months more water falls than roots and sun take, by two ' +
    'bookkeepings that bracket how hard the soil holds on to its water.',
  assumptions: [
    'evaporation by Thornthwaite where none is given',
    'precipitation of months with a mean below −1 °C lies as snow until the first month above (Thornthwaite & Mather)',
    'the choice of bookkeeping moves a year’s surplus by about 10 %; months that only one of them calls wet are named',
    'says when water is to spare, not how high it stands',
  ],
  source: 'Thornthwaite 1948; Thornthwaite & Mather 1955 (snow rule from memory)',
});

/** An ordinary month; absent = not known. */
export interface OrdinaryMonth {
  /** 1–12 */
  month: number;
  /** rain and snow, m a month */
  rain?: number;
  /** mean temperature, °C */
  tmean?: number;
  /** reference evapotranspiration, m a month */
  et0?: number;
}

/** What an ordinary year leaves over. Arrays run January to December, m a month. */
export interface MonthlySurplus {
  /** rain and melt reaching the ground */
  liquid: number[];
  /** evapotranspiration, as given or by Thornthwaite */
  demand: number[];
  /** months 1–12 whose demand came from temperatures */
  estimated: number[];
  /** the store gives freely: the least surplus */
  straight: MonthlyBalance;
  /** the store holds on: the most surplus */
  exponential: MonthlyBalance;
  /** months 1–12 with more than a millimetre to spare by both */
  wetMonths: number[];
  /** months 1–12 with more than a millimetre to spare by one only */
  doubtfulMonths: number[];
}

/** A month colder than this keeps its precipitation as snow, °C. */
const SNOW_BELOW = -1;
/** Surplus that counts, m. */
const WORTH_COUNTING = 0.001;

/**
 * What a year of monthly means lacks for {@link monthlySurplus}, in words; empty where nothing is.
 * @param months - of an ordinary year, in any order
 * @returns a phrase for each gap
 */
export function climateGaps(months: readonly OrdinaryMonth[]): string[] {
  const gaps: string[] = [];
  const coldGap = months.find((m) => m.tmean === undefined);
  for (let month = 1; month <= 12; month++) {
    const row = months.find((m) => m.month === month);
    if (!row) gaps.push(`missing month ${month}`);
    else {
      if (row.rain === undefined) gaps.push(`missing rain of month ${month}`);
      if (row.et0 === undefined && coldGap)
        gaps.push(
          `missing evaporation of month ${month}: Thornthwaite needs all twelve temperatures, month ${coldGap.month} has none`,
        );
    }
  }
  if (gaps.length === 0 && months.every((m) => m.tmean !== undefined && m.tmean < SNOW_BELOW))
    gaps.push(`outside: every month is below ${SNOW_BELOW} °C, nothing ever melts`);
  return gaps;
}

/**
 * Rain less evaporation through an ordinary year, with the store of the root zone between; see {@link monthlyClimate}.
 * @param months - twelve, in any order
 * @param latitude - degrees, −65 to 65, south negative; used where an evaporation is not given
 * @param capacity - available water of the root zone, m, above 0
 * @returns by month, m, by both kinds of store, with the months that are wet by both
 * @throws InputError naming every gap of {@link climateGaps}, or what is outside its range
 */
export function monthlySurplus(
  months: readonly OrdinaryMonth[],
  latitude: number,
  capacity: number,
): MonthlySurplus {
  const gaps = climateGaps(months);
  if (gaps.length > 0) throw new InputError('missing-input', gaps.join('; '));
  const year = [...months].sort((a, b) => a.month - b.month);
  const estimated = year.filter((m) => m.et0 === undefined).map((m) => m.month);
  const byTemperature =
    estimated.length > 0
      ? thornthwaiteYear(
          year.map((m) => m.tmean!),
          latitude,
        )
      : [];
  const demand = year.map((m, i) => m.et0 ?? byTemperature[i]);
  const liquid = meltedByMonth(year);
  const straight = ordinaryYear(liquid, demand, capacity, 'straight');
  const exponential = ordinaryYear(liquid, demand, capacity, 'exponential');
  const wet = (b: MonthlyBalance, m: number) => b.surplus[m] > WORTH_COUNTING;
  const numbers = year.map((m) => m.month);
  return {
    liquid,
    demand,
    estimated,
    straight,
    exponential,
    wetMonths: numbers.filter((_, m) => wet(straight, m) && wet(exponential, m)),
    doubtfulMonths: numbers.filter((_, m) => wet(straight, m) !== wet(exponential, m)),
  };
}

/** Precipitation as it reaches the ground, snow released in the first month that is warm enough. */
function meltedByMonth(year: readonly OrdinaryMonth[]): number[] {
  const cold = (m: OrdinaryMonth) => m.tmean !== undefined && m.tmean < SNOW_BELOW;
  const liquid = Array<number>(12).fill(0);
  // From a warm month round the year, so that one winter's snow is all there is when it ends.
  const first = year.findIndex((m) => !cold(m));
  let pack = 0;
  for (let step = 1; step <= 12; step++) {
    const m = (first + step) % 12;
    pack += year[m].rain!;
    if (cold(year[m])) continue;
    liquid[m] = pack;
    pack = 0;
  }
  return liquid;
}
