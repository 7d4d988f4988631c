import type { Check } from './check.js';
import { fieldTestChecks } from './soil/fieldTests.js';
import { infiltrationChecks } from './soil/infiltration.js';
import { saxtonRawlsChecks } from './soil/saxtonRawls.js';

/** Rows of one table count as one published check. */
export const soilChecks: Check[] = [...saxtonRawlsChecks, ...infiltrationChecks, ...fieldTestChecks];
