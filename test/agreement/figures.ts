/** The claims of the figures, by what each tells whoever cannot see it. */
import { LENGTH, lengthIn, MONTH, monthIn, oftenIn, percentIn, YEAR } from './amounts.js';
import type { Claimer } from './claim.js';
import { safeDepth } from './page.js';
import { OPTIONS, TOGETHER, type Told } from './survey.js';

export function figureClaims(figures: string[], told: Told, said: Claimer) {
  for (const label of figures) {
    if (label.startsWith('Which water wins?')) waters(label, told, said);
    if (label.startsWith('How deep with what?')) depths(label, told, said);
    if (label.startsWith('Chance in a year')) risks(label, said);
    if (label.startsWith('Your year')) year(label, told, said);
  }
}

/** Cases after a description, each `title: what happens`. */
function waters(label: string, told: Told, said: Claimer) {
  neverClaims(label, 'which water', said);
  const pattern = new RegExp(
    `(Full|At its usual low level|(?:Emptied|If emptied) in (${MONTH})), ([^:;]*): [^;]*?, (${LENGTH}|nothing) (to spare|too high); (water below the clay)?`,
    'g',
  );
  for (const [whole, state, month, by, size, side, below] of label.matchAll(pattern)) {
    const of = by === 'nothing done' ? 'no-drain' : told.of;
    const situation = month
      ? `emptied|${monthIn(month)}`
      : state === 'Full'
        ? 'full|year'
        : 'drawn-down|year';
    // Less than a whole centimetre either way.
    const span =
      size === 'nothing'
        ? { low: 0, high: 0.01 }
        : lengthIn(size!, side === 'to spare' ? 'down' : 'up', true);
    said.span(
      `margin|${of}|${below ? 'seam-' : ''}${situation}`,
      'which water',
      whole,
      side === 'to spare' ? span : { low: -span.high, high: -span.low },
    );
  }
}

function neverClaims(words: string, place: string, said: Claimer) {
  if (/only when the dip pipe/.test(words)) said.says('never', place, words, 'by the pipe');
  else if (/never empt/i.test(words)) said.says('never', place, words, 'never');
}

function depths(label: string, told: Told, said: Claimer) {
  const advised = /advised: (.*?)\./.exec(label)?.[1];
  const together = /(?:^|\. )[\w -]+, [\w ,-]+ \(recommended\): (.*?)(?=\. [A-Z]|\.?$)/.exec(label)?.[1];
  if (together && /used as wished/.test(together)) {
    const size = new RegExp(`safe to (${LENGTH})`).exec(together)?.[1];
    if (size) said.span('depth', 'how deep', together, lengthIn(size, 'down'));
  } else if (together) safeDepth(said, 'how deep', TOGETHER, together);
  for (const [name, option] of Object.entries(OPTIONS)) {
    const row = new RegExp(`(?:^|\\. )${name}( \\(recommended\\))?: (.*?)(?=\\. [A-Z]|\\.?$)`, 'i').exec(
      label,
    );
    if (!row) continue;
    const [, mine, words = ''] = row;
    if (/cannot be had/.test(words)) {
      said.says(`possible|${option}`, 'how deep', `${name}: ${words}`, 'no');
      continue;
    }
    said.says(`possible|${option}`, 'how deep', `${name}: ${words}`, 'yes');
    if (mine) said.says('built', 'how deep', `${name}, advised ${advised}`, option);
    if (mine) neverClaims(words, 'how deep', said);
    // Used otherwise than wished its depth is that of the recommendation.
    if (mine && /used as wished/.test(words)) {
      const size = new RegExp(`safe to (${LENGTH})`).exec(words)?.[1];
      if (size) said.span('depth', 'how deep', words, lengthIn(size, 'down'));
      continue;
    }
    safeDepth(said, 'how deep', option, words);
    const fails = /it fails: (.*)/.exec(words)?.[1];
    if (fails && !/dig/.test(fails) && !(mine && !told.atWish) && !/not counted/.test(fails))
      said.span(`risk|${option}`, 'how deep', `${name}: ${fails}`, oftenIn(fails));
  }
}

function risks(label: string, said: Claimer) {
  for (const [name, option] of Object.entries(OPTIONS)) {
    const row = new RegExp(`(?:\\. |; )${name}: (.*?)(?=; [A-Z]|\\. Not possible|\\.?$)`, 'i').exec(
      label,
    )?.[1];
    if (!row) continue;
    safeDepth(said, 'risk and depth', option, row.split(', at the wish')[0]!);
    const risk = /, at the wish (.*?)(?: \(|$)/.exec(row)?.[1];
    if (risk)
      said.span(
        `risk|${option}`,
        'risk and depth',
        row,
        /1 year in/.test(risk) ? oftenIn(risk) : percentIn(risk),
      );
  }
}

function year(label: string, told: Told, said: Claimer) {
  for (const [whole, name, middle, low, high] of label.matchAll(
    /([A-Z][a-z]{2}) ([^(,]*?) \(([^)]*?) to ([^)]*?)\)/g,
  )) {
    const month = monthIn(name!);
    const level = (text: string) =>
      /ground/.test(text) ? { low: -0.0055, high: 0.0055 } : lengthIn(text, 'near');
    said.span(`clay|p50|${month}`, 'your year', whole, level(middle!));
    said.span(`clay|p90|${month}`, 'your year', whole, level(low!));
    said.span(`clay|p10|${month}`, 'your year', whole, level(high!));
  }
  for (const [strip, by, verdicts] of label.matchAll(/Empty it(?:, (.*?))?: (.*?)(?=\. Empty it|\.?$)/g)) {
    const of = !by || by === 'nothing done' ? 'no-drain' : told.of;
    const months = (part: RegExp) => {
      const words = part.exec(verdicts!)?.[1];
      if (words === undefined) return [];
      return words.includes('every month')
        ? YEAR
        : [...words.matchAll(new RegExp(MONTH, 'g'))].map(([name]) => monthIn(name));
    };
    const said3: [string[], number[]][] = [
      [['free'], months(/yes in (.*?)(?:;|$)/)],
      [['limited', 'briefly'], months(/within limits in (.*?)(?:;|$)/)],
      [['no'], months(/(?:^|; )no in (.*?)(?:;|$)/)],
    ];
    for (const [words, those] of said3)
      for (const month of those) said.says(`empty|${of}|${month}`, 'your year', strip, ...words);
  }
}
