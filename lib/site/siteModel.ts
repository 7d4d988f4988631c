import { type ClimateRecord, climateRecord } from '../climate/index.js';
import { fitTable, type TableFit, type TablePriors, type TubGeometry } from '../groundwater/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { type Assumption, Assumptions } from './assumptions.js';
import { dipsOf, type PitDip, wetMonthsCovered } from './dips.js';
import { type Ground, groundOf } from './ground.js';
import { type MonthlyWater, monthlyAtSpill, monthlyFromDips, monthlyFromHeads } from './monthlyWater.js';
import { type Places, placesOf } from './places.js';
import { type Pond, pondOf } from './pond.js';
import { type Catchment, tubOf } from './tubOf.js';
import { priorSets, waterByMonth, waterByWeather, type WaterEnsemble } from './water.js';

/** How the water outside was come by. */
export type WaterModel = 'heads.csv' | 'store with spill, fitted to dips' | 'store with spill, from priors' | 'dips' | 'spill level';

/** A survey made into ground, places, pond and water. */
export interface Site {
  survey: Survey;
  seed: number;
  places: Places;
  pond: Pond;
  ground: Ground;
  tub?: TubGeometry;
  catchment: Catchment;
  dips: PitDip[];
  monthly?: MonthlyWater;
  record?: ClimateRecord;
  fit?: TableFit;
  water: WaterEnsemble;
  waterModel: WaterModel;
  latitude: number;
  assumptions: Assumption[];
  warnings: Warning[];
}

export interface SiteOptions {
  /** whole number; the same survey and seed give the same result */
  seed?: number;
  /** draws of everything unknown but fixed */
  samples?: number;
}

/**
 * The site of a survey: what the ground is, where the water stands through the year, and what is not known.
 * @param survey - as read
 * @returns the site with every assumption listed
 */
export function siteModel(survey: Survey, { seed = 1, samples = 600 }: SiteOptions = {}): Site {
  const assume = new Assumptions();
  const warnings: Warning[] = [...survey.warnings];
  const latitude = assume.or(survey.site.latitude, 'latitude', 50, 'deg', 'decides the wet half-year and the sun');
  const places = placesOf(survey);
  const pond = pondOf(survey, places.datum, assume);
  const ground = groundOf(survey, pond.depth, places.pits, assume);
  const tub = tubOf(pond, places);
  const catchment: Catchment = {
    uphillArea: tub ? assume.or(survey.site.uphill_area, 'uphill_area', 20, 'm²', 'some lawn always drains towards a hollow') : 0,
    cover: survey.site.uphill_cover ?? 'lawn',
    roofArea: tub ? assume.or(survey.site.roof_area, 'roof_area', 0, 'm²', 'no downpipe mentioned') : 0,
    capped: pond.ring.capped,
  };
  const { dips, warnings: dipWarnings } = dipsOf(survey, ground.ksat.median);
  warnings.push(...dipWarnings);
  const record = usableWeather(survey, latitude, warnings);
  const heads = monthlyFromHeads(survey, places, assume);
  const common = { samples, seed, ksat: ground.ksat, highRim: places.highRim };
  const base = { survey, seed, places, pond, ground, tub, catchment, dips, record, latitude };

  if (!heads && record) {
    const fit = fitTable(record, dips, priorsOf(ground, dips), samples, seed);
    warnOfFit(fit, warnings);
    const water = waterByWeather(common, record, fit, pond.daysEmpty, tub && { tub, catchment });
    const waterModel = fit.used > 0 ? 'store with spill, fitted to dips' : 'store with spill, from priors';
    return { ...base, fit, water, waterModel, assumptions: assume.list, warnings };
  }
  const monthly = heads ?? (wetMonthsCovered(dips, latitude) >= 4 ? monthlyFromDips(dips, assume) : undefined);
  const known = monthly ?? monthlyAtSpill(0, latitude, ground.mottledFrom, assume);
  const sets = record && tub ? priorSets(priorsOf(ground, dips), samples, seed) : [];
  const ring = tub && { tub, catchment, record: record as ClimateRecord, daysEmpty: pond.daysEmpty, sets };
  const water = waterByMonth(common, known, latitude, ring, dipPipeLevel(survey, places));
  const waterModel: WaterModel = heads ? 'heads.csv' : monthly ? 'dips' : 'spill level';
  return { ...base, monthly: known, water, waterModel, assumptions: assume.list, warnings };
}

/** Highest level seen under the liner, m above the datum. */
function dipPipeLevel(survey: Survey, places: Places): number | undefined {
  const ground = places.dipPipePoint ?? 0;
  const seen = survey.looks.filter((l) => l.pit === 'dip-pipe' && l.reading === 'level').map((l) => ground - l.depth!);
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

/** Priors of the store. Recession and depths: common practice for clay, wider in permeable ground. */
function priorsOf(ground: Ground, dips: PitDip[]): TablePriors {
  const deepest = Math.max(2, ...dips.map((d) => d.depth + 0.5));
  const permeable = ground.ksat.median > 1e-6;
  const prior = (median: number, spread: number, evidence: string) => ({ median, spread, evidence: [evidence] });
  return {
    porosity: ground.porosity,
    recession: prior(permeable ? 0.03 : 0.012, permeable ? 1.2 : 0.8, 'common practice'),
    baseDepth: prior(deepest, permeable ? 0.4 : 0.25, 'deepest look and half a metre'),
    spillDepth: prior(0.06, 0.7, 'common practice: the top of the turf'),
    extinctionDepth: prior(1.4, 0.3, 'common practice 0.8–2.5 m'),
    rootCapacity: ground.rootCapacity,
  };
}

function warnOfFit(fit: TableFit, warnings: Warning[]): void {
  if (fit.outside > 0)
    warnings.push({
      code: 'dips-outside-weather',
      message: `${fit.outside} looks lie outside the weather record and are not used in the fit`,
      file: 'water.csv',
    });
  if (fit.used > 0 && fit.effective < 20)
    warnings.push({
      code: 'fit-poor',
      message: `few parameter sets meet the dips (effective ${fit.effective.toFixed(0)}): the dips and the model disagree`,
      file: 'water.csv',
    });
}
