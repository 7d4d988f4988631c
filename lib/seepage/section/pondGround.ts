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

/** A layer of ground, or of what is laid. */
export interface Stratum {
  /** m */
  thickness: number;
  soil: SectionSoil;
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
  /** from the surface down; the last reaches to the base */
  layers: Stratum[];
  /** bottom of the section, tight, m */
  base: number;
  /** dug wider than the liner and filled back, down to `bottom`, or to the liner's lowest point, m */
  ring?: { width: number; bottom?: number; soil: SectionSoil };
  /** under the floor and the foot of the ring, from the liner down */
  blanket?: Stratum[];
  pipes: SectionPipe[];
  /** head at the far ends, m above the datum */
  far: { left: number; right: number };
  /** rain that enters the ground, m/s; water comes out wherever the table reaches the surface */
  rain: number;
}

/** What is at a place: index of the soil, or why there is none. */
export type Place = number | 'air' | 'pond';

/** Soils of a pond's ground in one list: layers, ring, blanket. */
export function soilsOf({ layers, ring, blanket }: PondGround): SectionSoil[] {
  return [...layers.map((l) => l.soil), ...(ring ? [ring.soil] : []), ...(blanket ?? []).map((l) => l.soil)];
}

/** Heights of the undersides of a blanket's strata, from the liner down, m. */
export function undersidesOf({ blanket = [], ...ground }: PondGround): number[] {
  let z = floorOf(ground);
  return blanket.map(({ thickness }) => {
    z -= thickness;
    return z;
  });
}

/** Lowest height of the liner, m. */
export function floorOf({ outline }: Pick<PondGround, 'outline'>): number {
  return Math.min(...outline.map((p) => p.z));
}
