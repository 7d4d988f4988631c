import { availableWater } from '../climate/index.js';
import {
  type ColourEvidence,
  type Consistency,
  compositionOf,
  drainablePorosity,
  type LogEstimate,
  measuredPermeability,
  type NamedTest,
  permeabilityFromTexture,
  pooledScatter,
  posteriorPermeability,
  saxtonRawls,
  seasonalHighFromColour,
  strengthFromConsistency,
  strengthFromTests,
  type Texture,
} from '../soil/index.js';
import type { LayerRow, Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import { layerAt, type SoilTest } from './soilTests.js';

/** A layer of the pit log with its permeability. */
export interface GroundLayer {
  row: LayerRow;
  texture: Texture;
  ksat: LogEstimate;
}

/** A permeable layer under the clay, with its pressure. Depths m below the datum ground. */
export interface Seam {
  pit: string;
  top: number;
  /** highest pressure level known, m below the datum ground (negative above it) */
  headDepth: number;
  /** one standard deviation of it, m */
  headSpread: number;
}

/** The ground as the physics needs it. */
export interface Ground {
  layers: GroundLayer[];
  /** around and under the hole, m/s */
  ksat: LogEstimate;
  /** drainable porosity of the ground the table moves in, 0–1 */
  porosity: LogEstimate;
  /** undrained strength of the sides, Pa; absent where no clay was logged */
  strength?: LogEstimate;
  /** root-zone capacity, m */
  rootCapacity: LogEstimate;
  /** thickness of the topsoil, m */
  topsoil: number;
  seams: Seam[];
  /** depth to the top of peat or a highly organic layer, m */
  organicTop?: number;
  /** what the soil's colour says of the seasonal high; absent where none was seen */
  colour?: ColourEvidence;
  clayey: boolean;
}

const SANDY: Texture[] = ['sand', 'loamy sand', 'sandy loam', 'gravel'];
/** Name of the pit that stands in where none was logged. */
const ASSUMED = 'assumed';
/** Rooting depth of turf in heavy ground: FAO-56 Table 22 gives 0.5–1.0 m; clay holds it to the short end. */
const TURF_ROOTS = 0.6;

/** The ground of a survey down to what the pond at a wished depth touches. */
export function groundOf(
  survey: Survey,
  tests: SoilTest[],
  depth: number,
  pits: Map<string, number>,
  assume: Assumptions,
): Ground {
  const rows = survey.layers;
  if (rows.length === 0)
    assume.add(
      'pits.csv',
      'clay',
      '',
      'no pit log: massive clay from 0.3 m assumed, strength and permeability by table',
    );
  const logged: LayerRow[] =
    rows.length > 0
      ? rows
      : [
          {
            pit: ASSUMED,
            top: 0,
            bottom: 0.3,
            texture: 'clay loam',
            structure: 'rooted',
            origin: { file: 'pits.csv' },
          },
          {
            pit: ASSUMED,
            top: 0.3,
            bottom: 3,
            texture: 'clay',
            structure: 'massive',
            consistency: 'firm',
            origin: { file: 'pits.csv' },
          },
        ];
  const topsoil = Math.max(
    0,
    ...logged
      .filter((l) => l.top === 0 && (l.structure === 'rooted' || l.bottom <= 0.35))
      .map((l) => Math.min(l.bottom, 0.4)),
  );
  const layers = layersOf(logged, topsoil, tests);
  const touched = layers
    .map((l) => ({ ...l, thickness: Math.min(l.row.bottom, depth + 0.5) - Math.max(l.row.top, topsoil) }))
    .filter((l) => l.thickness > 0 && l.texture !== 'peat');
  const around =
    touched.length > 0 ? touched : layers.map((l) => ({ ...l, thickness: l.row.bottom - l.row.top }));
  const main = around.reduce((a, b) => (b.thickness * b.ksat.median > a.thickness * a.ksat.median ? b : a));
  const mean =
    around.reduce((sum, l) => sum + l.thickness * l.ksat.median, 0) /
    around.reduce((sum, l) => sum + l.thickness, 0);
  const thickest = around.reduce((a, b) => (b.thickness > a.thickness ? b : a));
  return {
    layers,
    ksat: { ...main.ksat, median: mean },
    porosity: drainablePorosity(thickest.texture),
    strength: strengthOf(
      around.map((l) => l.row),
      assume,
    ),
    rootCapacity: rootCapacityOf(layers),
    topsoil,
    seams: seamsOf(survey, pits),
    organicTop: lowestOf(
      logged.filter((l) => l.texture === 'peat' || (l.organic ?? 0) > 0.2).map((l) => l.top),
    ),
    colour: seasonalHighFromColour(logged),
    clayey: thickest.texture.includes('clay'),
  };
}

/** Layers alike in texture, structure and place share one permeability: the table as prior, what was tested in any of them. */
function layersOf(logged: LayerRow[], topsoil: number, tests: SoilTest[]): GroundLayer[] {
  const textureOf = (l: LayerRow): Texture => l.texture ?? 'clay';
  const groups = groupBy(
    logged,
    (l) => `${textureOf(l)}/${l.structure ?? ''}/${(l.top + l.bottom) / 2 < topsoil}`,
  );
  const tested = [...groups.values()].map((members) => ({ members, tests: testsIn(members, tests) }));
  const scatter = pooledScatter(tested.map((group) => group.tests.map(({ test }) => test)));
  const estimates = new Map<LayerRow, LogEstimate>();
  for (const { members, tests } of tested) {
    const { texture, sand, clay, organic, structure, stones } = members[0];
    const prior = permeabilityFromTexture({
      texture: texture ?? 'clay',
      sand,
      clay,
      organicPercent: organic === undefined ? undefined : organic * 100,
      structure,
      stones,
    });
    const estimate = posteriorPermeability(prior, tests, scatter);
    for (const member of members) estimates.set(member, estimate);
  }
  return logged.map((row) => ({ row, texture: textureOf(row), ksat: estimates.get(row)! }));
}

/** What was measured in a group of layers: their own rows, and the field tests that lie in them. */
function testsIn(members: LayerRow[], tests: SoilTest[]): NamedTest[] {
  const rows = members
    .filter((l) => l.ksat !== undefined)
    .map((l) => ({
      name: `${l.pit} ${round(l.top)}–${round(l.bottom)} m`,
      test: measuredPermeability(l.ksat!),
    }));
  // Without a pit log the assumed profile stands for every hole.
  const here = tests.filter(({ pit, depth }) =>
    layerAt(members, members[0].pit === ASSUMED ? ASSUMED : pit, depth),
  );
  return [...rows, ...here.map(({ name, test }) => ({ name, test }))];
}

const round = (metres: number) => Number(metres.toFixed(3));

function groupBy<T>(items: T[], key: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}

function lowestOf(depths: number[]): number | undefined {
  return depths.length > 0 ? Math.min(...depths) : undefined;
}

function strengthOf(rows: LayerRow[], assume: Assumptions): LogEstimate | undefined {
  const clays = rows.filter(
    (l) => l.texture === undefined || l.texture.includes('clay') || l.texture.includes('silt'),
  );
  if (clays.length === 0) return undefined;
  const tests = clays.map((l) => l.strength).filter((s): s is number => s !== undefined);
  if (tests.length > 0) return strengthFromTests(tests);
  const order = ['very soft', 'soft', 'firm', 'stiff', 'very stiff', 'hard'] as const;
  const words = clays.map((l) => l.consistency).filter((w): w is Consistency => w !== undefined);
  if (words.length > 0)
    return strengthFromConsistency(words.reduce((a, b) => (order.indexOf(b) < order.indexOf(a) ? b : a)));
  assume.add('consistency', 'firm', '', 'no thumb test or strength in pits.csv');
  return { ...strengthFromConsistency('firm'), spread: 0.5 };
}

function rootCapacityOf(layers: GroundLayer[]): LogEstimate {
  const top = layers.find((l) => l.row.top < 0.4) ?? layers[0];
  const { sand, clay } = compositionOf({ texture: top.texture, sand: top.row.sand, clay: top.row.clay });
  const r = saxtonRawls(sand, clay);
  return {
    median: availableWater.compute(r.fieldCapacity, r.wiltingPoint, TURF_ROOTS),
    spread: 0.25,
    evidence: [`retention of ${top.texture}, turf roots ${TURF_ROOTS} m`],
  };
}

function seamsOf(survey: Survey, pits: Map<string, number>): Seam[] {
  const places = [...new Set(survey.heads.filter((h) => h.place.startsWith('below:')).map((h) => h.place))];
  return places.flatMap((place) => {
    const pit = place.slice('below:'.length);
    const ground = pits.get(pit) ?? 0;
    const log = survey.layers.filter((l) => l.pit === pit);
    const sand = log.find((l) => l.top > 0.3 && l.texture !== undefined && SANDY.includes(l.texture));
    const top = sand?.top ?? Math.max(...log.map((l) => l.bottom), 0);
    if (top === 0) return [];
    const rows = survey.heads.filter((h) => h.place === place);
    const highest = rows.reduce((a, b) => (b.depth < a.depth ? b : a));
    return [{ pit, top: top - ground, headDepth: highest.depth - ground, headSpread: highest.spread ?? 0.1 }];
  });
}
