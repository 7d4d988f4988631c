import { type Formula, formula, method, type Use, unrecorded } from '../formula/index.js';
import { normalCdf, quantileSorted } from '../sampling/index.js';
import type { LogEstimate } from './estimate.js';
import type { PermeabilityTest } from './fieldTest.js';

export const layerPermeability = method({
  title: 'Permeability of a layer from tests and texture',
  what:
    "Bayes' rule for a log-normal permeability: the table for the texture is the prior, each test is an observation " +
    'with its own spread, and a test that only bounds it (slower than, faster than) cuts the prior there.',
  assumptions: [
    'what differs from hole to hole does not average out: 0.4 in ln stays, however many tests (our choice)',
    'scatter of the tests beyond their own spreads is pooled over all layers with at least two tests, each layer about ' +
      'its own mean',
    'a bound is taken into account by the mean and variance of the cut normal distribution (exact for one bound)',
    'an outlier (more than 2.6 standard deviations, as predicted, from the median of the others) is named and kept: in cracked clay the ' +
      'odd fast test is as likely the truth as the error',
  ],
  source:
    'conjugate normal updating; Rasmussen & Williams 2006, Gaussian Processes for Machine Learning, eqs 3.82–3.87 (from memory)',
});

/** What stays from hole to hole in one layer, standard deviation of the natural logarithm. Our choice. */
export const HOLE_TO_HOLE = 0.4;
const OUTLIER = 2.6;

/** What the table knows of the logarithm, without what stays from hole to hole. */
export const priorVariance = formula({
  title: 'Variance of the logarithm by the table, without what stays from hole to hole',
  symbol: 'v',
  unit: '-',
  expression: 'max(s^2 - h^2, 0.01)',
  parameters: {
    s: { meaning: 'spread of the table, standard deviation of the logarithm', unit: '-', min: 0, max: 4 },
    h: { meaning: 'what stays from hole to hole', unit: '-', min: 0, max: 2 },
  },
  compute: (s: number, h: number) => Math.max(s ** 2 - h ** 2, 0.01),
  validity: 'log-normal',
  source: 'layer permeability, see the methods',
});

const upTo = (n: number) => Array.from({ length: n }, (_, i) => i + 1);
const TEST = { unit: '-', min: 0, max: 4 };

/** Weights by the inverse variance, of table and tests. */
function weighted(v: number, c: number, tests: number[], of: (i: number) => number): number {
  return tests.reduce((sum, s, i) => sum + of(i + 1) / (s ** 2 + c), of(0) / v);
}

/** Arguments k0, v, c, k1, s1, k2, s2 …: values and spreads apart. */
function apart([k0 = 0, v = 1, c = 0, ...tests]: number[]) {
  return {
    k: [k0, ...tests.filter((_, i) => i % 2 === 0)],
    v,
    c,
    s: tests.filter((_, i) => i % 2 === 1),
  };
}

function parametersOf(n: number) {
  return {
    k0: { meaning: 'permeability by the table', unit: 'm/s', min: 1e-12, max: 1 },
    v: { meaning: 'variance of its logarithm', unit: '-', min: 0.01, max: 16 },
    c: { meaning: 'scatter of the tests beyond their own spreads', unit: '-', min: 0, max: 16 },
    ...Object.fromEntries(
      upTo(n).flatMap((i) => [
        [`k${i}`, { meaning: `permeability by test ${i}`, unit: 'm/s', min: 1e-12, max: 1 }],
        [`s${i}`, { meaning: `spread of test ${i}`, ...TEST }],
      ]),
    ),
  };
}

const precision = (n: number) => ['1/v', ...upTo(n).map((i) => `1/(s${i}^2 + c)`)].join(' + ');

/**
 * Permeability of a layer by its table and as many tests.
 * @param n - tests, 1 and more
 * @returns formula of the median, arguments k0, v, c and k, s of every test
 */
