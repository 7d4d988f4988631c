/** Survey files to fill in: what to ask for, in the units chosen, with remarks that the reader passes over. */
import { type OnceIn, POWER_CUT, UPKEEP } from '../heads/index.js';
import { FLOOD_EVERY } from '../site/index.js';
import { COVERS, SHAPES } from '../survey/index.js';
import { floodNote, onceInNote, powerCutNote } from '../text/keepingAsked.js';
import { depthsRemark, layerExample, soakageRemark } from '../text/surveyFileWords.js';
import type { UnitSystem } from '../units/index.js';

interface Question {
  item: string;
  /** filled in already where there is only one right answer */
  value?: string;
  unit?: 'length' | 'area' | 'deg' | 'years' | 'h';
  ask: string;
}

const SITE: Question[] = [
  { item: 'name', ask: 'what you call the place' },
  { item: 'latitude', unit: 'deg', ask: 'from a map; south of the equator with a minus' },
  { item: 'country', ask: 'two letters (GB / IE / US / DE ...): the rules an inspector checks by' },
  { item: 'uphill_area', unit: 'area', ask: 'ground that sheds its rain towards the pond' },
  { item: 'uphill_cover', ask: COVERS.join(' / ') },
  { item: 'roof_area', unit: 'area', ask: 'roof whose downpipe ends near the pond; 0 if none' },
  { item: 'roof_into_pond', unit: 'area', ask: 'roof whose downpipe runs into the pond itself; 0 if none' },
  { item: 'mains_power', ask: 'yes / no: a socket for a pump' },
  { item: 'pump_acceptable', ask: 'yes / no / unknown' },
  { item: 'discharge_allowed', ask: 'yes / no / unknown: may water be led to a ditch or sewer' },
  {
    item: 'flood_every',
    unit: 'years',
    ask: floodNote(FLOOD_EVERY),
  },
  {
    item: 'outlet_within_boundary',
    ask: 'yes / no / unknown: is the end of the drain on your side of the boundary',
  },
  { item: 'protected_ground', ask: 'yes / no / unknown: wetland or its buffer' },
];

/** How often a part of the drain fails, as somebody asks who has one. */
export const UPKEEP_ASKED: Record<OnceIn, string> = {
  drain_blocked_once_in: 'drain found blocked',
  flap_stuck_once_in: 'flap at its outlet found stuck',
  pump_out_once_in: 'both pumps out and nobody there',
  power_cut_once_in: 'power cut',
};
const onceIn = (item: OnceIn): Question => {
  const [years, kept] = UPKEEP[item];
  return {
    item,
    unit: 'years',
    ask: onceInNote(UPKEEP_ASKED[item], years, kept),
  };
};

const DRAIN: Question[] = [
  onceIn('drain_blocked_once_in'),
  onceIn('flap_stuck_once_in'),
  onceIn('pump_out_once_in'),
  {
    item: 'power_cut_hours',
    unit: 'h',
    ask: powerCutNote(POWER_CUT / 3600),
  },
  onceIn('power_cut_once_in'),
];

const POND: Question[] = [
  { item: 'depth', unit: 'length', ask: 'needed: the depth you wish, from the lowest ground at the rim' },
  { item: 'length', unit: 'length', ask: 'needed; of a round pond its diameter' },
  { item: 'width', unit: 'length', ask: 'needed, unless the pond is round' },
  { item: 'shape', ask: SHAPES.join(' / ') },
  { item: 'side_slope', ask: 'horizontal to 1 vertical: 0 upright, 1 at 45 degrees' },
  {
    item: 'water_above_rim_ground',
    unit: 'length',
    ask: 'full pond above the lowest ground at the rim; below it: minus',
  },
  { item: 'highest_raise', unit: 'length', ask: 'how much the rim may be raised; 0: it must stay' },
  { item: 'ring_width', unit: 'length', ask: 'loose fill between liner and cut clay; 0 if none' },
  { item: 'bedding', ask: 'none / sand / gravel / mat: what lies under the liner' },
  {
    item: 'kept_within',
    unit: 'length',
    ask: 'you top it up (hose, rain barrel, float valve) when it has fallen by so much; or never',
  },
  { item: 'overflow', ask: 'ring / away: where the rain goes when the pond is full' },
  { item: 'emptied_in', ask: 'months such as 3;9 in which it is emptied, or never' },
  { item: 'state', ask: 'planned / existing: whether it is there already' },
  { item: 'old_drain', ask: 'yes / no: whether a drain lies under the pond that is there' },
];

