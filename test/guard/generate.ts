/**
 * Whole invented survey folders, as different as gardens are: clay, soft ground, sand, peat and fill; seams measured,
 * struck or only logged; floods, several outlets, houses with and without footings; long emptyings; five climates;
 * planned and existing ponds; metric and feet. The same seed gives the same bytes.
 *
 *   const { files, traits } = generatedGarden(17);   // files: name -> CSV text for parseSurvey
 *
 * `traits` names what the seed drew, for counting and for picking: `traits.includes('seam struck')`.
 */
import { Dice } from '../survey/generated.js';
import { CLIMATES, type Climate, climateCsv, fullness, weatherCsv } from './climate.js';
import { groundOf } from './ground.js';
import { headsCsv, looksCsv } from './looks.js';
import { placesOf } from './places.js';

export interface Garden {
  seed: number;
  files: Record<string, string>;
  traits: string[];
}

/** A length to a centimetre or a twentieth of a foot, with its unit. */
export interface Tape {
  unit: 'm' | 'ft';
  of(metres: number): string;
}
const METRIC: Tape = { unit: 'm', of: (metres) => String(Number(metres.toFixed(2))) };
const FEET: Tape = {
  unit: 'ft',
  of: (metres) => String(Number((Math.round((metres / 0.3048) * 20) / 20).toFixed(2))),
};

/** What the files of one garden share. */
export interface Plot {
  dice: Dice;
  tape: Tape;
  climate: Climate;
  traits: string[];
  /** of the pond, m; side slope horizontal to 1 */
  depth: number;
  length: number;
  width: number;
  slope: number;
  /** shallowest and deepest water of an ordinary year, m below ground */
  high: number;
  range: number;
  /** 0 to 1 by month */
  full: number[];
}

/** A survey folder without a mistake in it. */
export function generatedGarden(seed: number): Garden {
  const dice = new Dice(seed * 2654435761);
  const us = dice.chance(0.25);
  const climate = dice.one(CLIMATES);
  const traits = [climate.name, us ? 'us units' : 'metric'];
  const deep = dice.chance(0.08);
  const wet = dice.chance(0.6);
  const plot: Plot = {
    dice,
    tape: us ? FEET : METRIC,
    climate,
    traits,
    depth: deep ? dice.between(1.8, 3.5) : dice.between(0.5, 1.5),
    length: dice.between(2.5, 8),
    width: dice.between(2, 5),
    slope: dice.one([0, 0.2, 0.5, 1, 1, 1.5, 2]),
    high: wet ? dice.between(0, 0.4) : dice.between(0.4, 2.2),
    range: dice.between(0.3, 1.6),
    full: fullness(climate, dice.between(40, 120)),
  };
  const ground = groundOf(plot);
  const water = waterFiles(plot, ground);
  return {
    seed,
    traits,
    files: {
      'site.csv': siteCsv(plot, seed),
      'pond.csv': pondCsv(plot),
      'pits.csv': ground.csv,
      'levels.csv': placesOf(plot, ground),
      ...water,
    },
  };
}

function waterFiles(plot: Plot, ground: ReturnType<typeof groundOf>): Record<string, string> {
  const { dice, climate, traits, tape } = plot;
  const files: Record<string, string> = {};
  if (dice.chance(0.45)) {
    traits.push('weather');
    files['weather.csv'] = weatherCsv(climate, dice.whole(5, 9), tape.unit === 'ft', dice);
  }
  if (dice.chance(0.35)) {
    traits.push('climate');
    files['climate.csv'] = climateCsv(climate);
  }
  const looks = looksCsv(plot, ground, dice.chance(0.55));
  if (looks) files['water.csv'] = looks;
  const heads = headsCsv(plot, ground, dice.chance(0.45));
  if (heads) files['heads.csv'] = heads;
  return files;
}

type Fact = [item: string, value: string, unit: string];
const factsCsv = (facts: Fact[]) =>
  `item,value,unit,note\n${facts.map((cells) => `${cells.join(',')},`).join('\n')}\n`;

