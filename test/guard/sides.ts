/** Sides of the dig by class of ground: slopes that do not stand, and depths that are no garden dig. */
import type { Claim } from './claims.js';
import { type Danger, type Kind, m } from './danger.js';
import type { GuardSite, Layer } from './site.js';
import type { Told } from './told.js';

/** Deepest dig without an engineer, m. Our choice, generous: trenches are shored from 1.2 m (United Kingdom practice)
 *  or 5 ft (29 CFR 1926.652), and no table for hand-dug ponds goes beyond 2 m. */
const GARDEN_DIG = 2.2;

/** Slope (horizontal to 1) below which a dry side surely runs: 1/tan of the largest friction angle of the class. */
const SURELY_RUNS: Record<string, { slope: number; from: number }> = {
  // Angle of repose of dry sand and gravel is 30 to 40° (any soil mechanics table).
  sand: { slope: 1.15, from: 0.6 },
  'loamy sand': { slope: 1.15, from: 0.6 },
  gravel: { slope: 1.15, from: 0.6 },
  // Soil of type C is laid back 1.5 to 1 (29 CFR 1926 Subpart P, App. B); fill, peat and loam with no strength of their own.
  'sandy loam': { slope: 0.75, from: 1 },
  loam: { slope: 0.75, from: 1.2 },
  silt: { slope: 0.75, from: 1.2 },
  'silt loam': { slope: 0.75, from: 1.2 },
  peat: { slope: 0.75, from: 0.8 },
  'made ground': { slope: 0.75, from: 0.8 },
};

/** Undrained strength at the strong end of a thumb's word, kPa (BS 5930 and EN ISO 14688-2 classes). */
const STRONG_END: Record<string, number> = {
  'very soft': 20,
  soft: 40,
  firm: 75,
  stiff: 150,
  'very stiff': 300,
  hard: 400,
};
const CLAY_WEIGHT = 18;
/** Stability number of an upright cut: 3.85 whole, 2.67 with a water-filled crack (Taylor 1937; Terzaghi 1943). */
const UPRIGHT = 2.67;
/** Of a slope of 1 to 1, base circle (Taylor 1937). */
const ONE_TO_ONE = 5.5;

/** Layers that a dig cuts, by how much of each. */
function cut({ layers }: GuardSite, dug: number): { layer: Layer; height: number }[] {
  return layers
    .map((layer) => ({ layer, height: Math.min(layer.bottom, dug) - Math.max(layer.top, 0) }))
    .filter(({ height }) => height > 0.15);
}

/** Why the sides as planned surely do not stand; nothing where they may. */
function runsOf(site: GuardSite, dug: number): string | undefined {
  const { slope } = site.pond;
  for (const { layer, height } of cut(site, dug)) {
    const class_ = SURELY_RUNS[layer.texture];
    if (class_ && dug > class_.from && height > 0.35 && slope < class_.slope)
      return `${layer.texture} ${height.toFixed(2)} m high at ${slope} to 1 in a dig of ${dug.toFixed(2)} m`;
    const strength =
      layer.strength !== undefined ? layer.strength / 1000 : (STRONG_END[layer.consistency] ?? Number.NaN);
    const number = slope >= 1 ? ONE_TO_ONE : UPRIGHT + (ONE_TO_ONE - UPRIGHT) * slope;
    if (layer.texture.includes('clay') && layer.bottom >= dug * 0.7 && number * strength < CLAY_WEIGHT * dug)
      return `${layer.consistency} ${layer.texture}: factor ${((number * strength) / (CLAY_WEIGHT * dug)).toFixed(2)} at ${dug.toFixed(2)} m`;
  }
  return undefined;
}

/** The steepest slope that texts tell for a dig, horizontal to 1; none told: NaN. */
function steepestTold(texts: string[]): number {
  const slopes = texts.flatMap((text) =>
    [...text.matchAll(/(\d+(?:\.\d+)?) to 1\b/g)].map(([, n]) => Number(n)),
  );
  return slopes.length > 0 ? Math.min(...slopes) : Number.NaN;
}

/** Best of clays laid back for a day, horizontal to 1, from 1.5 m (29 CFR 1926 Subpart P, App. B: type A to 12 ft). */
const TYPE_A = { slope: 0.5, from: 1.5 };

/** The sides by their class of ground, and a depth that is no garden dig; of what is recommended. */
export function sideDangers(site: GuardSite, told: Told, { verdict, dug, recommended }: Claim): Danger[] {
  if (!recommended || site.pond.existing) return [];
  const { rules } = told.recommendation;
  const found: [Kind, string][] = [];
  const laid = rules.filter(
    ({ code, text }) => code === 'batter-sides' || /shor|engineer/i.test(code + text),
  );
  const runs = runsOf(site, dug);
  if (runs && laid.length === 0) found.push(['side', `${runs}, and no rule lays it back`]);
  if (dug > GARDEN_DIG && !rules.some(({ code }) => code === 'ask-engineer'))
    found.push(['depth', `a dig of ${m(dug)} without an engineer`]);
  // What was drawn, and the floor that is left, are told beside what is to be done.
  const batter = rules
    .filter(({ code }) => code === 'batter-sides')
    .map(({ text }) => text.replace(/ instead of [\d.]+ to 1/, '').replace(/so a floor .* is left/, ''));
  const steepest = steepestTold(batter);
  // What is told of a depth nobody may dig is told all the same.
  const depths = batter.flatMap((text) =>
    [...text.matchAll(/(\d+(?:\.\d+)?) m\b/g)].map(([, n]) => Number(n)),
  );
  if (Math.max(dug, ...depths.slice(0, 1)) > TYPE_A.from && steepest < TYPE_A.slope)
    found.push(['depth', `sides told to stand at ${steepest} to 1: ${batter[0]}`]);
  return found.map(([kind, why]) => ({ verdict, kind, why }));
}
