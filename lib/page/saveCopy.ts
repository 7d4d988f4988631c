/** Saves a copy of the page without what its owner keeps to themselves; in the browser. */
import { reportOf, workedSheet } from '../report/index.js';
import type { UnitSystem } from '../units/index.js';
import { assessmentOf, photosShown } from './inUnits.js';
import { PRIVATE_PARTS, type PrivatePart } from './leaveOut.js';
import type { LiveData } from './liveData.js';
import { pageHtml } from './pageHtml.js';

/** Brings the form to life; it is told which units the page is shown in. */
export function offerCopy(data: LiveData, units: UnitSystem): void {
  const form = document.querySelector<HTMLFormElement>('#held form');
  if (!form) return;
  form.hidden = false;
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const chosen = Array.from(form.querySelectorAll<HTMLInputElement>('input:checked'), ({ value }) => value);
    const button = form.querySelector('button')!;
    button.disabled = true;
    // A moment for the browser to show that it is at work.
    setTimeout(() => {
      save(
        copyOf(
          data,
          units,
          PRIVATE_PARTS.filter((part) => chosen.includes(part)),
        ),
      );
      button.disabled = false;
    }, 50);
  });
}

function copyOf(data: LiveData, units: UnitSystem, parts: PrivatePart[]): string {
  const assessment = assessmentOf(data);
  const { survey, seed, samples, version, leftOut, issued } = data;
  return pageHtml(reportOf(assessment, { units }), {
    worked: workedSheet(assessment, units),
    version,
    photos: photosShown(),
    live: { script: document.scripts[document.scripts.length - 1]!.text, survey, seed, samples },
    leftOut: [...leftOut, ...parts],
    issued,
  });
}

function save(html: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  link.download = 'page-to-share.html';
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
