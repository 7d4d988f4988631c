/** The part of plotly.js' figure language that is drawn as SVG; what is not named here is not used by the page. */

import { InputError } from '../units/index.js';

export interface Line {
  color?: string;
  width?: number;
  dash?: string;
  shape?: 'linear' | 'hvh';
}

export interface ScatterTrace {
  type: 'scatter';
  mode: string;
  name?: string;
  x: (string | number)[];
  y: (number | null)[];
  fill?: 'toself' | 'tonexty';
  fillcolor?: string;
  opacity?: number;
  line?: Line;
  marker?: { symbol?: string; size?: number; color?: string; line?: Line };
  text?: string[] | string;
}

export interface HeatmapTrace {
  type: 'heatmap';
  name?: string;
  x: number[];
  y: number[];
  /** whole numbers: the step of the colour scale */
  z: number[][];
  zmin: number;
  zmax: number;
  colorscale: [number, string][];
  text?: string[][];
  textfont?: { size?: number };
}

export type Trace = ScatterTrace | HeatmapTrace;

export interface Axis {
  visible?: boolean;
  type?: 'linear' | 'log' | 'date';
  range: [number | string, number | string];
  tickvals?: number[];
  ticktext?: string[];
  nticks?: number;
  ticks?: string;
  ticklen?: number;
  linecolor?: string;
  showline?: boolean;
  title?: { text: string; standoff?: number; font?: Font };
  scaleanchor?: string;
  scaleratio?: number;
}

interface Font {
  size?: number;
  color?: string;
  family?: string;
}

export interface Shape {
  type: 'line' | 'rect';
  xref?: string;
  yref?: string;
  x0: number;
  x1: number;
  y0: number;
  y1: number;
  line?: Line;
  fillcolor?: string;
  layer?: string;
}

export interface Annotation {
  text: string;
  x: number | string;
  y: number;
  xref?: string;
  yref?: string;
  ax?: number;
  ay?: number;
  axref?: string;
  ayref?: string;
  showarrow?: boolean;
  arrowhead?: number;
  arrowwidth?: number;
  arrowcolor?: string;
  xanchor?: string;
  yanchor?: string;
  xshift?: number;
  yshift?: number;
  align?: string;
  textangle?: number;
  bgcolor?: string;
  font?: Font;
}

export interface Layout {
  height: number;
  margin: { l: number; r: number; t: number; b: number };
  font: Required<Font>;
  xaxis: Axis;
  yaxis: Axis;
  shapes?: Shape[];
  annotations?: Annotation[];
}

/** A number as it stands in a drawing: a hundredth of a pixel, and never one that is not finite. */
export function px(value: number): string {
  if (!Number.isFinite(value))
    throw new InputError('invalid-input', `invalid place ${value} in a drawing - it must be a finite number`);
  return String(Number(value.toFixed(2)));
}
