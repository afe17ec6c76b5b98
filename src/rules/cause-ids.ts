/**
 * The causes, one a file in causes/. Written by `npm run index`: an id keeps its place, since ties in a ranking fall in
 * this order; a new one comes last.
 */
export const CAUSE_IDS = [
  'driver-layout',
  'outer-tweeters',
  'height',
  'aim',
  'cabinet-bay',
  'set-back',
  'near-surface',
  'blocked-path',
  'off-midline',
  'delay',
  'level',
  'spread-off',
  'fixed-extraction',
  'ambience-setting',
  'timbre',
  'correction-mismatch',
  'screen-loss',
  'polarity',
  'bass-management',
  'driver-fault',
  'routing',
  'programme',
  'twin-centers',
  'mains-layout',
  'room-acoustics',
  'double-playback',
  'surround-spill',
  'overload',
  'listener',
  'preference',
] as const;
export type CauseId = (typeof CAUSE_IDS)[number];
