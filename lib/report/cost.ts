import { type DrainQuantity, sheetSold } from '../drain/index.js';
import type { PriceRow } from '../survey/index.js';
import { type Dimension, FOOT, findUnit } from '../units/index.js';
import type { Work } from './work.js';

/** What work costs by the prices of a survey. */
interface Cost {
  /** of all that has a price, in the money of prices.csv */
  sum: number;
  /** goods without a price */
  unpriced: string[];
}

const DIMENSION_OF: Record<string, Dimension> = { m: 'length', 'm²': 'area', 'm³': 'volume', s: 'time' };
const PIECE = /^(piece|pieces|each|pc|pcs)$/i;
/** Earth of the place itself: it is paid by the hours, if at all. */
const OWN_EARTH = /before it is loosened$|tamped|^spoil|^swale/;
/** Item of the hours by hand. */
const DIGGING = 'digging by hand';

/** Cost of work; undefined where the survey has no prices. */
export function costOf({ quantities, seconds }: Work, prices: PriceRow[]): Cost | undefined {
  if (prices.length === 0) return undefined;
  const cost: Cost = { sum: 0, unpriced: [] };
  for (const quantity of [...quantities, { item: DIGGING, amount: seconds, unit: 's' }]) {
    const price = priceOf(quantity, prices);
    if (price !== undefined) cost.sum += price;
    else if (quantity.item !== DIGGING && !OWN_EARTH.test(quantity.item)) cost.unpriced.push(quantity.item);
  }
  return cost;
}

/** Prices that no quantity of any option asks for. */
export function unusedPrices(works: Work[], prices: PriceRow[]): PriceRow[] {
  const asked = works.flatMap(({ quantities }) => quantities);
  const hours = { item: DIGGING, amount: 1, unit: 's' };
  return prices.filter((price) => ![...asked, hours].some((quantity) => fits(quantity, price)));
}

/** Price of a quantity: of the rows whose words are all in its name, the one with most words. */
function priceOf(quantity: DrainQuantity, prices: PriceRow[]): number | undefined {
  const fitting = prices.filter((price) => fits(quantity, price));
  if (fitting.length === 0) return undefined;
  const { price, unit } = fitting.reduce((a, b) => (wordsOf(b.item).length > wordsOf(a.item).length ? b : a));
  const per = unitOf(quantity.unit, unit) ?? 1;
  return (price / per) * soldOf(quantity, per);
}

/** A sheet is paid as it is sold: by the metre, or by the foot where its price is. */
function soldOf({ amount, sides_m }: DrainQuantity, per: number): number {
  if (!sides_m) return amount;
  const [a, b] = sheetSold(sides_m, per === 1 ? 'm' : 'ft');
  return a * b * (per === 1 ? 1 : FOOT ** 2);
}

/** Where the name of an item goes on to say where it lies or what it is made of. */
const GOES_ON = /,| (?:under|for|around|behind|between|over|in|of|with|to|by|uphill)\b/;

/** A price is of the thing itself, by its own noun: `liner` is none of a fabric under the liner. */
function fits({ item, unit }: DrainQuantity, price: PriceRow): boolean {
  const words = wordsOf(item);
  const named = wordsOf(price.item);
  const nouns = item
    .split(GOES_ON)[0]!
    .split(' or ')
    .map((name) => wordsOf(name).at(-1)!);
  return (
    unitOf(unit, price.unit) !== undefined &&
    nouns.some((noun) => named.includes(noun)) &&
    named.every((word) => words.includes(word))
  );
}

/** How many of a quantity's unit a price's unit is; undefined where they measure different things. */
function unitOf(quantity: string, price: string): number | undefined {
  if (quantity === 'piece') return PIECE.test(price) ? 1 : undefined;
  return findUnit(price.replace('²', '2').replace('³', '3'), DIMENSION_OF[quantity])?.factor;
}

const wordsOf = (item: string): string[] => item.toLowerCase().match(/[a-z0-9]+/g) ?? [];
