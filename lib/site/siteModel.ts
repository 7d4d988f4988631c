import type { ClimateRecord, MonthlySurplus } from '../climate/index.js';
import { freeLevel, type TableFit, TableFits, type TubGeometry, tablePriors } from '../groundwater/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { InputError } from '../units/index.js';
import { type Assumption, Assumptions } from './assumptions.js';
import { contradictions } from './contradictions.js';
import { type Country, countryOf } from './country.js';
import { dipsOf, type PitDip, WET_MONTHS_NEEDED, wetMonthsCovered } from './dips.js';
import { daysCounted } from './emptyingWater.js';
import { floodEveryOf } from './floodEvery.js';
import { type Ground, groundOf } from './ground.js';
import { type HighEvidence, highEvidenceOf } from './highEvidence.js';
import { holesApart } from './holesApart.js';
import { footingsOf } from './houseFootings.js';
import { laidBack } from './layBack.js';
import { lifeOf } from './life.js';
import { type MonthlyWater, monthlyAtSpill, monthlyFromDips, monthlyFromHeads } from './monthlyWater.js';
import { notUsed } from './notUsed.js';
import { type Places, placesOf } from './places.js';
import { type Pond, pondOf } from './pond.js';
import { heldAtWorst } from './pondKept.js';
import { pondLossDraws } from './pondLooks.js';
import { pondInWeather } from './pondYears.js';
import { pooledDips } from './pooledDips.js';
import { permeabilityAround, permeabilityOfHole } from './profile.js';
import { seamsOf } from './seams.js';
import { type SoilTest, soilTestsOf } from './soilTests.js';
import { type SpotHeads, spotHeads, uphillRiseBy } from './spots.js';
import { forTable, warnOfFit } from './tableFit.js';
import { type Catchment, spillBelow, tubOf } from './tubOf.js';
import { type Unknowns, unknownsOf } from './unknowns.js';
import { unplacedWarnings } from './unplaced.js';
import type { WaterEnsemble } from './water.js';
import { waterByMonth } from './waterByMonth.js';
import { waterByWeather } from './waterByWeather.js';
import { ordinaryYearOf, ordinaryYearOfRecord, recordOf, wetMonthsOf } from './weather.js';
import { wetWinterShare, wetWinters } from './wetWinters.js';

/** How the water outside was come by. */
export type WaterModel =
  | 'heads.csv'
  | `daily water balance, ${'fitted to dips' | 'from priors'}`
  | 'dips'
  | 'spill level';

/** A survey made into ground, places, pond and water. */
export interface Site {
  survey: Survey;
  seed: number;
  unknowns: Unknowns;
  places: Places;
  pond: Pond;
  ground: Ground;
  /** permeability tests that could be interpreted */
  tests: SoilTest[];
  tub?: TubGeometry;
  catchment: Catchment;
  /** looks made into levels and bounds, below the lowest ground at the rim */
  dips: PitDip[];
  /** head at each candidate spot, and the plane of the water table */
  spots: SpotHeads;
  monthly?: MonthlyWater;
  record?: ClimateRecord;
  /** what climate.csv says of an ordinary year */
  ordinary?: MonthlySurplus;
  /** months in which the ground stands wet, 1–12 */
  wetMonths: number[];
  /** parameter sets of the table; absent where the water is known month by month */
  fit?: TableFit;
  water: WaterEnsemble;
  waterModel: WaterModel;
  /** years that the liner is to serve */
  life: number;
  /** a ditch that takes the drain's water floods once in so many years */
  floodEvery: number;
  /** what else speaks of the seasonal high */
  highEvidence: HighEvidence[];
  /** degrees, south negative */
  latitude: number;
  country: Country;
  assumptions: Assumption[];
  warnings: Warning[];
}

/** How a site is simulated. */
export interface SiteOptions {
  /** whole number; the same survey and seed give the same result */
  seed?: number;
  /** draws of everything unknown but fixed, 8 or more; eight times a power of two is best */
  samples?: number;
  /** a site of the same survey, draws and seed whose pond is only of another size or kept otherwise: its table is not fitted again, its clay not run again */
  before?: Site;
  /** fits of the water table made for other sites, which are taken where they are the same, and to which its own is added */
  fits?: TableFits;
}

