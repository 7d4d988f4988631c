/** The one check without chances, for the inspector: by hand in two minutes. */

import type { Report } from '../contract/index.js';
import { handCheckStandard } from '../text/designWords.js';
import { upliftLine } from '../text/upliftLine.js';
import type { UnitSystem } from '../units/index.js';
import { type Markup, paragraph, section } from './markup.js';

export function checkSection(report: Report, units: UnitSystem): Markup {
  const { result } = report;
  return section(
    'check',
    'One check by hand, for the inspector',
    paragraph(handCheckStandard(report.rules, result.uplift_check[0]!.factor)),
    ...result.uplift_check.map((check) => paragraph(upliftLine(check, units), 'check')),
    paragraph(
      'Levels count from the lowest natural ground at the rim. The liner is taken as weightless. The same figures stand in result.json under uplift_check, and step by step in the worked calculation. Every design situation, by the rules of the country, stands in the sheet below.',
      'note',
    ),
  );
}
