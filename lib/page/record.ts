/** What the page rests on: ground, assumptions, warnings, methods, digest, and who stands for it. */

import * as climate from '../climate/index.js';
import * as drain from '../drain/index.js';
import type { Table } from '../figures/table.js';
import { catalogue } from '../formula/index.js';
import * as groundwater from '../groundwater/index.js';
import * as risk from '../risk/index.js';
import * as seepage from '../seepage/index.js';
import * as site from '../site/index.js';
import * as soil from '../soil/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import * as uplift from '../uplift/index.js';
import { list, paragraph, section, table, text } from './markup.js';

export function groundSection({ result }: risk.Report, units: UnitSystem): string {
  const rows = result.ground.layers.map(({ pit, top_m, bottom_m, texture, ksat_m_s, evidence }) => [
    pit,
    `${formatQuantity(top_m, 'length', units)} to ${formatQuantity(bottom_m, 'length', units)}`,
    texture,
    formatQuantity(ksat_m_s.p50, 'conductivity', units),
    `${Number((ksat_m_s.p90 / ksat_m_s.p10).toPrecision(2))}`,
    evidence.join('; '),
  ]);
  const { model, closure_mm } = result.water;
  return section(
    'ground',
    'The ground and how it was come by',
    table({
      name: 'Layers',
      columns: [
        { key: 'pit', label: 'hole' },
        { key: 'depth', label: 'depth' },
        { key: 'texture', label: 'texture' },
        { key: 'ksat', label: 'how fast water moves (saturated hydraulic conductivity)' },
        { key: 'spread', label: 'high over low' },
        { key: 'evidence', label: 'evidence' },
      ],
      rows,
    }),
    paragraph(
      `Water through the year: ${model}. Largest error of the water balance: ${Number(closure_mm.toPrecision(1))} mm. “High over low” is the ratio of the values that one in ten exceeds and nine in ten exceed.`,
      'note',
    ),
  );
}

export function assumptionsSection({ result }: risk.Report): string {
  const assumptions: Table = {
    name: 'Assumed, not measured',
    columns: [
      { key: 'item', label: 'item' },
      { key: 'value', label: 'value' },
      { key: 'reason', label: 'reason' },
    ],
    rows: result.assumptions.map(({ item, value, unit, reason }) => [
      item.replaceAll('_', ' '),
      `${typeof value === 'number' ? Number(value.toPrecision(3)) : value} ${unit}`.trim(),
      reason,
    ]),
  };
  const warnings = result.warnings.map(({ file, line, column, message }) => {
    const place = [file, line].filter((part) => part !== undefined).join(':') + (column ? ` ${column}` : '');
    return `<code>${text(place)}</code> ${text(message)}`;
  });
  return section(
    'assumptions',
    'What was assumed, and what the reading noticed',
    table(assumptions),
    warnings.length > 0 ? `<h3>Warnings</h3>${list(warnings)}` : '',
  );
}

/** Every formula and method of the computation with its source. */
export function methodsSection(): string {
  const rooms = [climate, soil, seepage, groundwater, uplift, drain, site, risk];
  const entries = rooms.flatMap((room) => Object.values(catalogue({ ...room })));
  return section(
    'methods',
    'Methods and sources',
    table(
      {
        name: 'Formulas and methods',
        columns: [
          { key: 'title', label: 'what' },
          { key: 'how', label: 'how' },
          { key: 'source', label: 'source' },
        ],
        rows: entries.map((entry) => [
          entry.title,
          entry.kind === 'formula' ? `${entry.symbol} = ${entry.expression}` : entry.what,
          entry.source,
        ]),
      },
      'methods',
    ),
    paragraph(
      'Valid for this site, these dates and these inputs only. Holes show the ground at the holes; water can stand higher than was observed.',
      'note',
    ),
  );
}

export function signSection({ result }: risk.Report): string {
  const lines = [
    'Prepared by (not an engineer unless licensed)',
    'Data recorded by',
    'Reviewed by, licence number',
    'Neighbour has seen this (not: agreed to it)',
  ];
  return section(
    'sign',
    'Inputs and sign-off',
    `<p>Survey: ${text(result.survey.name)}. SHA-256 of its files: <code class="digest">${text(result.survey.sha256)}</code>. The same survey gives the same numbers.</p>`,
    `<dl class="sign">${lines.map((line) => `<div><dt>${line}</dt><dd>name, date</dd></div>`).join('')}</dl>`,
  );
}
