/** Invented surveys without a mistake, as different from each other as careful and careless people make them. */
import { mulberry32 } from '../../datasets/random.mjs';

/** A file as a header and rows of cells. */
export interface Sheet {
  header: string[];
  rows: string[][];
}
export type Sheets = Record<string, Sheet>;

/** Seeded choices. */
export class Dice {
  readonly uniform: () => number;
  constructor(seed: number) {
    this.uniform = mulberry32(seed);
  }
  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }
  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1));
  }
  chance(share: number): boolean {
    return this.uniform() < share;
  }
  one<T>(of: readonly T[]): T {
    return of[Math.floor(this.uniform() * of.length)] as T;
  }
}

export const textOf = ({ header, rows }: Sheet): string =>
  `${[header, ...rows].map((cells) => cells.map(quoted).join(',')).join('\n')}\n`;

const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

export const filesOf = (sheets: Sheets): Record<string, string> =>
  Object.fromEntries(Object.entries(sheets).map(([name, sheet]) => [name, textOf(sheet)]));

/** Lengths in the survey's unit, to a centimetre or a twentieth of a foot. */
type Tape = (metres: number) => string;
const metric: Tape = (metres) => String(Number(metres.toFixed(2)));
const feet: Tape = (metres) => String(Number((Math.round((metres / 0.3048) * 20) / 20).toFixed(2)));

/** A survey in which everything is right; the same seed gives the same one. */
export function correctSurvey(seed: number): Sheets {
  const dice = new Dice(seed);
  const us = dice.chance(0.3);
  const [tape, unit] = us ? [feet, 'ft'] : [metric, 'm'];
  const south = dice.chance(0.1);
  const depth = dice.between(0.6, 1.5);
  const pits = Array.from({ length: dice.whole(1, 3) }, (_, at) => ({
    name: `P${at + 1}`,
    bottom: depth + (dice.chance(0.9) ? dice.between(0.3, 1.6) : dice.between(-0.1, 0.2)),
  }));
  const high = dice.between(0.05, 0.8);
  const range = dice.between(0.4, 1.3);
  const ground = { dice, tape, unit, pits, high, range, south };
  return {
    'site.csv': {
      header: ['item', 'value', 'unit', 'note'],
      rows: [
        ['name', 'Generated Ground', '', 'invented'],
        ['latitude', String(south ? -dice.whole(30, 45) : dice.whole(40, 56)), 'deg', ''],
      ],
    },
    'pond.csv': {
      header: ['item', 'value', 'unit', 'note'],
      rows: [
        ['shape', 'box', '', ''],
        ['length', tape(Math.max(dice.between(2.5, 8), 3.2 * depth)), unit, ''],
        ['width', tape(Math.max(dice.between(2, 5), 3.2 * depth)), unit, ''], // a floor is left
        ['depth', tape(depth), unit, ''],
        ['side_slope', String(dice.one([0, 0.5, 1, 1.5])), '', ''],
      ],
    },
    'pits.csv': pitsSheet(ground),
    ...(dice.chance(0.7) && { 'water.csv': waterSheet(ground) }),
    ...(dice.chance(0.4) && { 'soakage.csv': soakageSheet(ground) }),
    ...(dice.chance(0.35) && { 'heads.csv': headsSheet(ground) }),
    ...(dice.chance(0.6) && { 'levels.csv': levelsSheet(ground) }),
  };
}

interface Ground {
  dice: Dice;
  tape: Tape;
  unit: string;
  pits: { name: string; bottom: number }[];
  high: number;
  range: number;
  south: boolean;
}

function pitsSheet({ dice, tape, unit, pits, high }: Ground): Sheet {
  const rows = pits.flatMap(({ name, bottom }) => {
    const topsoil = dice.between(0.2, 0.35);
    const single = dice.chance(0.1);
    const middle = dice.chance(0.5) ? dice.between(topsoil + 0.2, bottom - 0.1) : undefined;
    const ends = single ? [bottom] : [topsoil, ...(middle ? [middle] : []), bottom];
    return ends.map((end, at) => {
      const top = at === 0 ? 0 : (ends[at - 1] as number);
      const texture =
        at === 0 && !single ? 'clay loam' : dice.one(['clay', 'clay', 'silty clay', 'sandy clay']);
      const mottles = top > high + 0.1 ? dice.one(['many', 'grey', 'common', '']) : 'few';
      return [
        name,
        tape(top),
        tape(end),
        texture,
        dice.one(['blocky', 'massive', 'cracked']),
        mottles,
        dice.one(['firm', 'stiff']),
      ];
    });
  });
  return {
    header: ['pit', `top_${unit}`, `bottom_${unit}`, 'texture', 'structure', 'mottles', 'consistency'],
    rows,
  };
}

