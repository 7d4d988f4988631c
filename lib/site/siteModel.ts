import type { ClimateRecord, MonthlySurplus } from '../climate/index.js';
import {
  type ChosenModel,
  chooseTableModel,
  fitTable,
  type GroundForTable,
  modelsFor,
  type TableFit,
  type TableModelName,
  type TubGeometry,
} from '../groundwater/index.js';
import { percentiles } from '../sampling/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { type Assumption, Assumptions } from './assumptions.js';
import { contradictions } from './contradictions.js';
import { dipsOf, type PitDip, wetMonthsCovered } from './dips.js';
import { type Ground, groundOf } from './ground.js';
import { type HighEvidence, highEvidenceOf } from './highEvidence.js';
import { type MonthlyWater, monthlyAtSpill, monthlyFromDips, monthlyFromHeads } from './monthlyWater.js';
import { notUsed } from './notUsed.js';
import { type Places, placesOf } from './places.js';
import { type Pond, pondOf } from './pond.js';
import { pooledDips } from './pooledDips.js';
import { type SoilTest, soilTestsOf } from './soilTests.js';
import { type SpotHeads, spotHeads } from './spots.js';
import { type Catchment, tubOf } from './tubOf.js';
import { type Unknowns, unknownsOf } from './unknowns.js';
import type { WaterEnsemble } from './water.js';
import { waterByMonth } from './waterByMonth.js';
import { waterByWeather } from './waterByWeather.js';
import { ordinaryYearOf, recordOf, wetMonthsOf } from './weather.js';
import { wetWinterShare, wetWinters } from './wetWinters.js';

/** How the water outside was come by. */
export type WaterModel =
  | 'heads.csv'
  | `${TableModelName}, ${'fitted to dips' | 'from priors'}`
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
  /** model of the table, its fit and why it was chosen; absent where the water is known month by month */
  chosen?: ChosenModel;
  water: WaterEnsemble;
  waterModel: WaterModel;
  /** what else speaks of the seasonal high */
  highEvidence: HighEvidence[];
  /** degrees, south negative */
  latitude: number;
  assumptions: Assumption[];
  warnings: Warning[];
}

/** How a site is simulated. */
export interface SiteOptions {
  /** whole number; the same survey and seed give the same result */
  seed?: number;
  /** draws of everything unknown but fixed, 8 or more; eight times a power of two is best */
  samples?: number;
  /** a site of the same survey, draws and seed whose pond is only of another length or width: its table is not fitted again */
  before?: Site;
}

/**
 * The site of a survey: what the ground is, where the water stands through the year, and what is not known.
 * @param survey - as read by `readSurvey` or `parseSurvey`
 * @param options - seed, number of samples, and a site that it differs little from
 * @returns the site; depths and levels m from the lowest natural ground at the rim; every assumption listed
 * @throws RangeError for fewer than 8 samples, and for a site before of another seed or number of samples
 */
export function siteModel(survey: Survey, { seed = 1, samples = 512, before }: SiteOptions = {}): Site {
  if (before && (before.seed !== seed || before.water.samples !== samples))
    throw new RangeError(
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
  const places = placesOf(survey);
  const pond = pondOf(survey, places.datum, assume);
  const { tests, warnings: testWarnings } = soilTestsOf(survey);
  warnings.push(...testWarnings);
  const ground = groundOf(survey, tests, pond.depth, places.pits, assume);
  warnings.push(...contradictions(ground.layers, tests));
  const tub = tubOf(pond, places);
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
    capped: pond.ring.capped,
  };
  const read = dipsOf(survey, ground.ksat.median, ground.ksat.spread);
  warnings.push(...read.warnings);
  const spots = spotHeads(survey, read.dips);
  const dips = pooledDips(read.dips, survey, places, spots);
  const ordinary = ordinaryYearOf(survey, latitude, ground.rootCapacity.median, warnings);
  const record = recordOf(survey, latitude, ordinary, warnings);
  const wetMonths = wetMonthsOf(ordinary, latitude, assume);
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
    latitude,
  };
  const known = waterOf(base, assume, warnings, before);
  const high = highEvidenceOf(survey, places, ground.colour, known.water);
  warnings.push(...high.warnings);
  return { ...base, ...known, highEvidence: high.evidence, assumptions: assume.list, warnings };
}

