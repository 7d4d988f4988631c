/** A place on a figure. */
type Spot = [x: number, y: number];

/**
 * Lines of equal value on a mesh, by marching squares: each square of four known values is crossed by straight pieces,
 * which are joined.
 * @param x - ascending
 * @param y - ascending
 * @param z - value at y[j], x[i]; null where there is none
 * @returns the lines, the longest first
 */
export function contourLines(x: number[], y: number[], z: (number | null)[][], value: number): Spot[][] {
  /** pieces by both their ends; an end is the edge of the mesh it lies on */
  const ends = new Map<string, { to: string; spot: Spot; toSpot: Spot }[]>();
  const join = (a: string, at: Spot, b: string, bt: Spot) => {
    for (const [from, spot, to, toSpot] of [
      [a, at, b, bt],
      [b, bt, a, at],
    ] as const)
      ends.set(from, [...(ends.get(from) ?? []), { to, spot, toSpot }]);
  };
  for (let j = 0; j + 1 < y.length; j++)
    for (let i = 0; i + 1 < x.length; i++) {
      const corners = [z[j][i], z[j][i + 1], z[j + 1][i + 1], z[j + 1][i]];
      if (corners.some((c) => c === null)) continue;
      const crossed = edgesOf(i, j, x, y).flatMap(({ name, from, to }, e) => {
        const [a, b] = [corners[e]!, corners[(e + 1) % 4]!];
        if (a < value === b < value) return [];
        const share = (value - a) / (b - a);
        const spot: Spot = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
        return [{ name, spot }];
      });
      for (let e = 0; e + 1 < crossed.length; e += 2)
        join(crossed[e].name, crossed[e].spot, crossed[e + 1].name, crossed[e + 1].spot);
    }
  const used = new Set<string>();
  const walk = (start: string): Spot[] => {
    const line: Spot[] = [];
    let here: string | undefined = start;
    while (here !== undefined) {
      const from: string = here;
      const next = ends.get(from)!.find(({ to }) => !used.has(`${from}|${to}`));
      if (!next) break;
      used.add(`${from}|${next.to}`);
      used.add(`${next.to}|${from}`);
      if (line.length === 0) line.push(next.spot);
      line.push(next.toSpot);
      here = next.to;
    }
    return line;
  };
  // Open lines from their ends, then closed ones from anywhere.
  const starts = [...ends.keys()].sort((a, b) => ends.get(a)!.length - ends.get(b)!.length);
  const lines = starts.map(walk).filter((line) => line.length > 1);
  return lines.sort((a, b) => b.length - a.length);
}

/** Edges of a square of the mesh, once round. */
function edgesOf(i: number, j: number, x: number[], y: number[]): { name: string; from: Spot; to: Spot }[] {
  const [a, b, c, d]: Spot[] = [
    [x[i], y[j]],
    [x[i + 1], y[j]],
    [x[i + 1], y[j + 1]],
    [x[i], y[j + 1]],
  ];
  return [
    { name: `h${i},${j}`, from: a, to: b },
    { name: `v${i + 1},${j}`, from: b, to: c },
    { name: `h${i},${j + 1}`, from: c, to: d },
    { name: `v${i},${j}`, from: d, to: a },
  ];
}
