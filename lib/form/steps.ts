/** The steps of the form in the order in which they are walked, and what they ask. */
import type { FactFile, FormFile } from './answers.js';
import { LAYER_QUESTIONS } from './layerQuestions.js';
import { KEEPING_QUESTIONS, PLACE_QUESTIONS } from './placeQuestions.js';
import { POND_QUESTIONS } from './pondQuestions.js';
import type { Question } from './questions.js';
import {
  HEAD_QUESTIONS,
  LEVEL_QUESTIONS,
  LOOK_QUESTIONS,
  MONTH_QUESTIONS,
  TEST_QUESTIONS,
} from './rowQuestions.js';

export type StepName =
  | 'pond'
  | 'place'
  | 'holes'
  | 'looks'
  | 'levels'
  | 'tests'
  | 'weather'
  | 'keeping'
  | 'answer';

export interface Step {
  name: StepName;
  /** on its button */
  short: string;
  title: string;
  /** what it is for, in a sentence */
  lead: string;
  /** files whose faults belong to it */
  files: readonly string[];
}

export const STEPS: readonly Step[] = [
  {
    name: 'pond',
    short: 'Pond',
    title: 'The pond you wish',
    lead: 'Three lengths are needed. What you leave empty is assumed, and the answer lists it. A guess is better than nothing: tick that it is one. That is noted beside it, and the answer takes it as it stands.',
    files: ['pond.csv'],
  },
  {
    name: 'place',
    short: 'Place',
    title: 'The place',
    lead: 'What lies around it, and what is allowed there.',
    files: ['site.csv'],
  },
  {
    name: 'holes',
    short: 'Holes',
    title: 'Holes',
    lead: 'Dig or auger two holes where the pond is to lie, half a metre (20 in) deeper than it is to be. Lay the soil out in order. Do not climb in.',
    files: ['pits.csv'],
  },
  {
    name: 'looks',
    short: 'Looks',
    title: 'Looks at water',
    lead: 'Look into the holes after an hour, a day, a week, then every month through winter and spring.',
    files: ['water.csv', 'heads.csv'],
  },
  {
    name: 'levels',
    short: 'Levels',
    title: 'Levels',
    lead: 'By tape, along the fall of the ground. They say which side is low, and whether water could run away by itself.',
    files: ['levels.csv'],
  },
  {
    name: 'tests',
    short: 'Tests',
    title: 'Tests with a watch',
    lead: 'How fast water sinks in a hole that you filled by bucket.',
    files: ['soakage.csv'],
  },
  {
    name: 'weather',
    short: 'Weather',
    title: 'Weather',
    lead: 'Ten years of daily weather from the nearest station settle most of what is open about the winter.',
    files: ['weather.csv', 'climate.csv'],
  },
  {
    name: 'keeping',
    short: 'Drain',
    title: 'If it gets a drain',
    lead: 'How it would be kept. An honest guess does; what you leave empty is taken as said.',
    files: [],
  },
  { name: 'answer', short: 'Answer', title: 'The answer', lead: 'It grows with every fact.', files: [] },
];

/** The questions of each file. */
export const QUESTIONS: Readonly<Record<FormFile, readonly Question[]>> = {
  'pond.csv': POND_QUESTIONS,
  'site.csv': [...PLACE_QUESTIONS, ...KEEPING_QUESTIONS],
  'pits.csv': LAYER_QUESTIONS,
  'water.csv': LOOK_QUESTIONS,
  'soakage.csv': TEST_QUESTIONS,
  'heads.csv': HEAD_QUESTIONS,
  'levels.csv': LEVEL_QUESTIONS,
  'climate.csv': MONTH_QUESTIONS,
};

/** What the form calls an item or column. */
export function labelOf(file: FormFile, name: string): string | undefined {
  return QUESTIONS[file].find((question) => question.name === name)?.ask.replace(/\?$/, '');
}

/** A value as the form puts it: the words of its choice, or as it stands. */
export function choiceWords(file: FormFile, name: string, value: string): string {
  const { choices = [], word } = QUESTIONS[file].find((question) => question.name === name) ?? {};
  const chosen = [...choices, ...(word ? [word] : [])].find((choice) => choice.value === value);
  return chosen ? `“${chosen.words}”` : value;
}

/** Where an item that was assumed is asked. */
export function stepOfItem(item: string): { step: StepName; file: FactFile } | undefined {
  if (POND_QUESTIONS.some(({ name }) => name === item)) return { step: 'pond', file: 'pond.csv' };
  if (PLACE_QUESTIONS.some(({ name }) => name === item)) return { step: 'place', file: 'site.csv' };
  if (KEEPING_QUESTIONS.some(({ name }) => name === item)) return { step: 'keeping', file: 'site.csv' };
  return undefined;
}

/** The step in which a field stands, by its key; none for files that are asked nowhere. */
export function stepOfKey(key: string): StepName | undefined {
  const [file, item = ''] = key.split(/ (.*)/);
  if (file === 'site.csv' && KEEPING_QUESTIONS.some(({ name }) => name === item)) return 'keeping';
  return STEPS.find(({ files }) => files.includes(file ?? ''))?.name;
}

/** The step in which something that is to be measured next is written down. */
export function stepOfMeasurement(text: string): StepName | undefined {
  if (/deeper hole/.test(text)) return 'holes';
  if (/dips|standpipe|recovery|pipe open|look/.test(text)) return 'looks';
  if (/ditch|level|boundary|outlet|where the drain ends/.test(text)) return 'levels';
  return undefined;
}
