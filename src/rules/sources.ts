/**
 * Where the numbers come from. `mark` says how far a reader may trust the citation:
 * read (we read the text that says it), computed (our own arithmetic or model), practice (common
 * practice, no source), memory (from memory: never printed as a requirement of a standard).
 */
export type Mark = 'read' | 'computed' | 'practice' | 'memory';

export interface Source {
  readonly cite: string;
  readonly mark: Mark;
}

export const SOURCES = {
  'own-grades': {
    cite: 'grades of this project: noticed, clearly heard, severe, on a coarse grid; no source',
    mark: 'practice',
  },
  practice: { cite: 'common practice of advisers and installers, no source', mark: 'practice' },
  geometry: { cite: 'plain geometry and the speed of sound', mark: 'computed' },
  interference: {
    cite: 'interference of drivers: circular pistons in a baffle with their crossover filters, exact distances',
    mark: 'computed',
  },
  'lobing-grades': {
    cite: 'grades for a third-octave dip: 1 dB band criterion of a published coloration metric, 7 dB dip at 1.6 kHz rated mild for speech (Wierstorf thesis data)',
    mark: 'read',
  },
  'speech-index': {
    cite: 'ANSI S3.5-1997 band importance, as transcribed in several public implementations',
    mark: 'memory',
  },
  'time-image': {
    cite: 'Lee et al. 2017, level and time law of the phantom image (read as published code); Stitt et al. 2016 precedence-weighted energy vector',
    mark: 'read',
  },
  recording: {
    cite: 'one recording of an exponential sweep, compared between loudspeakers; accuracy by simulated rooms of this project',
    mark: 'computed',
  },
  clarity: {
    cite: 'C50 after ISO 3382-1; just noticeable difference 1.1 dB (Bradley, Reich & Norcross 1999)',
    mark: 'memory',
  },
  comb: {
    cite: 'two-path interference, smoothed to hearing resolution with the ERB of Glasberg and Moore',
    mark: 'computed',
  },
  'elevation-blur': {
    cite: 'Perrott & Saberi 1990, minimum audible angle 3.65 degrees vertically, 0.97 horizontally',
    mark: 'read',
  },
  'azimuth-blur': {
    cite: 'Yost et al. 2013 (rms error 6.2 degrees); Stenzel et al. 2019 (picture-sound offset noticed from 5 to 10 degrees)',
    mark: 'read',
  },
  'level-step': {
    cite: 'just noticeable level differences 0.5 to 1 dB; a 3 dB step of speech to noise is the smallest noticed (McShefferty 2015)',
    mark: 'read',
  },
  'band-match': {
    cite: 'spectral changes are judged by the largest single-band difference (Green et al. 1987; 1 dB default of a published coloration metric)',
    mark: 'read',
  },
  'treble-shelf': {
    cite: 'audibility of a broad resonance or shelf, about 1 dB (model of this project)',
    mark: 'computed',
  },
  'stage-width': {
    cite: 'energy vector of three loudspeakers (Gerzon), grades from localization blur of 3 and 6 degrees',
    mark: 'computed',
  },
  'upmix-arithmetic': {
    cite: 'arithmetic of extracting the common part, constant-power panning',
    mark: 'computed',
  },
  'late-voice': {
    cite: 'direct sound against the decay of the room, early part up to 50 ms (D50 of ISO 3382; theory of Barron and Lee 1988)',
    mark: 'memory',
  },
  'low-rise': {
    cite: 'image sources of the walls close by, 100 to 200 Hz; a front flush with furniture by a two-dimensional boundary-element model',
    mark: 'computed',
  },
  'floor-image': { cite: 'image source of the floor with absorption', mark: 'computed' },
  'shelf-strip': {
    cite: 'Fresnel-Kirchhoff strip in front of the face, checked against a two-dimensional boundary-element model within 2 dB',
    mark: 'computed',
  },
  'bay-resonator': {
    cite: 'air in the gaps against the volume behind the box, within about 20 percent of a boundary-element model',
    mark: 'computed',
  },
  'wall-image': { cite: 'image source of the wall behind with the box directivity', mark: 'computed' },
  barrier: { cite: 'Maekawa 1968 barrier attenuation in the form of Kurze and Anderson', mark: 'memory' },
  'screen-sheet': {
    cite: 'viscous air in holes (Maa) with hole interaction calibrated on published handbook examples',
    mark: 'read',
  },
  'bass-sum': {
    cite: 'sum of high-passed loudspeaker and low-passed subwoofer, Butterworth and Linkwitz-Riley filters',
    mark: 'computed',
  },
  'sub-detection': {
    cite: 'Kelloniemi et al. 2005 (AES 118, paper 6431): a subwoofer was detected from a crossover of about 120 Hz on, at any angle',
    mark: 'read',
  },
  polarity: { cite: 'sum of shared content with center in and out of polarity', mark: 'computed' },
  'layout-standard': {
    cite: 'Recommendation ITU-R BS.775-3, 60 degree base, equal heights of left, center, right',
    mark: 'read',
  },
  'reverb-speech': {
    cite: 'speech is hurt by long reverberation; about 0.3 to 0.6 s is usual in furnished living rooms',
    mark: 'practice',
  },
  echo: {
    cite: 'delayed copies of speech: coloration below, separate echo above some 30 to 50 ms',
    mark: 'memory',
  },
  crosstalk: {
    cite: 'a phantom voice is some 7 dB weaker near 1.6 to 2 kHz than a real center (rigid-sphere head model)',
    mark: 'computed',
  },
  'owner-threads': {
    cite: 'rough count over some eighty public threads and articles by owners and their helpers',
    mark: 'read',
  },
  'real-center': {
    cite: 'Shirley 2013: a real center improved the understanding of speech in babble by 5.9 percent (20 listeners)',
    mark: 'read',
  },
  'direct-sound': {
    cite: 'level of the direct sound falls 6 dB per doubling of distance, the sound of the room hardly',
    mark: 'computed',
  },
  'shared-part': {
    cite: 'judgement of this project: an error between loudspeakers counts only for what they play together, and is ignored below a share of 0.2',
    mark: 'practice',
  },
  'seat-power': {
    cite: 'sensitivity, power and distance: 10 and 20 times the logarithm; peaks 12 to 18 dB above a meter, room gain 3 dB (read in a public calculator of levels)',
    mark: 'read',
  },
  'cone-travel': {
    cite: 'arithmetic of a cone: at equal sound, travel grows fourfold per octave down; 10 dB more take ten times the power',
    mark: 'computed',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
