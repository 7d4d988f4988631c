import { describe, expect, it } from 'vitest';
import type { Report } from '../../lib/contract/index.js';
import { pageHtml } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { doubtWords, spotWords, wishWords } from '../../lib/text/asked.js';
import { MOVED_NAMES } from '../../lib/text/inputNames.js';
import { mayTurn } from '../../lib/text/tippingText.js';
import { briefDemo, surveyOf } from '../folder.js';
import { assessmentOf } from './demoPage.js';

const page = (report: Report) => pageHtml(report, { worked: [], version: '0.0.0' }).replaceAll('\u00a0', ' ');

describe('the page says in plain words', () => {
  const slope = reportOf(assessmentOf(surveyOf(briefDemo('clay-slope'))));

  it('whether the depth wished may be dug', () => {
    expect(wishWords(slope, 'metric')).toBe(
      'With nothing done: no, at no depth. With what is recommended (drain to an outlet): yes, and down to 1.20 m.',
    );
    expect(page(slope)).toContain('<h3>May I dig 1.00 m deep, as wished?</h3>');
    const dry = reportOf(assessmentOf(surveyOf(briefDemo('loam-terrace'))));
    // The water stands 2.5 m down and the ring is dry; deeper the sides are of sand, too steep as drawn, and an inch higher
    // where the ground is highest. The sand planned under the liner is left out, so no more is dug than the pond.
    expect(wishWords(dry, 'us')).toBe('With nothing done: yes, and down to 4 ft 1 in.');
    const shallow = structuredClone(slope);
    for (const option of shallow.result.options) option.safe_depth_m = 0.6;
    shallow.result.recommendation.option = 'measure-first';
    expect(wishWords(shallow, 'metric')).toContain('no, only 0.60 m.');
    expect(wishWords(shallow, 'metric')).toMatch(/But measure before you dig\.$/);
  });

  it('what the doubt comes from, the greatest share first', () => {
    const known = structuredClone(slope);
    known.result.drivers = [
      { input: 'strength of the clay', first_order: 0.01, total: null },
      { input: 'permeability of the ground', first_order: 0.2, total: null },
      { input: 'level of the water in the clay', first_order: 0.62, total: null },
    ];
    expect(doubtWords(known)).toBe(
      'Most of the doubt comes from level of the water in the clay (62 %), then from permeability of the ground (20 %). Hardly any comes from strength of the clay.',
    );
    known.result.drivers = [];
    expect(doubtWords(known)).toBe('Nothing that is not known moves the answer by itself.');
  });

  it('which spot is best, where more than one has a known level of water', () => {
    expect(spotWords(slope, 'metric')).toEqual([]);
    expect(page(slope)).not.toContain('the best spot first');
    const several = structuredClone(slope);
    several.result.spots = [
      {
        spot: '<b>top</b>',
        planned: false,
        option: 'no-drain',
        depth_m: 1,
        water_depth_m: 1.6,
        spread_m: 0.1,
        reason: 'water 1.20 m deeper than at P1, by the looks',
      },
      {
        spot: 'P1',
        planned: true,
        option: 'drain-to-outlet',
        depth_m: 1,
        water_depth_m: 0.4,
        spread_m: 0.05,
        reason: 'the planned spot',
      },
    ];
    expect(spotWords(several, 'metric')[1]).toBe(
      'P1: drain to an outlet, 1.00 m deep. Water 0.40 m below the ground when it was read, give or take 5 cm; the planned spot.',
    );
    expect(page(several)).toMatch(
      /the best spot first<\/h3><ol><li>&lt;b&gt;top&lt;\/b&gt;: no drain, 1.00 m deep/,
    );
  });

  it('what could still turn the answer, as nobody names a row of a table', () => {
    const unsure = (input: string, unit: string) => ({
      input,
      unit,
      value: 0.2,
      now: { p10: 0.1, p50: 0.3, p90: 0.4 },
      from: 'no-drain' as const,
      to: 'shallower' as const,
      emptying_ruled: false,
    });
    const water = unsure(MOVED_NAMES['water-outside'], 'm');
    expect(mayTurn([water, water])).toEqual(['how high the water in the ground comes in a wet year']);
    // Every name is known again.
    for (const name of Object.values(MOVED_NAMES)) expect(mayTurn([unsure(name, 'm')])[0]).toMatch(/^how /);
  });

  it('what to buy and to dig where no drain is recommended, but not before the first measurement', () => {
    const dry = reportOf(assessmentOf(surveyOf(briefDemo('loam-terrace'))));
    expect(page(dry)).toContain('clay to dig for the pond, before it is loosened');
    dry.result.recommendation.option = 'measure-first';
    dry.result.build = null;
    expect(page(dry)).toContain('Buy and dig nothing yet');
    expect(page(dry)).not.toContain('clay to dig for the pond, before it is loosened');
  });
});
