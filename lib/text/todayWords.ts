import type { Report } from '../contract/index.js';
import { formatBound, formatGap, formatQuantity, type UnitSystem } from '../units/display.js';
import { monthName } from './monthWords.js';
/**
 * How far the pond may be lowered by the last look into the dip pipe, and by the month, in sentences.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns text
 */
export function todayWords(
  { lower_today: look, lower_by_reading, pond, result }: Report,
  units: UnitSystem,
): string {
  const level = (value: number) => formatQuantity(value, 'level', units);
  const lowest = (value: number) => formatBound(value, 'level', units, 'up');
  const full = pond.full_level_m + result.recommendation.raise_m;
  const below = (lowest: number) =>
    lowest >= full
      ? 'that is no lower than full: do not lower it'
      : `${formatBound(full - lowest, 'length', units, 'down')} below full`;
  const how =
    'Before every lowering read the dip pipe, add the row to water.csv (pit dip-pipe) and ask again, or keep to the level that the pond card has for the month.';
  if (!look)
    return `There is no reading of a dip pipe under the liner yet, so the level on the pond card holds. ${how}`;
  const { date, month, water_m, dry, lowest_m, month_lowest_m } = look;
  const seen = `On ${date} the dip pipe ${dry ? `was dry down to ${level(water_m)}` : `showed water at ${level(water_m)}`}.`;
  const answer =
    lowest_m === null
      ? `That day the pond could be emptied: stop and fill up ${fillWhen(lower_by_reading.stopped_above_m === null ? lower_by_reading.rise_m : 0, units)}.`
      : `That day the pond could be let down to ${lowest(lowest_m)}, ${below(lowest_m)}, and no further.`;
  const usual =
    month_lowest_m === null
      ? `Without a reading it could be emptied in ${monthName(month)}.`
      : `Without a reading the level for ${monthName(month)} is ${lowest(month_lowest_m)}, ${below(month_lowest_m)}.`;
  return `${seen} ${answer} ${usual} ${how}`;
}

/** When an emptied pond is to be filled again; the slab holds what is negative. */
function fillWhen(rise: number, units: UnitSystem): string {
  if (rise >= 0.01)
    return `when the water in it comes within ${formatGap(rise, units, 'up')} of the floor, for behind the uphill wall it stands so much higher`;
  return rise <= -0.01
    ? `before the water in it stands ${formatGap(-rise, units, 'down')} above the floor: the slab holds no more`
    : 'when water shows in it above the floor';
}

/**
 * Whether the pond may be lowered by a reading.
 * @param lowered - m below full; null: to the floor
 * @param units - how numbers are written
 * @param stopped - a drain lies there and would not let it stand so high
 * @param rise - of the water behind the uphill wall over that in the pipe, less what a slab holds, m
 * @returns sentences
 */
export function mayLower(lowered: number | null, units: UnitSystem, stopped: boolean, rise: number): string {
  if (lowered === null)
    return `Yes: it may be emptied. Read the pipe again every morning, and fill up ${fillWhen(rise, units)}.`;
  if (stopped)
    return lowered < 0.01
      ? 'No: water this high says that the drain has stopped. Keep the pond full to the brim and free the drain the same day.'
      : `Water this high says that the drain has stopped: free it first. Until it runs, no lower than ${formatGap(lowered, units, 'down')} below full.`;
  return lowered < 0.01
    ? 'No: keep it full.'
    : `Yes, but by no more than ${formatGap(lowered, units, 'down')} below full. Read the pipe again before you go on.`;
}
