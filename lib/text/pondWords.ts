/** How its level is kept. */
function keptWords({ kept, usual_drawdown_m }: Report['pond'], size: (value: number) => string): string {
  if (kept.habit === 'held') return `held ${size(usual_drawdown_m)} below it`;
  const habit =
    kept.within_m === null ? 'never topped up' : `topped up when it has fallen by ${size(kept.within_m)}`;
  return `${habit}, in a middle year at most ${size(usual_drawdown_m)} below it`;
}

import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { monthWords } from './monthWords.js';
/** The pond as the survey has it, in a sentence. */
export function pondWords({ pond }: Report, units: UnitSystem): string {
  const size = (value: number) => formatQuantity(value, 'length', units);
  const emptied =
    pond.emptied_in === 'any'
      ? 'any month, none being named'
      : pond.emptied_in.length === 0
        ? 'no month'
        : monthWords(pond.emptied_in);
  return (
    `Pond as wished: ${pond.shape}, ${size(pond.length_m)} by ${size(pond.width_m)}, ${size(pond.depth_m)} deep below the lowest ground at the rim, ` +
    `sides ${Number(pond.side_slope.toPrecision(3))} horizontal to 1 vertical; full level ${formatQuantity(pond.full_level_m, 'level', units)}, ${keptWords(pond, size)}; ` +
    `${pond.ring_width_m > 0 ? `ring filled back beside the liner ${size(pond.ring_width_m)} wide` : 'no ring filled back beside the liner'}, ` +
    `${pond.bedding_m > 0 ? `bedding ${size(pond.bedding_m)} thick` : 'no bedding'}; ground at the rim up to ${size(pond.high_rim_m)} higher; emptied in ${emptied}.`
  );
}
