import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../lib/contract/index.js';
import { type PageOptions, pageHtml, waterYearCsv } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { upliftLine } from '../../lib/text/upliftLine.js';
import { verdictWords } from '../../lib/text/verdictWords.js';
import { invented, inventedByMonth } from '../figures/report.js';
import { briefDemo, surveyOf } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { assessmentOf } from './demoPage.js';

/** Stands for the what-if where no browser runs it. */
const live = {
  script: 'window.drawn = true;\r\n/* \u00e9 */',
  survey: surveyOf(baseSurvey()),
  seed: 1,
  samples: 100,
};
const OPTIONS: PageOptions = { worked: [], version: '0.0.0', live };

/** Text as a reader sees it. */
function readable(html: string): string {
  return html
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('\u00a0', ' ')
    .replace(/&#39;/g, "'")
    .replace(/\s+/g, ' ');
}

/** A warning with its place in a file, and a measurement worth waiting for. */
const withDoubt = (change: (report: Report) => void = () => {}) =>
  invented((report) => {
    report.result.warnings.push({
      code: 'dry-too-soon',
      message: "'dry' in P1 says nothing",
      file: 'water.csv',
      line: 7,
      column: 'reading',
    });
    report.result.recommendation.measure_next.push({
      what: 'a dip in the standpipe',
      where: 'P2',
      month: 2,
      waits: true,
      chance_to_change: 0.12,
      worth_drains: 0.3,
    });
    change(report);
  });

describe('the page', () => {
  const report = withDoubt();
  const html = pageHtml(report, OPTIONS);

  it('allows exactly the scripts it holds, as a browser reads them', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)![1]!;
    const scripts = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, script]) => script!);
    expect(scripts).toHaveLength(1);
    expect(scripts[0]).not.toContain('\r');
    const hashes = scripts.map(
      (script) => `'sha256-${createHash('sha256').update(script).digest('base64')}'`,
    );
    expect(policy).toContain(`script-src ${hashes.join(' ')};`);
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe');
    expect(html).not.toMatch(/ (?:on[a-z]+|style)="/);
  });

  it('puts the verdict before the script, which is there once', () => {
    const words = readable(html);
    const { full, emptied, water, unknown, recommendation } = verdictWords(report);
    for (const part of [full, emptied, water, unknown, recommendation]) expect(words).toContain(part);
    expect(html.indexOf('When it is full')).toBeLessThan(html.indexOf('window.drawn'));
    expect(html.split('window.drawn')).toHaveLength(2);
  });

  it('shows the numbers of the result', () => {
    const words = readable(html);
    expect(words).toContain(report.result.survey.sha256);
    expect(words).toContain('water.csv:7 reading');
    for (const { item } of report.result.drain!.quantities) expect(words).toContain(item);
    for (const { title } of [
      { title: 'Collapse.' },
      { title: 'Buried services.' },
      { title: 'Discharge and consent.' },
    ])
      expect(words.split(title)).toHaveLength(2);
    expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });

  it('says the caution on discharge only where water is led away', () => {
    const dry = invented((each) => {
      each.result.drain = null;
      each.outlet = null;
      each.result.recommendation.option = 'no-drain';
    });
    expect(readable(pageHtml(dry, OPTIONS))).not.toContain('Discharge and consent.');
  });

  it('shows hostile text as letters and runs none of it', () => {
    const evil = `</script><script>alert(1)</script><img src=x onerror="alert(2)">'"&\u0000\u202e`;
    const hostile = withDoubt((each) => {
      const { result } = each;
      result.survey.name = evil;
      result.ground.layers[0]!.texture = evil;
      result.ground.layers[0]!.pit = evil;
      result.ground.layers[0]!.evidence = [evil];
      result.recommendation.reason = evil;
      result.recommendation.rules[0]!.text = evil;
      result.recommendation.measure_next[0]!.where = evil;
      result.drain!.outlet = evil;
      result.drain!.quantities[0]!.item = evil;
      result.drain!.weakest_link = evil;
      result.assumptions[0]!.reason = evil;
      result.warnings[0]!.message = evil;
      result.warnings[0]!.file = evil;
      result.options[5]!.why_not = evil;
      result.tipping_points[0]!.input = evil;
      each.outlet!.name = evil;
      each.dips[0]!.pit = evil;
    });
    const page = pageHtml(hostile, OPTIONS);
    expect(page.match(/<script/g)).toHaveLength(2);
    expect(page.match(/<\/script>/g)).toHaveLength(2);
    expect(page).not.toContain('<img');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
    expect(page).not.toMatch(/[\u0000\u202e]/);
    expect(page).toContain('&lt;/script&gt;&lt;script&gt;alert(1)');
  });

  it('refuses a script that would break out of its element', () => {
    const broken = { ...OPTIONS, live: { ...live, script: "'</script>'" } };
    expect(() => pageHtml(report, broken)).toThrow('invalid script');
  });

  it('shows the worked steps it is given', () => {
    const step = {
      title: 'Net head on the liner',
      symbol: 'N',
      unit: 'm',
      expression: 'p - h',
      inputs: [
        { symbol: 'p', meaning: 'pond level', unit: 'm', value: 0.25, shown: 0.25, from: 'pond.csv line 4' },
      ],
      number: 1,
      compute: () => 0.31,
      shown: 0.31,
      result: 0.31,
      validity: 'below the surface',
      source: 'hydrostatics',
    };
    const worked = [
      {
        heading: 'Full',
        note: 'Middle case.',
        from: [{ file: 'pond.csv', line: 4 }],
        steps: [step],
        again: [],
        equals: [],
      },
    ];
    const words = readable(pageHtml(report, { ...OPTIONS, worked }));
    expect(words).toMatch(
      /1\. Net head on the liner: N = p - h ?; p = 0.25 m \[pond.csv line 4\] ?; N = 0.31 m/,
    );
    expect(words).toContain('p: pond level, m');
  });

  it('reads in US units where the survey does', () => {
    const us = reportOf(assessmentOf(surveyOf(briefDemo('clay-slope'))), { units: 'us' });
    const words = readable(pageHtml(us, OPTIONS)).split('The worked calculation, step by step Recorded')[0]!;
    expect(words).toContain('Yes, 3 ft 3 1/2 in deep');
    expect(words).not.toMatch(/\d m deep|\d kPa/);
  });
});

