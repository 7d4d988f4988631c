/** The drain in one long profile: from the pond's floor to the water that takes it, with the level and the fall of every link. */
import type { Report } from '../contract/index.js';
import {
  drainProfileAlt,
  enoughFall,
  type FallCheck,
  type FloodCheck,
  fallState,
  profileFallWords,
  profileFloodWords,
  shortFallWords,
} from '../text/drainProfileWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import {
  box,
  type Drawing,
  FORM,
  foldedTo,
  framed,
  leading,
  line,
  paint,
  path,
  sign,
  words,
} from './drawing.js';
import { px } from './svgParts.js';

/** A point of the way down. */
interface Station {
  name: string;
  level: number;
}

/** Names of the lower ends of links. */
const ENDS: Record<string, (outlet: string) => string> = {
  bed: () => 'pipe at its head',
  pipe: () => 'pipe leaves the pond',
  run: (outlet) => `mouth at ${outlet}`,
  drop: () => 'water there as a rule',
};

interface Profile {
  stations: Station[];
  falls: FallCheck[];
  /** water at the outlet in flood, and that the floor stands above it */
  flood?: FloodCheck;
  run_m: number;
}

function profileOf({ drain, outlet }: Report): Profile | undefined {
  if (!drain || !outlet || drain.links.length === 0) return undefined;
  const way = drain.links.filter(({ link }) => link in ENDS);
  const flood = drain.links.find(({ link }) => link === 'flood');
  return {
    stations: [
      { name: 'floor of the pond', level: way[0]!.from },
      ...way.map(({ link, to }) => ({ name: ENDS[link]!(outlet.name), level: to })),
    ],
    falls: way.map(({ link, has, needs }) => ({ link, has, needs })),
    ...(flood ? { flood: { ...flood, level: flood.to } } : {}),
    run_m: outlet.distance_m,
  };
}

/**
 * The drain to an outlet as a profile; heights to scale, lengths not.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns for a desk and a phone; undefined where no drain runs to an outlet
 */
export function drainProfileFigure(report: Report, units: UnitSystem = report.units): Drawing | undefined {
  const profile = profileOf(report);
  if (!profile) return undefined;
  const alt = drainProfileAlt(profile, units);
  return { wide: wideSvg(profile, alt, units), narrow: narrowSvg(profile, alt, units), alt };
}

/** Room for the drawing itself, and beside it. */
const WIDE = { left: 20, right: 20, drop: 110 };

function wideSvg({ stations, falls, flood, run_m }: Profile, alt: string, units: UnitSystem): string {
  const { width, type } = FORM.wide;
  const room = (width - WIDE.left - WIDE.right) / stations.length;
  const x = (i: number) => WIDE.left + room * (i + 0.5);
  const names = stations.map(({ name }) => foldedTo(name, room - 16, type));
  const rows = Math.max(...names.map(({ length }) => length));
  const top = (rows + 1.4) * leading(type) + 12;
  const levels = [...stations.map(({ level }) => level), ...(flood ? [flood.level] : [])];
  const [high, low] = [Math.max(...levels), Math.min(...levels)];
  const y = (level: number) => top + 14 + ((high - level) / Math.max(high - low, 0.05)) * WIDE.drop;
  const foot = top + 14 + WIDE.drop + 30;
  const parts = stations.map(({ level }, i) => {
    const at = [x(i), y(level)] as const;
    return (
      line('rule', [x(i), top], [x(i), at[1] - 6], 1, '2 4') +
      words({
        rows: names[i]!,
        x: x(i),
        y: (rows - names[i]!.length + 1) * leading(type),
        size: type,
        anchor: 'middle',
      }) +
      words({
        rows: formatQuantity(level, 'level', units),
        x: x(i),
        y: (rows + 1) * leading(type),
        size: type,
        anchor: 'middle',
        bold: true,
      }) +
      `<circle cx="${px(at[0])}" cy="${px(at[1])}" r="5" ${paint('ink')}/>`
    );
  });
  const under = falls.map((fall, i) => {
    const middle = (x(i) + x(i + 1)) / 2;
    const told = [
      ...profileFallWords(fall, units),
      ...(i === falls.findIndex((_, at) => stations[at + 1]!.name.startsWith('mouth'))
        ? [`over ${formatQuantity(run_m, 'length', units)}`]
        : []),
    ];
    return (
      words({
        rows: told,
        x: middle,
        y: foot,
        size: type,
        anchor: 'middle',
        paint: fallState(fall) === 'lacking' ? 'fail' : 'ink',
      }) + fallSign(fall, middle - 9, foot - leading(type) - 18, 18)
    );
  });
  const water = flood
    ? line('blue', [x(stations.length - 2), y(flood.level)], [width - WIDE.right, y(flood.level)], 2, '8 5')
    : '';
  const way = `<path d="${path(stations.map(({ level }, i) => [x(i), y(level)] as const))}" ${paint('edge')} stroke-width="4" stroke-linejoin="round"/>`;
  const short = shortFallWords(falls);
  const notes = [
    ...(short ? [words({ rows: `${short}.`, x: WIDE.left, y: foot + 3.6 * leading(type), size: type })] : []),
    ...(flood
      ? [
          words({
            rows: `Dashed: ${profileFloodWords(flood, units)}.`,
            x: WIDE.left,
            y: foot + (short ? 4.8 : 3.6) * leading(type),
            size: type,
            paint: enoughFall(flood) ? 'ink' : 'fail',
          }),
        ]
      : []),
  ];
  return framed(
    'wide',
    foot + (short ? 5.4 : 4.2) * leading(type),
    alt,
    water + way + parts.join('') + under.join('') + notes.join(''),
  );
}

