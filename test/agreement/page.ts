/** The claims of a page: its first screen, its steps, its sentences. Tables and figures are read beside. */
import {
  hoursIn,
  LENGTH,
  lengthIn,
  MONTH,
  MONTHS_SAID,
  monthIn,
  monthsIn,
  oftenIn,
  percentIn,
  placeIn,
  WHEN,
  type When,
  whenIn,
  YEAR,
} from './amounts.js';
import { type Claimer, claimer } from './claim.js';
import { figureClaims } from './figures.js';
import { type Page, pageOf } from './html.js';
import { OPTIONS, TOGETHER, type Told } from './survey.js';
import { tableClaims } from './tables.js';
import { yearClaims } from './yearText.js';

export function pageClaims(html: string, units: string, told: Told) {
  const said = claimer(`page in ${units}`);
  const page = pageOf(html);
  orderClaims(page, told, said);
  factClaims(page, told, said);
  ruleClaims(page.steps, page.stepsTitle, told, said);
  sentenceClaims(page, told, said);
  figureClaims(page.figures, told, said);
  tableClaims(page.tables, told, said);
  yearClaims(page.months, told, said);
  return said.claims;
}

const BUILT: [RegExp, string][] = [
  [/without a drain/, 'no-drain'],
  [/with a drain uphill/, 'cutoff-drain'],
  [/with a drain to /, 'drain-to-outlet'],
  [/with a drain and a pump/, 'drain-to-sump'],
  [/with a concrete slab/, 'ballast'],
  [/raised/, 'raise-pond'],
  [/with rain water kept away/, 'surface-water-only'],
];

function orderClaims({ order, margin }: Page, told: Told, said: Claimer) {
  const at = 'order';
  const go = /^(Yes|Leave it|Rebuild it|Keep the old drain|Let the water out)/.test(order)
    ? 'dig'
    : /^Not yet/.test(order)
      ? 'wait'
      : /^(Not (here|at this spot)|It does not hold, and nothing)/.test(order)
        ? 'elsewhere'
        : /^No: (do not dig|change nothing)/.test(order)
          ? 'never'
          : undefined;
  if (!go) throw new Error(`an order that nobody can read: '${order}'`);
  said.says('go', at, order, go);
  const depth = new RegExp(`^Yes, (?:but only )?(${LENGTH}) deep`).exec(order)?.[1];
  if (depth) said.span('depth', at, order, lengthIn(depth, 'near'));
  const raised = new RegExp(`raised (${LENGTH})`).exec(order)?.[1];
  if (raised) said.span('raise', at, order, lengthIn(raised, 'near'));
  if (go !== 'dig') return;
  if (/^(Yes|Rebuild)/.test(order)) {
    if (!raised) said.span('raise', at, order, { low: 0, high: 0 });
    const built = BUILT.find(([words]) => words.test(order))?.[1];
    if (built) said.says('built', at, order, built);
    said.says('kept out', at, order, /rain water kept away/.test(order) ? 'yes' : 'no');
  }
  if (/^(Yes|Leave|Rebuild)/.test(order))
    said.says('vent', at, order, /with a gas vent/.test(order) ? 'yes' : 'no');
  if (/^Leave/.test(order)) said.says('built', at, order, 'no-drain');
  if (/^(Keep|Let)/.test(order)) return;
  const only = new RegExp(`emptied (?:only )?${WHEN}`).exec(order);
  const pipe = /emptied only when the dip pipe/.test(order);
  const never = /never emptied/.test(order);
  if (pipe || never) said.says('never', at, order, pipe ? 'by the pipe' : 'never');
  // Done otherwise in something else than months: of the months it says nothing.
  if (/ if it is /.test(order) && !only) return;
  // Of a pond that is never emptied by wish the steps tell when it may be.
  if (told.neverEmptied && !only && !pipe && !never) return;
  emptied(said, at, order, told.of, pipe || never ? NEVER : only ? whenIn(only) : { free: YEAR, brief: [] });
  const deepest = new RegExp(`deeper than (${LENGTH}) `).exec(margin)?.[1];
  const option = told.option ?? 'no-drain';
  // A chance a year is none of a dig, nor of a drain that lacks something.
  said.says('edge by the year', 'kinds', 'only the liner fails by the year', 'no');
  if (
    / (year|years)[ .]/.test(margin) &&
    /^(Dig to that depth|Stop there)/.test(margin) &&
    !/liner lifts/.test(margin)
  )
    said.says('edge by the year', 'margin', margin, 'yes');
  if (deepest) said.span(`safe depth|${option}`, 'margin', margin, lengthIn(deepest, 'down'));
}

