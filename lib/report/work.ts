import type { Basis } from '../basis/index.js';
import { gravelLeftOut, holeOf, ringVolume, uphillSide } from '../digging/index.js';
import {
  CLAY_SETTLED,
  CLAY_SWELL,
  type DrainQuantity,
  earthLeft,
  layerVolume,
  loosened,
  together,
  trenchVolume,
  WASTE,
  withWaste,
} from '../drain/index.js';
import { formula, method, type Use, unrecorded } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import { CUTOFF } from '../options/index.js';
import { CONCRETE_UNIT_WEIGHT, facingOf, planArea, sidesArea, slabThickness } from '../uplift/index.js';
import { bankEarth, drainFor, pondGoods } from '../works/index.js';

export const workMethod = method({
  title: 'Work that an option is',
  what: 'What is to be dug, filled and bought for the pond with its measures, and the hours that takes by hand.',
  assumptions: [
    'a person digs and lifts 0.4 m³ of clay an hour and fills and tamps 0.7 (common practice: 0.3 to 0.5 and 0.5 to 1)',
    'a bank is 0.4 m wide on top with sides of 1.5 to 1; a cap of clay 0.15 m thick; a swale or cut-off drain runs 1 m ' +
      'past the pond on either side (our choice)',
    'spoil is counted loose, with 30 % of swell, and moved as it is dug; what is not filled in again keeps a tenth of it ' +
      'once it has settled for a winter (common practice)',
    'the ground rises evenly from the low side of the rim to its high side and is level beyond; a bank keeps its height along ' +
      'both and tapers between; above the rim the sides are cut back at their slope up to the ground',
    'what fills a bank, a cap or a ring of dug ground is taken from the spoil, tamped to the room it had',
  ],
  source: 'geometry; common practice for the rates',
});

const PERSON = { digs: 0.4, fills: 0.7 };
const CAP = 0.15;
const PAST = 1;
/** A trench as wide as a spade, and the least depth of pipe in it, m. Common practice. */
const TRENCH = 0.3;
const SHALLOW = 0.3;

const REFILLED = 'dug ground to fill back over the pipe, tamped firm';

/** Hours of digging and filling by hand. */
export const handHours = formula({
  title: 'Hours of digging and filling by hand',
  symbol: 't',
  unit: 'h',
  expression: 'D/d + F/f',
  parameters: {
    D: { meaning: 'dug', unit: 'm³', min: 0, max: 1e4 },
    d: { meaning: 'dug by a person in an hour', unit: 'm³/h', min: 0.01, max: 10 },
    F: { meaning: 'filled, or laid as sand and stone', unit: 'm³', min: 0, max: 1e4 },
    f: { meaning: 'filled by a person in an hour', unit: 'm³/h', min: 0.01, max: 10 },
  },
  compute: (D: number, d: number, F: number, f: number) => D / d + F / f,
  validity: 'clay; pipes, liner and edging not counted',
  source: 'common practice for the rates',
});

/** What is laid uphill of a pond, on past it. */
export const pastPond = formula({
  title: 'Length of what is laid uphill, on past the pond',
  symbol: 'L',
  unit: 'm',
  expression: 's + 2*x',
  parameters: {
    s: { meaning: 'side that faces uphill', unit: 'm', min: 0.1, max: 100 },
    x: { meaning: 'past the pond on either side', unit: 'm', min: 0, max: 20 },
  },
  compute: (s: number, x: number) => s + 2 * x,
  validity: 'straight along that side',
  source: 'geometry; how far past is our choice',
});

/** Quantities of an option and the time it takes. */
export interface Work {
  quantities: DrainQuantity[];
  /** by hand, s */
  seconds: number;
}

/**
 * Work for measures at a depth, from the untouched garden on; nothing is dug for a pond that is there.
 * @param use - what evaluates the formulas, for a record
 */
