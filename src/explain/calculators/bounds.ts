/** Ranges shared by the inputs: wide enough for any room, narrow enough to catch a slip of units. Ours. */

/** A length that cannot be zero, m. */
export const LENGTH = { unit: 'm', above: 0, max: 1000 } as const;
/** A height above the floor or a depth, m; zero is possible. */
export const HEIGHT = { unit: 'm', min: 0, max: 1000 } as const;
/** A coordinate, m. */
export const POSITION = { unit: 'm', min: -1000, max: 1000 } as const;
export const FREQUENCY = { unit: 'Hz', above: 0, max: 1_000_000 } as const;
export const LEVEL = { unit: 'dB', min: -200, max: 200 } as const;
/** An angle in front of a loudspeaker or listener, deg. */
export const FRONT_ANGLE = { unit: 'deg', min: -90, max: 90 } as const;
/** A share or an amplitude reflection. */
export const SHARE = { min: 0, max: 1 } as const;
