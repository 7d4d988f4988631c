/** What no number covers; each said once. */

interface Caution {
  title: string;
  text: string;
  /** said only where water is led away or pumped */
  drained?: true;
}

/** Cautions by title that stand before the first step, where it is dug. */
export const FIRST_CAUTIONS: readonly string[] = [
  'Buried services',
  'Children and open water',
  'Who decides',
];

export const CAUTIONS: Caution[] = [
  {
    title: 'Collapse',
    text: 'No clay side can be relied on. A cubic metre weighs over a tonne and a half. Nobody works alone, kneels or bends in a narrow trench; spoil stays 0.6 m (2 ft) from the edge; look again after rain.',
  },
  {
    title: 'Buried services',
    text: 'Have cables and pipes located before the first hole, private ones too. If you smell gas, leave.',
  },
  {
    title: 'Children and open water',
    text: 'Small children drown in garden ponds, in water as shallow as a hand. This holds for the open hole as well: cover or fence it every night.',
  },
  {
    title: 'Electricity near water',
    text: 'Pump, lights and sockets on a residual-current device (RCD, GFCI), fixed outdoor wiring by an electrician; unplug before reaching in.',
  },
  {
    title: 'Discharge and consent',
    text: 'Water may be led to a ditch, road or sewer only with consent, never to a foul sewer and never with silt in it; keep the distance to the boundary that the local code asks.',
    drained: true,
  },
  {
    title: 'Protected ground',
    text: 'Wetland, its buffer, nesting and spawning places, tree roots, old field drains and buried remains: ask before digging or draining.',
  },
  {
    title: 'Who decides',
    text: 'Your local rules decide: this page is no permission to dig or to lead water away. Call a licensed engineer to dig deeper than 1.2 m (4 ft) at the highest side, within the 45° line of a footing, on shrinkable clay near a house, with water under pressure below the clay, or in a dispute.',
  },
];
