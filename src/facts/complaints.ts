/**
 * What the owner hears. Several causes share a complaint; `leak` is the chance that nothing we list
 * explains it (judgement on a coarse grid, no source: see DEVELOPERS.md, "Priors, links, leaks").
 */
interface ComplaintSpec {
  /** In the owner's words, as read back to him. */
  readonly title: string;
  /** One short line that tells it from its neighbors. */
  readonly hint: string;
  readonly leak: number;
}

export const COMPLAINTS = {
  'voice-unclear': {
    title: 'the voice is unclear',
    hint: 'hard to follow; where one sits was not told',
    leak: 0.08,
  },
  'voice-unclear-off-side': {
    title: 'the voice is unclear at seats off to the side',
    hint: 'clear in the middle, muffled at the ends of the sofa',
    leak: 0.02,
  },
  'voice-unclear-everywhere': {
    title: 'the voice is unclear at every seat',
    hint: 'muffled, muddy, hard to follow wherever one sits',
    leak: 0.08,
  },
  'voice-unclear-back-row': {
    title: 'the voice is unclear in a row behind',
    hint: 'clear in front, lost behind the others',
    leak: 0.03,
  },
  'image-collapses-to-center': {
    title: 'the whole stage collapses into the center loudspeaker',
    hint: 'everything seems to come from one small box',
    leak: 0.03,
  },
  'voice-low-or-high': {
    title: 'the voice comes from below or above the picture',
    hint: 'from the furniture, or from over the picture',
    leak: 0.02,
  },
  'voice-pulled-aside': {
    title: 'the voice is pulled to one side',
    hint: 'left or right of the picture',
    leak: 0.04,
  },
  'image-follows-head': {
    title: 'the image follows the head',
    hint: 'a step aside, and everything moves along',
    leak: 0.05,
  },
  'voice-changes-tone': {
    title: 'a voice changes its tone as it moves across',
    hint: 'another timbre in the center than at the sides',
    leak: 0.04,
  },
  dull: { title: 'the voice sounds dull', hint: 'no sparkle, as under a blanket', leak: 0.05 },
  boomy: { title: 'the voice sounds boomy or chesty', hint: 'too much lower voice', leak: 0.05 },
  hollow: { title: 'the voice sounds hollow', hint: 'as through a tube, or phasey', leak: 0.04 },
  thin: { title: 'the voice sounds thin', hint: 'no body, as through a telephone', leak: 0.05 },
  boxy: {
    title: 'the voice sounds boxy',
    hint: 'as from a barrel, a cupboard or through the nose',
    leak: 0.05,
  },
  'small-and-lifeless': {
    title: 'everything sounds small and lifeless',
    hint: 'the music has lost its size and its drive',
    leak: 0.08,
  },
  'gaps-between-speakers': {
    title: 'there are gaps between left, center and right',
    hint: 'three separate blobs instead of one stage',
    leak: 0.04,
  },
  'swishes-with-head-movement': {
    title: 'the treble swishes as the head moves',
    hint: 'it changes with every inch of head movement',
    leak: 0.02,
  },
  'voice-too-quiet': {
    title: 'the voice is too quiet',
    hint: 'the remote is in the hand all evening',
    leak: 0.08,
  },
  'voice-too-loud': {
    title: 'the voice is too loud',
    hint: 'it sticks out in front of the rest',
    leak: 0.04,
  },
  'whispers-lost-effects-loud': {
    title: 'whispers are lost and effects too loud',
    hint: 'up for the talking, down for the noise',
    leak: 0.1,
  },
  'voice-missing': {
    title: 'the voice is missing',
    hint: 'music and effects play, nobody speaks',
    leak: 0.03,
  },
  'voice-from-behind': {
    title: 'the voice comes from behind or above',
    hint: 'from the surround or height loudspeakers',
    leak: 0.03,
  },
  'no-middle': {
    title: 'there is no middle',
    hint: 'wide and vague, nothing stands between the mains',
    leak: 0.03,
  },
  echo: { title: 'the voice has an echo', hint: 'a second voice just behind the first', leak: 0.05 },
  harsh: { title: 'the voice sounds harsh', hint: 'sharp, hissing, tiring', leak: 0.06 },
  'distorts-when-loud': {
    title: 'the voice distorts when loud',
    hint: 'clean when soft, strained when loud',
    leak: 0.04,
  },
  rattles: {
    title: 'something rattles or buzzes',
    hint: 'a noise that comes along with the voice',
    leak: 0.08,
  },
  'weak-bass': {
    title: 'the low part of voice or music is weak',
    hint: 'no weight where left and right alone have it',
    leak: 0.08,
  },
  'out-of-step-with-picture': {
    title: 'voice and lips are out of step',
    hint: 'the whole sound is early or late',
    leak: 0.3,
  },
  'just-prefer-two-channels': {
    title: 'nothing is wrong, two channels please more',
    hint: 'a matter of taste, and a fine answer',
    leak: 0.1,
  },
} as const satisfies Record<string, ComplaintSpec>;

export type ComplaintId = keyof typeof COMPLAINTS;
export const COMPLAINT_IDS = Object.keys(COMPLAINTS) as ComplaintId[];
export function isComplaintId(id: string): id is ComplaintId {
  return Object.hasOwn(COMPLAINTS, id);
}
