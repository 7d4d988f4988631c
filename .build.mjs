/**
 * Builds `dist/`: types and code, the packages that are built in, the page's script, and the licences of all of these.
 * With `--if-changed` only where something it is built from is newer than what the last build wrote at its end.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { deflateSync } from 'node:zlib';
import { build, transform } from 'esbuild';

process.chdir(import.meta.dirname);

const LAST = 'dist/NOTICES.txt';
const SOURCES = ['.build.mjs', 'package-lock.json', 'tsconfig.json', 'lib'];

/** Since when a file, or a folder with all in it, has been as it is; a file taken away is a change of its folder. */
function changed(path) {
  const stat = statSync(path);
  const below = stat.isDirectory() ? readdirSync(path).map((name) => changed(join(path, name))) : [];
  return Math.max(stat.mtimeMs, ...below);
}

const built = statSync(LAST, { throwIfNoEntry: false })?.mtimeMs ?? 0;
if (process.argv.includes('--if-changed')) {
  if (Math.max(...SOURCES.map(changed)) < built) process.exit(0);
  console.log('building, as the sources have changed');
}

execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.json'], {
  stdio: 'inherit',
});

for (const file of readdirSync('lib', { recursive: true }).filter((name) => name.endsWith('.css'))) {
  const { code } = await transform(readFileSync(join('lib', file), 'utf8'), { loader: 'css', minify: true });
  writeFileSync(join('dist', `${file}.js`), `export const css = ${JSON.stringify(code.trim())};\n`);
}

/** Packages built into a file of `dist/`, by the file. */
const builtIn = new Map();

/** Bundles a file and remembers which packages went into it, those of files bundled before included. */
async function bundled(entry, outfile, options) {
  const { metafile } = await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    metafile: true,
    legalComments: 'inline',
    logLevel: 'warning',
    ...options,
  });
  const packages = Object.keys(metafile.inputs).flatMap((input) => {
    const [, name] = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input) ?? [];
    return name ? [name] : (builtIn.get(resolve(input)) ?? []);
  });
  builtIn.set(resolve(outfile), [...new Set(packages)].sort());
}

/** The licences of the packages of a file, each text once, below the names of those it holds for. */
function noticesOf(packages) {
  const named = new Map();
  for (const name of packages) {
    const folder = join('node_modules', name);
    const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice|copying)/i.test(file));
    if (files.length === 0) throw new Error(`missing licence of ${name}: it cannot be built in without`);
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const text = files.map((file) => readFileSync(join(folder, file), 'utf8').trim()).join('\n\n');
    named.set(text, [...(named.get(text) ?? []), `${name} ${version} (${license})`]);
  }
  return [...named]
    .map(([text, names]) => `${names.join(', ')}\n\n${text}`)
    .join(`\n\n${'-'.repeat(80)}\n\n`);
}

for (const file of ['dist/sampling/normal.js', 'dist/notebook/jpeg.js'])
  await bundled(file, file, { format: 'esm', external: ['./pixels.js'], allowOverwrite: true });

/** Bundles a script for browsers. */
async function script(entry, outfile) {
  await bundled(entry, outfile, { minify: true, format: 'iife', target: 'es2023', legalComments: 'none' });
  return readFileSync(outfile, 'utf8');
}

/** Packages built into files, each once. */
const packagesOf = (...files) => [...new Set(files.flatMap((file) => builtIn.get(resolve(file))))].sort();

/** A script with the licences of packages behind it. */
function licensed(text, packages) {
  return `${text}/*! Built in:\n\n${noticesOf(packages).replaceAll('*/', '* /')}\n*/\n`;
}

// The page's script is of two parts in one file: what runs with the page, and the library for its worker, packed.
const [OWN, LIVE, FORM] = ['dist/page/liveMain.min.js', 'dist/page/live.min.js', 'dist/form/form.min.js'];
const own = await script('dist/page/liveMain.js', OWN);
const library = await script('dist/form/library.js', LIVE);
const { joined } = await import('./dist/page/liveScripts.js');
const { sourceHash } = await import('./dist/page/policy.js');
const inPage = packagesOf(OWN, LIVE);
const packed = deflateSync(library, { level: 9 }).toString('base64');
writeFileSync(LIVE, joined({ own: licensed(own, inPage), allowed: sourceHash(library), library: packed }));
rmSync(OWN);
// The form holds the page's script, with its licences, beside its own.
const form = await script('dist/form/screen/main.js', FORM);
writeFileSync(
  FORM,
  licensed(
    form,
    packagesOf(FORM).filter((name) => !inPage.includes(name)),
  ),
);

const everywhere = [...new Set([...builtIn.values()].flat())].sort();
writeFileSync(LAST, `Built into files of this folder:\n\n${noticesOf(everywhere)}\n`);
