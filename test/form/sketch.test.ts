/** What a tap on the sketch of the levels writes, and where points of a survey stand on it. */
import { describe, expect, test } from 'vitest';
import { type Answers, noAnswers, textOf, withCell, withFact, withRow } from '../../lib/form/answers.js';
import { readable } from '../../lib/form/folder.js';
import { openedFolder } from '../../lib/form/opened.js';
import { readingOf } from '../../lib/form/reading.js';
import { freePlace, sketchOf, withPlaced, withStepped, withTapped } from '../../lib/form/sketch.js';
import { DRAWN, drawnAt, isSeen, pointAt, tappedAt, windowOf } from '../../lib/form/sketchWindow.js';
import type { PlanPoint } from '../../lib/site/boundary.js';
import { frameOf } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import type { UnitSystem } from '../../lib/units/index.js';
import { demoFiles, edited } from '../folder.js';

const FOOT = 0.3048;
const pond = (units: 'metric' | 'us', length: string, width: string): Answers => {
  const unit = units === 'us' ? 'ft' : 'm';
  const all = withFact(
    withFact(noAnswers(), 'pond.csv', 'length', length, unit),
    'pond.csv',
    'width',
    width,
    unit,
  );
  return withFact(all, 'site.csv', 'show_units', units);
};
const rowOf = (answers: Answers, id: number) => answers.rows['levels.csv'].find((row) => row.id === id);
const placeIn = (answers: Answers, id: number) =>
  ['x', 'y'].map((name) =>
    [rowOf(answers, id)?.cells[name]?.text, rowOf(answers, id)?.cells[name]?.unit].join(' '),
  );
const opened = (files: Record<string, string>) =>
  openedFolder(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [name, new TextEncoder().encode(text)])),
  ).answers;

describe('a tap', () => {
  test.each<[units: UnitSystem, length: string, width: string, at: PlanPoint, place: string[], what: string]>(
    [
      ['metric', '4', '3', { x: 168, y: 140 }, ['0 m', '0 m'], 'the middle of the drawing'],
      ['metric', '4', '3', { x: 168 + 2 * 28, y: 140 + 28 }, ['2 m', '-1 m'], 'right and down by squares'],
      [
        'metric',
        '4',
        '3',
        { x: 168 + 28 * 0.33, y: 140 - 28 * 0.26 },
        ['0.3 m', '0.3 m'],
        'to the nearest tenth',
      ],
      ['metric', '4', '3', { x: 168 - 28 * 0.04, y: 140 }, ['0 m', '0 m'], 'nothing with a sign'],
      ['metric', '4', '3', { x: 0, y: 0 }, ['-6 m', '5 m'], 'the corner'],
      ['metric', '4', '3', { x: 400, y: -9 }, ['6 m', '5 m'], 'beyond the edge the edge'],
      ['us', '14', '10', { x: 168 + 28, y: 140 - 28 }, ['5 ft', '5 ft'], 'a square of five feet'],
      [
        'us',
        '14',
        '10',
        { x: 168 + 28 * 0.33, y: 140 + 28 * 0.26 },
        ['1.5 ft', '-1.5 ft'],
        'to the nearest half foot',
      ],
      ['us', '14', '10', { x: 336, y: 280 }, ['30 ft', '-25 ft'], 'the other corner'],
    ],
  )('in %s units, pond %s by %s: %o gives %o (%s)', (units, length, width, at, place) => {
    const before = pond(units, length, width);
    const window = windowOf(sketchOf(before), units);
    expect(window.side).toBeCloseTo(units === 'us' ? 5 * FOOT : 1, 12);
    const { answers, id } = withTapped(before, tappedAt(window, at));
    expect(placeIn(answers, id)).toEqual(place);
    const point = sketchOf(answers).points[0]!;
    expect(isSeen(window, point)).toBe(true);
    const step = (units === 'us' ? 0.5 * FOOT : 0.1) * (28 / window.side);
    const drawn = drawnAt(window, point);
    const inside = {
      x: Math.min(Math.max(at.x, 0), DRAWN.width),
      y: Math.min(Math.max(at.y, 0), DRAWN.height),
    };
    expect(Math.abs(drawn.x - inside.x)).toBeLessThanOrEqual(step / 2 + 1e-9);
    expect(Math.abs(drawn.y - inside.y)).toBeLessThanOrEqual(step / 2 + 1e-9);
  });

  test('makes a row that counts, says so in its note, and waits for its height alone', () => {
    const { answers, id } = withTapped(pond('metric', '4', '3'), { x: 2, y: 0 });
    const row = rowOf(answers, id)!;
    expect([row.draft, textOf(row, 'role'), textOf(row, 'note'), textOf(row, 'distance')]).toEqual([
      undefined,
      'rim',
      'placed on the sketch',
      '',
    ]);
    const next = withTapped(answers, { x: -2, y: 0 });
    expect(textOf(rowOf(next.answers, next.id), 'role')).toBe('');
    const named = withCell(answers, 'levels.csv', id, 'point', 'low edge');
    const faults = (all: Answers) => {
      const { problems } = readingOf({ files: readable(all, new Map()), name: 'test' }).findings;
      return problems
        .filter(({ file }) => file === 'levels.csv')
        .map(({ code, column }) => `${code} ${column}`);
    };
    expect(faults(named)).toEqual(['missing-value level_m']);
    expect(faults(withCell(named, 'levels.csv', id, 'level', '-0.6', 'm'))).toEqual([]);
  });
});

