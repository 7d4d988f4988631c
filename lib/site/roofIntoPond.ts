import { type ClimateRecord, HARD_SURFACE_FILM, runHardSurface } from '../climate/index.js';
import { method } from '../formula/index.js';
import { RUNOFF_COEFFICIENT } from '../soil/index.js';

export const roofIntoPondMethod = method({
  title: 'A roof led into the pond',
  what: 'What the downpipe of a roof brings into the pond day by day: rain that exceeds the film on the roof, by the likely share that a roof sheds.',
  assumptions: [
    'snow counts on the day it falls, as it does on the pond itself',
    'the downpipe runs into the pond and nowhere else; what it brings to a full pond runs over the brim that day',
    'without daily weather it does not raise the pond; what it brings on a heavy day or in a storm runs over the brim',
  ],
  source: 'run-off coefficient by table; film as of hard surfaces',
});

/**
 * Water that a roof leads into the pond, m³ a day, see {@link roofIntoPondMethod}.
 * @param record - its rain and demand, m a day
 * @param area - of the roof, m²
 * @returns a value a day; undefined where no roof is led in
 * @throws Error when the balance of the roof does not close to 1e-9 m
 */
export function roofInflow(
  { rain, demand }: Pick<ClimateRecord, 'rain' | 'demand'>,
  area: number,
): Float64Array | undefined {
  if (!(area > 0)) return undefined;
  const led = new Float64Array(rain.length);
  runHardSurface(rain, demand, HARD_SURFACE_FILM, led);
  for (let d = 0; d < led.length; d++) led[d] *= RUNOFF_COEFFICIENT.roof.likely * area;
  return led;
}
