/** Geometry of the labels in the drawings of a page. */
import type { Page } from 'playwright-core';

/** Letters may touch by so much, px: the boxes are a little larger than the ink. */
const TOUCH = 2.5;

/** Labels that lie over one another or out of their drawing, in words; of all drawings that are seen. */
export function labelFaults(page: Page): Promise<string[]> {
  return page.evaluate((touch) => {
    const faults: string[] = [];
    for (const svg of Array.from(document.querySelectorAll('svg'))) {
      const frame = svg.getBoundingClientRect();
      if (frame.width === 0) continue;
      const rows = Array.from(svg.querySelectorAll('text:not([transform]) > tspan')).map((row) => ({
        text: row.textContent ?? '',
        box: row.getBoundingClientRect(),
      }));
      rows.forEach(({ text, box }, at) => {
        if (
          box.left < frame.left - 1 ||
          box.right > frame.right + 1 ||
          box.top < frame.top - 1 ||
          box.bottom > frame.bottom + 1
        )
          faults.push(`${svg.id}: '${text}' is cut off`);
        for (const other of rows.slice(at + 1)) {
          const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
          const tall = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
          if (wide > touch && tall > touch && text.trim() && other.text.trim())
            faults.push(`${svg.id}: '${text}' lies over '${other.text}'`);
        }
      });
    }
    return faults;
  }, TOUCH);
}
