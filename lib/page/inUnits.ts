/** The whole page in the other system of units, written anew in the browser. */
import { type Assessment, assess, reasonOf, reportOf, workedSheet } from '../risk/index.js';
import { siteModel } from '../site/index.js';
import type { UnitSystem } from '../units/index.js';
import type { LiveData } from './liveData.js';
import { bodyHtml } from './pageHtml.js';

let made: Assessment | undefined;

/**
 * Writes the text of the page again in a system of units; the numbers stay those of the survey, and so do the controls
 * of the what-if, which keep their place.
 */
export function bodyInUnits({ survey, seed, samples, version }: LiveData, units: UnitSystem): void {
  made ??= assess(siteModel(survey, { seed, samples }));
  const report = reportOf(made);
  const shown = { ...made.site, survey: { ...survey, site: { ...survey.site, show_units: units } } };
  report.result.recommendation.reason = reasonOf({ ...made, site: shown });
  const photos = Object.fromEntries(
    Array.from(document.querySelectorAll<HTMLImageElement>('img[data-photo]'), (img) => [
      img.dataset.photo!,
      img.src,
    ]),
  );
  const template = document.createElement('template');
  template.innerHTML = bodyHtml(report, { worked: workedSheet(made), version, photos, tried: true }, units);
  // The controls are in use: they are not built again.
  template.content.querySelector('#try')?.replaceWith(document.getElementById('try')!);
  for (const name of ['header', 'nav', 'main'])
    document.querySelector(name)?.replaceWith(template.content.querySelector(name)!);
}
