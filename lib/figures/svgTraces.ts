import { InputError } from '../units/index.js';
import { escapeHtml } from './escape.js';
import { type HeatmapTrace, type Line, px, type ScatterTrace } from './svgParts.js';
import { svgText } from './svgText.js';

/** From the values of a figure to pixels. */
export interface Places {
  x: (value: number | string) => number;
  y: (value: number) => number;
}

/** Stroke of a line; dashes are written as plotly.js takes them, `6px,3px`. */
export function strokeOf({ color = 'none', width = 1, dash = 'solid' }: Line): string {
  if (width === 0) return ' stroke="none"';
  const dashes = dash === 'solid' ? '' : ` stroke-dasharray="${dash.replaceAll('px', '')}"`;
  return ` stroke="${color}" stroke-width="${px(width)}"${dashes}`;
}

/** A line, area or row of marks; `before` is the points of the trace drawn before, for a band between the two. */
export function svgScatter(
  trace: ScatterTrace,
  at: Places,
  before: string[],
): { svg: string; points: string[] } {
  const runs = runsOf(trace, at);
  const points = runs.flat();
  const lines = trace.mode.includes('lines') && runs.length > 0;
  const path = runs.map((run) => `M${run.join('L')}`).join('');
  const filled =
    trace.fill === undefined
      ? ''
      : `<path d="M${[...(trace.fill === 'tonexty' ? before.toReversed() : []), ...points].join('L')}Z" fill="${trace.fillcolor ?? 'none'}"/>`;
  const drawn = lines
    ? `<path d="${path}" fill="none" stroke-linejoin="round"${strokeOf(trace.line ?? {})}/>`
    : '';
  const marks = trace.mode.includes('markers') ? marksOf(trace, at) : '';
  const name = trace.name ? ` data-name="${escapeHtml(trace.name)}"` : '';
  const faint = trace.opacity === undefined ? '' : ` opacity="${px(trace.opacity)}"`;
  return { svg: `<g class="trace"${name}${faint}>${filled}${drawn}${marks}</g>`, points };
}

/** Points of each run between gaps. */
function runsOf({ x, y, line }: ScatterTrace, at: Places): string[][] {
  const runs: string[][] = [];
  let open = false;
  const step = line?.shape === 'hvh';
  x.forEach((value, i) => {
    const level = y[i];
    if (level === null || level === undefined) {
      open = false;
      return;
    }
    if (!open) runs.push([]);
    const run = runs.at(-1)!;
    const place = at.x(value);
    const point = `${px(place)} ${px(at.y(level))}`;
    const back = open ? (at.x(x[i - 1]!) + place) / 2 : undefined;
    if (step && back !== undefined)
      run.push(`${px(back)} ${px(at.y(y[i - 1]!))}`, `${px(back)} ${px(at.y(level))}`);
    run.push(point);
    open = true;
  });
  return runs;
}

function marksOf({ x, y, marker = {}, text }: ScatterTrace, at: Places): string {
  const { symbol = 'circle', size = 6, color = 'none', line } = marker;
  const open = symbol.endsWith('-open');
  const look = ` fill="${open ? 'none' : color}"${strokeOf(open ? { color, width: line?.width ?? 1 } : (line ?? { width: 0 }))}`;
  const shape = symbol.replace('-open', '');
  return x
    .map((value, i) => {
      const level = y[i];
      if (level === null || level === undefined) return '';
      const words = Array.isArray(text) ? text[i] : undefined;
      const title = words ? `<title>${escapeHtml(words)}</title>` : '';
      return `<path d="${markPath(shape, at.x(value), at.y(level), size / 2)}"${look}>${title}</path>`;
    })
    .join('');
}

function markPath(symbol: string, x: number, y: number, r: number): string {
  const closed = (...points: [number, number][]) =>
    `M${points.map(([dx, dy]) => `${px(x + dx * r)} ${px(y + dy * r)}`).join('L')}Z`;
  switch (symbol) {
    case 'circle':
      return `M${px(x - r)} ${px(y)}a${px(r)} ${px(r)} 0 1 0 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 0 ${px(-2 * r)} 0Z`;
    case 'square':
      return closed([-1, -1], [1, -1], [1, 1], [-1, 1]);
    case 'triangle-down':
      return closed([-1.1, -0.8], [1.1, -0.8], [0, 1.1]);
    case 'triangle-up':
      return closed([-1.1, 0.8], [1.1, 0.8], [0, -1.1]);
    case 'triangle-right':
      return closed([-0.8, -1.1], [-0.8, 1.1], [1.1, 0]);
    default:
      throw new InputError(
        'invalid-input',
        `unknown mark '${symbol}' - circle, square and triangles are drawn`,
      );
  }
}

/** Cells of a grid, coloured by step and lettered. */
export function svgHeatmap(trace: HeatmapTrace, at: Places): string {
  const { x, y, z, zmin, zmax, colorscale, text, textfont } = trace;
  const half = (values: number[]) => (values.length > 1 ? Math.abs(values[1]! - values[0]!) / 2 : 0.5);
  const [hx, hy] = [half(x), half(y)];
  const colour = (value: number) => {
    const part = (value - zmin) / (zmax - zmin);
    return colorscale.findLast(([from]) => from <= part)![1];
  };
  const cells = y.flatMap((row, r) =>
    x.map((column, c) => {
      const [left, right] = [at.x(column - hx), at.x(column + hx)];
      const [top, bottom] = [at.y(row - hy), at.y(row + hy)].sort((a, b) => a - b) as [number, number];
      const fill = colour(z[r]![c]!);
      const cell = `<rect x="${px(left + 0.5)}" y="${px(top + 0.5)}" width="${px(right - left - 1)}" height="${px(bottom - top - 1)}" fill="${fill}"/>`;
      const letters = svgText({
        text: text?.[r]?.[c] ?? '',
        x: (left + right) / 2,
        y: (top + bottom) / 2,
        size: textfont?.size ?? 10,
        color: contrastOn(fill),
        xanchor: 'center',
        yanchor: 'middle',
      });
      return cell + letters;
    }),
  );
  return `<g class="trace">${cells.join('')}</g>`;
}

/** Black or white, whichever reads better on a colour `#rrggbb` (relative luminance, WCAG 2). */
function contrastOn(colour: string): string {
  const [r, g, b] = [1, 3, 5].map((from) => {
    const part = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b > 0.179 ? '#000000' : '#ffffff';
}
