/** What test noise and a swap at the amplifier say together of a silent center. */
import { choice, derive, type Reader } from '../../compute/reader.js';

const SILENT_FACTS = ['channelCheck', 'testSwapAtAmplifier'] as const;
/** Silent on its own output and on that of a main: the box or its cable. Silent on its own only: the channel. */
function silentCenter(r: Reader<(typeof SILENT_FACTS)[number]>): 'no' | 'open' | 'box' | 'channel' {
  const check = r.toldChoice('channelCheck');
  if (check === undefined) return r.stop('channelCheck');
  if (check !== 'silent') return 'no';
  const swap = r.toldChoice('testSwapAtAmplifier');
  if (swap === 'stays') return 'box';
  return swap === 'moves-left' ? 'channel' : 'open';
}

export const routes = {
  silentCenter: derive(
    choice('a center that is silent with test noise, and where that lies', [
      'no',
      'open',
      'box',
      'channel',
    ] as const),
    SILENT_FACTS,
    silentCenter,
  ),
};
