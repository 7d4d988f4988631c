/** Units people write, and the exact factor of each to SI. */

/**
 * What a quantity measures. Each is kept in SI: m, m², m³, s, m/s, m³/s, Pa; a fraction as 0–1 (1 % = 0.01),
 * a temperature in °C and an angle in degrees because every formula and reader here uses them so.
 */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'time'
  | 'speed'
  | 'flow'
  | 'pressure'
  | 'fraction'
  | 'temperature'
  | 'angle'
  | 'none';

/** value in SI = value × factor + offset */
export interface Unit {
  factor: number;
  offset?: number;
}

// International foot and pound, US gallon of 231 cubic inches, standard gravity:
// NIST Special Publication 811, appendix B (from memory); all exact by definition.
/** A foot, m. */
export const FOOT = 0.3048;
/** An inch, m. */
export const INCH = 0.0254;
const YARD = 0.9144;
export const US_GALLON = 231 * INCH ** 3;
export const POUND_FORCE = 0.45359237 * 9.80665;
export const DAY = 86_400;

const LENGTH = table([
  [1, 'm metre metres meter meters'],
  [0.01, 'cm centimetre centimetres centimeter centimeters'],
  [0.001, 'mm millimetre millimetres millimeter millimeters'],
  [1000, 'km kilometre kilometres kilometer kilometers'],
  [FOOT, "ft foot feet '"],
  [INCH, 'in inch inches "'],
  [YARD, 'yd yard yards'],
]);

const AREA = table([
  [1, 'm2 m^2 sqm sq_m'],
  [1e-4, 'cm2 cm^2'],
  [1e4, 'ha hectare hectares'],
  [FOOT ** 2, 'ft2 ft^2 sqft sq_ft square_foot square_feet'],
  [INCH ** 2, 'in2 in^2 sq_in'],
  [YARD ** 2, 'yd2 yd^2 sq_yd'],
  [43_560 * FOOT ** 2, 'acre acres ac'],
]);

const VOLUME = table([
  [1, 'm3 m^3 cubic_metre cubic_metres cubic_meter cubic_meters'],
  [0.001, 'l litre litres liter liters'],
  [1e-6, 'ml cm3'],
  [FOOT ** 3, 'ft3 ft^3 cu_ft cubic_foot cubic_feet'],
  [INCH ** 3, 'in3 in^3 cu_in'],
  [YARD ** 3, 'yd3 yd^3 cu_yd cubic_yard cubic_yards'],
  [US_GALLON, 'gal gallon gallons us_gal'],
]);

const TIME = table([
  [1, 's sec second seconds'],
  [60, 'min minute minutes'],
  [3600, 'h hr hrs hour hours'],
  [DAY, 'd day days'],
  [7 * DAY, 'week weeks'],
]);

const PRESSURE = table([
  [1, 'pa n/m2'],
  [1000, 'kpa kn/m2'],
  [1e5, 'bar'],
  [98_066.5, 'kg/cm2 kgf/cm2'],
  [POUND_FORCE / FOOT ** 2, 'lb/ft2 lbf/ft2 lb/sqft psf'],
  [(1000 * POUND_FORCE) / FOOT ** 2, 'ksf kip/ft2'],
  [(2000 * POUND_FORCE) / FOOT ** 2, 'tsf ton/ft2'],
  [POUND_FORCE / INCH ** 2, 'lb/in2 lbf/in2 psi'],
]);

const FLOW = table([
  [US_GALLON / 60, 'gpm'],
  [US_GALLON / 3600, 'gph'],
  [US_GALLON / DAY, 'gpd'],
  [FOOT ** 3, 'cfs'],
]);

const FRACTION = table([
  [0.01, '% percent pct'],
  [1, 'ratio'],
]);

const TEMPERATURE = new Map<string, Unit>([
  ...table([[1, 'c °c degc celsius']], 0),
  ...table([[5 / 9, 'f °f degf fahrenheit']], -160 / 9),
  ...table([[1, 'k kelvin']], -273.15),
]);

const ANGLE = table([
  [1, 'deg degree degrees °'],
  [180 / Math.PI, 'rad'],
]);

const NAMED: Record<Dimension, ReadonlyMap<string, Unit>> = {
  length: LENGTH,
  area: AREA,
  volume: VOLUME,
  time: TIME,
  speed: new Map(),
  flow: FLOW,
  pressure: PRESSURE,
  fraction: FRACTION,
  temperature: TEMPERATURE,
  angle: ANGLE,
  none: new Map(),
};

/** The amount above the stroke of a rate: m/d is a length per time, m³/d a volume per time. */
const PER_TIME: Partial<Record<Dimension, ReadonlyMap<string, Unit>>> = { speed: LENGTH, flow: VOLUME };

/** Every dimension, in the order they are tried when a unit belongs to another one. */
const DIMENSIONS = Object.keys(NAMED) as Dimension[];

/** A few units of each dimension, for the remedy of an error. */
export const EXAMPLES: Record<Dimension, string> = {
  length: 'm, cm, mm, ft or in',
  area: 'm2 or ft2',
  volume: 'm3, L, gal or ft3',
  time: 'min, h or days',
  speed: 'm/s, cm/s, m/d, mm/h or in/h',
  flow: 'm3/d, L/min, gpm or gal/day',
  pressure: 'kPa or lb/ft2',
  fraction: '%',
  temperature: 'C or F',
  angle: 'deg',
  none: 'no unit',
};

/**
 * Looks a unit up by the name people write.
 * @param name any case; words may be apart by spaces, a full stop may follow (`Sq. Ft.`)
 * @param dimension what the unit has to measure
 * @returns the unit, or undefined where the dimension has none of that name
 */
export function findUnit(name: string, dimension: Dimension): Unit | undefined {
  const key = name
    .toLowerCase()
    .replaceAll('.', ' ')
    .replace(/\s+per\s+/g, '/')
    .replace(/\s*\/\s*/g, '/')
    .trim()
    .replace(/\s+/g, '_');
  const named = NAMED[dimension].get(key);
  const amounts = PER_TIME[dimension];
  if (named || !amounts) return named;
  const [above = '', below = '', ...more] = key.split('/');
  const amount = amounts.get(above);
  const time = TIME.get(below);
  return amount && time && more.length === 0 ? { factor: amount.factor / time.factor } : undefined;
}

/** What a unit measures when it is none of the dimension asked for; undefined for letters that are no unit at all. */
export function dimensionOf(name: string): Dimension | undefined {
  return DIMENSIONS.find((dimension) => findUnit(name, dimension) !== undefined);
}

function table(rows: [factor: number, names: string][], offset?: number): Map<string, Unit> {
  return new Map(
    rows.flatMap(([factor, names]) => names.split(' ').map((name) => [name, { factor, offset }] as const)),
  );
}
