import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { TYPICAL_COMPOSITION, textureClass, USDA_CLASSES, type UsdaClass } from '../../lib/soil/index.js';

describe('433 horizons of the Oklahoma Mesonet', () => {
  const { rows }: { rows: [sand: number, clay: number, name: UsdaClass][] } = JSON.parse(
    readFileSync(new URL('../fixtures/soil/oklahoma_texture.json', import.meta.url), 'utf8'),
  );

  test('all have the class we give them but those on a limit', () => {
    expect(rows).toHaveLength(433);
    const different = rows.filter(([sand, clay, name]) => textureClass(sand / 100, clay / 100) !== name);
    expect(different.length).toBeLessThanOrEqual(1);
    for (const [sand, clay, name] of different) {
      // A tenth of a percent to some side of the point lies the class of the station.
      const near = [-0.1, 0, 0.1].flatMap((ds) =>
        [-0.1, 0, 0.1].map((dc) => textureClass((sand + ds) / 100, (clay + dc) / 100)),
      );
      expect(near).toContain(name);
    }
  });
});

test('each class is one connected patch of the triangle, and every point of it has a class', () => {
  // Grid of 1 ‰ of the fine earth; neighbours differ by 1 ‰ moved from one part to another.
  const n = 1000;
  const at = (s: number, c: number) => s * (n + 1) + c;
  const label = new Int8Array((n + 1) ** 2).fill(-1);
  for (let s = 0; s <= n; s++)
    for (let c = 0; s + c <= n; c++) label[at(s, c)] = USDA_CLASSES.indexOf(textureClass(s / n, c / n));
  const patches = new Map<number, number>();
  const seen = new Uint8Array(label.length);
  let points = 0;
  for (let s = 0; s <= n; s++)
    for (let c = 0; s + c <= n; c++) {
      points++;
      if (seen[at(s, c)]) continue;
      const mine = label[at(s, c)];
      patches.set(mine, (patches.get(mine) ?? 0) + 1);
      const open = [[s, c]];
      seen[at(s, c)] = 1;
      while (open.length > 0) {
        const [x, y] = open.pop()!;
        for (const [dx, dy] of [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
          [1, -1],
          [-1, 1],
        ]) {
          const [u, v] = [x + dx, y + dy];
          if (u < 0 || v < 0 || u + v > n || seen[at(u, v)] || label[at(u, v)] !== mine) continue;
          seen[at(u, v)] = 1;
          open.push([u, v]);
        }
      }
    }
  expect(points).toBe(501501);
  expect([...patches.keys()].sort((a, b) => a - b)).toEqual(USDA_CLASSES.map((_, i) => i));
  expect([...patches.values()]).toEqual(USDA_CLASSES.map(() => 1));
});

test('the spread of a typical composition is that of the area of its class', () => {
  const sums = new Map(USDA_CLASSES.map((name) => [name, [0, 0, 0, 0, 0]]));
  for (let s = 0; s <= 500; s++)
    for (let c = 0; s + c <= 500; c++) {
      const [x, y] = [s / 500, c / 500];
      const sum = sums.get(textureClass(x, y))!;
      [1, x, x * x, y, y * y].forEach((v, i) => {
        sum[i] += v;
      });
    }
  for (const [name, [n, x, xx, y, yy]] of sums) {
    const { sandSpread, claySpread } = TYPICAL_COMPOSITION[name];
    expect(Math.abs(Math.sqrt(xx / n - (x / n) ** 2) - sandSpread), name).toBeLessThan(0.002);
    expect(Math.abs(Math.sqrt(yy / n - (y / n) ** 2) - claySpread), name).toBeLessThan(0.002);
  }
});
