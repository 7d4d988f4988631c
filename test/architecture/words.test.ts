/** Physics and decision yield codes with values: what is said is made of them in one room, in either system of units. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { BEDS } from '../../lib/drain/index.js';
import { ROOMS } from './rooms.js';

const lib = fileURLToPath(new URL('../../lib/', import.meta.url));

/** Rooms that know neither words nor units of the reader. */
const WORDLESS = [
  'uplift',
  'drain',
  ...ROOMS.slice(ROOMS.indexOf('contract'), ROOMS.indexOf('decision') + 1),
];

/** Names of goods, which prices.csv and the merchant have word for word. */
const GOODS_FILES = ['drain/quantities.ts', 'drain/pipeSizes.ts', 'works/pondGoods.ts'];
const GOODS: readonly string[] = Object.keys(BEDS);
/** Declared cards, whose text is documentation. */
const CARDS = ['method', 'formula'];
/** What the survey does not say, and why it was assumed so: told with the survey's own messages. */
const ASSUMED = ['or', 'add', 'assume'];
const ASSUMED_TABLES = ['UPKEEP', 'OLD_DRAIN'];

function sources(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? sources(path) : path.endsWith('.ts') ? [path] : [];
  });
}

const files = WORDLESS.flatMap((room) =>
  sources(join(lib, room)).map((path) => ({ name: relative(lib, path), code: readFileSync(path, 'utf8') })),
);

/** The text of a literal; what is put into it stands as a word. */
function literal(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isTemplateExpression(node))
    return node.head.text + node.templateSpans.map((span) => `x${span.literal.text}`).join('');
  return undefined;
}