describe('the verdict', () => {
  it('says when the liner lifts under a full pond, by how much and where', () => {
    const { full } = verdictWords(
      invented((report) => {
        report.result.options[0]!.full = {
          net_head_m: { p10: -0.14, p50: -0.02, p90: 0.1 },
          where: 'uphill wall',
          safe: false,
        };
      }),
    );
    expect(full).toContain(
      'With no drain the liner lifts: in one year of ten the water outside rises 0.14 m or more',
    );
    expect(full).toContain('With the drain to an outlet it stays down');
  });

  it('says in which months it may be emptied, and how soon it lifts in the month planned', () => {
    const { emptied } = verdictWords(invented());
    expect(emptied).toContain('With no drain it may be emptied only from July to September');
    const [, hours] = /Emptied in March as planned, liner or sides could give way after about (\d+) h\./.exec(
      emptied,
    )!;
    expect(Number(hours)).toBe(Math.floor(invented().result.options[0]!.hours_empty_safe![2]!));
    expect(emptied).toContain('With the drain to an outlet it may be emptied in any month.');
  });

  it('says where the water goes', () => {
    // 18 m south of the middle of a pond whose low rim lies 1.7 m south of it.
    expect(verdictWords(invented()).water).toContain('pipe-end, 16.30 m from the pond');
  });
});

describe('the check by hand', () => {
  const [check] = invented().result.uplift_check;

  it('stands in one line that a calculator follows', () => {
    const line = upliftLine(check!, 'metric');
    const [, high, floor, lifts] =
      /Lifts: 1\.0 × 9\.81 × \(\+?([\d.]+) − \(\u2212([\d.]+)\)\) = ([\d.]+) kPa/.exec(line)!;
    expect(9.81 * (Number(floor) + Number(high))).toBeCloseTo(Number(lifts), 2);
    expect(line).toContain(
      `= ${check!.utilisation.toFixed(2)}, at most 1: ${check!.utilisation <= 1 ? 'met' : 'not met'}.`,
    );
    // Whatever the levels, the printed product is that of the printed numbers, in either system.
    for (let at = 0; at < 60; at++)
      for (const [units, unit, digits] of [
        ['metric', 9.81, 2],
        ['us', 62.45, 1],
      ] as const) {
        const printed = upliftLine({ ...check!, high_m: -0.03 + at * 0.00137 }, units).replaceAll(
          '\u2212',
          '-',
        );
        for (const [, factor, upper, lower, size] of printed.matchAll(
          /([\d.]+) × [\d.]+ × \((-?[\d.]+) - ?\(?(-?[\d.]+)\)?\) = ([\d.]+)/g,
        ))
          expect(Number(factor) * unit * (Number(upper) - Number(lower))).toBeCloseTo(
            Number(size),
            digits - 0.3,
          );
      }
    expect(upliftLine(check!, 'us')).toContain('62.45');
  });

  it('says so where nothing lifts, and where it is not met', () => {
    expect(upliftLine({ ...check!, lifting_pa: 0, utilisation: 0 }, 'metric')).toContain('nothing lifts');
    expect(upliftLine({ ...check!, utilisation: 1.2, met: false }, 'metric')).toContain('not met');
    const empty = { ...check!, pond_m: check!.floor_m, ballast_m: 0, utilisation: 1e9, met: false };
    expect(upliftLine(empty, 'metric')).toMatch(/= 0\.00 kPa\. Nothing holds: not met\.$/);
  });
});

describe('water-year.csv', () => {
  it('has a row a day, six digits, and nothing where there is no such water', () => {
    const report = invented((each) => {
      each.water_year[0]!.table_depth_m.p10 = 1 / 3;
    });
    const [header, first, ...rest] = waterYearCsv(report).trimEnd().split('\r\n');
    expect(header).toBe(
      'date,table_depth_m_p10,table_depth_m_p50,table_depth_m_p90,tub_level_m_p10,tub_level_m_p50,tub_level_m_p90,' +
        'head_undrained_m_p10,head_undrained_m_p50,head_undrained_m_p90,head_drained_m_p10,head_drained_m_p50,head_drained_m_p90,' +
        'uphill_wall_m_p10,uphill_wall_m_p50,uphill_wall_m_p90,pond_level_m_p10,pond_level_m_p50,pond_level_m_p90',
    );
    expect(first!.split(',').slice(0, 2)).toEqual(['2014-10-01', '0.333333']);
    expect(first!.split(',').slice(4, 7)).toEqual(['', '', '']);
    // Held 50 mm below a full level of 0.3 m.
    expect(first!.split(',').slice(-3)).toEqual(['0.25', '0.25', '0.25']);
    expect(rest).toHaveLength(report.water_year.length - 1);
  });

  it('has twelve rows by month', () => {
    expect(waterYearCsv(inventedByMonth()).split('\n')[1]).toMatch(/^--01,/);
  });
});
