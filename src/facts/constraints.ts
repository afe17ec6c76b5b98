/** What must not be done in this home: a remedy that needs it is not proposed. */
export const CONSTRAINTS = {
  'no-purchase': 'nothing is bought',
  'no-holes': 'no holes are drilled',
  'cannot-stay-raised': 'the center cannot stay higher or lower than it is',
  'center-stays': 'the center stays where it is',
  'mains-stay': 'the left and right loudspeakers stay where they are',
  'furniture-stays': 'the furniture stays as it is',
  'seats-stay': 'the seats stay where they are',
  'screen-stays': 'the picture or screen stays where it is',
} as const satisfies Record<string, string>;

export type ConstraintId = keyof typeof CONSTRAINTS;
export const CONSTRAINT_IDS = Object.keys(CONSTRAINTS) as ConstraintId[];

export const isConstraintId = (id: string): id is ConstraintId => Object.hasOwn(CONSTRAINTS, id);
