/** The worker's side: answers the surveys it is sent. */

import type { Assessment } from '../decision/index.js';
import { TableFits } from '../groundwater/index.js';
import type { Photos } from '../page/record.js';
import type { Survey } from '../survey/index.js';
import { type Answer, answerOf, assessmentOf, FULL, type Outputs, outputsOf, QUICK } from './answer.js';

/** What the form asks; the survey is JSON. */
export type Request = { id: number; survey: string } & (
  | { kind: 'answer' }
  | { kind: 'outputs'; script: string; version: string; photos: Photos }
);

/** What it is told; an answer comes twice. */
export type Reply =
  | { id: number; kind: 'answer'; answer: Answer; last: boolean }
  | { id: number; kind: 'outputs'; outputs: Outputs }
  | { id: number; kind: 'failed'; message: string };

/** Answers one survey after another; each part of an answer is handed to `reply` as it comes. */
export function formReckoner(): (request: Request, reply: (reply: Reply) => void) => void {
  const fits = new TableFits();
  /** of what was sent last */
  let last: { key: string; assessment: Assessment } | undefined;
  const assessed = (key: string): Assessment => {
    if (last?.key !== key) last = { key, assessment: assessmentOf(JSON.parse(key) as Survey, FULL, fits) };
    return last.assessment;
  };
  return (request, reply) => {
    const { id, survey } = request;
    try {
      if (request.kind === 'outputs') {
        reply({ id, kind: 'outputs', outputs: outputsOf(assessed(survey), request) });
        return;
      }
      const quick = assessmentOf(JSON.parse(survey) as Survey, QUICK, fits);
      reply({ id, kind: 'answer', answer: answerOf(quick, QUICK), last: false });
      reply({ id, kind: 'answer', answer: answerOf(assessed(survey), FULL), last: true });
    } catch (error) {
      reply({ id, kind: 'failed', message: error instanceof Error ? error.message : String(error) });
    }
  };
}
