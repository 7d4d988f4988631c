/** What depths of one column belong beside, and within which ratio of each other the two are ordinary. */

import { calendarOf } from '../climate/index.js';
import type { HeadRow, LayerRow, Look, Origin, SoakageLook, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Deeper than this few holes are dug or augered by hand, m; common practice. */
const BY_HAND = 4.5;
/** More water than this is seldom carried to a soakage test, m above its floor; common practice. */
const BY_BUCKET = 0.9;
/** The grey of a soil lies at most this far above the water that made it, m; our choice. */
const COLOUR_SLACK = 0.5;

/** A depth beside what it belongs to; both m. */
export interface Pair {
  value: number;
  beside: number;
  origin: Origin;
}

/** A column held against something; ratios from `least` to `most` are ordinary. */
export interface Comparison {
  file: string;
  column: string;
  pairs: Pair[];
  least: number;
  most: number;
  /** what decides: the middle of the ratios, or the largest of them */
  by: 'middle' | 'largest';
  /** the finding, from the two lengths in words */
  say: (value: string, beside: string) => string;
}

/** Every comparison a survey allows; limits are common practice, wide enough for a careless but right survey. */
export function depthComparisons(survey: Survey): Comparison[] {
  return [...ofLogs(survey), ...ofHoles(survey), ...ofTests(survey), ...ofHeads(survey)];
}

function ofLogs({ layers, pond }: Survey): Comparison[] {
  const column = { file: 'pits.csv', column: 'bottom' };
  const deepest = layers.reduce<LayerRow[]>(
    (best, layer) => (layer.bottom > (best[0]?.bottom ?? 0) ? [layer] : best),
    [],
  );
  return [
    {
      ...column,
      ...atMost(1),
      pairs: layers.map((layer) => pair(layer.bottom, BY_HAND, layer)),
      say: (value, beside) => `a layer ends at ${value}, few holes are dug deeper than ${beside} by hand`,
    },
    {
      ...column,
      ...between(0.7, Number.POSITIVE_INFINITY),
      pairs: deepest.map((layer) => pair(layer.bottom, pond.depth, layer)),
      say: (value, beside) =>
        `the deepest log ends at ${value}, so nothing is known below it, and the pond is to be ${beside} deep`,
    },
  ];
}

function ofHoles({ layers, looks }: Survey): Comparison[] {
  const logged = bottomsOf(layers);
  const holes = looks.filter((look) => isNamedHole(look.pit));
  const opened = holes.filter((look) => look.reading === 'opened');
  const floors = new Map(opened.map((look) => [look.pit, look.depth]));
  const water = (column: string) => ({ file: 'water.csv', column });
  const beside = (depth: (look: Look) => number | undefined, other: (look: Look) => number | undefined) =>
    holes.map((look) => pair(depth(look), other(look), look));
  return [
    {
      ...water('depth'),
      ...between(0.42, 1.6),
      pairs: opened.map((look) => pair(look.depth, logged.get(look.pit), look)),
      say: (value, log) => `a hole was opened to ${value}, pits.csv logs it to ${log}`,
    },
    {
      ...water('depth'),
      ...atMost(1.3),
      pairs: beside(
        (look) => look.depth,
        (look) => look.holeDepth,
      ),
      say: (value, floor) => `water was met at ${value} in a hole of ${floor}`,
    },
    {
      ...water('depth'),
      ...atMost(1),
      pairs: beside(
        (look) => look.depth,
        () => BY_HAND,
      ),
      say: (value, limit) => `${value} was reached, few holes are dug deeper than ${limit} by hand`,
    },
    {
      ...water('hole_depth'),
      ...between(0.6, 1.7),
      pairs: beside(
        (look) => look.holeDepth,
        (look) => floors.get(look.pit),
      ),
      say: (value, floor) => `a hole is ${value} deep that was opened to ${floor}`,
    },
    {
      ...water('hole_depth'),
      ...between(0.42, 1.6),
      pairs: beside(
        (look) => look.holeDepth,
        (look) => logged.get(look.pit),
      ),
      say: (value, log) => `a hole is ${value} deep that pits.csv logs to ${log}`,
    },
    {
      ...water('open_from'),
      ...between(0.27, 1),
      pairs: beside(
        (look) => look.openFrom,
        (look) => look.holeDepth,
      ),
      say: (value, floor) => `water can enter a pipe from ${value} down, and the hole is ${floor} deep`,
    },
  ];
}

function ofTests({ layers, soakage }: Survey): Comparison[] {
  const logged = bottomsOf(layers);
  const standing = ({ holeDepth = 0, depthToWater }: SoakageLook) => holeDepth - depthToWater;
  const soak = (column: string) => ({ file: 'soakage.csv', column });
  return [
    {
      ...soak('depth_to_water'),
      ...atMost(1.1),
      pairs: soakage.map((look) => pair(look.depthToWater, look.holeDepth, look)),
      say: (value, floor) => `water stood at ${value} in a test hole of ${floor}`,
    },
    {
      ...soak('hole_depth'),
      ...atMost(1),
      pairs: soakage.map((look) => pair(standing(look), BY_BUCKET, look)),
      say: (value, limit) =>
        `the test began with ${value} of water above the floor, a bucket fills seldom more than ${limit}`,
    },
    {
      ...soak('hole_depth'),
      ...between(0, 1.6),
      pairs: soakage.map((look) => pair(look.holeDepth, logged.get(look.pit), look)),
      say: (value, log) => `a test hole is ${value} deep that pits.csv logs to ${log}`,
    },
  ];
}

function ofHeads({ heads, looks, layers }: Survey): Comparison[] {
  const shallow = heads.filter((head) => !head.place.startsWith('below:'));
  const reach = Math.max(0, ...bottomsOf(layers).values(), ...looks.map((look) => look.holeDepth ?? 0));
  const column = { file: 'heads.csv', column: 'depth' };
  const grey = layers.filter(({ mottles }) => mottles === 'many' || mottles === 'grey');
  const colour = Math.min(...grey.map((layer) => layer.top));
  const highest = shallow.reduce<HeadRow[]>(
    (best, head) => (head.depth < (best[0]?.depth ?? Number.POSITIVE_INFINITY) ? [head] : best),
    [],
  );
  return [
    {
      ...column,
      ...atMost(1.1),
      pairs: shallow.map((head) => pair(head.depth, reach, head)),
      say: (value, hole) => `water is known at ${value}, the deepest hole of the survey ends at ${hole}`,
    },
    {
      ...column,
      ...between(0.35, 1.7),
      pairs: sameMonth(shallow, looks),
      say: (value, seen) => `water is given at ${value} for a month in which it was seen at ${seen}`,
    },
    {
      ...column,
      ...atMost(1),
      pairs: grey.length > 0 ? highest.map((head) => pair(head.depth, colour + COLOUR_SLACK, head)) : [],
      say: (value) =>
        `water never comes above ${value}, the soil is grey or heavily mottled from ${Number(colour.toPrecision(3))} m down`,
    },
  ];
}

/** Known levels beside looks of the same month, of the same place or of the site. */
function sameMonth(heads: HeadRow[], looks: Look[]): Pair[] {
  return heads.flatMap((head) =>
    looks
      .filter(({ reading, day }) => reading === 'level' && calendarOf(day).month === head.month)
      .filter(({ pit }) => isNamedHole(pit) && (pit === head.place || head.place === 'site'))
      .map((look) => pair(head.depth, look.depth, head)),
  );
}

function bottomsOf(layers: LayerRow[]): Map<string, number> {
  const bottoms = new Map<string, number>();
  for (const { pit, bottom } of layers) bottoms.set(pit, Math.max(bottom, bottoms.get(pit) ?? 0));
  return bottoms;
}

const atMost = (most: number) => ({ least: 0, most, by: 'largest' }) as const;
const between = (least: number, most: number) => ({ least, most, by: 'middle' }) as const;

/** One that lacks a side counts for nothing. */
function pair(value = 0, beside = 0, { origin }: { origin: Origin }): Pair {
  return { value, beside, origin };
}