/** What the lists of quantities name, and how it is sold. */
const PRICED: [item: string, unit: 'm' | 'm2' | 'm3' | 'each' | 'h'][] = [
  ['liner', 'm2'],
  ['protection fleece', 'm2'],
  ['dip pipe', 'each'],
  ['edging', 'm'],
  ['sand', 'm3'],
  ['gravel', 'm3'],
  ['perforated pipe', 'm'],
  ['solid pipe', 'm'],
  ['pressure pipe', 'm'],
  ['couplings', 'each'],
  ['filter fabric', 'm2'],
  ['drainage fabric', 'm2'],
  ['drainage mat', 'm2'],
  ['inspection pipe', 'each'],
  ['flap valve', 'each'],
  ['animal guard', 'each'],
  ['flat stone', 'each'],
  ['sump chamber', 'each'],
  ['drainage pump', 'each'],
  ['non-return valve', 'each'],
  ['high-water alarm', 'each'],
  ['washed stone', 'm3'],
  ['concrete', 'm3'],
  ['spoil left', 'm3'],
  ['subsoil', 'm3'],
  ['digging by hand', 'h'],
];
const US_UNIT = { m: 'ft', m2: 'ft2', m3: 'yd3', each: 'each', h: 'h' };

/** Facts that come first, then those that may be left out, under a remark that says what empty means. */
function factsFile(title: string, first: Question[], remark: string, more: Question[], us: boolean): string {
  const units = { length: us ? 'ft' : 'm', area: us ? 'ft2' : 'm2', deg: 'deg', years: 'years', h: 'h' };
  const row = ({ item, value = '', unit, ask }: Question) =>
    `${item},${value},${unit ? units[unit] : ''},${/[,"]/.test(ask) ? `"${ask}"` : ask}`;
  return lines([`# ${title}`, 'item,value,unit,note', ...first.map(row), `# ${remark}`, ...more.map(row)]);
}

/**
 * The files of a new survey by name. Three are enough: site, pond, pits; those under `later/` are moved up when
 * there is something to write in them.
 * @param units in which they ask
 */
export function surveyTemplates(units: UnitSystem): Record<string, string> {
  const us = units === 'us';
  const [long, short] = us ? ['ft', 'in'] : ['m', 'cm'];
  const depths = depthsRemark(units);
  return {
    'site.csv': factsFile(
      'The place. Lines that begin with # are remarks. Write answers into the second column.',
      [{ item: 'show_units', value: units, ask: 'metric / us: the units of the answer' }, ...SITE],
      'How it is kept, should it get a drain. What you leave empty is taken as its note says; the answer lists it.',
      DRAIN,
      us,
    ),
    'pond.csv': factsFile(
      'The pond you wish. The first three are needed. Write answers into the second column.',
      POND.slice(0, 3),
      'What you leave empty is assumed; the answer lists it.',
      POND.slice(3),
      us,
    ),
    'pits.csv': lines([
      '# What spade or auger found. One row for each layer: from the ground to below the pond.',
      `# ${depths}`,
      '# texture: clay; silty clay; sandy clay; clay loam; loam; sandy loam; sand; peat; gravel; made ground ...',
      '# structure: massive; blocky; cracked; rooted. mottles: none; few; common; many; grey.',
      '# consistency by thumb: very soft; soft; firm; stiff; very stiff; hard.',
      `# ${layerExample(units)}`,
      `pit,top_${long},bottom_${long},texture,structure,mottles,consistency,note`,
    ]),
    'later/water.csv': lines([
      '# Looks into a hole or pipe. Move this file up, next to site.csv, when you have the first.',
      `# ${depths}`,
      '# reading: opened (the day it was dug; depth is its floor); level; dry; strike (first met while digging); bailed.',
      '# open_from: depth below which water can enter a sealed pipe; empty for an open hole.',
      `pit,date,time,reading,depth_${long},hole_depth_${long},hole_diameter_${short},pipe_bore_${short},open_from_${long},note`,
    ]),
    'later/soakage.csv': lines([
      '# How fast water sinks in a hole filled by bucket. Move this file up when you have made a test.',
      `# ${soakageRemark(units)}`,
      `pit,test,minutes,depth_to_water_${short},hole_depth_${short},hole_diameter_${short},soaked_before`,
    ]),
    'later/levels.csv': lines([
      '# Heights above any one fixed mark, by level, hose or string line. Two rim points are needed: its lowest and its highest ground.',
      '# role: rim; pit (point is its name); outlet; discharge (where a pump may lead its water); ditch; flood; spill; footing; boundary; house; neighbour-house ...',
      `point,role,distance_${long},level_${long},note`,
    ]),
    'later/prices.csv': lines([
      '# What a unit costs where you buy, in one money. The row with most words of a name in the lists wins:',
      '# sand is any sand, concrete sand that one only. Take the # from the rows you write a price in, and move this file up.',
      'item,unit,price',
      ...PRICED.map(([item, unit]) => `# ${item},${us ? US_UNIT[unit] : unit},`),
    ]),
    'later/climate.csv': lines([
      '# The ordinary year, by the month: ask a weather service for the means of the nearest station. Rain in all twelve.',
      '# et0 is what short grass would take (reference evapotranspiration); empty where tmean is given.',
      '# Move this file up when it is filled in. Daily weather of ten years or more is worth far more: weather.csv.',
      `month,rain_${us ? 'in' : 'mm'},tmean_${us ? 'f' : 'c'},et0_${us ? 'in' : 'mm'}`,
      ...Array.from({ length: 12 }, (_, at) => `${at + 1},,,`),
    ]),
  };
}

const lines = (all: string[]) => `${all.join('\n')}\n`;
