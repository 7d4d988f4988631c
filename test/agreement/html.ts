/** A page taken apart as a reader sees it: headings, paragraphs, tables, and the words of figures. */

export interface Page {
  /** text of the first element with that class, or of the section with that heading */
  order: string;
  margin: string;
  facts: Map<string, string>;
  /** items of the steps */
  steps: string[];
  stepsTitle: string;
  /** paragraphs of a section, each after its heading */
  paragraphs: Map<string, string>;
  tables: { name: string; columns: string[]; rows: string[][] }[];
  figures: string[];
  /** the year in words */
  months: string[];
}

const ENTITIES: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Text of a piece of HTML; a unit keeps to its number by a space like any other. */
export function plain(html: string): string {
  return html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&(#?\w+);/g, (whole, name) => ENTITIES[name] ?? whole)
    .replaceAll('\u00a0', ' ')
    .replace(/ {2,}|\n/g, ' ')
    .trim();
}

const all = (html: string, pattern: RegExp): string[] =>
  [...html.matchAll(pattern)].map(([, inside]) => inside!);

export function pageOf(html: string): Page {
  const bare = html.replace(/<(script|style)\b[\s\S]*?<\/\1>/g, '');
  const header = /<header>[\s\S]*?<\/header>/.exec(bare)?.[0] ?? '';
  const paragraphs = all(header, /<p(?:\s[^>]*)?>([\s\S]*?)<\/p>/g);
  const steps = /<section id="do"[\s\S]*?<\/section>/.exec(bare)?.[0] ?? '';
  const year = /<details class="months">[\s\S]*?<\/details>/.exec(bare)?.[0] ?? '';
  return {
    order: plain(/<p class="order">([\s\S]*?)<\/p>/.exec(header)?.[1] ?? ''),
    margin: plain(paragraphs[2] ?? ''),
    facts: new Map(
      [...header.matchAll(/<dt>(.*?)<\/dt><dd>([\s\S]*?)<\/dd>/g)].map(([, title, words]) => [
        plain(title!),
        plain(words!),
      ]),
    ),
    stepsTitle: plain(/<h2[^>]*>(.*?)<\/h2>/.exec(steps)?.[1] ?? ''),
    steps: all(steps, /<li>((?:(?!<ul>)[\s\S])*?)<\/li>/g).map(plain),
    paragraphs: new Map(
      [...bare.matchAll(/<h3[^>]*>([^<]*)<\/h3>\s*<p>([\s\S]*?)<\/p>(?:\s*<p>([\s\S]*?)<\/p>)?/g)].map(
        ([, title, first, second]) => [plain(title!), plain(`${first} ${second ?? ''}`)],
      ),
    ),
    tables: all(bare, /(<table[\s\S]*?<\/table>)/g).map((table) => ({
      name: plain(/<caption>([\s\S]*?)<\/caption>/.exec(table)?.[1] ?? ''),
      columns: all(table, /<th [^>]*scope="col"[^>]*>([\s\S]*?)<\/th>/g).map(plain),
      rows: all(table.replace(/<thead[\s\S]*?<\/thead>/, ''), /<tr[^>]*>([\s\S]*?)<\/tr>/g).map((row) =>
        all(row, /<t[dh][^>]*>([\s\S]*?)<\/t[dh]>/g).map(plain),
      ),
    })),
    figures: all(bare, /<svg [^>]*aria-label="([^"]*)"/g).map(plain),
    months: all(year, /<li>([\s\S]*?)<\/li>/g).map(plain),
  };
}
