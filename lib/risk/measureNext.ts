import { method } from '../formula/index.js';
import type { Basis } from './basis.js';
import { type Decision, decide } from './decide.js';
import type { Option } from './options.js';
import type { Recommendation } from './result.js';
import { wetMonths } from './rules.js';

export const measureNextMethod = method({
  title: 'The measurement most likely to change the answer',
  what:
    'Sorts the samples by what a measurement would tell, cuts them into five equal groups, decides again for each ' +
    'group, and reports the share of groups with another answer.',
  assumptions: ['the measurement tells which fifth of the present doubt is true, no more'],
  source: 'preposterior analysis with stratified samples',
});

const GROUPS = 5;

/** Measurements still open, the most telling first. */
export function measureNext(basis: Basis, options: Option[], base: Decision): Recommendation['measure_next'] {
  const { site, draws } = basis;
  if (!base.verdict) return [];
  const where = site.survey.layers[0]?.pit ?? 'the pond site';
  const wet = wetMonths(site.latitude);
  const late = site.latitude >= 0 ? 3 : 9;
  const highs = Float64Array.from({ length: draws.samples }, (_, s) => {
    let sum = 0;
    for (let y = 0; y < draws.years; y++) {
      const i = s * draws.years + y;
      sum += Math.max(draws.clayHigh[i], draws.tub ? draws.tub.asIs[i] : Number.NEGATIVE_INFINITY);
    }
    return sum / draws.years;
  });
  const list = [
    {
      what: 'weekly dips in a sealed standpipe through the wet half-year, the days after heavy rain among them',
      where,
      month: late,
      chance_to_change: changeOf(basis, options, base, highs),
    },
    {
      what: 'a recovery test: bail the hole and time how fast the water comes back',
      where,
      month: wet.includes(1) ? 1 : 7,
      chance_to_change: changeOf(basis, options, base, site.water.conductivity),
    },
  ];
  if (base.option === 'measure-first')
    list[0].chance_to_change = Math.max(list[0].chance_to_change, 1 / GROUPS);
  return list.filter((m) => m.chance_to_change > 0).sort((a, b) => b.chance_to_change - a.chance_to_change);
}

function changeOf(basis: Basis, options: Option[], base: Decision, key: ArrayLike<number>): number {
  const order = Array.from({ length: key.length }, (_, s) => s).sort((a, b) => key[a] - key[b]);
  // A group's answer is compared with what would be decided on all samples if this evidence were in hand.
  const answers = Array.from({ length: GROUPS }, (_, g) => {
    const subset = order.slice((g * order.length) / GROUPS, ((g + 1) * order.length) / GROUPS);
    return decide(basis, options, { subset }).option;
  });
  return answers.filter((a) => a !== base.option).length / GROUPS;
}
