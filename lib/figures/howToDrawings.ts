/** How to look into the ground, drawn with numbered parts; not to scale. */
import { type HowTo, howToWords } from '../text/howToLook.js';
import type { UnitSystem } from '../units/index.js';
import { box, FORM, framed, line, paint, path, words } from './drawing.js';
import { px } from './svgParts.js';

const WIDTH = FORM.narrow.width;
const HEIGHT = 190;
const GROUND = 56;

type Point = readonly [x: number, y: number];

/** A number in a ring, with a line to its part. */
function number(at: number, [x, y]: Point, part: Point): string {
  return `<path d="${path([[x, y], part])}" ${paint('edge')} stroke-width="1"/><circle cx="${px(x)}" cy="${px(y)}" r="10" ${paint('paper')}/><circle cx="${px(x)}" cy="${px(y)}" r="10" ${paint('edge')} stroke-width="1.5"/>${words({ rows: String(at), x, y: y + 5, size: 14, anchor: 'middle', bold: true })}`;
}

const shape = (tone: 'soil' | 'stone' | 'pond' | 'ring', points: readonly Point[]) =>
  `<path d="${path(points, true)}" ${paint(tone)}/>`;

/** Slots in the side of a pipe. */
const slots = (x: number, from: number, to: number) =>
  Array.from({ length: Math.floor((to - from) / 8) }, (_, at) =>
    line('edge', [x - 4, from + 4 + 8 * at], [x + 4, from + 4 + 8 * at], 2),
  ).join('');

function standpipe(): string {
  const [x, floor] = [150, 180];
  return [
    box('soil', 0, GROUND, WIDTH, HEIGHT - GROUND),
    box('stone', x - 22, 118, 44, floor - 118),
    `<path d="${path(
      [
        [x - 22, 118],
        [x - 22, GROUND],
        [x - 34, GROUND],
        [x - 10, GROUND - 10],
        [x + 10, GROUND - 10],
        [x + 34, GROUND],
        [x + 22, GROUND],
        [x + 22, 118],
      ],
      true,
    )}" ${paint('ring')}/>`,
    line('edge', [0, GROUND], [x - 34, GROUND], 2),
    line('edge', [x + 34, GROUND], [WIDTH, GROUND], 2),
    box('paper', x - 7, 18, 14, floor - 18),
    box('pond', x - 7, 100, 14, floor - 100),
    line('blue', [x - 7, 100], [x + 7, 100], 2.5),
    line('edge', [x - 7, 18], [x - 7, floor], 2),
    line('edge', [x + 7, 18], [x + 7, floor], 2),
    line('edge', [x - 7, floor], [x + 7, floor], 2),
    slots(x - 7, 132, floor),
    slots(x + 7, 132, floor),
    line('edge', [x - 11, 16], [x + 11, 16], 5),
    number(1, [80, 16], [x - 12, 16]),
    number(2, [230, 32], [x + 8, 34]),
    number(3, [80, 88], [x - 15, 88]),
    number(4, [80, 140], [x - 15, 140]),
    number(5, [230, 160], [x + 9, 160]),
    number(6, [230, 100], [x + 3, 101]),
  ].join('');
}

function dipPipe(): string {
  const bed: Point[] = [
    [0, 36],
    [74, 36],
    [123, 144],
    [248, 144],
    [297, 36],
    [328, 36],
  ];
  const liner: Point[] = [
    [66, 34],
    [74, 34],
    [124, 142],
    [247, 142],
    [296, 34],
    [328, 34],
  ];
  return [
    shape('soil', [...bed, [328, HEIGHT], [0, HEIGHT]]),
    shape('stone', [
      [112, 144],
      [176, 144],
      [168, 172],
      [122, 172],
    ]),
    box('pond', 128, 160, 40, 10),
    shape('pond', [
      [84, 56],
      [124, 142],
      [247, 142],
      [286, 56],
    ]),
    `<path d="${path([
      [48, 16],
      [60, 42],
      [112, 158],
      [160, 162],
    ])}" ${paint('edge')} stroke-width="9" stroke-linejoin="round"/>`,
    `<path d="${path([
      [48, 16],
      [60, 42],
      [112, 158],
      [160, 162],
    ])}" ${paint('erased')} stroke-width="5" stroke-linejoin="round"/>`,
    slots(126, 154, 170),
    slots(140, 154, 170),
    slots(154, 154, 170),
    `<path d="${path(liner)}" ${paint('edge')} stroke-width="3"/>`,
    line('edge', [40, 16], [57, 13], 5),
    number(1, [96, 14], [58, 14]),
    number(2, [40, 110], [84, 98]),
    number(3, [220, 110], [232, 141]),
    number(4, [220, 174], [172, 164]),
    number(5, [60, 174], [130, 165]),
  ].join('');
}

