/** The second way to type levels: points are tapped on a sketch, and moved by hand or by keys. */
import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { PlanPoint } from '../../site/boundary.js';
import {
  beyondWords,
  placeWords,
  SKETCH_AXES,
  SKETCH_HELP,
  SKETCH_NO_POND,
  SKETCH_RIM,
  sketchPointWords,
  squareWords,
  tapedWords,
  unplacedWords,
} from '../../text/sketchWords.js';
import { type Answers, type FormRow, textOf, unitsOf } from '../answers.js';
import { cellKey } from '../placed.js';
import { LEVEL_QUESTIONS } from '../rowQuestions.js';
import { freePlace, type SketchPoint, sketchOf, withPlaced, withStepped, withTapped } from '../sketch.js';
import { DRAWN, drawnAt, isSeen, pointAt, type SketchWindow, tappedAt, windowOf } from '../sketchWindow.js';
import { rowDom } from './rowFields.js';
import type { Session } from './session.js';
import { markDom, REACH, sketchDrawing } from './sketchDrawing.js';
import { view } from './view.js';

/** A finger that moves less has tapped, in units of the drawing. */
const STILL = 4;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** What a point is, in the words of its question. */
export const roleWords = (role: string): string =>
  LEVEL_QUESTIONS[0]?.choices?.find(({ value }) => value === role)?.words ?? '';

/** A point that is held, and how. */
interface Held {
  id: number;
  from: PlanPoint;
  /** from the finger to the point */
  off: PlanPoint;
  window: SketchWindow;
  moved: boolean;
}

