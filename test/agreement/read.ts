/** Every output of a survey read as a person would, and all that is said held against one another. */
import { type Claim, claimer } from './claim.js';
import { pageOf } from './html.js';
import type { Outputs } from './outputs.js';
import { pageClaims, ruleClaims } from './page.js';
import { cardClaims, lineClaims } from './small.js';
import { csv, fileClaims, resultClaims, toldOf } from './survey.js';
import { yearClaims } from './yearText.js';

const SYSTEMS = ['metric', 'us'] as const;

/** All that the outputs of one survey say. */
export function claimsOf(outputs: Outputs): Claim[] {
  const claims = readAll(outputs);
  return [...claims, ...unitClaims(claims)];
}

const UNITS = { metric: / (?:m|cm|mm)(?![\w²³/])/, us: / (?:ft|in)(?![\w²³/])(?! \w)/ };

/** A length in the units of the other system. */
function unitClaims(claims: Claim[]): Claim[] {
  return SYSTEMS.flatMap((units) => {
    const said = claimer(`texts in ${units}`);
    said.says(`units|${units}`, 'all', units, units);
    const other = units === 'us' ? 'metric' : 'us';
    for (const { where, text, span } of claims)
      if (span && where.includes(` in ${units}:`) && new RegExp(`\\d${UNITS[other].source}`).test(text))
        said.says(`units|${units}`, where, text, other);
    return said.claims;
  });
}

function readAll(outputs: Outputs): Claim[] {
  const told = toldOf(outputs);
  const years = SYSTEMS.flatMap((units) => {
    const said = claimer(`year in words in ${units}`);
    yearClaims(outputs.years[units], told, said);
    return said.claims;
  });
  return [
    ...resultClaims(outputs, told),
    ...fileClaims(outputs, told),
    ...SYSTEMS.flatMap((units) => pageClaims(outputs.pages[units], units, told)),
    ...SYSTEMS.flatMap((units) => cardClaims(outputs.cards[units], units, told)),
    ...SYSTEMS.flatMap((units) => lineClaims(outputs.lines[units], units, told)),
    ...years,
    ...shoppingClaims(outputs),
    ...ruleTexts(outputs, told),
  ];
}

/** The rules as `result.json` writes them. */
function ruleTexts({ result }: Outputs, told: ReturnType<typeof toldOf>): Claim[] {
  const said = claimer('rules of result.json');
  const { rules } = JSON.parse(result).recommendation as { rules: { text: string }[] };
  ruleClaims(
    rules.map(({ text }) => text),
    told.dug ? 'Do this' : 'What to do now',
    told,
    said,
  );
  return said.claims;
}

/** What is to be bought, on the page as in the list. */
function shoppingClaims({ pages, shopping }: Outputs): Claim[] {
  if (shopping === null) return [];
  const list = claimer('shopping list');
  const [, ...rows] = csv(shopping);
  for (const [item = '', metric = '', metricUnit = '', us = '', usUnit = ''] of rows) {
    list.says(`buy metric|${item}`, item, `${metric} ${metricUnit}`, amount(`${metric} ${metricUnit}`));
    list.says(`buy us|${item}`, item, `${us} ${usUnit}`, amount(`${us} ${usUnit}`));
  }
  const pageList = SYSTEMS.flatMap((units) => {
    const said = claimer(`page in ${units}`);
    for (const { name, rows } of pageOf(pages[units]).tables)
      if (name.startsWith('To buy and to dig'))
        for (const [item = '', bought = ''] of rows)
          said.says(`buy ${units}|${item}`, item, bought, amount(bought));
    return said.claims;
  });
  return [...list.claims, ...pageList];
}

/** An amount without its sides and without the name of a piece. */
const amount = (text: string) =>
  text
    .split(',')[0]!
    .replace(/ (pieces?|)$/, '')
    .replaceAll('\u202f', '')
    .trim();
