import { vi } from 'vitest';
import { briefDemo } from '../folder.js';
import { itIsDrawn } from './drawnPage.js';

vi.setConfig({ testTimeout: 120_000 });

// All demos, with all of their weather, are in `browser.long.ts`.
itIsDrawn('clay-hollow', briefDemo('clay-hollow'));
