/** What changes for you next door, in sentences: where water comes out, how much, and what to look for. */

import type { NextDoor, Report } from '../contract/index.js';
import { NOTICEABLE } from '../drain/neighbours.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { FOOT } from '../units/index.js';
import { bucketWords, rainText } from './handy.js';
import { listText } from './sentence.js';

/** Who is spoken to. */
export const NEXT_DOOR_READER =
  'For whoever lives next to the pond. “You” is the neighbour; “the owner” is whoever digs the pond, minds it and mends it.';

export function nextDoorExit(door: NextDoor, units: UnitSystem): string {
  const { exit, boundary_m, overflow, downhill, held } = door;
  const size = (value: number) => formatQuantity(value, 'length', units);
  const boundary =
    boundary_m === null
      ? 'The survey has no point on the boundary, so no distance to it can be given: tape it before the works are agreed.'
      : `From the pond's edge to the boundary it is ${size(boundary_m)}.`;
  const over =
    overflow === 'away'
      ? 'What the full pond runs over with is led away by its overflow: ask to be shown where that ends.'
      : held
        ? 'What runs over the brim leaves at the lowest place of the raised edge.'
        : 'What runs over the brim leaves at the lowest ground of the rim, as before.';
  const from =
    exit.kind === 'brim'
      ? overflow === 'away'
        ? `No drain leads water away from under the pond. ${over}`
        : `No pipe leads water away. ${
            held
              ? 'When the pond is full, rain runs over the lowest place of its raised edge and down the outer side of it, where it did not run before.'
              : 'When the pond is full, rain runs over the lowest ground of its rim, as rain on that ground does now.'
          }`
      : exit.kind === 'outlet'
        ? `The drain's water comes out at ${exit.name}, ${size(exit.distance_m ?? 0)} from the pond${levelAt(exit, units)}. ${over}`
        : exit.kind === 'cutoff'
          ? `A trench uphill of the pond, a cut-off drain, catches water in the ground; its pipe comes out at ${exit.name}, ${size(exit.distance_m ?? 0)} from the pond${levelAt(exit, units)}. ${over}`
          : `The drain's water is pumped to ${exit.name}, ${size(exit.distance_m ?? 0)} from the pond. ${over}`;
  const way =
    exit.kind === 'brim' || exit.to_boundary_m === null
      ? ''
      : ` From ${exit.name} to the boundary it is ${size(exit.to_boundary_m)}.`;
  const houses = downhill.map(
    (house) => `${placeName(house)}, ${size(house.distance_m)} from the pond, by ${size(house.below_m)}`,
  );
  const lower =
    houses.length === 0
      ? ''
      : ` Lower than ${held ? 'the full pond' : 'where the water leaves'} ${houses.length > 1 ? 'stand' : 'stands'} ${listText(houses)}: walk the way that the water would take together, and agree how it is led past before anything is dug.`;
  return [from + way, heldWords(door, units), boundary + lower].filter(Boolean).join(' ');
}

/** A house by whose it is, with its name in the survey; else the boundary. */
function placeName({ name, neighbour }: { name: string; neighbour: boolean | null }): string {
  return neighbour === null
    ? `the ${name}`
    : `${neighbour ? 'the house next door' : "the house of the pond's owner"} (${name})`;
}

/** Water that stands above the ground, and where it would go; empty where none does. */
function heldWords({ held, downhill }: NextDoor, units: UnitSystem): string {
  if (!held) return '';
  const high = formatQuantity(held.above_m, 'length', units);
  const houses = downhill.length > 0 ? `, and on towards ${listText(downhill.map(placeName))}` : '';
  return `The water of the full pond stands ${high} above the lowest ground beside it; a bank, frame or wall holds it there. If that gave way, up to about ${inBuckets(held.volume_m3, units)} would run out within minutes, first over the lowest ground at the rim${houses}. Whether it is strong enough has not been checked here: ask who designed it.`;
}

const levelAt = ({ level_m }: NextDoor['exit'], units: UnitSystem) =>
  level_m === null ? '' : `, at ${formatQuantity(level_m, 'level', units)} from the lowest ground at the rim`;

export function nextDoorFlow({ exit, storm }: NextDoor, units: UnitSystem): string {
  if (storm.drain === null) return uphillFlow(storm, units);
  const more = (storm.brim + storm.drain - storm.before) * storm.seconds;
  const change =
    more > 0
      ? `In the storm that is ${formatQuantity(more, 'volume', units)} more than before: a full pond holds back nothing. The owner of the pond keeps the brim low on the side away from you, or spreads the overflow over grass.`
      : `In the storm that is ${formatQuantity(-more, 'volume', units)} less than before.`;
  const drain =
    exit.kind === 'brim'
      ? ''
      : " The drain's water is not new water: it seeped away over the slope before, and now comes to one point. It is given for the highest water of one year in ten, with the high end of the estimates beside it; most days bring less, dry weeks none. A hole in the liner adds to it.";
  return `${change}${drain}`;
}

/** A distance beyond which something is felt by nobody, in whole metres or feet up. */
function wholeUp(metres: number, units: UnitSystem): string {
  return units === 'us' ? `${Math.ceil(metres / FOOT)} ft` : `${Math.ceil(metres)} m`;
}

