/** Checks between the files of a survey: names that must meet, marks that must exist. */

import type { Findings } from './problem.js';
import type { LevelRole, Origin, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Places to lead water to that are weighed against each other; a garden has two or three. */
const MOST_OUTLETS = 20;

function checkOutlets({ levels }: Survey, findings: Findings): void {
  for (const role of ['outlet', 'discharge'] as const) {
    const points = levels.filter((point) => point.role === role);
    const [beyond] = points.slice(MOST_OUTLETS);
    if (beyond)
      findings.refuse({
        ...beyond.origin,
        column: 'role',
        code: 'too-large',
        message: `outside ${points.length} points of role '${role}' - at most ${MOST_OUTLETS} are weighed`,
        found: `${points.length} points`,
        expected: `at most ${MOST_OUTLETS}`,
        remedy: 'Keep those that water may lawfully be led to.',
      });
  }
}

/** Adds to `findings` what the files say against each other. */
export function checkAgreement(survey: Survey, findings: Findings): void {
  checkOutlets(survey, findings);
  checkHoleNames(survey, findings);
  checkMark(survey, findings);
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
  if (!levelled('spot'))
    need(
      'rim',
      'no other level can be brought to the pond without it',
      survey.levels[0]?.origin,
      "Level the ground at the pond's rim, on the same mark.",
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

/** A garden's levels lie within this of each other, m. */
const FALL_OF_A_GARDEN = 60;
/** A pond is filled to within this of the ground at its rim, m, as in water_above_rim_ground. */
const FROM_RIM = 3;

/** Levels on one mark that no garden has between them: a slip, or two marks. */
function checkMark({ levels, pond, origins }: Survey, findings: Findings): void {
  const heights = levels.map((point) => point.level).sort((a, b) => a - b);
  const middle = heights[Math.floor(heights.length / 2)];
  const rim = Math.min(...levels.filter((point) => point.role === 'rim').map((point) => point.level));
  const check = (level: number, beside: number, most: number, what: string, where: Origin) => {
    if (Math.abs(level - beside) <= most) return;
    const metres = (value: number) => `${Number(value.toPrecision(4))} m`;
    findings.refuse({
      ...where,
      code: 'outside-range',
      message: `outside ${metres(level)} - ${what} ${metres(beside)} on the same mark`,
      expected: `within ${most} m of it`,
      remedy: 'Check the level, its unit and its mark.',
    });
  };
  for (const { level, origin } of levels)
    check(level, middle as number, FALL_OF_A_GARDEN, 'most points are at', { ...origin, column: 'level' });
  if (pond.full_level !== undefined && origins.pond.full_level && Number.isFinite(rim))
    check(pond.full_level, rim, FROM_RIM, 'the lowest rim is at', origins.pond.full_level);
}

/** A hole may be known to one file alone; that two files mean the same one by different names is worth a word. */
function checkHoleNames(survey: Survey, findings: Findings): void {
  const described = new Set(survey.layers.map((layer) => layer.pit));
  for (const point of survey.levels) if (point.role === 'pit') described.add(point.point);
  const dipped = survey.looks.map((look) => look.pit).filter(isNamedHole);
  const named = new Set([...described, ...dipped]);
  const told = new Set<string>();
  const byLoose = (known: Set<string>) => new Map([...known].map((pit) => [loose(pit), pit]));
  const [spelled, spelledAnywhere] = [byLoose(described), byLoose(named)];
  const check = (pit: string, known: Set<string>, alwaysTell: boolean, origin: Origin) => {
    if (known.has(pit) || told.has(pit)) return;
    // P1 and P2 differ by one sign as well: a hint only where case or spaces make the difference.
    const same = (known === described ? spelled : spelledAnywhere).get(loose(pit));
    if (!alwaysTell && same === undefined) return;
    told.add(pit);
    const hint = same === undefined ? '' : `; did you mean '${same}'?`;
    findings.warn({
      ...origin,
      code: 'unknown-pit',
      message: `unknown hole '${pit}' - no other file describes it${hint}`,
    });
  };
  for (const look of survey.looks) if (isNamedHole(look.pit)) check(look.pit, described, false, look.origin);
  const logged = new Set(survey.layers.map((layer) => layer.pit));
  for (const { pit, origin } of survey.looks) {
    if (logged.size === 0 || logged.has(pit) || told.has(pit) || !isNamedHole(pit)) continue;
    told.add(pit);
    findings.warn({
      ...origin,
      code: 'hole-without-ground',
      message: `hole '${pit}' has no row in pits.csv - its water counts, but what ground it was read in is not known: if it goes into another layer than the holes described, its water may be of that layer; describe its layers in pits.csv`,
    });
  }
  for (const test of survey.soakage) check(test.pit, described, false, test.origin);
  for (const head of survey.heads) {
    const pit = head.place.replace(/^below:/, '');
    if (pit !== 'site' && pit !== 'uphill') check(pit, named, true, { ...head.origin, column: 'place' });
  }
}

function loose(name: string): string {
  return name.toLowerCase().replace(/[\s_.-]/g, '');
}
