/** The public names of the library as its source declares them, by where they are imported from. */
import { relative } from 'node:path';
import ts from 'typescript';
import * as underpond from '../../lib/node.js';
import * as physics from '../../lib/physics.js';
import * as section from '../../lib/section.js';
import { PROJECT } from '../notebook/notebooks.js';

/** A public name. */
export interface Entry {
  name: string;
  /** as it is imported, and the object it belongs to: `underpond`, `underpond/physics soil` */
  from: string;
  kind: 'function' | 'class' | 'constant' | 'type';
  /** below `lib/` */
  file: string;
  room: string;
  /** the declaration as it stands in the source, without the body of a function or class */
  code: string;
  doc: string;
  /** parameters by name; those taken apart have none */
  parameters: (string | undefined)[];
  givesNothing: boolean;
  tags: { name: string; text: string }[];
}

/** What can be imported, by the file that is the front. */
const FRONTS = { index: underpond, node: underpond, section, physics };
type Front = keyof typeof FRONTS;

/** Every public name in alphabetical order, each where it is found first. What `export type *` lets through is no value. */
export function publicApi(): Entry[] {
  const { config } = ts.readConfigFile(`${PROJECT}tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, PROJECT);
  const fronts = Object.keys(FRONTS) as Front[];
  const program = ts.createProgram(
    fronts.map((front) => `${PROJECT}lib/${front}.ts`),
    options,
  );
  const checker = program.getTypeChecker();
  const seen = new Set<ts.Symbol>();
  const entriesOf = (exported: ts.Symbol, from: string, values: object): Entry[] =>
    checker.getExportsOfModule(exported).flatMap((symbol): Entry[] => {
      const own = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      if (own.flags & ts.SymbolFlags.ValueModule)
        return entriesOf(own, `${from} ${symbol.name}`, (values as Record<string, object>)[symbol.name]!);
      if (seen.has(own)) return [];
      seen.add(own);
      const [declared] = own.declarations!;
      const kind = kindOf(declared);
      if (kind !== 'type' && !(symbol.name in values)) return [];
      const file = relative(`${PROJECT}lib`, declared.getSourceFile().fileName);
      const text = (tag: ts.JSDocTagInfo) => ts.displayPartsToString(tag.text);
      return [
        {
          name: symbol.name,
          from,
          kind,
          file,
          room: file.split('/')[0],
          code: codeOf(declared),
          doc: ts.displayPartsToString(own.getDocumentationComment(checker)),
          parameters: ts.isFunctionDeclaration(declared)
            ? declared.parameters.map(({ name }) => (ts.isIdentifier(name) ? name.text : undefined))
            : [],
          givesNothing: ts.isFunctionDeclaration(declared) && /\bvoid\b/.test(declared.type?.getText() ?? ''),
          tags: own.getJsDocTags(checker).map((tag) => ({ name: tag.name, text: text(tag) })),
        },
      ];
    });
  return fronts
    .flatMap((front) => {
      const source = checker.getSymbolAtLocation(program.getSourceFile(`${PROJECT}lib/${front}.ts`)!)!;
      return entriesOf(source, front === 'index' ? 'underpond' : `underpond/${front}`, FRONTS[front]);
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

function kindOf(declared: ts.Declaration): Entry['kind'] {
  if (ts.isFunctionDeclaration(declared)) return 'function';
  if (ts.isClassDeclaration(declared)) return 'class';
  return ts.isVariableDeclaration(declared) ? 'constant' : 'type';
}

function codeOf(declared: ts.Declaration): string {
  const text = declared.getText();
  const end = ts.isFunctionDeclaration(declared)
    ? declared.body!.getStart() - declared.getStart()
    : ts.isClassDeclaration(declared)
      ? text.indexOf('{')
      : text.length;
  return text
    .slice(0, end)
    .replace(/^export (async )?/, '')
    .trim();
}
