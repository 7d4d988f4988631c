import { describe, expect, test } from 'vitest';
import {
  Assumptions,
  groundOf,
  permeabilityAround,
  permeabilityOfHole,
  soilTestsOf,
  strengthAt,
} from '../../lib/site/index.js';
import { drainablePorosity, permeabilityFromTexture, strengthFromConsistency } from '../../lib/soil/index.js';
import { read } from '../survey/folder.js';

function ground(pits: string | undefined, extra: Record<string, string> = {}) {
  const header = 'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa,organic_pct';
  const survey = read({ 'pits.csv': pits === undefined ? undefined : `${header}\n${pits}\n`, ...extra });
  const assume = new Assumptions();
  return {
    ...groundOf(survey, soilTestsOf(survey).tests, assume),
    assumed: assume.list.map((a) => a.item),
  };
}
const TOPSOIL = 'P1,0,0.3,clay loam,rooted,,,,,';

describe('permeability around the hole', () => {
  test('tests of one kind of layer are pooled over the holes, and outweigh the table', () => {
    const log = (...permeability: string[]) =>
      ground([TOPSOIL, ...permeability.map((k, i) => `P${i + 1},0.3,2,clay,massive,,,${k},,`)].join('\n'))
        .permeability;
    const [table, one, two] = [log(''), log('1e-9'), log('1e-9', '1e-7')];
    expect(Math.abs(Math.log(one.median / 1e-9))).toBeLessThan(0.3 * Math.abs(Math.log(table.median / 1e-9)));
    expect(two.median).toBeGreaterThan(3 * one.median);
    // Between the table and the geometric mean, near the mean: within a factor of 2.
    expect(two.median).toBeGreaterThan(1e-8 / 2);
    expect(two.median).toBeLessThan(1e-8 * 2);
    expect(one.spread).toBeLessThan(table.spread);
    expect(log('1e-8', '1e-8', '1e-8').spread).toBeLessThan(log('1e-8').spread);
    expect(two.evidence.join()).toMatch(/measured here 2 times|2 tests|P2/);
  });

  test('without a test the table of the texture', () => {
    const g = ground(`${TOPSOIL}\nP1,0.3,2,clay,massive,,,,,`);
    expect(g.permeability.median).toBeCloseTo(
      permeabilityFromTexture({ texture: 'clay', structure: 'massive' }).median,
      20,
    );
    expect(g.porosity).toEqual(drainablePorosity('clay'));
    expect(g.clayey).toBe(true);
  });

  test('layers are weighed by thickness down to half a metre under the floor', () => {
    // 0.3–0.8 m at 1e-6, 0.8–1.5 m at 1e-8, deeper not touched.
    const g = ground(
      `${TOPSOIL}\nP1,0.3,0.8,sandy loam,,,,1e-6,,\nP1,0.8,1.5,clay,massive,,,1e-8,,\nP1,1.5,3,gravel,,,,1e-2,,`,
    );
    const [, loam, clay, gravel] = g.layers.map((l) => l.permeability.median);
    expect(loam).toBeGreaterThan(10 * clay);
    expect(gravel).toBeGreaterThan(1000 * loam);
    expect(permeabilityAround(g, 1).median / ((0.5 * loam + 0.7 * clay) / 1.2)).toBeCloseTo(1, 12);
    expect(permeabilityAround(g, 1.1).median).toBeGreaterThan(10 * permeabilityAround(g, 1).median);
    // A hole gathers through what it is open to: all of it, or its lower end.
    expect(permeabilityOfHole(g, 'P1', undefined, 0.7).median).toBeCloseTo(loam, 15);
    expect(permeabilityOfHole(g, 'P1', 0.9, 1.4).median).toBeCloseTo(clay, 15);
  });
});

describe('strength of the sides', () => {
  test('of tests, else of the softest word, else assumed firm and said', () => {
    expect(strengthAt(ground(`${TOPSOIL}\nP1,0.3,2,clay,,,stiff,,60,`), 1)!.median).toBeCloseTo(60000, 6);
    const words = `${TOPSOIL}\nP1,0.3,0.9,clay,,,stiff,,,\nP1,0.9,2,silty clay,,,soft,,,`;
    expect(strengthAt(ground(words), 1)).toEqual(strengthFromConsistency('soft'));
    // Half a metre above the soft layer it is not felt yet.
    expect(strengthAt(ground(words), 0.4)).toEqual(strengthFromConsistency('stiff'));
    const silent = ground(`${TOPSOIL}\nP1,0.3,2,clay,,,,,,`);
    expect(strengthAt(silent, 1)!.median).toBe(strengthFromConsistency('firm').median);
    expect(strengthAt(silent, 1)!.spread).toBeGreaterThan(strengthFromConsistency('firm').spread);
    expect(silent.assumed).toContain('consistency');
  });

  test('none where no clay was logged', () => {
    expect(strengthAt(ground('P1,0,0.3,sandy loam,rooted,,,,,\nP1,0.3,2,sand,,,,,,'), 1)).toBeUndefined();
  });
});

describe('what the log shows', () => {
  test('topsoil, where mottles begin, where peat begins', () => {
    const g = ground(
      `${TOPSOIL}\nP1,0.3,0.7,clay,blocky,few,,,,\nP1,0.7,1.2,clay,massive,common,,,,\nP2,0.9,1.6,peat,,,,,,\nP2,0,0.9,clay,massive,none,,,,`,
    );
    expect(g.topsoil).toBe(0.3);
    expect(g.colour).toMatchObject({ from: 0.7 });
    expect(g.organicTop).toBe(0.9);
  });

  test('without any log clay is assumed and said', () => {
    const g = ground(undefined);
    expect(g.assumed).toContain('pits.csv');
    expect(g.clayey).toBe(true);
    expect(g.topsoil).toBe(0.3);
  });
});

test('a layer without a name is what its percentages say, and clay only without either', () => {
  const layers = (...rows: string[]) => {
    const header = 'pit,top_m,bottom_m,texture,sand_pct,silt_pct,clay_pct,consistency';
    const survey = read({ 'pits.csv': `${header}\n${rows.join('\n')}\n` });
    return groundOf(survey, [], new Assumptions());
  };
  const sandy = layers('P1,0,2.5,,85,13,2,firm');
  expect(sandy.layers[0].texture).toBe('loamy sand');
  // Sand has no strength undrained, and its sides are those of sand.
  expect(sandy.sides[0].texture).toBe('loamy sand');
  expect(layers('P1,0,2.5,,10,10,80,firm').layers[0].texture).toBe('clay');
  expect(layers('P1,0,2.5,,48,0,53,firm').layers[0].texture).toBe('sandy clay');
  expect(layers('P1,0,2.5,,,,,firm').layers[0].texture).toBe('clay');
});
