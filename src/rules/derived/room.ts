/** The room's own sound. */
import { lateVoicePart } from '../../acoustics/late-voice.js';
import { derive, mainSeatIn, number, type Reader, SEAT_FACTS } from '../../compute/reader.js';

/** What a hand clap suggests, ms; a flutter between two walls is a fault of its own and rings no longer than a room does. */
const BY_CLAP_MS = { dry: 300, some: 500, long: 900, flutter: 500 } as const;
/** A room with a carpet that seems to ring on most often flutters instead, ms. All judgement, common practice, no source. */
const CARPETED_MS = 650;
/** A clap tells the reverberation time to about a third, as log-sd. Judgement. */
const CLAP_DOUBT = 0.3;

const RING_FACTS = ['reverberationTime', 'clapRing', 'floorCover'] as const;
function reverberationMs(r: Reader<(typeof RING_FACTS)[number]>): number {
  const measuredMs = r.toldNumber('reverberationTime');
  if (measuredMs !== undefined) return measuredMs;
  const clap = r.choice('clapRing');
  r.doubt(CLAP_DOUBT);
  return clap === 'long' && r.toldChoice('floorCover') === 'carpet' ? CARPETED_MS : BY_CLAP_MS[clap];
}

/** A loudspeaker in the voice range sends this many times as much ahead as to all sides on average. From memory. */
const VOICE_DIRECTIVITY = 4;
/** A living room, m3; a room in which somebody sits far away is larger. Common practice, no source. */
const USUAL_VOLUME_M3 = 60;
const USUAL_SEAT_M = 3;

export const room = {
  reverbClarityMs: derive(
    number('ms', 'reverberation time measured, or as the clap suggests'),
    RING_FACTS,
    (r) => r.from(reverberationMs),
  ),
  lateVoicePart: derive(
    number(
      '1',
      'part of the voice that arrives late at the main seat, from the ring of the room and the distance',
    ),
    [...RING_FACTS, ...SEAT_FACTS],
    (r) => {
      const distanceM = mainSeatIn(r).yM;
      return lateVoicePart({
        reverberationS: r.from(reverberationMs) / 1000,
        volumeM3: USUAL_VOLUME_M3 * Math.max(1, distanceM / USUAL_SEAT_M),
        distanceM,
        directivity: VOICE_DIRECTIVITY,
      });
    },
  ),
};