export function pooledMedian(n: number): Formula {
  return formula({
    title: `Permeability of a layer by its table and its tests (${n})`,
    symbol: 'K',
    unit: 'm/s',
    expression: `exp((${['log(k0)/v', ...upTo(n).map((i) => `log(k${i})/(s${i}^2 + c)`)].join(' + ')})/(${precision(n)}))`,
    parameters: parametersOf(n),
    compute: (...args: number[]) => {
      const { k, v, c, s } = apart(args);
      return Math.exp(weighted(v, c, s, (i) => Math.log(k[i])) / weighted(v, c, s, () => 1));
    },
    validity: 'log-normal; each counted by its own spread',
    source: 'layer permeability, see the methods',
  });
}

/**
 * The spread of it.
 * @param n - tests, 1 and more
 * @returns formula of the standard deviation of the logarithm, arguments v, c, what stays from hole to hole, and s of every test
 */
export function pooledSpread(n: number): Formula {
  const { v, c } = parametersOf(0);
  return formula({
    title: `Spread of the permeability by its table and its tests (${n})`,
    symbol: 's',
    unit: '-',
    expression: `sqrt(1/(${precision(n)}) + h^2)`,
    parameters: {
      v,
      c,
      h: { meaning: 'what stays from hole to hole', ...TEST },
      ...Object.fromEntries(upTo(n).map((i) => [`s${i}`, { meaning: `spread of test ${i}`, ...TEST }])),
    },
    compute: (v: number, c: number, h: number, ...s: number[]) =>
      Math.sqrt(1 / weighted(v, c, s, () => 1) + h ** 2),
    validity: 'log-normal; each counted by its own spread',
    source: 'layer permeability, see the methods',
  });
}

/** A test with a name that says where it was. */
export interface NamedTest {
  name: string;
  test: PermeabilityTest;
}

/** Permeability of a layer, m/s, and the tests that do not fit the others. */
export interface LayerPermeability extends LogEstimate {
  /** names of tests */
  outliers: string[];
}

/**
 * Scatter of tests within their layers beyond their own spreads, pooled.
 * @param layers - the tests of each layer; bounds and layers with a single test do not count
 * @returns variance of the natural logarithm of the permeability, 0 or more
 */
export function pooledScatter(layers: PermeabilityTest[][]): number {
  let squares = 0;
  let expected = 0;
  let freedom = 0;
  for (const tests of layers.map((layer) => layer.filter((t) => t.says === 'value'))) {
    if (tests.length < 2) continue;
    const mean = tests.reduce((s, t) => s + Math.log(t.permeability), 0) / tests.length;
    const share = (tests.length - 1) / tests.length;
    for (const t of tests) {
      squares += (Math.log(t.permeability) - mean) ** 2;
      expected += share * t.spread ** 2;
    }
    freedom += tests.length - 1;
  }
  return freedom === 0 ? 0 : Math.max(squares - expected, 0) / freedom;
}

/**
 * Permeability of a layer from what its texture says and what was tested in it, see {@link layerPermeability}.
 * @param prior - from texture and structure, m/s
 * @param tests - made in the layer; none leaves the prior as it is
 * @param scatter - variance of the logarithm from {@link pooledScatter}
 * @param use - what evaluates the formulas, for a record
 * @returns m/s, with the tests that do not fit the others named (they count all the same)
 */
export function posteriorPermeability(
  prior: LogEstimate,
  tests: NamedTest[],
  scatter = 0,
  use: Use = unrecorded,
): LayerPermeability {
  if (tests.length === 0) return { ...prior, outliers: [] };
  const outliers = outliersOf(tests);
  return {
    ...pooled(prior, tests, scatter, use),
    evidence: evidenceOf(prior, tests, outliers),
    outliers,
  };
}

