/**
 * One person hears it at every seat and the others hear it nowhere. Ears differ with age, a cold or a
 * hearing aid, and people differ in what they listen for; nobody is to blame and nothing is broken. It
 * speaks only when two people have compared, best by exchanging seats. Left out: anything about hearing
 * itself: this program gives no medical advice.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { is, isNot, oneOf } from '../condition.js';

export const listener = defineCause({
  id: 'listener',
  title: 'One person hears it, wherever that person sits',
  severity: 'mild',
  priorDb: -18,
  priorBecause: 'Said only where people have compared and nothing else explains it.',
  story:
    'People hear differently, and each of us differently from year to year. If the trouble goes along with one person from seat to seat while the others do not hear it, the system treats everyone alike, and it can be set to suit that person.',
  notWhen:
    'If only one person has ever listened, nothing can be said. The one who hears it may be the one who listens best: let two people compare before anything is concluded.',
  links: {
    'voice-unclear-everywhere': 0.4,
    // Whose seat is at the end tells it of the end.
    'voice-unclear-off-side': 0.15,
    dull: 0.25,
    harsh: 0.25,
    'voice-too-quiet': 0.3,
    'voice-too-loud': 0.1,
    boomy: 0.1,
    // Ears that differ pull a voice aside.
    'voice-pulled-aside': 0.2,
    'voice-unclear': 0.4,
    'voice-unclear-back-row': 0.12,
    'whispers-lost-effects-loud': 0.3,
  },
  // A remark about the others, and an exchange in which both listened: the second is more than the first said twice.
  groups: { person: 'same-session' },
  rules: [
    answers({
      id: 'one-person-hears-it',
      group: 'person',
      // One listener cannot be compared with anyone: that answer says nothing either way.
      applies: isNot('whoHears', 'only-me'),
      when: is('whoHears', 'one-person'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'One person hears it at every seat and the others do not, so it is a matter of what suits that person.',
      no: 'It is not one person alone who hears it.',
      because:
        'Sound at a seat is the same for whoever sits there; what moves along with a person cannot be made by the place.',
    }),
    answers({
      id: 'goes-along-with-person',
      group: 'person',
      when: is('testSwapSeats', 'goes-with-person'),
      // This is what the cause means: only a muddled comparison brings it about otherwise.
      tells: { yes: 'proof', no: 'proof' },
      yes: 'With seats exchanged it goes along with the person.',
      no: 'With seats exchanged it does not go along with the person.',
      because:
        'Exchanging seats is the fair way to compare: it tells place from person and asks nobody to prove anything.',
    }),
  ],
  telltales: [
    {
      id: 'hearing-is-known',
      when: oneOf('hearingChecked', 'loss', 'aid'),
      telling: 'strong',
      yes: 'A loss of hearing is known, or a hearing aid is worn.',
      no: 'No loss of hearing is known.',
      because: 'A loss in the treble takes the consonants away first.',
    },
    {
      id: 'hearing-is-fine',
      when: is('hearingChecked', 'fine'),
      telling: 'telling',
      speaks: 'against',
      yes: 'The hearing was checked and is fine.',
      no: 'The hearing was not checked, or not found fine.',
      because: 'What a checked ear cannot follow is not the ear.',
    },
    {
      id: 'two-hear-it-differently',
      when: is('listenersDiffer', 'differ'),
      telling: 'telling',
      yes: 'Two people at the same seat hear it differently.',
      no: 'Two people at the same seat hear it alike.',
      because: 'The sound in one place is the same for both.',
    },
    {
      id: 'with-headphones-too',
      when: is('elsewhereToo', 'headphones'),
      telling: 'telling',
      yes: 'With headphones it is the same.',
      no: 'It is not so with headphones, or nobody has tried.',
      because: 'Headphones leave out room and loudspeakers; the ear stays.',
    },
  ],
  confirm: [confirmedBy('testSwapSeats', 'goes-with-person')],
  acts: { 'other-person-listened': 0.8 },
  remedies: [
    {
      id: 'set-it-for-that-person',
      act: 'center-turned-up',
      title: 'Set the voice so that it suits that person',
      steps: [
        'Let the person hold the remote and play plain speech.',
        'Try the center up by 3 dB, then by 6 dB: less than 3 dB hardly changes what is understood. Then try a voice boost or a little more or less treble, one thing at a time.',
        'Keep what pleases, as long as the others are comfortable with it.',
      ],
      minutes: 5,
      expect:
        'The voice gets easier to follow for the one who missed it; the others will hear it stand out a little.',
      verify: 'Both are content with the same scene.',
      cautions: ['photograph-menu', 'tweeter-power'],
      changes: [
        'centerTrim',
        'measuredCenterLevel',
        'voiceLoudness',
        'voiceBoost',
        'equalization',
        'speechOrder',
      ],
      cures: 0.5,
    },
    {
      id: 'best-seat-and-words',
      title: 'Give that person the seat with the clearest voice, and subtitles when wanted',
      steps: [
        'Find the seat with the clearest voice, most often the middle and nearest one.',
        'Switch subtitles on for films that mumble.',
      ],
      minutes: 2,
      expect: 'More words are understood without changing anything for the others.',
      verify: 'The person follows a newscast with ease.',
      cautions: [],
      changes: ['whoHears', 'testSwapSeats'],
      cures: 0.4,
    },
    {
      id: 'headphones-or-near-box',
      title: 'Offer headphones or a small loudspeaker near that seat',
      steps: [
        'Connect headphones or a small speech loudspeaker to a second output of the display or the receiver.',
        'Set its volume by that person alone.',
        'See that it plays in step with the system; if not, use the headphones only.',
      ],
      minutes: 15,
      cost: 'low',
      expect: 'The voice can be as loud as that person likes while the others hear the system as before.',
      verify: 'Everybody follows the same film at a volume they like.',
      cautions: ['hearing'],
      changes: ['displaySpeakers', 'whoHears', 'listeningLevel'],
      cures: 0.6,
    },
    {
      id: 'ask-who-knows-hearing',
      title: 'If it happens elsewhere too, ask somebody who knows about hearing',
      steps: [
        'Notice whether speech is hard to follow in company or on the telephone as well.',
        'If so, a hearing check is quick; with hearing aids, their fitting for television can be adjusted.',
      ],
      minutes: 60,
      cost: 'low',
      expect: 'Where hearing is the reason, an aid fitted for speech helps with every loudspeaker.',
      verify: 'Conversation gets easier, and so does the newscast.',
      cautions: [],
      changes: ['whoHears', 'testSwapSeats'],
      cures: 0.4,
    },
  ],
});
