/** Words of the trade marked where they first appear, with a link to what they mean. */

import type { Report } from '../contract/index.js';
import { GLOSSARY, type GlossaryEntry } from '../text/glossary.js';
import { html, Markup, NONE } from './markup.js';

/** In these no word is marked: drawings, headings, controls and links. */
const PLAIN =
  /^<(\/?)(?:svg|a|h[1-6]|summary|nav|button|label|select|output|code|caption|th|dt|script|style)\b/;

/** A tag, or what stands between tags; a tag's own text is escaped and holds no bracket. */
const PIECES = /<[^>]*>|[^<]+/g;

const spaced = (words: string) => words.replaceAll(' ', '[ \\u00a0]');

const formsOf = ({ word, plural }: GlossaryEntry) => [word, ...(plural ? [plural] : [])];

const anchorOf = ({ word }: GlossaryEntry) => `word-${word.replaceAll(' ', '-')}`;

/** Names and notes that somebody wrote, as they stand in the markup; one that is no more than a word of the list is none. */
function namesOf({ result, outlet, points, pits, next_door }: Report): string[] {
  const ours = new Set(GLOSSARY.flatMap(formsOf));
  const written = [
    result.survey.name,
    outlet?.name,
    result.drain?.outlet,
    next_door.exit.name,
    ...points.map(({ name }) => name),
    ...pits.flatMap(({ pit, note, photo }) => [pit, note, photo]),
    ...next_door.lowered.map(({ name }) => name),
    ...result.spots.map(({ spot }) => spot),
    ...result.recommendation.measure_next.map(({ where }) => where),
  ];
  return [...new Set(written)]
    .filter(
      (name): name is string => typeof name === 'string' && name !== '' && !ours.has(name.toLowerCase()),
    )
    .map((name) => html`${name}`.html)
    .sort((a, b) => b.length - a.length);
}

/** Marks one piece of markup after another, and lists what was marked. */
interface WordMarker {
  /** @param part - of the page, in its order */
  mark(part: Markup): Markup;
  /** what the marked words mean; empty where none was */
  list(): Markup;
}

/**
 * A marker for one page. It changes no tag and no name from the survey: it puts a link around letters of our own sentences.
 * @param report - of which names are left alone
 * @returns marks and lists
 */
export function wordMarker(report: Report): WordMarker {
  const names = namesOf(report).map((name) => name.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const left = new Set(GLOSSARY);
  const found = new Set<GlossaryEntry>();
  const markText = (piece: string) => {
    if (left.size === 0) return piece;
    const entries = [...left].flatMap((entry) => formsOf(entry).map((form) => ({ entry, form })));
    entries.sort((a, b) => b.form.length - a.form.length);
    const words = entries.map(({ form }) => spaced(form)).join('|');
    // Names first, so that no word is found within one.
    const all = new RegExp([...names, `(?<![\\w&-])(?<word>${words})(?![\\w-])`].join('|'), 'gi');
    return piece.replace(all, (whole: string, ...rest: unknown[]) => {
      const { word } = rest.at(-1) as { word?: string };
      const entry =
        word && entries.find(({ form }) => form === word.toLowerCase().replaceAll('\u00a0', ' '))?.entry;
      if (!entry || !left.delete(entry)) return whole;
      found.add(entry);
      return `<a class="word" href="#${anchorOf(entry)}">${whole}</a>`;
    });
  };
  return {
    mark(part) {
      let plain = 0;
      const marked = part.html.replace(PIECES, (piece) => {
        if (!piece.startsWith('<')) return plain > 0 ? piece : markText(piece);
        const tag = PLAIN.exec(piece);
        if (tag) plain += tag[1] ? -1 : 1;
        return piece;
      });
      return new Markup(marked);
    },
    list() {
      const entries = GLOSSARY.filter((entry) => found.has(entry)).map(
        (entry) => html`<div id="${anchorOf(entry)}"><dt>${entry.word}</dt><dd>${entry.meaning}</dd></div>`,
      );
      return entries.length === 0
        ? NONE
        : html`<details id="words"><summary><h2>Words used here</h2></summary>\n<dl>${entries}</dl>\n</details>`;
    },
  };
}
