/** The sheet of design situations, to be checked by hand and signed. */

import type { DesignRow, DesignSheet, Report, SideActions, UpliftActions } from '../contract/index.js';
import type { Table } from '../figures/table.js';
import { shownRows } from '../report/index.js';
import {
  designLevels,
  designRowName,
  designVerdict,
  holeWater,
  unlookedWords,
  unmetWords,
} from '../text/designVerdict.js';
import { handNumbers } from '../text/handNumbers.js';
import {
  ACTION_WORDS,
  boundedWords,
  CATEGORY_WORDS,
  designedText,
  designNotes,
  FOLLOWING_EDITION,
  HELD_WORDS,
  RULES_WORDS,
  SOURCE_WORDS,
  sideCells,
  statisticText,
  WATER_NAMES,
} from '../text/index.js';
import { formatGap, formatQuantity, type UnitSystem } from '../units/index.js';
import { list, type Markup, NONE, paragraph, section, table } from './markup.js';

export function designSection({ result }: Report, units: UnitSystem): Markup {
  const sheet = result.design_sheet;
  if (!sheet) return NONE;
  const { length, level, weight } = handNumbers(units);
  const { standard, source } = RULES_WORDS[sheet.rules];
  const drained = sheet.rows.some((row) => row.drained);
  return section(
    'design',
    'The sheet to sign: every design situation',
    paragraph(standard),
    paragraph([source, FOLLOWING_EDITION[sheet.rules]].filter(Boolean).join(' '), 'note'),
    paragraph(
      `${designedText(sheet, formatQuantity(sheet.depth_m, 'length', units))} ${unmetWords(shownRows(sheet), drained)}`,
    ),
    table(designTable(sheet, units), 'design'),
    paragraph(
      designLevels(
        `${level(sheet.floor_m)} ${length}`,
        weight,
        sheet.rows.some(({ water }) => water?.which === 'seam'),
      ),
      'note',
    ),
    list([
      ...designNotes(sheet),
      ...(sheet.unlooked
        ? [
            unlookedWords(
              sheet.unlooked,
              `${level(sheet.unlooked.to_m)} ${length}`,
              sheet.unlooked.wanted_to_m === null ? null : `${level(sheet.unlooked.wanted_to_m)} ${length}`,
            ),
          ]
        : []),
    ]),
  );
}

/**
 * The sheet as a table.
 * @param sheet - of `result.json`
 * @param units - how numbers are written
 * @returns a row a situation, the month with the least in hand
 */
export function designTable(sheet: DesignSheet, units: UnitSystem): Table {
  const us = sheet.rules === 'us';
  const { length, level } = handNumbers(units);
  return {
    name: 'Design situations',
    columns: [
      { key: 'situation', label: 'situation' },
      { key: 'class', label: us ? 'load category' : 'action' },
      { key: 'level', label: 'pond, or floor' },
      { key: 'water', label: 'design water' },
      { key: 'lifts', label: 'lifts' },
      { key: 'holds', label: 'holds' },
      { key: 'ratio', label: us ? 'factor of safety' : 'utilisation' },
      { key: 'margin', label: 'margin in level' },
      { key: 'verdict', label: 'verdict' },
    ],
    rows: shownRows(sheet).map((row) => {
      const { water, uplift, sides, margin_m } = row;
      const pressures = uplift ? pressuresOf(sheet, row, uplift, units) : sides && sideOf(sides, units);
      return [
        designRowName(row),
        row.category ? CATEGORY_WORDS[row.category] : ACTION_WORDS[row.action],
        `${level(row.level_m)} ${length}`,
        water &&
          `${level(water.level_m)} ${length}, ${WATER_NAMES[water.which]}; ${statisticText(water.statistic, water.which === 'seam' ? 'by surveys' : 'by years')}; ${SOURCE_WORDS[water.source]}`,
        pressures?.lifts ?? null,
        pressures?.holds ?? null,
        pressures?.ratio ?? null,
        margin_m === null
          ? null
          : row.situation === 'dig'
            ? holeWater(formatGap(Math.abs(margin_m), units, margin_m < 0 ? 'up' : 'down'), margin_m < 0)
            : margin_m >= 0
              ? formatGap(margin_m, units, 'down')
              : `${formatGap(-margin_m, units, 'up')} too little`,
        designVerdict(row),
      ];
    }),
  };
}

/** What lifts, what holds and their ratio, made of the levels as printed. */
function pressuresOf(
  { floor_m, rules }: DesignSheet,
  { water, margin_m }: DesignRow,
  { factor, kind, value, wanted, held_by, lifting_pa, holding_pa }: UpliftActions,
  units: UnitSystem,
): { lifts: string; holds: string; ratio: string } {
  const { between, pressed, size } = handNumbers(units);
  const plug = water?.which === 'seam';
  const head = water!.level_m;
  const lifting = lifting_pa === 0 ? 0 : plug ? lifting_pa : between(head, floor_m);
  const holding = holding_pa === 0 ? 0 : plug ? holding_pa : between(head + margin_m!, floor_m);
  const times = (by: number, pa: number) => (rules === 'us' ? size(pa) : `${by.toFixed(1)} × ${size(pa)}`);
  const most = kind === 'utilisation';
  const [above, below] = most
    ? [factor.lifting * Number(pressed(lifting)), factor.holding * Number(pressed(holding))]
    : [Number(pressed(holding)), Number(pressed(lifting))];
  return {
    lifts: lifting === 0 ? 'nothing' : times(factor.lifting, lifting),
    holds: holding === 0 ? HELD_WORDS.nothing : `${times(factor.holding, holding)}, ${HELD_WORDS[held_by]}`,
    ratio:
      lifting === 0 || below === 0
        ? lifting === 0
          ? 'nothing lifts'
          : 'nothing holds'
        : boundedWords(ratioText(above / below, value!, wanted, most), wanted, most),
  };
}

/** A side of the hole, made of the heights as printed. */
function sideOf({ height_m, stands_m, factor, wanted }: SideActions, units: UnitSystem) {
  const { length, level } = handNumbers(units);
  const [lifts, holds] = sideCells(`${level(height_m)} ${length}`, `${level(stands_m)} ${length}`);
  const printed = (metres: number) => Number(level(metres).replace('\u2212', '-'));
  const ratio = printed(stands_m) / printed(height_m);
  return { lifts, holds, ratio: boundedWords(ratioText(ratio, factor, wanted, false), wanted, false) };
}

/** Two digits, and as many more as the figure needs to stand on the side of its verdict. */
function ratioText(printed: number, value: number, wanted: number, most: boolean): string {
  const within = (ratio: number) => (most ? ratio <= wanted : ratio >= wanted);
  const ratio = within(printed) === within(value) ? printed : value;
  const digits = [2, 3, 4, 5].find((each) => within(Number(ratio.toFixed(each))) === within(value)) ?? 6;
  return ratio.toFixed(digits);
}
