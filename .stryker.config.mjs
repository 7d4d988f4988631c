/**
 * Mutation testing of the formulas and of one core file of each physics room, in a copy of the project:
 * `npm install @stryker-mutator/core@9 @stryker-mutator/vitest-runner@9 && npx stryker run .stryker.config.mjs`.
 */
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';

const ROOMS = ['sampling', 'soil', 'climate', 'seepage', 'groundwater', 'uplift', 'drain'];
const CORE = [
  'sampling/percentile',
  'soil/greenAmpt',
  'climate/monthlyBookkeeping',
  'seepage/kirkham',
  'groundwater/columnRun',
  'uplift/linerPressure',
  'drain/partFull',
].map((name) => `lib/${name}.ts`);

/** The `compute` of every formula declared in a file, as Stryker takes a range. */
function computed(path) {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ES2022, true);
  const ranges = [];
  const at = (position) => {
    const { line, character } = file.getLineAndCharacterOfPosition(position);
    return `${line + 1}:${character}`;
  };
  const visit = (node) => {
    if (ts.isPropertyAssignment(node) && node.name.getText() === 'compute')
      ranges.push(`${path}:${at(node.getStart())}-${at(node.end)}`);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return ranges;
}

const formulas = ROOMS.flatMap((room) =>
  readdirSync(`lib/${room}`)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `lib/${room}/${name}`),
)
  .filter((path) => !CORE.includes(path))
  .flatMap(computed);

export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutation.config.ts', related: false },
  mutate: [...CORE, ...formulas],
  mutator: { excludedMutations: ['StringLiteral', 'ObjectLiteral', 'ArrayDeclaration'] },
  ignoreStatic: true,
  coverageAnalysis: 'perTest',
  concurrency: 1,
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: 'out/mutation.json' },
  tempDirName: 'out/stryker',
  thresholds: { high: 90, low: 85, break: 85 },
};
