import { type LogEstimate, logValue, type Texture } from '../soil/index.js';
import type { LayerRow } from '../survey/index.js';
import type { Unknowns } from './unknowns.js';

/** A layer of the pit log with its permeability. */
export interface GroundLayer {
  row: LayerRow;
  texture: Texture;
  ksat: LogEstimate;
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
export interface Part extends GroundLayer {
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

/** Permeability along parts of the ground: mean by thickness, with the spread of what lets most through. */
export function alongParts(parts: readonly Part[]): LogEstimate {
  const main = parts.reduce((a, b) => (b.thickness * b.ksat.median > a.thickness * a.ksat.median ? b : a));
  const median =
    parts.reduce((sum, l) => sum + l.thickness * l.ksat.median, 0) /
    parts.reduce((sum, l) => sum + l.thickness, 0);
  return { ...main.ksat, median };
}

/** Parts of the ground below the topsoil that a hole so deep feels, m. */
export function partsAround({ layers, topsoil }: Profile, depth: number): Part[] {
  return partsBetween(layers, topsoil, depth + UNDER_FLOOR);
}

/** Permeability around and under a hole so deep, m/s; its depth m. */
export function ksatAround(profile: Profile, depth: number): LogEstimate {
  return alongParts(partsAround(profile, depth));
}

/**
 * Permeability that a hole or pipe gathers water through, m/s: of the layers logged in it, else of all.
 * @param from - depth below which water can enter, m; absent: the topsoil
 * @param to - depth of its floor, m
 */
export function ksatOfHole(
  { layers, topsoil }: Profile,
  pit: string,
  from: number | undefined,
  to: number,
): LogEstimate {
  const own = layers.filter(({ row }) => row.pit === pit);
  return alongParts(partsBetween(own.length > 0 ? own : layers, from ?? Math.min(topsoil, to / 2), to));
}

/** Permeability around a hole so deep, m/s, by sample. */
export function conductivityAround(
  { ground, unknowns }: { ground: Profile; unknowns: Pick<Unknowns, 'permeability'> },
  depth: number,
): (sample: number) => number {
  const ksat = ksatAround(ground, depth);
  return (sample) => logValue(ksat, unknowns.permeability[sample]);
}

/** Depths at which a hole begins to feel another layer, m, the first 0. */
export function reaches({ layers }: Profile): number[] {
  const tops = layers.map(({ row }) => Math.max(row.top - UNDER_FLOOR, 0));
  return [...new Set([0, ...tops])].sort((a, b) => a - b);
}
