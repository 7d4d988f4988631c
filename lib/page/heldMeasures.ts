/** What is built stays as the survey's own answer has it, or as picked, while other things are tried. */
import { type Basis, basisOf } from '../basis/index.js';
import type { OptionName, WishChange } from '../contract/index.js';
import {
  advisedCurve,
  builtBy,
  gasUnder,
  type Judged,
  judge,
  LOSS,
  lacksEvidence,
  stopOf,
} from '../decision/index.js';
import { type Measures, namesOf } from '../heads/index.js';
import { candidatesOf, depthCurve, type Option, optionsOf } from '../options/index.js';
import type { SiteOptions } from '../site/index.js';
import type { Survey } from '../survey/index.js';
import { arranger, builtAs, calledAs, type WhatIf } from './whatIf.js';
import { trialMeasures } from './whatIfParameters.js';

/** A change with what is held built. */
export interface Trial {
  basis: Basis;
  options: Option[];
  option: OptionName;
  /** with what is held built; undefined: it cannot be had there */
  held: (Omit<Judged, 'curves' | 'advised'> & ReturnType<typeof builtAs>) | undefined;
  /** what ends the question before any chance is counted */
  stop: ReturnType<typeof stopOf>;
  /** somebody knows the wet season */
  evidence: boolean;
  /** gas gathers under a liner at that depth */
  gas: boolean;
}

/** Answers what-ifs on a survey with what is built held. */
export interface Holder {
  /** the analysis of the survey */
  own: Judged;
  /** what is held built where nothing is picked */
  option: OptionName;
  /** what is done otherwise than wished, since the answer rests on it */
  change: WishChange | undefined;
  asked(change: WhatIf): Trial;
}

/**
 * Holds what the answer of a survey builds, and the change of the wish it rests on.
 * @param survey as read
 * @param options - seed and number of samples
 * @returns judges one change after another
 * @throws InputError for fewer than 8 samples
 */
export function holder(survey: Survey, options: SiteOptions = {}): Holder {
  const first = arranger(survey, options);
  const asSurveyed = first({});
  const own = judge(asSurveyed.site, asSurveyed.change);
  const { change, measures } = own.decision;
  const option = builtBy(own.decision);
  const arrange = change ? arranger(usedAs(survey, change), { ...options, before: asSurveyed.site }) : first;
  let last = own.basis;
  return {
    own,
    option,
    change,
    asked({ option: picked = option, ...what }) {
      const arranged = arrange(what);
      const site = { ...arranged.site, pond: { ...arranged.site.pond, ...arranged.change } };
      last = basisOf(site, last);
      const basis = last;
      const all = optionsOf(basis);
      const found =
        picked === option
          ? sameMeasures(basis, all, option, measures)
          : all.find(({ name }) => name === picked)?.measures;
      const built = found && trialMeasures(site, found, what);
      const named = built ? calledAs(picked, built) : picked;
      const gas = gasUnder(site, site.pond.depth);
      return {
        basis,
        options: all,
        option: named,
        held: built && heldJudged(basis, all, named, built, gas),
        stop: stopOf(site),
        evidence: !lacksEvidence(site),
        gas,
      };
    },
  };
}

function heldJudged(basis: Basis, options: Option[], option: OptionName, measures: Measures, gas: boolean) {
  const { site } = basis;
  const built = builtAs(basis, option, measures);
  return {
    site,
    basis,
    wished: basis,
    options,
    ...built,
    decision: { ...built.decision, also: gas ? (['vent'] as const).slice() : [] },
    measureNext: [],
    loss: LOSS,
    assumptions: [...site.assumptions, ...(built.drain?.assumptions ?? [])],
  };
}

/** What is tried with the chance against depth of every option: for the figures, and a multiple of the time. */
export function withCurves(held: NonNullable<Trial['held']>): Judged {
  const { basis, options, decision } = held;
  return {
    ...held,
    curves: options.map((option) => depthCurve(basis, option)),
    advised: advisedCurve(basis, decision),
  };
}

/** The same works on a changed pond, the rim raised as much. */
function sameMeasures(
  basis: Basis,
  options: Option[],
  option: OptionName,
  own: Measures,
): Measures | undefined {
  const names = namesOf(own).join();
  const same = candidatesOf(basis, options).find(
    (each) => each.option === option && namesOf(each.measures).join() === names,
  );
  const measures = same?.measures ?? options.find(({ name }) => name === option)?.measures;
  return measures && { ...measures, raise: own.raise };
}

/** The survey of a pond used otherwise. */
function usedAs(
  survey: Survey,
  { side_slope, built_in, emptied_in, kept_within_m, days_empty }: WishChange,
): Survey {
  const { usual_drawdown, ...pond } = survey.pond;
  return {
    ...survey,
    pond: {
      ...pond,
      ...(kept_within_m === undefined ? { usual_drawdown } : { kept_within: kept_within_m }),
      ...(side_slope === undefined ? {} : { side_slope }),
      ...(built_in ? { built_in } : {}),
      ...(emptied_in ? { emptied_in } : {}),
      ...(days_empty === undefined ? {} : { days_empty }),
    },
  };
}
