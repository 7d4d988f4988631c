import { InputError } from '../../units/index.js';
import { placeOf } from './placeOf.js';
import { alongLine } from './polyline.js';
import { type Fineness, pondGrid, USUAL_FINENESS } from './pondGrid.js';
import { floorOf, type PondGround, soilsOf, undersidesOf } from './pondGround.js';
import { type Contact, middleOf, type Section } from './section.js';

/** A face of the ground that the liner lies on. */
interface LinerFace {
  cell: number;
  x: number;
  z: number;
  /** along the liner from its left rim, m */
  along: number;
}

/** The section of a pond's ground. */
export interface PondSection {
  section: Section;
  ground: PondGround;
  /** from the left rim to the right */
  liner: LinerFace[];
}

/** Names of the contacts, besides those of the pipes: `pipe 1` and on. */
export const FAR_LEFT = 'far left';
export const FAR_RIGHT = 'far right';
const SURFACE = 'surface';
const POND = 'pond';

/**
 * Cuts the ground of a pond into cells and says what happens at their edges: given heads at the far ends, nothing
 * through the base and a tight liner, the pond's water through a leaking one, water out at pipes and at open ground.
 * @param ground - of the pond, SI
 * @param fineness - how finely it is cut
 * @returns the section, and the liner in it
 * @throws InputError without an outline or layers, for layers without thickness, a base above the underside of the works, a
 *   pond that leaves the section, rain below 0, a pipe that is not in the ground or too close under the floor, or pipes that
 *   overlap
 */
export function pondSection(ground: PondGround, fineness: Fineness = USUAL_FINENESS): PondSection {
  refuse(ground);
  const { grid, holes } = pondGrid(ground, fineness);
  const [nx, nz] = [grid.x.length - 1, grid.z.length - 1];
  const what = placeOf(ground);
  const soils = soilsOf(ground);
  /** soil, or −1 air, −2 pond, −3 − p the hole of pipe p */
  const places = Int16Array.from({ length: nx * nz }, (_, k) => {
    const at = middleOf(grid, k);
    const p = holes.findIndex(({ x, z }) => at.x > x.from && at.x < x.to && at.z > z.from && at.z < z.to);
    if (p >= 0) return -3 - p;
    const place = what(at);
    return place === 'air' ? -1 : place === 'pond' ? -2 : place;
  });
  const soilOf = Int8Array.from(places, (p) => Math.max(p, -1));
  const contacts: Contact[] = [];
  const liner: LinerFace[] = [];
  const supply = new Float64Array(nx * nz);
  const beyond = (cell: number, face: Contact['face'], x: number, z: number, place: number) => {
    const common = { cell, face, height: z, resistance: 0 };
    if (place === -1) contacts.push({ ...common, head: z, outOnly: true, name: SURFACE });
    else if (place === -2) {
      liner.push({ cell, x, z, along: alongLine(ground.outline, { x, z }) });
      if (ground.leakance && z < ground.pond)
        contacts.push({
          ...common,
          head: ground.pond,
          resistance: 1 / ground.leakance,
          outOnly: false,
          name: POND,
        });
    } else if (place <= -3) {
      const pipe = ground.pipes[-3 - place];
      const hole = holes[-3 - place];
      const around = 2 * (hole.x.to - hole.x.from + hole.z.to - hole.z.from);
      contacts.push({
        ...common,
        head: Math.max(pipe.level ?? pipe.z, pipe.z, z),
        resistance: (pipe.entry ?? 0) * around,
        outOnly: true,
        name: `pipe ${-2 - place}`,
      });
    }
  };
  for (let j = 0; j < nz; j++)
    for (let i = 0; i < nx; i++) {
      const k = j * nx + i;
      if (places[k] < 0) continue;
      const [x, z] = [(grid.x[i] + grid.x[i + 1]) / 2, (grid.z[j] + grid.z[j + 1]) / 2];
      if (i === 0) contacts.push(farEnd(k, z, ground.far.left, FAR_LEFT));
      else if (places[k - 1] < 0) beyond(k, 'upright', grid.x[i], z, places[k - 1]);
      if (i === nx - 1) contacts.push(farEnd(k, z, ground.far.right, FAR_RIGHT));
      else if (places[k + 1] < 0) beyond(k, 'upright', grid.x[i + 1], z, places[k + 1]);
      if (j > 0 && places[k - nx] < 0) beyond(k, 'level', x, grid.z[j], places[k - nx]);
      const over = j === nz - 1 ? -1 : places[k + nx];
      if (over >= 0) continue;
      beyond(k, 'level', x, grid.z[j + 1], over);
      if (over === -1) supply[k] += ground.rain * (grid.x[i + 1] - grid.x[i]);
    }
  liner.sort((a, b) => a.along - b.along);
  return { section: { grid, soils, soilOf, contacts, supply }, ground, liner };
}

function farEnd(cell: number, height: number, head: number, name: string): Contact {
  return { cell, face: 'upright', head, height, resistance: 0, outOnly: false, name };
}

function refuse(ground: PondGround): void {
  const { outline, surface, layers, blanket = [], base, rain } = ground;
  if (outline.length < 2)
    throw new InputError('missing-input', 'missing outline: a liner needs two points or more');
  if (layers.length === 0)
    throw new InputError('missing-input', 'missing layers: the ground needs at least one');
  [...layers, ...blanket].forEach(({ thickness }, l) => {
    const name = l < layers.length ? `layer ${l + 1}` : `blanket, layer ${l + 1 - layers.length} from above`;
    if (!(thickness > 0))
      throw new InputError('invalid-input', `${name}: thickness ${thickness} m is outside 0 m upwards`);
  });
  const under = undersidesOf(ground).at(-1) ?? floorOf(ground);
  if (!(base < under))
    throw new InputError(
      'invalid-input',
      `base ${base} m is outside the ground below the pond, under ${under} m`,
    );
  const [left, right] = [surface[0].x, surface[surface.length - 1].x];
  if (!(outline[0].x > left && outline[outline.length - 1].x < right))
    throw new InputError(
      'invalid-input',
      `the pond, ${outline[0].x} to ${outline[outline.length - 1].x} m, leaves the section, ${left} to ${right} m`,
    );
  if (!(rain >= 0)) throw new InputError('invalid-input', `rain ${rain} m/s is outside 0 m/s upwards`);
}
