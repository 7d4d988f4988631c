/** The sketch as drawn: squares, the pond, the boundary, and a mark for each point, which can be focused. */
import type { VNode } from 'preact';
import { FreeRoom } from '../../figures/freeRoom.js';
import { visible } from '../../figures/visible.js';
import type { PlanPoint } from '../../site/boundary.js';
import type { Sketch, SketchPoint } from '../sketch.js';
import { DRAWN, drawnAt, GRID, isSeen, type SketchWindow } from '../sketchWindow.js';
import { view } from './view.js';

/** Half of what a finger needs, in units of the drawing: 44 px on a phone of 360. */
export const REACH = 23;
/** Half a mark, and its name. */
const MARK = 6;
const TYPE = 12;
const LONGEST = 18;

/** Id of a point's mark. */
export const markDom = (id: number) => `sketch-${id}`;

const short = (value: number) => Number(value.toFixed(1));
const way = (points: readonly PlanPoint[], window: SketchWindow) =>
  points
    .map((point) => drawnAt(window, point))
    .map(({ x, y }) => `${short(x)},${short(y)}`)
    .join(' ');

function grid(): VNode {
  const { across, up, side } = GRID;
  const down = Array.from({ length: across + 1 }, (_, i) => `M${i * side} 0V${DRAWN.height}`);
  const over = Array.from({ length: up + 1 }, (_, i) => `M0 ${i * side}H${DRAWN.width}`);
  return view`<path class="squares" d=${[...down, ...over].join('')} />`;
}

/** The names that find room beside their marks. */
function names(points: readonly SketchPoint[], window: SketchWindow): VNode[] {
  const room = new FreeRoom({ left: 0, right: DRAWN.width, top: 0, bottom: DRAWN.height });
  const marks = points.map((point) => ({ point, at: drawnAt(window, point) }));
  for (const { at } of marks) room.take('', 2 * MARK, [at]);
  return marks.flatMap(({ point: { id, name }, at: { x, y } }) => {
    const text = visible(name).slice(0, LONGEST);
    if (text === '') return [];
    const aside = MARK + 4 + (text.length * TYPE * 0.6) / 2;
    const places = [
      { x: x + aside, y },
      { x: x - aside, y },
      { x, y: y - 2 * MARK - 3 },
      { x, y: y + 2 * MARK + 3 },
    ];
    const found = room.take(text, TYPE, places);
    if (found === undefined) return [];
    const at = places[found]!;
    const anchor = ['start', 'end', 'middle', 'middle'][found];
    const from = found < 2 ? x + (found === 0 ? 1 : -1) * (MARK + 4) : at.x;
    return [
      view`<text key=${id} x=${short(from)} y=${short(at.y + TYPE / 3)} text-anchor=${anchor}>${text}</text>`,
    ];
  });
}

/** What the drawing does. */
interface MarkActions {
  /** of a point as it is read aloud */
  told(point: SketchPoint): string;
  onKey(point: SketchPoint, event: KeyboardEvent): void;
  onFocus(point: SketchPoint): void;
}

function mark(point: SketchPoint, window: SketchWindow, chosen: boolean, on: MarkActions): VNode {
  const { x, y } = drawnAt(window, point);
  const kind = `mark${point.taped === undefined ? '' : ' taped'}${chosen ? ' chosen' : ''}`;
  return view`<g id=${markDom(point.id)} key=${point.id} class=${kind} role="button" tabindex="0" data-id=${point.id}
    aria-label=${on.told(point)} aria-describedby="sketch-help" aria-pressed=${chosen ? 'true' : 'false'}
    transform=${`translate(${short(x)} ${short(y)})`}
    onKeyDown=${(event: KeyboardEvent) => on.onKey(point, event)} onFocus=${() => on.onFocus(point)}>
    <circle class="reach" r=${REACH} /><circle class="spot" r=${MARK} />
  </g>`;
}

/** Everything in the frame. */
export function sketchDrawing(
  sketch: Sketch,
  window: SketchWindow,
  chosen: number | undefined,
  on: MarkActions,
): VNode {
  const { outline, points } = sketch;
  const boundary = points.filter(({ role, taped }) => role === 'boundary' && taped === undefined);
  const seen = points.filter((point) => isSeen(window, point));
  return view`<g>
    ${outline ? view`<polygon class="pond" points=${way(outline, window)} />` : null}
    ${grid()}
    ${boundary.length > 1 ? view`<polyline class="boundary" points=${way(boundary, window)} />` : null}
    <g class="names" aria-hidden="true">${names(seen, window)}</g>
    ${seen.map((point) => mark(point, window, point.id === chosen, on))}
  </g>`;
}
