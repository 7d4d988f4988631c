/** What depths of one column belong beside, and within which ratio of each other the two are ordinary. */

import { atMost, between, bottomsOf, type Comparison, pair } from './comparison.js';
import { headComparisons } from './headComparisons.js';
import type { LayerRow, Look, SoakageLook, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Deeper than this few holes are dug or augered by hand, m; common practice. */
const BY_HAND = 4.5;
/** More water than this is seldom carried to a soakage test, m above its floor; common practice. */
const BY_BUCKET = 1.2;
/** A test hole shallower than this tests the topsoil, m; common practice. */
const TOPSOIL = 0.25;
/** A pipe is sealed against the rain to this share of the hole, or to this depth where that is less, m; common practice. */
const SLOTTED = { share: 0.27, depth: 0.45 };

/** Every comparison a survey allows; limits are common practice, wide enough for a careless but right survey. */
export function depthComparisons(survey: Survey): Comparison[] {
  return [...ofLogs(survey), ...ofHoles(survey), ...ofTests(survey), ...headComparisons(survey)];
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
  // The floor a hole was opened to is carried on to later looks and says nothing new.
  const ownFloor = (look: Look) => (look.holeDepth === floors.get(look.pit) ? undefined : look.holeDepth);
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
      pairs: beside(ownFloor, (look) => floors.get(look.pit)),
      say: (value, floor) => `a hole is ${value} deep that was opened to ${floor}`,
    },
    {
      ...water('hole_depth'),
      ...between(0.42, 1.6),
      pairs: beside(ownFloor, (look) => logged.get(look.pit)),
      say: (value, log) => `a hole is ${value} deep that pits.csv logs to ${log}`,
    },
    {
      ...water('open_from'),
      ...between(1, Number.POSITIVE_INFINITY),
      pairs: beside(
        (look) => look.openFrom,
        ({ holeDepth }) => holeDepth && Math.min(SLOTTED.share * holeDepth, SLOTTED.depth),
      ),
      say: (value, limit) =>
        `water can enter a pipe from ${value} down, in such a hole it is kept out to ${limit} and more`,
    },
    {
      ...water('open_from'),
      ...between(0, 1),
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
      ...between(1, Number.POSITIVE_INFINITY),
      pairs: soakage.map((look) => pair(look.holeDepth, TOPSOIL, look)),
      say: (value, limit) => `a test hole is ${value} deep, above ${limit} it tests the topsoil`,
    },
    {
      ...soak('hole_depth'),
      ...between(0, 1.6),
      pairs: soakage.map((look) => pair(look.holeDepth, logged.get(look.pit), look)),
      say: (value, log) => `a test hole is ${value} deep that pits.csv logs to ${log}`,
    },
  ];
}
