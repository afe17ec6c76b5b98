/** What a recording tells of the center beyond what it tells of the mains. */
import { derive, number } from '../../compute/reader.js';

/** One standard deviation of a band with an ordinary phone, dB: half of the 2.5 dB that are promised for 95 %. */
const BAND_DEVIATION_DB = 1.25;

export const recording = {
  extraDistortion: derive(
    number('1', 'distortion of the center over that of the mains, in percent of the sound'),
    ['distortionCenter', 'distortionMains'],
    (r) => r.number('distortionCenter') - r.number('distortionMains'),
  ),
  toneRecordedDb: derive(
    number('dB', 'largest third-octave difference of center and mains by a recording, magnitude'),
    ['toneMeasuredDb', 'toneMeasuredHz'],
    (r) => {
      // A size without its place could not be told to anybody.
      const [signedDb] = r.numbers('toneMeasuredDb', 'toneMeasuredHz');
      const db = Math.abs(signedDb);
      r.doubt(BAND_DEVIATION_DB / Math.max(BAND_DEVIATION_DB, db));
      return db;
    },
  ),
};
