import type { Basis } from '../basis/index.js';
import type { OptionName } from '../contract/index.js';
import { isAsBuilt, type Measures, NOTHING } from '../heads/index.js';
import { lackAt } from '../reliability/index.js';
import type { Option } from './option.js';
import { raiseNeeded } from './options.js';

/** A set of measures that may be recommended, under the name of its main one. */
export interface Candidate {
  option: OptionName;
  measures: Measures;
}

/**
 * What may be recommended, in the order in which it is: what needs no drain first, what keeps itself in order
 * before what needs a pump, structure last. Common practice; DESIGN of the tool.
 */
export function candidatesOf(basis: Basis, options: Option[]): Candidate[] {
  const get = (name: OptionName) => options.find((o) => o.name === name)?.measures;
  const surface = get('surface-water-only');
  const cutoff = get('cutoff-drain');
  const way = surface ? ('keptOut' as const) : NOTHING.way;
  const outlet = get('drain-to-outlet');
  const list: Candidate[] = [{ option: 'no-drain', measures: NOTHING }];
  if (isAsBuilt(outlet)) list.unshift({ option: 'drain-to-outlet', measures: outlet });
  const raised = (m: Measures): Measures => ({ ...m, raise: raiseNeeded(basis, m) });
  const add = (option: OptionName, measures: Measures | undefined) =>
    measures && list.push({ option, measures });
  add('surface-water-only', surface);
  if (get('raise-pond')) {
    add('raise-pond', raised(NOTHING));
    if (surface) add('raise-pond', raised(surface));
  }
  if (cutoff) {
    add('cutoff-drain', cutoff);
    if (get('raise-pond')) add('cutoff-drain', raised({ ...cutoff, way }));
  }
  for (const name of ['drain-to-outlet', 'drain-to-sump'] as const) {
    const drained = get(name);
    if (!isAsBuilt(drained)) add(name, drained);
    // What a drain cannot carry may be storm water that need not reach it.
    if (drained && surface && lackAt(basis, drained, basis.site.pond.depth)?.governs === 'capacity')
      add(name, { ...drained, way });
  }
  add('ballast', get('ballast'));
  if (outlet && get('raise-pond')) add('drain-to-outlet', raised({ ...outlet, way }));
  return list;
}
