/**
 * Sums, differences, levels and shares that carry a number from one formula to the next: nothing stands outside to hold them
 * against but arithmetic, done here by hand.
 */
import * as basis from '../../lib/basis/index.js';
import * as digging from '../../lib/digging/index.js';
import * as drain from '../../lib/drain/index.js';
import type { Formula } from '../../lib/formula/index.js';
import * as groundwater from '../../lib/groundwater/index.js';
import * as heads from '../../lib/heads/index.js';
import * as options from '../../lib/options/index.js';
import * as reliability from '../../lib/reliability/index.js';
import * as report from '../../lib/report/index.js';
import * as seepage from '../../lib/seepage/index.js';
import * as site from '../../lib/site/index.js';
import * as soil from '../../lib/soil/index.js';
import * as uplift from '../../lib/uplift/index.js';
import * as works from '../../lib/works/index.js';
import type { Check } from './check.js';

const rooms: Record<string, unknown> = {
  ...basis,
  ...digging,
  ...drain,
  ...groundwater,
  ...heads,
  ...options,
  ...reliability,
  ...seepage,
  ...site,
  ...soil,
  ...uplift,
  ...report,
  ...works,
};

/** Name, what is put in, and what comes out by hand. */
const BY_HAND: [name: string, put: number[], expected: number][] = [
  // Levels and heads.
  ['overDatum', [8.36, 10], -1.64],
  ['floorAt', [0.3, 1], -0.7],
  ['levelOfDepth', [1.2], -1.2],
  ['plugSpare', [0, -2.5, 1.25], 2],
  ['plugSpare', [0.5, 1.75, 1.25], -1],
  ['plugWithLoad', [18500, 9810], 28310],
  ['leaningCut', [2, 0.261, 3600, 18000], 1.8],
  ['sideFactor', [3, 1.5], 2],
  ['logWanted', [1, 1, 19620, 0], 2],
  ['logWanted', [1, 1, 19620, 0.5], 3],
  ['seamDepth', [1.1, 2, 0.05], 1],
  ['facingThickness', [0.12, 0.75], 0.2],
  ['fullAt', [0.3, 0.2], 0.5],
  ['holdAt', [-1, 0.1, 0.25], -0.65],
  // 0.1 m of concrete at 24.0 kN/m³: 0.1 × (24 − 9.81) ÷ 9.81 under water, 2.4 ÷ 9.81 without.
  ['emptiedSlabHead', [(0.1 * 14190) / 9810, 24000], 2400 / 9810],
  ['dugTo', [1, 0.2, 0.15], 0.95],
  ['sideHeight', [1.15, 0.12], 1.27],
  ['depthRoom', [1.2, 1], 0.2],
  // Chances.
  ['onceIn', [200], 0.005],
  ['chanceAYear', [12.8, 64, 10], 0.02],
  ['lowEnd', [0.03, 0.02], 0.02],
  ['highEnd', [0.03, 0.02], 0.03],
  ['overAccepted', [0.05, 0.02], 0.03],
  ['soundInflow', [1, 2, 3, 4, 5], 15],
  ['inflowLeft', [10, 6, 0.05], 4.3],
  ['lowestOver', [0.12, -1, 0.1, 0.02], 0.2],
  ['lowestAsKept', [0.12, 0.05], 0.05],
  ['higherLevel', [-0.3, 0.1], 0.1],
  ['belowFull', [0.3, 0.22], 0.08],
  ['overDipPipe', [0.1, 0.12, 0.05], 0.17],
  ['momentBetween', [0.01, 0.02, 2], 0.02],
  ['momentTrial', [0.03, 0.02], 0.5],
  ['headInBed', [1, 0.05, 0.02], 0.07],
  ['netOnLiner', [0.07, 0.15, 0.02], -0.1],
  // Quantities.
  ['layerVolume', [5.4, 0.15], 0.81],
  ['trenchVolume', [16.3, 0.3, 1.15, 0.3], 3.54525],
  ['pitVolume', [0.6, 1.5], 0.54],
  ['trenchLining', [10, 0.3, 0.15], 6],
  ['runAtRim', [-1.15, 0.3], 1.15],
  ['runAtRim', [-0.1, 0.3], 0.3],
  ['sumpDug', [0.15, -0.9, 0.4], 1.45],
  ['loosened', [10, 0.3], 13],
  ['earthLeft', [10, 4], 6],
  ['earthLeft', [4, 10], 0],
  ['cutHeight', [0.2, 0.05], 0.15],
  ['cutHeight', [0.2, 0.3], 0],
  ['cutOut', [0.5, 0.6], 0.1],
  // Half of 15 m² stands 0.5 m above the rim at its highest: a wedge of 1.875 m³. Upright no more; at 1 to 1 a triangle of
  // 0.125 m² along 5 m, and over half of 12 m the mean of such triangles, a third: 0.625 and 0.25.
  ['groundCut', [15, 0.5, 1, 0, 5, 22], 1.875],
  ['groundCut', [15, 0.5, 1, 1, 5, 22], 2.75],
  ['boxAlong', [6, 0.5], 8],
  ['ovalAlong', [16, 3, 3], 2],
  ['ovalAlong', [16, 3, 1], 3],
  ['ringDug', [16, 0.2, 1.2, 1], 3.2],
  ['wholeHole', [1, 10, 2], 13],
  // A frustum of a pyramid with bases of 16 and 4 m², 3 m high: h/3 (16 + 8 + 4).
  ['prismoid', [3, 16, 9, 4], 28],
  ['insetBetween', [0.2, 0.8], 0.5],
  ['belowShelf', [1, 0.3], 0.7],
  ['withShelf', [4, 6], 10],
  // Sides of 3 to 4 slope: 5 along the slope for 4 down.
  ['slopedSides', [16, 8, 4, 0.75], 60],
  ['widerSide', [4, 0.5], 5],
  ['edgeLevel', [0.3, 0.1], 0.4],
  ['edgeLevel', [-0.5, 0.1], 0],
  ['edgeOut', [0.8, 0.4, 0.2], 0.52],
  ['bankHeight', [0.2, 0.4], 0.6],
  ['bankLeast', [0.4, 0.12], 0.28],
  ['bankLeast', [0.4, 0.5], 0],
  // Of 20 m round the ends have 8: half of that where the ground rises by twice the height.
  ['bankLength', [20, 6, 0.4, 0.8], 4],
  ['bankLength', [20, 6, 0.4, 0.1], 8],
  ['pastPond', [4, 1], 6],
  ['sheetArea', [7, 6], 42],
  ['handHours', [8, 0.4, 7, 0.7], 30],
  ['cutoffLevel', [0.6, 1, 0.05], -0.35],
  ['keptSum', [0.1, 0.05], 0.15],
  ['waterOfSum', [0.15, 0.05], 0.1],
  ['pondOfDay', [0.3, 0.1, 0.15], 0.25],
  ['lowestUsual', [0.3, 0.05], 0.25],
  ['headOver', [0.2, -1], 1.2],
  ['headOver', [-1, -1.0004], 0],
  ['depthOver', [0.2, -1, 0], 1.2],
  ['depthOver', [-2, -1, 0.000001], 0.000001],
  ['spareHead', [0.3, -1.12], 1.42],
  ['holdingHead', [-1.12, 1.42, -1], 1.3],
  ['withSlab', [0.25, 0.1], 0.35],
  ['higherWater', [-1, -0.5], -0.5],
  ['headOfPressure', [9810], 1],
  ['slabPressure', [9810, 2], 29430],
  ['flotationOfFloor', [19620, 1], 2],
  ['plugLeft', [2.6, -0.6], 2],
  ['plugWeight', [18500, 2], 37000],
  ['floodAbove', [-1.2, 0.4], -0.8],
  ['bedUnderside', [-1, 0.15], -1.15],
  ['reliefAt', [-1.15, -1.2, 0.17], -1.03],
  // The pond from above.
  ['floorSide', [4.6, 0.8, 1], 3],
  ['circleRadius', [Math.PI * 4], 2],
  ['boxOutline', [4, 3, 0.5], 10],
  ['ovalOutline', [4, 4, 1], 2 * Math.PI],
  ['floorCounted', [0.01], 0.05],
  ['missingWater', [0.02, 0.05, 5], 0.01],
  ['ringFrom', [16, 0.15], 2.4],
  ['ringFloor', [0.5, 0.9], -0.5],
  ['tubHolds', [5, 0.25, 0.05, 2, 0.1, 0, -1], 0.2625],
  ['tubGives', [0.3, 0.1], 0.2],
  // Ground.
  ['permeabilityAt', [1e-7, 1, 0], 1e-7],
  ['priorVariance', [1.6, 0.4], 2.4],
  // Water to the drain.
  ['rainIntensity', [0.036, 3600], 1e-5],
  ['rainWithRoof', [0.03, 12, 0.9, 40], 0.12],
  ['overBrim', [0.03, 0.01, 3600, 18], 1e-4],
  ['throughRing', [2e-4, 0.05], 1e-5],
  ['ringInStorm', [2e-5, 3e-5], 5e-5],
  ['allInflow', [1e-6, 2e-6, 3e-6, 4e-6, 5e-6], 1.5e-5],
  ['risingInflow', [1e-6, 2e-6], 3e-6],
  ['sideInflow', [5e-6, 3e-6], 2e-6],
  ['evenInflow', [1e-6, 1e-6, 3, 1], 1e-6],
  // Links of the drain.
  ['runLength', [0.8, 16.3], 17.1],
  ['fallThere', [-1, 0.15, -1.64], 0.49],
  ['slopeThere', [0.49, 24.5], 0.02],
  ['slopeThere', [-1, 24.5], 0.0005],
  ['timesOver', [6e-3, 2e-3], 3],
  ['bedReserve', [6, 3], 4],
  ['fallReserve', [0.5, 0.25], 2],
  ['floodReserve', [-1, -1.3, 0.03], 10],
  ['bedHolds', [6, 0.15, 0.35], 0.315],
  ['halfPipe', [0.1], 0.05],
  ['spacingAllowed', [2.5], 5],
  ['ringPipe', [3, 2], 10],
  ['branchedPipe', [3, 4, 2], 11],
  ['branchSpacing', [3, 4], 0.75],
  ['openArea', [0.002, 0.5, 3], 0.003],
  ['layerPotential', [0, 0.02, 0.1, 0, 0.1], 1e-4],
  ['reachInBed', [3e-5, 1e-5, 1e-5], 2],
  ['sizeBetween', [1e-5, 1e-3, 0.5, 0.25, 0.75], 1e-4],
  ['sizeReserve', [6e-4, 2e-4], 3],
  ['lesserReserve', [2, 1.5], 1.5],
  ['slotAllowed', [2.4e-3], 2e-3],
  ['retentionCoarse', [1e-3], 4e-3],
  // Sump and pump.
  ['liftTo', [0.6, -1.05], 1.65],
  ['lineLength', [14, 1.65], 15.65],
  ['fullVelocity', [Math.PI * 1e-4, 0.02], 1],
  ['reynoldsNumber', [1.5, 0.04, 1.5e-6], 40000],
  ['relativeRoughness', [1e-5, 0.04], 2.5e-4],
  ['laminarFriction', [640], 0.1],
  ['pumpedHead', [1.65, 1], 2.65],
  ['pumpHead', [6, 1e-3, 2e-3], 4.5],
  ['sumpHolds', [0.3, -0.9, -1.05, 0.6], 0.354],
  ['sumpStroke', [0.18, 0.6], 0.5],
  ['hoursToFill', [0.36, 1e-4], 1],
  ['yearsWater', [1e-6], 31.5576],
  ['kilowattHours', [7.2e6], 2],
  // Next door.
  ['flowDepth', [0.5, 1.8, 5], 0.5],
  ['placeInReach', [1.8, 6, 5], 5],
  ['loweredBy', [1.1, 1], 0.1],
  ['leftByTrial', [2.5, 2.5], 0],
];

export const carriedChecks: Check[] = BY_HAND.map(([name, put, expected]) => ({
  covers: [name],
  what: `${name} of ${put.map((value) => Number(value.toPrecision(4))).join(', ')}`,
  kind: 'exact',
  source: 'by hand',
  ours: () => (rooms[name] as Formula).compute(...put),
  expected,
  tolerance: 1e-12 + 1e-9 * Math.abs(expected),
}));
