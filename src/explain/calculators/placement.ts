/** Calculators about where the loudspeaker stands and what is around and in front of it. */
import { barrier, sightline } from '../../acoustics/barrier.js';
import { bay, recess } from '../../acoustics/bay.js';
import { elevation } from '../../acoustics/elevation.js';
import { SEATED_EAR_HEIGHT_M } from '../../acoustics/practice.js';
import { floorBounce, frontWall } from '../../acoustics/reflection.js';
import { SOURCES } from '../../rules/sources.js';
import { frontAngle, height, length, share } from './bounds.js';
import { define } from './calculator.js';
import { number, usually } from './input-kinds.js';

const sourceHeightM = height('height of the loudspeaker (its middle) above the floor', '0.45');
const anyEarHeightM = height('height of the ear above the floor', '1.05');
const earHeightM = usually(SEATED_EAR_HEIGHT_M.usual, anyEarHeightM);
const distanceM = length('distance from loudspeaker to ear, along the floor', '3');
const reflection = usually(1, share('part of the sound pressure that comes back (1: bare and hard)', '0.8'));

export const elevationCalculator = define({
  name: 'elevation',
  title: 'Height and aim of the center',
  answers: 'How far above or below the ear does the loudspeaker stand, and how far does it aim past the ear?',
  inputs: {
    sourceHeightM,
    earHeightM,
    distanceM,
    tiltUpDeg: usually(0, frontAngle('upward tilt of the loudspeaker', '8')),
  },
  outputs: {
    elevationDeg: { unit: 'deg', meaning: 'loudspeaker as the ear sees it, positive above' },
    offAxisDeg: { unit: 'deg', meaning: 'ear as the loudspeaker sees it, positive above its axis' },
  },
  formula: 'elevation = atan((source height - ear height) / distance); off axis = -elevation - tilt',
  validity: 'Plain geometry.',
  source: { cite: 'geometry', mark: 'computed' },
  example: 'sourceHeightM=0.45 distanceM=3',
  run: (values) => elevation(values),
});

export const floorBounceCalculator = define({
  name: 'floor-bounce',
  title: 'Reflection off the floor',
  answers: 'Where does the sound off the floor cancel the direct sound, and how deeply at most?',
  inputs: { sourceHeightM, earHeightM, distanceM, reflection },
  outputs: {
    pathDifferenceM: { unit: 'm', meaning: 'how much longer the way over the floor is' },
    delayMs: { unit: 'ms', meaning: 'how much later the reflection comes' },
    firstNullHz: { unit: 'Hz', meaning: 'first frequency that cancels' },
    specularM: {
      unit: 'm',
      meaning: 'where the ray meets the floor, from the loudspeaker: a rug belongs there',
    },
    nullDepthDb: { unit: 'dB', meaning: 'depth of that null, not smoothed' },
  },
  formula:
    'difference = sqrt(D^2 + (hs + he)^2) - sqrt(D^2 + (hs - he)^2); f = c / (2 difference); point = D hs / (hs + he); depth = 20 lg(1 - reflection * direct / bounced)',
  validity: 'A large flat floor and a source that is equal up and down. Other reflections fill the null.',
  source: SOURCES['floor-image'],
  example: 'sourceHeightM=0.35 distanceM=3',
  run: (values) => floorBounce(values),
});

export const frontWallCalculator = define({
  name: 'front-wall',
  title: 'Reflection off the wall behind',
  answers: 'Which frequency does the wall behind the loudspeaker cancel?',
  inputs: {
    wallDistanceM: height('distance from the wall to the front of the loudspeaker', '0.4'),
    listeningDistanceM: usually(3, length('distance of the seat', '3')),
    reflection,
  },
  outputs: {
    firstNullHz: { unit: 'Hz', meaning: 'first frequency that cancels' },
    nullDepthDb: { unit: 'dB', meaning: 'depth of that null, not smoothed' },
  },
  formula: 'f = c / (4 d); depth = 20 lg(1 - reflection * D / (D + 2 d))',
  validity: 'A source that is equal to all sides, so below about 300 Hz. Null at the wall itself: none.',
  source: SOURCES['wall-image'],
  example: 'wallDistanceM=0.4',
  run: (values) => frontWall(values),
});