/**
 * The site of a survey: what the ground is, where the water stands through the year, and what is not known.
 * @param survey - as read by `readSurvey` or `parseSurvey`
 * @param options - seed, number of samples, and a site that it differs little from
 * @returns the site; depths and levels m from the lowest natural ground at the rim; every assumption listed
 * @throws InputError for fewer than 8 samples, and for a site before of another seed or number of samples
 */
export function siteModel(
  survey: Survey,
  { seed = 1, samples = 512, before, fits = new TableFits() }: SiteOptions = {},
): Site {
  if (before && (before.seed !== seed || before.water.samples !== samples))
    throw new InputError(
      'invalid-input',
      `invalid site before: drawn with seed ${before.seed} and ${before.water.samples} samples, asked for are ${seed} and ${samples}; give the same, or no site before.`,
    );
  const assume = new Assumptions();
  const warnings: Warning[] = [...survey.warnings, ...notUsed(survey)];
  const latitude = assume.or(
    survey.site.latitude,
    'latitude',
    50,
    'deg',
    'decides the wet half-year and the sun',
  );
  const levelled = placesOf(survey);
  const places = { ...levelled, footings: footingsOf(survey, levelled, assume) };
  warnings.push(...unplacedWarnings(survey, places, assume));
  const planned = pondOf(survey, places.datum, assume);
  const { tests, warnings: testWarnings } = soilTestsOf(survey);
  warnings.push(...testWarnings);
  const soil = groundOf(survey, tests, assume);
  const dug = laidBack(planned, soil, places, assume);
  warnings.push(...contradictions(soil.layers, tests));
  const tub = tubOf(dug, places, assume);
  if (tub) warnings.push(...spillBelow(tub, survey, places));
  const catchment: Catchment = {
    uphillArea: tub
      ? assume.or(
          survey.site.uphill_area,
          'uphill_area',
          20,
          'm²',
          'some lawn always drains towards a hollow',
        )
      : 0,
    cover: survey.site.uphill_cover ?? 'lawn',
    roofArea: tub ? assume.or(survey.site.roof_area, 'roof_area', 0, 'm²', 'no downpipe mentioned') : 0,
    pondRoof: survey.site.roof_into_pond ?? 0,
    overflow: tub
      ? assume.or(survey.pond.overflow, 'overflow', 'ring', '', 'over the brim into what was filled back')
      : 'away',
    capped: dug.ring.capped,
  };
  const read = dipsOf(survey, (pit, from, to) => permeabilityOfHole(soil, pit, from, to));
  warnings.push(...read.warnings);
  const spots = spotHeads(survey, read.dips);
  if (spots.noPlane) assume.add('water at the pond', 'as in the nearest hole', '', spots.noPlane);
  const dips = pooledDips(read.dips, survey, places, spots);
  const capacity = soil.rootCapacity.median;
  const ordinary = ordinaryYearOf(survey, latitude, capacity, warnings);
  const record = recordOf(survey, latitude, ordinary, warnings);
  const pond = record
    ? dug
    : { ...dug, kept: heldAtWorst(dug.kept, dug.depth, { latitude, ordinary }, assume) };
  const wetMonths = wetMonthsOf(
    bestYear(record && ordinaryYearOfRecord(record, latitude, capacity), ordinary),
    latitude,
    assume,
  );
  const seams = seamsOf(survey, soil.layers, places.pits, wetMonths, pond.depth, soil.topsoil);
  warnings.push(...holesApart(dips, seams));
  const ground: Ground = { ...soil, seams };
  const unknowns = before?.unknowns ?? unknownsOf(samples, seed);
  const base = {
    survey,
    seed,
    unknowns,
    places,
    pond,
    ground,
    tests,
    tub,
    catchment,
    dips,
    spots,
    record,
    ordinary,
    wetMonths,
    life: lifeOf(survey, assume),
    floodEvery: floodEveryOf(survey, places, assume),
    latitude,
    country: countryOf(survey, assume),
  };
  const known = waterOf(base, assume, warnings, fits, before);
  const high = highEvidenceOf(survey, places, dips, ground.colour, known.water);
  warnings.push(...high.warnings);
  return { ...base, ...known, highEvidence: high.evidence, assumptions: assume.list, warnings };
}

