/** water.csv and heads.csv of an invented garden, in the season of its climate. */
import type { Plot } from './generate.js';
import type { GeneratedGround } from './ground.js';

/** Metres to the water of a month, counted from 1. */
export function waterIn(month: number, { high, range, full }: Plot): number {
  return high + range * (1 - (full[(month - 1) % 12] as number));
}

/** Dips in sealed pipes or open holes, and a strike where the seam was met; nothing where nobody looked. */
export function looksCsv(plot: Plot, ground: GeneratedGround, dipped: boolean): string | undefined {
  const { dice, tape, traits } = plot;
  const { pits, seam } = ground;
  const rows: string[][] = [];
  if (dipped) {
    const sealed = dice.chance(0.6);
    traits.push(sealed ? 'sealed dips' : 'open dips');
    for (const { name, bottom } of pits.slice(0, 2)) {
      const floor = Math.min(bottom * dice.between(0.8, 1), seam ? seam.top - 0.1 : Number.POSITIVE_INFINITY);
      if (floor < 0.45) continue;
      const hole = [tape.of(floor), '10', sealed ? '3.2' : '', sealed ? tape.of(0.6 * floor) : ''];
      rows.push([name, '2023-09-10', '15:00', 'opened', tape.of(floor), ...hole]);
      const many = dice.chance(0.2) ? dice.whole(1, 3) : dice.whole(8, 16);
      for (let at = 0; at < many; at++) {
        const date = new Date(Date.UTC(2023, 9 + Math.floor((at * 12) / 16), 4 + ((at * 9) % 24)));
        const depth = waterIn(date.getUTCMonth() + 1, plot) + dice.between(0, 0.15);
        const dry = depth > floor - 0.02;
        const read = dry ? ['dry', ''] : ['level', tape.of(depth)];
        rows.push([name, date.toISOString().slice(0, 10), '09:00', ...read, ...hole]);
      }
    }
  }
  if (seam && (seam.known === 'struck' || seam.known === 'looked')) {
    const hole = [tape.of(seam.top + 0.2), '10', '', seam.known === 'looked' ? tape.of(seam.top) : ''];
    const name = seam.known === 'struck' ? 'P1' : 'S1';
    const day = '2024-08-10';
    rows.push([name, day, '10:00', 'opened', hole[0] as string, ...hole]);
    if (seam.known === 'struck') rows.push([name, day, '10:05', 'strike', tape.of(seam.top), ...hole]);
    const between = (seam.top + seam.head) / 2;
    const seen = (depth: number) => (depth < seam.top + 0.2 ? ['level', tape.of(depth)] : ['dry', '']);
    rows.push([name, day, '11:00', ...seen(between), ...hole]);
    for (const late of ['2024-08-11', '2024-08-12'])
      rows.push([name, late, '09:00', ...seen(seam.head), ...hole]);
  }
  if (rows.length === 0) return undefined;
  const u = tape.unit;
  const header = `pit,date,time,reading,depth_${u},hole_depth_${u},hole_diameter_cm,pipe_bore_cm,open_from_${u}`;
  return `${header}\n${rows.map((cells) => cells.join(',')).join('\n')}\n`;
}

/** Monthly levels already known, one high, or nothing; the seam's where it was measured. */
export function headsCsv(plot: Plot, { pits, seam }: GeneratedGround, asked: boolean): string | undefined {
  const { dice, tape, traits } = plot;
  const rows: string[][] = [];
  const spread = tape.of(dice.one([0.05, 0.1, 0.2]));
  if (asked) {
    const place = dice.one(['site', 'site', 'P1']);
    const high = dice.chance(0.2);
    traits.push(high ? 'one known high' : 'months known');
    if (high) rows.push([place, 'high', tape.of(plot.high), spread, 'a mark on the fence']);
    else
      for (let month = 1; month <= 12; month++)
        rows.push([place, String(month), tape.of(waterIn(month, plot)), spread, 'monthly dips']);
    if (place === 'site' && dice.chance(0.2))
      rows.push(['uphill', 'high', tape.of(plot.high), spread, 'a pipe uphill']);
  }
  if (seam?.known === 'measured')
    rows.push([`below:${pits[0]?.name}`, 'high', tape.of(seam.head), spread, 'a pipe in the sand']);
  if (rows.length === 0) return undefined;
  return `place,month,depth_${tape.unit},spread_${tape.unit},source\n${rows.map((cells) => cells.join(',')).join('\n')}\n`;
}
