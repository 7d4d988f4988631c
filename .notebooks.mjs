/**
 * Publishes the notebooks: every one is run from its first cell to its last, and what it shows becomes a page in
 * `out/notebooks`, which git ignores. Names as arguments publish these alone. Needs Jupyter's nbconvert.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { passingFolder, takePlace } from './dist/notebook/outFolder.js';
import { progress, progressDone } from './dist/notebook/progress.js';
import { runNotebook } from './dist/notebook/run.js';

process.chdir(import.meta.dirname);

if (spawnSync('jupyter', ['nbconvert', '--version']).status !== 0) {
  console.error('missing nbconvert, which makes pages of notebooks: pip install nbconvert');
  process.exit(1);
}
const all = readdirSync('notebooks').filter((name) => name.endsWith('.ipynb'));
const asked = process.argv.slice(2).map((name) => name.replace(/(\.ipynb)?$/, '.ipynb'));
const unknown = asked.filter((name) => !all.includes(name));
if (unknown.length > 0) {
  console.error(`unknown notebook ${unknown.join(', ')}; there are ${all.join(', ')}`);
  process.exit(1);
}
const names = asked.length > 0 ? asked : all;
const out = join('out', 'notebooks');
const pageOf = (name) => name.replace(/\.ipynb$/, '.html');
const set = all.flatMap((name) => [name, pageOf(name)]);
const passing = passingFolder(out, set);
for (const [at, name] of names.entries()) {
  progress(`${name}, ${at + 1} of ${names.length}`);
  writeFileSync(join(passing, name), JSON.stringify(await runNotebook(join('notebooks', name))));
}
progress('pages');
// What a page would fetch from elsewhere is left out: its figures and tables need none of it.
const alone = ['mathjax_url', 'require_js_url', 'jquery_url', 'jupyter_widgets_base_url'];
execFileSync(
  'jupyter',
  [
    'nbconvert',
    '--to=html',
    '--log-level=WARN',
    ...alone.map((url) => `--HTMLExporter.${url}=`),
    ...names.map((name) => join(passing, name)),
  ],
  { stdio: ['ignore', 'inherit', 'inherit'] },
);
// Of those not asked for what was published before stays.
for (const name of set)
  if (!existsSync(join(passing, name)) && existsSync(join(out, name)))
    copyFileSync(join(out, name), join(passing, name));
takePlace(passing, out, set);
progressDone();
for (const name of names) console.log(join(out, pageOf(name)));
