/**
 * A driver, a strap between terminals or a cable is dead or loose. The owner hears a dull, thin or
 * scratching voice at every seat and at every volume, most often from one day to the next. The ear close
 * to each driver settles it in three minutes. Left out: parts that only strain when loud (`overload`)
 * and channels that never arrive (`routing`).
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { any, is, isNot, noneOf, oneOf } from '../condition.js';
import { staysWithoutCenter } from '../home-tests.js';
import { recordedDistortion } from '../recorded.js';

export const driverFault = defineCause({
  id: 'driver-fault',
  title: 'A driver, strap or cable of the center is dead or loose',
  severity: 'broken',
  priorDb: -15,
  priorBecause: 'Rarer than settings and placement, but quickly found.',
  story:
    'One part of the center no longer plays, or plays with scratches: a burnt tweeter, a cone that rubs, a strap missing between double terminals, a cable with a loose strand. The voice is dull, thin or comes and goes, at every seat and at every volume.',
  notWhen:
    'A voice that is clean when soft and strained when loud is overload. A rattle that stops when you press a hand on the furniture is the furniture. A wrong tone that was always there is the design or the place.',
  links: {
    rattles: 0.5,
    dull: 0.4,
    'voice-missing': 0.2,
    'voice-too-quiet': 0.3,
    'voice-unclear-everywhere': 0.4,
    'voice-changes-tone': 0.4,
    harsh: 0.2,
    // A coil that rubs is heard first when it is loud.
    'distorts-when-loud': 0.3,
    hollow: 0.1,
    'voice-unclear': 0.4,
    thin: 0.3,
    boxy: 0.1,
    'weak-bass': 0.15,
  },
  groups: {
    drivers: 'same-quantity',
    terminals: 'independent',
    history: 'independent',
    noise: 'independent',
    swap: 'same-quantity',
    box: 'independent',
    'without-center': 'independent',
    near: 'independent',
    recorded: 'independent',
  },
  rules: [
    answers({
      id: 'driver-silent-or-scratching',
      group: 'drivers',
      when: noneOf('driversHeard', 'all'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'Close to the drivers one is not sound: {driversHeard}.',
      no: 'Close to the drivers all of them play clean.',
      because: 'A driver that fails leaves its part of the voice out, and no setting brings it back.',
    }),
    answers({
      id: 'ear-finds-bad-driver',
      group: 'drivers',
      when: oneOf('testEarToDrivers', 'silent', 'rattles'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'With an ear close to each driver and the volume down, {testEarToDrivers}.',
      no: 'With an ear close to each driver and the volume down, all play clean.',
      because: 'From a hand away one driver drowns the others, so a silent or scratching one cannot hide.',
      source: 'direct-sound',
    }),
    answers({
      id: 'strap-or-clamp-loose',
      group: 'terminals',
      when: is('jumpers', 'loose'),
      tells: { yes: 'strong', no: 'slight' },
      yes: 'At the terminals of the center {jumpers}.',
      no: 'Clamps and straps of the center are tight and in place.',
      because: 'Double terminals feed two halves of the loudspeaker; without the strap one half is silent.',
    }),
    answers({
      id: 'came-suddenly',
      group: 'history',
      // A move, a new cable or a loud party may be what broke it.
      applies: isNot('onset', 'with-change'),
      when: is('onset', 'sudden'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'The trouble came suddenly.',
      no: 'The trouble did not come suddenly.',
      because:
        'Parts and contacts fail from one day to the next; layout and place were always what they are.',
    }),
    answers({
      id: 'noise-differs-from-mains',
      group: 'noise',
      when: noneOf('testNoiseEach', 'alike', 'louder'),
      tells: { yes: 'slight', no: 'telling' },
      yes: 'On test noise the center sounds different from left and right.',
      no: 'On test noise the center sounds like left and right, or only louder, so no driver of it can be dead.',
      because:
        'A dead driver takes octaves out of steady noise, which no ear misses; many other causes change it too.',
    }),
    answers({
      id: 'does-not-follow-channel',
      group: 'swap',
      when: oneOf('testSwapAtAmplifier', 'stays', 'gone'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'With left and center swapped at the amplifier the trouble does not move to the left loudspeaker: box, cable and place remain.',
      no: 'With left and center swapped at the amplifier the trouble moves to the left loudspeaker, so box and cable of the center are sound.',
      because:
        'The swap leaves box and cable of the center together; if it is gone from both, touching the wires made a loose contact good.',
    }),
    answers({
      id: 'goes-with-the-box',
      group: 'box',
      when: is('testSwapAtLoudspeakers', 'follows-box'),
      tells: { yes: 'slight', no: 'hint' },
      yes: 'On another cable the center box is as bad as before, so the fault is in the box.',
      no: 'The fault stays with the cable: a cable or a clamp, or the channel, not a driver.',
      because: 'A dead driver goes where its box goes. A bad cable stays behind with its channel.',
    }),
    answers({
      id: 'not-good-near-by',
      group: 'near',
      when: noneOf('testNearCenter', 'good-near'),
      tells: { yes: 'slight', no: 'strong' },
      yes: 'A meter in front of the center the voice is still not good.',
      no: 'A meter in front of the center the voice is good, so its drivers do their work.',
      because:
        'Near by, room and path hardly matter, so a fault of the loudspeaker is heard at its plainest.',
      source: 'direct-sound',
    }),
    answers({
      id: 'silent-in-the-channel-test',
      group: 'swap',
      when: oneOf('silentCenter', 'open', 'channel'),
      tells: { yes: 'strong' },
      yes: 'Test noise for the center comes from nowhere, as with a cable that is off or a box that is dead.',
      no: 'Test noise for the center is heard, so its cable and some of its drivers work.',
      because:
        'The receiver makes this noise itself. Where it stays away, a setting, a cable or the box is to blame, and the test does not say which.',
    }),
    recordedDistortion('recorded'),
    answers({
      id: 'silent-on-any-output',
      group: 'swap',
      when: is('silentCenter', 'box'),
      tells: { yes: 'proof' },
      yes: 'The center stays silent with test noise, on its own output and on that of the left: its box or its cable is dead.',
      no: 'The center is not known to be silent on another output.',
      because: 'The left output has just played a loudspeaker: what is silent there too is silent by itself.',
    }),
    staysWithoutCenter('without-center'),
  ],
  telltales: [
    {
      id: 's-sounds-worst',
      when: is('whichVoices', 's-sounds'),
      telling: 'hint',
      yes: 'The s and f sounds are worst.',
      no: 'It is not the s and f sounds that are worst.',
      because: 'A dead tweeter takes them away first.',
    },
  ],
  confirm: [
    confirmedBy('testEarToDrivers', 'silent', 'rattles'),
    confirmedBy('testSwapAtAmplifier', 'stays', 'gone'),
  ],
  acts: { 'center-set-to-none': 0.8, 'center-unplugged': 0.5 },
  remedies: [
    {
      id: 'tighten-terminals',
      title: 'Tighten clamps, straps and plugs of the center',
      seen: any(is('jumpers', 'loose'), is('driversHeard', 'crackles'), is('silentCenter', 'box')),
      steps: [
        'Switch the power off and photograph the terminals.',
        'Tug each wire at the box and at the amplifier; strip and clamp again what moves.',
        'See that the metal straps between double terminals sit tight.',
        'Power on with the volume down and listen close to each driver.',
      ],
      minutes: 8,
      expect: 'If a contact was loose, the missing part of the voice is back at once.',
      verify: 'Move the cable gently while noise plays: nothing crackles and every driver plays.',
      cautions: ['power-off-wires', 'photograph-menu', 'volume-down', 'domes'],
      changes: [
        'jumpers',
        'driversHeard',
        'testEarToDrivers',
        'testNoiseEach',
        'testNearCenter',
        'polarityMarks',
      ],
      cures: 0.4,
    },
    {
      id: 'try-another-cable',
      act: 'cable-exchanged',
      title: 'Put another cable on the center',
      steps: [
        'Switch the power off.',
        'Connect the center with a cable that is known to be good, red to red and black to black.',
        'Power on with the volume down and listen close to each driver.',
      ],
      minutes: 8,
      cost: 'low',
      expect: 'A broken cable is ruled out; if the voice is whole again, the old one was it.',
      verify: 'The test noise of the center no longer comes and goes.',
      cautions: ['power-off-wires', 'volume-down'],
      changes: ['driversHeard', 'testEarToDrivers', 'testSwapAtLoudspeakers', 'polarityMarks'],
      cures: 0.3,
    },
    {
      id: 'repair-driver',
      act: 'center-exchanged',
      title: 'Have the driver repaired or replaced',
      when: noneOf('driversHeard', 'all'),
      seen: oneOf('driversHeard', 'tweeter-silent', 'cone-silent', 'rattles'),
      steps: [
        'Make sure that it is a driver: a passive radiator, or a cone for bass only, is quiet with a voice by design.',
        'Write down which driver is silent or scratches and at what volume you listened.',
        'Ask its maker or a repair shop for the same driver; another type changes the tone.',
        'Ask yourself what killed it: loud playing with bass or an amplifier at its end kills the new one as well.',
        'Until then set the center to none, so that left and right carry the voice.',
      ],
      minutes: 60,
      cost: 'medium',
      expect: 'The whole voice range is back at every seat.',
      verify: 'With an ear close and the volume down, every driver plays clean.',
      cautions: ['powered-box', 'volume-down', 'domes', 'power-off-wires'],
      changes: [
        'driversHeard',
        'testEarToDrivers',
        'testNoiseEach',
        'testNearCenter',
        'responseCenter',
        'centerMode',
      ],
      cures: 0.9,
    },
  ],
});
