/** The state of the what-if as text: in the page's address, and as a line for a notebook. */
import { OPTIONS } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import type { WhatIf } from './whatIf.js';
import { type NumberKey, PARAMETERS } from './whatIfParameters.js';

/** A what-if and the units it is shown in. */
export interface State extends WhatIf {
  units?: UnitSystem;
}

const CHOICES = {
  option: OPTIONS,
  emptied: ['never', 'any'],
  runoff: ['as-is', 'kept-out'],
  years: ['all', 'ordinary', 'wet'],
  units: ['metric', 'us'],
} as const;
type ChoiceKey = keyof typeof CHOICES;

const isNumber = (key: string): key is NumberKey => Object.hasOwn(PARAMETERS, key);
const isChoice = (key: string): key is ChoiceKey => Object.hasOwn(CHOICES, key);

/** The fragment of an address that brings a state back, without `#`; empty for the survey's own case. */
export function fragmentOf(state: State): string {
  const entries = Object.entries(state).filter(([, value]) => value !== undefined);
  return entries.length === 0 ? '' : `try=1&${entries.map(([key, value]) => `${key}=${value}`).join('&')}`;
}

/** A fragment as it was before the address changed its signs; as it stands where a stray % makes that impossible. */
export function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}

/**
 * Reads such a fragment; whatever it says that cannot be tried is told, not used.
 * @returns the state, and what was left out; undefined where the fragment is of something else
 */
export function stateOf(fragment: string): { state: State; left: string[] } | undefined {
  if (!fragment.startsWith('try=1')) return undefined;
  const left: string[] = [];
  const state: Record<string, number | string> = {};
  for (const part of fragment.split('&').slice(1)) {
    const [key = '', value = ''] = part.split('=');
    const number = value.trim() === '' ? Number.NaN : Number(value);
    if (isNumber(key) && number >= PARAMETERS[key].min && number <= PARAMETERS[key].max) state[key] = number;
    else if (isChoice(key) && (CHOICES[key] as readonly string[]).includes(value)) state[key] = value;
    else left.push(part.slice(0, 40));
  }
  return { state, left };
}

/** The line that makes the same in a notebook, where `survey` was read. */
export function notebookLine({ units: _, ...change }: State): string {
  const entries = Object.entries(change).filter(([, value]) => value !== undefined);
  const body = entries.map(([key, value]) => `${key}: ${typeof value === 'number' ? value : `'${value}'`}`);
  return `const tried = whatIf(survey, ${body.length === 0 ? '{}' : `{ ${body.join(', ')} }`});`;
}
