/**
 * The one table of thresholds. `clear` is the "clearly audible" grade: r = deviation / clear = 1 is a fair
 * coin. `noticeable` and `severe` are the neighboring grades, for range bars and words.
 * The grades follow the psychoacoustic survey of this project; the two outer ones multiply the anchor.
 */
import type { Unit } from '../facts/spec.js';
import type { SourceId } from './sources.js';

export const GRADES = ['noticeable', 'clear', 'severe'] as const;
export type Grade = (typeof GRADES)[number];

export interface Limit {
  readonly label: string;
  readonly unit: Unit;
  readonly noticeable: number;
  readonly clear: number;
  readonly severe: number;
  /** True when small values are bad (a clearance, a width kept). */
  readonly lowIsBad?: boolean;
  readonly source: SourceId;
  readonly note: string;
}

export const LIMITS = {
  delayMs: {
    label: 'delay error of shared content',
    unit: 'ms',
    noticeable: 0.1,
    clear: 0.25,
    severe: 0.5,
    source: 'time-image',
    note: '4, 10 and 20 degrees of image shift',
  },
  levelDb: {
    label: 'center level against the mains',
    unit: 'dB',
    noticeable: 1,
    clear: 3,
    severe: 6,
    source: 'level-step',
    note: 'a 3 dB step changes how well speech stands out',
  },
  mainsLevelDb: {
    label: 'left against right',
    unit: 'dB',
    noticeable: 0.5,
    clear: 2,
    severe: 4,
    source: 'time-image',
    note: '2.4 degrees per decibel',
  },
  heightDeg: {
    label: 'height mismatch',
    unit: 'deg',
    noticeable: 4,
    clear: 10,
    severe: 17,
    source: 'elevation-blur',
    note: 'with a picture people tolerate more, older ears much more',
  },
  offsetDeg: {
    label: 'sideways offset of the center',
    unit: 'deg',
    noticeable: 3,
    clear: 6,
    severe: 10,
    source: 'azimuth-blur',
    note: 'picture and voice part company from 5 to 10 degrees',
  },
  dipDb: {
    label: 'third-octave dip at a seat',
    unit: 'dB',
    noticeable: 1.5,
    clear: 4,
    severe: 8,
    source: 'lobing-grades',
    note: 'heard as a change of tone before it costs speech',
  },
  speechLossDb: {
    label: 'speech-weighted loss',
    unit: 'dB',
    noticeable: 1,
    clear: 2,
    severe: 4,
    source: 'speech-index',
    note: 'weighted by importance of the band for speech',
  },
  clarityDb: {
    label: 'clarity C50 of the center',
    unit: 'dB',
    noticeable: 3,
    clear: 0,
    severe: -3,
    lowIsBad: true,
    source: 'clarity',
    note: 'as much early as late energy at 0 dB; grades are practice, steps are some three just noticeable differences',
  },
  reflectionDb: {
    label: 'strongest reflection against the direct sound',
    unit: 'dB',
    noticeable: -10,
    clear: -6,
    severe: -3,
    source: 'comb',
    note: 'ripples of 5, 9.5 and 15 dB from peak to dip',
  },
  nearReflectionMs: {
    label: 'delay of a reflection from a surface close to the center',
    unit: 'ms',
    noticeable: 5,
    clear: 3,
    severe: 1.5,
    lowIsBad: true,
    source: 'geometry',
    note: 'a detour of a meter: floor and furniture, no wall across the room',
  },
  extraDistortion: {
    label: 'distortion of the center beyond that of the mains, percent',
    unit: '1',
    noticeable: 1,
    clear: 3,
    severe: 10,
    source: 'practice',
    note: 'at a soft level, second and third harmonic',
  },
  bandDb: {
    label: 'tone difference per third-octave',
    unit: 'dB',
    noticeable: 1,
    clear: 3,
    severe: 6,
    source: 'band-match',
    note: 'after the levels are matched',
  },
  trebleDb: {
    label: 'treble lost above 4 kHz',
    unit: 'dB',
    noticeable: 1,
    clear: 3,
    severe: 6,
    source: 'treble-shelf',
    note: 'broad loss',
  },
  widthLossPct: {
    label: 'stage width lost',
    unit: '1',
    noticeable: 10,
    clear: 20,
    severe: 50,
    source: 'stage-width',
    note: 'percent of the half stage, by energy vectors',
  },
  bassHoleDb: {
    label: 'hole at the bass crossover',
    unit: 'dB',
    noticeable: 2,
    clear: 4,
    severe: 8,
    source: 'bass-sum',
    note: 'deepest point from 40 to 300 Hz',
  },
  resonanceDb: {
    label: 'rise of a cavity or shelf resonance',
    unit: 'dB',
    noticeable: 2,
    clear: 4,
    severe: 6,
    source: 'bay-resonator',
    note: 'raw peak in the lower voice',
  },
  pullDeg: {
    label: 'pull of the phantom image',
    unit: 'deg',
    noticeable: 4,
    clear: 10,
    severe: 20,
    source: 'time-image',
    note: 'toward the nearer main',
  },
  baseWideDeg: {
    label: 'base angle too wide',
    unit: 'deg',
    noticeable: 62,
    clear: 75,
    severe: 90,
    source: 'layout-standard',
    note: '60 degrees is the reference; the wider limits are practice',
  },
  baseNarrowDeg: {
    label: 'base angle too narrow',
    unit: 'deg',
    noticeable: 44,
    clear: 35,
    severe: 25,
    lowIsBad: true,
    source: 'layout-standard',
    note: '60 degrees is the reference; the narrower limits are practice',
  },
  barrierDb: {
    label: 'speech lost behind an obstacle',
    unit: 'dB',
    noticeable: 1,
    clear: 2,
    severe: 5,
    source: 'barrier',
    note: 'speech-weighted',
  },
  reverberationMs: {
    label: 'reverberation time',
    unit: 'ms',
    noticeable: 450,
    clear: 700,
    severe: 1100,
    source: 'reverb-speech',
    note: 'voice range, furnished room',
  },
  subLocalHz: {
    label: 'crossover at which the subwoofer can be heard as a place',
    unit: 'Hz',
    noticeable: 90,
    clear: 130,
    severe: 180,
    source: 'practice',
    note: 'above it the voice follows the subwoofer',
  },
  crossoverGapHz: {
    label: 'difference of the bass crossovers of center and mains',
    unit: 'Hz',
    noticeable: 20,
    clear: 50,
    severe: 90,
    source: 'practice',
    note: 'another lower voice in center and mains',
  },
  sharedPart: {
    label: 'part of the voice that center and mains play together',
    unit: '1',
    noticeable: 0.2,
    clear: 0.5,
    severe: 0.8,
    source: 'shared-part',
    note: 'below 0.2 an error between them is not heard',
  },
  menuEntryM: {
    label: 'longest distance that menus take',
    unit: 'm',
    noticeable: 9,
    clear: 18,
    severe: 30,
    source: 'practice',
    note: 'many distance pages end near 60 ft (18 m), some at half of that',
  },
  voiceFloorHz: {
    label: 'lowest tone of the voice that is played',
    unit: 'Hz',
    noticeable: 90,
    clear: 120,
    severe: 160,
    source: 'practice',
    note: 'low male voices reach down to about 100 Hz',
  },
  shelfReach: {
    label: 'bare shelf over the way to its mirror point',
    unit: '1',
    noticeable: 0.7,
    clear: 1,
    severe: 1.5,
    source: 'shelf-strip',
    note: 'a deep null exists only where the bare shelf reaches the mirror point',
  },
  floorRippleDb: {
    label: 'ripple of the floor reflection, peak to dip',
    unit: 'dB',
    noticeable: 14,
    clear: 18,
    severe: 22,
    source: 'floor-image',
    note: '14 dB over carpet and 17 over a bare floor are usual; grades are practice',
  },
  floorNullRatio: {
    label: 'pitch of the floor hole, center against mains',
    unit: '1',
    noticeable: 1.25,
    clear: 1.6,
    severe: 2.5,
    source: 'floor-image',
    note: '1.25 is a third of an octave; grades are practice',
  },
  wallDipDb: {
    label: 'hole from the wall behind',
    unit: 'dB',
    noticeable: 6,
    clear: 9,
    severe: 13,
    source: 'wall-image',
    note: '6 to 8 dB is usual for a box 30 to 80 cm from the wall; grades are practice',
  },
} as const satisfies Record<string, Limit>;

export type LimitId = keyof typeof LIMITS;
export type LimitUnit<L extends LimitId> = (typeof LIMITS)[L]['unit'];
export function limit(id: LimitId): Limit {
  return LIMITS[id];
}
