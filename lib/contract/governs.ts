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

/** The water that sets the head under the liner: in the clay at the low side or behind the uphill wall, in the ring, at the outlet, or what a drain leaves. */
export type Water = 'low side' | 'uphill wall' | 'ring' | 'receiver' | 'drain';