/** Four words and more, one after another as people write them, two of them at least no letter or gap. */
const isProse = (text: string) =>
  (text.match(/(?:[A-Za-z’'-]+[,;:]?\s+){3,}[A-Za-z’'-]+/g) ?? []).some(
    (run) => (run.match(/[A-Za-z]{2,}/g) ?? []).length > 1,
  );

/** Sentences among the literals of a source, but for cards, errors, goods and reasons of what is assumed. */
function sentencesIn(name: string, code: string): string[] {
  const found: string[] = [];
  const called = ({ expression }: ts.CallExpression) =>
    ts.isIdentifier(expression)
      ? expression.text
      : ts.isPropertyAccessExpression(expression) && expression.expression.getText() === 'assume'
        ? expression.name.text
        : '';
  const source = ts.createSourceFile(name, code, ts.ScriptTarget.Latest, true);
  // A helper that takes the meaning of a formula's parameter.
  const meanings = [...code.matchAll(/const (\w+) = \(meaning: string/g)].map((m) => m[1]!);
  const exempt = (node: ts.Node): boolean =>
    (ts.isCallExpression(node) && [...CARDS, ...meanings].includes(called(node))) ||
    (ts.isCallExpression(node) &&
      ts.isPropertyAccessExpression(node.expression) &&
      ASSUMED.includes(called(node))) ||
    (ts.isNewExpression(node) && /Error$/.test(node.expression.getText())) ||
    (ts.isPropertyAssignment(node) && node.name.getText() === 'meaning') ||
    (ts.isVariableDeclaration(node) && ASSUMED_TABLES.includes(node.name.getText())) ||
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isTypeNode(node);
  const visit = (node: ts.Node): void => {
    if (exempt(node)) return;
    const text = literal(node);
    if (text !== undefined && isProse(text) && !GOODS.includes(text)) found.push(text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return GOODS_FILES.includes(name) ? [] : found;
}

describe.each(files)('$name', ({ name, code }) => {
  test('holds no sentence', () => {
    expect(sentencesIn(name, code)).toEqual([]);
  });

  test('imports neither words nor how numbers are written', () => {
    const imports = [...code.matchAll(/import\s+(?:type\s+)?([\s\S]*?)\s+from '([^']+)'/g)];
    for (const [, names, from] of imports) {
      expect(from).not.toMatch(/\/text\//);
      expect(names, from).not.toMatch(/\bformat[A-Z]\w*|\bUnitSystem\b/);
    }
  });
});

test('words rest on the contract and the rooms below it, never on how it was decided', () => {
  const below = ROOMS.slice(0, ROOMS.indexOf('contract') + 1);
  for (const path of sources(join(lib, 'text')))
    for (const [, room] of readFileSync(path, 'utf8').matchAll(/from '\.\.\/(\w+)\//g))
      expect(below, relative(lib, path)).toContain(room);
});

/** Rooms that show what text says: headings, captions, labels and instructions may stand there, values in prose may not. */
const SHOWING = ROOMS.slice(ROOMS.indexOf('figures'));

/** Where values still stand in prose, how many, and why. */
const LEFT: { where: RegExp; why: string; count: number }[] = [
  { where: /^figures\/drawing\.ts$/, why: 'style sheet', count: 1 },
];

/** A template that puts a value into prose: between tags, errors and what tells one apart. */
function valuesInProse(name: string, code: string): string[] {
  const found: string[] = [];
  const source = ts.createSourceFile(name, code, ts.ScriptTarget.Latest, true);
  const visit = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && /Error$|^Misuse$/.test(node.expression.getText())) return;
    if (ts.isCallExpression(node) && CARDS.includes(node.expression.getText())) return;
    if (ts.isTemplateExpression(node)) {
      const tellsError = node.templateSpans.some(({ expression }) =>
        /\bmessageOf\(|\berror\b|\.message\b/.test(expression.getText()),
      );
      const text =
        node.head.text + node.templateSpans.map(({ literal: { text } }) => `\u0001${text}`).join('');
      // Two words at least are not grown together with a value, as those of an id or a path are.
      const spelt = (part: string) =>
        part.split(/\s+/).filter((word) => !word.includes('\u0001') && /[A-Za-z]{2}/.test(word));
      const prose = text
        .split(/<[^>]*>/)
        .filter(
          (part) =>
            part.includes('\u0001') && spelt(part).length > 1 && isProse(part.replaceAll('\u0001', 'x')),
        );
      if (!tellsError) found.push(...prose.slice(0, 1));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const shown = SHOWING.flatMap((room) =>
  sources(join(lib, room)).map((path) => ({ name: relative(lib, path), code: readFileSync(path, 'utf8') })),
).map(({ name, code }) => ({ name, found: valuesInProse(name, code) }));
const reasonOf = (name: string) => LEFT.find(({ where }) => where.test(name));

test('no value is put into prose where text is shown, but where it is named why', () => {
  expect(shown.filter(({ name, found }) => found.length > 0 && !reasonOf(name))).toEqual([]);
});

test.each(LEFT)('$why: $count, which only becomes fewer', ({ where, count }) => {
  const mine = shown.filter(({ name }) => reasonOf(name)?.where === where);
  expect(mine.reduce((sum, { found }) => sum + found.length, 0)).toBe(count);
});

describe('the search for values in prose', () => {
  const PUT = '$' + '{put}';
  test.each([
    [`const told = \`the liner lifts in ${PUT} of years\`;`, 1],
    [`const told = \`<p>the liner lifts in ${PUT} of years</p>\`;`, 1],
    [`const told = html\`<b>x</b> lay it down to ${PUT} and stop\`;`, 1],
    [`const told = \`<h3>When something goes wrong here</h3>${PUT}\`;`, 0],
    ["const told = 'the liner lifts in some years';", 0],
    [`const path = \`M${PUT} ${PUT}L${PUT} ${PUT}\`;`, 0],
    [`throw new RangeError(\`the liner lifts in ${PUT} of years\`);`, 0],
    ['tell(`the copy cannot be made: $' + '{messageOf(error)}`);', 0],
  ])('%s: %i', (code, count) => {
    expect(valuesInProse('page/planted.ts', code)).toHaveLength(count);
  });
});

describe('the search for sentences', () => {
  const PUT = '$' + '{put}';
  test.each([
    ["const why = 'the outlet is too high for that';", 1],
    [`const why = \`the outlet ${PUT} lies too high\`;`, 1],
    [`const why = \`${PUT} holds the ${PUT}\`;`, 1],
    ["add('empty-only-in/free', { text: 'Empty it only in the driest months.' });", 1],
    ["list.add('the outlet is too high for that');", 1],
    ["throw new RangeError('the outlet is too high for that');", 0],
    ["const card = method({ title: 'The outlet is too high for that' });", 0],
    ["assume.add('rain', 1, 'm', 'a heavy summer storm: 30 mm');", 0],
    [`/** The outlet is too high for that. */ const key = \`${PUT} ${PUT}\`;`, 0],
    ["const by = 'pea gravel on concrete sand';", 0],
  ])('%s: %i', (code, count) => {
    expect(sentencesIn('decision/planted.ts', code)).toHaveLength(count);
  });
});
