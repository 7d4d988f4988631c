/** The claims of the pond card and of the terminal's lines. */
import { LENGTH, lengthIn, monthIn, percentIn, WHEN, whenIn } from './amounts.js';
import { claimer } from './claim.js';
import { plain } from './html.js';
import { emptied } from './page.js';
import type { Told } from './survey.js';

export function cardClaims(html: string, units: string, told: Told) {
  const said = claimer(`card in ${units}`);
  const bare = html.replace(/<(style|svg)\b[\s\S]*?<\/\1>/g, '');
  if (/No pond is to be dug here/.test(bare)) {
    said.says('go', 'card', 'No pond is to be dug here', 'never', 'elsewhere');
    return said.claims;
  }
  const waits = /Not to be dug yet/.test(bare);
  if (!told.existing)
    said.says('go', 'card', waits ? 'Not to be dug yet' : '(months)', waits ? 'wait' : 'dig');
  const of = /As wished, with nothing built/.test(bare) ? 'no-drain' : told.of;
  const full = told.full + (of === 'no-drain' ? 0 : told.raise);
  for (const [, row] of bare.matchAll(/<tr><td>([\s\S]*?)<\/tr>/g)) {
    const cells = [...row!.matchAll(/<td(?: class="no")?>([\s\S]*?)<\/td>/g)].map(([, cell]) => plain(cell!));
    const month = monthIn(plain(/^(.*?)<\/abbr>/.exec(row!)![1]!));
    cells.forEach((cell, at) => {
      const blocked = at === 1;
      const about = `${blocked ? 'lowest blocked' : 'lowest'}|${of}|${month}`;
      const where = `${month}${blocked ? ' blocked' : ''}`;
      const down = new RegExp(`(${LENGTH}) below full`).exec(cell)?.[1];
      if (/^may be emptied/.test(cell)) said.says(about, where, cell, 'floor');
      else if (down) {
        const below = lengthIn(down, 'down', true);
        said.span(about, where, cell, { low: full - below.high - 0.01, high: full - below.low });
      } else said.span(about, where, cell, { low: full - 0.02, high: Number.POSITIVE_INFINITY });
      if (blocked) return;
      const days = /(\d+) (days?|hours?) at most/.exec(cell);
      const limited = days !== null || /at most/.test(cell);
      const may = /^(may be emptied|empty)/.test(cell);
      said.says(
        `empty|${of}|${month}`,
        where,
        cell,
        ...(may ? (limited ? ['limited', 'briefly'] : ['free']) : ['no']),
      );
      said.says(`even full|${of}|${month}`, where, cell, cell === 'not safe even full' ? 'lifts' : 'holds');
    });
  }
  return said.claims;
}

const GO: [RegExp, string][] = [
  [/^Measure first/, 'wait'],
  [/^Another spot/, 'elsewhere'],
  [/^Do not dig/, 'never'],
];

export function lineClaims(lines: string[], units: string, told: Told) {
  const said = claimer(`terminal in ${units}`);
  const [advice = '', ...rest] = lines;
  const of = (name: string) => rest.find((line) => line.startsWith(name))?.slice(11) ?? '';
  said.says('go', 'advice', advice, GO.find(([words]) => words.test(advice))?.[1] ?? 'dig');
  const dug = new RegExp(`dug (${LENGTH}) deep`).exec(advice)?.[1];
  const whole = new RegExp(`(${LENGTH}) from rim to floor`).exec(advice)?.[1];
  if (dug) said.span('dug', 'advice', advice, lengthIn(dug, 'near'));
  if (whole ?? dug) said.span('depth', 'advice', advice, lengthIn((whole ?? dug)!, 'near'));
  const raised = new RegExp(`raised by (${LENGTH})`).exec(advice)?.[1];
  if (raised) said.span('raise', 'advice', advice, lengthIn(raised, 'near'));
  said.says('vent', 'advice', advice, /gas vent/i.test(advice) ? 'yes' : 'no');
  const full = of('in use');
  const by = / with nothing done$/.test(full) ? 'no-drain' : told.option;
  const size = new RegExp(`(${LENGTH}) or more`).exec(full)?.[1];
  if (by && size) {
    const span = lengthIn(size, 'down');
    said.span(
      `to spare|${by}`,
      'full',
      full,
      /too low/.test(full) ? { low: -span.high, high: -span.low } : span,
    );
  }
  const then = new RegExp(`(${LENGTH}) to spare as it is then kept`).exec(full)?.[1];
  if (then) said.span(`margin|${told.of}|drawn-down|year`, 'full', full, lengthIn(then, 'down'));
  const empty = of('emptied');
  const who = / with nothing done$/.test(empty) ? 'no-drain' : told.of;
  const when = /when the dip pipe shows/.test(empty) ? null : new RegExp(WHEN).exec(empty);
  if (when) emptied(said, 'emptied', empty, who, whenIn(when));
  const next = of('next');
  const change = /may change the answer \((.*?)\)/.exec(next)?.[1];
  said.says('to measure', 'next', next, /^nothing tried would change/.test(next) ? 'no' : 'yes');
  if (change) said.span('chance to change', 'next', next, percentIn(change));
  return said.claims;
}
