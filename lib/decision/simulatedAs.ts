/** The same pond in the same weather, kept, emptied or shaped otherwise. */
import { type Basis, basisOf } from '../basis/index.js';
import { Remembered } from '../sampling/index.js';
import { type Pond, type Site, siteModel, type WaterEnsemble, WEEKEND } from '../site/index.js';

type PondFacts = Site['survey']['pond'];

const kept = new Remembered<Site | null>();
const weekends = new Remembered<WaterEnsemble>();
const first = new Remembered<Basis>();
const used = new Remembered<Basis>();
const shaped = new Remembered<Site | null>();

/** What judgements rest on with the pond topped up within so much, m; undefined where it cannot be run through the same years. */
export function keptWithin(basis: Basis, within: number): Basis | undefined {
  const { site } = basis;
  const { usual_drawdown: _, ...facts } = { ...site.survey.pond, kept_within: within };
  const key = `${within} ${site.pond.shape.sideSlope}`;
  const after = kept.of(site.water, key, () => simulated(site, facts));
  return after ? usedAs(basis, facts, after.water, { kept: after.pond.kept }) : undefined;
}

/** The same with the pond emptied for a weekend; undefined where it never is for longer. */
export function emptiedInWeekend(basis: Basis): Basis | undefined {
  const { survey, water } = basis.site;
  const { weekend } = water;
  if (!weekend) return undefined;
  const met = weekends.of(water, '', () => ({ ...water, ...weekend, weekend: undefined }));
  return usedAs(basis, { ...survey.pond, days_empty: WEEKEND }, met, { daysEmpty: WEEKEND });
}

function usedAs(basis: Basis, facts: PondFacts, water: WaterEnsemble, change: Partial<Pond>): Basis {
  return used.of(basis, JSON.stringify(change), () => {
    const { site } = basis;
    const survey = { ...site.survey, pond: facts };
    const then = { ...site, survey, water, pond: { ...site.pond, ...change } };
    return basisOf(
      then,
      first.of(water, '', () => basisOf(then)),
    );
  });
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
