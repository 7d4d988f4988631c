import { type Problem, parseSurvey, type Survey, SurveyError, type Warning } from '../../lib/survey/index.js';

/** A small survey in which nothing is wrong; tests replace or add files. */
export const GOOD = {
  'pond.csv': 'item,value,unit,note\nshape,box,,\nlength,4,m,\nwidth,3,m,\ndepth,1,m,\n',
  'site.csv': 'item,value,unit,note\nlatitude,52,deg,\n',
  'pits.csv': 'pit,top_m,bottom_m,texture\nP1,0,0.25,clay loam\nP1,0.25,2.5,clay\n',
  'heads.csv': 'place,month,depth_m\nsite,high,0.3\n',
} as const;

type Files = Record<string, string | Uint8Array | undefined>;

/** The good survey with `changes`; a file set to undefined is taken out. */
export function read(changes: Files = {}): Survey {
  return parseSurvey(folder(changes), { name: 'lawn' });
}

/** What is wrong with the good survey after `changes`. */
export function problems(changes: Files): readonly Problem[] {
  try {
    read(changes);
  } catch (error) {
    if (error instanceof SurveyError) return error.problems;
    throw error;
  }
  throw new Error('the survey was read without a problem');
}

/** The only thing wrong. */
export function problem(changes: Files): Problem {
  const all = problems(changes);
  if (all.length !== 1)
    throw new Error(`${all.length} problems: ${all.map((one) => one.message).join(' | ')}`);
  return all[0] as Problem;
}

/** What is worth telling about the good survey after `changes`. */
export function warnings(changes: Files = {}): Warning[] {
  return read(changes).warnings;
}

function folder(changes: Files): Record<string, string | Uint8Array> {
  const files: Record<string, string | Uint8Array> = {};
  for (const [name, content] of Object.entries<string | Uint8Array | undefined>({ ...GOOD, ...changes })) {
    if (content !== undefined) files[name] = content;
  }
  return files;
}
