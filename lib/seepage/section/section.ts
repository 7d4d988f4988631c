import type { SectionGrid } from './grid.js';
import type { SectionSoil } from './soil.js';

/** A face of a cell at which the head outside is given. */
export interface Contact {
  /** index of the cell, row by row from the bottom */
  cell: number;
  /** whether the face is upright (flow across) or level (flow up or down) */
  face: 'upright' | 'level';
  /** head outside, m */
  head: number;
  /** height of the face, m */
  height: number;
  /** of a liner, skin or slots on the face, over its area: head over flux, s */
  resistance: number;
  /** lets water out only: a pipe, or ground at which water may come out */
  outOnly: boolean;
  /** contacts of one name are summed */
  name: string;
}

/** A vertical section of ground, one metre thick: cells of soil, faces that are tight, and what happens at its edges. */
export interface Section {
  grid: SectionGrid;
  soils: SectionSoil[];
  /** soil of each cell, row by row from the bottom; −1 where there is none: pond, air, the inside of a pipe */
  soilOf: Int8Array;
  /** 1 where the face to the right of a cell, or above it, is a tight sheet */
  tightRight?: Uint8Array;
  tightAbove?: Uint8Array;
  contacts: Contact[];
  /** rain or another supply into each cell, m²/s */
  supply?: Float64Array;
}

/** Half-cell resistances of the cells and the conductances between them, full of water. */
export interface Conductances {
  nx: number;
  nz: number;
  /** from the middle of a cell to its right or left face, and to its upper or lower one, s/m² */
  halfAcross: Float64Array;
  halfDown: Float64Array;
  /** to the cell on the right and to the one above, m/s a metre of section; nought at void and tight faces */
  right: Float64Array;
  above: Float64Array;
  /** of the contacts */
  contact: Float64Array;
}

/** Conductances of a section full of water: half-cell resistances in series, exact for layers crossed at right angles. */
export function conductancesOf(section: Section): Conductances {
  const { grid, soils, soilOf, contacts } = section;
  const nx = grid.x.length - 1;
  const nz = grid.z.length - 1;
  const n = nx * nz;
  const [halfAcross, halfDown, right, above] = Array.from({ length: 4 }, () => new Float64Array(n));
  for (let j = 0; j < nz; j++)
    for (let i = 0; i < nx; i++) {
      const k = j * nx + i;
      const soil = soils[soilOf[k]];
      if (!soil) continue;
      const [dx, dz] = [grid.x[i + 1] - grid.x[i], grid.z[j + 1] - grid.z[j]];
      halfAcross[k] = dx / (2 * soil.across * dz);
      halfDown[k] = dz / (2 * soil.down * dx);
      if (i > 0 && soilOf[k - 1] >= 0 && !section.tightRight?.[k - 1])
        right[k - 1] = 1 / (halfAcross[k - 1] + halfAcross[k]);
      if (j > 0 && soilOf[k - nx] >= 0 && !section.tightAbove?.[k - nx])
        above[k - nx] = 1 / (halfDown[k - nx] + halfDown[k]);
    }
  const contact = Float64Array.from(contacts, (c) => 1 / (halfOf(c, halfAcross, halfDown) + skinOf(c, grid)));
  return { nx, nz, halfAcross, halfDown, right, above, contact };
}

/** Resistance of the half cell behind a contact, s/m². */
export function halfOf({ cell, face }: Contact, halfAcross: Float64Array, halfDown: Float64Array): number {
  return face === 'upright' ? halfAcross[cell] : halfDown[cell];
}

/** Resistance of what lies on the face of a contact, s/m². */
export function skinOf({ cell, face, resistance }: Contact, grid: SectionGrid): number {
  if (resistance === 0) return 0;
  const nx = grid.x.length - 1;
  const i = cell % nx;
  const j = (cell - i) / nx;
  return resistance / (face === 'upright' ? grid.z[j + 1] - grid.z[j] : grid.x[i + 1] - grid.x[i]);
}

/** Middle of a cell, m. */
export function middleOf({ x, z }: SectionGrid, cell: number): { x: number; z: number } {
  const nx = x.length - 1;
  const i = cell % nx;
  const j = (cell - i) / nx;
  return { x: (x[i] + x[i + 1]) / 2, z: (z[j] + z[j + 1]) / 2 };
}

/** The same section with heights and heads counted from another datum. */
export function fromDatum(section: Section, datum: number): Section {
  return {
    ...section,
    grid: { x: section.grid.x, z: section.grid.z.map((z) => z - datum) },
    contacts: section.contacts.map((c) => ({ ...c, head: c.head - datum, height: c.height - datum })),
  };
}

/** Head at the most conductive contact, m: counted from there, the small losses beside it keep their digits. */
export function strongestHead({ contacts }: Section, { contact }: Conductances): number {
  let best = 0;
  for (let c = 1; c < contacts.length; c++) if (contact[c] > contact[best]) best = c;
  return contacts[best]?.head ?? 0;
}

/** Flow that rounding of the heads can make at the contacts, m²/s. */
export function roundingFlow({ grid }: Section, { contact }: Conductances): number {
  const height = grid.z[grid.z.length - 1] - grid.z[0];
  return 1e-14 * height * contact.reduce((a, b) => a + b, 0);
}
