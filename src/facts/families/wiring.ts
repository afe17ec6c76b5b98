import { family } from '../spec.js';

/** Cables, terminals and drivers that play or do not. */
export const wiringFacts = family('wiring', {
  polarityMarks: {
    label: 'polarity at the terminals',
    ask: 'Does red go to red and black to black at both ends of all three front cables?',
    hint: 'Power off before touching loudspeaker wires.',
    why: 'A reversed center fights the mains in everything they share.',
    findOut: [
      'Switch the power off first.',
      'Follow the marked wire from the amplifier to the loudspeaker, for each of the three.',
    ],
    minutes: 4,
    usually: 'seen',
    choices: {
      'all-match': 'yes, all three',
      'center-crossed': 'the center is crossed',
      'main-crossed': 'one main is crossed',
    },
  },
  polarityMessage: {
    label: 'phase message of the setup',
    ask: 'Did the automatic setup complain about the phase or polarity of a front loudspeaker?',
    hint: 'Such messages are sometimes wrong; check the cable.',
    why: 'It is a hint, not a proof: some good loudspeakers trigger it.',
    findOut: ['Run the setup again, or recall its messages.'],
    minutes: 1,
    usually: 'recalled',
    choices: { none: 'no', center: 'yes, about the center', main: 'yes, about left or right' },
  },
  driversHeard: {
    label: 'drivers of the center',
    ask: 'From what you have heard so far, do all drivers of the center play?',
    hint: 'A passive radiator, or a cone for bass only, is quiet by design.',
    why: 'A dead tweeter or cone changes the tone at every seat.',
    findOut: ['Turn the volume down.', 'Play noise on the center only.', 'Go near each driver in turn.'],
    minutes: 3,
    usually: 'measured',
    choices: {
      all: 'all of them play clean',
      'tweeter-silent': 'a tweeter is silent or very weak',
      'cone-silent': 'a cone is silent or very weak',
      rattles: 'one rattles or scratches',
      crackles: 'it comes and goes when the cable moves',
    },
  },
  jumpers: {
    label: 'terminals and straps',
    ask: 'Are all wires, clamps and straps at the terminals of the center tight and in place?',
    hint: 'Power off before touching them.',
    why: 'A loose strap silences half of the loudspeaker.',
    findOut: [
      'Switch the power off.',
      'Tug each wire gently; look for metal straps between double terminals.',
    ],
    minutes: 2,
    usually: 'seen',
    choices: { tight: 'tight and in place', loose: 'something is loose or missing' },
  },
  faultyMain: {
    label: 'main at fault',
    ask: 'If wires, drivers, noise or polarity of a main are at fault, which one is it?',
    hint: 'Facing the picture.',
    why: 'One main at fault pulls everything shared to the other side.',
    findOut: ['Play noise on left, then on right.'],
    minutes: 2,
    usually: 'recalled',
    choices: { left: 'the left one', right: 'the right one', both: 'both alike', none: 'neither' },
  },
});
