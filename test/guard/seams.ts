/** Permeable ground under less permeable: where it begins, what its water presses, and whether the floor above holds. */
import type { Claim } from './claims.js';
import { type Danger, m } from './danger.js';
import type { GuardSite } from './site.js';
import { speaksOf, type Told } from './told.js';

/** Ground that carries a pressure from elsewhere to under a floor. */
const isPermeable = (texture: string) =>
  ['sand', 'loamy sand', 'sandy loam', 'gravel', 'rock'].includes(texture);
/** Ground that may, where it lies under clay: more permeable than clay by a hundred times (any table of permeability). */
export const mayCarry = (texture: string) =>
  isPermeable(texture) || ['silt', 'silt loam', 'loam'].includes(texture);
const isTight = (texture: string) => texture.includes('clay') && texture !== 'sandy clay loam';

interface GuardSeam {
  pit: string;
  texture: string;
  /** m below the datum */
  top: number;
  /** known pressure levels, m above the datum, by month or all year */
  heads: { level: number; month?: number; from: string }[];
  /** carries water for certain: not a layer that only may */
  certain: boolean;
}

/** Every permeable layer that lies under at least 0.2 m of tight ground, one a pit. */
function seamsIn(site: GuardSite): GuardSeam[] {
  const { survey, layers, groundAt } = site;
  const pits = [...new Set(layers.map(({ pit }) => pit))];
  return pits.flatMap((pit) => {
    const log = layers.filter((l) => l.pit === pit).sort((a, b) => a.top - b.top);
    const at = log.findIndex(
      (l, i) =>
        i > 0 &&
        mayCarry(l.texture) &&
        log
          .slice(0, i)
          .some((over) => isTight(over.texture) && over.bottom - over.top >= 0.2 && over.bottom > 0.45),
    );
    const below = survey.heads.filter(({ place }) => place === `below:${pit}`);
    const layer = log[at];
    const end = log[log.length - 1];
    if (!layer && (below.length === 0 || !end)) return [];
    const top = layer?.top ?? (end?.bottom as number);
    const ground = groundAt(pit);
    const heads = below.map(({ month, depth }) => ({
      level: ground - depth,
      from: `heads.csv below:${pit}`,
      ...(month !== 'high' && { month }),
    }));
    for (const [name, looks] of looksInto(site, pit, top)) {
      // Still rising when it was read, so at least this.
      const level = Math.max(...looks.map(({ depth }) => groundAt(name) - (depth as number)));
      heads.push({ level, from: `water.csv ${name}` });
    }
    return [
      {
        pit,
        texture: layer?.texture ?? 'unknown',
        top,
        heads,
        certain: !layer || isPermeable(layer.texture),
      },
    ];
  });
}

/** Levels read in a hole that lets water in only where the seam is, or that struck it. */
function looksInto({ survey, groundAt }: GuardSite, pit: string, top: number) {
  const names = [...new Set(survey.looks.map((look) => look.pit))];
  return names.flatMap((name) => {
    const looks = survey.looks.filter((look) => look.pit === name);
    const struck = looks.find(
      ({ reading, depth }) => reading === 'strike' && Math.abs((depth ?? 0) - groundAt(name) - top) < 0.15,
    );
    const [first] = looks;
    const reaches = (first?.holeDepth ?? 0) - groundAt(name) > top + 0.02;
    const opens = (first?.openFrom ?? -9) - groundAt(name) > top - 0.1;
    if (!struck && !(reaches && opens)) return [];
    if (!struck && name !== pit && survey.layers.some((l) => l.pit === name)) return [];
    const read = looks.filter(({ reading, depth }) => reading === 'level' && depth !== undefined);
    return read.length > 0 ? [[name, read] as const] : [];
  });
}

/** kN/m³: wet clay at the heavy end of the usual 17 to 20 (any soil mechanics table), so that only real heave is called. */
const WET_CLAY = 19;
const WATER = 9.81;
/** Weight over uplift that no practice goes below: 1.1 (EN 1997-1 UPL, 1/0.9; the United States ask 1.25 and more). */
const HEAVE_FACTOR = 1.1;

/**
 * Weight of the ground left under a floor over the water's push at the seam's top: F = γ (z_seam − z_floor) / (γw (z_seam + h)).
 * A cut into the seam leaves nothing to lift.
 */
function heaveFactor(seamTop: number, dug: number, level: number): number {
  const push = WATER * (seamTop + level);
  if (push <= 0 || dug >= seamTop) return Number.POSITIVE_INFINITY;
  return (WET_CLAY * (seamTop - dug)) / push;
}

/** Floor of the dig and of the emptied pond over permeable ground. */
export function seamDanger(site: GuardSite, told: Told, claim: Claim): Danger[] {
  const { existing } = site.pond;
  // A pond that is there already meets its seam only empty.
  if (existing && claim.months.length === 0) return [];
  const { verdict } = claim;
  const dug = existing ? -claim.floor : claim.dug;
  const high = -told.water.seasonal_high_depth_m.p50;
  return seamsIn(site).flatMap((seam): Danger[] => {
    const where = `${seam.texture} from ${m(seam.top)}`;
    for (const { level, month, from } of seam.heads) {
      if (existing && month !== undefined && !claim.months.includes(month)) continue;
      const factor = heaveFactor(seam.top, dug, level);
      if (factor < HEAVE_FACTOR)
        return [
          {
            verdict,
            kind: 'heave',
            why: `${where}, water by ${from} at ${m(level)}, dug ${m(dug)}: factor ${factor.toFixed(2)}`,
          },
        ];
    }
    if (seam.heads.length > 0 || !claim.recommended || !seam.certain) return [];
    const factor = heaveFactor(seam.top, dug, Math.min(high, 0));
    if (factor >= HEAVE_FACTOR || speaksOf(told, /seam|under pressure|below the clay/i)) return [];
    const why = `${where} of unknown pressure, dug ${m(dug)}: factor ${factor.toFixed(2)} with the ground's own water`;
    return [{ verdict, kind: 'seam unasked', why }];
  });
}
