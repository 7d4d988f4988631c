/** The lines round a pond that are set out: each a box or an ellipse about its middle. */
import type { PondLine } from '../contract/index.js';
import type { Across } from '../site/index.js';
import { insetAt, type PondShape } from '../uplift/index.js';
import { BANK, LEAST_BANK, linerEdge } from '../works/index.js';

/** What the lines are drawn from; levels m above the lowest natural ground at the rim. */
export interface DugPond {
  shape: PondShape;
  /** from the rim's ground, lifted by `raise`, to the liner's lowest point, m */
  depth: number;
  raise: number;
  /** of the full pond before it is raised, m */
  fullLevel: number;
  ringWidth: number;
  ringDepth: number;
}

/** Every line from the toe outwards. */
export function pondLines({ shape, depth, raise, fullLevel, ringWidth, ringDepth }: DugPond): PondLine[] {
  const at = (of: PondLine['of'], inset: number, level_m: number): PondLine => ({
    of,
    half_length_m: shape.length / 2 - inset,
    half_width_m: shape.width / 2 - inset,
    level_m,
  });
  const { shelf, sideSlope } = shape;
  const steps =
    shelf && depth > shelf.depth
      ? [
          at('shelf', sideSlope * shelf.depth + shelf.width, raise - shelf.depth),
          at('shelf-back', sideSlope * shelf.depth, raise - shelf.depth),
        ]
      : [];
  // The sides go on at their slope up to the edge of the liner.
  const edge = linerEdge(fullLevel);
  const crest = raise + edge;
  const out = sideSlope * edge;
  const banks =
    crest > LEAST_BANK
      ? [
          at('crest', -out, crest),
          at('crest-outer', -out - BANK.crest, crest),
          at('bank-foot', -out - BANK.crest - BANK.slope * crest, 0),
        ]
      : [];
  return [
    at('toe', insetAt(shape, depth), raise - depth),
    ...steps,
    at('rim', 0, raise),
    ...(ringWidth > 0 ? [at('ring', -ringWidth, raise - Math.min(ringDepth, depth))] : []),
    ...banks,
  ];
}

/** Directions in which a box has corners, counted round. */
const CORNERS = [
  ['A', 1, 1],
  ['B', -1, 1],
  ['C', -1, -1],
  ['D', 1, -1],
] as const;
/** Between the points set out on an oval, degrees. */
const TURN = 45;

/** Points of a line that are set out: corners of a box, of an oval both ends of its axes and between them. */
export function pointsOf(
  line: Pick<PondLine, 'half_length_m' | 'half_width_m'>,
  box: boolean,
): { at: Across; place: { corner: 'A' | 'B' | 'C' | 'D' } | { angle_deg: number } }[] {
  const { half_length_m: a, half_width_m: b } = line;
  if (box) return CORNERS.map(([corner, u, v]) => ({ at: [u * a, v * b], place: { corner } }));
  return Array.from({ length: 360 / TURN }, (_, i) => {
    const angle = (i * TURN * Math.PI) / 180;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    // As an instrument turns in the middle; a floor drawn together to a line or a point has no other.
    const size = Math.hypot(b * cos, a * sin);
    const r = size > 0 ? (a * b) / size : 0;
    return { at: [r * cos, r * sin], place: { angle_deg: i * TURN } };
  });
}
