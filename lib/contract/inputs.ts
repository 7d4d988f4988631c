import type { Driver, TippingPoint } from './result.js';

/** What drives the answer, by code. */
export type DriverInput =
  | 'ground-and-water'
  | 'building'
  | 'clay-strength'
  | 'clay-water'
  | 'permeability'
  | 'ring-water'
  | 'uphill-rise';

/** {@link Driver} by the code of its input. */
export type DriverShare = Omit<Driver, 'input'> & { input: DriverInput };

/** What is moved until the answer changes, by code. */
export type MovedInput =
  | 'water-outside'
  | 'full-level'
  | 'permeability'
  | 'accepted-risk'
  | 'held-level'
  | 'clay-strength';

/** {@link TippingPoint} by the code of its input. */
export type TurningPoint = Omit<TippingPoint, 'input'> & { input: MovedInput };