describe('a point that is there', () => {
  const { answers, id } = withTapped(pond('metric', '4', '3'), { x: 2, y: 0 });
  test.each([
    ['metric', [1, 0], false, ['2.1 m', '0 m']],
    ['metric', [0, -1], false, ['2 m', '-0.1 m']],
    ['metric', [-1, 0], true, ['1 m', '0 m']],
    // 2 m are 6.56 ft.
    ['us', [1, 0], false, ['7 ft', '0 ft']],
    ['us', [0, 1], true, ['6.5 ft', '5 ft']],
  ] as const)('in %s units steps by %o, large %s', (units, way, large, place) => {
    const all = withFact(answers, 'site.csv', 'show_units', units);
    expect(placeIn(withStepped(all, id, way, large), id)).toEqual(place);
  });

  test('keeps its note and a distance that was taped, and is not written anew where it lies already', () => {
    const taped = ['distance', 'note'].reduce(
      (all, name) =>
        withCell(
          all,
          'levels.csv',
          id,
          name,
          name === 'note' ? 'by hose' : '1.5',
          name === 'note' ? undefined : 'm',
        ),
      answers,
    );
    const moved = withPlaced(taped, id, { x: 3, y: 1 });
    expect([textOf(rowOf(moved, id), 'distance'), textOf(rowOf(moved, id), 'note')]).toEqual([
      '1.5',
      'by hose',
    ]);
    expect(withPlaced(moved, id, { x: 3.02, y: 0.98 })).toBe(moved);
  });

  test('is meant by a finger near it, the nearest of several', () => {
    const two = withTapped(answers, { x: 2.8, y: 0 });
    const sketch = sketchOf(two.answers);
    const window = windowOf(sketch, 'metric');
    const at = drawnAt(window, { x: 2.5, y: 0 });
    expect(pointAt(window, sketch.points, at, 23)?.id).toBe(two.id);
    expect(pointAt(window, sketch.points, { x: at.x, y: at.y + 40 }, 23)).toBeUndefined();
  });
});

