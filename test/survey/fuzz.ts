/** Runs mutated surveys, a seed each, and says what came of them. */
import { demoFiles } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { correctSurvey, Dice, type Sheet, type Sheets } from './generated.js';
import { mutated } from './mutations.js';
import { verdictOn } from './verdict.js';

/** Two years and a half are enough of a record for one whole year, and quick. */
const SHORT_RECORD = 900;
/** Seconds after which a case counts as hanging. */
const LIMIT_S = 20;

const sheetOf = (text: string): Sheet => {
  const [header = '', ...rows] = text.trimEnd().split('\n');
  // The fixtures hold no quoted cells but in notes, which may break in two: one more mutation.
  return { header: header.split(','), rows: rows.map((row) => row.split(',')) };
};
const shortened = (files: Record<string, string>): Sheets =>
  Object.fromEntries(
    Object.entries(files).map(([name, text]) => {
      const sheet = sheetOf(text);
      return [name, name === 'weather.csv' ? { ...sheet, rows: sheet.rows.slice(-SHORT_RECORD) } : sheet];
    }),
  );

const EXTRA = {
  'climate.csv': `month,rain_mm,tmean_c,et0_mm\n${Array.from({ length: 12 }, (_, m) => `${m + 1},60,10,50`).join('\n')}\n`,
  'prices.csv': 'item,unit,price\npipe,m,3\n',
  'soakage.csv':
    'pit,test,minutes,depth_to_water_cm,hole_depth_cm,hole_diameter_cm,soaked_before\nP1,1,0,30,60,15,yes\nP1,1,30,33,,,\nP1,1,90,38,,,\n',
};
const VALID: Sheets[] = [
  ...['clay-hollow', 'clay-slope', 'loam-terrace'].map((name) => shortened(demoFiles(name))),
  shortened({ ...baseSurvey(), ...EXTRA }),
];

/** The files of a case. */
export function caseOf(seed: number): Record<string, string | Uint8Array> {
  const dice = new Dice(seed * 7919);
  // Weather is what costs time: few cases have it.
  const valid = dice.chance(0.06) ? dice.one(VALID) : dice.chance(0.3) ? VALID[3] : correctSurvey(seed);
  return mutated(valid as Sheets, dice);
}

/** Runs cases from one seed to the next; every case that is neither result nor refusal is thrown with its seed. */
export function fuzz(from: number, to: number): { results: number; refused: number; slowest: number } {
  const tally = { results: 0, refused: 0, slowest: 0 };
  const faults: string[] = [];
  for (let seed = from; seed < to; seed++) {
    const start = performance.now();
    try {
      tally[verdictOn(caseOf(seed)).kind === 'result' ? 'results' : 'refused']++;
    } catch (error) {
      faults.push(
        `seed ${seed}: ${error instanceof Error ? error.stack?.split('\n').slice(0, 4).join(' | ') : error}`,
      );
    }
    const seconds = (performance.now() - start) / 1000;
    if (seconds > LIMIT_S) faults.push(`seed ${seed}: took ${seconds.toFixed(1)} s`);
    tally.slowest = Math.max(tally.slowest, seconds);
  }
  if (faults.length > 0) throw new Error(`${faults.length} cases\n${faults.slice(0, 40).join('\n')}`);
  return tally;
}
