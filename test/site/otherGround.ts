/**
 * Water tables made by models built otherwise than the library's own, to see what its fit is worth on ground that is
 * not of its kind. Every number is invented. Rain and evaporation in m a day, depth in m below the ground.
 */
import { normalQuantile, uniforms } from '../../lib/sampling/index.js';

export interface Forcing {
  rain: Float64Array;
  tmean: Float64Array;
  evaporation: Float64Array;
}

const at = (of: Float64Array, day: number) => of[day % of.length];
/** The first year twice before the start. */
const SPIN_UP = 730;

/**
 * Layers of 0.1 m that drain by gravity, suck from the wet ones below and feed two pipes' ellipse (Hooghoudt): the
 * porosity filled depends on how dry the ground is.
 */
export function drainedLayers({ rain, evaporation }: Forcing, drain = 0.8): Float64Array {
  const [layers, thick, porosity, residual, fieldCapacity] = [18, 0.1, 0.42, 0.12, 0.33];
  const [conductivity, power, steps] = [0.5, 9, 8];
  const wet = new Float64Array(layers).fill(fieldCapacity);
  const depths = new Float64Array(rain.length);
  for (let day = -SPIN_UP; day < rain.length; day++) {
    const d = (day + 2 * SPIN_UP) % SPIN_UP;
    const water = day < 0 ? at(rain, d) : rain[day];
    const demand = day < 0 ? at(evaporation, d) : evaporation[day];
    let depth = 0;
    for (let s = 0; s < steps; s++) {
      const dt = 1 / steps;
      wet[0] += (water * dt) / thick;
      for (let i = 0; i < 6; i++) {
        const stress = Math.min(Math.max((wet[i] - 0.17) / 0.1, 0), 1);
        wet[i] -= (demand * dt * [0.3, 0.25, 0.2, 0.12, 0.08, 0.05][i] * stress) / thick;
      }
      for (let i = layers - 2; i >= 0; i--) {
        const saturation = Math.min(Math.max((wet[i] - residual) / (porosity - residual), 0), 1);
        const below = Math.min(Math.max((wet[i + 1] - residual) / (porosity - residual), 0), 1);
        const down = conductivity * saturation ** power * dt;
        const rise = 0.004 * Math.max(below - saturation, 0) * below ** 3 * dt;
        const flow = Math.min(Math.max(down - rise, -0.01), Math.max(porosity - wet[i + 1], 0) * thick);
        wet[i] -= flow / thick;
        wet[i + 1] += flow / thick;
      }
      for (let i = layers - 1; i > 0; i--)
        if (wet[i] > porosity) {
          wet[i - 1] += wet[i] - porosity;
          wet[i] = porosity;
        }
      if (wet[0] > porosity) wet[0] = porosity;
      let full = layers - 1;
      while (full > 0 && wet[full] > porosity - 0.005) full--;
      const part = Math.min(Math.max((wet[full] - fieldCapacity) / (porosity - fieldCapacity), 0), 1);
      depth = (full + 1 - part) * thick;
      const head = Math.max(drain - depth, 0);
      let leave = (0.03 * head + 0.05 * head ** 2 + 0.0002) * dt;
      for (let i = full; i < layers && leave > 0; i++) {
        const taken = Math.min(leave, Math.max(wet[i] - fieldCapacity, 0) * thick);
        wet[i] -= taken / thick;
        leave -= taken;
      }
    }
    if (day >= 0) depths[day] = depth;
  }
  return depths;
}

/**
 * A head that answers rain less evaporation directly, with a second way out above a threshold: no root zone, no
 * ground level.
 */
export function thresholdDrain({ rain, evaporation }: Forcing, threshold = 0.7): Float64Array {
  const [storage, base, slow, quick] = [0.11, 1.9, 180, 9];
  let head = -1;
  const depths = new Float64Array(rain.length);
  for (let day = -SPIN_UP; day < rain.length; day++) {
    const d = day < 0 ? (day + 2 * SPIN_UP) % SPIN_UP : day;
    for (let s = 0; s < 8; s++) {
      const out = (head + base) / slow + Math.max(head + threshold, 0) / quick;
      head += ((rain[d] - 0.9 * evaporation[d]) / storage - out) / 8;
    }
    if (day >= 0) depths[day] = -head;
  }
  return depths;
}

/**
 * Till: snow that falls mixed and freezes again, a soil that lets through the more the wetter it is, three stores
 * one after the other, and an outflow that grows faster than the water stands.
 */
export function tillCascade(
  { rain, tmean, evaporation }: Forcing,
  { base = 5, storage = 0.1, delay = 5 } = {},
): Float64Array {
  let [pack, liquid, soil, head] = [0, 0, 0.1, base - 2.5];
  const [capacity, holds] = [0.16, 0.08];
  const cascade = new Float64Array(3);
  const depths = new Float64Array(rain.length);
  for (let day = -SPIN_UP; day < rain.length; day++) {
    const d = day < 0 ? (day + 2 * SPIN_UP) % SPIN_UP : day;
    const snow = Math.min(Math.max((1.2 - tmean[d]) / 2.4, 0), 1);
    pack += rain[d] * snow;
    const melt = Math.min(pack, 0.0022 * Math.max(tmean[d] - 0.3, 0));
    pack -= melt;
    liquid += melt + rain[d] * (1 - snow);
    const frozen = Math.min(liquid, 0.0005 * Math.max(-tmean[d], 0));
    liquid -= frozen;
    pack += frozen;
    const water = Math.max(liquid - holds * pack, 0);
    liquid -= water;
    const through = water * Math.min(soil / capacity, 1) ** 2.2;
    soil += water - through;
    soil -= evaporation[d] * Math.min(soil / (0.6 * capacity), 1) * (pack > 0 ? 0 : 1);
    soil = Math.max(soil, 0);
    let flow = through;
    for (let k = 0; k < 3; k++) {
      cascade[k] += flow;
      flow = cascade[k] / delay;
      cascade[k] -= flow;
    }
    head += flow / storage - 0.004 * Math.max(head, 0) ** 1.6;
    head = Math.min(head, base - 0.2);
    if (day >= 0) depths[day] = base - head;
  }
  return depths;
}

/** The depths as recorded: an error that lasts days, and a reading to the centimetre. */
export function recorded(depths: Float64Array, error: number, seed: number): Float64Array {
  const next = uniforms(seed);
  let lasting = 0;
  return depths.map((depth) => {
    lasting = 0.9 * lasting + error * Math.sqrt(1 - 0.9 ** 2) * normalQuantile(next());
    return Math.round((depth + lasting + 0.005 * normalQuantile(next())) * 100) / 100;
  });
}

/** Nash–Sutcliffe efficiency: 1 is perfect, 0 no better than the mean. */
export function efficiency(model: Float64Array, real: Float64Array): number {
  const mean = real.reduce((a, b) => a + b, 0) / real.length;
  const miss = real.reduce((sum, v, i) => sum + (v - model[i]) ** 2, 0);
  return 1 - miss / real.reduce((sum, v) => sum + (v - mean) ** 2, 0);
}
