import { expect, it, vi } from 'vitest';
import type { DisplayOutput, Notebook } from '../../lib/notebook/nbformat.js';
import { runNotebook } from '../../lib/notebook/run.js';
import { itInChromium } from '../chromium.js';
import { notebookOf, PROJECT } from './notebooks.js';

vi.setConfig({ testTimeout: 60_000 });

const TABLE = `{ name: 'pits', columns: [{ key: 'pit', label: 'pit' }, { key: 'depth_m', label: 'depth', unit: 'm' }],
  rows: [['<A>', 0.1 + 0.2], ['B', null]] as (string | number | null)[][] }`;

const hostile = JSON.stringify('$\\\\href{javascript:alert(1)}{x}$\u202egnp\u001b[2J\u0007');

/** Cells of tables, frames, HTML and two figures, then four of hostile text: one kernel, as it takes seconds to start. */
const CELLS = [
  `import { show, toDataFrame } from 'underpond/node';\nconst table = ${TABLE};\nawait show(table);`,
  'const frame = await toDataFrame(table);\nawait show(frame.head(1));\nconst mean: number = frame.column("depth_m").mean();\nmean.toFixed(1)',
  "await show({ html: '<b>deep</b>', alt: 'deep' });",
  "const figure = (words: string) => ({ data: [{ y: [1, 2], name: '</script>' }], layout: {}, alt: words });\nawait show(figure('rising <fast>'));",
  "await show(figure('again'));",
  `const hostile = { name: ${hostile}, columns: [{ key: ${hostile}, label: ${hostile} }], rows: [[${hostile}]] };\nawait show(hostile);`,
  'await show(await toDataFrame(hostile));',
  `await show({ data: [{ y: [1] }], layout: {}, alt: ${hostile} });`,
  `console.log(${hostile});`,
];
let made: Promise<Notebook> | undefined;
/** The notebook of these cells as it was run. */
function shownBy(): Promise<Notebook> {
  made ??= runNotebook(notebookOf(...CELLS), { cwd: PROJECT });
  return made;
}

it('shows tables, frames, HTML and figures in the kernel, each with its plain text', async () => {
  const notebook = await shownBy();
  const shown = notebook.cells.slice(1, 6).map((cell) => (cell.outputs![0] as DisplayOutput).data);
  expect(shown[0]!['text/plain']).toBe('pits\npit  depth (m)\n<A>  0.3\nB');
  expect(shown[0]!['text/html']).toContain(
    '<tr><td>&lt;A&gt;</td><td align="right">0.3</td></tr><tr><td>B</td><td></td></tr>',
  );
  expect(shown[1]!['text/plain']).toBe('pit  depth_m\n<A>  0.3');
  expect(notebook.cells[2]!.outputs![1]).toMatchObject({ text: '0.3\n' });
  expect(shown[2]).toEqual({ 'text/html': '<b>deep</b>', 'text/plain': 'deep' });
  const [first, second] = [shown[3]!, shown[4]!];
  expect(first['text/plain']).toBe('rising <fast>');
  expect(first['text/html']).toMatch(
    /^<div class="tex2jax_ignore mathjax_ignore"><script>[\s\S]{1000000,}<\/script><div id="figure-1-[0-9a-f]{8}" role="img"/,
  );
  expect(first['text/html']!.match(/<\/script/g)).toHaveLength(2);
  expect(second['text/html']).toMatch(
    /^<div class="tex2jax_ignore mathjax_ignore"><div id="figure-2-[0-9a-f]{8}" role="img" aria-label="again">again<\/div>/,
  );
  expect(second['text/html']!.length).toBeLessThan(1000);
});

it('shows nothing that turns text, steers a terminal or is set as TeX', async () => {
  const notebook = await shownBy();
  const outputs = notebook.cells.slice(6).flatMap((cell) => cell.outputs ?? []);
  expect(outputs).toHaveLength(4);
  for (const output of outputs) {
    const texts = output.output_type === 'stream' ? [output.text] : Object.values(output.data);
    for (const text of texts) {
      expect(text.replace(/<script>[\s\S]*?<\/script>/g, '')).not.toMatch(/[^\n\P{C}]/u);
    }
    // TeX is set in HTML alone, and not within this element.
    if (output.output_type !== 'stream')
      expect(output.data['text/html']).toMatch(/^<div class="tex2jax_ignore mathjax_ignore">[\s\S]*<\/div>$/);
  }
  const figure = outputs[2] as DisplayOutput;
  expect(figure.data['text/html']).toContain('"typesetMath":false');
});

itInChromium(
  'figures are drawn in their places, and the words stay where scripts do not run',
  async (page) => {
    const notebook = await shownBy();
    const html = notebook.cells
      .slice(4, 6)
      .map((cell) => (cell.outputs![0] as DisplayOutput).data['text/html']);
    await page.setContent(`<!doctype html>${html.join('')}`);
    for (const alt of ['rising <fast>', 'again'])
      expect(await page.getByRole('img', { name: alt }).locator('path.js-line').count(), alt).toBe(1);
    expect(await page.getByText('rising').count()).toBe(0);
    await page.setContent(`<!doctype html>${html[1]!.replace(/<script>.*<\/script>/, '')}`);
    expect(await page.getByText('again').count()).toBe(1);
  },
);
