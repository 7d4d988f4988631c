/**
 * The invented dips: two sealed standpipes in the simulated water table, read by someone with a tape.
 *
 * A pipe follows the table with its time lag (Hvorslev 1951, a cylindrical intake):
 *   T = A / (F·K),  F = 2π·L / ln(2L/D),
 * A the pipe's inside area, L and D length and diameter of the sand-packed intake. The tape reads within
 * ±10 mm of the level (our choice).
 */

const SECONDS_A_DAY = 86400;
const READING_ERROR_M = 0.01;

/**
 * @typedef {object} Pipe
 * @property {string} pit
 * @property {number} floor m below ground
 * @property {number} openFrom m below ground
 * @property {number} holeDiameter m
 * @property {number} bore m
 * @property {number} ksat m/s
 * @property {number} offset m by which the table lies deeper here than in the simulated middle of the site
 */

/**
 * @param {Pipe} pipe
 * @returns {number} days in which the level makes good 63 % of a difference
 */
export function timeLag({ floor, openFrom, holeDiameter, bore, ksat }) {
  const length = floor - openFrom;
  const intake = (2 * Math.PI * length) / Math.log((2 * length) / holeDiameter);
  return (Math.PI * bore * bore) / 4 / (intake * ksat) / SECONDS_A_DAY;
}

/**
 * @param {Pipe} pipe
 * @param {Map<number, number>} tableDepths m below ground, by day number
 * @param {number} openedDay when the pipe was set, its hole empty
 * @param {number[]} dipDays in order
 * @param {() => number} uniform for the reading error
 * @returns {{ day: number, depth: number | undefined }[]} depth in m below ground; undefined: dry
 */
export function readPipe(pipe, tableDepths, openedDay, dipDays, uniform) {
  const follow = 1 - Math.exp(-1 / timeLag(pipe));
  const looks = [];
  let level = pipe.floor;
  for (let day = openedDay + 1; day <= dipDays[dipDays.length - 1]; day++) {
    const table = tableDepths.get(day) + pipe.offset;
    level = Math.min(pipe.floor, level + (table - level) * follow);
    if (!dipDays.includes(day)) continue;
    const read = level + READING_ERROR_M * (2 * uniform() - 1);
    looks.push({ day, depth: level < pipe.floor - READING_ERROR_M ? read : undefined });
  }
  return looks;
}
