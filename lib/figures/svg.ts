import { InputError } from '../units/index.js';
import { escapeHtml } from './escape.js';
import type { Figure } from './figure.js';
import { axisNumber, axisRange, svgAxis } from './svgAxis.js';
import { type Annotation, type Layout, px, type Shape, type Trace } from './svgParts.js';
import { svgText } from './svgText.js';
import { type Places, strokeOf, svgHeatmap, svgScatter } from './svgTraces.js';

/**
 * A figure as SVG that needs no script: for the page, paper and every step of a what-if.
 * @param figure as plotly.js takes it: lines, areas, marks and grids, on axes of numbers or dates
 * @param width in pixels, that for which it was laid out
 * @param id unique in the document, letters and dashes
 * @returns an `<svg>` element
 * @throws InputError for a kind of trace that is not drawn, or a place that is not finite
 */
export function figureSvg(figure: Figure, width: number, id: string): string {
  for (const { type } of figure.data as { type: string }[])
    if (type !== 'scatter' && type !== 'heatmap')
      throw new InputError('invalid-input', `unknown trace '${type}' - lines, marks and grids are drawn`);
  const layout = figure.layout as Layout;
  const { height, margin, font } = layout;
  const frame = {
    left: margin.l,
    right: width - margin.r,
    top: margin.t,
    bottom: height - margin.b,
    height,
    size: font.size,
    ink: font.color,
  };
  const { x, y } = scalesOf(layout, frame);
  const at: Places = {
    x: (value) => x(axisNumber(layout.xaxis, value)),
    y: (value) => y(axisNumber(layout.yaxis, value)),
  };
  let before: string[] = [];
  const traces = (figure.data as Trace[]).map((trace) => {
    if (trace.type === 'heatmap') return svgHeatmap(trace, at);
    const drawn = svgScatter(trace, at, before);
    before = drawn.points;
    return drawn.svg;
  });
  const shapes = (layer: boolean) =>
    (layout.shapes ?? [])
      .filter((shape) => (shape.layer === 'below') === layer)
      .map((shape) => shapeOf(shape, at, frame))
      .join('');
  const clip = `<clipPath id="${id}-clip"><rect x="${px(frame.left)}" y="${px(frame.top)}" width="${px(frame.right - frame.left)}" height="${px(frame.bottom - frame.top)}"/></clipPath>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" id="${id}" viewBox="0 0 ${px(width)} ${px(height)}" width="${px(width)}" height="${px(height)}" ` +
    `role="img" aria-label="${escapeHtml(figure.alt)}" font-family="${escapeHtml(font.family)}" font-size="${px(font.size)}">` +
    `<defs>${clip}</defs><g clip-path="url(#${id}-clip)">${shapes(true)}${traces.join('')}${shapes(false)}</g>` +
    svgAxis(layout.xaxis, 'below', frame, x) +
    svgAxis(layout.yaxis, 'left', frame, y) +
    (layout.annotations ?? []).map((note) => annotationOf(note, at, frame, font)).join('') +
    '</svg>'
  );
}

type Edges = Parameters<typeof svgAxis>[2];

/** Pixels of axis values; where one axis is tied to the other, the range that has room to spare is widened. */
function scalesOf({ xaxis, yaxis }: Layout, { left, right, top, bottom }: Edges) {
  let [x0, x1] = axisRange(xaxis);
  let [y0, y1] = axisRange(yaxis);
  if (yaxis.scaleanchor) {
    const ratio = yaxis.scaleratio ?? 1;
    const perX = Math.min((right - left) / (x1 - x0), (bottom - top) / ((y1 - y0) * ratio));
    const [dx, dy] = [(right - left) / perX - (x1 - x0), (bottom - top) / (perX * ratio) - (y1 - y0)];
    [x0, x1, y0, y1] = [x0 - dx / 2, x1 + dx / 2, y0 - dy / 2, y1 + dy / 2];
  }
  return {
    x: (value: number) => left + ((value - x0) / (x1 - x0)) * (right - left),
    y: (value: number) => bottom - ((value - y0) / (y1 - y0)) * (bottom - top),
  };
}

/** A place given on an axis or as a part of the paper. */
function placed(at: Places, frame: Edges) {
  return {
    x: (value: number | string, ref?: string) =>
      ref === 'paper' ? frame.left + Number(value) * (frame.right - frame.left) : at.x(value),
    y: (value: number, ref?: string) =>
      ref === 'paper' ? frame.bottom - value * (frame.bottom - frame.top) : at.y(value),
  };
}

function shapeOf(shape: Shape, at: Places, frame: Edges): string {
  const { x, y } = placed(at, frame);
  const [x0, x1] = [x(shape.x0, shape.xref), x(shape.x1, shape.xref)];
  const [y0, y1] = [y(shape.y0, shape.yref), y(shape.y1, shape.yref)];
  const stroke = strokeOf(shape.line ?? {});
  if (shape.type === 'line') return `<path d="M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}"${stroke}/>`;
  return `<rect x="${px(Math.min(x0, x1))}" y="${px(Math.min(y0, y1))}" width="${px(Math.abs(x1 - x0))}" height="${px(Math.abs(y1 - y0))}" fill="${shape.fillcolor ?? 'none'}"${stroke}/>`;
}

function annotationOf(note: Annotation, at: Places, frame: Edges, font: Layout['font']): string {
  const { x, y } = placed(at, frame);
  const to = { x: x(note.x, note.xref), y: y(note.y, note.yref) };
  const arrow = note.showarrow ?? true;
  const from = !arrow
    ? { x: to.x + (note.xshift ?? 0), y: to.y - (note.yshift ?? 0) }
    : {
        x: note.axref ? x(note.ax!, note.axref) : to.x + (note.ax ?? 0),
        y: note.ayref ? y(note.ay!, note.ayref) : to.y + (note.ay ?? 0),
      };
  const words = svgText({
    text: note.text,
    ...from,
    size: note.font?.size ?? font.size,
    color: note.font?.color ?? font.color,
    xanchor: note.xanchor ?? 'center',
    yanchor: note.yanchor ?? 'middle',
    angle: note.textangle,
    halo: note.bgcolor !== undefined,
  });
  return arrow ? arrowOf(note, from, to) + words : words;
}

/** A leader, or an arrow where it has a head; a leader without head starts a little off its words. */
function arrowOf(
  { arrowhead, arrowwidth = 1, arrowcolor = 'currentColor' }: Annotation,
  from: { x: number; y: number },
  to: { x: number; y: number },
): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 0.5) return '';
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const stroke = strokeOf({ color: arrowcolor, width: arrowwidth });
  const gap = arrowhead ? 0 : Math.min(2, length / 2);
  const line = `<path d="M${px(from.x + gap * ux)} ${px(from.y + gap * uy)}L${px(to.x)} ${px(to.y)}" fill="none"${stroke}/>`;
  if (!arrowhead) return line;
  const wing = (side: 1 | -1) => `${px(to.x - 7 * ux + side * 4 * uy)} ${px(to.y - 7 * uy - side * 4 * ux)}`;
  return `${line}<path d="M${wing(1)}L${px(to.x)} ${px(to.y)}L${wing(-1)}Z" fill="${arrowcolor}"/>`;
}
