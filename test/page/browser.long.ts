/** The pages of the demos with all of their weather. */
import { demoFiles } from '../folder.js';
import { itIsDrawn } from './drawnPage.js';

for (const name of ['clay-slope', 'clay-hollow', 'loam-terrace']) itIsDrawn(name, demoFiles(name));
