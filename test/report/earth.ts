/** Earth around a pond on ground that rises across it, integrated piece by piece: what the closed formulas are held against. */

/** Once round an ellipse, from two thousand chords. */
export function around(a: number, b: number): number {
  const at = (i: number) => [a * Math.cos((Math.PI * i) / 1000), b * Math.sin((Math.PI * i) / 1000)] as const;
  return Array.from({ length: 2000 }, (_, i) => {
    const [[x, y], [u, v]] = [at(i), at(i + 1)];
    return Math.hypot(u - x, v - y);
  }).reduce((sum, each) => sum + each, 0);
}

/** Earth along a line, slice by slice; of each its length and the ground under it. A bank 0.4 m wide on top, 1.5 to 1 outside. */
const banked = (slices: [long: number, ground: number][], height: number, slope: number) =>
  slices
    .map(([long, ground]) => [long, Math.max(height - ground, 0)] as const)
    .reduce((sum, [long, h]) => sum + (long * h * (0.4 + (0.4 + (1.5 + slope) * h))) / 2, 0);
/** Round a box, `out` outside its rim, side by side; the ground rises from one `side` over `end` to the other, level beyond. */
export const boxBank = (
  side: number,
  end: number,
  out: number,
  height: number,
  rise: number,
  slope: number,
) => {
  const far = end + 2 * out;
  const up = Array.from({ length: 40000 }, (_, i): [number, number] => {
    const y = (far * (i + 0.5)) / 40000 - out;
    return [far / 40000, (rise * Math.min(Math.max(y, 0), end)) / end];
  });
  return banked([[side + 2 * out, 0], ...up, [side + 2 * out, rise], ...up], height, slope);
};
/** Chords of an ellipse by its angle from its lowest point, with the ground there; it rises along the half axis `b`. */
const chords = (a: number, b: number, rise: number) =>
  Array.from({ length: 4000 }, (_, i): [number, number] => {
    const [from, to] = [(2 * Math.PI * i) / 4000, (2 * Math.PI * (i + 1)) / 4000];
    const chord = Math.hypot(a * (Math.sin(to) - Math.sin(from)), b * (Math.cos(to) - Math.cos(from)));
    return [chord, (rise * (1 - Math.cos((from + to) / 2))) / 2];
  });
/** Round an ellipse, chord by chord. */
export const ovalBank = (a: number, b: number, height: number, rise: number, slope: number) =>
  banked(chords(a, b, rise), height, slope);
/** A wedge over an ellipse, and a triangle on each chord where its side goes on up to the ground; the rim as low as the ground. */
export const ovalCut = (a: number, b: number, rise: number, slope: number) =>
  (Math.PI * a * b * rise) / 2 +
  chords(a, b, rise).reduce((sum, [chord, ground]) => sum + (chord * slope * ground * ground) / 2, 0);
/** Middles and widths of cells of at most 1 cm from one edge to the next. */
export const cells = (...edges: number[]) =>
  edges.slice(1).flatMap((to, i) => {
    const from = edges[i]!;
    const n = Math.ceil((to - from) * 100);
    const wide = (to - from) / n;
    return Array.from({ length: n }, (_, k): [number, number] => [from + (k + 0.5) * wide, wide]);
  });
/**
 * What stands above a box's rim held at `raise`, on a grid of 1 cm: ground that rises over `end`, level beyond, down to the
 * sides that go on at their slope from the rim.
 */
export const gridCut = (side: number, end: number, rise: number, raise: number, slope: number) => {
  const out = slope * Math.max(rise - raise, 0);
  const across = cells(-out, 0, side, side + out);
  let sum = 0;
  for (const [y, dy] of cells(-out, 0, end, end + out))
    for (const [x, dx] of across) {
      const ground = (rise * Math.min(Math.max(y, 0), end)) / end;
      const off = Math.max(-x, x - side, -y, y - end, 0);
      sum += Math.max(ground - raise - (off > 0 ? off / slope : 0), 0) * dx * dy;
    }
  return sum;
};
