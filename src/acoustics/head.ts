/** Sizes of a head, as every model of one takes them. */

/** Radius of a sphere that stands for a head, m. From memory (textbook); an open auditory toolbox uses it too (read). */
export const HEAD_RADIUS_M = 0.0875;
/** From the ear, where the acoustic middle of a head is, up to its top, m. From memory. */
export const HEAD_TOP_ABOVE_EAR_M = 0.14;
