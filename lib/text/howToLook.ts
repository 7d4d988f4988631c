/** How to look into the ground without a trade: parts, steps and where each comes from. */
import { formatQuantity, INCH, type UnitSystem } from '../units/index.js';

export const HOW_TO = ['standpipe', 'dip-pipe', 'ribbon', 'hose', 'laser'] as const;
/** Something that is shown by a drawing with numbered parts. */
export type HowTo = (typeof HOW_TO)[number];

/** Heights count upwards in the files, and downwards in the form where somebody measures down. */
const SIGN =
  'On the sheet and in levels.csv it has a minus, for heights count upwards; in the form, measured down, it has none.';

interface HowToWords {
  title: string;
  /** by the numbers in the drawing */
  parts: string[];
  steps: string[];
  source: string;
}

/**
 * What stands beside a drawing.
 * @param what is shown
 * @param units of the reader
 * @returns title, parts by their numbers, steps in order, and the source
 */
export function howToWords(what: HowTo, units: UnitSystem): HowToWords {
  const size = (metric: number, us: number) =>
    formatQuantity(units === 'us' ? us * INCH : metric, 'length', units);
  switch (what) {
    case 'standpipe':
      return {
        title: 'A sealed standpipe',
        parts: [
          'cap, loose enough to let air in',
          `plain pipe, ${size(0.03, 1.25)} or wider, standing ${size(0.3, 12)} above the ground`,
          'clay seal, heaped so that rain runs off',
          `sand or fine gravel to ${size(0.1, 4)} above the slots`,
          `slotted end, ${size(0.4, 16)}`,
          'the water, measured from the top of the pipe',
        ],
        steps: [
          'Bore the hole, stand the pipe in it with the slots at the bottom, and pour the sand in around them.',
          'Fill the rest with clay pellets, or kneaded clay rammed in small lumps, up to the ground. Without the seal you measure rain.',
          'Write down how high its top stands above the ground (pipe_top), how wide it is inside (pipe_bore), and how deep the sand begins (open_from).',
          'Scoop it empty once and let it fill again, days in clay, before the first look. Then measure with a tape that plops on the water.',
        ],
        source:
          'Common practice for open standpipes, as EN ISO 22475-1 has it (from memory); sizes are our choice.',
      };
    case 'dip-pipe':
      return {
        title: 'A dip pipe under the liner',
        parts: [
          'cap, above the highest water of the pond',
          'plain pipe up the side, outside the liner',
          'liner, whole: nothing goes through it',
          'slotted end in a handful of gravel, at the lowest point of the floor',
          'water under the liner, measured from the top of the pipe',
        ],
        steps: [
          'Lay it before the liner: the slotted end in a small hollow of gravel at the lowest point, wrapped so that no stone touches the liner.',
          'Bring it up the side in a shallow groove, straight enough for a tape or a thin rod.',
          'Level its top with the rim and write it in levels.csv; a look has dip-pipe as its hole in water.csv.',
          'Read it before you lower the pond, and every morning while the pond is low.',
        ],
        source: 'Common practice; the drawing is our own.',
      };
    case 'ribbon':
      return {
        title: 'Texture by feel: the ribbon',
        parts: [
          'a handful kneaded to putty, roots and stones out',
          'thumb, pushing forward',
          'ribbon over the finger, measured when it breaks',
        ],
        steps: [
          'Wet it drop by drop until it moulds like putty and hardly sticks.',
          'Push it up between thumb and finger into a ribbon of even thickness, and let it hang until it breaks by its weight.',
          `Shorter than ${size(0.025, 1)}: loam. To ${size(0.05, 2)}: clay loam. Longer: clay. No ribbon at all: sand or loamy sand.`,
          'Wet a pinch in the palm and rub: very gritty is sandy, very smooth is silty, neither is plain.',
        ],
        source: 'Thien 1979, J. Agronomic Education 8:54–55, its longest ribbon from memory.',
      };
    case 'hose':
      return {
        title: 'Levels with a hose',
        parts: [
          'the fixed mark, such as a doorstep or a peg',
          'clear hose, filled without bubbles',
          'the water: it stands at one level at both ends',
          'tape from the water straight down, at the mark and at the point',
        ],
        steps: [
          'Two people hold the ends up open; the hose must not be pinched. Wait until the water is still.',
          'Both measure at the same moment from the water down to the ground.',
          `What you measure at the point less what you measure at the mark is how far the point lies below the mark. ${SIGN}`,
          'Go to the next point from the same mark, and measure the first one again at the end: it must come out within a finger’s width.',
        ],
        source: 'Communicating water stands level; common practice.',
      };
    case 'laser':
      return {
        title: 'Levels with a laser',
        parts: [
          'line laser or turning laser, where it sees mark and points',
          'its beam, at one level all round',
          'stick held upright on the mark, with a tape along it',
          'the same stick on the point',
        ],
        steps: [
          'Set the laser up level and do not touch it again; by day use the receiver, at dusk the dot is seen.',
          'Read how high the beam stands above the ground, at the mark and at each point.',
          `What you read at the point less what you read at the mark is how far the point lies below the mark. ${SIGN}`,
          'Read the mark again at the end. Never look into the beam.',
        ],
        source: 'Levelling from one stand; common practice.',
      };
  }
}
