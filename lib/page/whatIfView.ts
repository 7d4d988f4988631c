/** What the what-if shows of an assessment. */

import { type Governs, LEAST_CHANCE } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import type { Figure } from '../figures/figure.js';
import type { FigureSize } from '../figures/layout.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import type { Table } from '../figures/table.js';
import { adviceWords, GOVERNS_WORDS, sentence } from '../figures/words.js';
import { type Verdict, verdictAt } from '../reliability/index.js';
import { reportOf } from '../report/index.js';
import { conditionText } from '../text/conditionText.js';
import { chanceText, isUpkeep, orderText, yearlyText } from '../text/say.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { carried } from './drainSection.js';

export interface View {
  /** what is drawn and whether it is safe */
  headline: string;
  safe: boolean;
  /** which failure governs now */
  governs: string;
  /** chances of each state, and of the dig */
  chances: string;
  /** what to buy and to dig for the drain */
  buy: Table;
  section: (size: FigureSize) => Figure;
  risk: (size: FigureSize) => Figure;
}

/**
 * Words and figures of an assessment.
 * @param a - judged by {@link explorer}
 * @param units - how numbers are written
 * @returns what the panel shows
 */
export function viewOf(a: Judged, units: UnitSystem): View {
  const report = reportOf(a, { units, quick: true });
  const { recommendation } = report.result;
  const depth = recommendation.depth_m || a.site.pond.depth;
  const verdict = a.decision.verdict ?? verdictAt(a.basis, a.decision.measures, depth);
  const raised =
    recommendation.raise_m > 0
      ? `, raised by ${formatQuantity(recommendation.raise_m, 'length', units)}`
      : '';
  return {
    headline: `${adviceWords(recommendation)}, ${formatQuantity(depth, 'length', units)} deep${raised}: ${verdict.safe ? 'safe' : 'not safe'}`,
    safe: verdict.safe,
    governs: governsWords(verdict, units),
    chances: chanceWords(verdict),
    buy: carried(report, units),
    section: (size) => sectionFigure(report, units, size),
    risk: (size) => riskDepthFigure(report, units, size),
  };
}

/** Every failure that has a chance, with it in words; the likeliest first. */
function ranked(verdict: Verdict): { mode: Governs; chance: number; words: string }[] {
  const { chance, dig } = verdict;
  const yearly = yearlyWords(verdict);
  const inDig: [Governs, number][] = [
    ['floor-heave', dig.heave],
    ['side-slump', dig.slump],
    ['wet-dig', dig.wet_floor],
  ];
  return [
    ...(Object.entries(chance.modes) as [Governs, number][]).map(([mode, chance]) => ({
      mode,
      chance,
      words: yearly(chance),
    })),
    ...inDig.map(([mode, chance]) => ({ mode, chance, words: chanceText(chance) })),
  ].sort((a, b) => b.chance - a.chance);
}

/** Chances of a year as they may be told: none more exactly than their sum. */
function yearlyWords({ chance: { perYear, upkeep } }: Verdict): (chance: number) => string {
  if (!isUpkeep({ per_year: perYear, upkeep })) return chanceText;
  return (chance) => (chance < LEAST_CHANCE ? chanceText(chance) : orderText(chance));
}

function governsWords(verdict: Verdict, units: UnitSystem): string {
  const { governs, conditions } = verdict;
  const broken = conditions.find(({ met }) => met !== 'yes');
  const all = ranked(verdict);
  if (governs !== 'none') {
    const found = all.find(({ mode }) => mode === governs);
    const size = found ? ` (${found.words})` : '';
    return `Governs now: ${GOVERNS_WORDS[governs]}${size}${broken ? `; ${conditionText(broken, units)}` : ''}.`;
  }
  const { mode, chance, words } = all[0]!;
  return chance === 0
    ? 'Nothing that was tried fails.'
    : `Nothing fails oftener than accepted; nearest to it: ${GOVERNS_WORDS[mode]} (${words}).`;
}

function chanceWords(verdict: Verdict): string {
  const { dig } = verdict;
  const { modes, perYear, upkeep } = verdict.chance;
  const yearly = yearlyWords(verdict);
  const say = (mode: Governs, words: string) =>
    modes[mode] === undefined ? [] : [`${words} ${yearly(modes[mode])}`];
  const year = [
    ...say('lift-full', 'full'),
    ...say('lift-drawn-down', 'at its usual lowest level'),
    ...say('lift-emptied', 'emptied'),
    ...say('lift-power-out', 'with the power out'),
  ];
  return sentence(
    `the liner lifts: ${[...year, ...say('side-slump', 'a bared side slumps')].join(', ')}; together ${yearlyText({ per_year: perYear, upkeep })}. ` +
      `In a dig: floor heaves ${chanceText(dig.heave)}, sides slump ${chanceText(dig.slump)}, wet floor ${chanceText(dig.wet_floor)}.`,
  );
}