function siteCsv({ dice, tape, climate, traits }: Plot, seed: number): string {
  const area = (square: number): [string, string] =>
    tape.unit === 'ft' ? [(square / 0.3048 ** 2).toFixed(0), 'ft2'] : [square.toFixed(0), 'm2'];
  const said = (yes: number): string => (dice.chance(yes) ? 'yes' : dice.chance(0.7) ? 'no' : 'unknown');
  const facts: Fact[] = [
    ['name', `Invented Garden ${seed}`, ''],
    ['latitude', dice.between(...climate.latitude).toFixed(1), 'deg'],
    ['show_units', tape.unit === 'ft' ? 'us' : 'metric', ''],
    ['uphill_area', ...area(dice.chance(0.5) ? 0 : dice.between(10, 250))],
    ['uphill_cover', dice.one(['lawn', 'bare', 'paved', 'woodland']), ''],
    ['roof_area', ...area(dice.chance(0.8) ? 0 : dice.between(20, 90))],
    ['mains_power', said(0.7), ''],
    ['pump_acceptable', said(0.65), ''],
    ['discharge_allowed', said(0.75), ''],
    ['protected_ground', dice.chance(0.02) ? 'yes' : 'no', ''],
    ['wet_plants', dice.chance(0.1) ? 'yes' : 'no', ''],
    ['organic_smell', dice.chance(0.08) ? 'yes' : 'no', ''],
  ];
  if (dice.chance(0.25)) {
    traits.push('shrinkable clay');
    facts.push(['shrinkable_clay', 'yes', '']);
  }
  return factsCsv(facts);
}

function pondCsv(plot: Plot): string {
  const { dice, tape, traits, depth } = plot;
  const long = (item: string, metres: number): Fact => [item, tape.of(metres), tape.unit];
  const round = dice.chance(0.15);
  const facts: Fact[] = [
    ['shape', round ? 'round' : dice.one(['box', 'oval']), ''],
    long('length', plot.length),
    ...(round ? [] : [long('width', plot.width)]),
    long('depth', depth),
    ['side_slope', String(plot.slope), ''],
    long('water_above_rim_ground', dice.chance(0.5) ? dice.between(-0.2, 0) : dice.between(0.02, 0.3)),
    long('highest_raise', dice.chance(0.5) ? 0 : dice.between(0.1, 0.5)),
    long('usual_drawdown', dice.one([0.02, 0.05, 0.1, 0.2, 0.3])),
  ];
  if (dice.chance(0.5)) {
    traits.push('ring');
    facts.push(long('ring_width', dice.one([0.08, 0.1, 0.15, 0.25, 0.4])));
    facts.push(['ring_fill', dice.one(['topsoil', 'sand', 'gravel', 'clay']), '']);
    facts.push(['ring_cap', dice.chance(0.3) ? 'yes' : 'no', '']);
  } else facts.push(long('ring_width', 0));
  const bedding = dice.one(['none', 'none', 'sand', 'gravel', 'mat']);
  facts.push(['bedding', bedding, '']);
  if (bedding === 'sand' || bedding === 'gravel') facts.push(long('bedding_thickness', 0.1));
  const never = dice.chance(0.15);
  if (never) facts.push(['emptied_in', 'never', '']);
  else if (dice.chance(0.85))
    facts.push(['emptied_in', dice.chance(0.3) ? '3;9' : String(dice.whole(1, 12)), '']);
  if (!never) {
    const days = dice.chance(0.2) ? dice.whole(40, 240) : dice.whole(1, 14);
    if (days >= 40) traits.push('long emptying');
    facts.push(['days_empty', String(days), 'd']);
  }
  if (dice.chance(0.2)) {
    traits.push('existing');
    facts.push(['state', 'existing', '']);
  } else if (dice.chance(0.5)) {
    const month = dice.whole(1, 12);
    facts.push(['built_in', `${month};${(month % 12) + 1}`, '']);
  }
  if (dice.chance(0.08)) {
    facts.push(['ballast', dice.one(['slab', 'gravel']), ''], long('ballast_thickness', 0.1));
    traits.push('ballast');
  }
  return factsCsv(facts);
}