function ribbon(): string {
  const finger =
    '<path d="M40 150 C90 150 150 128 210 96 C232 84 248 104 232 118 C180 158 120 184 40 186 Z" ';
  const thumb = '<path d="M30 60 C80 52 130 58 176 76 C200 86 196 108 172 108 C120 106 80 104 30 108 Z" ';
  return [
    `${finger}${paint('not')}/>${finger}${paint('edge')} stroke-width="2"/>`,
    `<path d="M150 104 C190 88 220 76 246 90 C262 100 268 130 266 160 L256 160 C256 132 250 110 238 102 C216 92 190 104 160 120 Z" ${paint('ring')}/>`,
    `<path d="M96 112 C110 100 150 98 166 108 C174 118 150 132 118 138 C98 138 88 122 96 112 Z" ${paint('ring')}/>`,
    `${thumb}${paint('not')}/>${thumb}${paint('edge')} stroke-width="2"/>`,
    line('red', [282, 88], [282, 160], 1.5),
    line('red', [276, 88], [288, 88], 1.5),
    line('red', [276, 160], [288, 160], 1.5),
    number(1, [60, 132], [112, 124]),
    number(2, [110, 28], [120, 60]),
    number(3, [306, 124], [284, 124]),
  ].join('');
}

/** Ground that falls to the right, with the mark on the left. */
const slope = (mark: number) =>
  [
    shape('soil', [
      [0, 120],
      [328, 168],
      [328, HEIGHT],
      [0, HEIGHT],
    ]),
    line('edge', [0, 120], [328, 168], 2),
    box('stone', mark - 10, 108, 20, 20),
  ].join('');

function hose(): string {
  const tube = 'M54 34 L54 100 C54 132 90 136 160 142 C230 148 270 160 270 130 L270 34';
  const wet = 'M54 60 L54 100 C54 132 90 136 160 142 C230 148 270 160 270 130 L270 60';
  return [
    slope(32),
    `<path d="${tube}" ${paint('edge')} stroke-width="9"/>`,
    `<path d="${tube}" ${paint('erased')} stroke-width="6"/>`,
    `<path d="${wet}" ${paint('blue')} stroke-width="5"/>`,
    line('blue', [20, 60], [304, 60], 1.5, '5 4'),
    line('red', [32, 60], [32, 108], 1.5),
    line('red', [27, 60], [37, 60], 1.5),
    line('red', [27, 108], [37, 108], 1.5),
    line('red', [294, 60], [294, 162], 1.5),
    line('red', [289, 60], [299, 60], 1.5),
    line('red', [289, 162], [299, 162], 1.5),
    number(1, [76, 168], [36, 122]),
    number(2, [160, 110], [160, 140]),
    number(3, [160, 30], [160, 59]),
    number(4, [230, 96], [292, 110]),
  ].join('');
}

function laser(): string {
  return [
    slope(54),
    line('edge', [170, 70], [150, 140], 2.5),
    line('edge', [170, 70], [170, 143], 2.5),
    line('edge', [170, 70], [190, 146], 2.5),
    box('stone', 157, 50, 26, 20),
    `<rect x="157" y="50" width="26" height="20" ${paint('edge')} stroke-width="2"/>`,
    line('red', [20, 58], [304, 58], 1.5, '7 4'),
    line('edge', [54, 30], [54, 108], 4),
    line('edge', [280, 30], [280, 160], 4),
    number(1, [220, 100], [180, 72]),
    number(2, [120, 30], [120, 57]),
    number(3, [96, 92], [57, 92]),
    number(4, [310, 110], [283, 110]),
  ].join('');
}

const DRAWN: Record<HowTo, () => string> = {
  standpipe,
  'dip-pipe': dipPipe,
  ribbon,
  hose,
  laser,
};

/**
 * The drawing of something to be looked at or measured.
 * @param what is shown
 * @param units of its words
 * @returns SVG, 328 units wide
 */
export function howToDrawing(what: HowTo, units: UnitSystem): string {
  const { title, parts } = howToWords(what, units);
  const alt = [title, ...parts.map((part, at) => `${at + 1} ${part}`)].join('; ');
  return framed('narrow', HEIGHT, alt, DRAWN[what]());
}
