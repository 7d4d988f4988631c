import { type Formula, formula, type Use, unrecorded } from '../formula/index.js';
import { type LogEstimate, logValue, type NamedTest, type Texture } from '../soil/index.js';
import type { LayerRow, Origin } from '../survey/index.js';
import type { Unknowns } from './unknowns.js';

/** A layer of the pit log with its permeability. */
export interface GroundLayer {
  row: LayerRow;
  texture: Texture;
  permeability: LogEstimate;
  /** what that is made of */
  known: LayerKnown;
}

/** Table, tests and their scatter, of layers alike. */
export interface LayerKnown {
  prior: LogEstimate;
  tests: (NamedTest & { origin: Origin })[];
  scatter: number;
}

/** The layers of all logs. */
export interface Profile {
  layers: GroundLayer[];
  /** thickness of the topsoil, m */
  topsoil: number;
}

/** Ground under the floor of a hole that its water and its sides still feel, m. Our choice. */
const UNDER_FLOOR = 0.5;

/** A layer and how much of it lies between two depths, m. */
interface Part extends GroundLayer {
  thickness: number;
}

/**
 * Parts of the layers of all logs between two depths; peat, which falls together, is left out. All layers whole where
 * none lies there.
 * @param from - depth, m, and `to`, deeper
 */
export function partsBetween(layers: readonly GroundLayer[], from: number, to: number): Part[] {
  const between = layers
    .map((l) => ({ ...l, thickness: Math.min(l.row.bottom, to) - Math.max(l.row.top, from) }))
    .filter((l) => l.thickness > 0 && l.texture !== 'peat');
  return between.length > 0 ? between : layers.map((l) => ({ ...l, thickness: l.row.bottom - l.row.top }));
}

/**
 * Mean of the permeability of as many parts of the ground by their thickness.
 * @param n - parts, 1 and more
 * @returns formula of the mean, arguments thickness and permeability of every part
 */
export function meanByThickness(n: number): Formula {
  const each = Array.from({ length: n }, (_, i) => i + 1);
  return formula({
    title: `Permeability along the ground, mean by thickness (${n})`,
    symbol: 'K',
    unit: 'm/s',
    expression: `(${each.map((i) => `t${i}*k${i}`).join(' + ')})/(${each.map((i) => `t${i}`).join(' + ')})`,
    parameters: Object.fromEntries(
      each.flatMap((i) => [
        [`t${i}`, { meaning: `thickness of part ${i}`, unit: 'm', min: 0, max: 30 }],
        [`k${i}`, { meaning: `permeability of part ${i}`, unit: 'm/s', min: 1e-12, max: 1 }],
      ]),
    ),
    compute: (...args: number[]) => {
      let [sum, thick] = [0, 0];
      for (let i = 0; i < args.length; i += 2) {
        sum += args[i] * args[i + 1];
        thick += args[i];
      }
      return sum / thick;
    },
    validity: 'water that flows along the layers',
    source: 'Darcy, layers side by side',
  });
}

/** The part that lets most through. */
export function mainPart(parts: readonly Part[]): Part {
  return parts.reduce((a, b) =>
    b.thickness * b.permeability.median > a.thickness * a.permeability.median ? b : a,
  );
}

/** Permeability along parts of the ground: mean by thickness, with the spread of what lets most through. */
export function alongParts(parts: readonly Part[], use: Use = unrecorded): LogEstimate {
  const median = use(
    meanByThickness(parts.length),
    ...parts.flatMap(({ thickness, permeability }) => [thickness, permeability.median]),
  );
  return { ...mainPart(parts).permeability, median };
}

/** Parts of the ground below the topsoil that a hole so deep feels, m. */
export function partsAround({ layers, topsoil }: Profile, depth: number): Part[] {
  return partsBetween(layers, topsoil, depth + UNDER_FLOOR);
}

/** Permeability around and under a hole so deep, m/s; its depth m. */
export function permeabilityAround(profile: Profile, depth: number): LogEstimate {
  return alongParts(partsAround(profile, depth));
}

/**
 * Permeability that a hole or pipe gathers water through, m/s: of the layers logged in it, else of all.
 * @param from - depth below which water can enter, m; absent: the topsoil
 * @param to - depth of its floor, m
 */
export function permeabilityOfHole(
  { layers, topsoil }: Profile,
  pit: string,
  from: number | undefined,
  to: number,
): LogEstimate {
  const own = layers.filter(({ row }) => row.pit === pit);
  return alongParts(partsBetween(own.length > 0 ? own : layers, from ?? Math.min(topsoil, to / 2), to));
}

/** Permeability around a hole so deep, m/s, by sample. */
export function permeabilityBySample(
  { ground, unknowns }: { ground: Profile; unknowns: Pick<Unknowns, 'permeability'> },
  depth: number,
): (sample: number) => number {
  const permeability = permeabilityAround(ground, depth);
  return (sample) => logValue(permeability, unknowns.permeability[sample]);
}

/** Depths at which a hole begins to feel another layer, m, the first 0. */
export function reaches({ layers }: Profile): number[] {
  const tops = layers.map(({ row }) => Math.max(row.top - UNDER_FLOOR, 0));
  return [...new Set([0, ...tops])].sort((a, b) => a - b);
}
