/** site.csv: what the place is like and what is allowed there. */

import { SECONDS_PER_DAY } from '../formula/index.js';
import { type Column, quantity, text, word } from './column.js';
import { country } from './country.js';
import { type Facts, type Items, readFacts } from './facts.js';
import * as garden from './gardenWords.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import { COVERS, type SiteFacts, type YesNo } from './survey.js';

const YES_NO_UNKNOWN: Column<YesNo> = word(['yes', 'no', 'unknown'], garden.YES_NO_UNKNOWN);

const YEARS = ['year', 'years', 'yr', 'a'];
/** How rarely something fails: years from one time to the next. */
const ONCE_IN = quantity('none', { min: 1, max: 10_000, unitWords: YEARS });

/** The items of site.csv. */
export const SITE_ITEMS: Items<SiteFacts> = {
  name: text(),
  latitude: {
    ...quantity('angle', { min: -90, max: 90, unit: 'deg' }),
    odd: (deg) => (Math.abs(deg) > 70 ? 'unusually far from the equator' : undefined),
  },
  show_units: word(['metric', 'us'], garden.UNIT_SYSTEMS),
  country: country(),
  uphill_area: quantity('area', { min: 0, max: 1e6, oddAbove: 1e4 }),
  uphill_cover: word(COVERS, garden.COVERS),
  roof_area: quantity('area', { min: 0, max: 1e4, oddAbove: 500, oddBelow: 0.5 }),
  roof_into_pond: quantity('area', { min: 0, max: 1e4, oddAbove: 500, oddBelow: 0.5 }),
  storm_rain: quantity('length', { min: 0.001, max: 2, oddAbove: 0.4, oddBelow: 0.01 }),
  storm_hours: quantity('time', {
    min: 300,
    max: 14 * SECONDS_PER_DAY,
    oddAbove: 3 * SECONDS_PER_DAY,
    unit: 'h',
  }),
  mains_power: YES_NO_UNKNOWN,
  pump_acceptable: YES_NO_UNKNOWN,
  discharge_allowed: YES_NO_UNKNOWN,
  protected_ground: YES_NO_UNKNOWN,
  wet_plants: YES_NO_UNKNOWN,
  shrinkable_clay: YES_NO_UNKNOWN,
  organic_smell: YES_NO_UNKNOWN,
  outlet_setback: quantity('length', { min: 0, max: 1000 }),
  outlet_within_boundary: YES_NO_UNKNOWN,
  drain_blocked_once_in: ONCE_IN,
  flap_stuck_once_in: ONCE_IN,
  pump_out_once_in: ONCE_IN,
  power_cut_once_in: ONCE_IN,
  power_cut_hours: quantity('time', {
    min: 0,
    max: 30 * SECONDS_PER_DAY,
    oddAbove: 7 * SECONDS_PER_DAY,
    unit: 'h',
  }),
  abstraction_limit: quantity('flow', { min: 0, max: 1, unit: 'm3/d' }),
  flood_every: quantity('none', {
    min: 1,
    max: 1000,
    oddAbove: 200,
    unitWords: ['year', 'years', 'yr', 'a'],
  }),
  highest_water_mark: quantity('length', { min: -100, max: 9000 }),
  life: quantity('none', { min: 1, max: 200, oddAbove: 100, unitWords: YEARS }),
};

/** Reads site.csv; absent: nothing is said. */
export function readSite(sheet: Sheet | undefined, findings: Findings): Facts<SiteFacts> {
  const site = readFacts<SiteFacts>(sheet, SITE_ITEMS, findings);
  if (site.facts.latitude === undefined && findings.clean('site.csv')) {
    findings.warn({
      file: 'site.csv',
      code: 'missing-latitude',
      message: 'missing latitude - which months are winter must be assumed',
    });
  }
  return site;
}
