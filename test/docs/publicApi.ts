/** The public names of the library as its source declares them. */
import { relative } from 'node:path';
import ts from 'typescript';
import * as underpond from '../../lib/node.js';
import { PROJECT } from '../notebook/notebooks.js';

/** A public name. */
export interface Entry {
  name: string;
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

/** Every public name in alphabetical order. What `export type *` lets through is a type and no value. */
export function publicApi(): Entry[] {
  const { config } = ts.readConfigFile(`${PROJECT}tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, PROJECT);
  const program = ts.createProgram([`${PROJECT}lib/node.ts`], options);
  const checker = program.getTypeChecker();
  const entry = checker.getSymbolAtLocation(program.getSourceFile(`${PROJECT}lib/node.ts`)!)!;
  return checker
    .getExportsOfModule(entry)
    .flatMap((symbol): Entry[] => {
      const own = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      const [declared] = own.declarations!;
      const kind = kindOf(declared);
      if (kind !== 'type' && !(symbol.name in underpond)) return [];
      const file = relative(`${PROJECT}lib`, declared.getSourceFile().fileName);
      const text = (tag: ts.JSDocTagInfo) => ts.displayPartsToString(tag.text);
      return [
        {
          name: symbol.name,
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