/** The year that tells the wet months: the site's own weather before a year of means. */
function bestYear(weather: MonthlySurplus | undefined, climate: MonthlySurplus | undefined) {
  if (weather) return { surplus: weather, file: 'weather.csv' as const };
  return climate && { surplus: climate, file: 'climate.csv' as const };
}

/** A site before its water is simulated. */
type Dry = Omit<
  Site,
  'monthly' | 'fit' | 'water' | 'waterModel' | 'highEvidence' | 'assumptions' | 'warnings'
>;

/** The water outside by the best that is known of it. */
function waterOf(
  site: Dry,
  assume: Assumptions,
  warnings: Warning[],
  fits: TableFits,
  before: Site | undefined,
): Pick<Site, 'monthly' | 'fit' | 'water' | 'waterModel'> {
  const { survey, seed, unknowns, places, pond, ground, tub, catchment, dips, record, wetMonths } = site;
  const samples = unknowns.place.length;
  const { plane } = site.spots;
  const measuredRise = plane && uphillRiseBy(survey.levels, plane);
  const common = {
    samples,
    seed,
    unknowns,
    permeability: permeabilityAround(ground, pond.depth),
    highRim: places.highRim,
    measuredRise,
  };
  const kept =
    record &&
    pondInWeather(pond, catchment.pondRoof, unknowns, tub !== undefined, (stage) =>
      pondLossDraws(survey, places, record, stage, pond.fullLevel, unknowns, seed, assume, warnings),
    );
  const heads = monthlyFromHeads(survey, places, wetMonths, ground.colour, assume);
  if (!heads && record) {
    const fit =
      before?.fit ??
      fits.of(record, dips, tablePriors(forTable(ground, record), dips), samples, seed, ground.colour);
    warnOfFit(fit, warnings);
    if (fit.used > 0)
      assume.add(
        'water in years to come',
        'as in the years of the looks',
        '',
        'no fit can know a drain laid or blocked since, a ditch kept higher, a well pumped or given up, trees planted or felled: where one of these changed or will, dip through a wet season again',
      );
    const share = wetWinterShare(record.years);
    if (share > 0)
      assume.add(
        'wet winters',
        Math.round(100 * share),
        '%',
        `only ${record.years} whole years of weather: each is counted with its wet season as it was, and as much wetter and drier`,
      );
    const same = before?.water.daysEmpty === daysCounted(pond.daysEmpty) ? before : undefined;
    const simulated = () =>
      waterByWeather(
        common,
        wetWinters(record, wetMonths),
        fit,
        freeLevel(dips),
        pond.daysEmpty,
        tub && { tub, catchment, fullLevel: pond.fullLevel },
        kept,
        same?.water,
      );
    // With a level held and no ring the water does not know how large the pond is.
    const water = tub || kept || !same || same.tub ? simulated() : same.water;
    return {
      fit,
      water,
      waterModel: `daily water balance, ${fit.used > 0 ? 'fitted to dips' : 'from priors'}`,
    };
  }
  const fromDips =
    !heads &&
    wetMonthsCovered(dips, wetMonths) >= WET_MONTHS_NEEDED &&
    monthlyFromDips(dips, wetMonths, assume);
  const monthly = heads || fromDips || monthlyAtSpill(0, wetMonths, ground.colour, assume, dips);
  const sets =
    record && tub ? fits.of(record, [], tablePriors(forTable(ground, record), []), samples, seed).sets : [];
  const ring = tub && { tub, catchment, fullLevel: pond.fullLevel, sets };
  const days = record && { record, pond: kept };
  const seen = dipPipeLevel(survey, places);
  const water = waterByMonth(common, monthly, wetMonths, ring, seen, pond.daysEmpty, days);
  return { monthly, water, waterModel: monthly.source === 'heads' ? 'heads.csv' : monthly.source };
}

/** Highest level seen under the liner, m above the datum. */
function dipPipeLevel(survey: Survey, places: Places): number | undefined {
  const ground = places.dipPipePoint ?? 0;
  const seen = survey.looks
    .filter((l) => l.pit === 'dip-pipe' && l.reading === 'level')
    .map((l) => ground - l.depth!);
  return seen.length > 0 ? Math.max(...seen) : undefined;
}
