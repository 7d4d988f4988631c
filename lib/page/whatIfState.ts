/** The state of the what-if as text: in the page's address, and as a line for a notebook. */
import { OPTIONS } from '../risk/index.js';
import type { UnitSystem } from '../units/index.js';
import type { WhatIf } from './whatIf.js';

/** A what-if and the units it is shown in. */
export interface State extends WhatIf {
  units?: UnitSystem;
}

/** Numbers that may be tried: range and step in m. */
export const NUMBERS = {
  depth: { label: 'Depth dug', kind: 'length', min: 0.2, max: 2.5, step: 0.05 },
  length: { label: 'Length at the rim', kind: 'length', min: 1, max: 12, step: 0.1 },
  width: { label: 'Width at the rim', kind: 'length', min: 1, max: 12, step: 0.1 },
  full: { label: 'Pond full at', kind: 'level', min: -0.5, max: 0.8, step: 0.01 },
  drawdown: { label: 'Usual drawdown', kind: 'length', min: 0, max: 0.6, step: 0.01 },
  run: { label: 'Run of the pipe to its outlet', kind: 'length', min: 1, max: 60, step: 0.5 },
  outlet: { label: 'Outlet at', kind: 'level', min: -4, max: 0.5, step: 0.01 },
} as const;
export type NumberKey = keyof typeof NUMBERS;

export const CHOICES = {
  option: OPTIONS,
  runoff: ['as-is', 'kept-out'],
  years: ['all', 'ordinary', 'wet'],
  units: ['metric', 'us'],
} as const;
export type ChoiceKey = keyof typeof CHOICES;

const isNumber = (key: string): key is NumberKey => Object.hasOwn(NUMBERS, key);
const isChoice = (key: string): key is ChoiceKey => Object.hasOwn(CHOICES, key);

/** The fragment of an address that brings a state back, without `#`; empty for the survey's own case. */
export function fragmentOf(state: State): string {
  const entries = Object.entries(state).filter(([, value]) => value !== undefined);
  return entries.length === 0 ? '' : `try=1&${entries.map(([key, value]) => `${key}=${value}`).join('&')}`;
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
    if (isNumber(key) && number >= NUMBERS[key].min && number <= NUMBERS[key].max) state[key] = number;
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
