/** The wish, the spot and the doubt in a gardener's words. */

import {
  type Advice,
  advisedOptions,
  advisedTogether,
  BEFORE_DIGGING,
  type OptionResult,
  type Report,
  wallsUnjudged,
} from '../contract/index.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { dugWords } from './changeWords.js';
import { listText } from './sentence.js';
import { slabTakes } from './slabWords.js';
import { ADVICE_NAMES } from './terms.js';
import { mayTurn } from './tippingText.js';

/** A share below this is not worth a word. */
const WORTH_NAMING = 0.05;

/** Lengths of a result have six figures; nothing is dug closer, m. */
const NEAR = 1e-5;

/** What comes before any depth, of a pond to be dug and of one that is there. */
const BUT: Partial<Record<Advice, { planned: string; existing: string }>> = {
  'measure-first': {
    planned: 'But measure before you dig.',
    existing: 'But measure before you change anything.',
  },
  move: { planned: 'Dig at another spot instead.', existing: 'Ask a licensed engineer how it can be kept.' },
  'do-not-dig': {
    planned: 'Whatever the water allows, do not dig here.',
    existing: 'Whatever the water allows, change nothing before the regulator agrees.',
  },
};

/** Whether the pond may be as deep as wished: with nothing done, and as recommended; where it is to be dug otherwise, so dug. */
export function wishWords(report: Report, units: UnitSystem): string {
  const { options, recommendation } = report.result;
  const wish = report.pond.depth_m;
  // Somebody digs by it.
  const size = (value: number) => formatBound(value, 'length', units, 'down');
  const bare = options.find(({ option }) => option === 'no-drain');
  const built = advisedOptions(recommendation).map((each) => ADVICE_NAMES[each].toLowerCase());
  const advised = advisedTogether(report);
  const liner = wallsUnjudged(recommendation) ? ' for liner and ground (the walls are not judged)' : '';
  const may = ({ safe_depth_m: safe, depth_searched_m }: OptionResult) =>
    safe === 0
      ? 'no, at no depth'
      : safe === null
        ? `yes${liner}, and down to ${size(depth_searched_m)} at least`
        : safe < wish - NEAR
          ? `no, only ${size(safe)}`
          : `yes${liner}, and down to ${size(safe)}`;
  // Safe by its rules of use alone.
  const ruled =
    advised !== undefined &&
    !BEFORE_DIGGING.includes(recommendation.option) &&
    (advised.safe_depth_m ?? Number.POSITIVE_INFINITY) < recommendation.depth_m - NEAR;
  const dug = dugWords(recommendation.change, (value) => formatQuantity(value, 'length', units));
  const otherwise = dug.length > 0;
  const { depth_m, raise_m } = recommendation;
  // Nobody digs as deep as a raised pond is.
  const raised =
    raise_m > 0 ? `; of ${size(depth_m)} only ${size(depth_m - raise_m)} is dug below the old ground` : '';
  const said = [
    ...(otherwise ? [`As wished: no. It is to be ${listText(dug)}.`] : []),
    ...(bare
      ? [
          `${ruled && advised === bare ? 'As advised, and used by its rules: yes. Used as wished, with' : otherwise ? 'Dug like that, with' : 'With'} nothing ${otherwise ? 'else ' : ''}done: ${may(bare)}.`,
        ]
      : []),
    ...(advised && advised !== bare
      ? [
          `With what is recommended (${listText(built)})${ruled ? ', and used by its rules: yes. With it, but used as wished' : ''}: ${may(advised)}${raised}.`,
        ]
      : []),
  ];
  const first = BEFORE_DIGGING.includes(recommendation.option)
    ? [BUT[recommendation.option]?.[report.pond.existing ? 'existing' : 'planned'] ?? '']
    : [];
  return [...said, slabTakes(report, units), ...first].filter(Boolean).join(' ');
}

/** What most of the doubt about the answer comes from. */
export function doubtWords({ result }: Report): string {
  // Ground and water are told one by one.
  const shares = result.drivers
    .filter(({ input }) => !input.endsWith(' together'))
    .map(({ input, first_order }) => ({ input, share: Math.min(Math.max(first_order, 0), 1) }))
    .sort((a, b) => b.share - a.share);
  const named = shares.filter(({ share }) => share >= WORTH_NAMING);
  const rest = shares.filter(({ share }) => share < WORTH_NAMING).map(({ input }) => input);
  if (named.length === 0) {
    const near = mayTurn(result.tipping_points);
    return near.length > 0
      ? `No single doubt is large, but one could still turn the answer: ${listText(near)}.`
      : 'Nothing that is not known moves the answer by itself.';
  }
  const [first, ...more] = named.map(({ input, share }) => `${input} (${Math.round(100 * share)} %)`);
  const next = more.length > 0 ? `, then from ${listText(more)}` : '';
  const idle = rest.length > 0 ? ` Hardly any comes from ${listText(rest)}.` : '';
  return `Most of the doubt comes from ${first}${next}.${idle}`;
}

/** The levelled spots, the best first, a sentence each; none where only one spot has a known level of water. */
export function spotWords({ result }: Report, units: UnitSystem): string[] {
  const size = (value: number) => formatQuantity(value, 'length', units);
  return result.spots.map(
    ({ spot, option, depth_m, water_depth_m, spread_m, reason }) =>
      `${spot}: ${ADVICE_NAMES[option].toLowerCase()}${depth_m > 0 ? `, ${size(depth_m)} deep` : ''}. Water ${size(water_depth_m)} below the ground when it was read, give or take ${size(spread_m)}; ${reason}.`,
  );
}

/**
 * The wish, as a question.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a question
 */
export function wishQuestion({ pond }: Report, units: UnitSystem): string {
  const deep = `${formatQuantity(pond.depth_m, 'length', units)} deep`;
  return pond.existing ? `Does it hold, ${deep} as it is?` : `May I dig ${deep}, as wished?`;
}
