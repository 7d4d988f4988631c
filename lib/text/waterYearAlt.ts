import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { monthName } from './monthWords.js';
/** What the water of the year shows, for whoever does not see it. */
export function waterYearAlt(
  { pond, result }: Report,
  units: UnitSystem,
  monthly: boolean,
  every: number,
  looks: number,
  high: { p10: number; p50: number },
): string {
  const say = (depth: number) => formatQuantity(depth, 'length', units);
  const by = result.water.by_month;
  const wet = by.reduce((a, b) => (b.table_depth_m.p50 < a.table_depth_m.p50 ? b : a));
  const dry = by.reduce((a, b) => (b.table_depth_m.p50 > a.table_depth_m.p50 ? b : a));
  const low = result.water.pond.by_month.reduce((a, b) => (b.drawdown_m.p50 > a.drawdown_m.p50 ? b : a));
  return (
    `Depth to water through the year${monthly ? ', by month' : every > 1 ? `, every ${every} days` : ', day by day'}. ` +
    `In the middle of years it stands nearest the ground in ${monthName(wet.month)}, at ${say(wet.table_depth_m.p50)}, ` +
    `and deepest in ${monthName(dry.month)}, at ${say(dry.table_depth_m.p50)}. ` +
    `The year's highest water lies at ${say(high.p50)}, in one year of ten at ${say(high.p10)} or nearer. ` +
    `The pond's full level is ${formatQuantity(pond.full_level_m, 'level', units)} and its floor ${formatQuantity(-pond.depth_m, 'level', units)} ` +
    `from the lowest ground at the rim; as it is kept it stands lowest in ${monthName(low.month)}, ${say(low.drawdown_m.p50)} below full in a middle year. ${looks === 1 ? '1 look into a hole is' : `${looks} looks into holes are`} marked.`
  );
}
