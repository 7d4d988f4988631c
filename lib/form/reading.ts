/** Reads what is typed by the reader of files; runs in a worker, as a record of weather takes its time. */
import { type Problem, parseSurvey, SurveyError, type Warning } from '../survey/index.js';

/** The files of a survey, and what it is called where site.csv does not say. */
export interface Given {
  files: Readonly<Record<string, string | Uint8Array>>;
  name: string;
}

/** What the reader has found. */
export interface Findings {
  problems: readonly Problem[];
  warnings: readonly Warning[];
}

/** What was read; `survey` as JSON where it was not refused. */
interface Reading {
  findings: Findings;
  survey?: string;
}

/** Reads a survey. */
export function readingOf({ files, name }: Given): Reading {
  try {
    const survey = parseSurvey(files, { name });
    return { findings: { problems: [], warnings: survey.warnings }, survey: JSON.stringify(survey) };
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
    return { findings: { problems: error.problems, warnings: error.warnings } };
  }
}

/** What the form asks; files named in `large` are left for a second reading. */
export interface ReadRequest {
  id: number;
  given: Given;
  large: readonly string[];
}

/** What it is told; without a survey nothing follows. */
export type ReadReply =
  | ({ id: number; kind: 'read'; whole: boolean } & Reading)
  | { id: number; kind: 'failed'; message: string };

/**
 * Answers a request: what is typed first, then all of it.
 * @param reply takes each reading
 */
export function readRequest({ id, given, large }: ReadRequest, reply: (reply: ReadReply) => void): void {
  try {
    if (large.length > 0) {
      const small = Object.fromEntries(Object.entries(given.files).filter(([name]) => !large.includes(name)));
      const { findings } = readingOf({ ...given, files: small });
      reply({ id, kind: 'read', whole: false, findings });
      if (findings.problems.length > 0) return;
    }
    reply({ id, kind: 'read', whole: true, ...readingOf(given) });
  } catch (error) {
    reply({ id, kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
}
