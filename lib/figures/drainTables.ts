import type { SiteDrain } from '../contract/index.js';
import { pipesAgainst, shoppingLines } from '../drain/index.js';
import { FALL_WORDS, fallState } from '../text/drainProfileWords.js';
import { FALL_NAMES, LINK_NAMES, MEASURE_NAMES, SOURCE_NAMES, sayer } from '../text/index.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import type { Table } from './table.js';

const times = (ratio: number) => (ratio > 100 ? 'over 100' : `${Number(ratio.toPrecision(2))}`);

/**
 * Where the water comes from, with its spread and what keeps it away.
 * @param drain - of a site
 * @param units - how numbers are written
 * @returns a row a source
 */
export function drainSourceTable({ sources }: SiteDrain, units: UnitSystem): Table {
  // What a storm brings lasts minutes, what seeps goes on for weeks.
  const flowOf = (storm: boolean) => (v: number) =>
    storm ? sayer(units).aMinute(v) : formatQuantity(v, 'flow', units);
  return {
    name: 'Where the water in the drain comes from',
    columns: ['source', 'at least', 'likely', 'at most', 'what keeps it away', 'likely then'].map(column),
    rows: sources
      .filter((s) => s.high > 0)
      .map((s) => {
        const flow = flowOf(s.source !== 'clay' && s.source !== 'leak');
        return [
          SOURCE_NAMES[s.source],
          flow(s.low),
          flow(s.likely),
          flow(s.high),
          s.measure ? MEASURE_NAMES[s.measure] : null,
          flow(s.left),
        ];
      }),
  };
}

/**
 * Each link with what it can take over what it must, the weakest first.
 * @param drain - of a site
 * @returns a row a link
 */
export function drainLinkTable({ reserve, weakestLink }: SiteDrain): Table {
  return {
    name: 'Links of the drain',
    columns: ['link', 'times over', ''].map(column),
    rows: Object.entries(reserve)
      .sort((a, b) => a[1] - b[1])
      .map(([link, ratio]) => [
        LINK_NAMES[link],
        times(ratio),
        link === weakestLink ? (ratio < 1 ? 'does not hold' : 'weakest') : null,
      ]),
  };
}

/**
 * The levels from the liner down to the water that receives the drain.
 * @param drain - of a site
 * @param units - how numbers are written
 * @returns a row a link
 */
export function fallTable({ links }: SiteDrain, units: UnitSystem): Table {
  const level = (v: number) => formatQuantity(v, 'level', units);
  return {
    name: 'Fall, link by link',
    columns: ['link', 'from', 'to', 'has', 'needs', ''].map(column),
    rows: links.map((l) => [
      FALL_NAMES[l.link],
      level(l.from),
      level(l.to),
      formatBound(l.has, 'depth', units, 'down'),
      formatBound(l.needs, 'depth', units, 'up'),
      FALL_WORDS[fallState(l)],
    ]),
  };
}

/**
 * Every common pipe of the system against the inflow, with the roughest and the smoothest wall.
 * @param drain - of a site
 * @param units - how numbers are written, and which series of pipes is shown
 * @returns a row a pipe
 */
export function pipeTable({ totalInflow, slope }: SiteDrain, units: UnitSystem): Table {
  const { aMinute } = sayer(units);
  return {
    name: 'Common pipes at this fall',
    columns: ['pipe', 'inside', 'carries at least', 'at most', 'times over at least'].map(column),
    rows: pipesAgainst(totalInflow, slope, units).map((p) => [
      p.pipe.name,
      formatQuantity(p.diameter, 'length', units),
      aMinute(p.capacity),
      aMinute(p.most),
      times(p.times),
    ]),
  };
}

/**
 * What to ask for in the shop, rounded up, in both systems.
 * @param drain - of a site
 * @returns a row an item
 */
export function shoppingTable({ quantities }: SiteDrain): Table {
  return {
    name: 'To buy and to dig',
    columns: ['item', 'metric', 'US'].map(column),
    rows: shoppingLines(quantities).map((l) => [
      l.item,
      `${l.metric} ${l.metricUnit}${l.sides ? `, ${l.sides.metric}` : ''}`,
      `${l.us} ${l.usUnit}${l.sides ? `, ${l.sides.us}` : ''}`,
    ]),
  };
}

function column(label: string) {
  return { key: label.replaceAll(' ', '_') || 'verdict', label };
}
