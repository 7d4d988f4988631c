import { formula, method } from '../formula/index.js';
import { FieldTestError, fitLevels, type LevelReading, type PermeabilityTest } from './fieldTest.js';

const r = { meaning: 'radius of the hole', unit: 'm', min: 0.03, max: 0.07 };
const H = { meaning: 'depth of the hole below the water table', unit: 'm', min: 0.2, max: 2 };
const y = { meaning: 'mean depth of the water in the hole below the table', unit: 'm', min: 0.04, max: 2 };
const v = { meaning: 'rate of rise', unit: 'm/s', min: 1e-9, max: 0.01 };
const together = {
  says: '0.2*H <= y and y <= H',
  holds: (_r: number, H: number, y: number, _v: number) => 0.2 * H <= y && y <= H,
};
const validity = 'radius 30–70 mm, 0.2–2 m below the table, first quarter of the recovery, y at least 0.2 H';
const source =
  'Ernst 1950 as in van Beers, The Auger Hole Method, ILRI Bulletin 1 (constants from memory; limits partly seen)';

/** Permeability from the rise in a bailed hole. */
export const augerHole = formula({
  title: 'Auger hole below the water table (Ernst)',
  symbol: 'K',
  unit: 'm/s',
  expression: '4000/864*r^2*v/((H + 20*r)*(2 - y/H)*y)',
  parameters: { r, H, y, v },
  compute: (r: number, H: number, y: number, v: number) =>
    ((4000 / 864) * r * r * v) / ((H + 20 * r) * (2 - y / H) * y),
  together,
  validity: `${validity}; ground goes on below the floor for at least H/2`,
  source,
});

/** The same where the hole stands on a tight layer. */
export const augerHoleOnTight = formula({
  title: 'Auger hole standing on a tight layer (Ernst)',
  symbol: 'K',
  unit: 'm/s',
  expression: '3600/864*r^2*v/((H + 10*r)*(2 - y/H)*y)',
  parameters: { r, H, y, v },
  compute: (r: number, H: number, y: number, v: number) =>
    ((3600 / 864) * r * r * v) / ((H + 10 * r) * (2 - y / H) * y),
  together,
  validity: `${validity}; tight layer at the floor`,
  source,
});

export const augerHoleRecovery = method({
  title: 'Recovery of a bailed auger hole',
  what: 'Permeability from looks at the water rising in a bailed open hole: Ernst, with the rise integrated.',
  assumptions: [
    validity,
    'looks after three quarters of the drawdown are left are not used: the table round the hole has sunk by then',
    'between 10 % low and 5 % high against numerical solutions of the flow with a level table',
  ],
  source,
});

/** A bailed hole. Lengths m. */
export interface BailedHole {
  /** 0.06 to 0.14 */
  diameter: number;
  /** of its floor, below the water table: 0.2 to 2 */
  depthBelowTable: number;
  /** the floor is the top of a tight layer */
  onTight?: boolean;
  /** one standard deviation of a look; absent: {@link TAPE_ERROR} */
  tape?: number;
}

/**
 * Permeability from the recovery of an open hole, see {@link augerHoleRecovery}. Looks after the first quarter of the
 * recovery are left out.
 * @param readings - at least two: time, s; `level` = depth of the water in the hole below the water table, m, shrinking
 * @param hole - diameter and depth below the water table, m
 * @returns permeability of the ground, m/s, with its spread
 * @throws FieldTestError when the hole or the readings are outside the method's limits
 */
export function augerHoleTest(readings: LevelReading[], hole: BailedHole): PermeabilityTest {
  const radius = hole.diameter / 2;
  const h = hole.depthBelowTable;
  if (!(radius >= 0.03 && radius <= 0.07))
    throw new FieldTestError(
      'geometry',
      `diameter ${hole.diameter} m is outside 0.06 to 0.14 m`,
      'Use the recovery of a standpipe (time lag) instead.',
    );
  if (!(h >= 0.2 && h <= 2))
    throw new FieldTestError(
      'geometry',
      `depth below the water table ${h} m is outside 0.2 to 2 m`,
      'Deepen the hole, or test when the water stands higher.',
    );
  const start = readings[0]?.level ?? 0;
  const used = readings.filter(({ level }) => level >= 0.75 * start && level >= 0.2 * h);
  if (used.length < 2)
    throw new FieldTestError(
      'too-few',
      `missing looks in the first quarter of the recovery: ${used.length} of at least 2`,
      'Bail the hole lower and look more often at first.',
    );
  const [constant, reach] = hole.onTight ? [3600, 10] : [4000, 20];
  const scale = (constant / 864) * (radius ** 2 / (h + reach * radius));
  return fitLevels(
    used,
    {
      method: 'recovery of an auger hole (Ernst)',
      potential: (y) => (scale / 2) * Math.log(y / (2 - y / h)),
      slope: (y) => scale / (y * (2 - y / h)),
      kind: 'recovering',
      methodSpread: 0.3,
      bias: [],
    },
    hole.tape,
  );
}
