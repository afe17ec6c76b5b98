/**
 * The signal never reaches the center as it should: the menu says there is none, the source sends two
 * channels, a device on the way folds the sound down, or two channels are swapped. The owner hears no
 * voice, a voice in the wrong place, or a voice without a middle. Such faults are as common as acoustic
 * ones and cost a minute to rule out. Left out: faults inside a decoder, which no owner can see, and a
 * delay of the whole sound against the picture, which is another fault and only touched in a text.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { all, is, noneOf, oneOf } from '../condition.js';

export const routing = defineCause({
  id: 'routing',
  title: 'The voice does not reach the center as it should',
  severity: 'broken',
  priorDb: -9,
  priorBecause: 'In public threads signal-path faults are as common as acoustic ones.',
  priorSource: 'owner-threads',
  story:
    'The voice has its own channel only if the source sends one, every device passes it on, and the menu knows that there is a center. If one link fails, the voice is missing, weak, in the wrong loudspeaker, or split over left and right. The loudspeaker itself is fine.',
  notWhen:
    'A silent center is right when two-channel sound is played straight: there is nothing for it to play. A center that was set to none because it sounded bad is the result of the trouble, not its cause.',
  links: {
    'voice-missing': 0.5,
    'voice-too-quiet': 0.3,
    'voice-pulled-aside': 0.2,
    'voice-from-behind': 0.2,
    'no-middle': 0.25,
    'voice-unclear-everywhere': 0.2,
    'voice-unclear-off-side': 0.1,
    hollow: 0.1,
    // A delay of the whole sound is another fault; the same long path can make both.
    'out-of-step-with-picture': 0.1,
    'voice-unclear': 0.2,
  },
  groups: {
    menu: 'independent',
    channels: 'same-quantity',
    'without-center': 'independent',
    incoming: 'same-quantity',
    'which-source': 'same-quantity',
    'center-at-work': 'same-mechanism',
    'where-heard': 'same-quantity',
    history: 'independent',
    picture: 'independent',
  },
  rules: [
    answers(
      {
        id: 'center-set-to-none',
        group: 'menu',
        says: {
          yes: 'The menu says that there is no center, so nothing is sent to it.',
          no: 'The menu knows the center, so the voice is not folded away there.',
        },
        because:
          'Set to none, the receiver splits the voice over left and right; set it to present again unless you switched it off yourself because of the trouble.',
      },
      is('centerMode', 'none'),
      { yes: 'strong', no: 'slight' },
    ),
    answers(
      {
        id: 'noise-from-wrong-place',
        group: 'channels',
        // What also comes from the surrounds may be a mode as well as a cable.
        applies: noneOf('channelCheck', 'silent', 'center-elsewhere-too'),
        says: {
          yes: 'Test noise for the center does not come from the center alone: {channelCheck}.',
          no: 'Test noise for the center comes from the center, so the outputs are connected as the menu thinks.',
        },
        because:
          'The receiver makes this noise itself, so a wrong place means its outputs, cables or setup, and no source can be blamed.',
      },
      oneOf('channelCheck', 'swapped', 'several-at-once'),
      { yes: 'strong', no: 'hint' },
    ),
    answers(
      {
        id: 'no-noise-at-all',
        group: 'channels',
        says: {
          yes: 'Test noise for the center comes from nowhere, as with a center that the menu does not know.',
          no: 'Test noise for the center is heard.',
        },
        because:
          'The receiver makes this noise itself. Where it stays away, its setup, a cable or the box is to blame, and the test does not say which.',
      },
      oneOf('silentCenter', 'open', 'channel'),
      { yes: 'telling' },
    ),
    answers(
      {
        id: 'box-silent-on-any-output',
        group: 'channels',
        says: {
          yes: 'The center is silent on the output of the left too, so its channel is not to blame.',
          no: 'The center is not known to be silent on another output.',
        },
        because: 'An output that has just played a loudspeaker sends its signal.',
      },
      is('silentCenter', 'box'),
      { yes: 'proof', against: true },
    ),
    answers(
      {
        id: 'missing-without-center-too',
        group: 'without-center',
        says: {
          yes: 'With the center set to none the trouble is the same: what is missing there never came in.',
          no: 'With the center set to none the trouble is not the same.',
        },
        because:
          'Set to none, left and right get the channel of the center. A voice that returns was sent and got lost behind the receiver; one that stays away was lost before it.',
      },
      is('testPhantom', 'same'),
      { yes: 'slight' },
    ),
    answers(
      {
        id: 'trouble-follows-channel',
        group: 'channels',
        says: {
          yes: 'With left and center swapped at the amplifier the trouble moves to the left loudspeaker, so the channel is at fault and the box is not.',
          no: 'With left and center swapped at the amplifier the trouble does not move to the left loudspeaker, so the channel is not to blame.',
        },
        because:
          'A swap at the amplifier gives the same signal another box: what moves with it is the signal.',
      },
      is('testSwapAtAmplifier', 'moves-left'),
      { yes: 'telling', no: 'hint' },
    ),
    answers(
      {
        id: 'film-arrives-as-two-channels',
        group: 'incoming',
        applies: oneOf('playedContent', 'multichannel-film', 'everything'),
        says: {
          yes: 'Films reach the receiver as {sourceFormat}, so their center channel is lost on the way.',
          no: 'Films reach the receiver as {sourceFormat}, so the source does send a center.',
        },
        because:
          'A player, a display or a service set to two channels folds the voice into left and right before the receiver sees it.',
        source: 'owner-threads',
      },
      is('sourceFormat', 'two-channel'),
      { yes: 'telling', no: 'hint' },
    ),
    answers(
      {
        id: 'two-channels-played-straight',
        group: 'incoming',
        says: {
          yes: 'Two channels come in and no upmix is on, so the center has nothing to play.',
          no: 'Either a center channel comes in or an upmix makes one, so the center has something to play.',
        },
        because:
          'A center plays a channel of its own or what an upmix takes out of left and right; with neither it is silent, as it should be.',
      },
      all(is('sourceFormat', 'two-channel'), is('upmixUse', 'off')),
      { yes: 'telling', no: 'slight' },
    ),
    answers(
      {
        id: 'one-source-only',
        group: 'which-source',
        says: {
          yes: 'It happens with one player or channel only, so look at the settings of that one.',
          no: 'It happens with more than one player or channel, so no single one is set wrong.',
        },
        because: 'Geometry and loudspeakers treat all players alike; the sound settings of a player do not.',
      },
      is('troubleTitles', 'one-source'),
      { yes: 'telling', no: 'slight' },
    ),
    answers(
      {
        id: 'other-place-from-one-source',
        group: 'which-source',
        applies: all(oneOf('voiceDirection', 'behind', 'aside'), is('channelCheck', 'right')),
        says: {
          yes: 'The receiver puts its own noise in the right place and this one player puts the voice elsewhere, so its channels arrive in another order or format.',
          no: 'It is not one player alone that puts the voice elsewhere.',
        },
        because:
          'Behind the inputs all players take the same way; what one alone misplaces was misplaced before.',
      },
      is('troubleTitles', 'one-source'),
      { yes: 'strong' },
    ),
    answers(
      {
        id: 'gone-from-other-source',
        group: 'which-source',
        says: {
          yes: 'The same scene from another source is free of it.',
          no: 'The same scene from another source is no better, so the path up to the receiver is likely sound.',
        },
        because:
          'Another source takes another path; what disappears with it was in the path or in that version.',
      },
      is('testOtherSource', 'gone'),
      { yes: 'telling', no: 'slight' },
    ),
    answers(
      {
        id: 'center-carried-nothing',
        group: 'center-at-work',
        // A mode that leaves the singer in the mains leaves him there: as before is as it should be.
        applies: is('voiceMeantFor', 'center'),
        says: {
          yes: 'With the center silenced the voice is as full as before, so the center carried none of it.',
          no: 'With the center silenced the voice suffers, so the center did carry it.',
        },
        because: 'A center that gets its channel is missed at once when it falls silent.',
      },
      is('testUnplugged', 'voice-full'),
      { yes: 'strong', no: 'hint' },
    ),
    answers(
      {
        id: 'not-good-near-center',
        group: 'center-at-work',
        says: {
          yes: 'Even a meter in front of the center the voice is not good.',
          no: 'A meter in front of the center the voice is good, so the voice does reach it.',
        },
        because:
          'So near, the center outweighs room and mains: a good voice there needs a channel that arrives.',
        source: 'direct-sound',
      },
      noneOf('testNearCenter', 'good-near'),
      { yes: 'slight', no: 'telling' },
    ),
    answers(
      {
        id: 'voice-elsewhere',
        group: 'where-heard',
        says: {
          yes: 'The voice stands elsewhere: {voiceDirection}.',
          no: 'The voice stands in front, where it belongs.',
        },
        because:
          'A voice beside, behind or nowhere may play from the wrong loudspeakers, among other reasons.',
      },
      oneOf('voiceDirection', 'aside', 'behind', 'nowhere'),
      { yes: 'slight' },
    ),
    answers(
      {
        id: 'voice-in-the-box',
        group: 'where-heard',
        says: {
          yes: 'The voice comes from the center itself, so the signal reaches it.',
          no: 'The voice does not stand in the center box, which a good system does not show either.',
        },
        because: 'A voice that stands in the box proves a working channel.',
      },
      oneOf('voiceDirection', 'center-box', 'low'),
      { yes: 'telling', against: true },
    ),
    answers(
      {
        id: 'began-with-settings',
        group: 'history',
        says: {
          yes: 'The last change before it began was {lastChange}, which is where channels get lost.',
          no: 'The last change before it began does not touch the path of the signal.',
        },
        because:
          'Resets, updates, new players and moved cables are the usual moments at which a channel goes missing.',
        source: 'owner-threads',
      },
      oneOf('lastChange', 'settings', 'source', 'wiring'),
      { yes: 'hint', no: 'slight' },
    ),
    answers(
      {
        id: 'out-of-step',
        group: 'picture',
        says: {
          yes: 'Lips and voice are out of step: a delay of the whole sound is another fault, set in the lip-sync menu, but it hints at a long path through several devices.',
          no: 'Lips and voice are in step, so no device on the way holds the sound back.',
        },
        because:
          'A whole-system delay moves all loudspeakers alike and cannot move the image; it only shows that some device on the way works on the sound.',
      },
      oneOf('lipSync', 'voice-late', 'voice-early'),
      { yes: 'slight' },
    ),
  ],
  telltales: [
    {
      id: 'everything-was-unplugged',
      when: oneOf('changedExactly', 'all-unplugged', 'receiver'),
      telling: 'telling',
      says: 'Everything was unplugged and put back, or another receiver came.',
      otherwise: 'Nothing was unplugged as a whole.',
      because: 'Plugs without labels end up in their neighbors.',
    },
  ],
  confirm: [
    confirmedBy('testUnplugged', 'voice-full'),
    confirmedBy('testOtherSource', 'gone'),
    confirmedBy('testSwapAtAmplifier', 'moves-left'),
  ],
  acts: { 'cable-exchanged': 0.3, 'amplifier-exchanged': 0.3, 'center-set-to-none': 0.4 },
  boundTo: 'source',
  remedies: [
    {
      id: 'set-center-present',
      title: 'Set the center to present',
      when: is('centerInMenu', 'none'),
      steps: [
        'Photograph the loudspeaker page of the setup menu.',
        'Set the center to present, as small if it is a small box.',
        'Run the channel test with the volume down and hear the noise from the center.',
      ],
      minutes: 3,
      cost: 'free',
      expect: 'The voice leaves left and right and stands in the center.',
      verify: 'Play a newscast: with an ear near the center you hear the voice there.',
      cautions: ['photograph-menu', 'volume-down', 'test-noise'],
      changes: ['centerMode', 'channelCheck', 'voiceDirection', 'testUnplugged', 'testPhantom'],
      cures: 0.9,
    },
    {
      id: 'pass-sound-on-unchanged',
      act: 'source-exchanged',
      title: 'Let player and display pass the sound on unchanged',
      when: is('sourceFormat', 'two-channel'),
      seen: all(is('playedContent', 'multichannel-film'), is('sourceFormat', 'two-channel')),
      steps: [
        'Play a film that is known to have a center channel.',
        'In the sound menu of the player or the app, choose multichannel or automatic, not two channels.',
        'If the sound runs through the display, set its output to pass the sound on unchanged, or connect the player to the receiver directly.',
        'Read the incoming format on the receiver again.',
      ],
      minutes: 8,
      cost: 'free',
      expect: 'The receiver shows a multichannel signal and the center plays its own channel.',
      verify: 'Go close to the center, then to the left: the voice of a film is in the center alone.',
      cautions: ['photograph-menu'],
      changes: ['sourceFormat', 'troubleTitles', 'speechOrder', 'testOtherSource', 'testUnplugged'],
      cures: 0.8,
    },
    {
      id: 'use-upmix-for-two-channels',
      act: 'other-listening-mode',
      title: 'Use an upmix for speech that comes in two channels',
      when: all(is('sourceFormat', 'two-channel'), is('upmixUse', 'off')),
      steps: [
        'Play a television program with plain speech.',
        'Choose a surround or upmix mode instead of plain two-channel playback.',
        'If it has a center spread setting, try it both ways.',
      ],
      minutes: 3,
      cost: 'free',
      expect:
        'The voice moves to the center and stays there at the side seats too; the stage of music may get narrower.',
      verify: 'Switch the mode on and off while a newsreader speaks.',
      cautions: [],
      changes: [
        'upmixUse',
        'upmixCommonPart',
        'upmixCenterControl',
        'centerSpread',
        'testUpmixOff',
        'testUnplugged',
      ],
      cures: 0.6,
    },
    {
      id: 'put-channels-right',
      act: 'channels-put-right',
      title: 'Put the loudspeaker cables on the right outputs',
      when: oneOf('channelCheck', 'swapped', 'silent', 'several-at-once'),
      seen: oneOf('channelCheck', 'swapped', 'several-at-once'),
      steps: [
        'Switch the power off and photograph the terminals.',
        'Follow the cable of the center from the box to the receiver and read the label of its output.',
        'Move it to the output named center; check the amplifier assignment in the menu too.',
        'Power on with the volume down and run the channel test again.',
      ],
      minutes: 10,
      cost: 'free',
      expect: 'Each test noise comes from the loudspeaker that the screen names.',
      verify: 'The channel test steps left, center, right in the right places.',
      cautions: ['power-off-wires', 'photograph-menu', 'volume-down'],
      changes: ['channelCheck', 'voiceDirection', 'polarityMarks', 'testSwapAtAmplifier', 'testUnplugged'],
      cures: 0.85,
    },
    {
      id: 'walk-the-path',
      title: 'Walk the path of the signal, one device at a time',
      steps: [
        'Run the channel test of the receiver with the volume down: it proves everything after the receiver.',
        'A powered or wireless center has a switch, a standby and a link of its own: see that it is on and linked.',
        'Play the same film scene from each source in turn.',
        'Where the format on the receiver changes to two channels, look in the sound menu of that device.',
      ],
      minutes: 15,
      cost: 'free',
      expect: 'You find the one device or setting at which the center gets lost.',
      verify: 'After the change the same scene has its voice in the center.',
      cautions: ['volume-down', 'test-noise', 'photograph-menu'],
      changes: ['channelCheck', 'sourceFormat', 'centerMode', 'testOtherSource', 'troubleTitles'],
      cures: 0.7,
    },
  ],
});
