/**
 * The second path, from the daily weather to the level in the clay: written from FAO-56 and the equations of the store,
 * in millimetres and without anything of `lib/`.
 */

export interface Day {
  /** days since 1970-01-01 */
  day: number;
  year: number;
  month: number;
  date: number;
  /** mm */
  rain: number;
  /** °C */
  tmin: number;
  tmax: number;
}

/** Rows of a weather.csv in mm and °C. */
export function daysOf(csv: string): Day[] {
  return csv
    .trim()
    .split('\n')
    .slice(1)
    .map((row) => {
      const [iso = '', rain, tmin, tmax] = row.split(',');
      const [year = 0, month = 0, date = 0] = iso.split('-').map(Number);
      const day = Date.UTC(year, month - 1, date) / 86_400_000;
      return { day, year, month, date, rain: Number(rain), tmin: Number(tmin), tmax: Number(tmax) };
    });
}

/** Reference evapotranspiration by FAO-56 eq. 52, the sun by eqs. 21 to 25; mm/d. */
export function referenceEt(latitude: number, { day, year, tmin, tmax }: Day): number {
  const n = day - Date.UTC(year, 0, 1) / 86_400_000 + 1;
  const turn = (2 * Math.PI * n) / 365;
  const phi = (Math.PI / 180) * latitude;
  const delta = 0.409 * Math.sin(turn - 1.39);
  const distance = 1 + 0.033 * Math.cos(turn);
  const sunset = Math.acos(-Math.tan(phi) * Math.tan(delta));
  const sun = sunset * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(sunset);
  const radiation = ((24 * 60) / Math.PI) * 0.082 * distance * sun;
  const range = tmax - tmin;
  if (range <= 0) return 0;
  return Math.max(0, 0.0023 * ((tmax + tmin) / 2 + 17.8) * Math.sqrt(range) * (0.408 * radiation));
}

/** Weather with its demand, mm. */
export interface Forcing {
  rain: Float64Array;
  warmth: Float64Array;
  et0: Float64Array;
}

export function forcingOf(days: readonly Day[], latitude: number): Forcing {
  return {
    rain: Float64Array.from(days, (d) => d.rain),
    warmth: Float64Array.from(days, (d) => (d.tmin + d.tmax) / 2),
    et0: Float64Array.from(days, (d) => referenceEt(latitude, d)),
  };
}

/** The ground of one draw; depths and available water in m, rates 1/d, melt m/°C/d. */
export interface GroundColumn {
  porosity: number;
  recession: number;
  baseDepth: number;
  spillDepth: number;
  extinctionDepth: number;
  delay: number;
  rootCapacity: number;
  demandFactor: number;
  crackShare: number;
  drainDepth: number;
  drainRate: number;
  meltFactor: number;
}

/** Turf draws 0.40 of the available water without stress (FAO-56 Table 22), 7.5 % less in clay. */
const UNSTRESSED = 0.4 * 0.925;

/** What a column does day by day. */
export interface ColumnDays {
  /** rain and melt, and water below the roots, mm */
  liquid: Float64Array;
  recharge: Float64Array;
  /** drawn by the roots, mm */
  drawn: Float64Array;
  /** cannot enter the full ground, mm */
  excess: Float64Array;
  /** depth to the water, m */
  depth: Float64Array;
}

/**
 * Snow by degree-day; root zone by FAO-56 eqs. 84 and 85 in the order of Example 38; then the store: delay, spill,
 * drain, unmet demand fading to the extinction depth, recession. Two years are run before the first, from a full store
 * and a wet root zone.
 */
export function columnOf({ rain, warmth, et0 }: Forcing, g: GroundColumn, lead = 730): ColumnDays {
  const n = rain.length;
  const days: ColumnDays = {
    liquid: new Float64Array(n),
    recharge: new Float64Array(n),
    drawn: new Float64Array(n),
    excess: new Float64Array(n),
    depth: new Float64Array(n),
  };
  const available = 1000 * g.rootCapacity;
  const readily = UNSTRESSED * available;
  const brim = 1000 * g.porosity * (g.baseDepth - g.spillDepth);
  const aboveDrain = 1000 * g.porosity * Math.max(g.baseDepth - g.drainDepth, 0);
  let pack = 0;
  let depletion = 0;
  let onTheWay = 0;
  let stored = brim;
  const step = (d: number) => {
    const cold = warmth[d]! < 0;
    const melt = cold ? 0 : Math.min(1000 * g.meltFactor * warmth[d]!, pack);
    pack += (cold ? rain[d]! : 0) - melt;
    const water = (cold ? 0 : rain[d]!) + melt;

    const downCracks = water * g.crackShare * (depletion / available);
    const soaked = depletion - (water - downCracks);
    const percolation = downCracks + Math.max(-soaked, 0);
    depletion = Math.max(soaked, 0);
    const demand = g.demandFactor * et0[d]!;
    const stress = Math.min(1, (available - depletion) / (available - readily));
    const taken = Math.min(stress * demand, available - depletion);
    depletion += taken;

    onTheWay += percolation;
    const arrived = onTheWay * (1 - Math.exp(-1 / g.delay));
    onTheWay -= arrived;
    stored += arrived;
    const over = Math.max(stored - brim, 0);
    stored -= over;
    stored -= Math.max(stored - aboveDrain, 0) * (1 - Math.exp(-g.drainRate));
    const z = g.baseDepth - stored / (1000 * g.porosity);
    stored -= Math.min((demand - taken) * Math.max(1 - z / g.extinctionDepth, 0), stored);
    stored *= Math.exp(-g.recession);
    days.liquid[d] = water;
    days.recharge[d] = percolation;
    days.drawn[d] = taken;
    days.excess[d] = over;
    days.depth[d] = g.baseDepth - stored / (1000 * g.porosity);
  };
  for (let d = 0; d < Math.min(lead, n); d++) step(d);
  for (let d = 0; d < n; d++) step(d);
  return days;
}
