/** What stops a survey from being read, and the error that carries all of it. */

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

/** A survey refused: every problem of every file, in the order of the files and lines. */
export class SurveyError extends Error {
  override readonly name = 'SurveyError';

  /**
   * @param problems everything that has to be put right, at least one
   * @param warnings what was noticed besides
   */
  constructor(
    readonly problems: readonly Problem[],
    readonly warnings: readonly Warning[],
  ) {
    const count = problems.length === 1 ? '1 problem' : `${problems.length} problems`;
    super(`invalid survey - ${count}\n${problems.map(formatProblem).join('\n')}`);
  }
}

/**
 * One readable line for a problem.
 * @param problem as carried by `SurveyError`
 * @returns such as `pits.csv:4 bottom_m: invalid '0.2' - a layer must end deeper than its top, 0.3. Swap …`
 */
export function formatProblem(problem: Problem): string {
  const line = problem.line === undefined ? '' : `:${problem.line}`;
  const column = problem.column === undefined ? '' : ` ${problem.column}`;
  return `${problem.file}${line}${column}: ${problem.message}. ${problem.remedy}`;
}

/** Collects what is found while reading, so that everything is told at once. */
export class Findings {
  readonly problems: Problem[] = [];
  readonly warnings: Warning[] = [];

  refuse(problem: Problem): void {
    this.problems.push(problem);
  }

  warn(warning: Warning): void {
    this.warnings.push(warning);
  }

  /** No problem in that file: only then does the absence of a row mean that nobody wrote it. */
  clean(file: string): boolean {
    return this.problems.every((problem) => problem.file !== file);
  }
}
