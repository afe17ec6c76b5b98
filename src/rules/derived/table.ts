/**
 * Every computed fact, with its unit and its label. What computes it stands in the family files.
 * Angles and errors that a rule compares with a limit are magnitudes (never negative).
 */
import type { Unit } from '../../facts/spec.js';

export interface DerivedMeta {
  readonly kind: 'number' | 'choice';
  readonly unit: Unit;
  readonly label: string;
  readonly values?: readonly string[];
}

const number = <const U extends Unit>(unit: U, label: string) => ({ kind: 'number', unit, label }) as const;
const choice = <const V extends readonly string[]>(label: string, values: V) =>
  ({ kind: 'choice', unit: '1', label, values }) as const;

export const DERIVED = {
  // seats and angles
  seatAngleMaxDeg: number('deg', 'angle of the outermost seat from the axis of the center'),
  seatAngleMainDeg: number('deg', 'angle of the main seat from the axis of the center'),
  mainsBaseDeg: number('deg', 'base angle of the mains at the main seat'),
  centerElevationDeg: number('deg', 'elevation of the center seen from the ear (negative: below)'),
  heightMismatchDeg: number('deg', 'height difference of center and mains seen from the ear'),
  heightApartDeg: number(
    'deg',
    'height difference of the center against mains or picture, the larger (mains alone for two-channel music)',
  ),
  pictureMismatchDeg: number('deg', 'height difference of center and picture seen from the ear'),
  centerOffsetDeg: number('deg', 'sideways offset of the center from the middle, seen from the main seat'),
  aimErrorDeg: number('deg', 'angle between the axis of the center and the ears, vertically'),
  // driver layout
  layoutKind: choice('what the driver layout does sideways', [
    'shared-band-side-by-side',
    'outer-tweeters',
    'vertical',
    'point',
  ] as const),
  layoutDipDb: number('dB', 'deepest dip of the voice range at the worst seat, from the driver layout'),
  layoutDipHz: number('Hz', 'frequency of that dip'),
  layoutDipMainDb: number('dB', 'deepest dip at the main seat, from the driver layout'),
  layoutSpeechLossDb: number('dB', 'speech-weighted loss at the worst seat, from the driver layout'),
  layoutFailDeg: number('deg', 'angle at which this very center reaches a clearly audible dip'),
  tweeterDipDb: number('dB', 'deepest treble dip at the worst seat, from tweeters apart'),
  tweeterDipMainDb: number(
    'dB',
    'deepest treble dip at the main seat, or one hand width beside it, from tweeters apart',
  ),
  twinCenterDipDb: number('dB', 'deepest dip at the worst seat from two center boxes with one signal'),
  aimDipDb: number('dB', 'deepest dip because the ears are above or below the axis'),
  // surfaces
  floorRippleDb: number('dB', 'ripple from the floor reflection of the center, smoothed'),
  floorNullHz: number('Hz', 'first null of the floor reflection of the center'),
  floorNullRatio: number('1', 'first floor nulls of center and mains, the higher over the lower'),
  floorNullMainsHz: number('Hz', 'first null of the floor reflection of the mains'),
  shelfDipDb: number('dB', 'dip from the strip of shelf in front of the center'),
  shelfReach: number(
    '1',
    'bare shelf in front over the way to the spot where it mirrors the voice to the ears',
  ),
  shelfRiseDb: number('dB', 'rise around 400 Hz from the shelf'),
  bayResonanceHz: number('Hz', 'resonance of the air around the box in the bay'),
  bayPeakDb: number('dB', 'peak of that resonance, as filled or open as it is now'),
  recessResonanceHz: number('Hz', 'resonance of the recess in front of the box'),
  recessPeakDb: number('dB', 'peak of the recess resonance'),
  cavityPeakDb: number('dB', 'the larger of the peaks of bay and recess'),
  wallNullHz: number('Hz', 'first null from the wall behind the center'),
  wallDipDb: number('dB', 'depth of that null'),
  sightClearanceM: number('m', 'clearance of the line of sight at the worst seat (negative: cut)'),
  blockedSpeechLossDb: number('dB', 'speech lost behind what is in the way, at the worst seat'),
  // time
  sharedContent: number('1', 'part of the voice that center and mains play together, 0 to 1'),
  delayErrorMs: number(
    'ms',
    'largest delay error of the center against left or right at the seat of the entries',
  ),
  delaySignedMs: number('ms', 'center against the mean of left and right (positive: center late)'),
  delayCombDb: number('dB', 'ripple that this delay error makes in shared content, as the ear resolves it'),
  entryRatio: number('1', 'entered distance of the center over its true distance, against the mains'),
  entryStepErrorMs: number('ms', 'largest error that the step of the entries can leave'),
  mainsArrivalErrorMs: number('ms', 'left against right arrival at the main seat'),
  offSeatCombDb: number(
    'dB',
    'ripple of shared content at the worst seat with perfect alignment, as the ear resolves it',
  ),
  // level
  levelErrorDb: number('dB', 'center against the mean of the mains at the seat, magnitude'),
  levelSignedDb: number('dB', 'center minus the mean of the mains at the seat'),
  mainsLevelErrorDb: number('dB', 'left against right at the seat, magnitude'),
  // upmix and image
  extraction: number('1', 'part of the common content taken out of the mains, 0 to 1'),
  widthLossPct: number('1', 'stage width lost by the upmix, percent'),
  mainsPullDeg: number(
    'deg',
    'pull of a phantom image toward the nearer main at the worst seat that still has a center task',
  ),
  mainSeatPullDeg: number('deg', 'pull of a phantom image at the main seat'),
  offSeatImageShare: number(
    '1',
    'how far a centered voice moves to the near main at the worst seat, 0 to 1, with the present upmix',
  ),
  upmixKind: choice('what kind of upmix it is (ambience assumed absent unless told)', [
    'adjustable-center',
    'fixed-center',
    'ambience',
  ] as const),
  // tone
  screenLossDb: number('dB', 'treble above 4 kHz lost in the screen and not given back'),
  screenMismatchDb: number('dB', 'treble difference of center and mains from the screen'),
  toneWorstBandDb: number('dB', 'largest third-octave difference of center and mains, measured, magnitude'),
  toneWorstBandHz: number('Hz', 'band of that difference'),
  toneRmsDb: number('dB', 'rms difference of center and mains, measured'),
  toneTrebleDb: number('dB', 'mean measured difference above 4 kHz, center minus mains'),
  trebleDeficitDb: number(
    'dB',
    'measured treble of the center below the mains, above 4 kHz (0 if not below)',
  ),
  toneBeforeWorstBandDb: number('dB', 'largest third-octave difference before equalisation, magnitude'),
  eqDamageDb: number('dB', 'by how much equalisation made the worst band worse (negative: better)'),
  // bass
  bassHoleDb: number('dB', 'hole at the bass crossover of center and subwoofer'),
  bassHoleHz: number('Hz', 'frequency of that hole'),
  safeCrossoverHz: number('Hz', 'lowest bass crossover that leaves no audible hole for this center'),
  crossoverGapHz: number('Hz', 'difference of the bass crossovers of center and mains'),
  subReachHz: number(
    'Hz',
    'up to where the subwoofer plays the voice (0 without one, or with the center set large)',
  ),
  unplayedVoiceHz: number(
    'Hz',
    'low limit of a center set large: below it nobody plays the voice (0 if set small)',
  ),
  // room
  reverbClarityMs: number('ms', 'reverberation time measured, or as the clap suggests'),
  // polarity
  polarityLossDb: number('dB', 'level of shared voice lost if the center is reversed'),
} as const satisfies Record<string, DerivedMeta>;

export type DerivedId = keyof typeof DERIVED;
export const DERIVED_IDS = Object.keys(DERIVED) as DerivedId[];
export function isDerivedId(id: string): id is DerivedId {
  return Object.hasOwn(DERIVED, id);
}
type DerivedOf<K extends DerivedMeta['kind']> = {
  [Id in DerivedId]: (typeof DERIVED)[Id] extends { readonly kind: K } ? Id : never;
}[DerivedId];
export type DerivedNumberId = DerivedOf<'number'>;
export type DerivedChoiceId = DerivedOf<'choice'>;
export type DerivedChoice<Id extends DerivedChoiceId> = (typeof DERIVED)[Id]['values'][number];