describe('the pond on it', () => {
  test('lies where the answer takes it, on the axes of a survey', () => {
    const files = demoFiles('clay-slope');
    const sketch = sketchOf(opened(files));
    expect(sketch.middle).toEqual({ x: 0, y: 0 });
    expect(sketch.rimTells).toBe(true);
    expect(sketch.points).toHaveLength(10);
    // The same garden from another corner, and turned.
    const moved = edited(files, 'levels.csv', (text) =>
      text.replace(
        /^([\w-]+,[\w-]+),(-?[\d.]+),(-?[\d.]+),/gm,
        (_, point, x, y) => `${point},${Number(y) + 30},${Number(x) + 12},`,
      ),
    );
    const far = sketchOf(opened(moved));
    const { middle, along } = frameOf(parseSurvey(moved, { name: 'moved' }).levels);
    expect([far.middle.x, far.middle.y]).toEqual([middle.x_m, middle.y_m]);
    expect(along).toEqual({ x: 0, y: 1 });
    const reach = (key: 'x' | 'y') => Math.max(...far.outline!.map((p) => p[key])) - far.middle[key];
    expect(reach('y')).toBeGreaterThan(reach('x'));
  });

  test('stays while its edge is tapped side by side, and asks for the other sides', () => {
    let all = pond('metric', '4', '3');
    for (const [place, tells] of [
      [{ x: 2, y: 0 }, false],
      [{ x: 0, y: -1.5 }, false],
      [{ x: -2, y: 0 }, true],
      [{ x: 0, y: 1.5 }, true],
    ] as const) {
      const tapped = withTapped(all, place);
      all = withCell(tapped.answers, 'levels.csv', tapped.id, 'role', 'rim');
      const { middle, rimTells } = sketchOf(all);
      expect(middle).toEqual({ x: 0, y: 0 });
      expect(rimTells).toBe(tells);
    }
  });

  test.each([
    ['box', '3', ''],
    ['round', '', ''],
    ['oval', '3', ''],
    ['box', '', '12'],
  ])('is drawn as a %s %s wide, %s m2', (shape, width, area) => {
    let all = withFact(withFact(noAnswers(), 'pond.csv', 'length', '4', 'm'), 'pond.csv', 'shape', shape);
    all = withFact(withFact(all, 'pond.csv', 'width', width, 'm'), 'pond.csv', 'area', area, 'm2');
    const { outline } = sketchOf(all);
    expect(Math.max(...outline!.map(({ x }) => x))).toBeCloseTo(2, 9);
    expect(Math.max(...outline!.map(({ y }) => y))).toBeCloseTo(shape === 'round' ? 2 : 1.5, 9);
    // Taped points stand so far outside it, each on a side of its own.
    for (let i = 0; i < 4; i++)
      all = withRow(all, 'levels.csv', { point: { text: `P${i}` }, distance: { text: '150', unit: 'cm' } });
    const { points } = sketchOf(all);
    for (const { x, y, taped } of points) {
      expect(taped).toBeCloseTo(1.5, 12);
      const out = Math.hypot(x, y);
      const [ux, uy] = [Math.abs(x / out), Math.abs(y / out)];
      const half = shape === 'round' ? 2 : 1.5;
      const edge = shape === 'box' ? 1 / Math.max(ux / 2, uy / half) : 1 / Math.hypot(ux / 2, uy / half);
      expect(out).toBeCloseTo(edge + 1.5, 2);
    }
    expect(new Set(points.map(({ x }) => x.toFixed(3))).size).toBe(4);
  });

  test('is not guessed from a part of its size', () => {
    expect(sketchOf(withFact(noAnswers(), 'pond.csv', 'length', '4', 'm')).outline).toBeUndefined();
    expect(sketchOf(pond('metric', '4', 'three')).outline).toBeUndefined();
  });
});

describe('the window', () => {
  test('holds every point with a place, and is as near as it can be', () => {
    const sketch = sketchOf(opened(demoFiles('clay-slope')));
    const window = windowOf(sketch, 'metric');
    expect(sketch.points.every((point) => isSeen(window, point))).toBe(true);
    const nearer = windowOf(sketch, 'metric', window.size - 1);
    expect(sketch.points.every((point) => isSeen(nearer, point))).toBe(false);
    expect(windowOf(sketch, 'metric', -3).least).toBe(true);
    expect(windowOf(sketch, 'metric', 99).most).toBe(true);
  });

  test('does not make all small for what was taped far off', () => {
    const sketch = sketchOf(opened(demoFiles('clay-hollow')));
    const window = windowOf(sketch, 'metric');
    expect(sketch.points.filter((point) => !isSeen(window, point)).map(({ name }) => name)).toEqual([
      'field-edge',
    ]);
  });
});

test('a point without a place is put where none is', () => {
  let all = pond('metric', '4', '3');
  for (let i = 0; i < 3; i++) {
    const place = freePlace(sketchOf(all));
    expect(place).toEqual({ x: 3, y: i });
    all = withTapped(all, place).answers;
  }
});
