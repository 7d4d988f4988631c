import {
  OPEN_WATER,
  openWaterEvaporation,
  type PondForcing,
  pondSeries,
  pondStage,
  runPond,
} from '../../lib/pond/index.js';
import type { Check } from './check.js';

const LAKE = { shape: 'box' as const, length: 100, width: 100, sideSlope: 0 };
const ACRE = 4046.8564224;
const FOOT3 = 0.3048 ** 3;

/** Rise of an upright pond of 1 ha, half empty, in one step, m. */
function rise(forcing: { rain: number; demand: number; inflow: number; leak: number }): number {
  const stage = pondStage(LAKE, 0, 20);
  const months: PondForcing = {
    rain: [0, forcing.rain],
    demand: [0, forcing.demand],
    inflow: [0, forcing.inflow * stage.catchment],
    leak: 0,
    coefficient: 1,
  };
  // The first step lets half of it go.
  const out = pondSeries(2);
  runPond(stage, { ...months, demand: [10, forcing.demand + forcing.leak] }, out);
  return out.drawdown[0] - out.drawdown[1];
}

export const pondChecks: Check[] = [
  {
    covers: ['openWaterEvaporation'],
    what: 'open water shallower than 2 m at 5 mm a day of reference evapotranspiration, mm',
    kind: 'published',
    source:
      'FAO Irrigation and Drainage Paper 56, eq. 58 and Table 12, open water: Kc 1.05 mid and end of season',
    ours: () => 1000 * openWaterEvaporation.compute(OPEN_WATER.coefficient, 0.005),
    expected: 5.25,
    tolerance: 1e-9,
  },
  {
    covers: ['pondBalance'],
    what: 'Clear Lake in a month: inflow 1.5, outflow 1.25 m³/s on 70.8 ha, rain 24 cm, evaporation found 15.5254 cm; rise, cm',
    kind: 'published',
    source:
      'Bedient, Huber & Vieux, Hydrology and Floodplain Analysis, problem 1.7, as worked at engineering-math.org: 100 cm',
    ours: () => {
      const over = (flow: number) => (flow * 30 * 86400) / 708000;
      return 100 * rise({ rain: 0.24, demand: 0.155254, inflow: over(1.5), leak: over(1.25) });
    },
    expected: 100,
    tolerance: 0.001,
  },
  {
    covers: ['pondBalance'],
    what: 'a lake of 142 acres in July: inflow 88, outflow 78 cfs, rain 9.8, evaporation 16.5 in; water won, acre-feet',
    kind: 'published',
    source:
      'worked test of a course in water resources engineering (CE 304, 2018): 530 acre-feet, area rounded to 142 acres',
    ours: () => {
      const over = (flow: number) => (flow * FOOT3 * 31 * 86400) / (142 * ACRE);
      const metres = rise({ rain: 9.8 * 0.0254, demand: 16.5 * 0.0254, inflow: over(88), leak: over(78) });
      return (metres / 0.3048) * 142;
    },
    expected: 530,
    tolerance: 8,
  },
];