/** Metres to the highest water of a month. */
function waterIn(month: number, { high, range, south }: Ground): number {
  const late = south ? month + 6 : month;
  return high + (range * (1 - Math.cos(((late - 2) / 12) * 2 * Math.PI))) / 2;
}

function waterSheet(ground: Ground): Sheet {
  const { dice, tape, unit, pits } = ground;
  const everyRow = dice.chance(0.5);
  const sealed = dice.chance(0.5);
  const rows = pits.slice(0, 2).flatMap(({ name, bottom }) => {
    const floor = bottom * dice.between(0.65, 1.02);
    const intake = sealed ? tape(Math.max(floor - dice.between(0.3, 0.8), 0.45 * floor)) : '';
    const silted = (at: number) => tape(floor - Math.min(0.003 * at, 0.03));
    const months = Array.from({ length: dice.whole(4, 14) }, (_, at) => at);
    return [
      [
        name,
        '2023-09-10',
        '15:00',
        'opened',
        tape(floor),
        everyRow || dice.chance(0.5) ? tape(floor) : '',
        '10',
        intake,
      ],
      ...months.map((at) => {
        const date = new Date(Date.UTC(2023, 9 + at, 10 + dice.whole(0, 8)));
        const level = waterIn(date.getUTCMonth() + 1, ground) + dice.between(0, 0.15);
        const dry = level > floor - 0.02;
        const hole = everyRow || dry ? silted(at) : '';
        return [
          name,
          date.toISOString().slice(0, 10),
          '09:00',
          dry ? 'dry' : 'level',
          dry ? '' : tape(level),
          hole,
          '10',
          intake,
        ];
      }),
    ];
  });
  const header = [
    'pit',
    'date',
    'time',
    'reading',
    `depth_${unit}`,
    `hole_depth_${unit}`,
    'hole_diameter_cm',
    `open_from_${unit}`,
  ];
  return { header, rows };
}

function soakageSheet({ dice, tape, unit, pits }: Ground): Sheet {
  const rows = pits.slice(0, dice.whole(1, 2)).flatMap(({ name, bottom }) => {
    const hole = Math.min(dice.between(0.4, 1.1), bottom);
    const start = dice.chance(0.25) ? dice.between(0, 0.05) : Math.max(0.05, hole - dice.between(0.15, 0.5));
    const speed = Math.exp(dice.between(Math.log(5e-5), Math.log(5e-2)));
    return [0, 10, 30, 60, 120, 240].map((minutes) => {
      const level = (hole - start) * Math.exp(-speed * minutes);
      return [name, '1', String(minutes), tape(hole - level), tape(hole), '15', 'yes'];
    });
  });
  return {
    header: [
      'pit',
      'test',
      'minutes',
      `depth_to_water_${unit}`,
      `hole_depth_${unit}`,
      'hole_diameter_cm',
      'soaked_before',
    ],
    rows,
  };
}

function headsSheet(ground: Ground): Sheet {
  const { dice, tape, unit, pits, high } = ground;
  const deepest = Math.max(...pits.map(({ bottom }) => bottom));
  const place = dice.one(['site', 'P1']);
  const source = 'dips in a sealed pipe';
  const rows = dice.chance(0.25)
    ? [[place, 'high', tape(high), tape(0.1), source]]
    : Array.from({ length: 12 }, (_, at) => {
        const depth = Math.min(waterIn(at + 1, ground), deepest);
        return [place, String(at + 1), tape(depth), tape(0.1), source];
      });
  return { header: ['place', 'month', `depth_${unit}`, `spread_${unit}`, 'source'], rows };
}

function levelsSheet({ dice, tape, unit, pits }: Ground): Sheet {
  const rows = [
    ['A', 'rim', tape(0), tape(10)],
    ['B', 'rim', tape(0), tape(10 + dice.between(0, 0.2))],
    ...pits.map(({ name }) => [name, 'pit', tape(dice.between(0.5, 5)), tape(10 + dice.between(-0.1, 0.2))]),
    ['ditch', 'outlet', tape(dice.between(8, 40)), tape(dice.between(8, 9.5))],
  ];
  return { header: ['point', 'role', `distance_${unit}`, `level_${unit}`], rows };
}
