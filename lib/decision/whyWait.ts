import { codeAndValues, type ObstacleValues, type Statement } from '../contract/index.js';
import type { Judged } from './assess.js';
import { oldDrainQuestion } from './oldDrainRule.js';
import { lacksEvidence } from './stops.js';

/** Nothing known of the wet season, a question not asked, or a season worth more than it costs. */
export function whyWait({ site, options, decision: d, measureNext }: Judged): Statement[] {
  if (lacksEvidence(site)) return [{ code: 'season-unknown', values: {} }];
  const old = oldDrainQuestion(site);
  if (old) return [{ code: 'old-drain', values: old }];
  if (d.open) return [{ code: 'fact-tells', values: { fact: d.open } }];
  if (d.governs !== 'evidence') {
    const { why } =
      options.find(({ why }) => why?.asks) ?? options.find(({ why }) => why?.governs === 'discharge')!;
    return [{ code: 'drain-perhaps', values: codeAndValues<ObstacleValues>(why!) }];
  }
  const { worth_drains } = measureNext.find(({ waits }) => waits)!;
  return [{ code: 'season-worth', values: { worth_drains } }];
}
