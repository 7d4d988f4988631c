/** The whole page in the other system of units: written in the worker, put in here. */
import type { Photos } from './record.js';

/** The photos that the page shows, by the names the survey gives. */
export function photosShown(): Photos {
  const shown = document.querySelectorAll<HTMLImageElement>('img[data-photo]');
  return Object.fromEntries(Array.from(shown, (img) => [img.dataset.photo!, img.src]));
}

/** Puts a body in the place of the page's; the what-if is in use and keeps its place. */
export function putBody(html: string): void {
  const template = document.createElement('template');
  template.innerHTML = html;
  template.content.querySelector('#try')?.replaceWith(document.getElementById('try')!);
  for (const name of ['header', 'nav', 'main'])
    document.querySelector(name)?.replaceWith(template.content.querySelector(name)!);
}
