/**
 * A complaint and the few answers that point at one cause bring it to the front: what an owner says in his first
 * post is often no more. Written from the mechanism of each cause; judgement, no source.
 */
import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/facts/case-file.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { CAUSE_IDS, type CauseId } from '../../src/rules/cause.js';

type Post = readonly [CauseId, readonly ComplaintId[], Readonly<Record<string, string | number>>];

const POSTS: readonly Post[] = [
  [
    'driver-layout',
    ['voice-unclear-off-side'],
    { centerLayout: 'mid-tweeter-mid', seatDistance: '2.4 m', seatCount: 4 },
  ],
  [
    'driver-layout',
    ['voice-unclear-off-side'],
    { centerLayout: 'mid-tweeter-mid', troubleSeats: 'off-middle' },
  ],
  [
    'driver-layout',
    ['voice-unclear-off-side'],
    { testSitMiddle: 'clear-in-middle', centerLayout: 'horizontal-two-way' },
  ],
  ['outer-tweeters', ['swishes-with-head-movement'], { centerLayout: 'tweeter-mid-mid-tweeter' }],
  ['outer-tweeters', ['harsh'], { centerLayout: 'tweeter-mid-tweeter', testCoverTweeter: 'steadier' }],
  ['cabinet-bay', ['boomy'], { centerPlacement: 'bay' }],
  [
    'cabinet-bay',
    ['boomy'],
    { testPullForward: 'clearer', bayWidth: '60 cm', bayHeight: '25 cm', bayDepth: '45 cm' },
  ],
  [
    'set-back',
    ['hollow'],
    { centerPlacement: 'shelf-top', shelfSetback: '25 cm', centerAboveShelf: '10 cm' },
  ],
  ['set-back', ['dull'], { shelfSetback: '30 cm', testPullForward: 'clearer' }],
  ['near-surface', ['hollow'], { floorCover: 'bare', centerTweeterHeight: '0.4 m', seatDistance: '3 m' }],
  ['blocked-path', ['dull'], { obstacle: 'object' }],
  [
    'blocked-path',
    ['dull'],
    {
      obstacle: 'table',
      obstacleHeight: '0.6 m',
      obstacleDistance: '1.5 m',
      centerTweeterHeight: '0.45 m',
      seatDistance: '3 m',
    },
  ],
  ['height', ['voice-low-or-high'], { centerTweeterHeight: '0.45 m', seatDistance: '2.2 m' }],
  ['height', ['voice-low-or-high'], { centerTweeterHeight: '1.9 m', displayMiddleHeight: '1.1 m' }],
  ['off-midline', ['voice-pulled-aside'], { centerSideOffset: '0.4 m' }],
  ['mains-layout', ['no-middle'], { mainsBase: '4.5 m', seatDistance: '2.5 m' }],
  ['mains-layout', ['voice-pulled-aside'], { mainSeatOffset: '0.8 m', playedContent: 'two-channel-music' }],
  ['aim', ['dull'], { testTilt: 'clearer' }],
  [
    'delay',
    ['hollow'],
    {
      upmixUse: 'on',
      upmixCommonPart: 'leaves',
      alignmentBy: 'nobody',
      tapedCenter: '2.4 m',
      tapedMains: '3.0 m',
    },
  ],
  ['delay', ['hollow'], { testTape: 'off', upmixUse: 'on', upmixCommonPart: 'shares' }],
  ['delay', ['echo'], { testTape: 'wrong-unit' }],
  ['level', ['voice-too-quiet'], { voiceLoudness: 'softer', triedTrim: 'cured' }],
  [
    'level',
    ['voice-too-quiet'],
    { measuredCenterLevel: '69 dB', measuredLeftLevel: '75 dB', measuredRightLevel: '75 dB' },
  ],
  ['level', ['voice-too-loud'], { centerTrim: '6 dB', voiceLoudness: 'louder' }],
  ['spread-off', ['image-collapses-to-center'], { testSpreadOn: 'opens' }],
  [
    'spread-off',
    ['image-collapses-to-center'],
    { upmixUse: 'on', upmixCenterControl: 'present', upmixCommonPart: 'takes-out' },
  ],
  ['fixed-extraction', ['image-collapses-to-center'], { upmixUse: 'on', upmixCenterControl: 'none' }],
  ['ambience-setting', ['image-collapses-to-center'], { upmixAmbience: 'yes', ambienceSize: 'small' }],
  ['ambience-setting', ['image-collapses-to-center'], { ambienceSize: 'small', upmixUse: 'on' }],
  ['timbre', ['voice-changes-tone'], { centerFamily: 'unrelated' }],
  [
    'timbre',
    ['voice-changes-tone'],
    { testNoiseEach: 'thin', centerFamily: 'unrelated', equalization: 'none' },
  ],
  ['correction-mismatch', ['dull'], { testEqBypass: 'better' }],
  [
    'correction-mismatch',
    ['voice-changes-tone'],
    { equalization: 'automatic', equalizationReach: 'center-only' },
  ],
  ['screen-loss', ['dull'], { screenKind: 'perforated', screenCovers: 'center-only' }],
  ['screen-loss', ['dull'], { centerPlacement: 'behind-screen', lastChange: 'screen' }],
  ['polarity', ['no-middle'], { testPolarity: 'fuller-swapped' }],
  ['polarity', ['hollow'], { polarityMarks: 'center-crossed' }],
  ['routing', ['voice-missing'], { centerMode: 'none' }],
  ['routing', ['voice-missing'], { channelCheck: 'swapped' }],
  ['routing', ['voice-from-behind'], { channelCheck: 'swapped', lastChange: 'wiring' }],
  ['surround-spill', ['voice-from-behind'], { upmixUse: 'on', voiceDirection: 'behind' }],
  ['bass-management', ['boomy'], { centerBassSize: 'large', centerLowLimit: '110 Hz', subwoofer: 'one' }],
  ['bass-management', ['boomy'], { voiceDirection: 'subwoofer', centerBassCrossover: '200 Hz' }],
  ['double-playback', ['echo'], { displaySpeakers: 'playing' }],
  ['double-playback', ['echo'], { testMuteDisplay: 'gone' }],
  ['driver-fault', ['dull'], { driversHeard: 'tweeter-silent' }],
  ['overload', ['distorts-when-loud'], { troubleWhenLoud: 'yes' }],
  ['programme', ['voice-unclear-everywhere'], { testOtherSource: 'gone' }],
  ['programme', ['voice-unclear-everywhere'], { troubleTitles: 'some' }],
  ['programme', ['voice-unclear-everywhere'], { speechOrder: 'news-clear-film-buried' }],
  ['room-acoustics', ['voice-unclear-everywhere'], { backgroundNoise: 'loud' }],
  ['listener', ['voice-unclear-everywhere'], { whoHears: 'one-person' }],
  ['listener', ['voice-unclear-everywhere'], { testSwapSeats: 'goes-with-person' }],
  ['preference', ['just-prefer-two-channels'], { likesTwoChannel: 'like-two' }],
  ['twin-centers', ['hollow'], { centerCount: 'two' }],
];

const ranked = (complaints: readonly string[], facts: object) =>
  auditSync(readCase(JSON.stringify({ units: 'metric', complaints, facts })).book).ranking.causes;

describe('a first post', () => {
  it.each(POSTS)('%s is first: %j %j', (cause, complaints, facts) => {
    expect(ranked(complaints, facts)[0]?.cause).toBe(cause);
  });
  it.each(POSTS)('%s is no more probable without those answers: %j', (cause, complaints, facts) => {
    const at = (list: ReturnType<typeof ranked>): number =>
      list.find((each) => each.cause === cause)?.decibans ?? 0;
    expect(at(ranked(complaints, {}))).toBeLessThan(at(ranked(complaints, facts)));
  });
  it('is there for every cause', () => {
    expect(CAUSE_IDS.filter((id) => !POSTS.some(([cause]) => cause === id))).toEqual([]);
  });
});
