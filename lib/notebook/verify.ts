/** Whether a page was made from the files of a folder. */
import { readFileSync } from 'node:fs';
import { digestsOf } from '../survey/digest.js';
import { openFolder, SURVEY_FILES } from '../survey/folder.js';
import { Findings } from '../survey/problem.js';
import { readFolder } from './files.js';
import { surveyFolder } from './readSurvey.js';

/** How a file of the folder stands to the page. */
interface Verified {
  file: string;
  says: 'same' | 'changed' | 'missing' | 'not on the page';
}

/**
 * Each file of a page's survey against the folder, by the SHA-256 printed on the page.
 * @param page path of a page
 * @param folder of the survey, or a file in it
 * @returns a row a file that the page or the folder has
 * @throws Error when the page holds no digests, or a path cannot be read
 */
export function verifyPage(page: string, folder: string): Verified[] {
  const html = readFileSync(page, 'utf8');
  const printed = new Map(
    [...html.matchAll(/data-file="([a-z.]+)">([0-9a-f]{64})</g)].map(([, file, digest]) => [file!, digest!]),
  );
  if (printed.size === 0) throw new Error(`no digests on '${page}': name a page of underpond`);
  // What is wrong with the files is no matter here.
  const { contents } = openFolder(readFolder(surveyFolder(folder)), new Findings());
  const found = digestsOf(contents);
  return SURVEY_FILES.flatMap((file): Verified[] => {
    const [on, here] = [printed.get(file), found[file]];
    if (on === undefined) return here === undefined ? [] : [{ file, says: 'not on the page' }];
    return [{ file, says: here === undefined ? 'missing' : here === on ? 'same' : 'changed' }];
  });
}
