import { monthShort } from '../text/monthWords.js';
import { type Axis, px } from './svgParts.js';
import { svgText } from './svgText.js';

/** A place on an axis with its label. */
interface Tick {
  at: number;
  text: string;
}

const DAY = 86_400_000;
/** Months between the ticks of a date axis. */
const MONTH_STEPS = [1, 2, 3, 4, 6, 12, 24, 48];

/** A value of an axis as a number: dates in milliseconds, logarithms taken. */
export function axisNumber(axis: Axis, value: number | string): number {
  if (axis.type === 'date') return Date.parse(String(value));
  return axis.type === 'log' ? Math.log10(Number(value)) : Number(value);
}

/** Ends of an axis as numbers; the range of a logarithmic axis is given in powers of ten. */
export function axisRange(axis: Axis): [number, number] {
  const end = (value: number | string) => (axis.type === 'date' ? Date.parse(String(value)) : Number(value));
  return [end(axis.range[0]), end(axis.range[1])];
}

function ticksOf(axis: Axis): Tick[] {
  const [a, b] = axisRange(axis);
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  const within = ({ at }: Tick) => at >= low - 1e-9 && at <= high + 1e-9;
  if (axis.tickvals)
    return axis.tickvals
      .map((value, i) => ({ at: axisNumber(axis, value), text: axis.ticktext?.[i] ?? String(value) }))
      .filter(within);
  const most = axis.nticks ?? 8;
  return (axis.type === 'date' ? dateTicks(low, high, most) : evenTicks(low, high, most)).filter(within);
}

/** Round numbers 1, 2 or 5 apart, at most so many. */
function evenTicks(low: number, high: number, most: number): Tick[] {
  const raw = (high - low) / Math.max(most - 1, 1);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((m) => m * power).find((s) => s >= raw * 0.999)!;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, i) => {
    const at = (first + i) * step;
    return { at, text: (Math.abs(at) < step / 2 ? 0 : at).toFixed(decimals).replace('-', '\u2212') };
  });
}

/** Firsts of months; the year stands under the first label and under every first of a year. */
function dateTicks(low: number, high: number, most: number): Tick[] {
  const months = (high - low) / (30.4 * DAY);
  const step = MONTH_STEPS.find((s) => months / s <= most) ?? 48;
  const start = new Date(low);
  const from = start.getUTCFullYear() * 12 + start.getUTCMonth();
  const ticks: Tick[] = [];
  for (let m = Math.ceil(from / step) * step; ; m += step) {
    const at = Date.UTC(Math.floor(m / 12), m % 12, 1);
    if (at > high) return ticks;
    if (at < low) continue;
    const year = ticks.length === 0 || m % 12 < step ? `<br>${Math.floor(m / 12)}` : '<br>\u00a0';
    ticks.push({ at, text: `${monthShort((m % 12) + 1)}${year}` });
  }
}

/** Frame of a drawing: the plot's edges in pixels, and the font. */
interface Frame {
  left: number;
  right: number;
  top: number;
  bottom: number;
  height: number;
  size: number;
  ink: string;
}

/** The axis below or to the left of a plot, with line, ticks, labels and title. */
export function svgAxis(
  axis: Axis,
  side: 'below' | 'left',
  frame: Frame,
  place: (value: number) => number,
): string {
  if (axis.visible === false) return '';
  const { left, right, top, bottom, height, size, ink } = frame;
  const below = side === 'below';
  const colour = axis.linecolor ?? ink;
  const length = axis.ticks === 'outside' ? (axis.ticklen ?? 4) : 0;
  const line = below ? `M${px(left)} ${px(bottom)}H${px(right)}` : `M${px(left)} ${px(top)}V${px(bottom)}`;
  const marks = ticksOf(axis).map(({ at, text }) => {
    const p = place(at);
    const path = below ? `M${px(p)} ${px(bottom)}v${length}` : `M${px(left)} ${px(p)}h${-length}`;
    return {
      path: text === '' || length === 0 ? '' : path,
      text: svgText({
        text,
        x: below ? p : left - length - 3,
        y: below ? bottom + length + 2 : p,
        size,
        color: ink,
        xanchor: below ? 'center' : 'right',
        yanchor: below ? 'top' : 'middle',
      }),
    };
  });
  const title = axis.title
    ? svgText({
        text: axis.title.text,
        x: (left + right) / 2,
        y: height - 3,
        size: axis.title.font?.size ?? size,
        color: axis.title.font?.color ?? ink,
        xanchor: 'center',
        yanchor: 'bottom',
      })
    : '';
  const path = `${axis.showline === false ? '' : line}${marks.map((mark) => mark.path).join('')}`;
  return `<g class="axis"><path d="${path}" fill="none" stroke="${colour}"/>${marks.map((mark) => mark.text).join('')}${title}</g>`;
}
