/** A fuzzed survey from a folder on disk to a page on disk. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { OUTPUTS, writeOutputs } from '../../lib/notebook/outputs.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { siteModel } from '../../lib/site/index.js';
import { SurveyError } from '../../lib/survey/index.js';
import { caseOf } from './fuzz.js';

/** Runs a case; its folder keeps its bytes, and the outputs are there whole or not at all. */
export async function throughFolder(seed: number): Promise<void> {
  const home = mkdtempSync(join(tmpdir(), 'survey-'));
  const [folder, out] = [join(home, 'survey'), join(home, 'out')];
  try {
    for (const made of [folder, out]) mkdirSync(made);
    const files = Object.entries(caseOf(seed));
    for (const [name, content] of files) writeFileSync(join(folder, name), content);
    let refused = false;
    try {
      await writeOutputs(assess(siteModel(readSurvey(folder), { samples: 8 })), out);
    } catch (error) {
      if (!(error instanceof SurveyError)) throw new Error(`seed ${seed}`, { cause: error });
      refused = true;
    }
    expect(readdirSync(home).sort()).toEqual(['out', 'survey']);
    expect(readdirSync(folder).sort()).toEqual(files.map(([name]) => name).sort());
    for (const [name, content] of files)
      expect(readFileSync(join(folder, name)).equals(Buffer.from(content as string)), name).toBe(true);
    expect(readdirSync(out).sort(), `seed ${seed}`).toEqual(refused ? [] : [...OUTPUTS].sort());
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
}
