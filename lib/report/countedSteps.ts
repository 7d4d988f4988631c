/** Failing years as steps: counted in their columns, as often as a drain is found so. */

import type { Basis } from '../basis/index.js';
import { type CountedCourse, chanceAYear, sharesBySample } from '../reliability/index.js';
import { quantile } from '../sampling/index.js';
import { columnOf, courseWords, FOUND_ELSE } from '../text/chanceStepWords.js';
import { ENDS, highEnd, lowEnd } from './chanceRange.js';
import { type HeadColumn, type Recording, YEARLY_HEADS } from './workedFrom.js';

/** A state of a pond that is counted: in columns' names, and in words. */
interface Counted {
  /** of what was judged; empty of what is recommended */
  name: string;
  /** of the pond */
  state: string;
  words: string;
}

/**
 * Records the years that fail in a state, their chance, and the ends of that.
 * @param path - place in the answer, of a chance or of one with its ends
 */
export function recordCounted(
  r: Recording,
  { draws: { samples, years } }: Basis,
  counted: CountedCourse[],
  of: Counted,
  path?: string,
): void {
  const never = counted.filter(({ fails }) => fails.every((share) => share === 0));
  const failing = counted.filter((course) => !never.includes(course));
  const title = `Failing years counted, ${of.words}`;
  const count = { symbol: 'n', unit: 'years' };
  const columns = failing.map((course) => columnsOf(course, counted, of));
  const sums = columns.map((columns, at) => {
    const result = sumOf(columns);
    const found = courseWords(failing[at]!, counted);
    r.counted(listed([columns]), `sum(${productOf(columns)})`, {
      ...count,
      title: `${title}${found}`,
      result,
    });
    return result;
  });
  if (never.length > 0) {
    const none = never.map((course) => columnsOf(course, counted, of).fails);
    const found = none.length < counted.length ? `, ${FOUND_ELSE}` : '';
    const result = 0;
    r.counted(none, `sum(${none.map(({ name }) => name).join(' + ')})`, {
      ...count,
      title: `${title}${found}`,
      result,
    });
    sums.push(result);
  }
  if (sums.length > 1)
    r.summed({ ...count, title: `${title}, in all` }, sums, 'failing years, by how the drain is found');
  r.know(samples, '-', `${YEARLY_HEADS}, sample`).know(years, 'years', `${YEARLY_HEADS}, year`);
  const found = r.use(chanceAYear, r.steps.at(-1)!.result, samples, years);
  if (path) r.same(path.endsWith('chance') ? `${path}.middle` : path);
  if (!path?.endsWith('chance') || failing.length === 0) return;
  const shares = sharesBySample(failing);
  for (const [end, formula] of [
    ['low', lowEnd],
    ['high', highEnd],
  ] as const) {
    const result = quantile(shares.slice(), ENDS[end]);
    const stay = `Chance a year, ${of.words}, that ${100 * ENDS[end]} % of samples stay below`;
    const expression = `quantile(bysample(${columns.map(productOf).join(' + ')}), ${ENDS[end]})`;
    r.counted(listed(columns), expression, { title: stay, symbol: 'q', unit: '-', result });
    r.use(formula, result, found);
    r.same(`${path}.${end}`);
  }
}

const listed = (columns: Columns[]) =>
  columns.flatMap(({ fails, weight }) => [fails, ...(weight ? [weight] : [])]);

function sumOf({ fails, weight }: Columns): number {
  let sum = 0;
  for (let i = 0; i < fails.values.length; i++) sum += fails.values[i]! * (weight?.values[i] ?? 1);
  return sum;
}

interface Columns {
  fails: HeadColumn;
  /** absent: it counts whole */
  weight?: HeadColumn;
}

const productOf = ({ fails, weight }: Columns) => (weight ? `${fails.name} .* ${weight.name}` : fails.name);

/** Columns of a course: which years fail, and how often the drain is found so. */
function columnsOf(course: CountedCourse, all: CountedCourse[], of: Counted): Columns {
  const { weight, fails } = course;
  const years = fails.length / weight.length;
  const found = courseWords(course, all);
  return {
    fails: {
      name: columnOf('fails', of.name, of.state, course),
      meaning: `1 where the year fails, ${of.words}${found}`,
      values: fails,
      share: true,
    },
    ...(course.state === 'none'
      ? {}
      : {
          weight: {
            name: columnOf('often', of.name, '', course),
            meaning: `how often it is found so${found}`,
            values: Float64Array.from(fails, (_, i) => weight[Math.floor(i / years)]!),
            share: true as const,
          },
        }),
  };
}