/** Where the drain is a trench uphill: only what goes over the brim is known. */
function uphillFlow({ brim, before, seconds }: NextDoor['storm'], units: UnitSystem): string {
  const more = (brim - before) * seconds;
  const change = `${formatQuantity(Math.abs(more), 'volume', units)} ${more > 0 ? 'more' : 'less'} than before`;
  return (
    `In the storm ${change} goes over the brim; how much the cut-off drain brings besides is not known yet. ` +
    'Its water is not new water: it seeped away over the slope before, and now comes to one point. Look at its mouth in the first wet winter and write down how long it takes to fill a bucket.'
  );
}

export function nextDoorGround({ next_door: { lowered, felt_m, exit } }: Report, units: UnitSystem): string {
  const size = (value: number) => formatQuantity(value, 'length', units);
  if (exit.kind === 'brim')
    return 'Your ground gets neither wetter nor drier from below: the liner keeps the pond in, and nothing draws the water down.';
  if (exit.kind === 'cutoff')
    return 'Your ground gets no wetter from below; the trench uphill of the pond draws down the water in the ground beside it. How far from the trench that reaches is not known yet: measure the cracks in walls and paving near it before it is dug.';
  const reach =
    felt_m === null || felt_m <= 0
      ? 'The drain does not lower the water in the ground.'
      : `Your ground gets no wetter from below; the drain makes the ground beside the pond drier. Farther than ${wholeUp(felt_m, units)} from the pond nobody could tell it from the weather (${size(NOTICEABLE)} at the permeable end of the estimates).`;
  const [told, nothing] = [true, false].map((felt) =>
    lowered.filter(({ most_m }) => most_m >= NOTICEABLE === felt),
  );
  const places = told!.map(
    (place) =>
      `At ${placeName(place)}, ${size(place.distance_m)} away, the water in the ground is lower by about ${size(place.likely_m)} (${size(place.most_m)} at the permeable end of the estimates): ${place.words}.`,
  );
  const beyond = nothing!.length > 0 ? [`At ${listText(nothing!.map(placeName))} nobody can tell.`] : [];
  return [reach, ...places, ...beyond].join(' ');
}

export function nextDoorTroubles(
  { next_door: { exit, held }, outlet, result }: Report,
  units: UnitSystem,
): string[] {
  const brim =
    'The outlet of the overflow is blocked by leaves: water leaves over the next lowest rim instead. The owner clears it in autumn.';
  const bank = held
    ? [
        `The bank, frame or wall round the pond gives way: up to about ${formatQuantity(held.volume_m3, 'volume', units)} of water comes out within minutes. Keep people, above all children, away from below it.`,
      ]
    : [];
  if (exit.kind === 'brim')
    return [
      ...bank,
      brim,
      `A torn liner: the pond falls to the level of the water in the ground around it; no more water reaches you than the pond holds.${held ? ' What runs out above the ground softens the bank.' : ''}`,
    ];
  const flood =
    exit.kind !== 'sump'
      ? [
          `The ${outlet?.flood_m == null ? 'receiving water' : 'ditch'} in flood: the flap closes, the drain waits, and nothing extra comes out until the flood is over.`,
        ]
      : [
          'The power fails: the pump stops and nothing comes out; water stands under the liner, and the pond is kept full until the pump runs again.',
        ];
  return [
    ...bank,
    `The pipe blocks: nothing comes out any more; the water stands ${exit.kind === 'cutoff' ? 'behind the uphill side of the pond' : 'in the bed under the liner'}, and the ground beside it goes back to what it was before.`,
    ...flood,
    `The liner is holed: ${result.drain ? 'pond water runs out of the drain in dry weather, little by little' : 'the pond falls'}; the owner stops topping up and finds the hole.`,
    brim,
  ];
}

export function nextDoorSigns({ next_door: { exit, held } }: Report): string[] {
  return [
    'Ground that stays wet at the fence a week after rain, where it did not before.',
    ...(held
      ? [
          'Wet places, cracks, holes of animals or sinking earth on the outer side of what holds the pond: tell the owner the same day.',
        ]
      : []),
    ...(exit.kind === 'brim'
      ? []
      : [
          `Water running at ${exit.name} in a dry week: the liner ${exit.kind === 'cutoff' ? 'may leak, or a spring feeds the trench' : 'leaks'}.`,
          'Cloudy water or mud at the mouth: the filter fails and soil is being washed out.',
          'Rust-coloured slime at the mouth: iron in the water; it can close the pipe.',
          'Bare or washed-out earth below the mouth: the flow needs flat stones to spread it.',
        ]),
    `Cracks in walls or paving that open in summer${exit.kind === 'brim' ? '' : ' after the drain was laid'}: ${listText(['measure them', 'date them', 'tell the owner'])}.`,
  ];
}

/** That the rim is raised; empty where it is not. */
export function nextDoorRim({ result: { recommendation } }: Report, units: UnitSystem): string {
  return recommendation.raise_m > 0
    ? `The rim is raised by ${formatQuantity(recommendation.raise_m, 'length', units)}: the old ground beside it stays open as the way for water.`
    : '';
}

/** A volume, and what it is in buckets. */
export function inBuckets(volume: number, units: UnitSystem): string {
  return `${formatQuantity(volume, 'volume', units)} (${bucketWords(volume, units)})`;
}

/** An amount with the high end of its estimates. */
export function highEnd(amount: string, high: string): string {
  return `${amount}; high end ${high}`;
}

/** The storm that is reckoned with. */
export function stormWords({ rain_m, seconds, named }: NextDoor['storm'], units: UnitSystem): string {
  return `storm of ${rainText(rain_m, units)} in ${formatQuantity(seconds, 'time', units)}${named ? '' : ' (assumed)'}`;
}
