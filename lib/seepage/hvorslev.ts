import { formula } from '../formula/index.js';

const K = { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 };

/** Shape factor of a cylindrical intake in uniform ground. */
export const intakeShapeFactor = formula({
  title: 'Shape factor of a cylindrical intake (Hvorslev)',
  symbol: 'F',
  unit: 'm',
  expression: '2*pi*L/asinh(L/(2*R))',
  parameters: {
    L: { meaning: 'open length', unit: 'm', min: 0.02, max: 10 },
    R: { meaning: 'radius of the hole or sand pack', unit: 'm', min: 0.005, max: 0.5 },
  },
  compute: (L: number, R: number) => (2 * Math.PI * L) / Math.asinh(L / (2 * R)),
  validity: 'uniform ground, intake below the water; tends to 2πL/ln(L/R) for L/R > 8',
  source: 'Hvorslev 1951, case of the cylindrical intake (general form from memory)',
});

/** Shape factor of a pipe without screen, open at its end only. */
export const flushIntakeShapeFactor = formula({
  title: 'Shape factor of a pipe open at its end (Hvorslev)',
  symbol: 'F',
  unit: 'm',
  expression: '5.5*R',
  parameters: { R: { meaning: 'radius of the pipe', unit: 'm', min: 0.005, max: 0.5 } },
  compute: (R: number) => 5.5 * R,
  validity: 'flush end in uniform ground; 4 R where the end stands at the underside of a tight layer',
  source: 'Hvorslev 1951, flush-end cases (from memory)',
});

/** Basic time lag of a hole or standpipe. */
export const basicTimeLag = formula({
  title: 'Basic time lag of a hole or standpipe',
  symbol: 'T0',
  unit: 's',
  expression: 'pi*r^2/(F*K)',
  parameters: {
    r: { meaning: 'radius of the pipe or hole in which the water rises', unit: 'm', min: 0.003, max: 0.5 },
    F: { meaning: 'shape factor of the intake', unit: 'm', min: 0.01, max: 100 },
    K,
  },
  compute: (r: number, F: number, K: number) => (Math.PI * r * r) / (F * K),
  validity: 'after one lag 63 %, after 2.3 lags 90 % of the way to the level outside',
  source: 'Hvorslev 1951; K = r² ln(L/R)/(2 L T0) for L/R > 8 read in teaching notes',
});
