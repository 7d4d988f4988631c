/** The box for today's reading of the dip pipe, answered in the page without a computation. */

import type { LowerByReading } from '../contract/index.js';
import { mayLower } from '../text/todayWords.js';
import type { UnitSystem } from '../units/index.js';
import { INCH } from '../units/index.js';

/** What the form carries: {@link LowerByReading} with the levels of the pond. */
interface Today extends LowerByReading {
  full_m: number;
  floor_m: number;
  units: UnitSystem;
}

/**
 * How low the pond may be let by a reading, to the safe side of the readings reckoned.
 * @param below - of the water in the pipe, m below the full level; negative: above it
 * @param month - 0 for January
 * @returns m below full; null: to the floor
 */
export function lowerBy({ water_m, lowest_m, full_m }: Today, below: number, month: number): number | null {
  const water = full_m - below;
  const at = water_m.findIndex((each) => each >= water - 1e-9);
  // Above all that was reckoned nothing is let down.
  const lowest = at < 0 ? Number.POSITIVE_INFINITY : lowest_m[month]![at]!;
  return lowest === null ? null : Math.max(full_m - lowest, 0);
}

/** Brings every such form of the page to life. */
export function offerToday(): void {
  for (const form of Array.from(document.querySelectorAll<HTMLFormElement>('form.today'))) {
    const data: Today = JSON.parse(form.dataset.today!);
    const [below, month, output] = [
      form.querySelector<HTMLInputElement>('[name=below]')!,
      form.querySelector<HTMLSelectElement>('[name=month]')!,
      form.querySelector('output')!,
    ];
    month.value = String(new Date().getMonth());
    const answer = () => {
      if (below.value.trim() === '' || !Number.isFinite(below.valueAsNumber)) {
        output.textContent = 'Measure from the full water line down to the water in the pipe.';
        return;
      }
      const lowered = lowerBy(
        data,
        below.valueAsNumber * (data.units === 'us' ? INCH : 0.01),
        Number(month.value),
      );
      const water = data.full_m - below.valueAsNumber * (data.units === 'us' ? INCH : 0.01);
      const stopped = data.stopped_above_m !== null && water > data.stopped_above_m;
      output.textContent = mayLower(
        lowered,
        data.units,
        stopped,
        data.stopped_above_m === null ? data.rise_m : 0,
      );
    };
    form.addEventListener('input', answer);
    form.addEventListener('submit', (event) => event.preventDefault());
    answer();
    form.hidden = false;
  }
}
