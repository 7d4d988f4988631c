/** The one check without chances, for the inspector: by hand in two minutes. */

import type { Report } from '../contract/index.js';
import { upliftLine } from '../text/upliftLine.js';
import type { UnitSystem } from '../units/index.js';
import { paragraph, section } from './markup.js';

export function checkSection({ result }: Report, units: UnitSystem): string {
  return section(
    'check',
    'One check by hand, for the inspector',
    paragraph(
      'Uplift of the floor at the usual lowest pond level. Standard: EN 1997-1:2004, limit state UPL (2.4.7.4), recommended factors of table A.15: 1.0 on what lifts, 0.9 on what holds. The water outside is the yearly highest that 95 % of years stay below.',
    ),
    ...result.uplift_check.map((check) => paragraph(upliftLine(check, units), 'check')),
    paragraph(
      'Levels count from the lowest natural ground at the rim. The liner is taken as weightless. The same figures stand in result.json under uplift_check, and step by step in the worked calculation. Every design situation, by the rules of the country, stands in the sheet below.',
      'note',
    ),
  );
}
