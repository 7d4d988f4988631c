/** The layers of a hole, as they are asked: by hand and eye, in no word that has to be known. */
import { type Choice, LONG, type Question, SAME } from './questions.js';

const choice = (group: string, ...all: [value: string, words: string][]): Choice[] =>
  all.map(([value, words]) => ({ value, words, group }));

/** By the ribbon that a wet handful gives between thumb and finger, and by its grit. */
const TEXTURES: readonly Choice[] = [
  ...choice(
    'Long ribbon, over 5 cm (2 in)',
    ['clay', 'Sticky and shiny: clay'],
    ['silty clay', 'Sticky and silky: silty clay'],
    ['sandy clay', 'Sticky and gritty: sandy clay'],
  ),
  ...choice(
    'Ribbon of 2.5 to 5 cm (1 to 2 in)',
    ['clay loam', 'Neither gritty nor silky: clay loam'],
    ['silty clay loam', 'Silky: silty clay loam'],
    ['sandy clay loam', 'Gritty: sandy clay loam'],
  ),
  ...choice(
    'Short ribbon, under 2.5 cm (1 in)',
    ['loam', 'Neither gritty nor silky: loam'],
    ['silt loam', 'Silky: silt loam'],
    ['silt', 'Like flour: silt'],
    ['sandy loam', 'Gritty: sandy loam'],
  ),
  ...choice('No ribbon', ['loamy sand', 'Holds as a ball: loamy sand'], ['sand', 'Falls apart: sand']),
  ...choice(
    'Something else',
    ['topsoil', 'Topsoil, not felt'],
    ['gravel', 'Gravel'],
    ['peat', 'Peat: black, light, old roots'],
    ['made ground', 'Rubble or fill'],
    ['rock', 'Rock'],
  ),
];

export const LAYER_QUESTIONS: readonly Question[] = [
  { name: 'top', ask: 'From', why: 'Where it begins, measured down from the ground.', unit: LONG },
  { name: 'bottom', ask: 'Down to', why: 'Where colour or feel changes, or the hole ends.', unit: LONG },
  {
    name: 'texture',
    ask: 'How does it feel between thumb and fingers?',
    why: 'Knead a wet handful to putty and push it up over your finger until it breaks: the longer the ribbon, the slower water moves in it.',
    how: 'choice',
    choices: TEXTURES,
  },
  {
    name: 'consistency',
    ask: 'How hard is it to squeeze, fresh from the hole?',
    why: 'Soft clay falls in.',
    how: 'choice',
    choices: [
      { value: 'very soft', words: 'Squeezes out between the fingers' },
      { value: 'soft', words: 'Moulds with light pressure' },
      { value: 'firm', words: 'Moulds with strong pressure' },
      { value: 'stiff', words: 'The thumb dents it' },
      { value: 'very stiff', words: 'The thumbnail marks it' },
      { value: 'hard', words: 'The thumbnail hardly marks it' },
    ],
  },
  {
    name: 'mottles',
    ask: 'Are there rusty and grey spots?',
    why: 'They show where water stands in winter.',
    how: 'choice',
    choices: [
      { value: 'none', words: 'None' },
      { value: 'few', words: 'A few' },
      { value: 'common', words: 'Many places' },
      { value: 'many', words: 'Nearly everywhere' },
      { value: 'grey', words: 'All of it is grey or blue' },
    ],
  },
  {
    name: 'structure',
    ask: 'Break a lump. What do you see?',
    why: 'Water runs in cracks and root holes, not in the clay itself.',
    how: 'choice',
    choices: [
      { value: 'massive', words: 'One dense mass' },
      { value: 'blocky', words: 'It breaks into blocks' },
      { value: 'cracked', words: 'Cracks run through it' },
      { value: 'rooted', words: 'Roots and root holes' },
    ],
  },
  {
    name: 'photo',
    ask: 'A photo of it',
    why: 'Made small here. The place and time your camera wrote into it are taken out.',
    how: 'photo',
  },
  { name: 'note', ask: 'Anything else', why: 'Smell, roots, where water came in.', how: 'text' },
  {
    name: 'stones',
    ask: 'How much of it is stones?',
    why: 'By weight, as near as you can say.',
    unit: SAME('%'),
    more: true,
  },
  {
    name: 'organic',
    ask: 'How much of it is humus?',
    why: 'By weight; topsoil has 3 to 6.',
    unit: SAME('%'),
    more: true,
  },
  {
    name: 'sand',
    ask: 'Sand, from a jar test',
    why: 'Share of what settles in a jar of water, stones apart.',
    unit: SAME('%'),
    more: true,
  },
  {
    name: 'silt',
    ask: 'Silt, from a jar test',
    why: 'The layer in the middle.',
    unit: SAME('%'),
    more: true,
  },
  { name: 'clay', ask: 'Clay, from a jar test', why: 'The layer on top.', unit: SAME('%'), more: true },
  {
    name: 'ksat',
    ask: 'How fast water moves in it, if it was measured',
    why: 'From a laboratory or a test that was worked out; your own tests go under “Tests with a watch”.',
    unit: { metric: 'm/s', us: 'in/h' },
    more: true,
  },
  {
    name: 'strength',
    ask: 'How strong it is, if it was measured',
    why: 'Undrained strength, from a vane or a laboratory.',
    unit: { metric: 'kPa', us: 'psf' },
    more: true,
  },
];
