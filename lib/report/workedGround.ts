/** Permeability of the ground: from table and tests to the value used. */

import type { Judged } from '../decision/index.js';
import { alongParts, type GroundLayer, mainPart, meanByThickness, partsAround } from '../site/index.js';
import {
  permeabilityAt,
  pooledMedian,
  pooledSpread,
  posteriorPermeability,
  priorVariance,
  SCORE_90,
} from '../soil/index.js';
import { assumed, Recording, rowWords } from './workedFrom.js';

/** The value that is used around a pond so deep, and its ends. */
export function groundPart({ site }: Judged, depth: number): Recording {
  const { ground } = site;
  const parts = partsAround(ground, depth);
  const r = new Recording(
    'How fast water moves in the ground around the pond',
    'By the table for each kind of ground and what was tested in it; then the layers below the topsoil together, down to half a metre below the floor.',
    parts.map(({ row }) => row.origin),
  );
  for (const known of new Set(parts.map((part) => part.known))) layerSteps(r, known);
  const n = parts.length;
  r.tell(
    meanByThickness(n),
    Object.fromEntries(
      parts.flatMap((part, i) => [
        [`t${i + 1}`, `${rowWords(part.row.origin)}: what of the layer lies there`],
        ...(isPooled(part) ? [] : [[`k${i + 1}`, tableWords(part)]]),
      ]),
    ),
  );
  const { median, spread } = alongParts(parts, r.use);
  const main = mainPart(parts);
  for (const [score, end] of [
    [-SCORE_90, '10 %'],
    [SCORE_90, '90 %'],
  ] as const) {
    r.tell(permeabilityAt, {
      z: assumed(`the ${end} end of a normal distribution`),
      ...(isPooled(main) ? {} : { s: tableWords(main) }),
    });
    r.use(permeabilityAt, median, spread, score);
  }
  return r;
}

/** Whether table and tests make it, without a bound. */
const isPooled = ({ known }: Pick<GroundLayer, 'known'>) =>
  known.tests.length > 0 && known.tests.every(({ test }) => test.says === 'value');

/** Where a layer's permeability comes from that no step gives. */
function tableWords({ row, permeability, known }: GroundLayer): string {
  return known.tests.length > 0
    ? `${rowWords(row.origin)}: table, tests and the bounds they set`
    : `${rowWords(row.origin)}: ${permeability.evidence.join(', ') || 'by table'}`;
}

function layerSteps(r: Recording, known: GroundLayer['known']): void {
  const { prior, tests, scatter } = known;
  if (!isPooled({ known })) return;
  const n = tests.length;
  const stays = assumed('0.4 from hole to hole: our choice');
  const c = assumed('scatter of the tests within their layers, pooled');
  const table = assumed(prior.evidence.join(', ') || 'table');
  const where = tests.map(({ test, origin, name }) =>
    test.method === 'a measurement' ? rowWords(origin) : `${rowWords(origin)}: ${name}, ${test.method}`,
  );
  const spreads = Object.fromEntries(
    tests.map(({ test }, i) => [`s${i + 1}`, assumed(`spread of ${test.method}`)]),
  );
  r.tell(priorVariance, { s: table, h: stays });
  r.tell(pooledMedian(n), {
    k0: table,
    c,
    ...Object.fromEntries(where.map((words, i) => [`k${i + 1}`, words])),
    ...spreads,
  });
  r.tell(pooledSpread(n), { c, h: stays, ...spreads });
  posteriorPermeability(prior, tests, scatter, r.use);
}
