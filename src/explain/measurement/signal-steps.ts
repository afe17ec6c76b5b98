/** How to play and record the test, step by step, with the cautions for ears and tweeters beside it. */

import type { SignalKind } from '../../recording/sequence.js';
import { CAUTIONS } from '../../rules/cautions.js';
import { type Block, heading, type Item, itemList, paragraph } from '../document.js';

export function signalBlocks(file: string, kind: SignalKind, seconds: number): Block[] {
  const steps: Item[] = [
    {
      line:
        kind === 'stereo'
          ? `Copy ${file} to what plays your music, and set the receiver as you listen to two-channel music.`
          : `Copy ${file} to a player that passes six channels on unchanged; switch upmix and sound modes off.`,
    },
    {
      line: 'Put the phone where your head is at the seat, flat and edge-on to the loudspeakers, on something soft. Keep it away from the seat back and do not hold it.',
    },
    {
      line: 'Choose a recorder app without gain control, noise reduction or voice enhancement; WAV at 48 kHz is best.',
    },
    {
      line: 'Set the volume low: as people talk. The falling tone at the start is there to find it.',
      below: [
        paragraph(`Caution: ${CAUTIONS['test-noise']}`),
        paragraph(
          'Caution: Keep ears away from the loudspeakers. The sweep ends in the treble, so turn down if it hisses or rattles, and never play it as loud as music: tweeters bear little of a steady tone.',
        ),
      ],
    },
    { line: 'Start the recorder, wait two seconds, play the file, and stay still and silent.' },
    {
      line: `Let it record on for three seconds after the last sweep (${Math.round(seconds)} seconds in all). Fans and heating off.`,
    },
    {
      line: 'Repeat it at every seat that matters, and once more with the phone turned around: the two should agree.',
    },
    {
      line: 'Copy the recording to this computer and read it: center-audit measure RECORDING. With --case CASE --seat NAME it goes into the case.',
    },
  ];
  return [
    heading(1, `Written: ${file}`),
    paragraph(
      kind === 'stereo'
        ? 'Left, right, both, left again and weaker. It plays everywhere and tells what an upmix does with the middle.'
        : 'Left, right, center, left again and weaker, then center with left in both polarities, each by its speaker position. It tells most, and needs a player for six channels.',
    ),
    itemList(steps, 'number'),
  ];
}
