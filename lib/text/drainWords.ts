import type { SiteDrain } from '../contract/index.js';
import { SUMP_SIDE } from '../drain/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { bedWords } from './bedWords.js';
import { LINK_NAMES, MEASURE_NAMES, SOURCE_NAMES } from './drainNames.js';
import { neighbourWords } from './neighbourWords.js';
import { outletWords } from './outletWords.js';
import { type Say, sayer } from './say.js';
import { TASKS } from './upkeepWords.js';

/** What is known of a designed drain, in plain sentences. */
export interface DrainWords {
  /** where most of the water comes from, and what keeps it away */
  inflow: string;
  /** what a small hole in the liner would add */
  leak: string;
  weakest: string;
  /** absent where the fall to the outlet is as it must be */
  shortFall?: string;
  pipe: string;
  /** how the bed keeps the soil out; every other bed after it */
  bed: string;
  otherBeds: string[];
  /** net pressure under the emptied liner */
  relief: string;
  /** cover, frost, erosion and backwater; empty for a sump */
  outlet: string[];
  /** lowering, water that comes out, soakaway, flow without end */
  neighbours: string[];
  /** sump and power cut; absent for an outlet */
  power?: string;
  upkeep: string[];
}

/** Width of the hole in a liner that is reckoned with, m. */
const HOLE = 0.003;

const times = (ratio: number) => (ratio >= 100 ? 'over 100' : `${Number(ratio.toPrecision(2))}`);
const percent = (share: number) => `${Number((100 * share).toPrecision(2))} %`;
const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/**
 * A drain in plain sentences.
 * @param drain - of an assessment or a report
 * @param units - of the reader
 * @returns sentences by subject
 */
export function drainWords(drain: SiteDrain, units: UnitSystem): DrainWords {
  return {
    inflow: inflowWords(drain.governing, sayer(units)),
    leak: `A hole of ${sayer(units).bore(HOLE)} in the liner would add ${formatQuantity(drain.inflow.leak, 'flow', units)}: water that runs out in dry weeks is the sign.`,
    weakest: weakestWords({ link: drain.weakestLink, reserve: drain.reserve[drain.weakestLink] }),
    ...(drain.reserve.fall! < 1 ? { shortFall: shortFall(drain.reserve.fall!) } : {}),
    pipe: pipeWords(drain, units),
    bed: sentence(bedWords(drain.envelope)),
    otherBeds: otherBedWords(drain),
    relief: reliefWords(drain, units),
    outlet: drain.works ? outletWords(drain.works, sayer(units)) : [],
    neighbours: neighbourWords(drain, units),
    ...(drain.sump ? { power: powerWords(drain, units) } : {}),
    upkeep: drain.maintenance.map((task) => TASKS[task]),
  };
}

/** Where most of the water comes from, and what keeps it away above ground; storm water by the minute. */
export function inflowWords({ source, total, left }: SiteDrain['governing'], say: Say): string {
  const storm = source.source !== 'clay';
  const flow = (v: number) => (storm ? say.aMinute(v) : say.flow(v));
  const nearlyAll = source.likely > 0.95 * total.likely;
  const ends = `${flow(total.low)} to ${flow(total.high)}`;
  const most =
    `${nearlyAll ? 'Its' : 'Most of its'} water${storm ? ' in the design storm' : ''} is ${SOURCE_NAMES[source.source]}: ` +
    (nearlyAll
      ? `${flow(total.likely)} (${ends})`
      : `${flow(source.likely)} of ${flow(total.likely)} (all: ${ends})`);
  return source.measure
    ? `${most}. What keeps it away: ${MEASURE_NAMES[source.measure]}; ${flow(left)} is left then.`
    : `${most}; nothing above ground keeps it away.`;
}

/** Beds that would serve too in one sentence, then those that would not. */
function otherBedWords({ verdicts, bed }: SiteDrain): string[] {
  const others = verdicts.filter((v) => v.bed !== bed);
  const serve = others.filter((v) => v.retention >= 1);
  const sure = serve.filter((v) => !v.doubtful).map((v) => v.bed);
  const doubtful = serve.filter((v) => v.doubtful).map((v) => v.bed);
  return [
    ...(sure.length > 0 ? [`Would serve too: ${sure.join('; ')}.`] : []),
    ...(doubtful.length > 0
      ? [`Would keep it out but may clog in time, so fine is this ground: ${doubtful.join('; ')}.`]
      : []),
    ...others.filter((v) => v.retention < 1).map((v) => sentence(bedWords(v))),
  ];
}

/** A run that begins higher than the underside of the bed, for it would not have its fall from there. */
function shortFall(ratio: number): string {
  const share = ratio > 0 ? `${percent(ratio)} of what the pipe needs` : 'the pipe has none';
  return `The fall from the underside of the bed to the outlet is short: ${share}. Water stands in the bed until it has that fall, and is counted so in every depth and chance here; the pipe in the bed does not run empty: flush it every year.`;
}

