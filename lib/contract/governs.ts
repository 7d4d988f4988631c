/** What limits the depth, by name. */
export type Governs =
  | 'lift-full'
  | 'lift-drawn-down'
  | 'lift-emptied'
  | 'lift-power-out'
  | 'floor-heave'
  | 'side-slump'
  | 'wet-dig'
  | 'fall'
  | 'outlet-flood'
  | 'envelope'
  | 'capacity'
  | 'discharge'
  | 'footing'
  | 'gas'
  | 'protected'
  | 'evidence'
  | 'none';
