/** What is built stays as the survey's own answer has it, or as picked, while other things are tried. */
import { isOption, type OptionName, type WishChange } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { type Measures, namesOf } from '../heads/index.js';
import { candidatesOf } from '../options/index.js';
import type { SiteOptions } from '../site/index.js';
import type { Survey } from '../survey/index.js';
import { explorer, type WhatIf, withMeasures } from './whatIf.js';

/** A change with what is held built. */
export interface Tried {
  /** judged for itself: what would be recommended there */
  free: Judged;
  /** with what is held built; undefined: it cannot be had there */
  held: Judged | undefined;
  option: OptionName;
}

/** Answers what-ifs on a survey with what is built held. */
export interface Holder {
  /** the analysis of the survey */
  own: Judged;
  /** what is held built where nothing is picked */
  option: OptionName;
  /** what is done otherwise than wished, since the answer rests on it */
  change: WishChange | undefined;
  asked(change: WhatIf): Tried;
}

/**
 * Holds what the answer of a survey builds, and the change of the wish it rests on.
 * @param survey as read
 * @param options - seed and number of samples
 * @returns judges one change after another
 * @throws RangeError for fewer than 8 samples
 */
export function holder(survey: Survey, options: SiteOptions = {}): Holder {
  const first = explorer(survey, options);
  const own = first({});
  const { change, measures } = own.decision;
  const option = builtBy(own);
  const judge = change ? explorer(usedAs(survey, change), options) : first;
  return {
    own,
    option,
    change,
    asked({ option: picked, ...tried }) {
      const free = judge(tried);
      const of = picked ?? option;
      const built =
        of === option ? sameMeasures(free, of, measures) : free.options.find(({ name }) => name === of)?.measures;
      return { free, held: built && withMeasures(free, of, built), option: of };
    },
  };
}

/** The option that an answer builds. */
function builtBy({ decision: { option, also, measures } }: Judged): OptionName {
  return [option, ...also].find(isOption) ?? namesOf(measures)[0]!;
}

/** The same works on a changed pond, the rim raised as much. */
function sameMeasures(a: Judged, option: OptionName, own: Measures): Measures | undefined {
  const names = namesOf(own).join();
  const same = candidatesOf(a.basis, a.options).find(
    (each) => each.option === option && namesOf(each.measures).join() === names,
  );
  const measures = same?.measures ?? (names === option ? a.options.find((o) => o.name === option)?.measures : undefined);
  return measures && { ...measures, raise: own.raise };
}

/** The survey of a pond used otherwise. */
function usedAs(survey: Survey, { emptied_in, kept_within_m, days_empty }: WishChange): Survey {
  const { usual_drawdown, ...pond } = survey.pond;
  return {
    ...survey,
    pond: {
      ...pond,
      ...(kept_within_m === undefined ? { usual_drawdown } : { kept_within: kept_within_m }),
      ...(emptied_in ? { emptied_in } : {}),
      ...(days_empty === undefined ? {} : { days_empty }),
    },
  };
}
