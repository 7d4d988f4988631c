import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { pageHtml, upliftCheck, verdictWords, waterYearCsv } from '../../lib/page/index.js';
import { invented, inventedByMonth } from '../figures/report.js';

/** Stands for the figure library where no browser draws. */
const PLOTLY = 'window.drawn = true;\r\n/* \u00e9 */';

/** Text as a reader sees it. */
function readable(html: string): string {
  return html
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('\u00a0', ' ')
    .replace(/&#39;/g, "'")
    .replace(/\s+/g, ' ');
}

describe('the page', () => {
  const report = invented();
  const html = pageHtml(report, { plotly: PLOTLY });

  it('allows exactly the scripts it holds, as a browser reads them', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)![1]!;
    const scripts = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, script]) => script!);
    expect(scripts).toHaveLength(2);
    expect(scripts[0]).not.toContain('\r');
    const hashes = scripts.map(
      (script) => `'sha256-${createHash('sha256').update(script).digest('base64')}'`,
    );
    expect(policy).toContain(`script-src ${hashes.join(' ')};`);
    expect(policy).toContain("default-src 'none'");
    expect(/script-src[^;]*unsafe/.test(policy)).toBe(false);
    expect(/ on[a-z]+="/.test(html)).toBe(false);
  });

  it('puts the verdict before the library, which is there once', () => {
    const words = readable(html);
    const { full, emptied, water, unknown, recommendation } = verdictWords(report);
    for (const part of [full, emptied, water, unknown, recommendation]) expect(words).toContain(part);
    expect(html.indexOf('When it is full')).toBeLessThan(html.indexOf('window.drawn'));
    expect(html.split('window.drawn')).toHaveLength(2);
  });

  it('shows the numbers of the result', () => {
    const words = readable(html);
    expect(words).toContain(report.result.survey.sha256);
    expect(words).toContain('0.49 m'); // fall available
    expect(words).toContain('19.5 m²'); // filter fabric
    expect(words).toContain('water.csv:7 reading');
    expect(words).toContain('Keep the water above November to April, +50 mm');
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
    expect(readable(pageHtml(dry, { plotly: PLOTLY }))).not.toContain('Discharge and consent.');
  });

  it('shows hostile text as letters and runs none of it', () => {
    const evil = `</script><script>alert(1)</script><img src=x onerror="alert(2)">'"&\u0000\u202e`;
    const hostile = invented((each) => {
      const { result } = each;
      result.survey.name = evil;
      result.ground.layers[0]!.texture = evil;
      result.ground.layers[0]!.pit = evil;
      result.ground.layers[0]!.evidence = [evil];
      result.recommendation.reason = evil;
      result.recommendation.rules[0]!.text = evil;
      result.recommendation.rules[0]!.code = evil;
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
    const page = pageHtml(hostile, { plotly: PLOTLY });
    expect(page.match(/<script/g)).toHaveLength(3);
    expect(page.match(/<\/script>/g)).toHaveLength(3);
    expect(page).not.toContain('<img');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
    expect(page).not.toMatch(/[\u0000\u202e]/);
    expect(page).toContain('&lt;/script&gt;&lt;script&gt;alert(1)');
  });

  it('refuses a library that would break out of its script', () => {
    expect(() => pageHtml(report, { plotly: "'</script>'" })).toThrow('invalid script');
  });

  it('shows the worked steps it is given', () => {
    const step = {
      title: 'Net head on the liner',
      symbol: 'N',
      unit: 'm',
      expression: 'p - h',
      inputs: [{ symbol: 'p', meaning: 'pond level', unit: 'm', value: 0.25 }],
      result: 0.31,
      validity: 'below the surface',
      source: 'hydrostatics',
    };
    const worked = [
      { heading: 'Full', note: 'Middle case.', from: [{ file: 'pond.csv', line: 4 }], steps: [step] },
    ];
    const words = readable(pageHtml(report, { plotly: PLOTLY, worked }));
    expect(words).toContain('N = p - h; p = 0.25 m (pond level) N = 0.31 m');
    expect(words).toContain('From pond.csv:4.');
  });

  it('reads in US units where the survey does', () => {
    const us = invented((each) => {
      each.units = 'us';
    });
    const words = readable(pageHtml(us, { plotly: PLOTLY })).split('Methods and sources')[0]!;
    expect(words).toContain('dug 3 ft 3 1/2 in deep');
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
    expect(emptied).toContain('With no drain it may be emptied in July to September only');
    expect(emptied).toContain('Emptied in March as planned, the liner could lift after about 30 h.');
    expect(emptied).toContain('With the drain to an outlet it may be emptied in any month.');
  });

  it('says where the water goes', () => {
    expect(verdictWords(invented()).water).toContain('pipe-end, 18.00 m from the pond');
  });
});

describe('the check by hand', () => {
  // By hand: lowest 0.25; net head 0.41 - 0.1 * 1.6449/1.2816 = 0.28165; high -0.03165; uplift 0.96835 * 9810 Pa;
  // holding 0.9 * 1.25 * 9810 Pa.
  it('carries the high to 1 in 20 and factors what holds', () => {
    const report = invented();
    const check = upliftCheck(report, report.result.options[0]!, 0, 1);
    expect(check.high95).toBeCloseTo(-0.03165, 4);
    expect(check.lifting).toBeCloseTo(0.96835 * 9810, 0);
    expect(check.holding).toBeCloseTo(0.9 * 1.25 * 9810, 0);
    expect(check.met).toBe(true);
  });

  it('fails where the margin is less than a tenth of the depth', () => {
    const report = invented();
    report.result.options[0]!.full.net_head_m = { p10: 0.05, p50: 0.05, p90: 0.2 };
    expect(upliftCheck(report, report.result.options[0]!, 0, 1).met).toBe(false);
  });
});

describe('water-year.csv', () => {
  it('has a row a day, six digits, and nothing where there is no such water', () => {
    const report = invented((each) => {
      each.water_year[0]!.table_depth_m.p10 = 1 / 3;
    });
    const [header, first, ...rest] = waterYearCsv(report).trimEnd().split('\n');
    expect(header).toBe(
      'date,table_depth_m_p10,table_depth_m_p50,table_depth_m_p90,tub_level_m_p10,tub_level_m_p50,tub_level_m_p90,' +
        'head_undrained_m_p10,head_undrained_m_p50,head_undrained_m_p90,head_drained_m_p10,head_drained_m_p50,head_drained_m_p90',
    );
    expect(first!.split(',').slice(0, 2)).toEqual(['2019-10-01', '0.333333']);
    expect(first!.split(',').slice(4, 7)).toEqual(['', '', '']);
    expect(rest).toHaveLength(report.water_year.length - 1);
  });

  it('has twelve rows by month', () => {
    expect(waterYearCsv(inventedByMonth()).split('\n')[1]).toMatch(/^--01,/);
  });
});
