import type { Basis } from '../basis/index.js';
import type { DriverInput, DriverShare } from '../contract/index.js';
import { method } from '../formula/index.js';
import { type Measures, NOTHING, wetOrClay } from '../heads/index.js';
import { firstOrderFromSample, pickFreezeIndices, uniforms } from '../sampling/index.js';
import { REPLICATES } from '../site/index.js';
import { chanceOf } from './chance.js';

export const driversMethod = method({
  title: 'What drives the answer',
  what:
    'Shares of the variance, from sample to sample, of the chance of failing in a year. Three blocks that are drawn ' +
    'independently (ground and water, what is built, strength of the clay) by exchanging one at a time between ' +
    'samples; what makes up the first block by its first-order share alone.',
  assumptions: [
    'of the measures recommended; where those leave nothing to doubt, of nothing done',
    'parts of ground and water go together, so their shares may overlap; none is given more than their block has in all, ' +
      'which is known better',
  ],
  source: "Sobol' indices: Saltelli et al. 2010, Jansen 1999; correlation ratio",
});

/** Shares of the variance of the chance that measures fail at a depth, the largest first; empty where it does not vary. */
export function driversOf(basis: Basis, m: Measures, depth: number): DriverShare[] {
  const { shares } = chanceOf(basis, m, depth);
  if (shares.every((v) => v === shares[0])) return m === NOTHING ? [] : driversOf(basis, NOTHING, depth);
  const whole = blocks(basis, m, depth, shares);
  const most = whole[0].total ?? 1;
  const within = parts(basis, m, shares).map((part) => ({
    ...part,
    first_order: Math.min(part.first_order, most),
  }));
  return [...whole, ...within].sort((a, b) => b.first_order - a.first_order);
}

function blocks(basis: Basis, m: Measures, depth: number, a: Float64Array): DriverShare[] {
  const { draws, sides, site } = basis;
  const other = shuffled(a.length, site.seed + 67);
  const back = new Uint32Array(a.length);
  other.forEach((t, s) => {
    back[t] = s;
  });
  /** Shares with what is built, or the sides, taken from other samples. */
  const mixed = (built: Uint32Array | undefined, strength: Uint32Array | undefined) => {
    const from = (values: Float64Array, places: Uint32Array | undefined) =>
      places ? values.map((_, s) => values[places[s]]) : values;
    return chanceOf(
      {
        ...basis,
        counted: {},
        emptied: {},
        draws: { ...draws, blocked: from(draws.blocked, built), pumpOut: from(draws.pumpOut, built) },
        sides: (depth) => {
          const of = sides(depth);
          return (
            of && {
              dug: from(of.dug, strength),
              softWet: from(of.softWet, strength),
              softDry: from(of.softDry, strength),
            }
          );
        },
      },
      m,
      depth,
    ).shares;
  };
  const elsewhere = mixed(back, back);
  const { first, total } = pickFreezeIndices(
    {
      a,
      b: a.map((_, s) => a[other[s]]),
      mixed: [a.map((_, s) => elsewhere[other[s]]), mixed(other, undefined), mixed(undefined, other)],
    },
    REPLICATES,
  );
  return (['ground-and-water', 'building', 'clay-strength'] as const).map((input, i) => ({
    input,
    first_order: first[i].value,
    total: total[i].value,
  }));
}

/** First-order shares of what makes up ground and water. */
function parts({ site, draws }: Basis, m: Measures, shares: Float64Array): DriverShare[] {
  const { samples, years } = draws;
  const ring = draws.tub?.[m.way];
  const mean = (level: (i: number) => number) =>
    Float64Array.from({ length: samples }, (_, s) => {
      let sum = 0;
      for (let i = s * years; i < (s + 1) * years; i++) sum += level(i);
      return sum / years;
    });
  const inputs: [DriverInput, Float64Array][] = [
    ['clay-water', mean((i) => draws.clayLow[i])],
    ['permeability', site.water.permeability],
  ];
  if (ring) inputs.push(['ring-water', mean(wetOrClay(ring, draws.clayLow))]);
  if (site.places.highRim > 0) inputs.push(['uphill-rise', site.unknowns['uphill rise']]);
  const rows = new Float64Array(samples * inputs.length);
  inputs.forEach(([, values], j) => {
    for (let s = 0; s < samples; s++) rows[s * inputs.length + j] = values[s];
  });
  const first = firstOrderFromSample(rows, inputs.length, shares, REPLICATES);
  return inputs.map(([input], j) => ({ input, first_order: first[j].value, total: null }));
}

/** Places of a random order. */
function shuffled(n: number, seed: number): Uint32Array {
  const next = uniforms(seed);
  const key = Float64Array.from({ length: n }, () => next());
  return Uint32Array.from(key, (_, s) => s).sort((s, t) => key[s] - key[t]);
}
