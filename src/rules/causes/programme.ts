/**
 * The mix or its dynamics, not the system: the voice is soft in the recording, buried under music and
 * effects, or recorded poorly. The owner hears it on some titles, at every seat and through any
 * loudspeaker, while a newscast is clear. Left out: a wrong version sent by the source, which is
 * `routing`, and a soft center on everything, which is `level`.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { is, isNot, noneOf, oneOf } from '../condition.js';

export const programme = defineCause({
  id: 'programme',
  title: 'The program itself, not the system',
  severity: 'clear',
  priorDb: -9,
  priorBecause: 'Voices buried under effects are among the commonest remarks of owners.',
  priorSource: 'owner-threads',
  story:
    'Many films keep voices far below music and effects, and some are mumbled or recorded poorly. Played at home level the soft parts sink, in any system. A plain newscast through the same center is clear.',
  notWhen:
    'If newscasts are hard to follow too, or every title has the trouble, the system has a fault. A center that is too soft on everything is a matter of level.',
  links: {
    'image-collapses-to-center': 0.1,
    'voice-too-quiet': 0.55,
    'voice-unclear-everywhere': 0.45,
    harsh: 0.15,
    dull: 0.1,
    boomy: 0.1,
    echo: 0.05,
    // Some mixes put voices beside or behind on purpose, or spread them.
    'voice-from-behind': 0.1,
    'voice-pulled-aside': 0.08,
    'no-middle': 0.06,
    'out-of-step-with-picture': 0.1,
    'voice-unclear': 0.45,
    'voice-unclear-back-row': 0.1,
    'whispers-lost-effects-loud': 0.7,
  },
  groups: {
    titles: 'same-mechanism',
    dynamics: 'same-mechanism',
    'without-center': 'independent',
  },
  rules: [
    answers({
      id: 'news-clear-film-buried',
      group: 'titles',
      when: is('speechOrder', 'news-clear-film-buried'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'Newscasts are clear while film voices are buried, so the system can carry a plain voice.',
      no: 'Newscasts and films do not differ in this way, so the mix does not explain it.',
      because:
        'A newscast is a voice with nothing over it: loudspeaker, place and level treat it like any other voice.',
      source: 'owner-threads',
    }),
    answers({
      id: 'some-titles-only',
      group: 'titles',
      // One service may send other mixes, or another format: that speaks for either.
      applies: isNot('troubleTitles', 'one-source'),
      when: is('troubleTitles', 'some'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'The trouble is heard on some titles only.',
      no: 'The trouble is not tied to some titles.',
      because: 'The system does not change from title to title; the mix does.',
    }),
    answers({
      id: 'other-source-better',
      group: 'titles',
      when: is('testOtherSource', 'gone'),
      tells: { yes: 'telling', no: 'slight' },
      yes: 'The same scene from another source is free of it, so that version is at fault.',
      no: 'The same scene from another source is no better, which both the mix and the system can explain.',
      because: 'Services and discs carry different mixes of one film, some with squeezed or folded sound.',
    }),
    answers({
      id: 'dynamics-untouched',
      group: 'dynamics',
      when: is('dynamicCompression', 'off'),
      tells: { yes: 'slight', no: 'hint' },
      yes: 'Night mode or dynamic compression is off, so soft voices stay as far below the effects as they were mixed.',
      no: 'Night mode or dynamic compression is on and already lifts soft voices.',
      because:
        'Full dynamics suit a cinema level; at home level the soft end sinks into the noise of the room.',
    }),
    answers({
      id: 'soft-listening',
      group: 'dynamics',
      when: is('listeningLevel', 'soft'),
      tells: { yes: 'hint', no: 'slight' },
      yes: 'You listen softly, where quiet voices of a wide mix are the first thing to be lost.',
      no: 'You do not listen softly, so voices of a wide mix should still carry.',
      because:
        'Turning down moves the softest words below the noise of the room while the effects stay audible.',
    }),
    answers({
      id: 'same-without-center',
      group: 'without-center',
      when: oneOf('testPhantom', 'same'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'With the center set to none the trouble is still there, so the center does not make it.',
      no: 'With the center set to none the trouble changes, so it does not lie in the mix.',
      because: 'The mix is the same through any loudspeaker.',
    }),
  ],
  telltales: [
    {
      id: 'one-channel-comes-in',
      when: is('sourceFormat', 'mono'),
      telling: 'telling',
      yes: 'What comes in is one channel.',
      no: 'More than one channel comes in.',
      because: 'A recording of one channel has no stage; it stands in the middle on every system.',
    },
    {
      id: 'other-titles-are-fine',
      when: oneOf('fineTitles', 'most', 'news', 'other-mix'),
      telling: 'strong',
      yes: 'Other titles, news, or the same title in another mix are fine.',
      no: 'There is no title that is fine.',
      because: 'A system that can do it with one mix can do it with all.',
    },
    {
      id: 'no-title-is-fine',
      when: is('fineTitles', 'none'),
      telling: 'telling',
      speaks: 'against',
      yes: 'No title is fine.',
      no: 'There are titles that are fine.',
      because: 'Not every mix is bad.',
    },
    {
      id: 'unclear-elsewhere-too',
      when: oneOf('elsewhereToo', 'headphones', 'other-room'),
      telling: 'strong',
      yes: 'The same title is unclear on other equipment as well.',
      no: 'Elsewhere the same title is fine, or nobody has tried.',
      because: 'What goes along to other equipment is in the mix.',
    },
    {
      id: 'fine-elsewhere',
      when: is('elsewhereToo', 'fine-elsewhere'),
      telling: 'telling',
      speaks: 'against',
      yes: 'Elsewhere the same title is fine.',
      no: 'The same title is unclear elsewhere too, or nobody has tried.',
      because: 'The mix is the same there.',
    },
  ],
  confirm: [confirmedBy('testOtherSource', 'gone'), confirmedBy('testPhantom', 'same')],
  acts: { 'other-listening-mode': 0.1 },
  remedies: [
    {
      id: 'compress-dynamics',
      act: 'night-mode-changed',
      title: 'Switch on night mode or dynamic compression for such titles',
      when: noneOf('dynamicCompression', 'on'),
      steps: [
        'Play a scene with a buried voice.',
        'Switch on night mode or dynamic compression in the receiver or the player, lightest step first.',
        'Switch it off again for music.',
      ],
      minutes: 2,
      expect: 'Soft voices rise and loud effects fall; music can seem to pump, which is the price.',
      verify: 'The remote stays on the table for the same scene.',
      cautions: [],
      changes: ['dynamicCompression', 'speechOrder'],
      cures: 0.6,
    },
    {
      id: 'loudness-off',
      title: 'Switch a loudness compensation off for films, or on where you listen softly',
      when: noneOf('listeningLevel', 'loud'),
      steps: [
        'Play a scene with a buried voice at your usual level.',
        'Switch the loudness compensation over and listen: some lift the surrounds over the voice, some help it.',
      ],
      minutes: 2,
      expect: 'Bass and surrounds step back or forward against the voice, at low level most of all.',
      verify: 'Less of the same scene is missed.',
      cautions: ['photograph-menu'],
      changes: ['loudnessCompensation', 'speechOrder'],
      cures: 0.15,
    },
    {
      id: 'choose-other-track',
      act: 'source-exchanged',
      title: 'Choose another sound track or version',
      steps: [
        'Open the audio menu of the title and try each track of your language.',
        'Try the multichannel track first, then the two-channel one.',
        'If the player offers a clearer-voice track, try it.',
      ],
      minutes: 4,
      expect: 'Some versions carry the voice several decibels higher against the effects.',
      verify: 'Compare the same minute on both tracks.',
      cautions: [],
      changes: ['testOtherSource', 'sourceFormat', 'speechOrder', 'troubleTitles'],
      cures: 0.4,
    },
    {
      id: 'raise-center-for-film',
      act: 'center-turned-up',
      title: 'Raise the center by 2 to 3 dB for such titles only',
      steps: [
        'Note the present level of the center.',
        'Raise it by 2 dB with the quick level menu, then by 3 dB if needed.',
        'Set it back for music and for titles that need no help.',
      ],
      minutes: 2,
      expect:
        'The voice stands out by the smallest step that people notice in speech; left on for all, it would stick out.',
      verify: 'Words of the same scene can be followed without the remote.',
      cautions: ['photograph-menu'],
      changes: ['centerTrim', 'measuredCenterLevel', 'voiceLoudness', 'triedTrim', 'speechOrder'],
      cures: 0.5,
    },
  ],
});
