/** What a recording of the test signal says of a cause: one rule for each quantity, so that all causes say it alike. */
import { answers, deviates, type Rule } from './cause.js';
import { above, all, atMost, below, noneOf } from './condition.js';

type Of<G extends string> = Rule & { readonly group: G };

/** A loudspeaker pushes while the others pull. */
export const recordedPolarity = <const G extends string>(group: G): Of<G> =>
  answers({
    id: 'recording-shows-polarity',
    group,
    when: noneOf('polarityMeasured', 'alike'),
    tells: { yes: 'proof', no: 'proof' },
    yes: 'A recording at the main seat shows one of the three reversed against the others.',
    no: 'A recording at the main seat shows all three with the same polarity.',
    because:
      'The low middle of the direct sound keeps its phase whatever crossover or room do behind it. Where a recording cannot tell, it says so and nothing is written down.',
    source: 'recording',
  });

/** The room blurs the center at the main seat. */
export const recordedClarity = <const G extends string>(group: G): Of<G> =>
  answers({
    id: 'recording-shows-blur',
    group,
    when: below('clarityMeasuredDb', 'clarityDb'),
    tells: { yes: 'strong', no: 'strong' },
    yes: 'A recording of the center shows a clarity C50 of {clarityMeasuredDb}: the room drowns syllables.',
    no: 'A recording of the center shows a clarity C50 of {clarityMeasuredDb}, with which speech is clear.',
    because:
      'C50 weighs what arrives within 50 ms, which the ear adds to a syllable, against what comes later and blurs the next one. A change of 1.1 dB is just noticed.',
    source: 'clarity',
  });

/** A surface close to the center throws its sound back. */
export const recordedReflection = <const G extends string>(group: G): Of<G> =>
  answers({
    id: 'recording-shows-reflection',
    group,
    when: all(
      atMost('reflectionMeasuredMs', 'nearReflectionMs'),
      above('reflectionMeasuredDb', 'reflectionDb'),
    ),
    tells: { yes: 'telling', no: 'hint' },
    yes: 'A recording shows a reflection {reflectionMeasuredMs} behind the center, at {reflectionMeasuredDb} against it: a surface close by.',
    no: 'A recording shows no strong reflection from a surface close to the center.',
    because:
      'A copy within three milliseconds and hardly weaker than the sound itself colors the voice with broad holes; later ones belong to the room.',
    source: 'recording',
  });

/** The center distorts, and the mains on the same recorder do not. */
export const recordedDistortion = <const G extends string>(group: G): Of<G> =>
  answers({
    id: 'recording-shows-distortion',
    group,
    when: above('extraDistortion', 'extraDistortion'),
    tells: { yes: 'strong', no: 'hint' },
    yes: 'A recording at a soft level shows {distortionCenter} percent of distortion from the center, far more than from the mains.',
    no: 'A recording at a soft level shows no more distortion from the center than from the mains.',
    because:
      'Recorder and room distort all three alike, so what the center has over the mains is its own. At a soft level a sound box stays below one or two percent.',
    source: 'recording',
  });

/** The center has another tone than the mains at the main seat. */
export const recordedTone = <const G extends string>(group: G): Of<G> =>
  deviates({
    id: 'recording-shows-tone',
    group,
    of: 'toneRecordedDb',
    limit: 'bandDb',
    maxDb: 8,
    yes: 'A recording at the main seat shows center and mains {toneRecordedDb} apart around {toneMeasuredHz}; {limit} is clearly heard.',
    no: 'A recording at the main seat shows center and mains within {toneRecordedDb} in every third octave.',
    because:
      'One recorder hears all three, so its own tone cancels. It hears box, place and settings together, so it points less to the box than an exchange does.',
    source: 'band-match',
  });
