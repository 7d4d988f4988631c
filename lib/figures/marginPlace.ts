/** Where the size of a margin is written beside its bracket, so that it runs over no line of the picture. */

export type Point = readonly [x: number, y: number];
export type Segment = readonly [Point, Point];

/** A bracket, and the middle of its words. */
interface Place {
  bracket_x: number;
  x: number;
  y: number;
}

interface Room {
  /** of the words, pixels */
  width: number;
  height: number;
  /** the bracket, where it stands by itself */
  x: number;
  top: number;
  foot: number;
  /** level of the floor, and from where to where it reaches; the words may stand below it */
  floor: number;
  flat: readonly [from: number, to: number];
  frame: { left: number; right: number; top: number; bottom: number };
  /** the words over a low bracket, and not under it */
  above: boolean;
}

/** Words this far from the bracket, and this far from any other line. */
const BESIDE = 14;
const AIR = 2;
/** A bracket this far from the end of the floor. */
const EDGE = 10;
/** Heights along the bracket, the middle first. */
const ALONG = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

/**
 * The first place whose words cross no line; else the one that crosses fewest.
 * @param lines - of the picture, without the bracket
 */
export function marginPlace(room: Room, lines: readonly Segment[]): Place {
  const { width, height, frame } = room;
  const crossed = ({ bracket_x, x, y }: Place) => {
    const box = {
      left: x - width / 2 - AIR,
      right: x + width / 2 + AIR,
      top: y - height / 2 - AIR,
      bottom: y + height / 2 + AIR,
    };
    const out =
      box.left < frame.left || box.right > frame.right || box.top < frame.top || box.bottom > frame.bottom;
    const bracket: Segment = [
      [bracket_x, room.top],
      [bracket_x, room.foot],
    ];
    return (out ? 10 : 0) + [...lines, bracket].filter((each) => isCrossed(each, box)).length;
  };
  return placesOf(room)
    .map((place) => ({ place, cost: crossed(place) }))
    .reduce((best, each) => (each.cost < best.cost ? each : best)).place;
}

function placesOf({ width, height, x, top, foot, floor, flat, frame, above }: Room): Place[] {
  const tall = foot - top > 2 * height;
  const off = BESIDE + width / 2;
  const beside = (bracket_x: number, y: number): Place[] => [
    { bracket_x, x: bracket_x + off, y },
    { bracket_x, x: bracket_x - off, y },
  ];
  const heights = ALONG.map((part) => top + part * (foot - top));
  // With its words the bracket stands in the middle, but always over the floor.
  const moved = [x - off / 2 - BESIDE / 2, x - width / 2 - BESIDE].map((m) =>
    Math.min(Math.max(m, flat[0] + EDGE), x),
  );
  const middle = Math.min(Math.max(x, frame.left + width / 2 + AIR), frame.right - width / 2 - AIR);
  const at = (y: number): Place => ({ bracket_x: x, x: middle, y });
  const over = at(top - height / 2 - 5);
  const under = at(foot + height / 2 + 5);
  return [
    ...(tall
      ? [
          ...heights.flatMap((y) => beside(x, y)),
          ...moved.flatMap((m) => heights.flatMap((y) => beside(m, y))),
        ]
      : []),
    ...(above ? [over, under] : [under, over]),
    at(floor + height / 2 + 6),
  ];
}

/** Whether a line goes through a box: what is left of it, cut off at the four sides. */
function isCrossed(
  [[x0, y0], [x1, y1]]: Segment,
  box: { left: number; right: number; top: number; bottom: number },
): boolean {
  let [from, to] = [0, 1];
  const sides = [
    [x0 - x1, x0 - box.left],
    [x1 - x0, box.right - x0],
    [y0 - y1, y0 - box.top],
    [y1 - y0, box.bottom - y0],
  ] as const;
  for (const [along, room] of sides) {
    if (along === 0 && room < 0) return false;
    if (along < 0) from = Math.max(from, room / along);
    if (along > 0) to = Math.min(to, room / along);
  }
  return from <= to;
}
