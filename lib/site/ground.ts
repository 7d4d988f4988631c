import { availableWater } from '../climate/index.js';
import {
  type ColourEvidence,
  type Consistency,
  compositionOf,
  drainablePorosity,
  type LogEstimate,
  measuredPermeability,
  permeabilityFromTexture,
  pooledScatter,
  posteriorPermeability,
  type Structure,
  saxtonRawls,
  seasonalHighFromColour,
  strengthFromConsistency,
  strengthFromTests,
  type Texture,
} from '../soil/index.js';
import type { LayerRow, Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import { textureOf } from './layerTexture.js';
import {
  alongParts,
  type GroundLayer,
  type LayerKnown,
  type Profile,
  partsAround,
  partsBetween,
  reaches,
} from './profile.js';
import type { Seam } from './seam.js';
import { layerAt, type SoilTest } from './soilTests.js';

/** A kind of ground that the sides are cut in, from its shallowest top, m below the ground at its pit. */
export interface SideLayer {
  top: number;
  texture: Texture;
  structure?: Structure;
}

/** The ground as the physics needs it. */
export interface Ground extends Profile {
  /** of the ground that the table moves in: permeability, m/s, and drainable porosity, 0–1 */
  permeability: LogEstimate;
  porosity: LogEstimate;
  /** undrained strength of the sides, Pa, of holes deeper than `from`, m; shallowest first */
  strengths: { from: number; strength?: LogEstimate }[];
  /** root-zone capacity, m */
  rootCapacity: LogEstimate;
  /** kinds of ground below the topsoil */
  sides: SideLayer[];
  seams: Seam[];
  /** depth to the top of peat or a highly organic layer, m */
  organicTop?: number;
  /** what the soil's colour says of the seasonal high; absent where none was seen */
  colour?: ColourEvidence;
  clayey: boolean;
}

/** Name of the pit that stands in where none was logged. */
const ASSUMED = 'assumed';
/** Rooting depth of turf in heavy ground: FAO-56 Table 22 gives 0.5–1.0 m; clay holds it to the short end. */
const TURF_ROOTS = 0.6;

/** Down to here the table moves, m: what lies deeper says little of how it rises and falls. Our choice. */
const TABLE_REACH = 1.5;

/** The ground of a survey, whatever the pond; its seams are found once the wet months are known. */
export function groundOf(survey: Survey, tests: SoilTest[], assume: Assumptions): Omit<Ground, 'seams'> {
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
  const around = partsBetween(layers, topsoil, TABLE_REACH);
  const thickest = around.reduce((a, b) => (b.thickness > a.thickness ? b : a));
  return {
    layers,
    permeability: alongParts(around),
    porosity: drainablePorosity(thickest.texture),
    strengths: strengthsOf({ layers, topsoil }, assume),
    rootCapacity: rootCapacityOf(layers),
    topsoil,
    sides: sidesOf(layers, topsoil),
    organicTop: lowestOf(
      logged.filter((l) => l.texture === 'peat' || (l.organic ?? 0) > 0.2).map((l) => l.top),
    ),
    colour: seasonalHighFromColour(logged),
    clayey: thickest.texture.includes('clay'),
  };
}

/** Layers alike in texture, structure and place share one permeability: the table as prior, what was tested in any of them. */
function layersOf(logged: LayerRow[], topsoil: number, tests: SoilTest[]): GroundLayer[] {
  const groups = groupBy(
    logged,
    (l) => `${textureOf(l)}/${l.structure ?? ''}/${(l.top + l.bottom) / 2 < topsoil}`,
  );
  const tested = [...groups.values()].map((members) => ({ members, tests: testsIn(members, tests) }));
  const scatter = pooledScatter(tested.map((group) => group.tests.map(({ test }) => test)));
  const estimates = new Map<LayerRow, Pick<GroundLayer, 'permeability' | 'known'>>();
  for (const { members, tests } of tested) {
    const { sand, clay, organic, structure, stones } = members[0];
    const prior = permeabilityFromTexture({
      texture: textureOf(members[0]),
      sand,
      clay,
      organicPercent: organic === undefined ? undefined : organic * 100,
      structure,
      stones,
    });
    const permeability = posteriorPermeability(prior, tests, scatter);
    for (const member of members) estimates.set(member, { permeability, known: { prior, tests, scatter } });
  }
  return logged.map((row) => ({ row, texture: textureOf(row), ...estimates.get(row)! }));
}

/** What was measured in a group of layers: their own rows, and the field tests that lie in them. */
function testsIn(members: LayerRow[], tests: SoilTest[]): LayerKnown['tests'] {
  const rows = members
    .filter((l) => l.ksat !== undefined)
    .map((l) => ({
      name: `${l.pit} ${round(l.top)}–${round(l.bottom)} m`,
      test: measuredPermeability(l.ksat!),
      origin: { ...l.origin, column: 'ksat' },
    }));
  // Without a pit log the assumed profile stands for every hole.
  const here = tests.filter(({ pit, depth }) =>
    layerAt(members, members[0].pit === ASSUMED ? ASSUMED : pit, depth),
  );
  return [...rows, ...here.map(({ name, test, origin }) => ({ name, test, origin }))];
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

/**
 * Undrained strength of the sides of a hole.
 * @param ground - of a site
 * @param depth - of the hole, m, above 0
 * @returns median, Pa, and its spread; undefined where the hole meets no clay
 */
export function strengthAt(ground: Pick<Ground, 'strengths'>, depth: number): LogEstimate | undefined {
  return ground.strengths.findLast(({ from }) => from < depth)?.strength;
}

/** Nobody rolled or pressed the clay. */
const FIRM: LogEstimate = { ...strengthFromConsistency('firm'), spread: 0.5 };

function strengthsOf(profile: Profile, assume: Assumptions): Ground['strengths'] {
  const known = reaches(profile).map((from) => {
    // A hair deeper than where a layer begins to be felt: it is in.
    const clays = partsAround(profile, from + 1e-9)
      .map(({ row }) => row)
      .filter((layer) => textureOf(layer).includes('clay'));
    return { from, clay: clays.length > 0, strength: strengthOf(clays) };
  });
  const strengths = known.map(({ from, clay, strength }, i) => ({
    from,
    strength: clay
      ? (strength ?? known.slice(i).find((deeper) => deeper.strength)?.strength ?? FIRM)
      : undefined,
  }));
  if (strengths.some(({ strength }) => strength === FIRM))
    assume.add('consistency', 'firm', '', 'no thumb test or strength in pits.csv');
  return strengths;
}

function strengthOf(clays: LayerRow[]): LogEstimate | undefined {
  const tests = clays.map((l) => l.strength).filter((s): s is number => s !== undefined);
  if (tests.length > 0) return strengthFromTests(tests);
  const order = ['very soft', 'soft', 'firm', 'stiff', 'very stiff', 'hard'] as const;
  const words = clays.map((l) => l.consistency).filter((w): w is Consistency => w !== undefined);
  if (words.length === 0) return undefined;
  return strengthFromConsistency(words.reduce((a, b) => (order.indexOf(b) < order.indexOf(a) ? b : a)));
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

/** Every kind of ground below the topsoil, from where it was met first. */
function sidesOf(layers: GroundLayer[], topsoil: number): SideLayer[] {
  const kinds = groupBy(
    layers.filter(({ row }) => row.bottom > topsoil + 1e-9),
    ({ texture, row }) => `${texture}/${row.structure ?? ''}`,
  );
  return [...kinds.values()].map((members) => ({
    top: Math.min(...members.map(({ row }) => row.top)),
    texture: members[0].texture,
    structure: members[0].row.structure,
  }));
}
