/**
 * The voice comes from surrounds or heights as well: an ambience or all-channels mode copies it there, the
 * setup gives the center's signal to more loudspeakers, or those stand too loud. The owner hears a voice
 * behind or above, or one that is everywhere and nowhere. Left out: the layout of the surrounds, which no
 * fact describes, and mixes that put voices there on purpose.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { is, oneOf } from '../condition.js';

export const surroundSpill = defineCause({
  id: 'surround-spill',
  title: 'The voice comes from surrounds or heights as well',
  severity: 'clear',
  priorDb: -15,
  priorBecause: 'It needs surrounds and a mode that feeds them with the voice.',
  story:
    'A mode that spreads sound to all loudspeakers, or surrounds that are set too loud or too near, give the voice a second home beside or behind the listener. It leaves the picture, gets vague, and the nearest surround wins.',
  notWhen:
    'A voice that comes from behind only at some moments of a film was put there by its makers. A voice only from behind, with a silent center, is a swapped cable.',
  links: {
    'voice-from-behind': 0.75,
    echo: 0.35,
    'no-middle': 0.2,
    'voice-unclear-everywhere': 0.2,
    hollow: 0.2,
    'voice-unclear-off-side': 0.1,
    'voice-pulled-aside': 0.1,
    'voice-unclear': 0.2,
    'image-follows-head': 0.1,
  },
  groups: {
    direction: 'independent',
    channels: 'independent',
    mode: 'same-mechanism',
    'what-is-left': 'independent',
    noise: 'independent',
  },
  rules: [
    answers(
      {
        id: 'voice-heard-behind',
        group: 'direction',
        says: {
          yes: 'The voice comes from behind or above.',
          no: 'The voice does not come from behind or above.',
        },
        because: 'The front loudspeakers cannot put a voice behind you; only something that plays there can.',
        source: 'azimuth-blur',
      },
      is('voiceDirection', 'behind'),
      { yes: 'proof', no: 'telling' },
    ),
    answers(
      {
        id: 'center-noise-elsewhere-too',
        group: 'channels',
        says: {
          yes: 'Test noise for the center comes from surrounds or heights as well.',
          no: 'Test noise for the center does not come from surrounds or heights.',
        },
        because: 'The receiver sends this noise to one channel; if more play, setup or cables hand it on.',
      },
      is('channelCheck', 'center-elsewhere-too'),
      { yes: 'proof', no: 'hint' },
    ),
    answers(
      {
        id: 'mode-adds-ambience',
        group: 'mode',
        says: {
          yes: 'The listening mode adds ambience of its own, and such modes feed the voice to the surrounds.',
          no: 'The listening mode adds no ambience.',
        },
        because: 'An added hall plays the voice again from all sides, later and softer.',
      },
      is('upmixAmbience', 'yes'),
      { yes: 'hint', no: 'slight' },
    ),
    answers(
      {
        id: 'gone-without-upmix',
        group: 'mode',
        says: {
          yes: 'With the upmix off the trouble is gone, so the mode puts the voice there.',
          no: 'With the upmix off the trouble is the same, so no mode puts the voice there.',
        },
        because: 'Played straight, two channels reach left and right only.',
      },
      is('testUpmixOff', 'gone'),
      { yes: 'hint', no: 'telling' },
    ),
    answers(
      {
        id: 'voice-left-without-center',
        group: 'what-is-left',
        says: {
          yes: 'With the center silenced part of the voice is left, so something else plays it.',
          no: 'With the center silenced the voice is gone, so nothing else plays it.',
        },
        because: 'A voice that spills keeps on speaking where it spills to.',
      },
      oneOf('testUnplugged', 'voice-weaker', 'voice-full'),
      { yes: 'hint', no: 'strong' },
    ),
    answers(
      {
        id: 'noise-hard-to-place',
        group: 'noise',
        says: {
          yes: 'Test noise of the center is hollow and hard to place.',
          no: 'Test noise of the center is easy to place.',
        },
        because:
          'Noise from several places at once has no clear direction; reversed polarity can do the same.',
      },
      is('testNoiseEach', 'phasey'),
      { yes: 'telling', no: 'slight' },
    ),
  ],
  telltales: [
    {
      id: 'all-loudspeakers-play',
      when: is('allChannelMode', 'yes'),
      telling: 'strong',
      says: 'A mode is on that plays the same sound from all loudspeakers.',
      otherwise: 'No such mode is on.',
      because: 'It sends the voice to the loudspeakers beside and behind as well.',
    },
  ],
  confirm: [confirmedBy('testUpmixOff', 'gone'), confirmedBy('testUnplugged', 'voice-weaker', 'voice-full')],
  acts: { 'upmix-off': 0.5 },
  boundTo: 'source',
  remedies: [
    {
      id: 'leave-the-mode',
      act: 'other-listening-mode',
      title: 'Choose a mode without ambience and without all-channel playback',
      seen: is('allChannelMode', 'yes'),
      steps: [
        'Play a newscast.',
        'Step through the listening modes: straight, plain upmix, then the mode you use now.',
        'Keep the one in which the voice stays at the picture.',
      ],
      minutes: 3,
      cost: 'free',
      expect: 'The voice comes forward to the picture; the room sounds smaller, which is the price.',
      verify: 'With eyes closed you point at the picture.',
      cautions: [],
      changes: [
        'allChannelMode',
        'upmixAmbience',
        'ambienceSize',
        'upmixUse',
        'upmixCommonPart',
        'voiceDirection',
        'testUpmixOff',
      ],
      cures: 0.6,
    },
    {
      id: 'try-without-surrounds',
      act: 'surrounds-off',
      title: 'Set surrounds and heights to none for one film',
      steps: [
        'Photograph the loudspeaker page of the menu.',
        'Set surrounds and heights to none and play the same scene.',
        'If the voice comes forward, set them back and lower their level, 2 dB at a time.',
        'Check their distances: one entered too far plays too early.',
      ],
      minutes: 8,
      cost: 'free',
      expect: 'You hear whether they made it; with their level right they surround without speaking.',
      verify: 'With eyes closed you point at the picture, with the surrounds on again.',
      cautions: ['photograph-menu', 'volume-down'],
      changes: ['voiceDirection', 'channelCheck', 'testUnplugged'],
      cures: 0.6,
    },
    {
      id: 'free-center-output',
      title: 'Give the center an output of its own',
      when: is('channelCheck', 'center-elsewhere-too'),
      steps: [
        'Switch the power off and photograph the terminals.',
        'Follow each surround cable to its output; move those that share the output of the center.',
        'In the menu, see that surrounds and heights are assigned as what they are.',
        'Power on with the volume down and run the channel test.',
      ],
      minutes: 12,
      cost: 'free',
      expect: 'The noise for the center comes from the center alone.',
      verify: 'The channel test steps through all loudspeakers one at a time.',
      cautions: ['power-off-wires', 'photograph-menu', 'amplifier-load', 'volume-down', 'test-noise'],
      changes: ['channelCheck', 'voiceDirection', 'testUnplugged', 'testNoiseEach'],
      cures: 0.85,
    },
  ],
});
