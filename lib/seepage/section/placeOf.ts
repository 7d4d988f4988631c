import { heightOf, type SectionPoint, widthAt } from './polyline.js';
import { floorOf, type Place, type PondGround, undersidesOf } from './pondGround.js';

/** Tells for any point what is there: air, pond, blanket, ring or a layer. */
export function placeOf(ground: PondGround): (point: SectionPoint) => Place {
  const { outline, surface, layers, ring } = ground;
  const floor = floorOf(ground);
  const ends = widthAt(outline, floor) ?? { left: outline[0].x, right: outline[0].x };
  const ringIndex = layers.length;
  const blanketIndex = ringIndex + (ring ? 1 : 0);
  const undersides = undersidesOf(ground);
  const wider = ring?.width ?? 0;
  const ringBottom = ring?.bottom ?? floor;
  const top = Math.max(outline[0].z, outline[outline.length - 1].z);
  return ({ x, z }) => {
    const pond = widthAt(outline, z);
    if (pond && x > pond.left && x < pond.right) return z <= top ? 'pond' : 'air';
    const depth = heightOf(surface, x) - z;
    if (depth < 0) return 'air';
    if (z < floor && x > ends.left - wider && x < ends.right + wider) {
      const stratum = undersides.findIndex((underside) => z > underside);
      if (stratum >= 0) return blanketIndex + stratum;
    }
    if (ring && z > ringBottom) {
      const beside = pond ?? (z < floor ? ends : undefined);
      if (beside && x > beside.left - wider && x < beside.right + wider) return ringIndex;
    }
    let reached = 0;
    for (let l = 0; l < layers.length - 1; l++) {
      reached += layers[l].thickness;
      if (depth < reached) return l;
    }
    return layers.length - 1;
  };
}
