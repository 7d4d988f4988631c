/** Saves a copy of the page, made in the worker: without what its owner keeps to themselves, or with what is tried. */
import type { UnitSystem } from '../units/index.js';
import { photosShown } from './inUnits.js';
import { PRIVATE_PARTS, type PrivatePart } from './leaveOut.js';
import type { Ask } from './pageWorker.js';

/** How a copy is made: the library, the page's script, and the units it is shown in. */
interface Copying {
  ask: Ask;
  script: string;
  units(): UnitSystem;
}

/**
 * Makes a copy of the page and hands it to the reader.
 * @param parts - what is left out
 * @param tried - state that it opens with, as a fragment
 * @throws Error where the page cannot be computed
 */
export async function saveCopy(
  { ask, script, units }: Copying,
  parts: PrivatePart[],
  tried?: string,
): Promise<void> {
  const html = await ask.about('copy', {
    units: units(),
    photos: photosShown(),
    script,
    parts,
    ...(tried ? { tried } : {}),
  });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  link.download = 'page-to-share.html';
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Brings the form to life that leaves parts out. */
export function offerCopy(copying: Copying): void {
  const form = document.querySelector<HTMLFormElement>('#held form');
  if (!form) return;
  form.hidden = false;
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const chosen = Array.from(form.querySelectorAll<HTMLInputElement>('input:checked'), ({ value }) => value);
    const button = form.querySelector('button')!;
    const words = button.textContent;
    button.disabled = true;
    button.textContent = 'One moment …';
    try {
      await saveCopy(
        copying,
        PRIVATE_PARTS.filter((part) => chosen.includes(part)),
      );
      button.textContent = words;
    } catch (error) {
      button.textContent = `It cannot be made: ${error instanceof Error ? error.message : error}`;
    }
    button.disabled = false;
  });
}
