import { codeAndValues, type ObstacleValues, type Statement } from '../contract/index.js';
import type { Decision } from './decide.js';

/** Why drains were passed over: more water than they take; else where it was the outlet's fault. */
export function outletFails({ rejected }: Decision): Statement[] {
  const lacking = rejected.flatMap(({ candidate: { option }, verdict }): Statement[] => {
    const { lacks } = verdict.chance;
    return lacks
      ? [{ code: 'option-lacks', values: { option, lacks: codeAndValues<ObstacleValues>(lacks) } }]
      : [];
  });
  if (lacking.length > 0) return lacking;
  const tried = rejected.find(({ candidate }) => candidate.option === 'drain-to-outlet');
  const to = tried?.candidate.measures.drain;
  if (!tried || to?.kind !== 'outlet') return [];
  const { governs } = tried.verdict;
  if (governs !== 'fall' && governs !== 'outlet-flood') return [];
  return [{ code: 'outlet-fails', values: { outlet: to.outlet.name, governs } }];
}
