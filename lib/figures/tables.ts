import { LEAST_CHANCE } from '../contract/chances.js';
import type { Report } from '../contract/report.js';
import type { PossibleOption, WorkResult } from '../contract/result.js';
import { shoppingLines } from '../drain/shoppingList.js';
import { costText } from '../text/buildWords.js';
import { keepAboveHeading } from '../text/lowerWords.js';
import { monthName } from '../text/monthWords.js';
import { atLeastText, chanceText, isUpkeep, yearlyText } from '../text/say.js';
import { ADVICE_NAMES, GOVERNS_WORDS } from '../text/terms.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import type { Table } from './table.js';

/**
 * The options side by side, one a row.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row an option
 */
export function optionTable({ result }: Report, units: UnitSystem): Table {
  const priced = result.options.some(({ work }) => work !== null && work.cost !== null);
  return {
    name: 'Options compared',
    columns: [
      { key: 'option', label: 'option' },
      { key: 'safe_depth', label: 'safe depth' },
      { key: 'per_year', label: 'chance a year at the wish' },
      { key: 'in_life', label: 'chance in its life' },
      { key: 'head_full', label: 'to spare when full, 1 year in 10' },
      { key: 'heave', label: 'dig: floor bursts up' },
      { key: 'slump', label: 'dig: side slumps' },
      { key: 'wet_floor', label: 'dig: wet floor' },
      { key: 'governs', label: 'what fails first' },
      { key: 'hours', label: 'work by hand' },
      ...(priced ? [{ key: 'cost', label: 'cost by prices.csv' }] : []),
    ],
    rows: result.options.map((option) => {
      const name = ADVICE_NAMES[option.option];
      if (!option.possible)
        return [
          name,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          `not possible: ${option.why_not ?? 'no reason given'}`,
          null,
          ...(priced ? [null] : []),
        ];
      return [
        name,
        depthText(option.safe_depth_m, option.depth_searched_m, units),
        isUpkeep(option.risk_at_wish)
          ? yearlyText(option.risk_at_wish)
          : `${chanceText(option.risk_at_wish.per_year)}${errorText(option.risk_at_wish)}`,
        chanceText(option.risk_in_life),
        formatQuantity(option.full.net_head_m.p10, 'level', units),
        chanceText(option.per_dig.heave),
        chanceText(option.per_dig.slump),
        chanceText(option.per_dig.wet_floor),
        GOVERNS_WORDS[option.governs],
        `${Math.round(option.work.hours_by_hand)} h`,
        ...(priced ? [costText(option.work)] : []),
      ];
    }),
  };
}

function depthText(safe: number | null, searched: number, units: UnitSystem): string {
  if (safe === 0) return 'at no depth';
  return safe === null
    ? `${formatBound(searched, 'length', units, 'down')} at least`
    : formatBound(safe, 'length', units, 'down');
}

/** The sampling error, where it shows. */
function errorText({ per_year, standard_error }: { per_year: number; standard_error: number }): string {
  const percent = Number((standard_error * 100).toPrecision(1));
  return per_year >= LEAST_CHANCE && percent >= 0.01 ? ` ± ${percent} %` : '';
}

/**
 * Water by month, and how low the pond may be let down in it as recommended.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns 12 rows, January first
 */
export function waterMonthTable({ result }: Report, units: UnitSystem): Table {
  const { by_month } = result.water;
  const limited = result.options.filter(
    (each): each is PossibleOption =>
      each.possible && (each.option === 'no-drain' || each.option === result.recommendation.option),
  );
  const ring = by_month.some(({ tub_level_m }) => tub_level_m !== null);
  const daily = by_month.some(({ daily_depth_m }) => daily_depth_m !== null);
  const uphill = by_month.some(({ uphill_depth_m }) => uphill_depth_m !== null);
  const depth = (value: number) => formatQuantity(value, 'depth', units);
  const level = (value: number) => formatQuantity(value, 'level', units);
  return {
    name: 'Water and the pond by month',
    columns: [
      { key: 'month', label: 'month' },
      ...(daily ? [{ key: 'daily_p50', label: 'depth to water at the low side, middle of its days' }] : []),
      { key: 'table_p10', label: 'at its highest of the month, 1 in 10 nearer' },
      { key: 'table_p50', label: 'at its highest, middle year' },
      ...(uphill
        ? [{ key: 'uphill_p10', label: 'behind the uphill wall at its highest, 1 in 10 nearer' }]
        : []),
      ...(ring ? [{ key: 'tub_p90', label: 'level in the ring, 1 in 10 higher' }] : []),
      { key: 'dry_floor', label: 'chance the floor is dry' },
      ...limited.map(({ option }) => ({
        key: `lowest_${option.replaceAll('-', '_')}`,
        label: keepAboveHeading(option),
      })),
    ],
    rows: by_month.map(
      ({ month, table_depth_m, daily_depth_m, uphill_depth_m, tub_level_m, dry_floor_chance }) => [
        monthName(month),
        ...(daily ? [daily_depth_m && depth(daily_depth_m.p50)] : []),
        depth(table_depth_m.p10),
        depth(table_depth_m.p50),
        ...(uphill ? [uphill_depth_m && depth(uphill_depth_m.p10)] : []),
        ...(ring ? [tub_level_m && level(tub_level_m.p90)] : []),
        atLeastText(dry_floor_chance),
        ...limited.map(({ lowest_safe_level_m }) => {
          const lowest = lowest_safe_level_m[month - 1] ?? null;
          return lowest === null ? 'may be emptied' : formatBound(lowest, 'level', units, 'up');
        }),
      ],
    ),
  };
}

/**
 * What to buy and dig as recommended; no rows where nothing is dug yet.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row an item
 */
export function quantityTable({ result }: Report, units: UnitSystem): Table {
  return worksTable(result.build?.quantities ?? [], units);
}

/** Amounts to buy and to dig, rounded up as the list for the shop has them. */
export function worksTable(quantities: WorkResult['quantities'], units: UnitSystem): Table {
  return {
    name: 'To buy and to dig',
    columns: [
      { key: 'item', label: 'item' },
      { key: 'amount', label: 'amount' },
    ],
    rows: shoppingLines(quantities).map((line) => {
      const [amount, unit] = units === 'us' ? [line.us, line.usUnit] : [line.metric, line.metricUnit];
      const sides = line.sides?.[units];
      return [line.item, `${amount}${unit === 'piece' ? '' : ` ${unit}`}${sides ? `, ${sides}` : ''}`];
    }),
  };
}
