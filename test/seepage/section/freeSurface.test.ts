import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { equivalentDepth } from '../../../lib/seepage/index.js';
import {
  type Contact,
  evenLines,
  gradedLines,
  headAt,
  middleOf,
  phreaticLine,
  pipeHole,
  runSection,
  type Section,
  solveFreeSurface,
  solveSaturated,
} from '../../../lib/seepage/section/index.js';
import { sweep } from '../../sweep.js';
import { groundOf, UNIFORM } from './ground.js';

/** A rectangular dam of unit height and length: water at `up` on the left, `down` on the right, seeping out above it. */
function dam(cells: number, sorptive: number, up: number, down: number): Section {
  const lines = evenLines(0, 1, cells);
  const contacts: Contact[] = [];
  for (let j = 0; j < cells; j++) {
    const height = (lines[j] + lines[j + 1]) / 2;
    const common = { face: 'upright' as const, height, resistance: 0 };
    if (height < up) contacts.push({ ...common, cell: j * cells, head: up, outOnly: false, name: 'left' });
    contacts.push({
      ...common,
      cell: (j + 1) * cells - 1,
      head: Math.max(down, height),
      outOnly: height > down,
      name: 'right',
    });
  }
  const soil = { ...UNIFORM, sorptive };
  return { grid: { x: lines, z: lines }, soils: [soil], soilOf: new Int8Array(cells * cells), contacts };
}

describe('rectangular dam (Charny)', () => {
  const charny = (1 - 0.2 ** 2) / 2;

  test('K(h1² − h2²)/2L as the fringe thins with the cells', () => {
    const errors = sweep([35, 70, 140], 2).map((cells) => {
      const { flows } = solveFreeSurface(dam(cells, 1e4, 1, 0.2));
      expect(Math.abs(flows.imbalance)).toBeLessThan(1e-8);
      const error = Math.abs(flows.out.right / charny - 1);
      expect(error).toBeLessThan(1.4 / cells);
      return error;
    });
    for (let i = 1; i < errors.length; i++) expect(Math.log2(errors[i - 1] / errors[i])).toBeGreaterThan(0.8);
  });

  test('with a fringe, the difference of the flow potentials of both ends, on any grid', () => {
    const sorptive = 20;
    const potential = (p: number) => (p >= 0 ? p + 1 / sorptive : Math.exp(sorptive * p) / sorptive);
    const section = dam(40, sorptive, 0.8, 0.3);
    const { head, flows, contactFlow } = solveFreeSurface(section);
    const end = (column: number) => {
      let sum = 0;
      for (let j = 0; j < 40; j++) {
        const cell = j * 40 + column;
        const height = (j + 0.5) / 40;
        const c = section.contacts.findIndex((contact, i) => contact.cell === cell && contactFlow[i] !== 0);
        sum += potential((c < 0 ? head[cell] : section.contacts[c].head) - height) / 40;
      }
      return sum;
    };
    expect(flows.out.right / (end(0) - end(39))).toBeCloseTo(1, 6);
  });

  test('water leaves above the tail water, at no suction', () => {
    const section = dam(60, 36, 1, 0.2);
    const { head } = solveFreeSurface(section);
    const line = phreaticLine(section, head);
    expect(line[0].z).toBeGreaterThan(0.97);
    expect(line[59].z).toBeGreaterThan(0.3);
    for (let i = 1; i < 60; i++) expect(line[i].z).toBeLessThanOrEqual(line[i - 1].z + 1e-9);
  });
});

test('rain going down a column (Gardner): exp(αψ) = (1 − r) exp(−αz) + r, second order', () => {
  const [sorptive, rain] = [4, 0.3];
  const errors = [10, 20, 40].map((cells) => {
    const section = groundOf({
      x: evenLines(0, 1, 1),
      z: evenLines(0, 1, cells),
      soils: [{ ...UNIFORM, sorptive }],
      bottom: () => 0,
    });
    const supply = new Float64Array(cells);
    supply[cells - 1] = rain;
    const { head } = solveFreeSurface({ ...section, supply });
    return head.reduce((worst, h, k) => {
      const { z } = middleOf(section.grid, k);
      const exact = z + Math.log((1 - rain) * Math.exp(-sorptive * z) + rain) / sorptive;
      return Math.max(worst, Math.abs(h - exact));
    }, 0);
  });
  expect(Math.log2(errors[0] / errors[1])).toBeGreaterThan(1.85);
  expect(Math.log2(errors[1] / errors[2])).toBeGreaterThan(1.85);
});

test('a wide low mound between two ditches (Dupuit–Forchheimer)', () => {
  const [length, rain, water, sorptive] = [30, 0.004, 1, 36];
  const x = evenLines(0, length, 90);
  const z = evenLines(0, 2, 60);
  const section = groundOf({
    x,
    z,
    soils: [{ ...UNIFORM, sorptive }],
    left: () => water,
    right: () => water,
  });
  const supply = new Float64Array(90 * 60);
  for (let i = 0; i < 90; i++) supply[59 * 90 + i] = (rain * length) / 90;
  const { head, flows } = solveFreeSurface({ ...section, supply });
  expect(Math.abs(flows.imbalance)).toBeLessThan(1e-8);
  // The fringe carries 1/α beside the full depth: h²/2 + h/α in the place of h²/2.
  const b = 1 / sorptive;
  const middle = -b + Math.sqrt((water + b) ** 2 + (rain * length ** 2) / 4);
  expect(Math.abs(headAt(section, head, length / 2, 0.05) / middle - 1)).toBeLessThan(0.01);
});

