/** What a recording tells of the center beyond what it tells of the mains. */
import { derive, number } from '../../compute/reader.js';

export const recording = {
  extraDistortion: derive(
    number('1', 'distortion of the center over that of the mains, in percent of the sound'),
    ['distortionCenter', 'distortionMains'],
    (r) => r.number('distortionCenter') - r.number('distortionMains'),
  ),
};
