import { type ClimateRecord, climateRecord } from '../climate/index.js';
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
import { dipsOf, type PitDip, wetMonthsCovered } from './dips.js';
import { type Ground, groundOf } from './ground.js';
import { type MonthlyWater, monthlyAtSpill, monthlyFromDips, monthlyFromHeads } from './monthlyWater.js';
import { notUsed } from './notUsed.js';
import { type Places, placesOf } from './places.js';
import { type Pond, pondOf } from './pond.js';
import { type SoilTest, soilTestsOf } from './soilTests.js';
import { type Catchment, tubOf } from './tubOf.js';
import { type Unknowns, unknownsOf } from './unknowns.js';
import { type WaterEnsemble, waterByMonth, waterByWeather } from './water.js';

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
  dips: PitDip[];
  monthly?: MonthlyWater;
  record?: ClimateRecord;
  /** model of the table, its fit and why it was chosen; absent where the water is known month by month */
  chosen?: ChosenModel;
  water: WaterEnsemble;
  waterModel: WaterModel;
  latitude: number;
  assumptions: Assumption[];
  warnings: Warning[];
}

export interface SiteOptions {
  /** whole number; the same survey and seed give the same result */
  seed?: number;
  /** draws of everything unknown but fixed; eight times a power of two is best */
  samples?: number;
}

/**
 * The site of a survey: what the ground is, where the water stands through the year, and what is not known.
 * @param survey - as read
 * @returns the site with every assumption listed
 */
export function siteModel(survey: Survey, { seed = 1, samples = 512 }: SiteOptions = {}): Site {
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
  const { dips, warnings: dipWarnings } = dipsOf(survey, ground.ksat.median, ground.ksat.spread);
  warnings.push(...dipWarnings);
  const record = usableWeather(survey, latitude, warnings);
  const heads = monthlyFromHeads(survey, places, assume);
  const unknowns = unknownsOf(samples, seed);
  const common = { samples, seed, unknowns, ksat: ground.ksat, highRim: places.highRim };
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
    record,
    latitude,
  };

  if (!heads && record) {
    const chosen = chooseTableModel(record, dips, modelsFor(groundForTable(ground), dips), samples, seed);
    const { fit } = chosen;
    warnOfFit(fit, warnings);
    const water = waterByWeather(common, record, fit, pond.daysEmpty, tub && { tub, catchment });
    const waterModel = `${chosen.model.name}, ${fit.used > 0 ? 'fitted to dips' : 'from priors'}` as const;
    return { ...base, chosen, water, waterModel, assumptions: assume.list, warnings };
  }
  const monthly =
    heads ?? (wetMonthsCovered(dips, latitude) >= 4 ? monthlyFromDips(dips, assume) : undefined);
  const known = monthly ?? monthlyAtSpill(0, latitude, ground.colour, assume);
  const sets =
    record && tub
      ? fitTable(record, [], modelsFor(groundForTable(ground), [])[0].priors, samples, seed).sets
      : [];
  const ring = tub && { tub, catchment, record: record as ClimateRecord, daysEmpty: pond.daysEmpty, sets };
  const water = waterByMonth(common, known, latitude, ring, dipPipeLevel(survey, places));
  const waterModel: WaterModel = heads ? 'heads.csv' : monthly ? 'dips' : 'spill level';
  return { ...base, monthly: known, water, waterModel, assumptions: assume.list, warnings };
}

/** Highest level seen under the liner, m above the datum. */
function dipPipeLevel(survey: Survey, places: Places): number | undefined {
  const ground = places.dipPipePoint ?? 0;
  const seen = survey.looks
    .filter((l) => l.pit === 'dip-pipe' && l.reading === 'level')
    .map((l) => ground - l.depth!);
  return seen.length > 0 ? Math.max(...seen) : undefined;
}

function usableWeather(survey: Survey, latitude: number, warnings: Warning[]): ClimateRecord | undefined {
  if (survey.weather.length === 0) return undefined;
  const record = climateRecord(survey.weather, latitude);
  if (record.years === 0) {
    warnings.push({
      code: 'weather-too-short',
      message: 'weather.csv holds no whole year from one autumn to the next; it is not used',
      file: 'weather.csv',
    });
    return undefined;
  }
  const { rain, demand } = record.filled;
  if (rain + demand > 0)
    warnings.push({
      code: 'weather-filled',
      message: `${rain} days without rain and ${demand} without temperatures were filled with that month's mean`,
      file: 'weather.csv',
    });
  return record;
}

/** What the models of the table take from the ground. */
function groundForTable(ground: Ground): GroundForTable {
  return {
    porosity: ground.porosity,
    rootCapacity: ground.rootCapacity,
    permeable: ground.ksat.median > 1e-6,
    clayey: ground.clayey,
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
