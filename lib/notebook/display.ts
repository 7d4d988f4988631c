/** Showing figures, tables and frames under a notebook cell, always with the same in plain text. */
import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import { sep } from 'node:path';
import type { Drawing } from '../figures/drawing.js';
import { escapeHtml, scriptJson } from '../figures/escape.js';
import type { Figure } from '../figures/figure.js';
import { type Table, tableHtml, tableText } from '../figures/table.js';
import { visible } from '../figures/visible.js';
import { type Frame, tableOfFrame } from './frame.js';
import { plotlySource } from './plotly.js';
import { print } from './terminal.js';

/** A piece of HTML and the same in plain text, for views that show no HTML of a notebook they don't trust. */
export interface Html {
  html: string;
  alt: string;
}

/** What the kernel calls to publish under the running cell; absent outside a kernel. */
type Publish = (content: { data: Record<string, string>; metadata: object; transient: object }) => void;

const KERNEL_MODULE = ['', 'tslab', 'dist', 'jupyter.js'].join(sep);

/** Drawings keep their own light paper, whatever theme the notebook has. */
const PAPER = 'background: #fff; color: #1b1f24; padding: 8px; max-width: 1068px';

/** Figures shown so far by this kernel. */
let figures = 0;

/**
 * Shows a figure, a drawing, a table, a data frame or HTML under the running cell; outside a kernel it prints the plain text.
 * The figure library goes into the notebook once, with the first figure.
 * @param what - to be shown
 * @throws EnvironmentError when a figure is shown and the package plotly.js-dist-min is missing
 */
export async function show(what: Figure | Drawing | Table | Frame | Html): Promise<void> {
  const publish = kernelPublish();
  const { html, alt } = await rendered(what, publish !== undefined);
  if (publish) publish({ data: { 'text/html': html, 'text/plain': alt }, metadata: {}, transient: {} });
  else print(alt);
}

async function rendered(what: Figure | Drawing | Table | Frame | Html, drawn: boolean): Promise<Html> {
  // A frame comes first: its columns are properties of it, whatever they are called.
  const thing = 'shape' in what ? tableOfFrame(what) : what;
  if ('rows' in thing) return { html: untypeset(tableHtml(thing)), alt: tableText(thing) };
  if ('html' in thing) return thing;
  if ('wide' in thing)
    return { html: untypeset(`<div style="${PAPER}">${thing.wide}</div>`), alt: visible(thing.alt) };
  return drawn ? figureHtml(thing) : { html: '', alt: thing.alt };
}

/** HTML in which a notebook finds no TeX: what a survey says between two $ stays as it was written. */
export function untypeset(html: string): string {
  return `<div class="tex2jax_ignore mathjax_ignore">${html}</div>`;
}

/** The words stand in the figure's place until it is drawn, and stay there where scripts don't run. */
async function figureHtml({ data, layout, alt }: Figure): Promise<Html> {
  const library = figures === 0 ? `<script>${await plotlySource()}</script>` : '';
  figures += 1;
  const json = scriptJson([data, layout, { responsive: true, displaylogo: false, typesetMath: false }]);
  // Number and content: a cell run again after a restart doesn't draw into the figure of another cell.
  const id = `figure-${figures}-${createHash('sha256').update(json).digest('hex').slice(0, 8)}`;
  const words = escapeHtml(visible(alt));
  return {
    alt: visible(alt),
    html: untypeset(
      `${library}<div id="${id}" role="img" aria-label="${words}">${words}</div>` +
        `<script>if (window.Plotly) { const place = document.getElementById('${id}'); place.textContent = '';` +
        ` Plotly.newPlot(place, ...${json}); }</script>`,
    ),
  };
}

/**
 * The kernel's own way to publish. Its public `display` takes a single media type, which would put the plain text
 * under the HTML rather than in its stead; and it is the loaded kernel that counts, wherever it was installed.
 */
function kernelPublish(): Publish | undefined {
  const { cache } = createRequire(import.meta.url);
  const path = Object.keys(cache).find((file) => file.endsWith(KERNEL_MODULE));
  return path && cache[path]?.exports.lastWriteDisplayData;
}
