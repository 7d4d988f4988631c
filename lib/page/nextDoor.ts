/** What changes for you next door: where water comes out, how much, before and after, and what to look for. */

import type { Flows, NextDoor, Report } from '../contract/index.js';
import type { Table } from '../figures/table.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import {
  highEnd,
  inBuckets,
  NEXT_DOOR_READER,
  nextDoorExit,
  nextDoorFlow,
  nextDoorGround,
  nextDoorRim,
  nextDoorSigns,
  nextDoorTroubles,
  stormWords,
} from '../text/nextDoorWords.js';
import type { UnitSystem } from '../units/index.js';
import { html, lines, list, type Markup, paragraph, section, table } from './markup.js';

const NOT_KNOWN = 'not known yet';

export function neighbourSection(report: Report, units: UnitSystem): Markup {
  const { next_door: door } = report;
  const raised = nextDoorRim(report, units);
  return section(
    'neighbour',
    'What changes for you next door',
    // Of another reader: closed on a screen, on a sheet of its own in print.
    html`<details><summary>A sheet for your neighbour: open it, print it, hand it over</summary>\n${lines(
      paragraph(NEXT_DOOR_READER, 'note'),
      html`<h3>Where its water goes</h3>`,
      paragraph(nextDoorExit(door, units)),
      html`<h3>How much water</h3>`,
      table(flowTable(door, units)),
      paragraph(nextDoorFlow(door, units), 'note'),
      html`<h3>The water in your ground</h3>`,
      paragraph(nextDoorGround(report, units)),
      html`<h3>When something goes wrong</h3>${list(nextDoorTroubles(report, units))}`,
      html`<h3>What to look for, from your side of the fence</h3>${list(nextDoorSigns(report))}`,
      raised ? paragraph(raised) : '',
    )}\n</details>`,
  );
}

/** Water that leaves the ground of the pond, before and after. */
function flowTable({ winter_day, storm, exit }: NextDoor, units: UnitSystem): Table {
  const drained = exit.kind !== 'brim';
  const a = (volume: number) => inBuckets(volume, units);
  const out = ({ drain, drain_high }: Flows, seconds: number) =>
    drain === null || drain_high === null ? NOT_KNOWN : highEnd(a(drain * seconds), a(drain_high * seconds));
  const row = (when: string, seconds: number, flows: Flows | null) => [
    when,
    flows ? a(flows.before * seconds) : NOT_KNOWN,
    flows ? a(flows.brim * seconds) : NOT_KNOWN,
    ...(drained ? [flows ? out(flows, seconds) : NOT_KNOWN] : []),
  ];
  return {
    name: 'Water that leaves the ground of the pond',
    columns: [
      { key: 'when', label: 'when' },
      { key: 'before', label: 'before, spread over the ground' },
      { key: 'brim', label: 'after, over the brim' },
      ...(drained
        ? [{ key: 'drain', label: 'after, out of the drain while the water in the ground stands high' }]
        : []),
    ],
    rows: [
      row('ordinary winter day', SECONDS_PER_DAY, winter_day),
      row(stormWords(storm, units), storm.seconds, storm),
    ],
  };
}