export const bayCalculator = define({
  name: 'bay',
  title: 'Resonance of an open bay',
  answers: 'At which frequency do the gaps around the loudspeaker resonate with the air behind it?',
  inputs: {
    bayWidthM: length('width of the bay, inside', '0.6'),
    bayHeightM: length('height of the bay, inside', '0.22'),
    bayDepthM: length('depth of the bay, inside', '0.45'),
    speakerWidthM: length('width of the loudspeaker', '0.5'),
    speakerHeightM: length('height of the loudspeaker', '0.18'),
    speakerDepthM: length('depth of the loudspeaker', '0.3'),
    recessM: usually(0, height('depth of its front behind the front of the bay', '0.05')),
  },
  outputs: { resonanceHz: { unit: 'Hz', meaning: 'lowest resonance; none where there is no gap' } },
  formula:
    'tan(k L1) tan(k L2) = S1 / S2: slot with end corrections 1.5 (g / pi)(1 + ln(2 W / g)), mean gap g = slot area / (bay width + bay height), cavity behind; c / (4 L1) without air behind',
  validity: 'Within about 20 percent of a two-dimensional boundary-element computation.',
  source: SOURCES['bay-resonator'],
  example:
    'bayWidthM=0.6 bayHeightM=0.22 bayDepthM=0.45 speakerWidthM=0.5 speakerHeightM=0.18 speakerDepthM=0.3',
  run: (values) => bay(values),
});

export const recessCalculator = define({
  name: 'recess',
  title: 'Resonance of a set-back front',
  answers: 'At which frequency does the space in front of a recessed loudspeaker resonate?',
  inputs: {
    recessM: height('depth of the front behind the front of the furniture', '0.2'),
    mouthWidthM: length('width of the opening', '0.6'),
    mouthHeightM: length('height of the opening', '0.22'),
  },
  outputs: { resonanceHz: { unit: 'Hz', meaning: 'resonance; none where nothing is set back' } },
  formula: 'f = c / (4 (s + 0.85 a)), a = sqrt(mouth area / pi)',
  validity: 'No gap at the sides; the mouth in a large front.',
  source: { cite: 'quarter-wave tube with the end correction of a flanged pipe', mark: 'memory' },
  example: 'recessM=0.2 mouthWidthM=0.6 mouthHeightM=0.22',
  run: (values) => recess(values),
});

export const barrierCalculator = define({
  name: 'barrier',
  title: 'Loss behind an edge',
  answers: 'How much does the edge of something wide and thin in the way take?',
  inputs: {
    fresnelNumber: number(
      'twice the detour over the wavelength; positive in the shadow, negative in sight',
      '1',
      { min: -1_000_000, max: 1_000_000 },
    ),
  },
  outputs: {
    attenuationDb: { unit: 'dB', meaning: 'loss by Kurze and Anderson' },
    maekawaDb: { unit: 'dB', meaning: 'loss by the fit to the chart of Maekawa' },
  },
  formula:
    'N = 2 detour / wavelength; 5 + 20 lg(sqrt(2 pi N) / tanh sqrt(2 pi N)), tan in place of tanh for N below 0; 10 lg(3 + 20 N). Zero when well clear (N below -0.19)',
  validity:
    'A long straight edge, not capped: past 20 to 25 dB other ways count more. A single head takes far less.',
  source: {
    cite: 'Maekawa 1968 as a fit (read second-hand); Kurze and Anderson 1971 as transcribed in an open acoustics package; their form for N below 0 from memory',
    mark: 'read',
  },
  example: 'fresnelNumber=1',
  run: (values) => barrier(values),
});

export const sightlineCalculator = define({
  name: 'sightline',
  title: 'Sight line over a head or a table',
  answers: 'How far does the straight line from loudspeaker to ear pass above or below what stands between?',
  inputs: {
    sourceHeightM,
    earHeightM: anyEarHeightM,
    earDistanceM: length('distance of the ear from the loudspeaker', '3.4'),
    headDistanceM: height('distance of the head, seat back or table from the loudspeaker', '2.4'),
    headTopM: height('height of the top of that head, seat back or table', '1.27'),
  },
  outputs: { clearanceM: { unit: 'm', meaning: 'line above the top; negative where it is cut' } },
  formula: 'clearance = hs + (he - hs) * head distance / ear distance - top',
  validity: 'Plain geometry. The head stands between loudspeaker and ear.',
  source: { cite: 'geometry', mark: 'computed' },
  example: 'sourceHeightM=0.55 earHeightM=1.25 earDistanceM=3.4 headDistanceM=2.4 headTopM=1.27',
  run: (values) => sightline(values),
});
