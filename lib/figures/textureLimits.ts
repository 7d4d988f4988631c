import type { UsdaClass } from '../soil/index.js';

/** A point of the triangle: sand and clay in percent, silt the rest. */
export type TrianglePoint = [sand: number, clay: number];

/** Limits between the USDA classes: sand and clay, in percent, at both ends of each line. */
export const TEXTURE_LIMITS: [sand: number, clay: number, sandEnd: number, clayEnd: number][] = [
  [85, 0, 90, 10],
  [70, 0, 85, 15],
  [80, 20, 52, 20],
  [52, 20, 52, 7],
  [52, 7, 43, 7],
  [50, 0, 23, 27],
  [20, 0, 8, 12],
  [8, 12, 0, 12],
  [52, 20, 45, 27],
  [45, 27, 0, 27],
  [45, 27, 45, 55],
  [65, 35, 45, 35],
  [20, 27, 20, 40],
  [45, 40, 0, 40],
  [20, 40, 0, 60],
];

/** Where the name of each class is written. */
export const CLASS_LABELS: Record<UsdaClass, TrianglePoint> = {
  sand: [92.5, 3],
  'loamy sand': [80.5, 6],
  'sandy loam': [64, 11],
  loam: [41, 18],
  'silt loam': [21, 14],
  silt: [7, 5],
  'sandy clay loam': [60, 27],
  'clay loam': [33, 33.5],
  'silty clay loam': [10.5, 33.5],
  'sandy clay': [52, 41.5],
  'silty clay': [7, 46],
  clay: [22, 58],
};
