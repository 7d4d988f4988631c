/** From the files of a folder to a survey. */

import { checkAgreement } from './agreement.js';
import { CONSEQUENCES, consequenceOf } from './consequence.js';
import { digestOf, digestsOf } from './digest.js';
import { openFolder, SURVEY_FILES, type SurveyFile } from './folder.js';
import { readHeads } from './heads.js';
import { readLevels } from './levels.js';
import { readPits } from './pits.js';
import { checkPlausibility } from './plausibility.js';
import { readPond } from './pondFacts.js';
import { readPrices } from './prices.js';
import { Findings, type Problem, SurveyError } from './problem.js';
import { checkSeasons } from './seasons.js';
import { readSite } from './siteFacts.js';
import { readSoakage } from './soakage.js';
import type { Survey } from './survey.js';
import { checkUnits } from './unitDoubt.js';
import { readWater } from './water.js';
import { readClimate, readWeather } from './weather.js';

/**
 * Reads a survey: every file of the contract, in SI, with the place each value came from.
 * @param files everything in the folder by file name, as bytes or as text decoded from UTF-8
 * @param options `name`: what the survey is called when site.csv does not say (the folder's name);
 *   `today`: days since 1970-01-01, by which a date has not come yet; absent: the clock's
 * @returns the survey, with what is worth knowing as `warnings`
 * @throws SurveyError with every problem of every file
 * @example
 * ```ts
 * const survey = parseSurvey({
 *   'pond.csv': 'item,value,unit\nlength,4,m\nwidth,3,m\ndepth,3 ft,\n',
 *   'pits.csv': 'pit,top_m,bottom_m,texture\nP1,0,1.5,clay\n',
 * });
 * survey.pond.depth; // 0.9144
 * ```
 */
export function parseSurvey(
  files: Readonly<Record<string, string | Uint8Array>>,
  options: { name?: string; today?: number } = {},
): Survey {
  const findings = new Findings();
  const { sheets, contents } = openFolder(files, findings);
  const site = readSite(sheets['site.csv'], findings);
  const pond = readPond(sheets['pond.csv'], findings);
  const survey: Survey = {
    name: site.facts.name ?? options.name ?? 'survey',
    digest: digestOf(contents),
    digests: digestsOf(contents),
    files: SURVEY_FILES.filter((name) => name in contents),
    site: site.facts,
    pond: pond.facts,
    origins: { site: site.origins, pond: pond.origins },
    layers: readPits(sheets['pits.csv'], findings),
    looks: readWater(sheets['water.csv'], findings),
    soakage: readSoakage(sheets['soakage.csv'], findings),
    heads: readHeads(sheets['heads.csv'], findings),
    levels: readLevels(sheets['levels.csv'], findings),
    weather: readWeather(sheets['weather.csv'], findings),
    climate: readClimate(sheets['climate.csv'], findings),
    prices: readPrices(sheets['prices.csv'], findings),
    warnings: findings.warnings,
  };
  checkAgreement(survey, findings);
  checkSeasons(survey, findings);
  checkUnits(survey, sheets, findings);
  checkPlausibility(survey, options.today ?? Math.floor(Date.now() / 86_400_000), findings);
  findings.close();
  if (findings.problems.length > 0) {
    const reach = (problem: Problem) => CONSEQUENCES.indexOf(consequenceOf(problem));
    const place = (file: string) => SURVEY_FILES.indexOf(file as SurveyFile);
    const inOrder = [...findings.problems].sort(
      (a, b) => reach(a) - reach(b) || place(a.file) - place(b.file) || (a.line ?? 0) - (b.line ?? 0),
    );
    throw new SurveyError(inOrder, findings.warnings);
  }
  return survey;
}
