import type { UsdaClass } from '../soil/index.js';

/** A point of the triangle: sand and clay in percent, silt the rest. */
type TrianglePoint = [sand: number, clay: number];

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

/** Where the name of each class is written, clear of its typical composition. */
export const CLASS_LABELS: Record<UsdaClass, TrianglePoint> = {
  sand: [93.5, 2.5],
  'loamy sand': [79, 8.5],
  'sandy loam': [62.5, 15.5],
  loam: [42, 12],
  'silt loam': [27, 9],
  silt: [5, 8.5],
  'sandy clay loam': [58, 30.5],
  'clay loam': [38, 30.5],
  'silty clay loam': [9, 30.5],
  'sandy clay': [51, 45],
  'silty clay': [5, 50],
  clay: [22, 60],
};
