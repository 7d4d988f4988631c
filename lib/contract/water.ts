/** The water that sets the head under the liner: in the clay at the low side or behind the uphill wall, in the ring, at the outlet, or what a drain leaves. */
export type Water = 'low side' | 'uphill wall' | 'ring' | 'receiver' | 'drain';
