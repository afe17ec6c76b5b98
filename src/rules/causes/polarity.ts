/**
 * The center, or one main, is connected with reversed polarity: what it shares with the others cancels in
 * the low voice and has no place. A voice that only the center plays sounds perfectly normal reversed, and
 * so does any one channel alone. A delay error imitates it, so delay is put right first: the test with both
 * polarities is not counted while center and mains are far out of step. Left out: boxes whose drivers are
 * partly reversed by design.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, below, is, isNot, noneOf, not, oneOf } from '../condition.js';
import { ENTRIES } from '../outdated.js';
import { recordedPolarity } from '../recorded.js';
import { toldTale } from '../remarks.js';

/** Seen at the terminals, or at a cone. */
const CROSSED = any(
  oneOf('polarityMarks', 'center-crossed', 'main-crossed'),
  oneOf('testCell', 'center-other', 'main-other'),
);

export const polarity = defineCause({
  id: 'polarity',
  title: 'Center or one main connected with reversed polarity',
  severity: 'severe',
  priorDb: -12,
  priorBecause:
    'A crossed wire is rare where an automatic run was made, and takes a minute to find where none was.',
  story:
    'One of the three pushes while the others pull. What they play together thins out in the low voice and hangs in no place, wide and vague or inside the head.',
  notWhen:
    'Dialog that the mix sends to the center alone sounds the same either way, unless a subwoofer plays its low part. One channel by itself cannot show it: noise that is hollow on the center alone points inside the box. A delay error sounds much alike and is commoner: the distances come first. And a message of the automatic setup is a hint only; some good loudspeakers trigger it.',
  links: {
    hollow: 0.5,
    'no-middle': 0.65,
    'voice-unclear-everywhere': 0.15,
    'voice-too-quiet': 0.12,
    'voice-pulled-aside': 0.08,
    'voice-changes-tone': 0.1,
    'voice-unclear': 0.15,
    thin: 0.3,
    'gaps-between-speakers': 0.2,
    'image-follows-head': 0.15,
    'weak-bass': 0.3,
  },
  groups: {
    wiring: 'same-session',
    pairing: 'independent',
    mains: 'independent',
    cell: 'independent',
    'could-it-be-heard': 'independent',
    heard: 'same-session',
    switching: 'independent',
    origin: 'independent',
    recorded: 'independent',
  },
  rules: [
    answers({
      id: 'fuller-swapped',
      group: 'pairing',
      applies: isNot('testPolarity', 'no-difference'),
      when: is('testPolarity', 'fuller-swapped'),
      // One main the wrong way around is this cause too, and center with the other main shows nothing of it.
      tells: { yes: 'strong', no: 'telling' },
      yes: 'With the wires of the center swapped, center and left together have the fuller low voice.',
      no: 'As wired, center and left together have the fuller low voice: center and left agree.',
      because:
        'Two loudspeakers that push together add 6 dB where their sound arrives together; reversed they cancel, most of all in the low voice. A delay error cancels too, a little higher, and can pass for it.',
      source: 'polarity',
    }),
    answers({
      id: 'mains-fuller-swapped',
      group: 'mains',
      when: is('testPolarityMains', 'fuller-swapped'),
      tells: { yes: 'proof', no: 'slight' },
      yes: 'With the wires of one main swapped, left and right together have the fuller low voice.',
      no: 'As wired, left and right together have the fuller low voice: the mains agree.',
      because:
        'A main that works against the other leaves no middle between them, with the center in any position.',
      source: 'polarity',
    }),
    answers({
      id: 'a-cone-jumps-the-other-way',
      group: 'cell',
      applies: isNot('testCell', 'cannot-see'),
      when: oneOf('testCell', 'center-other', 'main-other'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'On a small cell one of the three moves its cone the other way.',
      no: 'On a small cell all three move their cones the same way.',
      because:
        'Plus at red pushes the cone out in nearly every loudspeaker; with its own cable on, it shows a crossed pair too.',
    }),
    answers({
      id: 'no-delay-error-imitates-it',
      group: 'pairing',
      applies: is('testPolarity', 'fuller-swapped'),
      when: is('testTape', 'agrees'),
      tells: { yes: 'telling', no: 'strong' },
      yes: 'Tape and entries agree, so no delay error imitates reversed polarity.',
      no: 'Tape and entries disagree: a delay error can imitate reversed polarity. Put the distances right, then repeat the test.',
      because:
        'A center late by a millisecond cancels at 500 Hz just as a reversed one does below; with the entries right only polarity is left.',
      source: 'polarity',
    }),
    answers({
      id: 'marks-crossed',
      group: 'wiring',
      when: oneOf('polarityMarks', 'center-crossed', 'main-crossed'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'Red and black are crossed at one of the three front loudspeakers.',
      no: 'Red goes to red and black to black at all three.',
      because: 'A crossed pair is the whole fault; it takes four minutes to look.',
    }),
    answers({
      id: 'setup-complained',
      group: 'wiring',
      when: oneOf('polarityMessage', 'center', 'main'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'The automatic setup complained about polarity; such messages are sometimes wrong.',
      no: 'The automatic setup did not complain about polarity.',
      because:
        'Crossovers that turn the phase, and reflections at the microphone, trigger the message in loudspeakers that are wired right.',
    }),
    deviates({
      id: 'could-be-heard',
      group: 'could-it-be-heard',
      of: 'reversedLossDb',
      limit: 'levelDb',
      // Less than the full weight: a reversed main is this cause too, and does not need the center to be heard.
      only: 'against',
      maxDb: 8,
      yes: 'A reversed center would cost {reversedLossDb} here, in what it shares with the mains or with the subwoofer, so it would be heard.',
      no: 'A reversed center would cost only {reversedLossDb} here, so it cannot explain what is heard.',
      because:
        'Only what two loudspeakers play together can cancel. A voice from the center alone does not change when its wires are swapped, but for its low part at the crossover to a subwoofer.',
      source: 'polarity',
    }),
    answers({
      id: 'no-place',
      group: 'heard',
      when: is('voiceDirection', 'nowhere'),
      tells: { yes: 'strong', no: 'telling' },
      yes: 'The voice comes from nowhere in particular, wide and vague.',
      no: 'The voice has a definite place, which shared sound in opposite polarity has not.',
      because: 'Sound in opposite polarity gives the two ears directions that no real source can have.',
      source: 'polarity',
    }),
    answers({
      id: 'one-channel-is-normal',
      group: 'heard',
      when: noneOf('testNoiseEach', 'phasey'),
      tells: { no: 'telling' },
      yes: 'The center alone plays noise without hollowness, as it does in either polarity.',
      no: 'The center alone is hollow with noise: that is inside the box or its place, not its polarity against the mains.',
      because: 'Polarity is a matter between two loudspeakers; one alone sounds the same either way.',
      source: 'polarity',
    }),
    answers({
      id: 'more-voice-without',
      group: 'switching',
      when: is('testUnplugged', 'voice-fuller'),
      tells: { yes: 'strong', no: 'hint' },
      yes: 'With the center silenced at the loudspeaker the voice is fuller than before.',
      no: 'With the center silenced the voice is not fuller than before, so the center does not work against the mains.',
      because:
        'A center that works against the mains takes voice away, and silencing it gives that back. In step it adds 3 dB or more.',
      source: 'polarity',
    }),
    answers({
      id: 'began-with-wiring',
      group: 'origin',
      when: oneOf('lastChange', 'wiring', 'loudspeaker'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'It began with a change of cables or loudspeakers.',
      no: 'It did not begin with a change of cables or loudspeakers.',
      because: 'Wires cross when they are reconnected, not by themselves.',
    }),
    recordedPolarity('recorded'),
  ],
  confirm: [
    confirmedBy('testUnplugged', 'voice-fuller'),
    confirmedBy('testPolarity', 'fuller-swapped'),
    confirmedBy('testPolarityMains', 'fuller-swapped'),
  ],
  telltales: [
    toldTale(
      'films-are-fine',
      'telling',
      'Films leave the voice to the center alone; a reversed center cancels only in what center and mains share, as an upmix of music does.',
    ),
    {
      id: 'wires-were-off',
      when: oneOf('changedExactly', 'center-wires', 'all-unplugged'),
      telling: 'telling',
      yes: 'The wires of the center, or all of them, were off last.',
      no: 'No wires were off last.',
      because: 'Every wire that is put back can be put back the wrong way.',
    },
  ],
  // One main the wrong way around is this cause too, and goes on without the center.
  acts: { 'center-unplugged': 0.4, 'center-set-to-none': 0.4, 'cable-exchanged': 0.4 },
  remedies: [
    {
      id: 'distances-first',
      title: 'Put the distances right before judging polarity',
      when: all(noneOf('testTape', 'agrees'), not(CROSSED)),
      steps: [
        'Compare taped and entered distances, center against left and right.',
        'Correct the entries, then listen again before touching a wire.',
      ],
      minutes: 8,
      expect:
        'If the trouble was a delay error ({delayErrorMs} at the main seat) that imitated reversed polarity, it is gone.',
      verify: 'A voice shared by center and mains becomes firm.',
      cautions: ['photograph-menu', 'laser'],
      changes: [...ENTRIES, 'testPolarity', 'voiceDirection'],
      cures: 0.15,
    },
    {
      id: 'uncross',
      act: 'polarity-swapped',
      title: 'Put the wires right at the loudspeaker that is crossed',
      // Where nobody has seen it, a delay error comes first.
      when: any(CROSSED, below('delayErrorMs', 'delayMs.severe')),
      seen: CROSSED,
      steps: [
        'Switch the power off and photograph the terminals.',
        'Follow the marked wire of each of the three from amplifier to loudspeaker.',
        'Where red meets black, swap the pair at that loudspeaker only, at one end only.',
        'Power on at low volume.',
      ],
      minutes: 8,
      expect:
        'What center and mains, or center and subwoofer, play together comes back by up to {reversedLossDb}, and the middle gets a place. Above the crossover a voice that the center plays alone does not change.',
      verify:
        'Mono noise on center and left together is fuller than with the pair swapped again. Then the same for right.',
      cautions: ['power-off-wires', 'volume-down', 'photograph-menu'],
      changes: [
        'polarityMarks',
        'polarityMessage',
        'polarityMeasured',
        'testPolarity',
        'testUnplugged',
        'voiceDirection',
        'testPhantom',
      ],
      cures: 0.95,
    },
    {
      id: 'set-it-in-the-menu',
      title: 'Turn the polarity in the menu, where a powered box has no wires to swap',
      when: noneOf('centerPowered', 'no'),
      steps: [
        'Look for a phase or polarity switch on the center or in the menu of the receiver.',
        'Turn it for the center only and repeat the test with center and left.',
        'Leave it where the low voice is fuller.',
      ],
      minutes: 6,
      expect: 'The same as swapping the wires, without opening anything.',
      verify: 'Center and left together are fuller than with the switch the other way.',
      cautions: ['powered-box', 'photograph-menu'],
      changes: ['polarityMeasured', 'testPolarity', 'testUnplugged', 'voiceDirection'],
      cures: 0.8,
    },
    {
      id: 'accept-the-message',
      title: 'If the marks match and the test agrees, skip the message',
      when: all(is('polarityMarks', 'all-match'), oneOf('polarityMessage', 'center', 'main')),
      steps: ['Choose skip or ignore when the setup complains, and finish it.'],
      minutes: 2,
      expect: 'Nothing changes in the sound; the setup can be finished.',
      verify: 'Center and left together are fuller as wired.',
      cautions: [],
      changes: ['polarityMessage'],
      cures: 0.05,
    },
  ],
});
