import { driverFault } from '../../src/rules/causes/driver-fault.js';
import { testCause } from '../support/testCause.js';

testCause(driverFault, {
  firstPosts: [{ complaints: ['dull'], facts: { driversHeard: 'tweeter-silent' } }],
  fires: [
    {
      name: 'a recording shows a center that distorts beside clean mains',
      facts: { distortionCenter: 12, distortionMains: 0.5 },
      rules: ['recording-shows-distortion'],
    },
    {
      name: 'a broken box is out of the way when the center is set to none',
      facts: { testPhantom: 'gone' },
      rules: ['gone-without-center'],
    },
    {
      name: 'silent on its own output and on that of the left: box or cable',
      facts: { channelCheck: 'silent', testSwapAtAmplifier: 'stays' },
      rules: ['silent-on-any-output'],
    },
    {
      name: 'a center that stays silent in the channel test may be off its cable',
      facts: { channelCheck: 'silent' },
      rules: ['silent-in-the-channel-test'],
    },
    {
      name: 'a box that is as bad on another cable has the fault in itself',
      facts: { testSwapAtLoudspeakers: 'follows-box' },
      rules: ['goes-with-the-box'],
    },
    {
      name: 'a silent tweeter is a broken part, found with an ear close by',
      facts: { driversHeard: 'tweeter-silent', testEarToDrivers: 'silent' },
      rules: ['driver-silent-or-scratching', 'ear-finds-bad-driver'],
    },
    {
      name: 'a voice that crackles with the cable is a contact',
      facts: { driversHeard: 'crackles', jumpers: 'loose', testSwapAtAmplifier: 'gone' },
      rules: ['driver-silent-or-scratching', 'strap-or-clamp-loose', 'does-not-follow-channel'],
    },
    {
      name: 'parts fail from one day to the next',
      facts: { onset: 'sudden' },
      rules: ['came-suddenly'],
    },
    {
      name: 'a dead driver shows on steady noise, at the amplifier swap and near by',
      facts: { testNoiseEach: 'duller', testSwapAtAmplifier: 'stays', testNearCenter: 'still-bad' },
      rules: ['noise-differs-from-mains', 'does-not-follow-channel', 'not-good-near-by'],
    },
    {
      name: 'an ear at the drivers finds one that rattles',
      facts: { testEarToDrivers: 'rattles' },
      rules: ['ear-finds-bad-driver'],
    },
  ],
  silent: [
    {
      name: 'a voice that stays away without the center too is not lost in its box',
      facts: { testPhantom: 'same' },
      rules: ['gone-without-center'],
    },
    {
      name: 'a center that plays on the left output is sound',
      facts: { channelCheck: 'silent', testSwapAtAmplifier: 'moves-left' },
      rules: ['silent-on-any-output'],
    },
    {
      name: 'a center that is only louder with noise has no dead driver',
      facts: { testNoiseEach: 'louder' },
      rules: ['noise-differs-from-mains'],
    },
    {
      name: 'a recording shows all three alike clean',
      facts: { distortionCenter: 0.6, distortionMains: 0.5 },
      rules: ['recording-shows-distortion'],
    },
    {
      name: 'noise that comes from the center clears its cable',
      facts: { channelCheck: 'right' },
      rules: ['silent-in-the-channel-test'],
    },
    {
      name: 'a fault that stays with the cable is not in the drivers',
      facts: { testSwapAtLoudspeakers: 'stays-with-cable' },
      rules: ['goes-with-the-box'],
    },
    {
      name: 'drivers that all play clean, tight clamps and a voice good near by clear the parts',
      facts: {
        driversHeard: 'all',
        testEarToDrivers: 'all',
        jumpers: 'tight',
        testNearCenter: 'good-near',
        testNoiseEach: 'alike',
      },
      rules: [
        'driver-silent-or-scratching',
        'ear-finds-bad-driver',
        'strap-or-clamp-loose',
        'not-good-near-by',
        'noise-differs-from-mains',
      ],
    },
    {
      name: 'what was always there is the layout, not a failed part',
      facts: { onset: 'always' },
      rules: ['came-suddenly'],
    },
    {
      name: 'a trouble that moves with the channel leaves box and cable sound',
      facts: { testSwapAtAmplifier: 'moves-left' },
      rules: ['does-not-follow-channel'],
    },
  ],
  cannotTell: [
    { name: 'center not set to none', facts: {}, rule: 'gone-without-center', asks: ['testPhantom'] },
    { name: 'test noise not stepped', facts: {}, rule: 'silent-on-any-output', asks: ['channelCheck'] },
    {
      name: 'nothing was recorded',
      facts: {},
      rule: 'recording-shows-distortion',
      asks: ['distortionCenter'],
    },
    {
      name: 'channels not stepped through',
      facts: {},
      rule: 'silent-in-the-channel-test',
      asks: ['channelCheck'],
    },
    {
      name: 'nobody went close',
      facts: {},
      rule: 'driver-silent-or-scratching',
      asks: ['driversHeard'],
    },
    { name: 'no ear to the drivers', facts: {}, rule: 'ear-finds-bad-driver', asks: ['testEarToDrivers'] },
    { name: 'terminals not looked at', facts: {}, rule: 'strap-or-clamp-loose', asks: ['jumpers'] },
    { name: 'history not told', facts: {}, rule: 'came-suddenly', asks: ['onset'] },
    { name: 'noise not compared', facts: {}, rule: 'noise-differs-from-mains', asks: ['testNoiseEach'] },
    {
      name: 'no swap at the amplifier',
      facts: {},
      rule: 'does-not-follow-channel',
      asks: ['testSwapAtAmplifier'],
    },
    { name: 'boxes not swapped', facts: {}, rule: 'goes-with-the-box', asks: ['testSwapAtLoudspeakers'] },
    { name: 'nobody sat near', facts: {}, rule: 'not-good-near-by', asks: ['testNearCenter'] },
  ],
});
