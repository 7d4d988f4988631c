import { lab } from './lab.js';

process.exitCode = await lab(process.argv.slice(2));
