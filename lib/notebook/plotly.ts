/** The figure library as text, to be put into a page once. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { optional } from './optional.js';

/**
 * The source of plotly.js, which sets `window.Plotly`; it holds no `</script`.
 * @returns a script
 * @throws EnvironmentError when the package plotly.js-dist-min is missing
 */
export async function plotlySource(): Promise<string> {
  const file = await optional('plotly.js-dist-min', 'draw figures', () =>
    createRequire(import.meta.url).resolve('plotly.js-dist-min/plotly.min.js'),
  );
  return readFile(file, 'utf8');
}
