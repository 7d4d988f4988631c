/** The place, as it is asked, and how a drain would be kept. */
import { type OnceIn, POWER_CUT, UPKEEP } from '../heads/index.js';
import { FLOOD_EVERY } from '../site/index.js';
import { floodWhy, onceInWhy, powerCutWhy } from '../text/keepingAsked.js';
import { AREA, LONG, type Question, SAME, YES_NO_UNKNOWN } from './questions.js';

export const PLACE_QUESTIONS: readonly Question[] = [
  {
    name: 'name',
    ask: 'What do you call the place?',
    why: 'It stands over the answer. Leave names of people out if you mean to share it.',
    how: 'text',
  },
  {
    name: 'latitude',
    ask: 'How far north is it (latitude)?',
    why: 'From a map; a minus south of the equator. It says which months are wet and how much the sun dries.',
    unit: SAME('deg'),
  },
  {
    name: 'country',
    ask: 'Which country is it in?',
    why: 'Its two letters: GB, IE, US, DE and so on. They choose the rules that an inspector checks by; the answer stays the same.',
    how: 'text',
  },
  {
    name: 'uphill_area',
    ask: 'How much ground sheds its rain towards the pond?',
    why: 'Lawn and beds that slope down to it; 0 if the ground falls away on all sides.',
    unit: AREA,
  },
  {
    name: 'uphill_cover',
    ask: 'What covers that ground?',
    why: 'Paving sheds nearly all of the rain, woodland hardly any.',
    how: 'choice',
    choices: [
      { value: 'lawn', words: 'Lawn' },
      { value: 'bare', words: 'Bare soil' },
      { value: 'paved', words: 'Paving' },
      { value: 'woodland', words: 'Trees' },
    ],
  },
  {
    name: 'roof_area',
    ask: 'How large is a roof whose downpipe ends near it?',
    why: 'A downpipe beside the pond fills what was dug and filled back; 0 if none.',
    unit: AREA,
  },
  {
    name: 'roof_into_pond',
    ask: 'How large is a roof whose downpipe runs into the pond?',
    why: 'It keeps the pond full, and its storms run over the brim; 0 if none.',
    unit: AREA,
  },
  {
    name: 'protected_ground',
    ask: 'Is it wetland, or near one?',
    why: 'Protected ground stops the job until whoever is in charge of it has answered.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'wet_plants',
    ask: 'Do rushes or sedges grow there by themselves?',
    why: 'They show that water stands at the surface for months.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'mains_power',
    ask: 'Is there a socket for a pump?',
    why: 'Without a fall to lead water away, only a pump lifts it.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'pump_acceptable',
    ask: 'Would you live with a pump?',
    why: 'A pump needs looking after, and stops when the power does.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'discharge_allowed',
    ask: 'May water be led to a ditch or sewer?',
    why: 'It needs consent: ask before you count on a drain.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'outlet_within_boundary',
    ask: 'Is the end of such a drain on your side of the boundary?',
    why: 'A drain may not run over a neighbour’s ground without leave.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'organic_smell',
    ask: 'Does the soil smell of rot or eggs?',
    why: 'Rotting soil makes gas, which lifts a liner as water does.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
  },
  {
    name: 'shrinkable_clay',
    ask: 'Does the ground crack wide in dry summers near the house?',
    why: 'Such clay shrinks when it is drained, and houses settle with it.',
    how: 'choice',
    choices: YES_NO_UNKNOWN,
    more: true,
  },
  {
    name: 'highest_water_mark',
    ask: 'How high has water ever stood, on the mark of your levels?',
    why: 'A line on a post or a memory of a wet winter; measured down from the string: write a minus; it is set against what the years of weather say.',
    unit: LONG,
    more: true,
  },
  {
    name: 'outlet_setback',
    ask: 'How far from the boundary must a drain end?',
    why: 'As the local code asks.',
    unit: LONG,
    more: true,
  },
  {
    name: 'storm_rain',
    ask: 'How much rain falls in a heavy storm?',
    why: 'It sets the size of a drain; leave it empty if you do not know.',
    unit: { metric: 'mm', us: 'in' },
    more: true,
  },
  {
    name: 'storm_hours',
    ask: 'In how many hours does that fall?',
    why: 'The same rain in less time asks for a larger pipe.',
    unit: SAME('h'),
    more: true,
  },
  {
    name: 'abstraction_limit',
    ask: 'How much water may be taken from the ground in a day?',
    why: 'Some places limit it by law.',
    unit: SAME('m3/d'),
    more: true,
  },
  {
    name: 'life',
    ask: 'For how many years is the liner to serve?',
    why: 'The longer, the likelier it meets a very wet winter.',
    unit: SAME(''),
    more: true,
  },
];

const ASKED: Readonly<Record<OnceIn, string>> = {
  drain_blocked_once_in: 'How many years go by before a drain is found blocked?',
  flap_stuck_once_in: 'And before the flap at its end is found stuck?',
  pump_out_once_in: 'And before a pump stands still with nobody there?',
  power_cut_once_in: 'And before there is such a power cut?',
};

const onceIn = (name: OnceIn): Question => {
  const [years, kept] = UPKEEP[name];
  return {
    name,
    ask: ASKED[name],
    why: onceInWhy(years, kept),
    unit: SAME(''),
  };
};

/** How a drain would be kept. */
export const KEEPING_QUESTIONS: readonly Question[] = [
  {
    name: 'flood_every',
    ask: 'How many years go by from one flood of the ditch to the next?',
    why: floodWhy(FLOOD_EVERY),
    unit: SAME(''),
  },
  onceIn('drain_blocked_once_in'),
  onceIn('flap_stuck_once_in'),
  onceIn('pump_out_once_in'),
  {
    name: 'power_cut_hours',
    ask: 'How long is the longest power cut to be ready for?',
    why: powerCutWhy(POWER_CUT / 3600),
    unit: SAME('h'),
  },
  onceIn('power_cut_once_in'),
];
