/** Steps from a more dangerous site to a safer one: along them no chance may rise, and no safe depth lessen. */

import type { DepthCurve } from '../../lib/contract/index.js';
import { assess, type Judged, judge } from '../../lib/decision/index.js';
import { depthCurve, safeDepth } from '../../lib/options/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf } from '../folder.js';
import { SAMPLES } from './answer.js';
import { changed, eachCell, type Files, movedBy, unitOf } from './sheets.js';

/** An item of pond.csv or site.csv set, or added. */
const withFact = (
  files: Files,
  name: 'pond.csv' | 'site.csv',
  item: string,
  value: string,
  unit = '',
): Files =>
  changed(files, name, ({ header, rows }) => ({
    header,
    rows: [...rows.filter(([has]) => has !== item), [item, value, unit, '']],
  }));

export interface Steps {
  name: string;
  /** the same site, the most dangerous first; undefined where it says nothing of this */
  of(files: Files): Files[] | undefined;
  /** only the safe depths are compared: the chances stay */
  depthsOnly?: true;
  /** drains are not compared: the water that comes by the step, or what they are laid for, moves the other way */
  withoutDrains?: true;
}

const months = (files: Files) => !files['weather.csv'];
const emptied = (files: Files) => !/^emptied_in,never/m.test(files['pond.csv'] ?? '');

export const STEPS: Steps[] = [
  {
    name: 'deeper water in every month',
    of: (files) =>
      files['heads.csv'] && months(files)
        ? [-0.15, 0, 0.1, 0.4].map((deeper) =>
            eachCell(files, 'heads.csv', /^depth_/, (cell, row, column) =>
              row[0]?.startsWith('below:') ? cell : movedBy(cell, unitOf(column), deeper),
            ),
          )
        : undefined,
  },
  {
    name: 'less rain where neither dips nor colours tell the water',
    of: (files) => {
      if (!files['weather.csv'] || files['heads.csv']) return undefined;
      // A month named, lest the driest be another; and the flood, whose month is one of the wet ones, is left to others.
      const { 'water.csv': _, ...undipped } = withFact(files, 'pond.csv', 'built_in', '8');
      // Colours are looks at the water too: they hold it where it was, whatever the rain.
      const unseen = eachCell(undipped, 'pits.csv', /^mottles$/, () => '');
      return [1.2, 1, 0.8].map((share) =>
        eachCell(unseen, 'weather.csv', /^rain_/, (cell) => String(Number(cell) * share)),
      );
    },
    withoutDrains: true,
  },
  {
    name: 'fewer days empty',
    of: (files) =>
      emptied(files)
        ? ['200', '45', '10', '2'].map((days) => withFact(files, 'pond.csv', 'days_empty', days, 'd'))
        : undefined,
  },
  {
    name: 'fewer months of emptying',
    of: (files) =>
      ['1;4;7;10', '4;7', '7', 'never'].map((list) => withFact(files, 'pond.csv', 'emptied_in', list)),
  },
  {
    name: 'less drawdown',
    of: (files) =>
      ['0.25', '0.1', '0'].map((down) => withFact(files, 'pond.csv', 'usual_drawdown', down, 'm')),
    // A fuller pond leaks more and spills more in a storm.
    withoutDrains: true,
  },
  {
    name: 'stiffer clay',
    of: (files) => {
      if (!/strength_kpa/.test(files['pits.csv'] ?? '')) return undefined;
      return ['8', '20', '45', '90'].map((kpa) => eachCell(files, 'pits.csv', /^strength_kpa$/, () => kpa));
    },
  },
  {
    name: 'a lower flood at the outlets',
    of: (files) =>
      /,flood,/.test(files['levels.csv'] ?? '')
        ? [1.5, 0.5, 0].map((higher) =>
            eachCell(files, 'levels.csv', /^level_/, (cell, row, column) =>
              row[1] === 'flood' ? movedBy(cell, unitOf(column), higher) : cell,
            ),
          )
        : undefined,
  },
  {
    name: 'less ground above that sheds onto the ring',
    of: (files) => ['400', '60', '0'].map((area) => withFact(files, 'site.csv', 'uphill_area', area, 'm2')),
    // A drain is laid for the likely water: less of it, and a wetter ground finds less drain.
    withoutDrains: true,
  },
  {
    name: 'a lighter edging',
    of: (files) => ['30', '10', '0'].map((load) => withFact(files, 'pond.csv', 'edging_load', load, 'kPa')),
  },
  {
    name: 'more risk accepted',
    of: (files) =>
      ['0.005', '0.02', '0.1', '0.3'].map((risk) => withFact(files, 'pond.csv', 'accepted_risk', risk)),
    depthsOnly: true,
  },
];

