/** Direct labels of the section. */
import type { Report } from '../contract/report.js';
import { possibleOption } from '../contract/result.js';
import { monthShort } from '../text/monthWords.js';
import { fullSpareLabel, NOT_PUSHED_UP, pushedUpLabel } from '../text/sectionWords.js';
import { slabLabel } from '../text/slabWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { type FigureSize, folded, LABEL_SIZE, label, short, unbroken } from './layout.js';
import { ALARM, FAINT_INK, INK, WATER } from './palette.js';
import type { Section } from './sectionGeometry.js';
import { spread } from './spread.js';
import { plotText } from './visible.js';

/** Length of the line from a level to its name, px. */
export const LEADER = 14;

interface LevelName {
  z: number;
  text: string;
  color: string;
}

/** The levels that matter, with their names. */
export function levelNames(
  section: Section,
  report: Report,
  units: UnitSystem,
  size: FigureSize,
  water: { wet: number; dry: number; wetMonth: number; dryMonth: number; bottom: number },
): LevelName[] {
  const say = (words: string, z: number, color: string): LevelName => ({
    z,
    text:
      size === 'wide'
        ? `${words} ${formatQuantity(z, 'level', units)}`
        : `${words}<br>${formatQuantity(z, 'level', units)}`,
    color,
  });
  const flood = section.drained ? report.outlet?.flood_m : undefined;
  return [
    say('pond full', section.full, INK),
    say('usual lowest', section.lowest, INK),
    say(`water, wet ${monthShort(water.wetMonth)}`, water.wet, WATER),
    say(`water, dry ${monthShort(water.dryMonth)}`, water.dry, WATER),
    say('floor', section.floor, INK),
    ...(flood === null || flood === undefined ? [] : [say('ditch in flood', flood, ALARM)]),
  ].filter(({ z }) => z > water.bottom);
}

/** The names down the left side, moved apart. */
export function levelLabels(
  names: LevelName[],
  size: FigureSize,
  frame: { top: number; bottom: number; pixels: number },
): object[] {
  const y = (z: number) => (frame.top - z) * frame.pixels;
  const gap = LABEL_SIZE[size] * (size === 'wide' ? 1.35 : 2.6);
  const places = spread(
    names.map(({ z }) => y(z)),
    gap,
    2,
    y(frame.bottom) - 4,
  );
  return names.map(({ z, text, color }, at) => ({
    text,
    x: 0,
    xref: 'paper',
    y: short(z),
    ax: -LEADER,
    ay: places[at]! - y(z),
    showarrow: true,
    arrowhead: 0,
    arrowwidth: 0.75,
    arrowcolor: FAINT_INK,
    xanchor: 'right',
    align: 'right',
    font: { color },
  }));
}

/** How high the water outside would rise over the floor of an emptied pond, and what a full one has to spare. */
export function liftArrows(
  section: Section,
  { result }: Report,
  units: UnitSystem,
  size: FigureSize,
  pixels: number,
): object[] {
  const { floor, high, left, right } = section;
  const kept = section.lowest - section.raise;
  const width = right(floor) - left(floor);
  const middle = (left(floor) + right(floor)) / 2;
  const lift = high - floor;
  // Of the day that decides: a pond that rain fills does not stand at its lowest when the water outside is highest.
  const spare = section.raise + (possibleOption(result, 'no-drain')?.full.net_head_m.p10 ?? kept - high);
  const lifted = unbroken(formatQuantity(lift, 'length', units));
  const arrow = (x: number, from: number, to: number, color: string) => ({
    text: '',
    x: short(x),
    y: short(to),
    ax: short(x),
    ay: short(from),
    xref: 'x',
    yref: 'y',
    axref: 'x',
    ayref: 'y',
    showarrow: true,
    arrowhead: 2,
    arrowsize: 1,
    arrowwidth: 1.75,
    arrowcolor: color,
  });
  const words = (text: string, z: number, color: string) =>
    label(text, short(middle), short(z), {
      xanchor: 'center',
      align: 'center',
      bgcolor: 'rgba(255,255,255,0.72)',
      borderpad: 1,
      font: { color, size: LABEL_SIZE[size] - 0.5 },
    });
  const most = Math.max(12, Math.floor((0.72 * width * pixels) / (0.6 * LABEL_SIZE[size])));
  const { option, also } = result.recommendation;
  const keptOff = [option, ...also].some((name) => name === 'cutoff-drain' || name === 'surface-water-only');
  const undone = result.drain !== null ? 'drain' : keptOff ? 'all' : 'nothing';
  const pushed = lift > 0.01 ? pushedUpLabel(lifted, undone) : NOT_PUSHED_UP;
  const push = size === 'wide' ? folded(pushed.full, most) : pushed.short.join('<br>');
  const full = fullSpareLabel(spare, undone, units);
  return [
    ...(lift > 0.01
      ? [
          ...[-0.4, 0.4].map((part) => arrow(middle + part * width, floor, high, ALARM)),
          words(push, floor + 0.42 * lift, ALARM),
        ]
      : [words(push, floor + 0.3 * section.depth, WATER)]),
    label(
      size === 'wide' ? full.full : full.short,
      short(section.length / 2),
      short(Math.max(section.full, section.high)),
      {
        xanchor: 'center',
        yanchor: 'bottom',
        yshift: 2,
        font: { color: spare >= 0 ? WATER : ALARM, size: LABEL_SIZE[size] - 0.5 },
      },
    ),
  ];
}

/** Names of layers, ring and bed, where they lie. */
export function namesInside(
  section: Section,
  log: Report['result']['ground']['layers'],
  { pond, slab }: Report,
  {
    left,
    bottom,
    pixels,
    size,
    units,
  }: { left: number; bottom: number; pixels: number; size: FigureSize; units: UnitSystem },
): object[] {
  const font = LABEL_SIZE[size] - 1;
  const at = left + 0.08;
  const layers = log.flatMap(({ texture, top_m, bottom_m }) => {
    const top = section.ground(at) - top_m;
    const foot = Math.max(section.ground(at) - bottom_m, bottom);
    if ((top - foot) * pixels < font + 2) return [];
    return [
      label(
        size === 'wide' ? plotText(texture) : folded(plotText(texture), 7),
        short(at),
        short((top + foot) / 2),
        { font: { size: font } },
      ),
    ];
  });
  const ring =
    pond.ring_width_m > 0 && !section.drained
      ? [
          {
            text: size === 'wide' ? 'filled back' : 'filled<br>back',
            x: short(section.right(-0.35 * section.depth) + pond.ring_width_m / 2),
            y: short(-0.35 * section.depth),
            ax: 26,
            ay: 0,
            showarrow: true,
            arrowhead: 0,
            arrowwidth: 0.75,
            arrowcolor: FAINT_INK,
            xanchor: 'left',
            align: 'left',
            font: { size: font },
          },
        ]
      : [];
  const under = [
    ...(slab ? [slabLabel(slab, units)] : []),
    ...(section.bedThickness > 0 ? [section.drained ? 'drain bed and pipe' : 'bedding'] : []),
  ];
  const bed =
    under.length > 0
      ? [
          label(
            under.join(size === 'wide' ? '; ' : '<br>'),
            short(section.length / 2),
            short(section.floor - section.bedThickness),
            {
              xanchor: 'center',
              yanchor: 'top',
              yshift: -2,
              font: { size: font, color: INK },
            },
          ),
        ]
      : [];
  return [...layers, ...ring, ...bed];
}
