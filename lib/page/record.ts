/** What the page rests on: ground, assumptions, warnings, methods, digest, and who stands for it. */

import * as basis from '../basis/index.js';
import * as climate from '../climate/index.js';
import type { Report } from '../contract/index.js';
import * as decision from '../decision/index.js';
import * as digging from '../digging/index.js';
import * as drain from '../drain/index.js';
import type { Table } from '../figures/table.js';
import { catalogue } from '../formula/index.js';
import * as groundwater from '../groundwater/index.js';
import * as heads from '../heads/index.js';
import * as options from '../options/index.js';
import * as reliability from '../reliability/index.js';
import * as reportRoom from '../report/index.js';
import * as seepage from '../seepage/index.js';
import * as site from '../site/index.js';
import * as soil from '../soil/index.js';
import { balanceNote, photoWords, unshownPhoto } from '../text/groundWords.js';
import { methodsCount } from '../text/recordWords.js';
import { takenText } from '../text/takenText.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import * as uplift from '../uplift/index.js';
import * as works from '../works/index.js';
import { html, list, type Markup, NONE, paragraph, section, table } from './markup.js';

/** Photos of the pits by the file name the survey gives, as data URIs. */
export type Photos = Readonly<Record<string, string>>;

export function groundSection({ result, pits }: Report, units: UnitSystem, photos: Photos): Markup {
  const rows = result.ground.layers.map(({ pit, top_m, bottom_m, texture, ksat_m_s, evidence }) => [
    pit,
    `${formatQuantity(top_m, 'length', units)} to ${formatQuantity(bottom_m, 'length', units)}`,
    texture,
    formatQuantity(ksat_m_s.p50, 'permeability', units),
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
    paragraph(balanceNote(model, closure_mm), 'note'),
    list(pits.flatMap(({ pit, note }) => (note ? [html`<strong>${pit}</strong>: ${note}`] : []))),
    pits.map((pit) => photoHtml(pit, photos)),
  );
}

function photoHtml({ pit, photo, note }: Report['pits'][number], photos: Photos): Markup {
  if (photo === null) return NONE;
  const words = photoWords(pit, note);
  // Only the names the survey gives are looked up, none that every object has.
  const data = Object.hasOwn(photos, photo) ? photos[photo]! : undefined;
  return data === undefined || !/^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/=]+$/.test(data)
    ? paragraph(unshownPhoto(pit, note, photo), 'note')
    : html`<figure class="photo"><img src="${data}" data-photo="${photo}" alt="${words}"><figcaption>${words}</figcaption></figure>`;
}

export function assumptionsSection({ result }: Report, units: UnitSystem): Markup {
  const assumptions: Table = {
    name: 'Assumed, not measured',
    columns: [
      { key: 'item', label: 'item' },
      { key: 'value', label: 'value' },
      { key: 'reason', label: 'reason' },
    ],
    rows: result.assumptions.map(({ item, value, unit, reason }) => [
      item.replaceAll('_', ' '),
      takenText(item, value, unit, units),
      reason,
    ]),
  };
  const warnings = result.warnings.map(({ file, line, column, message }) => {
    const place = [file, line].filter((part) => part !== undefined).join(':') + (column ? ` ${column}` : '');
    return html`<code>${place}</code> ${message}`;
  });
  return section(
    'assumptions',
    'Assumptions and defaults, and what the reading noticed',
    table(assumptions),
    warnings.length > 0 ? html`<h3>Warnings</h3>${list(warnings)}` : '',
  );
}

/** Every method of the library with its source; formulas stand with theirs in the worked steps. */
export function methodsSection(): Markup {
  const rooms = [
    climate,
    soil,
    seepage,
    groundwater,
    uplift,
    drain,
    site,
    heads,
    digging,
    basis,
    works,
    reliability,
    options,
    decision,
    reportRoom,
  ];
  const entries = rooms.flatMap((room) => Object.values(catalogue({ ...room })));
  return section(
    'methods',
    'Methods and sources',
    html`<details><summary>${methodsCount(entries.filter(({ kind }) => kind === 'method').length)}</summary>\n${table(
      {
        name: 'Methods',
        columns: [
          { key: 'title', label: 'what' },
          { key: 'how', label: 'how' },
          { key: 'source', label: 'source' },
        ],
        rows: entries.flatMap((entry) =>
          entry.kind === 'method' ? [[entry.title, entry.what, entry.source]] : [],
        ),
      },
      'methods',
    )}\n</details>`,
    paragraph(
      'A site uses those its survey calls for; the formulas stand with their sources in the worked calculation.',
      'note',
    ),
  );
}
