/** The country of a site, by the two letters of ISO 3166-1. */

import { CellFault, type Column } from './column.js';
import { COUNTRY_NAMES } from './gardenWords.js';

/** ISO 3166-1 alpha-2, the codes that are given to a country or territory. */
export const COUNTRY_CODES: ReadonlySet<string> = new Set(
  (
    'AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY BZ CA CC ' +
    'CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET FI FJ FK FM FO FR GA GB GD GE ' +
    'GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR IS IT JE JM JO JP KE KG KH KI KM ' +
    'KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO MP MQ MR MS MT MU MV MW MX MY MZ ' +
    'NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM PN PR PS PT PW PY QA RE RO RS RU RW SA SB SC SD SE SG SH ' +
    'SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF TG TH TJ TK TL TM TN TO TR TT TV TW TZ UA UG UM US UY UZ VA VC VE VG ' +
    'VI VN VU WF WS YE YT ZA ZM ZW'
  ).split(' '),
);

const normal = (cell: string) =>
  cell
    .trim()
    .toLowerCase()
    .replace(/[.]/g, '')
    .replace(/[\s_-]+/g, ' ');
const codeOf = (cell: string) => {
  const code = normal(cell).toUpperCase();
  return COUNTRY_CODES.has(code) ? code : undefined;
};

/** A country by its two letters; a few are known by name, which is told. */
export function country(): Column<string> {
  const byName = (cell: string) =>
    Object.hasOwn(COUNTRY_NAMES, normal(cell)) ? COUNTRY_NAMES[normal(cell)] : undefined;
  return {
    read(cell) {
      const code = codeOf(cell) ?? byName(cell);
      if (code !== undefined) return code;
      throw new CellFault(
        'unknown-word',
        `unknown '${cell}'`,
        'two letters of ISO 3166-1, such as GB, IE, US, DE or FR',
        'Write the two letters of the country, or leave the row out where they are not known.',
      );
    },
    taken: (cell) => (codeOf(cell) === undefined ? byName(cell) : undefined),
  };
}
