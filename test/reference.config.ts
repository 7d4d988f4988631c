/** What `npm run reference` makes. */
import { defineConfig } from 'vitest/config';
import { built } from './built.config.js';

export default defineConfig({ ...built, test: { ...built.test, include: ['test/docs/rooms.make.ts'] } });
