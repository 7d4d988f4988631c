import {
  floorOf,
  type PondGround,
  type SectionPipe,
  type SectionSoil,
  type Stratum,
} from '../seepage/index.js';
import { SORPTIVE } from '../soil/index.js';
import type { Drain } from './design.js';
import type { Bed } from './envelope.js';
import { BED_THICKNESS, evenPlaces, isMat, MAT_THICKNESS, strataOf } from './layout.js';
import { SIDE_BLANKET } from './quantities.js';

/** What is laid under a pond, as its vertical section meets it. */
export interface SectionWorks {
  /** under the floor, and whether it goes up behind the sides; thickness m, a mat's own where it is one */
  bed?: { kind: Bed; thickness?: number; turnedUp: boolean };
  /** middle of each pipe: across from the middle of the floor, below the floor; m */
  pipes: { across: number; depth: number; radius: number }[];
}

/**
 * A bed under a floor, layer by layer from the liner down: loose, it drains at once.
 * @param bed - what is laid
 * @param thickness - of all, m; a mat keeps its own
 * @returns layers, m thick, with their soil
 */
function bedStrata(bed: Bed, thickness = BED_THICKNESS): Stratum[] {
  return strataOf(bed, thickness).map((l) => ({ thickness: l.thickness, soil: looseSoil(l.permeability) }));
}

/**
 * Loose fill of a permeability.
 * @param permeability - full of water, m/s
 * @returns a soil that drains at once
 */
export function looseSoil(permeability: number): SectionSoil {
  return {
    across: permeability,
    down: permeability,
    sorptive: SORPTIVE.coarse,
    drainable: 0.3,
    storage: 1e-5,
  };
}

/**
 * The works of a designed drain as a section meets them. Branches run across the width, so the section that meets them is
 * cut along the length; a spine or a ring is met by one cut across.
 * @param drain - from {@link designDrain}
 * @returns bed and pipes, and which way the section is cut
 */
export function worksOf({ bed, layout, pipeDiameter, input }: Drain): SectionWorks & {
  cut: 'across' | 'along';
} {
  const radius = pipeDiameter / 2;
  // At the underside of the bed. A mat lies on the trench of its pipe: a thin pipe in the mat stands for that.
  const pipe = isMat(bed)
    ? { depth: MAT_THICKNESS / 2, radius: MAT_THICKNESS / 6 }
    : { depth: BED_THICKNESS - radius, radius };
  const width = input.floorWidth ?? input.floorArea / input.floorLength;
  const places = {
    spine: [0],
    ring: [-1, 1].map((side) => side * (width / 2 - radius)),
    herringbone: evenPlaces(input.floorLength, layout.branches),
  }[layout.kind];
  return {
    bed: { kind: bed, turnedUp: true },
    pipes: places.map((across) => ({ across, ...pipe })),
    cut: layout.kind === 'herringbone' ? 'along' : 'across',
  };
}

/**
 * The ground of a pond with works laid in it. Pipes and bed are counted from the lowest point of the liner, and the pipes
 * from the middle of the floor.
 * @param ground - of the pond, without works
 * @param works - bed and pipes
 * @returns ground for {@link pondSection}
 */
export function withWorks(ground: PondGround, { bed, pipes }: SectionWorks): PondGround {
  const floor = floorOf(ground);
  const onFloor = ground.outline.filter((p) => p.z < floor + 1e-9).map((p) => p.x);
  const middle = (Math.min(...onFloor) + Math.max(...onFloor)) / 2;
  const laid: SectionPipe[] = pipes.map(({ across, depth, radius }) => ({
    x: middle + across,
    z: floor - depth,
    radius,
  }));
  if (!bed) return { ...ground, pipes: laid };
  const [sides] = bedStrata(isMat(bed.kind) ? bed.kind : 'concrete sand');
  return {
    ...ground,
    blanket: bedStrata(bed.kind, bed.thickness),
    ...(bed.turnedUp
      ? {
          ring: {
            width: Math.max(SIDE_BLANKET, ground.ring?.width ?? 0),
            soil: sides.soil,
          },
        }
      : {}),
    pipes: laid,
  };
}