const judged = (files: Files) => judge(siteModel(surveyOf(files), { seed: 1, samples: SAMPLES }));
const curvesOf = (files: Files): DepthCurve[] => judged(files).curves;

/** Rounding of the sums of chances. */
const ROUNDING = 1e-9;

/** No more of them is laid than the kept pond needs: what is laid on the worse site is compared on the better. */
const SIZED_BY_WATER = ['raise-pond', 'ballast'];

/** Each option that is possible in both, with its two curves. */
const both = (worse: readonly DepthCurve[], better: readonly DepthCurve[]) =>
  worse.flatMap((curve) => {
    const other = better.find(({ option }) => option === curve.option);
    return curve.possible && other?.possible ? [{ curve, other }] : [];
  });

/** Curves of a site, those that are sized by the water with the works of another. */
const withWorksOf = (other: Judged, { basis, curves }: Judged): DepthCurve[] =>
  curves.map((curve) => {
    const option = other.options.find(({ name }) => name === curve.option);
    return SIZED_BY_WATER.includes(curve.option) && option?.measures ? depthCurve(basis, option) : curve;
  });

/** Chances that have risen, by the depth they are of. */
function risen(worse: readonly DepthCurve[], better: readonly DepthCurve[]): string[] {
  return both(worse, better).flatMap(({ curve, other }) =>
    curve.depth_m.flatMap((depth, i) => {
      const j = other.depth_m.indexOf(depth);
      if (j < 0) return [];
      return (['per_year', 'per_dig'] as const).flatMap((chance) =>
        other[chance][j]! > curve[chance][i]! + ROUNDING
          ? [`${curve.option} ${chance} at ${depth} m: ${curve[chance][i]}, then ${other[chance][j]}`]
          : [],
      );
    }),
  );
}

/** Safe depths that have become less; none is the least, no limit the most. */
function lessened(worse: readonly DepthCurve[], better: readonly DepthCurve[]): string[] {
  return both(worse, better).flatMap(({ curve, other }) => {
    const [one, then] = [curve, other].map((of) => safeDepth(of).depth ?? of.depth_m.at(-1)!) as [
      number,
      number,
    ];
    return then < one - ROUNDING ? [`${curve.option} safe to ${one} m, then ${then} m`] : [];
  });
}

/** What gets worse along steps that should make it safer. */
export function worsenings(files: Files, steps: Steps): string[] | undefined {
  const compared = (curves: DepthCurve[]) =>
    curves.filter(({ option }) => !steps.withoutDrains || !option.startsWith('drain-'));
  const answers = steps.of(files)?.map(judged);
  return answers?.slice(1).flatMap((next, i) => {
    const worse = compared(answers[i]!.curves);
    const better = compared(withWorksOf(answers[i]!, next));
    return [...(steps.depthsOnly ? [] : risen(worse, better)), ...lessened(worse, better)];
  });
}

/** Chances at one depth that another wish moves. */
export function movedByWish(files: Files, wishes: readonly string[]): string[] {
  const [first, ...others] = wishes.map((wish) => curvesOf(withFact(files, 'pond.csv', 'depth', wish, 'm')));
  return others.flatMap((other) =>
    [...risen(first!, other), ...risen(other, first!)].map(
      (line) => `wish ${wishes.join(' or ')} m: ${line}`,
    ),
  );
}

/** Lengths of pipe of every option, as an outlet or gully is farther away. */
export function pipeLengths(files: Files, farther: readonly number[]): Map<string, number[]> {
  const lengths = new Map<string, number[]>();
  for (const metres of farther) {
    const moved = eachCell(files, 'levels.csv', /^distance_/, (cell, row, column) =>
      ['outlet', 'discharge', 'ditch', 'flood'].includes(row[1]!)
        ? movedBy(cell, unitOf(column), metres)
        : cell,
    );
    const { options } = resultOf(assess(siteModel(surveyOf(moved), { seed: 1, samples: SAMPLES })));
    for (const { option, work } of options) {
      if (!work) continue;
      const pipe = work.quantities
        .filter(({ item, unit }) => /pipe/.test(item) && unit === 'm')
        .reduce((sum, { amount }) => sum + amount, 0);
      lengths.set(option, [...(lengths.get(option) ?? []), pipe]);
    }
  }
  return lengths;
}
