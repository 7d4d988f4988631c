/** The types that the fronts hand out, as their declarations have them. */
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const DIST = fileURLToPath(new URL('../../dist/', import.meta.url));
export const FRONTS = ['node.d.ts', 'physics.d.ts', 'section.d.ts'].map((name) => DIST + name);

const program = ts.createProgram(FRONTS, {
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  target: ts.ScriptTarget.ES2023,
  strict: true,
  types: [],
});
const checker = program.getTypeChecker();

/** Adds the declared types that are met on the way from a type to all that it holds. */
function walk(type: ts.Type, seen: Set<ts.Type>, found: Map<string, boolean>): void {
  if (seen.has(type)) return;
  seen.add(type);
  const declared = type.symbol?.declarations?.find(
    (each) => ts.isInterfaceDeclaration(each) || ts.isClassDeclaration(each) || ts.isEnumDeclaration(each),
  );
  const file = declared?.getSourceFile().fileName;
  // What a package or the language itself declares is its own affair.
  if (declared && !file!.startsWith(DIST)) return;
  if (declared)
    found.set(
      `${relative(DIST, file!).replace('.d.ts', '.ts')}: ${type.symbol.name}`,
      (ts.getCombinedModifierFlags(declared) & ts.ModifierFlags.Export) !== 0,
    );
  const parts = [
    ...(type.isUnionOrIntersection() ? type.types : []),
    ...(checker.isArrayType(type) || checker.isTupleType(type) || declared
      ? checker.getTypeArguments(type as ts.TypeReference)
      : []),
    ...checker.getIndexInfosOfType(type).map((each) => each.type),
    ...type.getCallSignatures().map((each) => each.getReturnType()),
    ...checker.getPropertiesOfType(type).map((each) => checker.getTypeOfSymbol(each)),
  ];
  for (const part of parts)
    if (part.flags & (ts.TypeFlags.Object | ts.TypeFlags.UnionOrIntersection)) walk(part, seen, found);
}

/** Interfaces and classes that a front hands out, `file: name`; whether another file can name them. */
export function handedOut(front: string): Map<string, boolean> {
  const found = new Map<string, boolean>();
  const seen = new Set<ts.Type>();
  for (const name of checker.getExportsOfModule(
    checker.getSymbolAtLocation(program.getSourceFile(front)!)!,
  )) {
    const symbol = name.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(name) : name;
    if (symbol.flags & (ts.SymbolFlags.Value | ts.SymbolFlags.Namespace))
      walk(checker.getTypeOfSymbol(symbol), seen, found);
    if (symbol.flags & ts.SymbolFlags.Type) walk(checker.getDeclaredTypeOfSymbol(symbol), seen, found);
  }
  return found;
}
