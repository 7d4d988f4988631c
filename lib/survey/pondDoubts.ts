/** The pond's facts and the site's against each other. Limits: common practice, wide of what gardens have. */

import { type Doubt, Doubts, metres } from './doubt.js';
import type { Survey } from './survey.js';

/** A pond dug by hand, m². */
const LARGE = 120;
/** Longer than so many times its width it is a ditch. */
const SLENDER = 4;

/** What is odd about the pond that is wished and about what drains to it. */
export function pondDoubts({ pond, site, origins }: Survey): Doubt[] {
  const doubts = new Doubts();
  const at = origins.pond;
  const { length, width = length, depth, area, usual_drawdown: drawdown, side_slope: slope = 0 } = pond;
  if (length !== undefined && width !== undefined) {
    const [short, long] = [Math.min(length, width), Math.max(length, width)];
    doubts.when(
      long > SLENDER * short || width > 2 * length,
      at.width ?? at.length,
      `${metres(length)} long and ${metres(width)} wide: check both and their units`,
    );
    doubts.when(
      long > 0 && long * short > LARGE,
      at.length,
      `${metres(length)} by ${metres(width)} is much for a pond dug by hand: check the unit`,
    );
    doubts.when(
      long < 0.8,
      at.length,
      `${metres(length)} by ${metres(width)} is a bucket rather than a pond: check the unit`,
    );
    doubts.when(
      area !== undefined && area < 0.5 * length * width,
      at.area,
      `an area of ${area} m² in a pond of ${metres(length)} by ${metres(width)}: keep what is right`,
    );
    if (depth !== undefined) {
      doubts.when(
        2 * slope * depth > short,
        at.side_slope ?? at.depth,
        `sides of ${slope} to 1 meet above a floor ${metres(depth)} down in a pond ${metres(short)} wide, so no floor is left: check slope, depth and width`,
      );
      doubts.when(
        2 * (pond.shelf_width ?? 0) > 0.8 * short,
        at.shelf_width,
        `shelves of ${metres(pond.shelf_width ?? 0)} leave nothing of a pond ${metres(short)} wide`,
      );
    }
  }
  if (depth !== undefined) {
    doubts.when(
      (drawdown ?? 0) > 0.75 * depth,
      at.usual_drawdown,
      `a pond ${metres(depth)} deep that usually stands ${metres(drawdown ?? 0)} low is nearly empty: check the unit`,
    );
    doubts.when(
      (pond.water_above_rim_ground ?? 0) < 0.15 - depth,
      at.water_above_rim_ground,
      `water ${metres(-(pond.water_above_rim_ground ?? 0))} below the ground leaves hardly any in a pond ${metres(depth)} deep: check the sign`,
    );
    doubts.when(
      (pond.ring_depth ?? 0) > depth + 0.5,
      at.ring_depth,
      `the ring goes ${metres(pond.ring_depth ?? 0)} down round a pond ${metres(depth)} deep`,
    );
    doubts.when(
      (pond.ballast_thickness ?? 0) > 0.5 * depth,
      at.ballast_thickness,
      `ballast of ${metres(pond.ballast_thickness ?? 0)} fills half of a pond ${metres(depth)} deep`,
    );
  }
  const on = origins.site;
  const intensity = (site.storm_rain ?? 0) / ((site.storm_hours ?? 3600) / 3600);
  doubts.when(
    intensity > 0.15,
    on.storm_rain,
    `a storm of ${Number((1000 * intensity).toPrecision(2))} mm an hour: check rain and hours`,
  );
  doubts.when(
    Math.abs(site.latitude ?? 50) <= Math.PI / 2 && site.latitude !== 0,
    on.latitude,
    `${site.latitude}° lies at the equator: degrees are asked, not radians`,
  );
  return doubts.list;
}
