/**
 * Speech is drowned by the room or by noise, at every seat and from any loudspeaker: bare walls keep
 * syllables ringing, a fan or the street covers the soft ones. Near the center the direct voice wins and
 * is clear. How far away one sits decides with it. Left out: single reflections (`near-surface`) and
 * the modes of the bass; the ring after a clap is a coarse stand-in for a measured reverberation time.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, atLeast, below, is, isNot, not, oneOf } from '../condition.js';
import { recordedClarity } from '../recorded.js';
import { toldTale } from '../remarks.js';

export const roomAcoustics = defineCause({
  id: 'room-acoustics',
  title: 'The room or its noise drowns the voice',
  severity: 'severe',
  priorDb: -12,
  priorBecause: 'Hard, open rooms are common; carpets, curtains and sofas cure most of them.',
  story:
    'In a hard, empty or open room each syllable rings into the next, and noise covers the soft ones. Every loudspeaker suffers alike, also left and right, and so does a person speaking from the place of the picture. Close to the loudspeaker the voice is clear.',
  notWhen:
    'If the voice is as bad a meter in front of the center, the room is innocent. A voice unclear only at the side seats, or only through the center, is not the room.',
  links: {
    'voice-unclear-everywhere': 0.6,
    echo: 0.35,
    boomy: 0.25,
    harsh: 0.25,
    'voice-unclear-off-side': 0.15,
    'voice-too-quiet': 0.2,
    hollow: 0.15,
    'voice-unclear': 0.6,
    'voice-unclear-back-row': 0.5,
    boxy: 0.1,
    'whispers-lost-effects-loud': 0.15,
  },
  groups: {
    ring: 'same-quantity',
    noise: 'independent',
    near: 'same-quantity',
    seats: 'independent',
    'without-center': 'independent',
    recorded: 'independent',
  },
  rules: [
    deviates(
      {
        id: 'voice-comes-late',
        group: 'ring',
        // A dry room clears the ring, not the noise.
        applies: not(all(is('noiseCovers', 'yes'), below('lateVoicePart', 'lateVoicePart'))),
        says: {
          yes: 'The room rings for about {reverbClarityMs}; at the distance of the main seat {lateVoicePart} of the voice arrives too late to help, from {limit} on it clearly suffers.',
          no: 'The room rings for about {reverbClarityMs}; at the distance of the main seat no more than {lateVoicePart} of the voice arrives late.',
        },
        because:
          'What arrives within some 50 ms helps a voice, what comes later carries each syllable into the next. Near the loudspeaker the direct voice outweighs the ring.',
        source: 'late-voice',
      },
      'lateVoicePart',
      'lateVoicePart',
      { maxDb: 12 },
    ),
    answers(
      {
        id: 'flutters',
        group: 'ring',
        says: {
          yes: 'A clap flutters between two bare walls, which adds a zing to s and t.',
          no: 'A clap does not flutter.',
        },
        because:
          'Two bare walls that face each other throw a sound to and fro; it colors a voice without drowning it.',
      },
      is('clapRing', 'flutter'),
      { yes: 'slight' },
    ),
    answers(
      {
        id: 'noise-covers-speech',
        group: 'noise',
        says: {
          yes: 'With everything paused the room is noisy for the level you listen at: {backgroundNoise}.',
          no: 'With everything paused the room is quiet enough for the level you listen at.',
        },
        because: 'Words go under when their soft sounds fall below the noise, whatever the loudspeaker does.',
        source: 'level-step',
      },
      any(is('backgroundNoise', 'loud'), all(is('backgroundNoise', 'some'), is('listeningLevel', 'soft'))),
      { yes: 'telling', no: 'slight' },
    ),
    answers(
      {
        id: 'good-near-by',
        group: 'near',
        says: {
          yes: 'A meter in front of the center the voice is good, so it gets lost on its way to the seat.',
          no: 'A meter in front of the center the voice is not good.',
        },
        because:
          'Near by, the direct voice outweighs the room: what is good there is spoiled by room or path, not by loudspeaker, channel or program.',
        source: 'direct-sound',
      },
      is('testNearCenter', 'good-near'),
      { yes: 'telling' },
    ),
    answers(
      {
        id: 'as-bad-near-by',
        group: 'near',
        says: {
          yes: 'A meter in front of the center the voice is as bad as at the seat, so the room is innocent.',
          no: 'A meter in front of the center the voice is not as bad as at the seat.',
        },
        because: 'The room cannot spoil a voice before it has travelled through it.',
        source: 'direct-sound',
      },
      is('testNearCenter', 'still-bad'),
      { yes: 'telling', against: true },
    ),
    answers(
      {
        id: 'every-seat-alike',
        group: 'seats',
        says: {
          yes: 'The trouble is the same at every seat.',
          no: 'The trouble depends on the seat, and ringing or noise would not.',
        },
        because: 'Late sound and noise fill the whole room about evenly.',
        source: 'direct-sound',
      },
      is('troubleSeats', 'everywhere'),
      { yes: 'hint', no: 'telling' },
    ),
    answers(
      {
        id: 'stays-without-center',
        group: 'without-center',
        says: {
          yes: 'With the center set to none the trouble stays, as it must if the room makes it.',
          no: 'With the center set to none the trouble is gone, so the room is innocent.',
        },
        because: 'The room treats left and right no better than the center.',
      },
      oneOf('testPhantom', 'same', 'worse'),
      { yes: 'hint', no: 'strong' },
    ),
    recordedClarity('recorded'),
  ],
  telltales: [
    toldTale('soft-voices-worst', 'hint', 'Whispers are the first to fall below noise and ring.'),
    {
      id: 'fine-close-by',
      group: 'near',
      when: is('fineSeats', 'near'),
      telling: 'telling',
      says: 'It is fine close in front of the center.',
      otherwise: 'Close in front of the center is not where it is fine.',
      because: 'Near by the direct sound wins over the room.',
    },
    {
      id: 'soft-things-went',
      when: is('changedExactly', 'soft-things'),
      telling: 'strong',
      says: 'Rugs, curtains or a sofa went last.',
      otherwise: 'No soft things went last.',
      because: 'Soft things are what takes the ring out of a room.',
    },
  ],
  confirm: [confirmedBy('testNearCenter', 'good-near'), confirmedBy('testPhantom', 'same', 'worse')],
  acts: { 'surface-covered': 0.3, 'seat-moved-back': 0.05, 'headphones-tried': 0.8 },
  remedies: [
    {
      id: 'quiet-the-noise',
      title: 'Quiet what makes the noise',
      when: oneOf('backgroundNoise', 'some', 'loud'),
      steps: [
        'Pause everything and walk to each source: fans, projector, window, refrigerator.',
        'Switch off or turn down one after the other and listen from the seat.',
        'Move fans and boxes with fans away from the seat or behind a door with free air.',
      ],
      minutes: 10,
      cost: 'free',
      expect: 'Each 3 dB of noise less is a step in clarity that people notice.',
      verify: 'Soft words of a newscast carry without raising the volume.',
      cautions: ['ventilation'],
      changes: ['backgroundNoise'],
      cures: 0.5,
    },
    {
      id: 'voice-against-noise',
      title: 'Lift soft words over the noise: night mode, voice boost, a step more volume',
      when: all(
        oneOf('backgroundNoise', 'some', 'loud'),
        any(isNot('dynamicCompression', 'on'), isNot('voiceBoost', 'on')),
      ),
      steps: [
        'Switch night mode (dynamic compression) on and raise the volume by a step.',
        'Where that is not enough, try the voice boost of the receiver.',
        'Switch them off again for music.',
      ],
      minutes: 3,
      cost: 'free',
      expect: 'Soft words come up against the noise; effects lose some of their size.',
      verify: 'Whispered words of a film carry.',
      cautions: ['hearing'],
      changes: ['dynamicCompression', 'voiceBoost', 'listeningLevel'],
      cures: 0.4,
    },
    {
      id: 'break-the-flutter',
      title: 'Hang something on one of the two bare walls',
      when: is('clapRing', 'flutter'),
      steps: [
        'Clap while you walk, and find the pair of walls.',
        'Hang a blanket or stand a shelf of books at one of the two.',
      ],
      minutes: 10,
      cost: 'free',
      expect: 'The zing after a clap is gone; one wall of the pair is enough.',
      verify: 'A clap at the main seat is dry.',
      cautions: ['heat'],
      changes: ['clapRing'],
      cures: 0.6,
    },
    {
      id: 'soft-things-for-a-trial',
      act: 'room-treated',
      title: 'Hang and lay soft things for one evening',
      steps: [
        'Lay a thick rug or blankets on the bare floor between seat and loudspeakers.',
        'Close the curtains, or hang blankets over bare walls beside and behind the seats.',
        'Clap at the main seat and compare.',
      ],
      minutes: 15,
      cost: 'free',
      expect: 'The ring of about {reverbClarityMs} gets shorter, and the voice dries up at every seat.',
      verify: 'The clap is gone sooner, and a newscast is clear at the far seats.',
      cautions: ['heat'],
      changes: ['clapRing', 'reverberationTime', 'floorCover', 'testCoverShelf'],
      cures: 0.5,
    },
    {
      id: 'sit-nearer',
      forbiddenBy: ['seats-stay'],
      title: 'Sit nearer, or bring the center nearer',
      gain: { of: 'lateVoicePart', to: { seatDistance: { times: 0.5 } } },
      steps: [
        'Move the seats forward by a good step, or the front loudspeakers toward you.',
        'Run distances and levels again.',
      ],
      minutes: 15,
      cost: 'free',
      expect: 'At half the distance the direct voice is 6 dB stronger against the room.',
      verify: 'The voice at the seat comes closer to what you heard a meter in front of the center.',
      cautions: ['lifting'],
      changes: ['seatDistance', 'tapedCenter', 'tapedMains', 'enteredLeft', 'enteredCenter', 'enteredRight'],
      cures: 0.4,
    },
    {
      id: 'furnish-for-good',
      act: 'room-treated',
      title: 'Furnish the room for speech',
      when: atLeast('reverbClarityMs', 'reverberationMs.noticeable'),
      steps: [
        'Choose a thick carpet with a pad, heavy curtains and full bookshelves for the largest bare areas.',
        'Add thick sound-absorbing panels at the walls beside and behind the seats.',
        'Let a professional fix heavy panels to walls and ceilings.',
      ],
      minutes: 240,
      cost: 'medium',
      expect: 'Ringing comes down toward the usual half second, for the center and for everything else.',
      verify: 'A clap at the main seat leaves no tail, and the voice is clear at the last row.',
      cautions: ['fiber', 'heat', 'ventilation', 'lifting'],
      changes: ['clapRing', 'reverberationTime', 'floorCover', 'measuredCenterLevel', 'responseCenter'],
      cures: 0.75,
    },
  ],
});
