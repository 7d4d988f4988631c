import { method } from '../formula/index.js';
import {
  measuredPermeability,
  type PermeabilityTest,
  permeabilityFromTexture,
  strengthFromConsistency,
  type Texture,
  textureClass,
  USDA_CLASSES,
} from '../soil/index.js';
import type { LayerRow, Origin, Warning } from '../survey/index.js';
import { formatQuantity } from '../units/index.js';
import type { GroundLayer } from './profile.js';
import { layerAt, type SoilTest } from './soilTests.js';

export const evidenceAgainstEvidence = method({
  title: 'Evidence against evidence',
  what:
    'A layer whose name, grain sizes, thumb test and measurements cannot all be right: told with what the answer ' +
    'takes and what it would mean if the other were right.',
  assumptions: [
    'a permeability contradicts a texture beyond 2.5 standard deviations of both together, about a factor of 80 for ' +
      'a clay and one test (our choice)',
    'grain sizes contradict a word where they make a soil ten times more or less permeable, a strength a thumb test ' +
      'beyond a factor of 3 (our choice)',
    'water that leaves a clay faster than a gravel leaves through something else',
  ],
  source: 'common practice; spreads of the estimates compared',
});

const BEYOND = 2.5;
const GRAIN_FACTOR = 10;
const STRENGTH_FACTOR = 3;

/** What the evidence of a survey says against itself, each with its consequence. */
export function contradictions(layers: readonly GroundLayer[], tests: readonly SoilTest[]): Warning[] {
  return layers.flatMap((layer) => {
    const { row } = layer;
    if (row.texture === undefined) return strengthAgainstThumb(row);
    const own = row.ksat === undefined ? [] : [measured('ksat', row.origin, measuredPermeability(row.ksat))];
    const here = tests.filter(({ pit, depth }) => pit === row.pit && layerAt([row], pit, depth));
    return [
      ...grainsAgainstWord(row, row.texture),
      ...strengthAgainstThumb(row),
      ...[...own, ...here].flatMap((test) => testAgainstWord(layer, row.texture as Texture, test)),
    ];
  });
}

const measured = (name: string, origin: Origin, test: PermeabilityTest) => ({ name, origin, test });
const speed = (permeability: number) => formatQuantity(permeability, 'permeability', 'metric');
const place = ({ pit, top, bottom }: LayerRow) => `${pit}, ${round(top)} to ${round(bottom)} m`;
const round = (metres: number) => Number(metres.toFixed(2));

function testAgainstWord(
  { row, permeability }: GroundLayer,
  texture: Texture,
  { name, origin, test }: ReturnType<typeof measured>,
): Warning[] {
  const word = permeabilityFromTexture({ ...row, texture, organicPercent: undefined });
  const gravel = permeabilityFromTexture({ texture: 'gravel' });
  const off = Math.log(test.permeability / word.median);
  const bound = (test.says === 'slower than' && off > 0) || (test.says === 'faster than' && off < 0);
  if (bound || Math.abs(off) <= BEYOND * Math.hypot(word.spread, test.spread)) return [];
  const told = `${place(row)} is called ${texture}, about ${speed(word.median)}; ${name} gives ${speed(test.permeability)}`;
  const taken = `the answer takes ${speed(permeability.median)}`;
  const times = Math.exp(Math.abs(off)).toPrecision(1);
  if (texture.includes('clay') && test.permeability > gravel.median)
    return [
      {
        code: 'faster-than-gravel',
        message: `${told}, faster than gravel: a burrow, a crack, a pipe trench or a slip of units; ${taken} - test again in another hole`,
        ...origin,
      },
    ];
  const consequence =
    off > 0
      ? `if the test is right an emptied pond feels the water ${Number(times)} times sooner and a drain runs that much fuller`
      : `if the test is right a drain is hardly reached by the water, and a hole takes ${Number(times)} times longer to tell its level`;
  return [
    {
      code: 'texture-against-test',
      message: `${told}, as ${nearestTexture(test.permeability)} does; both count and ${taken}; ${consequence} - roll a ribbon of that layer, and test again`,
      ...origin,
    },
  ];
}

function nearestTexture(permeability: number): Texture {
  const away = (texture: Texture) =>
    Math.abs(Math.log(permeabilityFromTexture({ texture }).median / permeability));
  return [...USDA_CLASSES, 'gravel' as const].reduce<Texture>(
    (best, one) => (away(one) < away(best) ? one : best),
    'clay',
  );
}

function grainsAgainstWord(row: LayerRow, texture: Texture): Warning[] {
  const { sand, silt, clay, origin } = row;
  if (sand === undefined || silt === undefined || clay === undefined) return [];
  // Percentages may miss 100 by a rounding.
  const all = sand + silt + clay;
  const grains = textureClass(sand / all, clay / all);
  const by = (name: Texture) => permeabilityFromTexture({ texture: name }).median;
  const times = by(grains) / by(texture);
  if (times < GRAIN_FACTOR && times > 1 / GRAIN_FACTOR) return [];
  return [
    {
      code: 'texture-against-grains',
      message: `${place(row)} is called ${texture}, and its percentages are those of ${grains}: the answer takes the percentages, ${speed(by(grains))} rather than ${speed(by(texture))} - check that they are of this layer`,
      ...origin,
    },
  ];
}

function strengthAgainstThumb({ strength, consistency, origin, ...row }: LayerRow): Warning[] {
  if (strength === undefined || consistency === undefined) return [];
  const thumb = strengthFromConsistency(consistency).median;
  if (strength < thumb * STRENGTH_FACTOR && strength > thumb / STRENGTH_FACTOR) return [];
  const kilopascals = (value: number) => formatQuantity(value, 'pressure', 'metric');
  return [
    {
      code: 'strength-against-thumb',
      message: `${place({ ...row, origin })} is called ${consistency}, about ${kilopascals(thumb)}, and was measured at ${kilopascals(strength)}: the sides are judged by the measurement - check its unit, and press again`,
      ...origin,
    },
  ];
}
