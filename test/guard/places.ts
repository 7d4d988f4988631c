/** levels.csv of an invented garden: rims, pits, ditches with their floods, houses, footings and the boundary. */
import type { Plot } from './generate.js';
import type { GeneratedGround } from './ground.js';

/** The survey's own mark, m. */
const MARK = 10;

/** Levelled points by distance alone, or with a plan. */
export function placesOf(
  { dice, tape, traits, depth, width, length }: Plot,
  { pits }: GeneratedGround,
): string {
  const plan = dice.chance(0.4);
  const sloping = dice.chance(0.3);
  if (sloping) traits.push('slope');
  const high = sloping ? dice.between(0.1, 0.5) : dice.between(0, 0.04);
  const rows: string[][] = [];
  const add = (point: string, role: string, metres: number | undefined, level: number, y = 0) => {
    const beside = metres === undefined ? '' : tape.of(metres);
    // On the plan everything stands on one line with the pond's centre: outlets to the south, the rest to the north.
    const place =
      plan && metres !== undefined
        ? [tape.of(y), tape.of(-Math.sign(y || 1) * (width / 2 + metres))]
        : ['', ''];
    rows.push([point, role, ...place, plan ? '' : beside, tape.of(MARK + level)]);
  };
  const rim = (point: string, level: number, x: number, y: number) =>
    rows.push([
      point,
      'rim',
      ...(plan ? [tape.of(x), tape.of(y), ''] : ['', '', '0']),
      tape.of(MARK + level),
    ]);
  rim('A', 0, 0, -width / 2);
  rim('B', high, 0, width / 2);
  if (plan) {
    rim('C', high / 2, -length / 2, 0);
    rim('D', high / 2, length / 2, 0);
  }
  for (const { name } of pits) add(name, 'pit', dice.between(0.5, 5), dice.between(-0.02, 0.1), -1);

  const outlets = dice.chance(0.6) ? dice.whole(1, dice.chance(0.3) ? 3 : 1) : 0;
  if (outlets > 1) traits.push('several outlets');
  else if (outlets === 1) traits.push('outlet');
  for (let at = 1; at <= outlets; at++) {
    const away = dice.between(6, 35);
    const level = -depth + dice.between(-0.9, 0.5);
    add(`out${at}`, 'outlet', away, level, at);
    if (dice.chance(0.7)) {
      add(`ditch${at}`, 'ditch', away + 0.5, level - dice.between(0.1, 0.4), at);
      if (dice.chance(0.7)) {
        traits.push('flood marked');
        add(`flood${at}`, 'flood', away + 0.5, level + dice.between(-0.1, 1.4), at);
      }
    }
  }
  if (dice.chance(0.35)) add('gully', 'discharge', dice.between(4, 25), dice.between(-0.3, 0.3), 4);
  if (dice.chance(0.25)) {
    const near = dice.chance(0.5) ? dice.between(0.3, 2) : dice.between(2, 12);
    const role = dice.one(['house', 'neighbour-house']);
    add('wall', role, near, dice.between(0, 0.2), -2);
    traits.push(near < 2 ? 'house within reach' : 'house');
    if (dice.chance(0.5)) {
      traits.push('footing known');
      add('wall', 'footing', near, -dice.between(0.4, 1), -2);
    }
  }
  if (dice.chance(0.2)) add('swale', 'spill', dice.between(0.3, 1), -dice.between(0, 0.3), 2);
  if (dice.chance(0.2)) {
    if (plan) {
      const y = tape.of(width / 2 + dice.between(0.6, 6));
      rows.push(['b1', 'boundary', tape.of(-20), y, '', tape.of(MARK)]);
      rows.push(['b2', 'boundary', tape.of(20), y, '', tape.of(MARK)]);
    } else add('fence', 'boundary', dice.between(0.5, 6), 0);
    traits.push('boundary');
  }
  const u = tape.unit;
  return `point,role,x_${u},y_${u},distance_${u},level_${u}\n${rows.map((cells) => cells.join(',')).join('\n')}\n`;
}
