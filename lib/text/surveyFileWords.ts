/** What the files of a new survey say in the units that they ask in. */
import type { UnitSystem } from '../units/index.js';

/** How depths are written. */
export function depthsRemark(units: UnitSystem): string {
  const cell = units === 'us' ? '3 ft 2 1/2 in' : '1.2 m or 120 cm';
  return `Depths count downwards from the ground at the hole. A bare number has the unit of its header; a cell may carry its own: ${cell}.`;
}

/** A layer as it is written down. */
export function layerExample(units: UnitSystem): string {
  return `Like this, without the #: P1; 0; ${units === 'us' ? '0.9' : '0.28'}; clay loam; rooted; few; firm; dark topsoil - with commas.`;
}

/** How a soakage test is written down. */
export function soakageRemark(units: UnitSystem): string {
  return `Name the hole as in pits.csv. ${depthsRemark(units)}`;
}
