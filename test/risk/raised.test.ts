import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { judge } from '../../lib/decision/index.js';
import { isDiggable } from '../../lib/digging/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { raiseNeeded } from '../../lib/options/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { depthRows } from '../../lib/text/depthRows.js';
import { headlineOf } from '../../lib/text/index.js';
import { surveyOf, withItem } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { baseSurvey } from './base.js';

describe('a raised rim', () => {
  // A twentieth of a foot is no whole number of tenths of a millimetre: steps rounded to those never reached it.
  test.each([0.05, 0.65, 0.7, 1.15, 1.95])('is tried up to just what is allowed: %s ft', (feet) => {
    // Soft clay: no depth worth the name may be dug, so that every step is tried.
    const base = baseSurvey({ level: -0.05 });
    const soft = { ...base, 'pits.csv': base['pits.csv']!.replace('stiff,1e-7,60', 'soft,1e-7,3') };
    const steep = withItem(soft, 'pond.csv', 'side_slope', '0.2', '');
    const files = withItem(steep, 'pond.csv', 'highest_raise', String(feet), 'ft');
    const basis = basisOf(siteModel(surveyOf(files), { samples: 16 }));
    expect(isDiggable(basis, { ...NOTHING, raise: basis.site.pond.highestRaise })).toBe(false);
    expect(raiseNeeded(basis, NOTHING)).toBe(basis.site.pond.highestRaise);
    expect(basis.site.pond.highestRaise).toBeCloseTo(feet * 0.3048, 9);
  });
});

describe('several options at once', () => {
  const garden = judge(siteModel(parseSurvey(generatedGarden(9).files, { name: 'garden' }), { samples: 32 }));

  test('are built in this garden', () => {
    expect(garden.decision.measures).toMatchObject({ way: 'keptOut' });
    expect(garden.decision.measures.raise).toBeGreaterThan(0);
  });

  test('have a curve of their own, with the depth that is dug in it', () => {
    const { advised, decision } = garden;
    const at = advised.depth_m.indexOf(decision.depth);
    expect(advised.per_year[at]).toBe(decision.verdict!.chance.perYear);
    expect(advised.safe[at]).toBe(decision.verdict!.safe);
    const alone = garden.curves.find(({ option }) => option === advised.option)!;
    // By itself the raised rim is not what holds.
    expect(alone.per_year).not.toEqual(advised.per_year);
  });

  test('are all named in the answer and in the row of what is recommended', () => {
    const report = reportOf(garden);
    expect(headlineOf(report).answer).toMatch(/rim and floor raised .*rain water kept away/);
    const [row] = depthRows(report, 'metric', () => true);
    expect(row!.name).toBe('Pond raised, surface water kept out');
    expect(row!.safe_m).toBeGreaterThanOrEqual(garden.decision.depth);
  });
});
