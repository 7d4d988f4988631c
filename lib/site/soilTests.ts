import { method, SECONDS_PER_DAY } from '../formula/index.js';
import { bailedRecoveryTest } from '../seepage/index.js';
import {
  augerHoleTest,
  FieldTestError,
  fallingHoleTest,
  type PermeabilityTest,
  type Structure,
  sorptiveNumber,
} from '../soil/index.js';
import type { LayerRow, Look, Origin, SoakageLook, Survey, Warning } from '../survey/index.js';
import { textureOf } from './layerTexture.js';

export const soilTestReading = method({
  title: 'Tests of a survey, read as permeability',
  what:
    'Falling-level tests of soakage.csv by the shape-factor method; recoveries after bailing in water.csv by the ' +
    'auger-hole method where the hole is open and fits it, else by the time lag of the intake.',
  assumptions: [
    'a test measures the layer in which the middle of its wetted wall lies',
    'a falling test is refused where even the deepest water seen in that pit stands above its floor',
    'a recovery is heading for the level seen last before bailing, at most 30 days earlier',
    'an augered hole in cracked or blocky clay is smeared: the spread is widened to 1.2 in ln and the bias named, not taken off',
    'the tape is right within 2 mm in a soakage test and 5 mm in a recovery: common practice',
  ],
  source: 'the methods named; McKay, Cherry & Gillham 1993 (abstract) for the smear',
});

/** A test of the survey with the place it measures. */
export interface SoilTest {
  pit: string;
  name: string;
  /** middle of the wetted wall, m below ground at the pit */
  depth: number;
  test: PermeabilityTest;
  origin: Origin;
}

const RECOVERY_TAPE = 0.005;
const SMEARED_SPREAD = 1.2;
const SMEAR =
  'augered hole in structured clay: smear may hide 10 to 100 times; scratch the wall, or test a trench';
const REST_DAYS = 30;

/** The permeability tests a survey holds; those that cannot be interpreted become warnings with a remedy. */
export function soilTestsOf(survey: Survey): { tests: SoilTest[]; warnings: Warning[] } {
  const tests: SoilTest[] = [];
  const warnings: Warning[] = [];
  const attempt = (name: string, origin: Origin, read: () => SoilTest) => {
    try {
      const found = read();
      if (survey.layers.length > 0 && !layerAt(survey.layers, found.pit, found.depth))
        throw new FieldTestError(
          'geometry',
          `missing layer: pits.csv says nothing of ${found.pit} at ${Number(found.depth.toFixed(2))} m`,
          'Log that hole too, or name the pit the test was made in.',
        );
      tests.push(smeared(found, survey.layers));
    } catch (error) {
      if (!(error instanceof FieldTestError)) throw error;
      warnings.push({
        code: `test-${error.code}`,
        message: `${name} is not used: ${error.message}`,
        ...origin,
      });
    }
  };
  for (const looks of groupsOf(survey.soakage, (look) => `${look.pit}/${look.test}`)) {
    const name = `test ${looks[0].test} in ${looks[0].pit}`;
    attempt(name, looks[0].origin, () => soakageTest(name, looks, survey));
  }
  for (const recovery of recoveriesOf(survey.looks)) {
    const name = `recovery in ${recovery.bailed.pit}`;
    attempt(name, recovery.bailed.origin, () => recoveryTest(name, recovery));
  }
  return { tests, warnings };
}

/** The layer a depth lies in, m below ground at the pit. */
export function layerAt(layers: LayerRow[], pit: string, depth: number): LayerRow | undefined {
  return layers.find((l) => l.pit === pit && l.top <= depth && depth <= l.bottom);
}

function groupsOf<T>(items: T[], key: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return [...groups.values()];
}

