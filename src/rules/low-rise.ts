/**
 * What takes down a low voice that walls or furniture lift. One set of remedies for both places, free and quick, so
 * that both offer them alike.
 */
import type { WrittenRemedy } from './cause.js';
import { all, atLeast, is } from './condition.js';

/** @param rise the computed rise; `by` what makes it, `at` how the switch calls it */
export function lowRiseRemedies(
  rise: 'wallRiseDb' | 'frontRiseDb',
  { by, at }: { readonly by: string; readonly at: string },
): readonly [WrittenRemedy, WrittenRemedy] {
  const lifts = atLeast(rise, 'bandDb.noticeable');
  return [
    {
      id: 'boundary-switch',
      title: `Set the switch at the back of the center to ${at}`,
      when: all(lifts, is('boundarySwitch', 'free')),
      steps: [
        'Turn the volume down and look at the back of the box.',
        `Move the switch or plug to ${at} or boundary.`,
      ],
      minutes: 2,
      expect: `Of the {${rise}} that ${by} add, some 3 to 5 dB go.`,
      verify: 'Steady noise from the center is closer to that of the mains.',
      cautions: ['lifting'],
      changes: ['boundarySwitch', 'testNoiseEach', 'toneAcrossPan', 'responseCenter'],
      cures: 0.65,
    },
    {
      id: 'cut-the-low-voice',
      title: 'Take the low voice of the center down by 3 to 5 dB for a trial',
      when: lifts,
      steps: [
        'Photograph the tone or equalizer page of the center.',
        'Lower everything below about 250 Hz by 3 to 5 dB: a low shelf, or the bass control of that channel.',
        'Fill no hole: it eats power and stays a hole at the next seat.',
        'Where there is an automatic correction, run it again with the center where it stands instead of both.',
      ],
      minutes: 5,
      expect: `The {${rise}} that ${by} add go; a note of its own, or a hole, stays.`,
      verify: 'A low male voice sounds as from the mains.',
      cautions: ['photograph-menu'],
      changes: ['equalization', 'testNoiseEach', 'toneAcrossPan', 'responseCenter'],
      cures: 0.65,
    },
  ];
}
