import { programme } from '../../src/rules/causes/programme.js';
import { testCause } from '../support/testCause.js';

testCause(programme, {
  firstPosts: [
    { complaints: ['voice-unclear-everywhere'], facts: { testOtherSource: 'gone' } },
    { complaints: ['voice-unclear-everywhere'], facts: { troubleTitles: 'some' } },
    { complaints: ['voice-unclear-everywhere'], facts: { speechOrder: 'news-clear-film-buried' } },
  ],
  fires: [
    {
      name: 'clear news and buried film voices blame the mix',
      facts: { speechOrder: 'news-clear-film-buried' },
      rules: ['news-clear-film-buried'],
    },
    {
      name: 'trouble on some titles only is not the system',
      facts: { troubleTitles: 'some', testOtherSource: 'gone' },
      rules: ['some-titles-only', 'other-source-better'],
    },
    {
      name: 'full dynamics at a soft level sink the quiet words',
      facts: { dynamicCompression: 'off', listeningLevel: 'soft' },
      rules: ['dynamics-untouched', 'soft-listening'],
    },
    {
      name: 'a bad mix is as bad without the center',
      facts: { testPhantom: 'same' },
      rules: ['same-without-center'],
    },
  ],
  silent: [
    {
      name: 'news that is hard to follow too clears the mix',
      facts: { speechOrder: 'both-unclear', troubleTitles: 'all', testOtherSource: 'same' },
      rules: ['news-clear-film-buried', 'some-titles-only', 'other-source-better'],
    },
    {
      name: 'compressed and loud, a soft mix no longer hides',
      facts: { dynamicCompression: 'on', listeningLevel: 'loud' },
      rules: ['dynamics-untouched', 'soft-listening'],
    },
    {
      name: 'a voice that is cured without the center was mixed well',
      facts: { testPhantom: 'gone' },
      rules: ['same-without-center'],
    },
  ],
  cannotTell: [
    { name: 'no newscast compared', facts: {}, rule: 'news-clear-film-buried', asks: ['speechOrder'] },
    { name: 'titles not compared', facts: {}, rule: 'some-titles-only', asks: ['troubleTitles'] },
    { name: 'no other source tried', facts: {}, rule: 'other-source-better', asks: ['testOtherSource'] },
    {
      name: 'night mode not looked at',
      facts: {},
      rule: 'dynamics-untouched',
      asks: ['dynamicCompression'],
    },
    { name: 'level not told', facts: {}, rule: 'soft-listening', asks: ['listeningLevel'] },
    { name: 'center not set to none', facts: {}, rule: 'same-without-center', asks: ['testPhantom'] },
  ],
});
