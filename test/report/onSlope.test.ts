/** Bank and hole of a pond on ground that rises across it. */
import { describe, expect, test } from 'vitest';
import { holeOf } from '../../lib/digging/index.js';
import { type Site, siteModel } from '../../lib/site/index.js';
import { outline, pondVolume } from '../../lib/uplift/index.js';
import { BANK, bankEarth, bankVolume } from '../../lib/works/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { cells, gridCut, ovalBank, ovalCut } from './earth.js';

interface Ground {
  length: number;
  width: number;
  slope: number;
  /** of the rim, over its width or its length */
  rise: number;
  uphill?: 'across' | 'along';
  shape?: 'box' | 'oval';
  /** the edge of the liner above the lowest ground, before the rim is raised */
  edge?: number;
  mirrored?: boolean;
}

const DEMO = siteModel(surveyOf(briefDemo('clay-slope')), { samples: 8 });
/** A pond on ground that rises square to one of its sides, levelled at its four ends. */
function pondOn(g: Ground): Site {
  const { length, width, slope, rise, uphill = 'across', shape = 'box', edge = 0, mirrored } = g;
  const rim = DEMO.survey.levels.find(({ role }) => role === 'rim')!;
  const ends: [x: number, y: number][] = [
    [0, -width / 2],
    [0, width / 2],
    [-length / 2, 0],
    [length / 2, 0],
  ];
  const levels = ends.map(([x, y]) => {
    const up = uphill === 'across' ? y / width : x / length;
    const level = 10 + rise * (up + 0.5);
    return { ...rim, x: mirrored ? -x : x, y: mirrored ? -y : y, level };
  });
  return {
    ...DEMO,
    survey: { ...DEMO.survey, levels },
    places: { ...DEMO.places, highRim: rise },
    pond: { ...DEMO.pond, fullLevel: edge - 0.1, shape: { shape, length, width, sideSlope: slope } },
  };
}
const hole = (g: Ground, raise = 0) =>
  holeOf(pondOn(g), { way: 'asIs', raise, ballast: 0 }, 1) -
  pondVolume(pondOn(g).pond.shape, 1 - raise + (DEMO.pond.bedding.thickness ?? 0));
const bank = (g: Ground, raise = 0) => bankEarth(pondOn(g), raise);

/** A bank round a box on a grid of 1 cm: between its inner and its outer side, its top 0.4 m wide, over the ground. */
function gridBank({ length, width, slope, rise, edge = 0 }: Ground): number {
  const out = (slope + BANK.slope) * edge + BANK.crest;
  const across = cells(-out, 0, length, length + out);
  let sum = 0;
  for (const [y, dy] of cells(-out, 0, width, width + out))
    for (const [x, dx] of across) {
      const ground = (rise * Math.min(Math.max(y, 0), width)) / width;
      const off = Math.max(-x, x - length, -y, y - width);
      // The lowest ground is the rim, from which the inner side goes up.
      const top = Math.min(off / slope, edge, (out - off) / BANK.slope);
      sum += Math.max(top - ground, 0) * dx * dy;
    }
  return sum;
}

const SLOPE: Ground = { length: 6, width: 3, slope: 0.5, rise: 0.6, edge: 0.25 };

describe('bank', () => {
  test('box of 6 by 3 m, 0.25 m above ground that rises by 0.6 m: 1.41 m³ in space, the line along its top to 5 %', () => {
    const space = gridBank(SLOPE);
    expect(space).toBeCloseTo(1.41, 2);
    expect(Math.abs(bank(SLOPE) / space - 1)).toBeLessThan(0.05);
  });

  test('of a circle that stands all round it is exact; of ellipses to 0.2 %, and to 5 % where it runs out', () => {
    const off = (length: number, rise: number) => {
      const out = 0.5 * 0.25 + BANK.crest / 2;
      const byHand = ovalBank(length / 2 + out, 1.5 + out, 0.25, rise, 0.5);
      return Math.abs(bank({ ...SLOPE, shape: 'oval', length, rise }) / byHand - 1);
    };
    for (const rise of [0, 0.1, 0.2, 0.25]) expect(off(3, rise)).toBeLessThan(1e-4);
    for (const length of [2, 4, 6]) {
      for (const rise of [0, 0.1, 0.2]) expect(off(length, rise)).toBeLessThan(2e-3);
      for (const rise of [0.3, 0.6]) expect(off(length, rise)).toBeLessThan(0.05);
    }
  });

  test.each(['box', 'oval'] as const)('of a %s on level ground: its line times its section', (shape) => {
    const site = pondOn({ ...SLOPE, shape, rise: 0 });
    const [m, h] = [0.5, 0.25];
    const line = { ...site.pond.shape, length: 6 + 2 * (m * h + 0.2), width: 3 + 2 * (m * h + 0.2) };
    const section = (h * (0.4 + (0.4 + (1.5 + m) * h))) / 2;
    expect(bankEarth(site, 0)).toBeCloseTo(outline(line) * section, 9);
  });
});

