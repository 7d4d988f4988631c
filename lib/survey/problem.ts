/** What stops a survey from being read, and the error that carries all of it. */

import { UnderpondError } from '../units/index.js';
import { CONSEQUENCE_WORDS, CONSEQUENCES, consequenceOf } from './consequence.js';
import type { Origin, Warning } from './survey.js';

/** One thing wrong, where it stands and what to do about it. */
export interface Problem extends Origin {
  /** a stable word for programs, such as `unknown-column` */
  code: string;
  /** begins with invalid, unknown, missing or outside and the value found */
  message: string;
  /** the text at fault, as written */
  found?: string;
  /** what would have been right: words, a range, a form */
  expected?: string;
  /** what to do, as a sentence */
  remedy: string;
}

/** A survey refused: every problem of every file, the farthest-reaching first, then by file and line. */
export class SurveyError extends UnderpondError {
  override readonly name = 'SurveyError';
  override readonly code = 'survey-refused';

  /**
   * @param problems everything that has to be put right, at least one
   * @param warnings what was noticed besides
   */
  constructor(
    readonly problems: readonly Problem[],
    readonly warnings: readonly Warning[],
  ) {
    super(report(problems, warnings));
  }
}

/** Lists longer than this are told once, characters. */
const LONG_LIST = 80;

function report(problems: readonly Problem[], warnings: readonly Warning[]): string {
  const listed = new Set<string>();
  const line = (problem: Problem) => {
    const { expected = '' } = problem;
    if (expected.length <= LONG_LIST) return formatProblem(problem);
    const again = listed.has(expected);
    listed.add(expected);
    return again
      ? formatProblem(problem).replace(` Expected: ${expected}.`, '').replace(expected, 'those named above')
      : formatProblem(problem);
  };
  const parts = CONSEQUENCES.flatMap((consequence) => {
    const here = problems.filter((problem) => consequenceOf(problem) === consequence);
    return here.length === 0 ? [] : [`${CONSEQUENCE_WORDS[consequence]}:`, ...here.map(line)];
  });
  const noticed = warnings.length === 0 ? [] : ['noticed besides:', ...warningLines(warnings)];
  return [`invalid survey - ${count(problems.length, 'problem')}`, ...parts, ...noticed].join('\n');
}

function count(number: number, what: string): string {
  return number === 1 ? `1 ${what}` : `${number} ${what}s`;
}

/**
 * One readable line for a problem.
 * @param problem as carried by `SurveyError`
 * @returns such as `pits.csv:4 bottom_m: invalid '0.2' - a layer must end deeper than its top, 0.3. Swap …`
 */
export function formatProblem(problem: Problem): string {
  const { expected, message, remedy } = problem;
  const told = expected === undefined || message.includes(expected) || remedy.includes(expected);
  return `${placeText(problem)}: ${message}. ${told ? '' : `Expected: ${expected}. `}${remedy}`;
}

/**
 * One readable line for a warning.
 * @param warning as carried by a survey or a result
 * @returns such as `water.csv:7 depth_m: 'it' …`
 */
export function formatWarning(warning: Warning): string {
  return `${placeText(warning)}: ${warning.message}`;
}

/** Items of one file without a value: this many are told one by one. */
const ONE_BY_ONE = 3;

/** Warnings, a line each; many items of a file without a value share the last of its lines. */
export function warningLines(warnings: readonly Warning[]): string[] {
  const without = warnings.filter(({ code }) => code === 'empty-item');
  const others = warnings.filter(({ code }) => code !== 'empty-item');
  const files = [...new Set(without.map(({ file }) => file))];
  const empty = files.flatMap((file) => {
    const here = without.filter((one) => one.file === file);
    if (here.length <= ONE_BY_ONE) return here.map(formatWarning);
    const items = here.map(({ message }) => message.replace(/^'(\S+)' .*$/, '$1'));
    return [
      `${file}: ${items.length} items have no value, so the survey does not say them: ${items.join(', ')}`,
    ];
  });
  return [...others.map(formatWarning), ...empty];
}

/** A place as `pits.csv:4 bottom_m`, as far as it is known. */
export function placeText({ file, line, column }: Origin): string {
  return `${file}${line === undefined ? '' : `:${line}`}${column === undefined ? '' : ` ${column}`}`;
}

/** Of one kind in one file this many are told one by one, so that a report stays readable. */
const TOLD = 100;

/** Collects what is found while reading, so that everything is told at once. */
export class Findings {
  readonly problems: Problem[] = [];
  readonly warnings: Warning[] = [];
  private readonly counts = new Map<string, number>();

  refuse(problem: Problem): void {
    if (this.isTold(`problem ${problem.file} ${problem.code}`)) this.problems.push(problem);
  }

  warn(warning: Warning): void {
    if (this.isTold(`warning ${warning.file} ${warning.code}`)) this.warnings.push(warning);
  }

  /** No problem in that file: only then does the absence of a row mean that nobody wrote it. */
  clean(file: string): boolean {
    return this.problems.every((problem) => problem.file !== file);
  }

  /** Says how many more there are of the kinds that were cut short; once, at the end. */
  close(): void {
    for (const [key, count] of this.counts) {
      const [kind, file = '', code = ''] = key.split(' ');
      if (count <= TOLD) continue;
      const message = `invalid in ${count - TOLD} more places in the same way as the ${TOLD} told (${code})`;
      if (kind === 'problem')
        this.problems.push({ file, code, message, remedy: 'Put those right and read the survey again.' });
      else this.warnings.push({ file, code, message: `${count - TOLD} more of '${code}' in this file` });
    }
  }

  private isTold(key: string): boolean {
    const count = (this.counts.get(key) ?? 0) + 1;
    this.counts.set(key, count);
    return count <= TOLD;
  }
}
