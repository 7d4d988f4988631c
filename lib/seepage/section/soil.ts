import { formula } from '../../formula/index.js';

/** A soil in the section. */
export interface SectionSoil {
  /** conductivity across and downwards, full of water, m/s */
  across: number;
  down: number;
  /** sorptive number of Gardner's law, 1/m */
  sorptive: number;
  /** water that drains from it, as a share of its volume */
  drainable: number;
  /** water taken from storage below the table, per volume and metre of head, 1/m */
  storage: number;
}

/** Conductivity under suction. */
export const gardnerConductivity = formula({
  title: 'Conductivity of soil under suction over that of full soil (Gardner)',
  symbol: 'k_r',
  unit: '-',
  expression: 'exp(a*p)',
  parameters: {
    a: { meaning: 'sorptive number', unit: '1/m', min: 0.5, max: 60 },
    p: { meaning: 'pressure head, negative above the water table', unit: 'm', min: -0.25, max: 0 },
  },
  compute: (a: number, p: number) => Math.exp(a * p),
  validity: 'one number a soil; the drainable water follows the same law; beside it films of dry soil, 1e-8',
  source: 'Gardner 1958, Soil Science 85 (from memory)',
});
