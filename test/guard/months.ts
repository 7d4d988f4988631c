/** What is told month by month: levels to keep, and the water itself. */
import type { Claim } from './claims.js';
import { type Danger, LEVEL, m } from './danger.js';
import { conductivity, daysToLift, floorArea } from './flow.js';
import type { GuardSite } from './site.js';
import type { Told } from './told.js';
import { hasRawWater, rawWaters, toldWater, wetness } from './waters.js';

interface Judged {
  judged: number;
  dangers: Danger[];
}

/** Options whose levels meet the ground's own water. */
const UNDRAINED = ['no-drain', 'surface-water-only'];

/**
 * How long an emptied pond is told to be safe in each month at the depth wished, against the days in which the water
 * that one year in ten passes lifts it through ground of middling permeability.
 */
export function hoursDangers(site: GuardSite, told: Told): Judged {
  const floor = -site.pond.depth + site.pond.onTheFloor;
  const [area, k] = [floorArea(site, site.pond.depth), conductivity(told, site.pond.depth)];
  const options = told.options.filter(({ option, possible }) => possible && UNDRAINED.includes(option));
  const dangers = options.flatMap(({ option, hours_empty_safe }): Danger[] =>
    hours_empty_safe!.flatMap((hours, at): Danger[] => {
      for (const { source, p90 } of [toldWater(told, at + 1), ...rawWaters(site, at + 1)]) {
        const takes = 24 * daysToLift(k, area, p90 - floor - LEVEL);
        // Where no limit is told, a month.
        if ((hours ?? 720) <= 2 * takes) continue;
        const why = `month ${at + 1}: empty ${hours === null ? 'without limit' : `for ${hours.toFixed(0)} h`}, ${source} ${m(p90)} lifts it in ${takes.toFixed(0)} h`;
        return [{ verdict: `hours empty of ${option}`, kind: 'hours', why }];
      }
      return [];
    }),
  );
  return { judged: 12 * options.length, dangers };
}

/** The level that a rule of use asks to keep, in the months it names; of a pond without a drain. */
export function keptLevelDangers(site: GuardSite, told: Told, claim: Claim | undefined): Judged {
  const { rules } = told.recommendation;
  if (!claim || claim.drain || claim.keptOut) return { judged: 0, dangers: [] };
  const kept = rules.filter(({ code, level_m }) => code === 'keep-above-level' && level_m !== undefined);
  const brim = site.pond.full + claim.raise;
  const dangers = kept.flatMap(({ level_m = 0, months = [] }): Danger[] => {
    const highs = months.map((month) => toldWater(told, month).p90 - claim.ballast);
    const high = Math.min(Math.max(...highs), brim);
    const why = `keep ${m(level_m)}, water one year in ten ${m(high)}`;
    return level_m < high - LEVEL ? [{ verdict: 'rule keep-above-level', kind: 'level', why }] : [];
  });
  return { judged: kept.length, dangers };
}

/** The lowest safe level of each month at the depth wished, against the water that one year in ten passes. */
export function lowestLevelDangers(site: GuardSite, told: Told): Judged {
  const floor = -site.pond.depth + site.pond.onTheFloor;
  const options = told.options.filter(({ option, possible }) => possible && UNDRAINED.includes(option));
  const dangers = options.flatMap(({ option, lowest_safe_level_m }): Danger[] =>
    lowest_safe_level_m!.flatMap((level, at): Danger[] => {
      const holds = Math.max(level ?? floor, floor);
      const over = [toldWater(told, at + 1), ...rawWaters(site, at + 1)].find(
        ({ p90 }) => p90 > holds + LEVEL,
      );
      if (!over) return [];
      const said = level === null ? 'may be emptied' : m(level);
      const why = `month ${at + 1}: ${said}, ${over.source} ${m(over.p90)}`;
      return [{ verdict: `lowest level of ${option}`, kind: 'level', why }];
    }),
  );
  return { judged: 12 * options.length, dangers };
}

/** Told lower than seen by this is no more spread, m. Our choice. */
const LOWER = 0.1;

/** The water told against the survey's own rows, else its season against the weather given. */
export function waterDangers(site: GuardSite, told: Told): Judged {
  const verdict = 'water of the month';
  if (hasRawWater(site)) {
    const dangers = told.water.by_month.flatMap(({ month }): Danger[] => {
      const { p90 } = toldWater(told, month);
      const over = rawWaters(site, month).find(({ p50 }) => p90 < p50 - LOWER);
      if (!over) return [];
      const why = `month ${month}: told ${m(p90)} one year in ten, ${over.source} ${m(over.p50)}`;
      return [{ verdict, kind: 'water', why }];
    });
    return { judged: 12, dangers };
  }
  const full = wetness(site);
  if (!full) return { judged: 0, dangers: [] };
  const highs = told.water.by_month.map(({ table_depth_m }) => -table_depth_m.p50);
  const those = (is: (fullness: number) => boolean) => full.flatMap((f, at) => (is(f) ? [at] : []));
  const [wet, dry] = [those((f) => f > 0.95), those((f) => f < 0.1)];
  if (wet.length === 0 || dry.length === 0) return { judged: 0, dangers: [] };
  const mean = (of: number[]) => of.reduce((sum, at) => sum + (highs[at] as number), 0) / of.length;
  const why = `stands at ${m(mean(wet))} in the wet months ${wet.map((at) => at + 1)}, at ${m(mean(dry))} in the dry ones`;
  return { judged: 1, dangers: mean(wet) < mean(dry) - LOWER ? [{ verdict, kind: 'season', why }] : [] };
}