/** Waters half a millimetre apart are level, and an allowed emptying may lack as much. */
const closeTo = ({ low, high }: { low: number; high: number }) => ({ low: low - 5e-4, high });

const NEVER: When = { free: [], brief: [] };

/** It may be emptied in those months, in some of them for a time only, and in no other. */
export function emptied(
  said: Claimer,
  place: string,
  text: string,
  of: string,
  { free, brief, timed = [], hours }: When,
) {
  const mayIn = (month: number) => {
    if (timed.includes(month)) return ['free', 'limited', 'briefly'];
    return free.includes(month) ? ['free', 'limited'] : brief.includes(month) ? ['briefly'] : ['no'];
  };
  for (const month of YEAR) {
    said.says(`empty|${of}|${month}`, place, text, ...mayIn(month));
    if (hours && (brief.includes(month) || timed.includes(month)))
      said.span(`hours|${of}|${month}`, place, text, hours);
  }
}

const STATE: Record<string, string> = {
  full: 'full',
  'as low as it gets in use': 'drawn-down',
  emptied: 'emptied',
  'emptied with the outlet in flood': 'outlet-flood',
};

function factClaims({ facts }: Page, told: Told, said: Claimer) {
  const chance = facts.get('How often it fails') ?? '';
  const bare = chance.startsWith('As wished, with nothing done');
  const fails = /fails (.*?)(?: \(|\.(?: |$))/.exec(chance)?.[1];
  if (fails) said.span(`often|${bare ? 'no-drain' : told.of}`, 'how often', chance, oftenIn(fails));
  const other = new RegExp(`Emptied in (${MONTH}), which is allowed, it would fail (.*?)\\.`).exec(chance);
  if (other)
    said.span(`chance|${told.of}|emptied|${monthIn(other[1]!)}`, 'how often', chance, oftenIn(other[2]!));
  // Of the wish used as wished the chance of the option is the same one.
  const option = bare ? 'no-drain' : told.option;
  if (fails && option && (bare || told.atWish))
    said.span(`risk|${option}`, 'how often', chance, oftenIn(fails));
  const hand = facts.get('Safety margin') ?? '';
  const found = new RegExp(
    `^With the pond (.*?)(?: in (${MONTH}))?( and nothing done)?, the highest water of 1 year in (\\d+)( below the clay)? (stays|stands) (${LENGTH}) (below|too high)`,
  ).exec(hand);
  if (found) {
    const [, state, month, nothing, , clay, , size, side] = found;
    const span = lengthIn(size!, side === 'below' ? 'down' : 'up', true);
    const of = nothing ? 'no-drain' : told.of;
    said.span(
      `margin|${of}|${clay ? 'seam-' : ''}${STATE[state!]}|${month ? monthIn(month) : 'year'}`,
      'what is in hand',
      hand,
      side === 'below' ? span : { low: -span.high, high: -span.low },
    );
    const less = new RegExp(`Emptied in (${MONTH}), which is allowed, it would stay (${LENGTH}) below`).exec(
      hand,
    );
    if (less)
      said.span(
        `margin|${of}|emptied|${monthIn(less[1]!)}`,
        'what is in hand',
        hand,
        closeTo(lengthIn(less[2]!, 'down', true)),
      );
    const brief = new RegExp(
      `Emptied (?:in|from) (${MONTHS_SAID}), time alone keeps it down: no more than (.*?)\\.`,
    ).exec(hand);
    for (const month of brief ? monthsIn(brief[1]!) : []) {
      said.says(`empty|${of}|${month}`, 'what is in hand', hand, 'briefly');
      const { low } = hoursIn(brief![2]!);
      said.span(`hours|${of}|${month}`, 'what is in hand', hand, { low, high: Number.POSITIVE_INFINITY });
    }
  } else if (!/^Nothing (?:can be told|is in hand as wished)/.test(hand))
    throw new Error(`nobody can read '${hand}'`);
  const next = facts.get('Next') ?? '';
  said.says('to measure', 'next', next, /could change most|^Add what you find/.test(next) ? 'yes' : 'no');
}

/** Rules of use as they are written; on the page and in `result.json`. */
export function ruleClaims(steps: string[], title: string, told: Told, said: Claimer) {
  said.says(
    'go',
    'steps',
    title,
    ...(title === 'Do this' ? ['dig', 'wait'] : ['wait', 'elsewhere', 'never']),
  );
  const lifts: number[] = [];
  for (const step of steps) {
    const counted = new RegExp(`^(${LENGTH}) deep, counted down from the lowest old ground`).exec(step);
    if (counted) said.span('dug', 'steps', step, lengthIn(counted[1]!, 'near'));
    const dug = new RegExp(
      `^No deeper than (${LENGTH}) below the lowest ground at the rim(?:, counted from the rim as raised by (${LENGTH}))?`,
    ).exec(step);
    if (dug) said.span('depth', 'steps', step, lengthIn(dug[1]!, 'near'));
    if (dug && !told.existing)
      said.span('raise', 'steps', step, dug[2] ? lengthIn(dug[2], 'near') : { low: 0, high: 0 });
    const only = new RegExp(`Empty it only ${WHEN}(, and read)?`).exec(step);
    // Of months in which it may be on any day that is how long it is planned; where the time is the limit, read first.
    if (only && !only[3] && !only[5]) only[2] = '';
    if (only) emptied(said, 'steps', step, told.of, whenIn(only));
    const not = new RegExp(`(?:Do not|Never) empty it (?:in|from) (${MONTHS_SAID})(.*)`).exec(step);
    if (not) {
      for (const month of not[1] === 'any month' ? YEAR : monthsIn(not[1]!))
        said.says(`empty|${told.of}|${month}`, 'steps', step, 'no');
      if (not[1] === 'any month')
        said.says('never', 'steps', step, /without reading/.test(not[2]!) ? 'by the pipe' : 'never');
    }
    const above = /in the worst month no lower than (.*?)\.$/.exec(step)?.[1];
    if (above) said.span('keep above', 'steps', step, placeIn(above, 'up'));
    const full = new RegExp(`too high even for the full pond (?:in |from )?(${MONTHS_SAID})`).exec(step)?.[1];
    if (full) lifts.push(...monthsIn(full));
  }
  for (const month of lifts)
    said.says(`even full|${told.of}|${month}`, 'steps', 'even full it may lift', 'lifts');
}

const WITH: [RegExp, string][] = [
  [/^With no drain/, 'no-drain'],
  [/^With surface water kept out/, 'surface-water-only'],
  [/^With a cut-off drain uphill/, 'cutoff-drain'],
  [/^With the drain to an outlet/, 'drain-to-outlet'],
  [/^With the drain to a pumped sump/, 'drain-to-sump'],
  [/^With the pond raised/, 'raise-pond'],
  [/^With the slab/, 'ballast'],
];
/** Words split into the part of each option. */
const parts = (words: string) => words.split(/(?<=[.)]) (?=With )/);
const optionOf = (part: string) =>
  /^With [^.]*? and (?:surface water kept out|the pond raised)\b/.test(part)
    ? TOGETHER
    : WITH.find(([words]) => words.test(part))?.[1];

