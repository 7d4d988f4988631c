/** Words of the garden that mean one of the survey's; each reading is told. */

import type { Mottles, Structure, Texture } from '../soil/index.js';
import type { Cover, LevelRole, Look, PondFacts, SiteFacts, YesNo } from './survey.js';

type Words<W extends string> = Readonly<Record<string, W>>;

export const YES_NO: Words<'yes' | 'no'> = { y: 'yes', n: 'no', true: 'yes', false: 'no' };

export const YES_NO_UNKNOWN: Words<YesNo> = {
  ...YES_NO,
  '?': 'unknown',
  "don't know": 'unknown',
  'dont know': 'unknown',
  'not known': 'unknown',
  'not sure': 'unknown',
};

export const TEXTURES: Words<Texture> = {
  'heavy clay': 'clay',
  'sticky clay': 'clay',
  'pure clay': 'clay',
  'blue clay': 'clay',
  'grey clay': 'clay',
  'gray clay': 'clay',
  'blue grey clay': 'clay',
  'brown clay': 'clay',
  'red clay': 'clay',
  'yellow clay': 'clay',
  fill: 'made ground',
  'made up ground': 'made ground',
  'builders rubble': 'made ground',
  shingle: 'gravel',
  bedrock: 'rock',
};

/** Ground of which nobody has said what it is made of. */
export const NO_TEXTURE = ['topsoil', 'top soil', 'subsoil', 'soil', 'earth', 'garden soil'];

export const STRUCTURES: Words<Structure> = {
  solid: 'massive',
  cracks: 'cracked',
  fissured: 'cracked',
  roots: 'rooted',
  'root holes': 'rooted',
};

/** Spots whose share is not said count as common: they show water, as many would. */
export const MOTTLES: Words<Mottles> = {
  no: 'none',
  n: 'none',
  'a few': 'few',
  yes: 'common',
  y: 'common',
  rusty: 'common',
  rust: 'common',
  'rusty spots': 'common',
  'rust spots': 'common',
  spotted: 'common',
  gray: 'grey',
  'all grey': 'grey',
  'all gray': 'grey',
  blue: 'grey',
  'blue grey': 'grey',
};

export const COVERS: Words<Cover> = {
  grass: 'lawn',
  turf: 'lawn',
  meadow: 'lawn',
  pasture: 'lawn',
  soil: 'bare',
  earth: 'bare',
  'bare soil': 'bare',
  paving: 'paved',
  patio: 'paved',
  concrete: 'paved',
  tarmac: 'paved',
  asphalt: 'paved',
  trees: 'woodland',
  wood: 'woodland',
  woods: 'woodland',
  forest: 'woodland',
};

export const SHAPES: Words<NonNullable<PondFacts['shape']>> = {
  rectangle: 'box',
  rectangular: 'box',
  square: 'box',
  circle: 'round',
  circular: 'round',
  ellipse: 'oval',
};

export const UNIT_SYSTEMS: Words<NonNullable<SiteFacts['show_units']>> = {
  metres: 'metric',
  meters: 'metric',
  feet: 'us',
  'us customary': 'us',
};

/** Countries with rules of their own, as people name them. */
export const COUNTRY_NAMES: Words<string> = {
  uk: 'GB',
  'united kingdom': 'GB',
  'great britain': 'GB',
  britain: 'GB',
  england: 'GB',
  scotland: 'GB',
  wales: 'GB',
  'northern ireland': 'GB',
  ireland: 'IE',
  'republic of ireland': 'IE',
  usa: 'US',
  'united states': 'US',
  'united states of america': 'US',
};

export const READINGS: Words<Look['reading']> = {
  water: 'level',
  'water level': 'level',
  dug: 'opened',
  'no water': 'dry',
  struck: 'strike',
  'water struck': 'strike',
};

export const ROLES: Words<LevelRole> = {
  hole: 'pit',
  stream: 'ditch',
  brook: 'ditch',
  foundation: 'footing',
  'neighbor house': 'neighbour-house',
};