/** The link with the least reserve. */
export function weakestWords({ link, reserve: ratio }: { link: string; reserve: number }): string {
  if (link === 'outlet in flood' && ratio < 1)
    return 'In flood the ditch stands higher than the water that the drain is to hold: a flap keeps it out, and nothing runs off until it falls.';
  if (link === 'fall' && ratio < 1) return shortFall(ratio);
  const name = LINK_NAMES[link] ?? link;
  return ratio < 1
    ? `The ${name} does not serve: it has ${percent(Math.max(ratio, 0))} of what it must.`
    : `The weakest link is the ${name}, ${times(ratio)} times what it must be.`;
}

function pipeWords({ pipe, smallest, totalInflow, cleansing, slope }: SiteDrain, units: UnitSystem): string {
  const { aMinute } = sayer(units);
  const carries = `${sentence(pipe.pipe.name)} carries ${aMinute(pipe.capacity)} if its wall is as rough as any, ${aMinute(pipe.most)} if it is smooth; ${aMinute(totalInflow)} must go through, a hole in the liner counted, so it serves ${times(pipe.times)} times over.`;
  const least =
    smallest && smallest.diameter < pipe.diameter
      ? ` ${sentence(smallest.pipe.name)} would carry it, ${times(smallest.times)} times over, but cannot be flushed and looked into.`
      : '';
  const clean =
    slope >= cleansing.silty
      ? ' It keeps itself clean at this fall.'
      : slope >= cleansing.filtered
        ? ' It keeps itself clean at this fall as long as no silt comes in.'
        : ' At this fall it does not keep itself clean: flush it every year.';
  return carries + least + clean;
}

function reliefWords({ netHead, pipesWithoutBed }: SiteDrain, units: UnitSystem): string {
  const length = (v: number) => formatQuantity(v, 'length', units);
  const { bed, lonePipe } = netHead;
  const worst = Math.max(bed.middle, bed.between, bed.edge, bed.walls);
  const floor = Math.max(lonePipe.middle, lonePipe.between, lonePipe.edge);
  const bedWords =
    worst <= 0
      ? `With this bed the water stays ${length(-worst)} below what would lift the empty liner, floor and sides alike.`
      : `Even with this bed the water presses the empty liner up by ${length(worst)}.`;
  if (floor <= 0 && lonePipe.walls <= 0) return bedWords;
  const alone =
    floor > 0
      ? `One pipe in the ground alone would leave ${length(floor)} pressing up at the edge of the floor`
      : 'One pipe in the ground alone would hold the floor down';
  const many =
    pipesWithoutBed === undefined || pipesWithoutBed === 1
      ? ''
      : `, ${pipesWithoutBed} pipes side by side would hold the floor`;
  return `${bedWords} ${alone}${many}${lonePipe.walls > 0 ? '; the sides it would not relieve at all' : ''}.`;
}

const BRIDGED =
  'A day without power, storm and all, is taken up by sump and bed at the inflow to expect; an alarm is enough.';
const SECOND_PUMP =
  'A power cut in a storm is not taken up: a second pump on a battery, and keep the pond full until it runs.';

function powerWords({ sump, sumpDepth, powerCut }: SiteDrain, units: UnitSystem): string {
  const { working, duty, energy, hoursStorm, filledByStorm, bridged, startsAnHour } = sump!;
  const least = powerCut?.reduce((a, b) => (a === null || (b !== null && b < a) ? b : a), null) ?? null;
  const hold = (hours: number) =>
    Number.isFinite(hours) ? formatQuantity(hours * 3600, 'time', units) : 'any time';
  const wet = least === null ? 'a year at least' : hold(least);
  const storm =
    filledByStorm >= 1
      ? `, after ${hold(hoursStorm)} in the design storm`
      : `; the design storm fills ${percent(filledByStorm)} of sump and bed and ends` +
        (Number.isFinite(hoursStorm)
          ? `, and the rest takes until ${hold(hoursStorm)} from its beginning`
          : '');
  const side = formatQuantity(SUMP_SIDE, 'length', units);
  return (
    `The sump is ${side} by ${side} and ${formatQuantity(sumpDepth!, 'length', units)} deep below the lowest ground. The pump moves ${formatQuantity(duty.flow * 60, 'volume', units)} a minute against ${formatQuantity(duty.head, 'length', units)} of lift and losses, ` +
    `starts at most ${startsAnHour} times an hour with ${formatQuantity(working, 'volume', units)} between start and stop, and uses about ` +
    `${Number(energy.toPrecision(2))} kWh a year. Without power the water reaches the liner after ${wet} in the wettest month${storm}. ${bridged ? BRIDGED : SECOND_PUMP}`
  );
}
