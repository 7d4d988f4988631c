import type { DrainQuantity } from '../drain/index.js';
import { method, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import { CONCRETE_UNIT_WEIGHT, outline, planArea, pondVolume } from '../uplift/index.js';
import type { Basis } from './basis.js';
import { dugDepth } from './digging.js';
import { drainFor } from './drainFor.js';
import type { Measures } from './measures.js';
import { CUTOFF } from './options.js';

export const workMethod = method({
  title: 'Work that an option is',
  what: 'What is to be dug, filled and bought for the pond with its measures, and the hours that takes by hand.',
  assumptions: [
    'a person digs and lifts 0.4 m³ of clay an hour and fills and rams 0.7 (common practice: 0.3 to 0.5 and 0.5 to 1)',
    'a bank is 0.4 m wide on top with sides of 1.5 to 1; a cap of clay 0.15 m thick; a swale or cut-off drain runs 1 m ' +
      'past the pond on either side (our choice)',
    'the liner itself is counted with a drain, where its bed is measured out',
  ],
  source: 'geometry; common practice for the rates',
});

const DIG_RATE = 0.4 / 3600;
const FILL_RATE = 0.7 / 3600;
const BANK = { crest: 0.4, slope: 1.5 };
const CAP = 0.15;
const PAST = 1;
const TRENCH = 0.3;

/** Quantities of an option and the time it takes. */
export interface Work {
  quantities: DrainQuantity[];
  /** by hand, s */
  seconds: number;
}

/** Work for measures at a depth, from the untouched garden on; nothing is dug for a pond that is there. */
export function workOf(basis: Basis, m: Measures, depth: number): Work {
  const { pond, tub, places } = basis.site;
  const { shape, ring } = pond;
  const quantities: DrainQuantity[] = [];
  let seconds = 0;
  const add = (item: string, amount: number, unit: string, rate?: number) => {
    if (amount <= 0) return;
    quantities.push({ item, amount, unit });
    if (rate) seconds += amount / rate;
  };
  const rim = outline(shape);
  const across = shape.width + 2 * PAST;
  if (!pond.existing)
    add(
      'clay to dig for the pond, as it lies',
      pondVolume(shape, Math.max(dugDepth(basis.site, m, depth), 0)) +
        rim * ring.width * Math.min(ring.depth ?? depth, depth),
      'm³',
      DIG_RATE,
    );
  if (m.raise > 0)
    add('bank around the rim, rammed', rim * m.raise * (BANK.crest + BANK.slope * m.raise), 'm³', FILL_RATE);
  if (m.way === 'keptOut') {
    add('cap of rammed clay over the ring', (tub?.ringArea ?? 0) * CAP, 'm³', FILL_RATE);
    add('swale or low bank uphill', across, 'm', DIG_RATE / TRENCH ** 2);
  }
  if (m.cutoff !== undefined) {
    const run = Math.min(...places.outlets.map((o) => o.distance));
    const trench = across * TRENCH * Math.min(CUTOFF.depth, depth + places.highRim);
    add('clay to dig for the cut-off trench', trench, 'm³', DIG_RATE);
    add('washed stone in fabric for the cut-off trench', trench, 'm³', FILL_RATE);
    add('perforated pipe, 100 mm (4 in)', across, 'm');
    add('solid pipe, 100 mm (4 in)', run, 'm', DIG_RATE / TRENCH ** 2);
  }
  if (m.ballast > 0) {
    const thickness = (m.ballast * UNIT_WEIGHT_OF_WATER) / (CONCRETE_UNIT_WEIGHT - UNIT_WEIGHT_OF_WATER);
    const floor = planArea(shape, depth);
    const sides = ((rim + outline(shape, depth)) / 2) * depth * Math.hypot(1, shape.sideSlope);
    add('concrete for slab and facings', thickness * (floor + sides), 'm³', FILL_RATE);
  }
  for (const { item, amount, unit } of drainFor(basis, m, depth)?.quantities ?? [])
    add(item, amount, unit, unit === 'm³' ? FILL_RATE : undefined);
  return { quantities, seconds };
}
