import type { Basis } from '../basis/index.js';
import { gravelLeftOut, holeOf, ringVolume } from '../digging/index.js';
import { CLAY_SETTLED, CLAY_SWELL, type DrainQuantity, WASTE } from '../drain/index.js';
import { method, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import { CUTOFF } from '../options/index.js';
import { CONCRETE_UNIT_WEIGHT, outline, planArea } from '../uplift/index.js';
import { bankEarth, drainFor, pondGoods, uphillSide } from '../works/index.js';

export const workMethod = method({
  title: 'Work that an option is',
  what: 'What is to be dug, filled and bought for the pond with its measures, and the hours that takes by hand.',
  assumptions: [
    'a person digs and lifts 0.4 m³ of clay an hour and fills and rams 0.7 (common practice: 0.3 to 0.5 and 0.5 to 1)',
    'a bank is 0.4 m wide on top with sides of 1.5 to 1; a cap of clay 0.15 m thick; a swale or cut-off drain runs 1 m ' +
      'past the pond on either side (our choice)',
    'spoil is counted loose, with 30 % of swell, and moved as it is dug; what is not filled in again keeps a tenth of it ' +
      'once it has settled for a winter (common practice)',
    'what fills a bank, a cap or a ring of dug ground is taken from the spoil, tamped to the room it had',
  ],
  source: 'geometry; common practice for the rates',
});

const DIG_RATE = 0.4 / 3600;
const FILL_RATE = 0.7 / 3600;
const CAP = 0.15;
const PAST = 1;
/** A trench as wide as a spade, and the least depth of pipe in it, m. Common practice. */
const TRENCH = 0.3;
const SHALLOW = 0.3;

/** Quantities of an option and the time it takes. */
export interface Work {
  quantities: DrainQuantity[];
  /** by hand, s */
  seconds: number;
}

/** Work for measures at a depth, from the untouched garden on; nothing is dug for a pond that is there. */
export function workOf(basis: Basis, m: Measures, depth: number): Work {
  const { pond, tub, places } = basis.site;
  const { shape } = pond;
  const quantities: DrainQuantity[] = [];
  let seconds = 0;
  let dug = 0;
  let filled = 0;
  const add = (item: string, amount: number, unit: string, rate?: number) => {
    if (amount <= 0) return;
    quantities.push({ item, amount, unit });
    if (rate) seconds += amount / rate;
  };
  const dig = (item: string, amount: number) => {
    add(item, amount, 'm³', DIG_RATE);
    dug += Math.max(amount, 0);
  };
  const fill = (item: string, amount: number) => {
    add(item, amount, 'm³', FILL_RATE);
    filled += Math.max(amount, 0);
  };
  const rim = outline(shape);
  const across = uphillSide(basis.site) + 2 * PAST;
  if (!pond.existing) {
    dig('clay to dig for the pond, before it is loosened', holeOf(basis.site, m, depth));
    if (pond.ring.fill === 'clay' || pond.ring.fill === 'topsoil' || gravelLeftOut(basis.site, m))
      fill('dug ground to fill back around the liner, tamped firm', ringVolume(basis.site, m, depth));
  }
  // A pond that is there has its bank; raised, it is built up on that.
  const bank = (raise: number) => bankEarth(basis.site, raise);
  fill('bank around the rim, tamped firm', bank(m.raise) - (pond.existing ? bank(0) : 0));
  if (m.way === 'keptOut') {
    fill('cap of clay tamped firm over the ring', (tub?.ringArea ?? 0) * CAP);
    add('swale or low bank uphill', across, 'm', DIG_RATE / TRENCH ** 2);
  }
  if (m.cutoff !== undefined) {
    const deep = Math.min(CUTOFF.depth, depth + places.highRim);
    const trench = across * TRENCH * deep;
    // Past the pond, and on to where it ends; on the way the trench comes up to the depth of a pipe that lies shallow.
    const run = (m.cutoffTo?.distance ?? 0) + shape.length;
    dig(
      'clay to dig for the cut-off trench, before it is loosened',
      trench + run * TRENCH * ((deep + SHALLOW) / 2),
    );
    add('washed stone in fabric for the cut-off trench', trench, 'm³', FILL_RATE);
    add('perforated pipe, 100 mm (4 in), 5 % waste', across * (1 + WASTE.pipe), 'm');
    add('solid pipe, 100 mm (4 in), 5 % waste', run * (1 + WASTE.pipe), 'm');
  }
  if (m.ballast > 0) {
    const thickness = (m.ballast * UNIT_WEIGHT_OF_WATER) / (CONCRETE_UNIT_WEIGHT - UNIT_WEIGHT_OF_WATER);
    const floor = planArea(shape, depth);
    const sides = ((rim + outline(shape, depth)) / 2) * depth * Math.hypot(1, shape.sideSlope);
    add('concrete for slab and facings', thickness * (floor + sides), 'm³', FILL_RATE);
  }
  const drain = drainFor(basis, m, depth);
  if (drain) dig('clay to dig for the drain, before it is loosened', drain.dug);
  for (const quantity of [...(drain?.quantities ?? []), ...pondGoods(basis.site, m, depth)]) {
    quantities.push(quantity);
    if (quantity.unit === 'm³') seconds += quantity.amount / FILL_RATE;
  }
  add('spoil of all that is dug, loose (30 % more)', (1 + CLAY_SWELL) * dug, 'm³');
  add('spoil left to lay out or cart away, once settled', (1 + CLAY_SETTLED) * (dug - filled), 'm³');
  add('subsoil to bring in for the bank, loose (30 % more)', (1 + CLAY_SWELL) * (filled - dug), 'm³');
  return { quantities, seconds };
}
