import type { SiteDrain } from '../contract/index.js';
import { type Discharge, type Lowering, SOAKAWAY_CLEARANCE, type SoakawayVerdict } from '../drain/index.js';
import type { UnitSystem } from '../units/index.js';
import { type Say, sayer } from './say.js';

/**
 * What a lowering of the water means at a place, as the end of a sentence.
 * @param lowering - at the place
 * @returns words without a full stop
 */
export function loweringWords({ unnoticed, caution }: Pick<Lowering, 'unnoticed' | 'caution'>): string {
  return unnoticed
    ? 'not noticeable'
    : caution
      ? 'lowered, and the clay may shrink: ask an engineer before it is built'
      : 'lowered a little in wet months';
}

/**
 * What a neighbour at the outlet would see, in words.
 * @param discharge - ordinary and storm flow of the drain, and that of the storm without the pond, m³/s
 * @param units - how numbers are written
 * @returns sentences
 */
export function dischargeWords({ ordinary, storm, before }: Discharge, units: UnitSystem): string {
  const { aMinute, flow } = sayer(units);
  const wet = `On an ordinary wet day ${flow(ordinary)} comes out`;
  return storm <= before
    ? `${wet}; in the design storm ${aMinute(storm)} at one point, no more than the ${aMinute(before)} that ran off the same ground before.`
    : `${wet}; in the design storm ${aMinute(storm)} at one point, more than the ${aMinute(before)} that ran off the same ground before: hold it back or spread it.`;
}

/**
 * A soakaway judged, as the end of a sentence.
 * @param verdict - of the soakaway
 * @param units - of the reader
 * @returns words without a full stop
 */
export function soakawayWords({ half, fault }: SoakawayVerdict, units: UnitSystem): string {
  const hours = half / 3600;
  const time = hours < 48 ? `${hours.toPrecision(2)} hours` : `${Number((hours / 24).toPrecision(2))} days`;
  switch (fault) {
    case 'drowned':
      return 'the water in the ground stands in it when it is needed: a second tub';
    case 'slow':
      return `half of its water is still there after ${time}: a second tub, full when the next storm comes`;
    case 'near':
      return `the water in the ground comes within ${sayer(units).length(SOAKAWAY_CLEARANCE)} of its floor in winter: too near`;
    case null:
      return `a soakaway here is half empty after ${time}`;
  }
}

/** Lowering, water that comes out, soakaway, flow without end. */
export function neighbourWords(drain: SiteDrain, units: UnitSystem): string[] {
  const { length, flow }: Say = sayer(units);
  const lowering = drain.lowering.map(
    (place) =>
      `Water in the ground at ${place.name}, ${length(place.distance)} away, ${
        place.unnoticed
          ? 'lowered by less than anybody could tell from the weather'
          : `lowered by about ${length(place.lowered.likely)} (${length(place.lowered.high)} at the permeable end of the estimates): ${loweringWords(place)}`
      }.`,
  );
  return [
    ...lowering,
    dischargeWords(drain.discharge, units),
    `A soakaway instead: ${soakawayWords(drain.soakaway, units)}.`,
    ...(drain.endless
      ? [
          `The ground lets water through: about ${flow(drain.endless.flow)} runs for ever, felt to ${length(drain.endless.felt)} from the pond.`,
        ]
      : []),
  ];
}
