/** Level against level: the emptied pond and the full one. */
import type { Claim } from './claims.js';
import { type Danger, LEVEL, m } from './danger.js';
import { conductivity, daysToLift, floorArea, LIFTED } from './flow.js';
import type { GuardSite } from './site.js';
import type { Told } from './told.js';
import { rawWaters, toldRing, toldWater, type Water, yearlyHighs } from './waters.js';

/** Emptied for less than this, a month's highest day need not be among them, days. */
const BRIEF = 10;
/** A month's high that stands this far above the floor stands above it for a good part of the month, m. Our choice. */
const FOR_DAYS = 0.25;
const DAYS_IN_MONTH = 30;

/** Waters of a month that a claim has to meet, undrained. */
export function watersIn(site: GuardSite, told: Told, claim: Claim, month: number): Water[] {
  const waters = [toldWater(told, month), ...rawWaters(site, month)];
  const ring = toldRing(told, month);
  if (ring && !claim.keptOut && ringLifts(site, claim, ring.p50))
    waters.push({ source: 'the ring told', p50: ring.p50, p90: ring.p90 });
  return waters;
}

/** Whether the ring alone holds water enough to lift, above what a slab holds. */
function ringLifts(site: GuardSite, { floor, raise, bareSlab }: Claim, level: number): boolean {
  const { ring, ringEnds, ringGives, length, width } = site.pond;
  // Below its end there is no ring: a level told there is that of a dry one.
  const height = Math.max(level - Math.max(floor + bareSlab, ringEnds), 0);
  const room = ringGives * ring * 2 * (length + width) * height;
  return room > LIFTED * floorArea(site, raise - floor);
}

/**
 * The emptied pond, in the month begun in and every month an emptying that long surely reaches: it lifts when the
 * head over the floor has brought its water before half the days are over.
 */
export function emptiedDanger(site: GuardSite, told: Told, claim: Claim): Danger[] {
  if (claim.drain || claim.days <= 0) return [];
  const holds = claim.floor + claim.bareSlab + site.pond.onTheFloor;
  const area = floorArea(site, claim.raise - claim.floor);
  const k = conductivity(told, site.pond.depth);
  const days = Math.min(claim.days, DAYS_IN_MONTH);
  // Begun in the middle of its month.
  const later = Math.max(Math.floor((claim.days - DAYS_IN_MONTH / 2) / DAYS_IN_MONTH), 0);
  for (const first of claim.months)
    for (let step = 0; step <= Math.min(later, 11); step++) {
      const month = ((first - 1 + step) % 12) + 1;
      for (const { source, p50, p90 } of watersIn(site, told, claim, month)) {
        const level = days >= BRIEF ? p90 : Math.max(p50, p90 - FOR_DAYS);
        if (level <= holds + LEVEL) continue;
        const takes = source === 'the ring told' ? 0 : daysToLift(k, area, level - holds);
        if (takes < days / 2)
          return [
            {
              verdict: claim.verdict,
              kind: 'emptied',
              why: `emptied from month ${first} for ${claim.days} d, floor ${m(claim.floor)}: in month ${month} ${source} stands at ${m(level)}; lifts in ${takes.toFixed(1)} d`,
            },
          ];
      }
    }
  return [];
}

/** The full pond, with its drain as without: what it holds at its brim against the year's highest water. */
export function keptDanger(site: GuardSite, told: Told, claim: Claim): Danger[] {
  const holds = site.pond.full + claim.raise + claim.ballast;
  const { rules } = told.recommendation;
  const warned = claim.recommended && rules.some(({ code }) => code === 'full-may-lift');
  const highs = yearlyHighs(site, told);
  if (!claim.drain) {
    const over = highs.find(({ p90 }) => p90 > holds + LEVEL);
    return over && !warned
      ? [
          {
            verdict: claim.verdict,
            kind: 'full',
            why: `full at ${m(holds)}, ${over.source} one year in ten ${m(over.p90)}`,
          },
        ]
      : [];
  }
  // Power out or bed silted: the water outside is as if there were no drain.
  const high = highs.find(({ p50 }) => p50 > holds + LEVEL);
  const keepFull = rules.some(({ code }) => code === 'full-if-power-fails');
  const said = warned || rules.some(({ text }) => /even (when |the )?full|even at the brim/i.test(text));
  return claim.recommended && high && keepFull && !said
    ? [
        {
          verdict: claim.verdict,
          kind: 'power',
          why: `'keep it full' when the drain does not run: full ${m(holds)}, water then ${m(high.p50)} in a middle year`,
        },
      ]
    : [];
}
