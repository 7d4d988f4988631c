import type { WayQuestion } from '../contract/index.js';
import type { Say } from './say.js';

/** What is to be asked about the way of a pipe, as the end of a sentence. */
export function wayQuestionWords(
  { to, distance_m, boundary_m, setback_m }: WayQuestion,
  { length }: Say,
): string {
  const known =
    boundary_m === null
      ? 'the survey leaves open where the boundary is'
      : `the survey has the boundary ${length(boundary_m)} and ${to} ${length(distance_m)} from the pond, and no direction`;
  const near = setback_m ? `, or comes nearer to it than ${length(setback_m)}` : '';
  return `whether the way from the pond to ${to} crosses the boundary${near}: ${known}. Say in site.csv whether the outlet lies within the boundary, or level rim, outlet and boundary with x and y`;
}
