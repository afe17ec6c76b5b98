/**
 * Nothing is wrong; the owner prefers two channels. A phantom voice floats between the mains, carries a
 * little more bass and is weaker near 2 kHz, and many like it. The owner's own word leads here; that no
 * fault was found is weighed elsewhere. Left out: why somebody likes what he likes.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { is, isNot, noneOf } from '../condition.js';

export const preference = defineCause({
  id: 'preference',
  title: 'Nothing is wrong: two channels please more',
  severity: 'taste',
  priorDb: -15,
  priorBecause: 'It should win only when nothing else stands and the owner says so.',
  story:
    'Two channels are a fine choice: most music was mixed on them, and a voice that floats between left and right is what its makers heard. The price is paid at the side seats, where a phantom voice moves into the near loudspeaker while a center would hold it at the picture.',
  notWhen:
    'If a voice is unclear, dull, missing or in the wrong place, there is a reason to be found, however much two channels please. That the fault is gone with the center off does not make it a matter of taste.',
  links: {
    'just-prefer-two-channels': 0.9,
    'image-collapses-to-center': 0.15,
    'small-and-lifeless': 0.2,
  },
  groups: {
    'own-word': 'same-quantity',
    'two-channels': 'same-mechanism',
    'what-is-played': 'independent',
    'put-right-first': 'independent',
  },
  rules: [
    answers({
      id: 'likes-two-channels',
      group: 'own-word',
      when: is('likesTwoChannel', 'like-two'),
      tells: { yes: 'strong' },
      yes: 'In your own words you like two channels better.',
      no: 'You have not said that you like two channels better.',
      because: 'A liking is for the owner to state, and there is nothing in it to repair.',
    }),
    answers({
      id: 'says-something-is-wrong',
      group: 'own-word',
      when: is('likesTwoChannel', 'something-wrong'),
      tells: { yes: 'strong', against: true },
      yes: 'In your own words something is wrong, so it is not a matter of taste.',
      no: 'You have not said that something is plainly wrong.',
      because: 'A heard fault deserves to be found before it is called taste.',
    }),
    answers({
      id: 'content-without-upmix',
      group: 'two-channels',
      when: isNot('testUpmixOff', 'same'),
      tells: { yes: 'slight', no: 'telling' },
      yes: 'With the upmix off, in plain two channels, you are content.',
      no: 'With the upmix off it is the same, so two channels do not please more.',
      because:
        'A phantom voice is weaker near 2 kHz and fuller in the bass, and some like it so; a wrong upmix setting gives the same answer, so that it says only a little.',
      source: 'crosstalk',
    }),
    answers({
      id: 'not-worse-without-center',
      group: 'two-channels',
      when: noneOf('testPhantom', 'worse'),
      tells: { yes: 'slight', no: 'telling' },
      yes: 'In the middle seat you do not miss the center when it is set to none.',
      no: 'In the middle seat it gets worse without the center, so you do not prefer to be without it.',
      because:
        'A real center made speech in babble a few percent easier to follow; who does not miss that may leave it to taste.',
      source: 'real-center',
    }),
    answers({
      id: 'about-two-channel-music',
      group: 'what-is-played',
      when: is('playedContent', 'two-channel-music'),
      tells: { yes: 'hint', no: 'hint' },
      yes: 'It is about two-channel music, which was mixed without a center.',
      no: 'It is not about two-channel music alone, and films are mixed with a center.',
      because: 'Music in two channels is complete without a center; the voices of a film are not.',
    }),
    answers({
      id: 'still-two',
      group: 'put-right-first',
      when: is('testStillTwo', 'still-two'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'With levels matched and the middle shared by all three, two channels still please you more.',
      no: 'With levels matched and the middle shared by all three, two channels no longer please you more: a setting was the reason.',
      because:
        'A closed spread or a loud center makes anybody prefer two channels. What is left when both are right is taste.',
    }),
  ],
  confirm: [
    confirmedBy('testStillTwo', 'still-two'),
    confirmedBy('testUpmixOff', 'gone'),
    confirmedBy('testPhantom', 'gone', 'same'),
  ],
  telltales: [
    {
      id: 'two-tastes',
      when: is('listenersDiffer', 'differ'),
      telling: 'hint',
      yes: 'Two people at the same seat hear it differently.',
      no: 'Two people at the same seat hear it alike.',
      because: 'Taste differs where sound does not.',
    },
  ],
  acts: { 'other-listening-mode': 0.2 },
  boundTo: 'person',
  remedies: [
    {
      id: 'play-music-in-two-channels',
      act: 'upmix-off',
      title: 'Play music in two channels and keep the center for films',
      steps: [
        'Put plain two-channel playback on a key of the remote, or as the default for music sources.',
        'Leave the center on for films and television.',
      ],
      minutes: 3,
      expect: 'Music sounds as you like it, and films keep their voice at the picture for every seat.',
      verify: 'A song and a film scene, one after the other, both please without touching a menu.',
      cautions: [],
      changes: ['upmixUse', 'likesTwoChannel'],
      cures: 0.9,
    },
    {
      id: 'go-without-center',
      title: 'Go without the center altogether, knowing the price',
      steps: [
        'Photograph the menu, then set the center to none, so that left and right carry its voice; do not just unplug it.',
        'Watch a film for an evening, once from the middle and once from the end seat.',
        'Set it back if the end seats miss the voice at the picture.',
      ],
      minutes: 5,
      expect:
        'In the middle the voice floats as in music. Two hand widths off the middle it moves most of the way into the near loudspeaker, and speech in babble is a little harder to follow than from a real center.',
      verify: 'Whoever sits at the end agrees that it is good enough.',
      cautions: ['photograph-menu'],
      changes: ['centerMode', 'voiceDirection', 'testPhantom', 'likesTwoChannel', 'troubleSeats'],
      cures: 0.7,
    },
    {
      id: 'try-shared-middle',
      act: 'spread-on',
      title: 'Try a middle that is shared by all three',
      when: is('upmixCenterControl', 'present'),
      steps: [
        'Switch the upmix on with a singer in the middle.',
        'Open the center spread to half, then fully.',
        'Listen in the middle and at the end seat.',
      ],
      minutes: 3,
      expect:
        'The middle seat keeps most of the width of two channels; off the middle, center and near main mix less evenly.',
      verify: 'Switching the upmix on and off leaves the singer in the same place and about as loud.',
      cautions: [],
      changes: [
        'centerSpread',
        'centerSpreadAmount',
        'upmixUse',
        'upmixCommonPart',
        'testSpreadOn',
        'likesTwoChannel',
      ],
      cures: 0.4,
    },
  ],
});
