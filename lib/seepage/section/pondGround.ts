import type { SectionPoint } from './polyline.js';
import type { SectionSoil } from './soil.js';

/** A pipe across the section. */
export interface SectionPipe extends SectionPoint {
  /** effective, m */
  radius: number;
  /** water level in it, m above the datum; absent: its middle. It never counts below the middle. */
  level?: number;
  /** head lost on entry over the flow a metre of pipe, s/m; absent: none beyond the effective radius */
  entry?: number;
}

/** A lined pond and the ground around it, in vertical section; heights m above any datum. */
export interface PondGround {
  /** the liner from its left rim to its right, m */
  outline: SectionPoint[];
  /** absent: tight; else water that passes a square metre of it for each metre of head, 1/s */
  leakance?: number;
  /** level of the pond's water, m; at or below the lowest point of the liner: empty */
  pond: number;
  /** ground surface from end to end; the ends are those of the section */
  surface: SectionPoint[];
  /** from the surface down, thickness m; the last reaches to the base */
  layers: { thickness: number; soil: SectionSoil }[];
  /** bottom of the section, tight, m */
  base: number;
  /** dug wider than the liner and filled back, down to `bottom`, or to the liner's lowest point, m */
  ring?: { width: number; bottom?: number; soil: SectionSoil };
  /** under the floor and the foot of the ring, m */
  blanket?: { thickness: number; soil: SectionSoil };
  pipes: SectionPipe[];
  /** head at the far ends, m */
  far: { left: number; right: number };
  /** rain that enters the ground, m/s; water comes out wherever the table reaches the surface */
  rain: number;
}

/** What is at a place: index of the soil, or why there is none. */
export type Place = number | 'air' | 'pond';

/** Soils of a pond's ground in one list: layers, ring, blanket. */
export function soilsOf({ layers, ring, blanket }: PondGround): SectionSoil[] {
  return [...layers.map((l) => l.soil), ...(ring ? [ring.soil] : []), ...(blanket ? [blanket.soil] : [])];
}

/** Lowest height of the liner, m. */
export function floorOf({ outline }: PondGround): number {
  return Math.min(...outline.map((p) => p.z));
}
