/** pits.csv of an invented garden: what the spade meets, and what lies under it. */
import type { Plot } from './generate.js';

export interface Layer {
  top: number;
  bottom: number;
  texture: string;
  structure: string;
  mottles: string;
  consistency: string;
  ksat: string;
}

export interface GeneratedGround {
  csv: string;
  pits: { name: string; bottom: number }[];
  /** depth of a permeable seam in the first pit and how its water is known */
  seam?: { top: number; head: number; known: 'measured' | 'struck' | 'looked' | 'logged only' };
  /** whether a pipe in it takes days to fill */
  slow: boolean;
}

const BODIES = [
  ['clay', 8],
  ['soft clay', 2],
  ['cracked clay', 2],
  ['sand', 1.5],
  ['sandy loam', 1],
  ['gravel', 0.7],
  ['silt loam', 1],
  ['peat', 1],
  ['made ground', 1],
] as const;
type Body = (typeof BODIES)[number][0];

const TEXTURES: Record<Body, [texture: string, structure: string, consistency: readonly string[]]> = {
  clay: ['clay', 'blocky', ['firm', 'firm', 'stiff', 'stiff', 'very stiff']],
  'soft clay': ['silty clay', 'massive', ['very soft', 'soft']],
  'cracked clay': ['clay', 'cracked', ['firm', 'stiff']],
  sand: ['sand', '', ['']],
  'sandy loam': ['sandy loam', '', ['', 'firm']],
  gravel: ['gravel', '', ['']],
  'silt loam': ['silt loam', 'massive', ['soft', 'firm']],
  peat: ['peat', '', ['soft', '']],
  'made ground': ['made ground', '', ['', 'firm']],
};
/** Bodies that lie over clay: the pond may reach through them. */
const OVER_CLAY: readonly string[] = ['peat', 'made ground', 'sandy loam'];

/** One to three pits that agree on the ground, with a seam in some. */
export function groundOf({ dice, tape, depth, high, traits }: Plot): GeneratedGround {
  const body = weighted(dice.uniform(), BODIES);
  traits.push(body);
  const known = depth + (dice.chance(0.8) ? dice.between(0.4, 1.8) : dice.between(-0.15, 0.3));
  const seam =
    !['sand', 'gravel'].includes(body) && dice.chance(0.35)
      ? {
          top: depth + dice.between(-0.2, 1.2),
          head: dice.between(-0.1, Math.max(high + 0.3, 0.6)),
          known: dice.one(['measured', 'struck', 'looked', 'logged only'] as const),
        }
      : undefined;
  if (seam) traits.push(`seam ${seam.known}`);
  const seamTexture = dice.one(['sand', 'gravel', 'loamy sand', 'sandy loam', 'silt', 'rock']);
  const bottom = Math.max(known, 0.6, seam ? seam.top + 0.25 : 0);
  const over = OVER_CLAY.includes(body) ? dice.between(0.4, depth + 0.6) : undefined;
  const [texture, structure, consistencies] = TEXTURES[body];
  const measured = dice.chance(0.25);
  const pits = Array.from({ length: dice.whole(1, 3) }, (_, at) => ({
    name: `P${at + 1}`,
    bottom: at === 0 ? bottom : Math.max(bottom * dice.between(0.7, 1), 0.6),
  }));
  const rows = pits.flatMap(({ name, bottom }, at) => {
    const layers: Layer[] = [];
    let top = 0;
    const down = (to: number, of: Partial<Layer> & { texture: string }) => {
      const end = Math.min(to, bottom);
      if (end - top < 0.05) return;
      const mottles = top > high + 0.1 ? dice.one(['many', 'grey', 'common', '']) : dice.one(['few', 'none']);
      layers.push({ top, bottom: end, structure: '', consistency: '', ksat: '', mottles, ...of });
      top = end;
    };
    down(dice.between(0.2, 0.35), { texture: 'clay loam', structure: 'rooted', consistency: 'firm' });
    const ksat =
      measured && !over && texture.includes('clay') ? (10 ** dice.between(-9, -6.3)).toExponential(1) : '';
    const main = { texture, structure, consistency: dice.one(consistencies), ksat };
    const below = { texture: 'clay', structure: 'massive', consistency: dice.one(['firm', 'stiff']) };
    if (over) down(Math.min(over, seam?.top ?? over), main);
    const rest = over ? below : main;
    if (seam && (at === 0 || seam.top < bottom - 0.1)) {
      down(seam.top, rest);
      if (seamTexture !== 'rock' && dice.chance(0.4)) {
        down(seam.top + 0.2, { texture: seamTexture });
        down(bottom, below);
      } else down(bottom, { texture: seamTexture });
    } else down(bottom, rest);
    return layers.map((l) =>
      [
        name,
        tape.of(l.top),
        tape.of(l.bottom),
        l.texture,
        l.structure,
        l.mottles,
        l.consistency,
        l.ksat,
      ].join(','),
    );
  });
  const header = `pit,top_${tape.unit},bottom_${tape.unit},texture,structure,mottles,consistency,ksat_m_s`;
  return {
    csv: `${header}\n${rows.join('\n')}\n`,
    pits,
    slow: texture.includes('clay'),
    ...(seam && { seam }),
  };
}

/** A name with the share of its weight. */
function weighted<T>(uniform: number, of: readonly (readonly [T, number])[]): T {
  let left = uniform * of.reduce((sum, [, weight]) => sum + weight, 0);
  for (const [name, weight] of of) {
    left -= weight;
    if (left < 0) return name;
  }
  return (of[0] as readonly [T, number])[0];
}
