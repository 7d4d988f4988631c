/** The page, result.json and the notebook's words say the same numbers, to the last shown digit. */
import { describe, expect, it, vi } from 'vitest';
import { optionTable, quantityTable, riskDepthFigure, waterMonthTable } from '../../lib/figures/index.js';
import { holder } from '../../lib/page/heldMeasures.js';
import { changesText } from '../../lib/page/index.js';
import { trialColumn } from '../../lib/page/trialColumn.js';
import { viewOf } from '../../lib/page/whatIfView.js';
import { reportOf, resultOf } from '../../lib/report/index.js';
import { chanceText, isUpkeep, orderText, yearlyText } from '../../lib/text/index.js';
import { ADVICE_NAMES } from '../../lib/text/terms.js';
import { upliftLine } from '../../lib/text/upliftLine.js';
import { verdictWords } from '../../lib/text/verdictWords.js';
import { formatQuantity } from '../../lib/units/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { sweep } from '../sweep.js';
import { assessmentOf, demoPage } from './demoPage.js';

vi.setConfig({ testTimeout: 60_000 });

describe.each(sweep(['clay-slope', 'clay-hollow', 'loam-terrace'], 1))('of %s', (name) => {
  const survey = surveyOf(briefDemo(name));
  const assessment = assessmentOf(survey);
  const report = reportOf(assessment);
  const { units } = report;
  const written = JSON.parse(JSON.stringify(resultOf(assessment)));

  /** Cells of the row of a table on the page that starts with some words. */
  const rowsOf = (html: string, table: string) => {
    const body = new RegExp(`<caption>${table}</caption>[\\s\\S]*?<tbody[^>]*>([\\s\\S]*?)</tbody>`).exec(
      html,
    )![1]!;
    return [...body.matchAll(/<tr[^>]*>(.*?)<\/tr>/g)].map(([, row]) =>
      [...row!.matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, cell]) => plain(cell!)),
    );
  };
  const plain = (html: string) =>
    html
      .replace(/<[^>]+>/g, '')
      .replaceAll('\u00a0', ' ')
      .replaceAll('&#39;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&gt;', '>')
      .replaceAll('&lt;', '<')
      .replaceAll('&amp;', '&');

  it('the report on the page carries result.json itself', () => {
    expect(JSON.parse(JSON.stringify(report.result))).toEqual(written);
  });

  it('tables and sentences of the page are those of the notebook', async () => {
    const html = await demoPage(survey);
    const possible = {
      ...report,
      result: { ...report.result, options: report.result.options.filter((o) => o.possible) },
    };
    expect(rowsOf(html, 'Options compared')).toEqual(optionTable(possible, units).rows);
    expect(rowsOf(html, 'Water and the pond by month')).toEqual(
      waterMonthTable(report, units).rows.map((row) => row.map((cell) => cell ?? '')),
    );
    for (const words of Object.values(verdictWords(report))) expect(plain(html)).toContain(words);
    for (const check of written.uplift_check) expect(plain(html)).toContain(upliftLine(check, units));
  });

  it('the options show the digits of result.json', async () => {
    const rows = rowsOf(await demoPage(survey), 'Options compared');
    for (const option of written.options.filter((o: { possible: boolean }) => o.possible)) {
      const row = rows.find(([first]) => first === ADVICE_NAMES[option.option as keyof typeof ADVICE_NAMES])!;
      const { risk_at_wish } = option;
      const said = isUpkeep(risk_at_wish) ? orderText : chanceText;
      expect(row[2]).toContain(said(risk_at_wish.per_year));
      expect(row[4]).toBe(formatQuantity(option.full.net_head_m.p10, 'level', units));
    }
  });

  it('what upkeep sets is an order in hovers, in the comparison and in the what-if', () => {
    const hovers = riskDepthFigure(report, units, 'wide').data.flatMap((trace) => {
      const { text, hoverinfo } = trace as { text?: string[]; hoverinfo?: string };
      return hoverinfo === 'text' ? (text ?? []) : [];
    });
    const saidOf = (name: string, depth: string) =>
      hovers.find((text) => text.includes(name) && text.includes(`, ${depth}: `));
    const upkept = report.curves
      .filter(({ possible }) => possible)
      .flatMap(({ option, depth_m, per_year, upkeep }) =>
        depth_m.flatMap((depth, at) =>
          isUpkeep({ per_year: per_year[at]!, upkeep: upkeep[at]! }) ? [{ option, depth }] : [],
        ),
      );
    if (name === 'clay-slope') expect(upkept.length).toBeGreaterThan(0);
    for (const { option, depth } of upkept)
      expect(saidOf(ADVICE_NAMES[option], formatQuantity(depth, 'length', units))).toMatch(
        /about 1 year in \d+; set by how it is kept/,
      );
    // Only what differs is told, so nothing can be had before.
    const options = report.result.options.map(
      (option) => ({ ...option, possible: false, risk_at_wish: null }) as unknown as typeof option,
    );
    const elsewhere = { ...report, result: { ...report.result, options } };
    const compared = changesText({ survey, report: elsewhere }, { survey, report });
    const held = holder(survey, { seed: 1, samples: 64 });
    const own = held.asked({});
    const { chances } = viewOf(held, own, trialColumn(own, units), units);
    const told = report.result.recommendation.option;
    for (const { option, risk_at_wish } of report.result.options) {
      if (!risk_at_wish || !isUpkeep(risk_at_wish)) continue;
      expect(compared).toContain(yearlyText(risk_at_wish));
      if (option === told && report.result.recommendation.depth_m === report.pond.depth_m)
        expect(chances).toContain(`together ${yearlyText(risk_at_wish)}`);
    }
  });

  it('what is to be bought is as result.json has it', async () => {
    const html = await demoPage(survey);
    expect(rowsOf(html, 'To buy and to dig').map((row) => row.slice(0, 2))).toEqual(
      quantityTable(report, units).rows,
    );
    expect(rowsOf(html, 'To buy and to dig').map(([item]) => item)).toEqual(
      written.build.quantities.map(({ item }: { item: string }) => item),
    );
  });
});