describe('cut above the rim', () => {
  test.each([
    [SLOPE, 0],
    [{ ...SLOPE, slope: 1.5 }, 0],
    [{ ...SLOPE, slope: 1.5 }, 0.2],
    [{ ...SLOPE, slope: 1, uphill: 'along' }, 0],
    [{ ...SLOPE, slope: 1, rise: 0.2 }, 0.1],
  ] as [Ground, number][])('of a box as on a grid of 1 cm: %o, raised by %d', (g, raise) => {
    const [side, end] = g.uphill === 'along' ? [g.width, g.length] : [g.length, g.width];
    const cut = gridCut(side, end, g.rise, raise, g.slope);
    expect(Math.abs(hole(g, raise) / cut - 1)).toBeLessThan(0.01);
  });

  test('of an ellipse to a fiftieth; none where the ground is level or the rim is raised as high', () => {
    for (const length of [3, 4, 5]) {
      const g: Ground = { ...SLOPE, shape: 'oval', length, rise: 0.3 };
      expect(Math.abs(hole(g) / ovalCut(length / 2, 1.5, 0.3, 0.5) - 1)).toBeLessThan(0.02);
    }
    expect(hole({ ...SLOPE, rise: 0 })).toBe(0);
    expect(hole({ ...SLOPE, rise: 0.2 }, 0.2)).toBe(0);
  });
});

describe('never less', () => {
  const grows = (values: number[]) =>
    values.slice(1).forEach((value, i) => {
      expect(value).toBeGreaterThanOrEqual(values[i]!);
    });
  const RISES = [0, 0.05, 0.2, 0.25, 0.3, 0.6, 1.2];
  const SLOPES = [0, 0.3, 0.5, 1, 2, 3];

  test('the flatter the outer side of a bank', () => {
    grows([0.5, 1, 1.5, 3].map((b) => bankVolume.compute(10, 0.4, 0.1, 0.4, b, 1)));
  });

  test.each(
    (['box', 'oval'] as const).flatMap((shape) =>
      (['across', 'along'] as const).map((uphill) => [shape, uphill] as const),
    ),
  )('%s, ground that rises %s it', (shape, uphill) => {
    const of = { ...SLOPE, shape, uphill };
    for (const rise of RISES) {
      // The higher a bank and the flatter its inner side, the more earth is in it.
      grows([0.05, 0.1, 0.2, 0.3, 0.6].map((edge) => bank({ ...of, rise, edge })));
      grows([0, 0.1, 0.3].map((raise) => bank({ ...of, rise }, raise)));
      grows(SLOPES.map((slope) => bank({ ...of, rise, slope })));
      grows(SLOPES.map((slope) => hole({ ...of, rise, slope })));
    }
    // The more the ground rises, the less is banked up and the more is cut off.
    grows(RISES.map((rise) => bank({ ...of, rise })).reverse());
    grows(RISES.map((rise) => hole({ ...of, rise })));
    for (const rise of RISES) {
      const mirror = { ...of, rise, mirrored: true };
      expect(bank(mirror)).toBeCloseTo(bank({ ...of, rise }), 12);
      expect(hole(mirror)).toBeCloseTo(hole({ ...of, rise }), 12);
    }
  });
});