function Sketch({ session }: { session: Session }): VNode {
  const [chosen, choose] = useState<number>();
  const [size, zoom] = useState<number>();
  const held = useRef<Held | undefined>(undefined);
  const dragged = useRef(false);
  const wanted = useRef<string | undefined>(undefined);
  const { answers } = session.shown;
  const units = unitsOf(answers);
  const sketch = sketchOf(answers);
  const window = held.current?.window ?? windowOf(sketch, units, size);
  const point = sketch.points.find(({ id }) => id === chosen);

  // A field is there once its row has been opened and drawn.
  useEffect(() => {
    const field = wanted.current ? document.getElementById(wanted.current) : null;
    if (!field) return;
    wanted.current = undefined;
    field.scrollIntoView({ block: 'center' });
    field.focus();
  });

  const write = (next: Answers) => {
    if (next !== session.shown.answers) session.edit(() => next);
  };
  const toHeight = (id: number) => {
    wanted.current = rowDom('levels.csv', id, 'level');
    choose(id);
    session.foldAll('levels.csv ');
    session.toggle(cellKey('levels.csv', id), true);
  };
  const told = ({ name, role, taped, x, y }: SketchPoint) =>
    sketchPointWords(
      name,
      roleWords(role),
      taped === undefined
        ? placeWords(x - sketch.middle.x, y - sketch.middle.y, units)
        : tapedWords(taped, units),
    );
  const onKey = (moved: SketchPoint, event: KeyboardEvent) => {
    const step = ARROWS[event.key];
    if (!step && event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    if (step) write(withStepped(session.shown.answers, moved.id, step, event.shiftKey));
    else toHeight(moved.id);
  };
  const fingerAt = (event: MouseEvent): PlanPoint => {
    const { left, top, width } = (event.currentTarget as SVGElement).getBoundingClientRect();
    const scale = DRAWN.width / width;
    return { x: (event.clientX - left) * scale, y: (event.clientY - top) * scale };
  };
  const down = (event: PointerEvent) => {
    dragged.current = false;
    const from = fingerAt(event);
    const found = event.button === 0 ? pointAt(window, sketch.points, from, REACH) : undefined;
    if (!found) return;
    const at = drawnAt(window, found);
    held.current = {
      id: found.id,
      from,
      off: { x: at.x - from.x, y: at.y - from.y },
      window,
      moved: false,
    };
    (event.currentTarget as SVGElement).setPointerCapture(event.pointerId);
    choose(found.id);
  };
  const move = (event: PointerEvent) => {
    const hand = held.current;
    if (!hand) return;
    const at = fingerAt(event);
    if (!hand.moved && Math.hypot(at.x - hand.from.x, at.y - hand.from.y) < STILL) return;
    hand.moved = true;
    const place = tappedAt(hand.window, { x: at.x + hand.off.x, y: at.y + hand.off.y });
    write(withPlaced(session.shown.answers, hand.id, place));
  };
  const up = () => {
    dragged.current = held.current?.moved ?? false;
    held.current = undefined;
    // Drawn anew: the window is no longer held.
    session.tell(session.shown.told);
  };
  // A finger on a point moves it, beside the points it moves the page.
  const touch = (event: TouchEvent) => {
    if (held.current && event.cancelable) event.preventDefault();
  };
  const tap = (event: MouseEvent) => {
    const at = fingerAt(event);
    const outside = at.x < 0 || at.y < 0 || at.x > DRAWN.width || at.y > DRAWN.height;
    const own = (event.target as Element).closest<SVGElement>('[data-id]')?.dataset.id;
    const found =
      pointAt(window, sketch.points, at, REACH) ?? sketch.points.find(({ id }) => String(id) === own);
    if (found) {
      choose(found.id);
      document.getElementById(markDom(found.id))?.focus();
    } else if (!dragged.current && !outside) {
      const next = withTapped(session.shown.answers, tappedAt(window, at));
      session.edit(() => next.answers);
      toHeight(next.id);
    }
    dragged.current = false;
  };
  const beyond = sketch.points.filter((each) => !isSeen(window, each)).map(({ name }) => name || '?');
  const unplaced = sketch.unplaced.map(({ name }) => name).filter(Boolean);
  return view`<section class="sketch" aria-labelledby="sketch-title">
    <h3 id="sketch-title">On a sketch from above</h3>
    <p class="why" id="sketch-help">${SKETCH_HELP}</p>
    <svg viewBox=${`0 0 ${DRAWN.width} ${DRAWN.height}`} role="group" aria-labelledby="sketch-title"
      onPointerDown=${down} onPointerMove=${move} onPointerUp=${up} onPointerCancel=${up}
      onTouchMove=${touch} onClick=${tap}>
      ${sketchDrawing(sketch, window, chosen, { told, onKey, onFocus: ({ id }) => choose(id) })}
    </svg>
    <p class="why">${squareWords(window.side, units)} ${beyond.length > 0 ? beyondWords(beyond) : ''} ${unplaced.length > 0 ? unplacedWords(unplaced) : ''}</p>
    <p aria-live="polite">${point ? told(point) : ''}</p>
    <div>
      ${point ? view`<button type="button" onClick=${() => toHeight(point.id)}>To its height</button>` : null}
      <button type="button" disabled=${window.least} onClick=${() => zoom(window.size - 1)}>Closer</button>
      <button type="button" disabled=${window.most} onClick=${() => zoom(window.size + 1)}>More ground</button>
    </div>
    ${sketch.outline ? null : view`<p class="open">${SKETCH_NO_POND}</p>`}
    ${sketch.points.length > 0 && !sketch.rimTells ? view`<p class="open">${SKETCH_RIM}</p>` : null}
    <p class="why">${SKETCH_AXES}</p>
  </section>`;
}

/** The sketch. */
export const levelSketch = (session: Session): VNode => view`<${Sketch} session=${session} />`;

/** Puts a point on the sketch that has no place, beside the pond, to be moved from there. */
export function sketchButton(session: Session, row: FormRow): VNode | null {
  if (textOf(row, 'x') !== '' && textOf(row, 'y') !== '') return null;
  const put = () => {
    const { answers } = session.shown;
    const sketch = sketchOf(answers);
    const taped = sketch.points.find(({ id }) => id === row.id);
    session.edit((all) => withPlaced(all, row.id, taped ?? freePlace(sketch)));
    session.go('levels', markDom(row.id));
  };
  return view`<button type="button" onClick=${put}>Put it on the sketch</button>`;
}
