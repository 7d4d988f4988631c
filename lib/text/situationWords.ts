/** How long a situation lasts, what is to spare in it and which water decides, in a few words. */

import { formatGap, type UnitSystem } from '../units/display.js';
import { oftenText } from './say.js';
import { WATER_NAMES } from './terms.js';
/** Whole days, or hours below two days, never more than the time is. */
export function timeWords(hours: number): string {
  if (hours < 1) return 'less than 1 hour';
  const days = hours >= 48 || Math.abs(hours - 24) < 1e-6;
  const size = Math.floor((days ? hours / 24 : hours) + 1e-6);
  return `${size} ${days ? 'day' : 'hour'}${size === 1 ? '' : 's'}`;
}

/** How long only. */
export function brieflyWords(hours: number | null): string {
  return hours === null ? 'Only as long as planned' : `Only for ${timeWords(hours)}`;
}

/** How long only, within a sentence. */
export function onlyWords(hours: number | null): string {
  return brieflyWords(hours).toLowerCase();
}

/**
 * What is to spare or lacks, rounded so that it never looks safer.
 * @param margin - that the water may rise before something fails, m
 * @param units system of the number
 * @returns such as `17 cm to spare`
 */
export function spareWords(margin: number, units: UnitSystem): string {
  const size = formatGap(Math.abs(margin), units, margin < 0 ? 'up' : 'down');
  if (margin < -1e-4) return `${size} too high`;
  return /[1-9]/.test(size) && margin > 1e-4 ? `${size} to spare` : 'nothing to spare';
}

/** The water that decides, in words. */
export function decidingWater(which: keyof typeof WATER_NAMES): string {
  return `water ${WATER_NAMES[which]}`;
}

/** A situation that is allowed though water may stand too high in it. */
export function rareEnough(chance: number): string {
  return `rare enough: it fails ${oftenText(chance)}`;
}

/** That it is to be full again within hours. */
export function fillAgain(hours: number): string {
  return `Fill it again within ${timeWords(hours)}.`;
}
