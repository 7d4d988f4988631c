/** What the file holds, said before it is handed on. */
import { heldInFile, leftOutOfCopy } from '../text/handedOn.js';
import { heldWords, type PageContent, PRIVATE_PARTS, type PrivatePart } from './leaveOut.js';
import { html, type Markup, paragraph, section } from './markup.js';

const NAMES: Record<PrivatePart, string> = {
  photos: 'my photos',
  looks: 'my looks into the holes',
  prices: 'my prices',
};

/** Whether a part is there to be left out. */
const HAS: Record<PrivatePart, (content: Pick<PageContent, 'survey' | 'photos'>) => boolean> = {
  photos: ({ photos }) => Object.keys(photos).length > 0,
  looks: ({ survey }) => (survey?.looks.length ?? 0) > 0,
  prices: ({ survey }) => (survey?.prices.length ?? 0) > 0,
};

/**
 * The list of what the page holds, and the form that saves a copy without some of it, which the page's script brings
 * to life.
 * @param leftOut what was left out when the page was made
 */
export function heldSection(
  content: Pick<PageContent, 'survey' | 'photos'>,
  leftOut: readonly PrivatePart[],
): Markup {
  const held = heldWords(content);
  const named = (parts: readonly PrivatePart[]) =>
    parts.map((part) => NAMES[part].replace('my', 'the')).join(', ');
  const choices = PRIVATE_PARTS.filter((part) => HAS[part](content)).map(
    (part) => html`<label><input type="checkbox" value="${part}"> leave out ${NAMES[part]}</label> `,
  );
  return section(
    'held',
    'What this file holds',
    paragraph(
      held.length === 0
        ? 'It holds no survey: what stands in it can be read, and nothing more.'
        : heldInFile(held),
    ),
    leftOut.length > 0 ? paragraph(leftOutOfCopy(named(leftOut))) : '',
    choices.length > 0
      ? html`<form class="share" hidden>${choices}<button>Save a copy without</button></form>`
      : '',
    choices.length > 0
      ? paragraph(
          'A copy without the looks cannot be tried with other figures: what it shows stays as it is.',
          'note',
        )
      : '',
  );
}