function soakageTest(name: string, looks: SoakageLook[], survey: Survey): SoilTest {
  const [{ pit, holeDepth, holeDiameter, soakedBefore, origin }] = looks;
  if (holeDepth === undefined || holeDiameter === undefined)
    throw new FieldTestError(
      'geometry',
      `missing ${holeDepth === undefined ? 'hole_depth' : 'hole_diameter'}`,
      'Write the depth and the diameter of the hole in one row of the test.',
    );
  const shallowest = Math.min(...looks.map((l) => l.depthToWater));
  const depth = (shallowest + holeDepth) / 2;
  const layer = layerAt(survey.layers, pit, depth);
  const test = fallingHoleTest(
    looks.map((l) => ({ time: l.time, level: Math.max(holeDepth - l.depthToWater, 0) })),
    {
      diameter: holeDiameter,
      sorptive: sorptiveNumber(layer ? textureOf(layer) : 'clay', layer?.structure),
      holeDepth,
      tableDepth: deepestWater(survey.looks, pit),
      soakedBefore: soakedBefore === undefined ? undefined : soakedBefore === 'yes',
    },
  );
  return { pit, name, depth, test, origin };
}

/** Deepest water seen in a pit; undefined where it was once dry or never looked at. The test itself has no date. */
function deepestWater(looks: Look[], pit: string): number | undefined {
  const here = looks.filter((l) => l.pit === pit);
  const levels = here.filter((l) => l.reading === 'level').map((l) => l.depth!);
  return levels.length === 0 || here.some((l) => l.reading === 'dry') ? undefined : Math.max(...levels);
}

interface Recovery {
  bailed: Look;
  rest: number;
  looks: Look[];
  hole: Look;
}

/** Every bailing that has a level before it and looks after it. */
function recoveriesOf(looks: Look[]): Recovery[] {
  return groupsOf(looks, (l) => l.pit).flatMap((all) =>
    all.flatMap((bailed, at) => {
      if (bailed.reading !== 'bailed') return [];
      const before = all
        .slice(0, at)
        .findLast((l) => l.reading === 'level' && bailed.day - l.day <= REST_DAYS);
      const next = all.slice(at + 1).findIndex((l) => l.reading !== 'level');
      const after = all.slice(at + 1, next < 0 ? undefined : at + 1 + next);
      if (before?.depth === undefined || after.length === 0) return [];
      const opened = all.slice(0, at).findLast((l) => l.reading === 'opened');
      const said = Object.fromEntries(Object.entries(bailed).filter(([, v]) => v !== undefined));
      return [
        { bailed, rest: before.depth, looks: [bailed, ...after], hole: { ...opened, ...said } as Look },
      ];
    }),
  );
}

function recoveryTest(name: string, { bailed, rest, looks, hole }: Recovery): SoilTest {
  const { holeDepth, holeDiameter, pipeBore, openFrom } = hole;
  if (holeDepth === undefined || holeDiameter === undefined)
    throw new FieldTestError(
      'geometry',
      `missing ${holeDepth === undefined ? 'hole_depth' : 'hole_diameter'}`,
      "Write both in the row 'opened' or 'bailed'.",
    );
  const readings = looks.map((l) => ({
    time: (l.day - bailed.day) * SECONDS_PER_DAY,
    level: l.depth! - rest,
  }));
  const top = Math.max(openFrom ?? rest, rest);
  const origin = bailed.origin;
  const place = { pit: bailed.pit, name, depth: (top + holeDepth) / 2, origin };
  const open =
    pipeBore === undefined && openFrom === undefined && holeDiameter >= 0.06 && holeDiameter <= 0.14;
  if (open)
    return {
      ...place,
      test: augerHoleTest(readings, {
        diameter: holeDiameter,
        depthBelowTable: holeDepth - rest,
        tape: RECOVERY_TAPE,
      }),
    };
  const flush = pipeBore !== undefined && openFrom === undefined;
  const intake = {
    pipeDiameter: pipeBore ?? holeDiameter,
    holeDiameter,
    openLength: flush ? undefined : holeDepth - top,
    tape: RECOVERY_TAPE,
  };
  return { ...place, test: bailedRecoveryTest(readings, intake) };
}

const FISSURED: (Structure | undefined)[] = ['cracked', 'blocky'];

/** Names the smear of an augered wall and widens the spread for it. */
function smeared(found: SoilTest, layers: LayerRow[]): SoilTest {
  const layer = layerAt(layers, found.pit, found.depth);
  if (!layer || !FISSURED.includes(layer.structure)) return found;
  const { test } = found;
  return {
    ...found,
    test: { ...test, spread: Math.max(test.spread, SMEARED_SPREAD), bias: [...test.bias, SMEAR] },
  };
}