/** Whether a fall is enough; none for one that is short and counted. */
const fallSign = (fall: FallCheck, ...at: [x: number, y: number, size: number]): string => {
  const state = fallState(fall);
  return state === 'short' ? '' : sign(state === 'enough' ? 'holds' : 'fails', ...at);
};

/** A row a station, the falls between them. */
function narrowSvg({ stations, falls, flood, run_m }: Profile, alt: string, units: UnitSystem): string {
  const { width, type } = FORM.narrow;
  const parts: string[] = [];
  let y = leading(type);
  stations.forEach(({ name, level }, i) => {
    const fall = falls[i];
    const rows = foldedTo(name, width - 110, type, true);
    parts.push(box('stone', 2, y - type + 2, 8, 8));
    parts.push(words({ rows, x: 18, y, size: type, bold: true }));
    parts.push(
      words({
        rows: formatQuantity(level, 'level', units),
        x: width,
        y,
        size: type,
        anchor: 'end',
        bold: true,
      }),
    );
    y += rows.length * leading(type);
    if (!fall) return;
    const over = stations[i + 1]!.name.startsWith('mouth')
      ? ` over ${formatQuantity(run_m, 'length', units)}`
      : '';
    const [falls_, needs] = profileFallWords(fall, units);
    const told = foldedTo(`${falls_}${over}, ${needs}`, width - 50, type);
    parts.push(line('edge', [6, y - leading(type) + 2], [6, y + told.length * leading(type) - type + 2], 2));
    const lacking = fallState(fall) === 'lacking';
    parts.push(fallSign(fall, 18, y - type + 1, 13));
    parts.push(words({ rows: told, x: 38, y, size: type, paint: lacking ? 'fail' : 'ink' }));
    y += told.length * leading(type) + 6;
  });
  const short = shortFallWords(falls);
  if (short) {
    const told = foldedTo(short, width - 20, type);
    parts.push(words({ rows: told, x: 18, y: y + 4, size: type }));
    y += told.length * leading(type) + 4;
  }
  if (flood) {
    const told = foldedTo(profileFloodWords(flood, units), width - 40, type);
    y += 8;
    parts.push(sign(enoughFall(flood) ? 'holds' : 'fails', 0, y - type + 1, 13));
    parts.push(words({ rows: told, x: 18, y, size: type, paint: enoughFall(flood) ? 'ink' : 'fail' }));
    y += told.length * leading(type);
  }
  return framed('narrow', y, alt, parts.join(''));
}
