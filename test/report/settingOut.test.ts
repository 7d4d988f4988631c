/** The setting-out table against the pond and the drain it was made of, set out again by hand. */
import { describe, expect, test } from 'vitest';
import type { Report, SettingOut } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { settingOutCsv } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { settingOutWords } from '../../lib/text/settingOutWords.js';
import { drawnGardens } from '../figures/drawnGardens.js';
import { briefDemo, edited, surveyOf } from '../folder.js';

type Built = Report & { setting_out: SettingOut };
const made = drawnGardens().filter((each): each is [string, Built] => each[1].setting_out !== null);

type Drained = Built & { drain: NonNullable<Report['drain']> };
const drained = made.filter((each): each is [string, Drained] => each[1].drain !== null);

function reportFor(
  name: string,
  change: (files: Record<string, string>) => Record<string, string> = (f) => f,
) {
  const survey = surveyOf(change(briefDemo(name)));
  return { survey, report: reportOf(judge(siteModel(survey, { seed: 1, samples: 64 }))) };
}

test('half of what is drawn is dug, with outlet, with sump and without drain', () => {
  expect(made.length).toBeGreaterThanOrEqual(drawnGardens().length / 2);
  expect(new Set(made.map(([, { drain }]) => drain?.kind))).toContain('outlet');
  expect(new Set(made.map(([, { drain }]) => drain?.kind))).toContain('sump');
  expect(new Set(made.map(([, { drain }]) => drain?.kind))).toContain(undefined);
});

