/** Drawings to dig by, each on a sheet of its own, true to scale when printed at 100 %. */
import type { Report } from '../contract/index.js';
import { SHEET_NAMES, sheetAlt, titleRows } from '../text/sheetWords.js';
import type { UnitSystem } from '../units/index.js';
import { foldedTo } from './drawing.js';
import { escapeHtml } from './escape.js';
import { sheetBed, sheetSide } from './sheetDetails.js';
import { PAPERS, type Region, ROW, SheetPaper, TYPE } from './sheetPaper.js';
import { sheetPondPlan, sheetSitePlan } from './sheetPlan.js';
import { sheetProfile } from './sheetProfile.js';
import { sheetSection } from './sheetSection.js';
import { visible } from './visible.js';

/** A drawing for a sheet of paper. */
export interface DrawingSheet {
  name: string;
  paper: 'a4' | 'letter';
  /** SVG whose units are millimetres of paper */
  svg: string;
  alt: string;
}

/** Between the frame and what is in it, mm. */
const INSIDE = 4;

/**
 * Plans, and section with details, to dig by.
 * @param report - from {@link reportOf}
 * @param units - whose scales, paper and lengths
 * @param issued - date of issue, ISO 8601; absent: not said
 * @returns two sheets; none where nothing is dug
 */
export function drawingSheets(
  report: Report,
  units: UnitSystem = report.units,
  issued?: string,
): DrawingSheet[] {
  if (!report.setting_out) return [];
  const { name: paper, width, height } = PAPERS[units];
  return SHEET_NAMES.map((name, sheet) => {
    const on = new SheetPaper();
    const block = titleBlock(on, report, sheet, units, issued);
    const body: Region = {
      x: INSIDE,
      y: INSIDE,
      width: width - 2 * INSIDE,
      height: height - block - 2 * INSIDE,
    };
    if (sheet === 0) plans(on, report, body, units);
    else sections(on, report, body, units);
    const alt = sheetAlt(report, sheet, units);
    return {
      name,
      paper,
      alt,
      svg: `<svg xmlns="http://www.w3.org/2000/svg" class="figure sheet-${paper}" viewBox="0 0 ${width} ${height}" role="img" aria-label="${escapeHtml(visible(alt))}" font-family="system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif">${on.svg()}</svg>`,
    };
  });
}

function plans(on: SheetPaper, report: Report, body: Region, units: UnitSystem): void {
  const left = Math.round(body.width * 0.58);
  sheetPondPlan(on, report, { ...body, width: left }, units);
  sheetSitePlan(on, report, { ...body, x: body.x + left + 5, width: body.width - left - 5 }, units);
}

function sections(on: SheetPaper, report: Report, body: Region, units: UnitSystem): void {
  const left = Math.round(body.width * 0.58);
  const right = { x: body.x + left + 5, width: body.width - left - 5 };
  const upper = Math.round(body.height * 0.4);
  const lower = { y: body.y + upper + 4, height: body.height - upper - 4 };
  if (!report.drain || !report.setting_out?.pipe) {
    sheetSection(on, report, { ...body, width: left }, units);
    sheetSide(on, report, { ...body, ...right }, units);
    return;
  }
  sheetSection(on, report, { ...body, width: left, height: upper }, units);
  sheetBed(on, report, { ...body, ...right, height: upper }, units);
  sheetProfile(on, report, { ...body, ...lower, width: left }, units);
  sheetSide(on, report, { ...body, ...right, ...lower }, units);
}

/** Frame and title block; its height. */
function titleBlock(
  on: SheetPaper,
  report: Report,
  sheet: number,
  units: UnitSystem,
  issued: string | undefined,
): number {
  const { width, height } = PAPERS[units];
  const room = width - 2 * INSIDE;
  const [name, ...rest] = titleRows(report, { sheet, issued, units });
  const rows = [
    ...foldedTo(visible(name), room, TYPE, true)
      .slice(0, 2)
      .map((text) => ({ text, bold: true })),
    ...rest.flatMap((words) => foldedTo(visible(words), room, TYPE)).map((text) => ({ text, bold: false })),
  ];
  const block = rows.length * ROW + 3;
  on.shape(
    'edge',
    [
      [0.5, 0.5],
      [width - 0.5, 0.5],
      [width - 0.5, height - 0.5],
      [0.5, height - 0.5],
    ],
    { width: 0.5 },
  );
  on.line('edge', [0.5, height - block - 0.5], [width - 0.5, height - block - 0.5], 0.35);
  rows.forEach(({ text, bold }, i) => {
    on.text(text, INSIDE, height - block + (i + 1) * ROW - 0.6, { bold });
  });
  return block + 1;
}
