import type { Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';

/** Whose rules a design is checked by: of the UK, Ireland, the US, or EN 1997-1 with its recommended values. */
export type RulesName = 'gb' | 'ie' | 'us' | 'en';

/** The country of a site, and whose rules it goes by; it moves nothing of the answer: the sheet to sign and the check by hand only. */
export interface Country {
  /** ISO 3166-1 alpha-2; absent: the survey does not say */
  code?: string;
  rules: RulesName;
}

const RULES: Readonly<Record<string, RulesName>> = { GB: 'gb', IE: 'ie', US: 'us' };

/** The country by the survey; where it does not say, the rules that go with the units it is shown in. */
export function countryOf({ site }: Survey, assume: Assumptions): Country {
  const { country, show_units } = site;
  if (country !== undefined) {
    const rules = Object.hasOwn(RULES, country) ? RULES[country]! : 'en';
    if (rules === 'en')
      assume.add(
        'rules of the country',
        'EN 1997-1, recommended values',
        '',
        `the sheet for an inspector has no rules of ${country}: its national annex or code must be looked up`,
      );
    return { code: country, rules };
  }
  const us = show_units === 'us';
  assume.add(
    'country',
    us ? 'US' : 'EN 1997-1, recommended values',
    '',
    `no country is said: the sheet for an inspector and the rules for digging go by the units of the answer (${us ? 'feet' : 'metres'}); no depth or chance hangs on it`,
  );
  return { rules: us ? 'us' : 'en' };
}
