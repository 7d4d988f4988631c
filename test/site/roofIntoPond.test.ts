import { describe, expect, test } from 'vitest';
import { inflowBySource } from '../../lib/drain/index.js';
import { fullRing, roofInflow, type Site, siteModel, stormRing } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { flush } from '../risk/flush.js';

const site = (roof: number, files: Record<string, string>): Site =>
  siteModel(surveyOf(withItem(files, 'site.csv', 'roof_into_pond', String(roof), 'm2')), { samples: 8 });

describe('a roof led into the pond', () => {
  test('brings what exceeds the film on it, by the share that a roof sheds', () => {
    // 40 m², of which 0.95 is shed: 10 mm less a film of 1 mm, which dries; then 5 mm less 1 mm.
    const led = roofInflow(
      { rain: Float64Array.of(0.01, 0, 0.005), demand: Float64Array.of(0.002, 0.002, 0) },
      40,
    )!;
    expect([...led].map((v) => Number(v.toFixed(9)))).toEqual(
      [0.95 * 40 * 0.009, 0, 0.95 * 40 * 0.004].map((v) => Number(v.toFixed(9))),
    );
    expect(roofInflow({ rain: new Float64Array(2), demand: new Float64Array(2) }, 0)).toBeUndefined();
  });

  test('never lowers a pond that nobody tops up, on any day, nor the water of the ring that its brim spills into', () => {
    const files = flush('kept_within', 'never', { ring: '0.3', level: '0' });
    const sites = [0, 5, 25, 120].map((roof) => site(roof, files));
    for (let i = 1; i < sites.length; i++) {
      const [less, more] = [sites[i - 1]!.water, sites[i]!.water];
      const lower = more.daily!.drawdown!.reduce(
        (worst, fall, d) => Math.max(worst, fall - less.daily!.drawdown![d]!),
        0,
      );
      expect(lower).toBeLessThan(1e-6);
      for (const kind of ['month', 'emptied'] as const) {
        const drop = more.tub!.asIs[kind].reduce((worst, level, k) => {
          const before = less.tub!.asIs[kind][k]!;
          // A dry ring has no level.
          return before === level ? worst : Math.max(worst, before - level);
        }, 0);
        expect(drop, kind).toBeLessThan(1e-6);
      }
      expect(more.closure).toBeLessThan(1e-9);
    }
    // It stands fuller by far in a dry summer.
    const driest = ({ water }: Site) => Math.max(...water.daily!.drawdown!);
    expect(driest(sites[0]!)).toBeGreaterThan(driest(sites[3]!) + 0.1);
    // A storm on 120 m² comes over the brim: the ring stands higher in some month.
    const sum = ({ water }: Site) => water.tub!.asIs.month.reduce((a, b) => a + Math.max(b, -3), 0);
    expect(sum(sites[3]!)).toBeGreaterThan(sum(sites[0]!));
  });

  test('led away at the brim never reaches the ring', () => {
    const away = withItem(
      flush('kept_within', 'never', { ring: '0.3', level: '0' }),
      'pond.csv',
      'overflow',
      'away',
    );
    const levels = (roof: number) => [...site(roof, away).water.tub!.asIs.month];
    expect(levels(80)).toEqual(levels(0));
  });

  test('saves topping up', () => {
    const files = flush('kept_within', '0.05');
    const litres = (roof: number) => site(roof, files).water.pond!.topUp.reduce((a, b) => a + b, 0);
    expect(litres(40)).toBeLessThan(litres(0));
  });

  test('fills the ring on a heavy day where there is no weather, unless its brim is led away', () => {
    const { 'weather.csv': _, ...dry } = flush('kept_within', '0.05', { ring: '0.3', level: '0' });
    const tight = { level: -2, permeability: 0 };
    const at = (roof: number, overflow: 'ring' | 'away') => {
      const { tub, catchment } = site(roof, dry);
      const c = { ...catchment, overflow };
      return [
        stormRing(tub!, c, tight),
        fullRing({ ...tub!, exit: { level: -0.5, conductance: 0, perDepth: 1e-4 } }, c, tight),
      ];
    };
    expect(at(40, 'ring')[0]).toBeGreaterThan(at(0, 'ring')[0]!);
    expect(at(40, 'ring')[1]).toBeGreaterThan(at(0, 'ring')[1]!);
    expect(at(40, 'away')).toEqual(at(0, 'away'));
  });

  test('comes over the brim in the storm a drain is laid for', () => {
    const overflow = (pondRoof: number) =>
      inflowBySource({
        permeability: { low: 1e-9, likely: 1e-8, high: 1e-7 },
        radius: 1.5,
        head: 1,
        rain: 0.03,
        seconds: 3600,
        ring: { area: 2, capped: false },
        roofArea: 0,
        uphillArea: 0,
        cover: 'lawn',
        pondArea: 12,
        pondRoof,
        drawdown: 0.02,
        leakHead: 1,
      }).find(({ source }) => source === 'overflow')!.likely;
    // 12 m² lacks 20 mm: 0.12 m³; of 40 m² of roof come 0.95 × 30 mm = 1.14 m³.
    expect(overflow(0)).toBeCloseTo(0.12 / 3600, 9);
    expect(overflow(40)).toBeCloseTo(1.26 / 3600, 9);
  });
});
