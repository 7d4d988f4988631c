/** Checks between the files of a survey: names that must meet, marks that must exist. */

import type { Findings } from './problem.js';
import { suggest } from './suggest.js';
import type { LevelRole, Origin, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Adds to `findings` what the files say against each other. */
export function checkAgreement(survey: Survey, findings: Findings): void {
  checkHoleNames(survey, findings);
  // Absent rows count only if no row of that file was refused.
  if (!findings.clean('levels.csv')) return;
  const levelled = (role: LevelRole) => survey.levels.some((point) => point.role === role);
  const need = (role: LevelRole, why: string, where: Origin | undefined, remedy: string) => {
    const message = `missing a levelled point of role '${role}' - ${why}`;
    if (where && !levelled(role))
      findings.refuse({ ...where, code: 'missing-level', message, expected: role, remedy });
  };
  need(
    'rim',
    'full_level is a height on the mark of levels.csv',
    survey.origins.pond.full_level,
    'Level the rim, or give water_above_rim_ground instead.',
  );
  for (const role of ['pond', 'dip-pipe'] as const) {
    const look = survey.looks.find((one) => one.pit === role);
    need(
      role,
      `depths of '${role}' are below it`,
      look?.origin,
      `Add a row with role ${role} to levels.csv.`,
    );
  }
}

/** A hole may be known to one file alone; that two files mean the same one by different names is worth a word. */
function checkHoleNames(survey: Survey, findings: Findings): void {
  const described = new Set(survey.layers.map((layer) => layer.pit));
  for (const point of survey.levels) if (point.role === 'pit') described.add(point.point);
  const dipped = survey.looks.map((look) => look.pit).filter(isNamedHole);
  const named = new Set([...described, ...dipped]);
  const told = new Set<string>();
  const check = (pit: string, known: Set<string>, alwaysTell: boolean, origin: Origin) => {
    const closest = suggest(pit, [...known]);
    // P1 and P2 differ by one sign as well: a hint only where case or spaces make the difference.
    const same = closest !== undefined && loose(closest) === loose(pit);
    if (known.has(pit) || told.has(pit) || !(alwaysTell || same)) return;
    told.add(pit);
    const hint = same ? `; did you mean '${closest}'?` : '';
    findings.warn({
      ...origin,
      code: 'unknown-pit',
      message: `unknown hole '${pit}' - no other file describes it${hint}`,
    });
  };
  for (const look of survey.looks) if (isNamedHole(look.pit)) check(look.pit, described, false, look.origin);
  for (const test of survey.soakage) check(test.pit, described, false, test.origin);
  for (const head of survey.heads) {
    const pit = head.place.replace(/^below:/, '');
    if (pit !== 'site' && pit !== 'uphill') check(pit, named, true, { ...head.origin, column: 'place' });
  }
}

function loose(name: string): string {
  return name.toLowerCase().replace(/[\s_.-]/g, '');
}
