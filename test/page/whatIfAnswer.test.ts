/** What is built stays as it is while other things are tried, and the question asked is answered. */
import { describe, expect, it } from 'vitest';
import { holder } from '../../lib/page/heldMeasures.js';
import type { WhatIf } from '../../lib/page/index.js';
import { trialColumn } from '../../lib/page/trialColumn.js';
import { viewOf } from '../../lib/page/whatIfView.js';
import type { Survey } from '../../lib/survey/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';

const OPTIONS = { seed: 1, samples: 48 };
const slope = briefDemo('clay-slope');
const hollow = briefDemo('clay-hollow');

function asking(survey: Survey) {
  const held = holder(survey, OPTIONS);
  const own = trialColumn(held.asked({}), 'metric');
  return { held, ask: (change: WhatIf) => viewOf(held, held.asked(change), own, 'metric') };
}

describe('the answer to what is tried', () => {
  const { held, ask } = asking(surveyOf(slope));

  it('holds what the survey is answered with, whatever would be recommended there', () => {
    expect(held.option).toBe('drain-to-outlet');
    expect(held.asked({ depth: 0.3 }).held!.decision.measures.drain?.kind).toBe('outlet');
    expect(ask({}).headline).toMatch(/^Safe at 1\.00 m with the drain to an outlet: it fails /);
    expect(held.asked({ option: 'no-drain' }).held!.decision.measures.drain).toBeUndefined();
  });

  it('says what fails, how often, and the first thing in the list that would mend it', () => {
    const { headline, standing } = ask({ option: 'no-drain' });
    expect(standing).toBe('unsafe');
    expect(headline).toMatch(
      /^Not safe at 1\.00 m with no drain: it fails .*; liner lifts when emptied\. A drain to an outlet would make it safe\./,
    );
  });

  it('calls nothing safe that fails oftener than is accepted, nor unsafe what does not', () => {
    for (const option of [undefined, 'no-drain', 'drain-to-sump'] as const)
      for (const depth of [0.4, 0.8, 1.2, 1.6, 2.2])
        for (const emptied of [undefined, 'never', 'any'] as const) {
          const change = { depth, ...(option && { option }), ...(emptied && { emptied }) };
          const { verdict } = held.asked(change).held!.decision;
          const { standing, headline } = ask(change);
          expect([headline, standing === 'safe']).toEqual([headline, verdict.safe]);
          if (standing === 'ruled') expect(verdict.kept && verdict.diggable).toBe(true);
          expect(headline.startsWith('Safe at')).toBe(verdict.safe);
        }
  });

  it('never emptied, a pond is not lifted when emptied', () => {
    expect(ask({ option: 'no-drain', emptied: 'never' }).headline).not.toContain('when emptied');
  });

  it('tells where what is held cannot be had', () => {
    const { headline, standing } = ask({ outlet: 0.5 });
    expect(standing).toBe('unsafe');
    expect(headline).toMatch(/^Drain to an outlet cannot be had as tried: /);
  });

  it('puts the survey beside what is tried', () => {
    const { rows } = ask({ depth: 1.2 }).compared;
    expect(rows.map(([what]) => what)).toEqual([
      'Depth',
      'Sides',
      'Rim raised by',
      'It fails, used as wished',
      'To spare',
      'May be emptied',
    ]);
    expect(rows[0]).toEqual(['Depth', '1.00 m', '1.20 m']);
  });
});

it('tells no chance against protected ground', () => {
  const { ask } = asking(surveyOf(withItem(hollow, 'site.csv', 'protected_ground', 'yes')));
  for (const depth of [0.3, 0.9, 1.5])
    expect(ask({ depth })).toMatchObject({
      standing: 'unsafe',
      headline: 'Do not dig, whatever is tried here: protected ground.',
      chances: '',
    });
});

it('calls nothing safe where the answer is to measure first', () => {
  const { 'water.csv': _, 'weather.csv': __, ...bare } = hollow;
  const { held, ask } = asking(surveyOf(bare));
  expect(held.own.decision.option).toBe('measure-first');
  for (const depth of [0.3, 0.9]) {
    const { headline, standing } = ask({ depth });
    expect(standing).not.toBe('safe');
    expect(headline).toMatch(/^Measure first\. As far as is known now: /);
  }
});
