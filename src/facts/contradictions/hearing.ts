/** What is heard against what was measured, and complaints against each other. */
import { told } from '../book.js';
import { COMPLAINTS, type ComplaintId } from '../complaints.js';
import { type Check, type Contradiction, clash, holds, withNumbers } from './clash.js';
import type { Side } from './pairs.js';

/** The ear tells a softer or louder center from this difference on. Read: 2 to 3 dB by ear, see the limits. */
const BY_EAR_DB = 2;

export const loudnessAgainstMeter: Check = (book) =>
  withNumbers(book, ['measuredCenterLevel', 'measuredLeftLevel'], (center = 0, left = 0) => {
    const heard = told(book, 'voiceLoudness');
    const apartDb = center - left;
    const against =
      (heard === 'softer' && apartDb >= BY_EAR_DB) || (heard === 'louder' && apartDb <= -BY_EAR_DB);
    const facts = ['voiceLoudness', 'measuredCenterLevel', 'measuredLeftLevel'] as const;
    return against ? [clash(book, 'loudness-against-meter', 'soft', facts)] : [];
  });

/** Reverberation a clap hears as dry, and as ringing, milliseconds. Judgement. */
const DRY_BELOW_MS = 700;
const RINGS_ABOVE_MS = 250;

export const clapAgainstMeasured: Check = (book) =>
  withNumbers(book, ['reverberationTime'], (time = 0) => {
    const clap = told(book, 'clapRing');
    return (clap === 'dry' && time > DRY_BELOW_MS) || (clap === 'long' && time < RINGS_ABOVE_MS)
      ? [clash(book, 'clap-against-measured', 'soft', ['clapRing', 'reverberationTime'])]
      : [];
  });

/** Complaints of which only one can be heard at a time. */
const OPPOSED: readonly (readonly [ComplaintId, ComplaintId, 'hard' | 'soft'])[] = [
  ['voice-too-quiet', 'voice-too-loud', 'soft'],
  ['voice-missing', 'voice-too-loud', 'soft'],
  ['voice-missing', 'harsh', 'soft'],
  ['voice-unclear-off-side', 'voice-unclear-everywhere', 'soft'],
  ['image-collapses-to-center', 'no-middle', 'soft'],
  ['image-collapses-to-center', 'voice-missing', 'soft'],
];

export const opposedComplaints: Check = (book) =>
  OPPOSED.filter(([a, b]) => book.complaints.includes(a) && book.complaints.includes(b)).map(
    ([a, b, kind]): Contradiction => ({
      id: `both-${a}-and-${b}`,
      kind,
      facts: [],
      complaints: [a, b],
      text: `Both are told: ${COMPLAINTS[a].title}, and ${COMPLAINTS[b].title}. It may be one on some days or titles and the other on others.`,
    }),
  );

export const complaintTwice: Check = (book) =>
  book.complaints
    .filter((id) => book.absentComplaints.includes(id))
    .map(
      (id): Contradiction => ({
        id: `heard-and-not-heard-${id}`,
        kind: 'hard',
        facts: [],
        complaints: [id],
        text: `It is told that ${COMPLAINTS[id].title}, and also that this is not so.`,
      }),
    );

export const taste: Check = (book) => {
  const prefers = book.complaints.includes('just-prefer-two-channels');
  const others = book.complaints.filter((id) => id !== 'just-prefer-two-channels');
  const answer = told(book, 'likesTwoChannel');
  const [first] = others;
  if (prefers && first !== undefined) {
    const text = `It is told that ${COMPLAINTS['just-prefer-two-channels'].title}, and also that ${COMPLAINTS[first].title}. Both may be true; they have different answers.`;
    return [
      {
        id: 'prefers-but-complains',
        kind: 'soft',
        facts: [],
        complaints: ['just-prefer-two-channels', ...others],
        text,
      },
    ];
  }
  if (prefers && answer === 'something-wrong') {
    const note = `It is also told that ${COMPLAINTS['just-prefer-two-channels'].title}.`;
    return [
      {
        ...clash(book, 'prefers-but-wrong', 'soft', ['likesTwoChannel'], note),
        complaints: ['just-prefer-two-channels'],
      },
    ];
  }
  if (answer === 'like-two' && first !== undefined && !prefers) {
    const note = `It is also told that ${COMPLAINTS[first].title}. Both may be true.`;
    return [{ ...clash(book, 'taste-but-complains', 'soft', ['likesTwoChannel'], note), complaints: others }];
  }
  return [];
};

/** What is heard as well where left and right play alone. */
const WITHOUT_CENTER: readonly ComplaintId[] = [
  'just-prefer-two-channels',
  'no-middle',
  'voice-pulled-aside',
];

export const silentCenter: Check = (book) => {
  const straight = told(book, 'playedContent') === 'two-channel-music' && told(book, 'upmixUse') === 'off';
  const others = book.complaints.filter((id) => !WITHOUT_CENTER.includes(id));
  if (!straight || others.length === 0) return [];
  const note =
    'The center is silent then, and what is heard comes from left and right alone. A film, or an upmix switched on, tells whether it is the same.';
  return [
    { ...clash(book, 'silent-center', 'soft', ['playedContent', 'upmixUse'], note), complaints: others },
  ];
};

/** A complaint beside an answer that says the opposite. */
const COMPLAINT_AGAINST: readonly (readonly [ComplaintId, Side & { is: readonly string[] }])[] = [
  ['out-of-step-with-picture', { fact: 'lipSync', is: ['in-step'] }],
  ['distorts-when-loud', { fact: 'troubleWhenLoud', is: ['no'] }],
  ['voice-too-quiet', { fact: 'voiceLoudness', is: ['louder'] }],
  ['voice-too-loud', { fact: 'voiceLoudness', is: ['softer'] }],
  ['voice-changes-tone', { fact: 'toneAcrossPan', is: ['no-change'] }],
  ['voice-unclear-everywhere', { fact: 'speechOrder', is: ['both-clear'] }],
  ['no-middle', { fact: 'voiceDirection', is: ['center-box'] }],
];

export const complaintAgainstAnswer: Check = (book) =>
  COMPLAINT_AGAINST.filter(([id, side]) => book.complaints.includes(id) && holds(book, side)).map(
    ([id, side]) => ({
      ...clash(
        book,
        `${id}-but-${side.fact}`,
        'soft',
        [side.fact],
        `It is also told that ${COMPLAINTS[id].title}.`,
      ),
      complaints: [id],
    }),
  );