/** Table and tests together; a bound cuts what they make of it. */
function pooled(prior: LogEstimate, tests: NamedTest[], scatter: number, use: Use) {
  const v = use(priorVariance, prior.spread, HOLE_TO_HOLE);
  const values = tests.filter(({ test }) => test.says === 'value').map(({ test }) => test);
  const bounds = tests.filter(({ test }) => test.says !== 'value');
  const n = values.length;
  const spreads = values.map(({ spread }) => spread);
  if (bounds.length === 0)
    return {
      median: use(
        pooledMedian(n),
        prior.median,
        v,
        scatter,
        ...values.flatMap((t) => [t.permeability, t.spread]),
      ),
      spread: use(pooledSpread(n), v, scatter, HOLE_TO_HOLE, ...spreads),
    };
  const start = { mean: Math.log(prior.median), variance: v };
  const { mean, variance } = update(start, tests, scatter);
  return { median: Math.exp(mean), spread: Math.sqrt(variance + HOLE_TO_HOLE ** 2) };
}

interface Normal {
  mean: number;
  variance: number;
}

function update(start: Normal, tests: NamedTest[], scatter: number): Normal {
  const error = ({ test }: NamedTest) => test.spread ** 2 + scatter;
  let precision = 1 / start.variance;
  let weighted = start.mean * precision;
  for (const each of tests.filter(({ test }) => test.says === 'value')) {
    precision += 1 / error(each);
    weighted += Math.log(each.test.permeability) / error(each);
  }
  let state: Normal = { mean: weighted / precision, variance: 1 / precision };
  for (const each of tests.filter(({ test }) => test.says !== 'value'))
    state = cut(state, Math.log(each.test.permeability), error(each), each.test.says === 'slower than');
  return state;
}

/** Mean and variance of a normal cut softly at a bound known with an error. */
function cut({ mean, variance }: Normal, bound: number, error: number, below: boolean): Normal {
  const width = Math.sqrt(variance + error);
  const sign = below ? 1 : -1;
  const z = (sign * (bound - mean)) / width;
  // Far beyond the bound the ratio tends to −z; the tail probability itself would underflow.
  const hazard = z > -30 ? Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / normalCdf(z) : -z + 1 / -z;
  return {
    mean: mean - (sign * variance * hazard) / width,
    variance: variance - ((variance * variance) / (variance + error)) * hazard * (z + hazard),
  };
}

/** Tests far from the median of the others, which one more odd test does not move. */
function outliersOf(tests: NamedTest[]): string[] {
  const values = tests.filter(({ test }) => test.says === 'value');
  if (values.length < 3) return [];
  const variance = ({ test }: NamedTest) => test.spread ** 2 + HOLE_TO_HOLE ** 2;
  return values
    .filter((each) => {
      const others = values.filter((other) => other !== each);
      const logs = Float64Array.from(others, ({ test }) => Math.log(test.permeability)).sort();
      const mean = others.reduce((sum, other) => sum + variance(other), 0) / others.length;
      // A median varies π/2 times as much as a mean.
      const expected = Math.sqrt(variance(each) + ((Math.PI / 2) * mean) / others.length);
      return Math.abs(Math.log(each.test.permeability) - quantileSorted(logs, 0.5)) > OUTLIER * expected;
    })
    .map(({ name }) => name);
}

function evidenceOf(prior: LogEstimate, tests: NamedTest[], outliers: string[]): string[] {
  const values = tests.filter(({ test }) => test.says === 'value');
  const times = values.length === 1 ? 'once' : `${values.length} times`;
  return [
    ...(values.length > 0 ? [`measured here ${times}`] : []),
    ...tests.map(({ name, test }) => `${name}: ${testText(test)}`),
    ...outliers.map((name) => `${name} does not fit the others; kept`),
    ...new Set(tests.flatMap(({ test }) => test.bias)),
    ...prior.evidence.map((text) => `before the tests: ${text}`),
  ];
}

/**
 * A test's answer in words.
 * @param test - of a layer
 * @returns such as `1.2e-7 m/s by …`, or the bound it gives
 */
function testText({ says, permeability, method }: PermeabilityTest): string {
  const number = `${Number(permeability.toPrecision(2)).toExponential()} m/s`;
  return says === 'value'
    ? `${number} by ${method}`
    : `${says} ${number}: the test cannot resolve it (${method})`;
}
