import type { Obstacle, OptionName } from '../contract/index.js';
import type { Measures } from '../heads/index.js';

/** An option made concrete for a site, or the reason why it cannot be had. */
export interface Option {
  name: OptionName;
  measures?: Measures;
  why?: Obstacle;
}
