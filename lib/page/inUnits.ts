/** The whole page in the other system of units, written anew in the browser. */
import { type Assessment, assess } from '../decision/index.js';
import { reportOf, workedSheet } from '../report/index.js';
import { siteModel } from '../site/index.js';
import type { UnitSystem } from '../units/index.js';
import type { LiveData } from './liveData.js';
import { bodyHtml } from './pageHtml.js';
import type { Photos } from './record.js';

let made: Assessment | undefined;

/** The assessment of the page's survey; made once, whatever the units it is told in. */
export function assessmentOf({ survey, seed, samples }: LiveData): Assessment {
  made ??= assess(siteModel(survey, { seed, samples }));
  return made;
}

/** The photos that the page shows, by the names the survey gives. */
export function photosShown(): Photos {
  const shown = document.querySelectorAll<HTMLImageElement>('img[data-photo]');
  return Object.fromEntries(Array.from(shown, (img) => [img.dataset.photo!, img.src]));
}

/**
 * Writes the text of the page again in a system of units; the numbers stay those of the survey, and so do the controls
 * of the what-if, which keep their place.
 */
export function bodyInUnits(data: LiveData, units: UnitSystem): void {
  const assessment = assessmentOf(data);
  const template = document.createElement('template');
  template.innerHTML = bodyHtml(
    {
      report: reportOf(assessment, { units }),
      worked: workedSheet(assessment, units),
      photos: photosShown(),
      survey: data.survey,
    },
    data,
    units,
  );
  // The controls are in use: they are not built again.
  template.content.querySelector('#try')?.replaceWith(document.getElementById('try')!);
  for (const name of ['header', 'nav', 'main'])
    document.querySelector(name)?.replaceWith(template.content.querySelector(name)!);
}