test('mound between drains over a tight layer (Hooghoudt)', () => {
  const [spacing, depth, radius, rain] = [10, 2, 0.05, 0.02];
  const hole = pipeHole({ x: 0, z: 0, radius }, 1, 1, 2);
  const x = gradedLines(
    [
      { at: -spacing / 2, size: 0.4 },
      { at: spacing / 2, size: 0.4 },
    ],
    [hole.x],
    120,
  );
  const z = gradedLines(
    [
      { at: -depth, size: 0.3 },
      { at: 0.8, size: 0.05 },
    ],
    [hole.z],
    80,
  );
  const section = groundOf({
    x,
    z,
    soils: [{ ...UNIFORM, sorptive: 36 }],
    pipes: [{ x: 0, z: 0, radius, head: 0 }],
    holeCells: 2,
  });
  const [nx, nz] = [x.length - 1, z.length - 1];
  const supply = new Float64Array(nx * nz);
  for (let i = 0; i < nx; i++) supply[(nz - 1) * nx + i] = rain * (x[i + 1] - x[i]);
  const contacts = section.contacts.map((c) => ({ ...c, outOnly: true }));
  const { head, flows } = solveFreeSurface({ ...section, contacts, supply });
  expect(flows.out['pipe 0'] / (rain * spacing)).toBeCloseTo(1, 8);
  const line = phreaticLine(section, head);
  // q L² = 8 K d h + 4 K h²; the fringe carries 1/α beside the equivalent depth.
  const carried = equivalentDepth(spacing, depth, radius) + 1 / 36;
  const mound = -carried + Math.sqrt(carried ** 2 + (rain * spacing ** 2) / 4);
  expect(Math.abs(line[0].z / mound - 1)).toBeLessThan(0.06);
});

describe('through time', () => {
  interface Drained {
    conductivity: number;
    sorptive: number;
    drainable: number;
    storage: number;
    heights: number[];
    moments: { time: number; head: number[]; drained: number }[];
  }
  const scipy = JSON.parse(
    readFileSync(new URL('../../fixtures/section/draining_column.json', import.meta.url), 'utf8'),
  ) as Drained;

  test('a draining column as by scipy', () => {
    const { conductivity: k, sorptive, drainable, storage } = scipy;
    const section = groundOf({
      x: evenLines(0, 1, 1),
      z: evenLines(0, 1, 100),
      soils: [{ across: k, down: k, sorptive, drainable, storage }],
      bottom: () => 0,
    });
    const steps: number[] = [];
    let time = 0;
    for (const { time: until } of scipy.moments) {
      const from = time;
      for (let i = 0; i < 150; i++) steps.push((until - from) / 150);
      time = until;
    }
    const run = runSection(section, new Float64Array(100).fill(1), steps);
    let drained = 0;
    run.forEach(({ flows, head }, i) => {
      expect(Math.abs(flows.imbalance)).toBeLessThan(1e-8);
      drained += flows.out.bottom * steps[i];
      if (i % 150 !== 149) return;
      const moment = scipy.moments[Math.floor(i / 150)];
      expect(Math.abs(drained / moment.drained - 1)).toBeLessThan(0.01);
      scipy.heights.forEach((z, p) => {
        expect(Math.abs(headAt(section, head, 0.5, z) - moment.head[p])).toBeLessThan(0.01);
      });
    });
  });

  test('a full column settling: the series of the heat equation', () => {
    const storage = 0.01;
    const section = groundOf({
      x: evenLines(0, 1, 1),
      z: evenLines(0, 1, 80),
      soils: [{ ...UNIFORM, storage }],
      bottom: () => 2,
    });
    const time = 0.004;
    const error = [40, 80].map((count) => {
      const run = runSection(section, new Float64Array(80).fill(3), Array(count).fill(time / count));
      let series = 0;
      for (let n = 0; n < 40; n++) {
        const w = (n + 0.5) * Math.PI;
        series += (2 / w) * Math.sin(w * 0.5) * Math.exp((-w * w * time) / storage);
      }
      return Math.abs(headAt(section, run.at(-1)!.head, 0.5, 0.5) - 2 - series);
    });
    expect(error[1]).toBeLessThan(0.003);
    expect(error[0] / error[1]).toBeGreaterThan(1.8);
  });

  test('a given head that does not change leaves what is at rest at rest', () => {
    const section = groundOf({ x: evenLines(0, 1, 4), z: evenLines(0, 1, 6), left: () => 0.4 });
    const still = solveFreeSurface(section).head;
    const [after] = runSection(section, still, [1e5]);
    expect(Math.max(...after.head.map((h) => Math.abs(h - 0.4)))).toBeLessThan(1e-6);
    expect(Math.abs(after.flows.imbalance)).toBeLessThan(1e-8);
  });
});

test('ground that no head reaches is refused, with its place', () => {
  const section = groundOf({ x: evenLines(0, 1, 4), z: evenLines(0, 1, 2), left: () => 1 });
  const tightRight = new Uint8Array(8);
  tightRight[1] = 1;
  tightRight[5] = 1;
  expect(() => solveSaturated({ ...section, tightRight })).toThrow(
    /ground at x 0\.6\d m, z 0\.25 m touches no water/,
  );
});
