/** The pages of the demos that `browser.test.ts` leaves out. */
import { itIsDrawn } from './drawnPage.js';

itIsDrawn('clay-slope');
itIsDrawn('loam-terrace');
