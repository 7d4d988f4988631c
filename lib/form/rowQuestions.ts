/** Rows that are written on site, as they are asked: looks, tests, levels, months, and what is known already. */
import { LONG, MONTH_CHOICES, type Question, SAME, SHORT, YES_NO } from './questions.js';

export const LOOK_QUESTIONS: readonly Question[] = [
  {
    name: 'pit',
    ask: 'Into which hole?',
    why: 'Its name, as under “Holes”; or the pond itself, or its dip pipe.',
    how: 'hole',
  },
  {
    name: 'date',
    ask: 'On which day?',
    why: 'The day decides what winter water it stands for.',
    how: 'date',
  },
  {
    name: 'time',
    ask: 'At what time?',
    why: 'Clay answers slowly: hours count on the day a hole is dug.',
    how: 'time',
  },
  {
    name: 'reading',
    ask: 'What was it?',
    why: 'An empty hole in clay is not yet a dry one.',
    how: 'choice',
    choices: [
      { value: 'opened', words: 'The hole was finished' },
      { value: 'level', words: 'Water stood in it' },
      { value: 'dry', words: 'No water in it' },
      { value: 'strike', words: 'Water came in while digging' },
      { value: 'bailed', words: 'I emptied it by hand' },
    ],
  },
  {
    name: 'depth',
    ask: 'How far down?',
    why: 'From the ground to the water; of a hole just finished or emptied, to what you measured.',
    unit: LONG,
    only: { name: 'reading', is: '!dry' },
  },
  {
    name: 'hole_depth',
    ask: 'How deep is the hole?',
    why: 'Needed where it was dry and the day it was finished is not written down.',
    unit: LONG,
  },
  {
    name: 'hole_diameter',
    ask: 'How wide is the hole?',
    why: 'A narrow hole fills sooner.',
    unit: SHORT,
    more: true,
  },
  {
    name: 'pipe_bore',
    ask: 'How wide is the pipe inside?',
    why: 'Only where a pipe stands in it.',
    unit: SHORT,
    more: true,
  },
  {
    name: 'open_from',
    ask: 'Below which depth can water get into the pipe?',
    why: 'Only for a pipe sealed above; leave it empty for an open hole.',
    unit: LONG,
    more: true,
  },
  {
    name: 'pipe_top',
    ask: 'How far does the pipe stand out of the ground?',
    why: 'If you measured from its top.',
    unit: SHORT,
    more: true,
  },
  {
    name: 'covered',
    ask: 'Was it covered against rain?',
    why: 'Rain that runs in says nothing of the ground.',
    how: 'choice',
    choices: YES_NO,
    more: true,
  },
  { name: 'note', ask: 'Anything else', why: 'Rain before, colour of the water.', how: 'text', more: true },
];

export const TEST_QUESTIONS: readonly Question[] = [
  { name: 'hole_depth', ask: 'How deep is the hole?', why: 'From the ground to its floor.', unit: SHORT },
  {
    name: 'hole_diameter',
    ask: 'How wide is the hole?',
    why: 'The wider, the more water goes through its wall.',
    unit: SHORT,
  },
  {
    name: 'soaked_before',
    ask: 'Had it soaked for some hours before?',
    why: 'Dry ground drinks fast at first, and that is not its rate.',
    how: 'choice',
    choices: YES_NO,
  },
  { name: 'minutes', ask: 'Minutes', why: 'Since the start of the test.', unit: SAME('min') },
  {
    name: 'depth_to_water',
    ask: 'Ground to water',
    why: 'From the ground down to the water, each time from the same mark.',
    unit: SHORT,
  },
  { name: 'pit', ask: 'In which hole?', why: 'Its layers say what ground was tested.', how: 'hole' },
  { name: 'test', ask: 'Test', why: 'Its name or number.', how: 'text' },
];

export const LEVEL_QUESTIONS: readonly Question[] = [
  {
    name: 'role',
    ask: 'What is it?',
    why: 'At least the lowest and the highest ground at the pond’s edge, each hole, and where a drain could end.',
    how: 'choice',
    choices: [
      { value: 'rim', words: 'Ground at the pond’s edge' },
      { value: 'pit', words: 'Ground at a hole' },
      { value: 'outlet', words: 'Where a drain could end by its fall' },
      { value: 'discharge', words: 'Where a pump could send water' },
      { value: 'ditch', words: 'Ordinary water in the ditch' },
      { value: 'flood', words: 'Highest water in the ditch' },
      { value: 'spill', words: 'Lowest place where water leaves the ground around' },
      { value: 'spot', words: 'Another place the pond could go' },
      { value: 'pond', words: 'Mark for looks at the pond’s level' },
      { value: 'dip-pipe', words: 'Top of the dip pipe' },
      { value: 'footing', words: 'Underside of a footing' },
      { value: 'boundary', words: 'Boundary' },
      { value: 'house', words: 'Your house' },
      { value: 'neighbour-house', words: 'Neighbour’s house' },
      { value: 'well', words: 'Well' },
      { value: 'other', words: 'Something else' },
    ],
  },
  {
    name: 'point',
    ask: 'Name of the point',
    why: 'As you know it; of a hole, the hole’s own name.',
    how: 'text',
  },
  { name: 'level', ask: 'Height', why: 'Above one fixed mark, the same for all.', unit: LONG },
  { name: 'distance', ask: 'How far from the pond’s edge?', why: 'By tape, along the ground.', unit: LONG },
  { name: 'note', ask: 'Anything else', why: 'How it was measured.', how: 'text', more: true },
  {
    name: 'x',
    ask: 'Place on your plan, across',
    why: 'With the next, for a drawing from above.',
    unit: LONG,
    more: true,
  },
  { name: 'y', ask: 'Place on your plan, up', why: 'On the same plan.', unit: LONG, more: true },
];

export const HEAD_QUESTIONS: readonly Question[] = [
  {
    name: 'place',
    ask: 'Where?',
    why: 'At the pond’s place, above it, or in one of the holes.',
    how: 'hole',
  },
  {
    name: 'month',
    ask: 'When?',
    why: 'The highest of the year tells most.',
    how: 'choice',
    choices: [{ value: 'high', words: 'The highest of the year' }, ...MONTH_CHOICES],
  },
  { name: 'depth', ask: 'How far below the ground?', why: 'Above the ground: write a minus.', unit: LONG },
  {
    name: 'spread',
    ask: 'How far off may that be?',
    why: 'Two times in three it lies within this. A guess gets a wide one, and the answer grows less sure by as much.',
    unit: LONG,
  },
  { name: 'source', ask: 'Who says so?', why: 'A neighbour, a map, a memory.', how: 'text' },
];

export const MONTH_QUESTIONS: readonly Question[] = [
  {
    name: 'rain',
    ask: 'Rain',
    why: 'Of the whole month, in an ordinary year.',
    unit: { metric: 'mm', us: 'in' },
  },
  { name: 'tmean', ask: 'Mean temperature', why: 'Day and night together.', unit: { metric: 'C', us: 'F' } },
  {
    name: 'et0',
    ask: 'What short grass would take',
    why: 'Reference evapotranspiration, where the service gives it; then temperatures are not needed.',
    unit: { metric: 'mm', us: 'in' },
    more: true,
  },
  { name: 'month', ask: 'Month', why: 'From 1 to 12.', unit: SAME('') },
];
