/** `npm run new-survey FOLDER [us|metric]`: a survey folder to fill in. */
import { resolve } from 'node:path';
import { FIELD_SHEET, newSurvey } from './surveyFolder.js';

function main([folder, units = 'metric', ...more]: string[]): number {
  try {
    if (!folder || more.length > 0 || (units !== 'metric' && units !== 'us'))
      throw new Error(
        'missing or unknown argument: npm run new-survey FOLDER, or FOLDER us, or FOLDER metric',
      );
    // npm runs this in the project's folder; the user means one from where they stand.
    const path = resolve(process.env.INIT_CWD ?? '', folder);
    const written = newSurvey(path, units);
    process.stdout.write(
      `wrote into ${path}: ${written.join(', ')}\n` +
        'Three files are enough: site, pond, pits; add water when you have it.\n' +
        `Print ${FIELD_SHEET}, take it outside, type in what it holds, then: npm start -- ${folder}\n`,
    );
    return 0;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    return 1;
  }
}

process.exitCode = main(process.argv.slice(2));