function sentenceClaims({ paragraphs }: Page, told: Told, said: Claimer) {
  const [wish = ''] = [...paragraphs]
    .filter(([title]) => /^(May I dig|Does it hold)/.test(title))
    .map(([, words]) => words);
  for (const [, name, may] of wish.matchAll(
    /[Ww]ith (nothing (?:else )?done|what is recommended \((.*?)\)): (?=no|yes)/g,
  )) {
    const option = name!.startsWith('nothing')
      ? 'no-drain'
      : / and |, /.test(may!)
        ? TOGETHER
        : OPTIONS[may!]!;
    const answer = wish.slice(wish.indexOf(`ith ${name}: `)).split(': ')[1]!;
    safeDepth(said, 'as wished', option, answer.replace(/ at least.*/, ' at least'));
  }
  const advice = wish.slice(wish.search(/(?:yes|no)[^.]*\d[^.]*\. (?!But)|\. (?=[A-Z][^.]*dug)/));
  const dug = new RegExp(
    `, dug (${LENGTH}) deep(?: and raised by (${LENGTH}): (${LENGTH}) from rim to floor)?\\.`,
  ).exec(advice);
  if (dug) said.span('dug', 'advice', advice.slice(0, 80), lengthIn(dug[1]!, 'near'));
  if (dug) said.span('depth', 'advice', advice.slice(0, 80), lengthIn(dug[3] ?? dug[1]!, 'near'));
  if (dug?.[2]) said.span('raise', 'advice', advice.slice(0, 80), lengthIn(dug[2], 'near'));
  if (/No drain is needed|and no drain is needed/.test(wish))
    said.says(
      'built',
      'reason',
      'No drain is needed',
      'no-drain',
      'surface-water-only',
      'raise-pond',
      'ballast',
    );
  if (/empty it only when the dip pipe shows/.test(wish))
    said.says('never', 'reason', 'empty it only when the dip pipe shows the water below', 'by the pipe');

  for (const part of parts(paragraphs.get('When it is full') ?? '')) {
    const option = optionOf(part);
    const size = new RegExp(`(${LENGTH}) or more`).exec(part)?.[1];
    if (!option || !size) continue;
    const span = lengthIn(size, 'down');
    const below = /rises|too low/.test(part);
    said.span(
      `to spare|${option}`,
      'when it is full',
      part,
      below ? { low: -span.high, high: -span.low } : span,
    );
  }
  for (const part of parts(paragraphs.get('When it is emptied') ?? '')) {
    const option = optionOf(part);
    if (!option) continue;
    const of =
      option === told.option && (option !== 'no-drain' || !told.asWished) && part.match(/may be/)
        ? told.of
        : option;
    const bare = option === 'no-drain' && !(told.option === 'no-drain' && lastOf(paragraphs, part));
    const who = bare ? 'no-drain' : of;
    const only = new RegExp(`may be emptied (?:only )?${WHEN}`).exec(part);
    if (only) emptied(said, 'when it is emptied', part, who, whenIn(only));
    const level = new RegExp(`in (${MONTH}) its level must not fall below (${LENGTH})`).exec(part);
    if (level)
      said.span(`lowest|${who}|${monthIn(level[1]!)}`, 'when it is emptied', part, lengthIn(level[2]!, 'up'));
  }
  const change = /\(chance (.*?)\):/.exec(paragraphs.get('What is not known') ?? '')?.[1];
  if (change) said.span('chance to change', 'what is not known', change, percentIn(change));
}

/** Of two that speak of no drain the last is of what is recommended. */
function lastOf(paragraphs: Map<string, string>, part: string): boolean {
  return parts(paragraphs.get('When it is emptied') ?? '').at(-1) === part;
}

/** `at no depth`, `1.25 m`, `2.00 m at least`. */
export function safeDepth(said: Claimer, place: string, option: string, words: string) {
  const about = `safe depth|${option}`;
  if (/at no depth|not even shallow|not safe at any depth/.test(words)) {
    said.span(about, place, words, { low: 0, high: 0 });
    return;
  }
  const size = new RegExp(LENGTH).exec(words)?.[0];
  if (size) said.span(about, place, words, lengthIn(size, 'down'));
}
