import type { OpenFact, WaitingStatements } from '../contract/index.js';
import { BULGE_NEVER, BULGE_REMEDY, bulgeWords } from './bulgeWords.js';
import { obstacleIn } from './obstacleText.js';
import { oldDrainWords } from './oldDrainWords.js';
import type { Wording } from './say.js';

const TELLS: Record<OpenFact, string> = {
  seam: 'A pipe that is open in that layer only would tell.',
  footing: 'A small hole beside the wall, down to its underside, would tell.',
};

/** What a reason says of what is to be found out first, or stops everything. */
export const WAITING_TEXT: Wording<WaitingStatements> = {
  'season-unknown': () =>
    'The survey says too little of the wet half-year to decide; a wet season of dips in a sealed standpipe would.',
  'old-drain': oldDrainWords,
  'fact-tells': ({ fact }) => TELLS[fact],
  'drain-perhaps': (why, say) => `A drain may be the answer, but ${obstacleIn(why, say)}.`,
  'season-worth': ({ worth_drains }) =>
    `The answer hangs on how high the water stands in the wet half-year: a season of dips is worth about ${worth_drains.toPrecision(2)} times the price of a drain, more than the season costs.`,
  protected: () =>
    'The ground is protected: digging, filling or draining it may need a permit, and a drain would harm what is ' +
    'protected. Ask the regulator first; nothing is calculated against that.',
  bulge: bulgeWords,
  'bulge-remedy': ({ cause }) => BULGE_REMEDY[cause],
  'bulge-never': () => BULGE_NEVER.join(' '),
};
