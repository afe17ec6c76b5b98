import { mainsLayout } from '../../src/rules/causes/mains-layout.js';
import { testCause } from '../support/testCause.js';

const MUSIC = { playedContent: 'two-channel-music', upmixUse: 'off' } as const;
const EQUILATERAL = { seating: 'single-seat', mainsBase: 2.9, seatDistance: 2.5, mainSeatOffset: 0 } as const;

testCause(mainsLayout, {
  firstPosts: [
    { complaints: ['no-middle'], facts: { mainsBase: '4.5 m', seatDistance: '2.5 m' } },
    {
      complaints: ['voice-pulled-aside'],
      facts: { mainSeatOffset: '0.8 m', playedContent: 'two-channel-music' },
    },
  ],
  fires: [
    {
      name: 'two loudspeakers alone hold no middle over 72 degrees',
      facts: { ...EQUILATERAL, mainsBase: 4, seatDistance: 2.75, centerCount: 'none' },
      rules: ['wide-for-two'],
    },
    {
      name: 'a film, or a voice that goes with the center, is not in the mains',
      facts: { playedContent: 'multichannel-film', sourceFormat: 'multichannel' },
      rules: ['voice-is-the-centers'],
    },
    {
      name: 'mains farther apart than one and a half times the distance are too wide',
      facts: { ...EQUILATERAL, mainsBase: 4, seatDistance: 2.2 },
      rules: ['base-too-wide'],
    },
    {
      name: 'mains beside a picture across a long room are too narrow',
      facts: { ...EQUILATERAL, mainsBase: 1.6, seatDistance: 4.5 },
      rules: ['base-too-narrow'],
    },
    {
      name: 'a seat in the middle of an equilateral triangle is innocent',
      facts: EQUILATERAL,
      rules: ['triangle-is-ordinary'],
    },
    {
      name: 'a main seat two hand widths off the middle is pulled to the near main',
      facts: { ...MUSIC, ...EQUILATERAL, mainSeatOffset: 0.4 },
      rules: ['main-seat-pulled'],
    },
    {
      name: 'the end of a sofa is pulled where the mains alone carry the voice',
      facts: {
        seating: 'one-row',
        seatCount: 3,
        seatSpacing: 0.6,
        mainsBase: 2.9,
        seatDistance: 2.5,
        mainSeatOffset: 0,
        playedContent: 'two-channel-music',
        upmixUse: 'off',
      },
      rules: ['side-seat-pulled'],
    },
    {
      name: 'left louder than right by 4 dB tilts the stage',
      facts: { ...MUSIC, measuredLeftLevel: 76, measuredRightLevel: 72 },
      rules: ['left-right-unequal'],
    },
    {
      name: 'a voice heard aside, better in the middle, and no cure without the center',
      facts: { ...MUSIC, voiceDirection: 'aside', testSitMiddle: 'clear-in-middle', testPhantom: 'worse' },
      rules: ['voice-heard-aside', 'better-in-the-middle', 'stays-without-center'],
    },
  ],
  silent: [
    {
      name: 'over 60 degrees they do',
      facts: { ...EQUILATERAL, centerMode: 'none' },
      rules: ['wide-for-two'],
    },
    {
      name: 'a seat in the middle pulls nothing aside, however wide the base',
      facts: { ...MUSIC, ...EQUILATERAL, mainsBase: 4 },
      rules: ['main-seat-pulled', 'voice-is-the-centers'],
    },
    {
      name: 'a film gives its voice to the center, so unequal mains and a seat aside pull nothing',
      facts: {
        playedContent: 'multichannel-film',
        sourceFormat: 'multichannel',
        ...EQUILATERAL,
        mainSeatOffset: 0.8,
        measuredLeftLevel: 80,
        measuredRightLevel: 72,
        voiceDirection: 'aside',
      },
      rules: ['main-seat-pulled', 'left-right-unequal', 'voice-heard-aside', 'side-seat-pulled'],
    },
    {
      name: 'a sound main seat says nothing of a trouble that only the side seats hear',
      facts: { ...MUSIC, ...EQUILATERAL, troubleSeats: 'off-middle' },
      rules: ['main-seat-pulled', 'triangle-is-ordinary'],
    },
    {
      name: 'an equilateral triangle with equal levels pulls nothing at its only seat',
      facts: { ...MUSIC, ...EQUILATERAL, measuredLeftLevel: 75, measuredRightLevel: 75 },
      rules: ['base-too-wide', 'base-too-narrow', 'main-seat-pulled', 'left-right-unequal'],
    },
    {
      name: 'a voice that only the center plays cannot be pulled by the mains',
      facts: {
        seating: 'one-row',
        seatCount: 3,
        mainsBase: 2.9,
        seatDistance: 2.5,
        playedContent: 'multichannel-film',
        sourceFormat: 'multichannel',
      },
      rules: ['side-seat-pulled'],
    },
    {
      name: 'a wide triangle is not ordinary',
      facts: { ...EQUILATERAL, mainsBase: 4, seatDistance: 2.2 },
      rules: ['triangle-is-ordinary'],
    },
    {
      name: 'a trouble that goes with the center, in front of the listener and at every seat, is not the mains',
      facts: { ...MUSIC, voiceDirection: 'low', testSitMiddle: 'same-everywhere', testPhantom: 'gone' },
      rules: ['voice-heard-aside', 'better-in-the-middle', 'stays-without-center'],
    },
  ],
  cannotTell: [
    {
      name: 'nobody said what plays, so what the mains play of the voice is open',
      facts: {},
      rule: 'voice-is-the-centers',
      asks: ['playedContent', 'sourceFormat'],
    },
    {
      name: 'nobody said what plays, so who carries the voice is open',
      facts: {},
      rule: 'side-seat-pulled',
      asks: ['playedContent', 'sourceFormat'],
    },
    {
      name: 'nobody said what plays, so whether the mains have anything to pull is open',
      facts: EQUILATERAL,
      rule: 'main-seat-pulled',
      asks: ['playedContent', 'sourceFormat'],
    },
    {
      name: 'levels of left and right were not measured',
      facts: MUSIC,
      rule: 'left-right-unequal',
      asks: ['measuredLeftLevel', 'measuredRightLevel'],
    },
    { name: 'nobody closed the eyes', facts: MUSIC, rule: 'voice-heard-aside', asks: ['voiceDirection'] },
    { name: 'seats not compared', facts: {}, rule: 'better-in-the-middle', asks: ['testSitMiddle'] },
    { name: 'center not set to none', facts: {}, rule: 'stays-without-center', asks: ['testPhantom'] },
  ],
  boundary: [
    {
      name: 'the base is too wide from its limit on',
      rule: 'base-too-wide',
      derived: { mainsBaseDeg: 75 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'the base is too narrow down from its limit',
      rule: 'base-too-narrow',
      derived: { mainsBaseDeg: 35 },
      at: 'yes',
      below: 'no',
      lowIsBad: true,
    },
    {
      name: 'the main seat is pulled from the clear grade on',
      rule: 'main-seat-pulled',
      facts: MUSIC,
      derived: { mainSeatPullDeg: 10 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a side seat is pulled from the clear grade on where no center holds it',
      rule: 'side-seat-pulled',
      derived: { mainsPullDeg: 10 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'the stage tilts from the clear grade on',
      rule: 'left-right-unequal',
      facts: MUSIC,
      derived: { mainsLevelErrorDb: 2 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'an ordinary triangle ends where the base turns too wide',
      rule: 'triangle-is-ordinary',
      derived: { mainsBaseDeg: 62, mainSeatPullDeg: 0 },
      lowIsBad: true,
      at: 'yes',
      below: 'no',
    },
    {
      name: 'an ordinary triangle begins where the base is no longer narrow',
      rule: 'triangle-is-ordinary',
      derived: { mainsBaseDeg: 44, mainSeatPullDeg: 0 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a triangle that pulls clearly at its main seat is not ordinary',
      rule: 'triangle-is-ordinary',
      derived: { mainSeatPullDeg: 10, mainsBaseDeg: 60 },
      at: 'no',
      below: 'yes',
    },
  ],
});