/** A site before its water is simulated. */
type Dry = Omit<
  Site,
  'monthly' | 'chosen' | 'water' | 'waterModel' | 'highEvidence' | 'assumptions' | 'warnings'
>;

/** The water outside by the best that is known of it. */
function waterOf(
  site: Dry,
  assume: Assumptions,
  warnings: Warning[],
  before: Site | undefined,
): Pick<Site, 'monthly' | 'chosen' | 'water' | 'waterModel'> {
  const { survey, seed, unknowns, places, pond, ground, tub, catchment, dips, record, wetMonths } = site;
  const samples = unknowns.place.length;
  const common = { samples, seed, unknowns, ksat: ground.ksat, highRim: places.highRim };
  const heads = monthlyFromHeads(survey, places, wetMonths, assume);
  if (!heads && record) {
    const chosen =
      before?.chosen ??
      chooseTableModel(record, dips, modelsFor(groundForTable(ground, record), dips), samples, seed);
    const { fit } = chosen;
    warnOfFit(fit, warnings);
    const share = wetWinterShare(record.years);
    if (share > 0)
      assume.add(
        'wet winters',
        Math.round(100 * share),
        '%',
        `only ${record.years} whole years of weather: each is counted with its wet season as it was, and as much wetter and drier`,
      );
    const simulated = () =>
      waterByWeather(common, wetWinters(record, wetMonths), fit, pond.daysEmpty, tub && { tub, catchment });
    // Without a ring the water does not know how large the pond is.
    const water = tub || !before || before.tub ? simulated() : before.water;
    return {
      chosen,
      water,
      waterModel: `${chosen.model.name}, ${fit.used > 0 ? 'fitted to dips' : 'from priors'}`,
    };
  }
  const fromDips = !heads && wetMonthsCovered(dips, wetMonths) >= 4 && monthlyFromDips(dips, assume);
  const monthly = heads || fromDips || monthlyAtSpill(0, wetMonths, ground.colour, assume, dips.length);
  const sets =
    record && tub
      ? fitTable(record, [], modelsFor(groundForTable(ground, record), [])[0].priors, samples, seed).sets
      : [];
  const ring = tub && { tub, catchment, record, daysEmpty: pond.daysEmpty, sets };
  const water = waterByMonth(common, monthly, wetMonths, ring, dipPipeLevel(survey, places));
  return { monthly, water, waterModel: heads ? 'heads.csv' : fromDips ? 'dips' : 'spill level' };
}

/** Highest level seen under the liner, m above the datum. */
function dipPipeLevel(survey: Survey, places: Places): number | undefined {
  const ground = places.dipPipePoint ?? 0;
  const seen = survey.looks
    .filter((l) => l.pit === 'dip-pipe' && l.reading === 'level')
    .map((l) => ground - l.depth!);
  return seen.length > 0 ? Math.max(...seen) : undefined;
}

/** What the models of the table take from the ground. */
function groundForTable(ground: Ground, record: ClimateRecord): GroundForTable {
  return {
    porosity: ground.porosity,
    rootCapacity: ground.rootCapacity,
    permeable: ground.ksat.median > 1e-6,
    clayey: ground.clayey,
    snows: record.snows,
  };
}

/** A miss of the dips worth telling, m. Our choice. */
const POOR_FIT = 0.15;

function warnOfFit(fit: TableFit, warnings: Warning[]): void {
  if (fit.outside > 0)
    warnings.push({
      code: 'dips-outside-weather',
      message: `${fit.outside} looks lie outside the weather record and are not used in the fit`,
      file: 'water.csv',
    });
  const missing = percentiles(fit.missing).p50;
  if (fit.used > 0 && missing > POOR_FIT)
    warnings.push({
      code: 'fit-poor',
      message: `the model misses the dips by ${missing.toFixed(2)} m (one standard deviation): its bands are as wide, and what moves this water may not be in it`,
      file: 'water.csv',
    });
}
