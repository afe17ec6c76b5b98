/**
 * The upmix offers no center control and is used on two-channel music: what is common to both channels goes
 * to the center, and nothing can be set about it. The stage narrows by energy vectors (a third of its width
 * with full extraction), hardly by velocity vectors, so it is heard in the middle and high range. A crude
 * subtraction of the middle puts the sides out of phase instead: hollow rather than narrow. Left out: which
 * of the two ways a given upmix works, since owners cannot know.
 */
import { confirmedBy, defineCause, deviates } from '../cause.js';
import { all, is, isNot } from '../condition.js';
import { staysWithoutCenter } from '../home-tests.js';
import { heard, toldTale } from '../remarks.js';

export const fixedExtraction = defineCause({
  id: 'fixed-extraction',
  title: 'An upmix without a center control is used on two-channel music',
  severity: 'clear',
  priorDb: -6,
  priorBecause:
    'Where such a mode plays music without a control, it narrows most stages and one owner in five minds.',
  story:
    'The mode in use draws the middle of the music into the center and has no setting for how much. The stage narrows toward one box, or turns hollow at the sides.',
  notWhen:
    'In films with their own center channel it does nothing. A mode that leaves the singer in the mains takes hardly any width, whatever it adds in the center. For seats off the middle the firm center is a gain, not a fault.',
  applies: all(is('upmixWorks', 'yes'), is('upmixKind', 'fixed-center')),
  // An upmix without a control in use on music: one system in eight (judgement).
  appliesIn: 0.12,
  links: {
    'image-collapses-to-center': 0.75,
    hollow: 0.15,
    'voice-changes-tone': 0.15,
    'voice-too-loud': 0.1,
    'just-prefer-two-channels': 0.25,
    'small-and-lifeless': 0.3,
    'gaps-between-speakers': 0.2,
  },
  pictures: ['stage'],
  groups: {
    width: 'same-quantity',
    switching: 'independent',
    'without-center': 'independent',
    heard: 'independent',
  },
  rules: [
    deviates({
      id: 'width-lost',
      group: 'width',
      of: 'widthLossPct',
      limit: 'widthLossPct',
      yes: 'The upmix takes about {widthLossPct} percent of the stage width; {limit} percent is clearly heard.',
      no: 'The upmix takes {widthLossPct} percent of the stage width, which is not clearly heard.',
      because:
        'Half-panned sounds move toward the middle when their common part is taken out of the mains: computed by energy vectors, which rule above some 700 Hz.',
      source: 'stage-width',
    }),
    heard(
      'mains-are-empty',
      'width',
      { yes: 'telling', no: 'telling' },
      'What is left when the center is silent is what the upmix leaves in the mains.',
    ),
    heard(
      'upmix-off-cures',
      'switching',
      { yes: 'hint', no: 'proof' },
      'What the upmix makes goes with it. So do faults of the center itself, which then plays no music.',
    ),
    heard(
      'from-the-small-box',
      'heard',
      { yes: 'telling', no: 'telling' },
      'One source alone has no width of its own; shared with the mains it spreads.',
    ),
    heard(
      'music-is-played',
      'width',
      { no: 'proof' },
      'Only two-channel music has a wide stage for the mode to shrink.',
    ),
    staysWithoutCenter('without-center'),
  ],
  telltales: [
    toldTale('films-are-fine', 'telling', 'An upmix leaves alone what has its own center.'),
    toldTale('two-channels-are-fine', 'strong', 'It is two-channel music that an upmix shrinks.', 'against'),
  ],
  confirm: [confirmedBy('testUpmixOff', 'gone'), confirmedBy('testUnplugged', 'voice-gone')],
  acts: { 'spread-on': 0.1, 'center-set-to-none': 0.85 },
  boundTo: 'source',
  remedies: [
    {
      id: 'another-mode',
      act: 'other-listening-mode',
      title: 'Use an upmix with a center setting for music',
      steps: [
        'Play a singer in the middle and step through the listening modes.',
        'In each, look for a setting of the center such as spread, width or image.',
        'With one seat in the middle, open it to half or more. With a row, open it a little and listen at the end as well.',
      ],
      minutes: 8,
      expect:
        'At best the middle seat gets back all of the lost width (about {widthLossPct} percent). The end seats pay for every bit of spread: what is shared combs there, and the singer leans to the near main ({offSeatLean} at the worst seat as it is set now).',
      verify:
        'Switch the mode off and on at the middle seat: the stage keeps its width and the singer stays in place.',
      cautions: [],
      changes: [
        'upmixUse',
        'upmixCenterControl',
        'centerSpread',
        'upmixCommonPart',
        'upmixAmbience',
        'testUpmixOff',
        'testUnplugged',
      ],
      cures: 0.7,
    },
    {
      id: 'music-in-two-channels',
      act: 'upmix-off',
      title: 'Play two-channel music in two channels, films as before',
      steps: [
        'Choose plain two-channel playback for music inputs.',
        'Leave films and television as they are: there the center plays what the mix gives it.',
      ],
      minutes: 3,
      expect:
        'Full stage width at the middle seat. The price: at seats off the middle the singer goes to the near main.',
      verify: 'From the middle seat a song spans both mains; check the end seats before you keep it.',
      cautions: [],
      changes: ['upmixUse', 'testUpmixOff', 'playedContent'],
      cures: 0.85,
    },
    {
      id: 'lower-center-for-music',
      act: 'center-turned-down',
      title: 'Turn the center down for music only',
      when: isNot('seating', 'single-seat'),
      steps: [
        'Find a level trim that is kept per input or per mode.',
        'Lower the center by 2 to 3 dB for the music input only.',
      ],
      minutes: 4,
      expect:
        'A somewhat wider stage for the middle seat, and the end seats keep a singer in the middle. The price is a softer singer.',
      verify: 'The song opens a little and the singer is not lost at the end seat.',
      cautions: ['photograph-menu'],
      changes: ['centerTrim', 'measuredCenterLevel', 'voiceLoudness'],
      cures: 0.3,
    },
  ],
});
