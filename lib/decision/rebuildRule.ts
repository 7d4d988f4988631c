import type { Basis } from '../basis/index.js';
import { MONTHS } from '../climate/index.js';
import type { Governs } from '../contract/index.js';
import { digConditions, plannedDigs, worstDig } from '../digging/index.js';
import { LEVEL_RESOLUTION, SECONDS_PER_DAY } from '../formula/index.js';
import { isAsBuilt, type Measures, NOTHING } from '../heads/index.js';
import { lowestLevel, monthlyDesign } from '../reliability/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** From the emptied pond to concrete that carries, days. Our choice. */
const CAST_AND_HARD = 7;

/** How a pond that is there is emptied for work on it: it stands as it was dug, with nothing yet built. */
export function rebuildRule(basis: Basis, { measures: m, depth }: Decision, add: AddRule): void {
  // A floor that is to lie higher is filled up under the liner.
  const filled = depth < basis.site.pond.depth - LEVEL_RESOLUTION;
  const under = (m.drain !== undefined && !isAsBuilt(m)) || m.raise > 0 || filled;
  if (under) openedRule(basis, m, depth, add);
  else if (m.ballast > 0) castRule(basis, add);
}

/** The liner comes out: the pond becomes a hole again, and is judged as one. */
function openedRule(basis: Basis, m: Measures, depth: number, add: AddRule): void {
  const { site, dig } = basis;
  const { pond } = site;
  const stands = plannedDigs(site, dig, NOTHING, pond.depth);
  const worked = plannedDigs(site, dig, m, depth);
  const conditions = digConditions(site, dig, m, depth).filter(({ met }) => met !== 'yes');
  const emptied = emptiedMonths(basis);
  const against = stands.map(({ chances }, i) =>
    [worstDig(chances), worstDig(worked[i]!.chances)].reduce((a, b) => (b.chance > a.chance ? b : a)),
  );
  const open = dig.plans.flatMap(({ months }, i) =>
    against[i]!.chance <= pond.acceptedRisk ? months.filter((month) => !emptied[month - 1]!.barred) : [],
  );
  if (open.length === 0 || conditions.length > 0) {
    const best = against.reduce((a, b) => (b.chance < a.chance ? b : a));
    const bars = emptied.flatMap(({ barred }) => barred ?? []);
    const holes = best.chance > pond.acceptedRisk ? [best.governs] : [];
    const causes = [...(bars.length === 12 ? bars : holes), ...conditions.map(({ governs }) => governs)];
    add('rebuild/barred', { causes: [...new Set<Governs>(causes.length > 0 ? causes : bars)] });
    return;
  }
  const free = open.filter((month) => emptied[month - 1]!.level === null);
  if (free.length > 0) add('rebuild/emptied', { liner: true, months: free }, { months: free });
  else add('rebuild/opened', { months: open }, { months: open });
}

/** The liner stays, and must lie still until the slab on it is hard. */
function castRule(basis: Basis, add: AddRule): void {
  const emptied = emptiedMonths(basis);
  const among = (holds: (month: Emptied) => boolean) => MONTHS.filter((month) => holds(emptied[month - 1]!));
  const free = among(({ level }) => level === null);
  const days = ({ sides }: Emptied) => sides / SECONDS_PER_DAY;
  const long = free.filter((month) => days(emptied[month - 1]!) >= CAST_AND_HARD);
  if (long.length > 0) {
    add('rebuild/emptied', { liner: false, months: long }, { months: long });
  } else if (free.length > 0) {
    const most = Math.max(...free.map((month) => days(emptied[month - 1]!)));
    add('rebuild/too-brief', { months: free, days: most, needed: CAST_AND_HARD });
  } else {
    const pumped = among(({ barred }) => barred === null);
    if (pumped.length > 0) add('rebuild/pumped', { months: pumped });
    else add('rebuild/barred', { causes: [...new Set(emptied.flatMap(({ barred }) => barred ?? []))] });
  }
}

type Emptied = ReturnType<typeof lowestLevel>;

/** The pond as it stands, emptied in each month. */
function emptiedMonths(basis: Basis): Emptied[] {
  const { depth } = basis.site.pond;
  return MONTHS.map((month) =>
    lowestLevel(basis, NOTHING, depth, month, monthlyDesign(basis, NOTHING, depth, month)),
  );
}
