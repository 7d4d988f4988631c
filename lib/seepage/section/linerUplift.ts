import type { PondSection } from './pondSection.js';
import type { SectionState } from './saturated.js';

/** What the liner feels at a point. */
export interface LinerPoint {
  /** to the right, and upwards above the datum of the section, m */
  x: number;
  z: number;
  /** along the liner from its left rim, m */
  along: number;
  /** head of the ground's water there, m above the datum */
  head: number;
  /** pressure of it, m of water; nought above the water table */
  pressure: number;
  /** net head that lifts: head less the pond's level, or less the liner's own height where it is dry inside; m */
  uplift: number;
}

/**
 * Pressure and uplift along the liner from the left rim to the right.
 * @param pond - from {@link pondSection}
 * @param state - of its section, from {@link solveFreeSurface}, {@link solveSaturated} or {@link runSection}
 * @returns a point for each face of a cell along the liner: head, m above the datum; pressure and uplift, m of water
 */
export function linerUplift({ ground, liner }: PondSection, { head }: SectionState): LinerPoint[] {
  return liner.map(({ cell, x, z, along }) => ({
    x,
    z,
    along,
    head: head[cell],
    pressure: Math.max(head[cell] - z, 0),
    uplift: head[cell] - Math.max(ground.pond, z),
  }));
}
