/** The what-if under a notebook's cell. */
import { createHash } from 'node:crypto';
import { escapeHtml, scriptJson } from '../figures/escape.js';
import { visible } from '../figures/visible.js';
import { holder } from '../page/heldMeasures.js';
import { PANEL_STYLE } from '../page/index.js';
import { inlineScript } from '../page/policy.js';
import { trialColumn } from '../page/trialColumn.js';
import { viewOf } from '../page/whatIfView.js';
import type { Survey } from '../survey/index.js';
import { type Html, untypeset } from './display.js';
import { wholeScript } from './liveScript.js';
import { VERSION } from './project.js';

/**
 * Live controls on a survey, to be shown with `show`: as HTML that computes in the page it stands in, trusted or
 * exported, without a kernel or a network; as text the answer it starts from.
 * @param survey as read
 * @param options `seed` and `samples` as of `siteModel`
 * @returns to be shown
 * @throws EnvironmentError when the library was not built
 */
export async function whatIfOutput(
  survey: Survey,
  { seed = 1, samples = 400 }: { seed?: number; samples?: number } = {},
): Promise<Html> {
  const held = holder(survey, { seed, samples });
  const own = held.asked({});
  const units = survey.site.show_units ?? 'metric';
  const view = viewOf(held, own, trialColumn(own, units), units);
  const alt = visible(`${view.headline} ${view.chances}`);
  const json = scriptJson({ survey, seed, samples, version: VERSION, leftOut: [] });
  const id = `what-if-${createHash('sha256').update(json).digest('hex').slice(0, 12)}`;
  return {
    alt,
    html: untypeset(
      `<style>${PANEL_STYLE}</style><div id="${id}"><p>${escapeHtml(alt)}</p></div>` +
        `<script>${inlineScript(await wholeScript())}</script><script>window.underpondWhatIf?.('${id}', ${json});</script>`,
    ),
  };
}
