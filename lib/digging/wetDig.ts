import { method, SECONDS_PER_DAY } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { digRadius, permeabilityAround, type Site } from '../site/index.js';
import { criticalGradient, planArea } from '../uplift/index.js';

export const wetDigMethod = method({
  title: 'Water in the hole while it is dug',
  what:
    'How high the water outside may stand over the floor of a dig: as long as what seeps in can be taken out, and as long as ' +
    'a floor without clay does not boil.',
  assumptions: [
    'seepage as to a disc of the mean plan of the hole, by the permeability of the ground',
    'a hired pump of 7 m³ an hour running four hours a day takes 28 m³ a day out (common practice); where no water may be ' +
      'led away, what is bailed onto the lawn: 1 m³ a day, a hundred buckets (our choice)',
    'ground without clay boils where the mean gradient up to the wetted hole, 4 h/(π r), comes to the critical one over 1.5 ' +
      '(grains of 2.65, porosity 0.4)',
  ],
  source: 'Harr 1962 for the disc; Terzaghi 1943 for the critical gradient; factor of 1.5 our choice',
});

/** Water bailed by hand, and what a pump takes out in the hours of a day's work, m³/s. */
export const BAILED = 1 / SECONDS_PER_DAY;
const PUMPED = (7 * 4) / SECONDS_PER_DAY;
const BOILING = criticalGradient.compute(2.65, 0.4) / 1.5;
const HALVINGS = 30;

/** What can be taken out of a hole here, m³/s. */
export function takenOut({ survey }: Site): number {
  return survey.site.discharge_allowed === 'no' ? BAILED : PUMPED;
}

/** Head over the floor of a hole at which it boils, m; Infinity in clay and rock. */
export function boilingHead({ ground, pond }: Site, depth: number, dug: number): number {
  const { layers } = ground;
  const under = layers.find(({ row }) => row.top <= dug && dug < row.bottom) ?? layers[layers.length - 1];
  if (!under || /clay|rock/.test(under.texture)) return Number.POSITIVE_INFINITY;
  const gradient = (head: number) => {
    const wetted = Math.sqrt(Math.max(planArea(pond.shape, Math.max(depth - head, 0)), 0.01) / Math.PI);
    return (4 * head) / (Math.PI * wetted);
  };
  if (gradient(depth) <= BOILING) return Number.POSITIVE_INFINITY;
  let [low, high] = [0, depth];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (gradient(middle) <= BOILING) low = middle;
    else high = middle;
  }
  return low;
}

/** Seepage into a hole with the water outside at a level, m above the datum; m³/s. */
export function digInflow({ pond, ground }: Site, level: number, depth: number, dug: number): number {
  const head = Math.max(level + dug, 0);
  return discInflow.compute(permeabilityAround(ground, depth).median, digRadius(pond.shape, depth), head);
}
