import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { type DrainInput, designDrain } from '../../lib/drain/index.js';
import {
  drainLinkTable,
  drainPlanFigure,
  drainSectionFigure,
  drainSourceTable,
  fallTable,
  pipeTable,
  shoppingTable,
} from '../../lib/figures/index.js';
import { siteModel } from '../../lib/site/index.js';
import { LINK_NAMES } from '../../lib/text/index.js';
import { briefDemo, surveyOf } from '../folder.js';

const INPUT: DrainInput = {
  floor: -1,
  floorArea: 6,
  floorLength: 3,
  floorWidth: 2,
  sideArea: 12,
  inflow: { clay: 1e-6, ring_storm: 0, roof: 0, uphill: 0, leak: 2e-5 },
  end: { kind: 'outlet', name: '<i>ditch</i>', level: -1.4, distance: 15 },
};

interface Trace {
  name: string;
  x: number[];
  y: number[];
}

describe.each(['metric', 'us'] as const)('figures of the drain, %s', (units) => {
  const drain = designDrain(INPUT);

  test('the plan is to scale, carries its sizes and no foreign markup', () => {
    for (const size of ['wide', 'narrow'] as const) {
      const { data, layout, alt } = drainPlanFigure(drain, units, size);
      const pipe = (data as Trace[]).find((t) => t.name === 'pipe in the bed')!;
      expect(pipe.x[1] - pipe.x[0]).toBeCloseTo(3, 6);
      expect(JSON.stringify(layout)).not.toContain('<i>');
      expect(JSON.stringify(layout)).toContain(units === 'us' ? '49 ft 2 1/2 in' : '15.00 m');
      expect(alt).toContain('one pipe along the middle');
      for (const t of data as Trace[])
        for (const v of [...t.x, ...t.y]) expect(Number.isFinite(v)).toBe(true);
    }
  });

  test('a sump stands beside the pond, and its line is pumped to a named place', () => {
    const end = {
      kind: 'sump',
      name: 'sump',
      level: -1.15,
      distance: 9,
      to: 'gully',
      discharge: 0.5,
    } as const;
    const { data, layout, alt } = drainPlanFigure(designDrain({ ...INPUT, end }), units);
    const at = (name: string) => (data as Trace[]).find((t) => t.name === name)!.x;
    expect(at('sump')[0]).toBeCloseTo(1.5 + 0.5, 6);
    expect(at('run')[1]).toBe(at('sump')[0]);
    expect(at('pumped line')[0]).toBe(at('sump')[0]);
    expect(JSON.stringify(layout)).toContain('gully');
    expect(alt).toContain('a sump beside the pond');
  });

  test('branches are drawn where there are any', () => {
    const wet = designDrain({ ...INPUT, bed: 'concrete sand', inflow: { ...INPUT.inflow, clay: 5e-5 } });
    const branches = (drainPlanFigure(wet, units).data as Trace[]).filter((t) => t.name === 'branch');
    expect(branches).toHaveLength(wet.layout.branches);
    expect(branches.length).toBeGreaterThan(0);
  });

  test('a pipe round the foot of the sides is drawn round it, and a mat over its trench', () => {
    const ring = designDrain({
      ...INPUT,
      bed: 'masonry sand',
      inflow: { ...INPUT.inflow, leak: 0, uphill: 2e-4 },
    });
    expect(ring.layout.kind).toBe('ring');
    const { data, alt } = drainPlanFigure(ring, units);
    const pipe = (data as Trace[]).find((t) => t.name === 'pipe in the bed')!;
    expect(Math.max(...pipe.x) - Math.min(...pipe.x)).toBeCloseTo(2.8, 6);
    expect(Math.max(...pipe.y) - Math.min(...pipe.y)).toBeCloseTo(1.8, 6);
    expect(alt).toContain('round the foot of the sides');
    const mat = drainSectionFigure(designDrain({ ...INPUT, bed: 'drainage mat' }), units);
    const wide = (name: string) => {
      const { x } = (mat.data as Trace[]).find((t) => t.name === name)!;
      return Math.max(...x) - Math.min(...x);
    };
    expect(wide('drainage mat')).toBeCloseTo(0.6, 6);
    expect(wide('pea gravel')).toBeCloseTo(0.3, 6);
  });

  test('the section stacks the layers of the bed to its thickness', () => {
    const traces = drainSectionFigure(drain, units).data as Trace[];
    const top = (name: string) => Math.max(...traces.find((t) => t.name === name)!.y);
    expect(top('concrete sand')).toBeCloseTo(0.05, 6);
    expect(top('pea gravel')).toBeCloseTo(0.15, 6);
    // The pipe's lowest point lies at the underside of the bed, sand under it, stone over it.
    const pipe = traces.find((t) => t.name === 'pipe')!;
    expect(Math.min(...pipe.y)).toBeCloseTo(0, 6);
    expect(Math.max(...pipe.y)).toBeLessThan(0.12);
    expect(Math.min(...traces.find((t) => t.name === 'concrete sand')!.y)).toBeCloseTo(-0.05, 6);
    const fabric = drainSectionFigure(designDrain({ ...INPUT, bed: '20 mm stone in fabric' }), units)
      .data as Trace[];
    expect(fabric.map((t) => t.name)).toContain('fabric');
  });
});

test('tables say what the drain says', () => {
  const drain = judge(siteModel(surveyOf(briefDemo('clay-slope')), { samples: 100 })).drain!;
  expect(drainLinkTable(drain).rows[0]).toEqual([
    LINK_NAMES[drain.weakestLink],
    expect.any(String),
    'weakest',
  ]);
  expect(drainSourceTable(drain, 'metric').rows).toHaveLength(drain.sources.filter((s) => s.high > 0).length);
  expect(fallTable(drain, 'us').rows.map((r) => r[5])).toEqual(
    drain.links.map((l) =>
      l.has >= l.needs - 1e-9 ? 'enough' : l.link === 'drop' || l.link === 'flood' ? 'too little' : 'short',
    ),
  );
  expect(pipeTable(drain, 'us').rows.length).toBeGreaterThan(5);
  expect(shoppingTable(drain).rows).toHaveLength(drain.quantities.length);
});
