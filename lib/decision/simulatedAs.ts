/** The same pond in the same weather, kept, emptied or shaped otherwise. */
import { type Basis, basisOf } from '../basis/index.js';
import { Remembered } from '../sampling/index.js';
import { type Site, siteModel } from '../site/index.js';

export type PondFacts = Site['survey']['pond'];

const used = new Remembered<Basis | null>();
const usedHere = new Remembered<Basis>();
const shaped = new Remembered<Site | null>();

/** What judgements rest on with other habits; undefined where they cannot be run through the same years. */
export function usedAs(basis: Basis, facts: PondFacts): Basis | undefined {
  const { site } = basis;
  const { usual_drawdown, kept_within, days_empty } = facts;
  const then = used.of(
    site.water,
    `${usual_drawdown} ${kept_within} ${days_empty} ${site.pond.shape.sideSlope}`,
    () => {
      const after = simulated(site, facts);
      return after && basisOf({ ...after, survey: { ...site.survey, pond: facts } });
    },
  );
  if (!then) return undefined;
  const { water, pond, survey } = then.site;
  const { kept, daysEmpty } = pond;
  return usedHere.of(basis, `used ${kept_within} ${days_empty}`, () =>
    basisOf({ ...site, survey, water, pond: { ...site.pond, kept, daysEmpty } }, then),
  );
}

/** The site with its sides at another slope, its water as it was. */
export function withSides(site: Site, sideSlope: number): Site {
  const { shape, drawnSlope = shape.sideSlope } = site.pond;
  return { ...site, pond: { ...site.pond, shape: { ...shape, sideSlope }, drawnSlope } };
}

/** What judgements rest on with sides at another slope; undefined where the pond cannot be run through the same years. */
export function shapedAs(basis: Basis, sideSlope: number): Basis | undefined {
  const site = withSides(basis.site, sideSlope);
  // With a level held and no bed under it the water does not know how the sides lie.
  if (!site.water.pond && !site.tub?.bedArea) return basisOf(site, basis);
  const after = shaped.of(site.water, `${sideSlope}`, () => simulated(site, site.survey.pond));
  return after ? basisOf({ ...site, water: after.water, tub: after.tub }, basis) : undefined;
}

/** Its water run anew; null where it could not be run through the same years. */
function simulated(site: Site, facts: PondFacts): Site | null {
  const pond = { ...facts, side_slope: site.pond.shape.sideSlope };
  const after = siteModel(
    { ...site.survey, pond },
    { seed: site.seed, samples: site.water.samples, before: site },
  );
  // Some years of the weather only: the pond was not run through those.
  return after.water.years === site.water.years ? after : null;
}
