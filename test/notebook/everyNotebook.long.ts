/** Every notebook of the folder, on every demo, and under a real Jupyter with the same shown by every cell. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import {
  type Cell,
  type Notebook,
  type Output,
  readNotebook,
  sourceOf,
} from '../../lib/notebook/nbformat.js';
import { runNotebook } from '../../lib/notebook/run.js';
import { itUnderJupyter, underJupyter } from './jupyter.js';
import { PROJECT } from './notebooks.js';

const FOLDER = join(PROJECT, 'notebooks');
const DEMOS = ['clay-slope', 'clay-hollow', 'loam-terrace'];
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.ipynb'));

/** What a notebook must have said on every demo, beside what holds for all. */
const SAYS: Record<string, (string | RegExp)[]> = {
  'how-deep': ['Where the answer turns'],
  'the-drain': [/weakest link is the/, 'will silt up', 'item,metric,metric_unit,us,us_unit'],
  'the-ground': [/test d in P2 is not used: .*rose during a falling test/, /Around the pond water moves at/],
  'under-the-liner': [/Emptied .+ (?:lifted most|nothing lifts)/, 'less than 1e-8'],
  'water-through-the-year': [/In the worst month, \w+, the water stands/, 'with a dry floor'],
  'what-if': [/(?:Safe|Not safe) at \d/],
  'what-lifts-the-liner': [/Full, the liner \w+/],
};

const made = mkdtempSync(join(tmpdir(), 'underpond-notebooks-'));
afterAll(() => rmSync(made, { recursive: true, force: true }));

interface Ran {
  notebook: Notebook;
  /** what it wrote besides */
  files: Record<string, string>;
}

const outcome = (notebook: Notebook, out: string): Ran => ({
  notebook,
  files: Object.fromEntries(readdirSync(out).map((name) => [name, readFileSync(join(out, name), 'utf8')])),
});

/** The survey a notebook takes when none is named; none for one that is about no survey. */
async function ownDemo(name: string): Promise<string> {
  const { cells } = await readNotebook(join(FOLDER, name));
  return /\.\.\/datasets\/([a-z-]+)/.exec(cells.map(sourceOf).join('\n'))?.[1] ?? '';
}

const running = new Map<string, Promise<Ran>>();

/** Runs a notebook on a demo once, however often it is asked for. */
function ran(name: string, demo: string): Promise<Ran> {
  const key = `${name} ${demo}`;
  const begin = async () => {
    const out = mkdtempSync(join(made, 'ours-'));
    const named: Record<string, string> =
      demo === (await ownDemo(name)) ? {} : { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) };
    return outcome(await runNotebook(join(FOLDER, name), { env: { ...named, UNDERPOND_OUT: out } }), out);
  };
  if (!running.has(key)) running.set(key, begin());
  return running.get(key)!;
}

const plain = (output: Output) =>
  'text' in output ? [output.text].flat().join('') : [output.data['text/plain'] ?? ''].flat().join('');

/** What a cell showed, in order: words joined as they came, of the rest every form of it. */
function shown({ outputs = [] }: Cell): Record<string, string>[] {
  const list: Record<string, string>[] = [];
  for (const output of outputs) {
    const form = (type: string, value: string | string[]) => [type, [value].flat().join('')] as const;
    const last = list.at(-1);
    if ('data' in output)
      list.push(Object.fromEntries(Object.entries(output.data).map(([type, value]) => form(type, value))));
    else {
      // A carriage return is a terminal's business there: the end of a CSV line loses its own.
      const said = plain(output).replaceAll('\r\n', '\n');
      if (last?.[output.name] !== undefined) last[output.name] += said;
      else list.push({ [output.name]: said });
    }
  }
  return list;
}

itUnderJupyter(
  'every notebook shows and writes the same by the own runner and under a real Jupyter',
  async () => {
    const out = mkdtempSync(join(made, 'theirs-'));
    const jupyter = underJupyter(
      names.map((name) => join(FOLDER, name)),
      { UNDERPOND_OUT: out },
    );
    const ours = [];
    for (const name of names) ours.push(await ran(name, await ownDemo(name)));
    const theirs = await jupyter;
    for (const [at, name] of names.entries())
      for (const [number, cell] of ours[at]!.notebook.cells.entries()) {
        const [own, other] = [shown(cell), shown(theirs[at]!.cells[number]!)];
        const place = `${name}, cell ${number + 1}`;
        expect(other.map(Object.keys), place).toEqual(own.map(Object.keys));
        // Compared one by one: a page or a figure in the message would drown it.
        for (const [i, forms] of own.entries())
          for (const [type, value] of Object.entries(forms))
            expect(other[i]![type] === value, `${place}, ${type}: ${value.slice(0, 200)}`).toBe(true);
      }
    const written = outcome(theirs[0]!, out).files;
    const wanted = Object.assign({}, ...ours.map(({ files }) => files)) as Record<string, string>;
    expect(Object.keys(written).sort()).toEqual(Object.keys(wanted).sort());
    expect(Object.keys(written)).toContain('result.json');
    for (const [name, text] of Object.entries(wanted)) expect(written[name] === text, name).toBe(true);
  },
);

describe.each(names.filter((name) => name !== 'checked-against.ipynb'))('%s', (name) => {
  it.each(DEMOS)(
    'runs on %s, shows what it promises and ends with its answer and what to measure next',
    async (demo) => {
      const { cells } = (await ran(name, demo)).notebook;
      for (const cell of cells)
        if (cell.cell_type === 'code' && /\b(?:show|log)\(/.test(sourceOf(cell)))
          expect(cell.outputs!.length, cell.id).toBeGreaterThan(0);
      const words = cells.flatMap(({ outputs = [] }) => outputs).map(plain);
      const said = words.join('\n');
      expect(said).not.toMatch(/NaN|undefined|Infinity|\[object/);
      for (const piece of SAYS[name.replace('.ipynb', '')] ?? []) expect(said).toMatch(piece);
      const [answer, ...next] = words.at(-1)!.split(/^Measure next: /m);
      expect(answer!.length).toBeGreaterThan(60);
      expect(next.length).toBeGreaterThan(0);
    },
  );
});
