/**
 * The water table behind the invented dips: a root zone over one store of water, a step a day.
 *
 * Root zone: `rootCapacity` mm; evaporation at the full rate while more than half is left, then in proportion.
 * What it cannot hold recharges the store; what it cannot supply is drawn from the store, in proportion to
 * 1 − depth / `extinctionDepth`. The store drains in proportion to its height above `baseDepth` and spills at
 * `spillDepth`, just under the turf, from where water finds its way over the surface.
 */

const DAY_MS = 86400000;

/**
 * Reference evaporation after Hargreaves, FAO-56 equations 21 and 52.
 * @param {{ day: number, tmin: number, tmax: number }} weather day since 1970-01-01, °C
 * @param {number} latitude degrees, between the polar circles
 * @returns {number} mm a day
 */
export function hargreaves({ day, tmin, tmax }, latitude) {
  const date = new Date(day * DAY_MS);
  const dayOfYear = day - Date.UTC(date.getUTCFullYear(), 0, 1) / DAY_MS + 1;
  const phi = (latitude * Math.PI) / 180;
  const season = (2 * Math.PI * dayOfYear) / 365;
  const declination = 0.409 * Math.sin(season - 1.39);
  const sunset = Math.acos(-Math.tan(phi) * Math.tan(declination));
  const arc =
    sunset * Math.sin(phi) * Math.sin(declination) + Math.cos(phi) * Math.cos(declination) * Math.sin(sunset);
  const radiation = ((24 * 60 * 0.082) / Math.PI) * (1 + 0.033 * Math.cos(season)) * arc; // MJ/m2 a day
  return Math.max(0, 0.0023 * ((tmin + tmax) / 2 + 17.8) * Math.sqrt(tmax - tmin) * 0.408 * radiation);
}

/**
 * @typedef {object} Store
 * @property {number} rootCapacity mm of water between full and spent
 * @property {number} porosity drainable, as a fraction
 * @property {number} recession a day
 * @property {number} baseDepth m below ground, where the store stops draining
 * @property {number} spillDepth m below ground
 * @property {number} extinctionDepth m below ground
 */

/**
 * @param {{ day: number, rain: number, tmin: number, tmax: number }[]} weather a row a day, mm and °C
 * @param {number} latitude degrees
 * @param {Store} store
 * @returns {{ depths: Map<number, number>, closure: number, evaporation: number, recharge: number }} table depth in
 *   m at the end of each day, by day number; the water balance's error in mm, total evaporation and recharge in mm
 */
export function simulateTable(weather, latitude, store) {
  const depths = new Map();
  let root = store.rootCapacity / 2;
  let depth = store.baseDepth;
  const stored = () => root - depth * store.porosity * 1000;
  const before = stored();
  const sum = { rain: 0, evaporation: 0, recharge: 0, out: 0 };
  for (const today of weather) {
    const demand = hargreaves(today, latitude);
    const wetted = root + today.rain;
    const met = Math.min(wetted, demand * Math.min(1, wetted / (store.rootCapacity / 2)));
    const recharge = Math.max(0, wetted - met - store.rootCapacity);
    root = wetted - met - recharge;
    const drawn = (demand - met) * Math.max(0, 1 - depth / store.extinctionDepth);
    const drained = store.recession * Math.max(0, store.baseDepth - depth) * store.porosity * 1000;
    const next = depth + (drawn + drained - recharge) / (store.porosity * 1000);
    const spilt = Math.max(0, store.spillDepth - next) * store.porosity * 1000;
    depth = Math.max(store.spillDepth, next);
    depths.set(today.day, depth);
    sum.rain += today.rain;
    sum.evaporation += met + drawn;
    sum.recharge += recharge;
    sum.out += drained + spilt;
  }
  const closure = sum.rain - sum.evaporation - sum.out - (stored() - before);
  return { depths, closure, evaporation: sum.evaporation, recharge: sum.recharge };
}
