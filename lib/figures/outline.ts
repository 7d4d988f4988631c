/** The pond's outline on a plan. */

/**
 * A box or an ellipse about the middle, closed.
 * @param length - along x, m
 * @param width - along y, m
 * @param round - an ellipse
 */
export function outlineOf(length: number, width: number, round: boolean): [x: number, y: number][] {
  const corners: [number, number][] = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
    [-1, -1],
  ];
  const unit = round
    ? Array.from({ length: 61 }, (_, i): [number, number] => [
        Math.cos((i * Math.PI) / 30),
        Math.sin((i * Math.PI) / 30),
      ])
    : corners;
  return unit.map(([x, y]) => [(x * length) / 2, (y * width) / 2]);
}
