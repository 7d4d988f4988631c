/** A figure as plain data: what plotly.js takes, and the same in words for who cannot see it. */
export interface Figure {
  /** plotly.js traces */
  data: object[];
  /** plotly.js layout */
  layout: object;
  /** what the figure says, in a sentence or two */
  alt: string;
}
