/** What the project rests on: as the table in the contributors' guide says, and no more. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PROJECT } from '../notebook/notebooks.js';

const read = (path: string) => readFileSync(join(PROJECT, path), 'utf8');
const { dependencies, devDependencies, peerDependencies, peerDependenciesMeta } = JSON.parse(
  read('package.json'),
);
const ROW = /^\| `([^`]+)` \| (runtime|built in|optional|development) \| ([^|]+) \|/;
const rows = read('DEVELOPERS.md')
  .split('\n')
  .flatMap((line) => {
    const [, name, is, licence] = ROW.exec(line) ?? [];
    return name && is && licence ? [{ name, is, licence: licence.trim() }] : [];
  });
const named = (...kinds: string[]) => rows.filter(({ is }) => kinds.includes(is)).map(({ name }) => name);

/** Packages that the files of a folder import, by the file. */
function importsIn(folder: string): [file: string, name: string][] {
  return readdirSync(folder).flatMap((entry): [string, string][] => {
    const path = join(folder, entry);
    if (statSync(path).isDirectory()) return importsIn(path);
    if (!path.endsWith('.ts')) return [];
    const text = readFileSync(path, 'utf8');
    const targets = [
      ...text.matchAll(/^(?:import|export)\b[^;']*from '([^']+)'/gm),
      ...text.matchAll(/\bimport\('([^']+)'\)/g),
    ].map(([, target]) => target!);
    return targets
      .filter((target) => !/^(\.|node:)/.test(target))
      .map((target): [string, string] => [path, /^(@[^/]+\/)?[^/]+/.exec(target)![0]]);
  });
}

describe('dependencies', () => {
  test('four at most are installed with the package', () => {
    expect(Object.keys(dependencies).length).toBeLessThanOrEqual(4);
    expect(
      Object.values(peerDependenciesMeta).every((meta) => (meta as { optional: boolean }).optional),
    ).toBe(true);
    expect(Object.keys(peerDependenciesMeta).sort()).toEqual(Object.keys(peerDependencies).sort());
  });

  test('all of them stand in the table, and nothing else does', () => {
    expect(named('runtime').sort()).toEqual(Object.keys(dependencies).sort());
    expect(named('optional').sort()).toEqual(Object.keys(peerDependencies).sort());
    const others = Object.keys(devDependencies).filter(
      (name) => name !== 'underpond' && !(name in peerDependencies),
    );
    expect(named('built in', 'development').sort()).toEqual(others.sort());
  });

  test.each(rows)('$name is under the licence that is told', ({ name, licence }) => {
    expect(JSON.parse(read(`node_modules/${name}/package.json`)).license ?? 'MIT').toBe(licence);
  });

  test('the library imports what is installed with it, what is built in, and in notebooks what is optional', () => {
    const found = importsIn(join(PROJECT, 'lib'));
    expect(found.length).toBeGreaterThan(8);
    for (const [file, name] of found)
      expect(
        named('runtime', 'built in', ...(file.includes('/notebook/') ? ['optional'] : [])),
        file,
      ).toContain(name);
  });

  test('the lock pins every package by its hash, from the registry, and what is installed with the package runs no script', () => {
    const { packages } = JSON.parse(read('package-lock.json')) as {
      packages: Record<
        string,
        {
          integrity?: string;
          resolved?: string;
          link?: boolean;
          dev?: boolean;
          hasInstallScript?: boolean;
          devOptional?: boolean;
          peer?: boolean;
        }
      >;
    };
    const installed = Object.entries(packages).filter(
      ([path, { link }]) => path.includes('node_modules/') && !link,
    );
    expect(installed.length).toBeGreaterThan(100);
    for (const [path, { integrity, resolved, dev, hasInstallScript, devOptional, peer }] of installed) {
      expect(integrity, path).toMatch(/^sha512-/);
      expect(resolved ?? 'https://registry.npmjs.org/', path).toMatch(/^https:\/\/registry\.npmjs\.org\//);
      if (!dev && !devOptional && !peer) expect(hasInstallScript, path).toBeUndefined();
    }
  });
});