export function workOf(basis: Basis, m: Measures, depth: number, use: Use = unrecorded): Work {
  const { site } = basis;
  const { pond, tub, places } = site;
  const { shape } = pond;
  const quantities: DrainQuantity[] = [];
  const dug: number[] = [];
  const filled: number[] = [];
  const add = (item: string, amount: number, unit: string) => {
    if (amount > 0) quantities.push({ item, amount, unit });
  };
  const dig = (item: string, amount: number) => {
    add(item, amount, 'm³');
    dug.push(Math.max(amount, 0));
  };
  const fill = (item: string, amount: number) => {
    add(item, amount, 'm³');
    filled.push(Math.max(amount, 0));
  };
  /** dug or filled, but no matter of the pond's own earth */
  const besides = { dug: [] as number[], filled: [] as number[] };
  const across = () => use(pastPond, uphillSide(site), PAST);
  if (!pond.existing) {
    dig('clay to dig for the pond, before it is loosened', holeOf(site, m, depth, use));
    if (pond.ring.fill === 'clay' || pond.ring.fill === 'topsoil' || gravelLeftOut(site, m))
      fill('dug ground to fill back around the liner, tamped firm', ringVolume(site, m, depth, use));
  }
  // A pond that is there has its bank; raised, it is built up on that.
  const raised = bankEarth(site, m.raise, use);
  fill(
    'bank around the rim, tamped firm',
    pond.existing ? use(earthLeft, raised, bankEarth(site, 0, use)) : raised,
  );
  if (m.way === 'keptOut') {
    fill('cap of clay tamped firm over the ring', tub?.ringArea ? use(layerVolume, tub.ringArea, CAP) : 0);
    const length = across();
    add('swale or low bank uphill', length, 'm');
    besides.dug.push(use(trenchVolume, length, TRENCH, TRENCH, TRENCH));
  }
  if (m.cutoff !== undefined) {
    const deep = Math.min(CUTOFF.depth, depth + places.highRim);
    const length = across();
    const trench = use(trenchVolume, length, TRENCH, deep, deep);
    // Past the pond, and on to where it ends; on the way the trench comes up to the depth of a pipe that lies shallow.
    const run = together('m', [m.cutoffTo?.distance ?? 0, shape.length], use);
    const back = use(trenchVolume, run, TRENCH, deep, SHALLOW);
    dig('clay to dig for the cut-off trench, before it is loosened', together('m³', [trench, back], use));
    fill(REFILLED, back);
    add('washed stone in fabric for the cut-off trench', trench, 'm³');
    besides.filled.push(trench);
    add('perforated pipe, 100 mm (4 in), 5 % waste', use(withWaste.m, length, WASTE.pipe), 'm');
    add('solid pipe, 100 mm (4 in), 5 % waste', use(withWaste.m, run, WASTE.pipe), 'm');
  }
  if (m.ballast > 0) {
    const thickness = use(slabThickness, 1, m.ballast, CONCRETE_UNIT_WEIGHT);
    const facing = facingOf(thickness, shape.sideSlope, use);
    const floor = use(layerVolume, planArea(shape, depth, use), thickness);
    const concrete =
      facing === null
        ? floor
        : together('m³', [floor, use(layerVolume, sidesArea(shape, depth, use), facing)], use);
    add(
      facing === null
        ? 'concrete for the slab, walls on the sides not counted'
        : 'concrete for slab and facings',
      concrete,
      'm³',
    );
    besides.filled.push(concrete);
  }
  const drain = drainFor(basis, m, depth);
  if (drain) {
    dig('clay to dig for the drain, before it is loosened', drain.dug);
    fill(REFILLED, drain.refilled);
  }
  for (const quantity of [...(drain?.quantities ?? []), ...pondGoods(site, m, depth, use)]) {
    quantities.push(quantity);
    if (quantity.unit === 'm³') besides.filled.push(quantity.amount);
  }
  const [earth, banked] = [together('m³', dug, use), together('m³', filled, use)];
  const heap = (item: string, amount: number, more: number) =>
    add(item, amount > 0 ? use(loosened, amount, more) : 0, 'm³');
  heap('spoil of all that is dug, loose (30 % more)', earth, CLAY_SWELL);
  heap('spoil left to lay out or cart away, once settled', use(earthLeft, earth, banked), CLAY_SETTLED);
  heap('subsoil to bring in for the bank, loose (30 % more)', use(earthLeft, banked, earth), CLAY_SWELL);
  const hours = use(
    handHours,
    together('m³', [...dug, ...besides.dug], use),
    PERSON.digs,
    together('m³', [...filled, ...besides.filled], use),
    PERSON.fills,
  );
  return { quantities, seconds: 3600 * hours };
}
