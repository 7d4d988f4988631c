/** What the page asks of the library in its worker, and what comes back: data only, fit to be sent. */
import type { OptionName } from '../contract/index.js';
import type { FigureSize } from '../figures/layout.js';
import type { Standing } from '../text/whatIfText.js';
import type { UnitSystem } from '../units/index.js';
import type { PrivatePart } from './leaveOut.js';
import type { Photos } from './record.js';
import type { WhatIf } from './whatIf.js';
import type { ParameterRange, WhatIfValues } from './whatIfParameters.js';

/** A choice among the controls: its values with their words. */
export interface Choice {
  key: 'option' | 'emptied' | 'runoff' | 'years';
  label: string;
  /** the empty value is the survey's own */
  choices: [value: string, words: string][];
}

/** Which controls a survey has. */
export interface Controls {
  numbers: ParameterRange[];
  choices: Choice[];
  /** a change of size runs the water again */
  ring: boolean;
  /** what is held built where nothing is picked */
  held: OptionName;
}

/** What is said of what is tried; the table as markup that the library made. */
export interface TrialText {
  headline: string;
  standing: Standing;
  used: string;
  chances: string;
  compared: string;
  /** what is built has these of the numbers that can be tried */
  built: WhatIfValues;
}

/** What is drawn and listed of it, as markup; empty where it cannot be had. */
export interface Drawn {
  buy: string;
  section: string;
  risk: string;
}

/** Something tried, as it is asked for. */
interface TrialAsk {
  change: WhatIf;
  units: UnitSystem;
}

/** Each question with its answer. */
export interface Questions {
  /** comes first, with {@link LiveData} as JSON */
  open: { ask: string; answer: Controls };
  try: { ask: TrialAsk; answer: TrialText };
  /** its pictures: asked for when the words are out */
  draw: { ask: TrialAsk & { size: FigureSize; name: string }; answer: Drawn };
  /** the body of the page in a system of units */
  body: { ask: { units: UnitSystem; photos: Photos }; answer: string };
  /** the page as it is saved */
  copy: {
    ask: { units: UnitSystem; photos: Photos; script: string; parts: PrivatePart[]; tried?: string };
    answer: string;
  };
}

export type QuestionName = keyof Questions;
/** A question as it is sent. */
export type PageRequest = {
  [K in QuestionName]: { id: number; page: K; ask: Questions[K]['ask'] };
}[QuestionName];
/** An answer as it comes back. */
export type PageReply = { id: number } & ({ answer: unknown } | { failed: string });