describe.each(made)('%s', (_, report) => {
  const { pegs, references, middle, along, datum_mark_m } = report.setting_out;
  const { pond, result, drain } = report;
  const { depth_m, raise_m } = result.recommendation;
  /** Along the pond and across it. */
  const onPond = ({ x_m, y_m }: { x_m: number; y_m: number }) => ({
    u: (x_m - middle.x_m) * along.x + (y_m - middle.y_m) * along.y,
    v: (y_m - middle.y_m) * along.x - (x_m - middle.x_m) * along.y,
  });

  test('pegs are numbered from 1 on, none missing', () => {
    expect(pegs.map(({ number }) => number)).toEqual(pegs.map((_, i) => i + 1));
  });

  test('two tapes and the side give the place again', () => {
    const [a, b] = references;
    const base = Math.hypot(b.x_m - a.x_m, b.y_m - a.y_m);
    for (const { ties_m, side, x_m, y_m } of pegs) {
      const s = (ties_m[0] ** 2 - ties_m[1] ** 2 + base ** 2) / (2 * base);
      const h = Math.sqrt(Math.max(ties_m[0] ** 2 - s ** 2, 0)) * (side === 'left' ? 1 : -1);
      const [ex, ey] = [(b.x_m - a.x_m) / base, (b.y_m - a.y_m) / base];
      expect(a.x_m + s * ex - h * ey).toBeCloseTo(x_m, 5);
      expect(a.y_m + s * ey + h * ex).toBeCloseTo(y_m, 5);
    }
  });

  test('rim and toe lie on the pond as it was wished', () => {
    const on = (of: string) => pegs.filter((peg) => peg.of === of);
    expect(on('rim')).toHaveLength(pond.shape === 'box' ? 4 : 8);
    const shelf = on('shelf').length > 0;
    for (const of of ['rim', 'toe'] as const) {
      if (of === 'toe' && shelf) continue;
      const inset = of === 'rim' ? 0 : pond.side_slope * depth_m;
      const [a, b] = [pond.length_m / 2 - inset, pond.width_m / 2 - inset];
      for (const peg of on(of)) {
        const { u, v } = onPond(peg);
        if (pond.shape === 'box')
          expect([Math.abs(u), Math.abs(v)]).toEqual([expect.closeTo(a, 6), expect.closeTo(b, 6)]);
        else {
          expect((u / a) ** 2 + (v / b) ** 2).toBeCloseTo(1, 6);
          expect(Math.cos(Math.atan2(v, u) - (peg.angle_deg! * Math.PI) / 180)).toBeCloseTo(1, 9);
        }
      }
    }
    for (const peg of on('rim')) expect(peg.level_m).toBeCloseTo(raise_m, 9);
    for (const peg of on('toe')) expect(peg.level_m).toBeCloseTo(raise_m - depth_m, 9);
    // A gravel or sand bed is 150 mm thick, a mat 20 mm; without a drain it is what the survey says.
    const under = drain ? (drain.bed === 'drainage mat' ? 0.02 : 0.15) : pond.bedding_laid_m;
    for (const peg of on('toe')) expect(peg.level_m - peg.dug_m).toBeCloseTo(under, 9);
  });

  test('levels on the mark and cuts follow from level and ground', () => {
    for (const peg of pegs) {
      expect(peg.mark_m - peg.level_m).toBeCloseTo(datum_mark_m, 9);
      if (peg.ground_m === null) expect(peg.cut_m).toBeNull();
      else expect(peg.dug_m + peg.cut_m!).toBeCloseTo(peg.ground_m, 9);
    }
  });

  test('the file has every peg, and a number wherever one is known', () => {
    const [header, ...rows] = settingOutCsv(report).trimEnd().split('\r\n');
    expect(rows).toHaveLength(pegs.length);
    expect(header).toContain(report.units === 'us' ? 'cut_ft' : 'cut_m');
    expect(settingOutCsv(report)).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe.each(drained)('%s, with its drain', (_, report) => {
  const { pegs, pipe } = report.setting_out;
  const { drain } = report;
  const { depth_m, raise_m } = report.result.recommendation;

  test('the pipe has the levels of the drain, falls all the way, and too little fall is said', () => {
    const level = (of: string) => pegs.filter((peg) => peg.of === of).map((peg) => peg.level_m);
    const run = drain.links.find(({ link }) => link === 'run');
    const floor = raise_m - depth_m;
    for (const z of level('pipe-leaves-bed')) expect(z).toBeCloseTo(run?.from ?? floor - 0.15, 9);
    if (run) {
      expect(level('mouth')).toEqual([expect.closeTo(report.outlet!.level_m, 9)]);
      const head = drain.links.find(({ link }) => link === 'pipe')!.from;
      for (const z of level('pipe-head')) expect(z).toBeGreaterThanOrEqual(head - 1e-9);
    }
    for (const z of level('pipe-head')) expect(z + drain.pipeDiameter).toBeLessThanOrEqual(floor + 0.1);
    const way = pegs.filter((peg) =>
      ['pipe-joins', 'pipe-leaves-bed', 'pipe-at-rim', 'chainage', 'mouth'].includes(peg.of),
    );
    for (const [i, peg] of way.slice(1).entries()) {
      const rate = (way[i]!.level_m - peg.level_m) / (peg.chainage_m! - way[i]!.chainage_m!);
      if (!(rate >= 0.01 - 1e-6))
        expect(settingOutWords(report, 'metric').join(' ')).toContain('Do not dig it so');
      // Along the ground from peg to peg as the chainage has it, but for the floor a pipe runs round.
      expect(Math.hypot(peg.x_m - way[i]!.x_m, peg.y_m - way[i]!.y_m)).toBeCloseTo(
        peg.chainage_m! - way[i]!.chainage_m!,
        6,
      );
    }
    expect(pipe!.fall).toBeGreaterThan(0);
  });
});

test('above the rim the sides are laid back to the ground, said by how far', () => {
  const words = (high: string) => {
    const { report } = reportFor('clay-slope', (files) =>
      edited(files, 'levels.csv', (t) =>
        t
          .replace('1.7,10.12', `1.7,${10 + Number(high)}`)
          .replaceAll(',0,10.06', `,0,${10 + Number(high) / 2}`),
      ),
    );
    return report.setting_out ? settingOutWords(report, 'metric').join(' ') : undefined;
  };
  // 0.8 to 1: 0.40 m of cut goes 0.32 m out.
  expect(words('0.4')).toMatch(/at most 0\.40? m, so its top lies up to 0\.32? m farther out/);
  expect(words('0')).toBeDefined();
  expect(words('0')).not.toMatch(/upright face/);
});

test('on axes turned by a quarter the pegs turn with them', () => {
  const plain = reportFor('clay-slope').report.setting_out!;
  const turned = reportFor('clay-slope', (files) =>
    edited(files, 'levels.csv', (t) =>
      t
        .split('\n')
        .map((row, i) => {
          const [point, role, x, y, ...rest] = row.split(',');
          return i === 0 || row === '' ? row : [point, role, -Number(y), x, ...rest].join(',');
        })
        .join('\n'),
    ),
  ).report.setting_out!;
  expect(turned.pegs).toHaveLength(plain.pegs.length);
  for (const [i, peg] of turned.pegs.entries()) {
    expect(peg.x_m).toBeCloseTo(-plain.pegs[i]!.y_m, 9);
    expect(peg.y_m).toBeCloseTo(plain.pegs[i]!.x_m, 9);
    expect(peg.ties_m[0]).toBeCloseTo(plain.pegs[i]!.ties_m[0], 9);
    expect(peg.cut_m ?? 0).toBeCloseTo(plain.pegs[i]!.cut_m ?? 0, 9);
  }
});

test('rows of levels.csv in another order set out the same pegs from the same points', () => {
  const { report } = reportFor('clay-slope');
  const { report: other } = reportFor('clay-slope', (files) =>
    edited(files, 'levels.csv', (text) => {
      const [header, ...rows] = text.trimEnd().split('\n');
      return [header, ...rows.reverse(), ''].join('\n');
    }),
  );
  const told = ({ setting_out }: Report) => ({
    references: setting_out!.references,
    pegs: setting_out!.pegs.map(({ x_m, y_m, ties_m }) => [x_m, y_m, ...ties_m].map((v) => v.toFixed(6))),
  });
  expect(told(other)).toEqual(told(report));
});

test('the datum is the lowest rim of levels.csv, and ground is told by the plane of the rim', () => {
  const { survey, report } = reportFor('clay-slope');
  const rims = survey.levels.filter(({ role }) => role === 'rim');
  const set = report.setting_out!;
  expect(set.datum_mark_m).toBe(Math.min(...rims.map(({ level }) => level)));
  // The demo falls 0.12 m over 3.4 m across, not along.
  for (const peg of set.pegs.filter(({ ground_from }) => ground_from === 'plane'))
    expect(peg.ground_m).toBeCloseTo(0.06 + (0.12 / 3.4) * peg.y_m, 6);
});

test('a shelf is set out at its inner edge, at its level', () => {
  const { report } = reportFor('clay-slope', (files) =>
    edited(files, 'pond.csv', (t) => `${t}shelf_depth,0.3,m,\nshelf_width,0.25,m,\n`),
  );
  const set = report.setting_out!;
  const shelf = set.pegs.filter(({ of }) => of === 'shelf');
  expect(shelf).toHaveLength(4);
  const { raise_m, depth_m } = report.result.recommendation;
  for (const peg of shelf) {
    expect(Math.abs(peg.x_m)).toBeCloseTo(2.3 - 0.3 * report.pond.side_slope - 0.25, 6);
    expect(peg.level_m).toBeCloseTo(raise_m - 0.3, 9);
  }
  for (const peg of set.pegs.filter(({ of }) => of === 'toe'))
    expect(Math.abs(peg.y_m)).toBeCloseTo(1.7 - depth_m * report.pond.side_slope - 0.25, 6);
});

test('what waits, or is there and stays, is not set out', () => {
  expect(reportFor('old-garden-pond').report.setting_out).toBeNull();
  const waiting = drawnGardens().filter(([, { result }]) =>
    ['measure-first', 'move', 'do-not-dig'].includes(result.recommendation.option),
  );
  expect(waiting.length).toBeGreaterThan(0);
  for (const [name, { setting_out }] of waiting) expect(setting_out, name).toBeNull();
});
