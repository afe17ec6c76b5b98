import { describe, expect, it } from 'vitest';
import { readText } from '../../src/reading/read.js';

/** Choices taken, as `fact=value`; a denied one is left out. */
const choices = (text: string): string[] =>
  readText(text)
    .taken.filter(({ negated }) => !negated)
    .map(({ fact, value }) => `${fact}=${value}`);

describe('a choice is read however it is said', () => {
  it.each([
    ['troubleSeats=off-middle', 'As soon as you shift one cushion over the voices go mushy.'],
    ['troubleSeats=off-middle', 'Anyone not sitting dead center complains.'],
    ['troubleSeats=off-middle', 'The further you get from the middle, the worse it becomes.'],
    ['troubleSeats=everywhere', 'Whichever place I sit in, same thing.'],
    ['troubleSeats=everywhere', 'I walked around the room and it never changes.'],
    ['troubleSeats=back-row', "The second row can't make out a thing."],
    ['troubleTitles=some', "Depends entirely on what we're watching."],
    ['troubleTitles=one-source', 'Only with the cable box, the disc player is fine.'],
    ['troubleWhenLoud=no', 'Loud or quiet, same.'],
    ['troubleWhenLoud=yes', 'Turn it down and it is clean.'],
    ['sourceFormat=two-channel', "The receiver's display reads PCM 2.0."],
    ['sourceFormat=mono', 'The receiver shows a mono signal.'],
    ['centerMode=none', 'In the speaker setup the center is down as none.'],
    ['channelCheck=right', 'The test tones come out of the proper speakers.'],
    ['channelCheck=silent', 'During the test tone the center stays silent.'],
    ['displaySpeakers=playing', 'The TV sound is on as well.'],
    ['allChannelMode=yes', 'The mode plays the same from every speaker.'],
    ['elsewhereToo=headphones', 'On headphones the same scene is just as unintelligible, the same mumble.'],
    ['centerPlacement=bay', "It's in the middle cubby of the TV cabinet."],
    ['centerPlacement=wall', 'It stands on a wall bracket in the open.'],
    ['centerPlacement=stand', 'The center has its own stand.'],
    ['obstacle=seat-row', "From the back row I can't see the center."],
    ['screenKind=perforated', 'I have a perforated vinyl screen.'],
    ['screenCovers=all-three', 'All three are behind it.'],
    ['upmixUse=on', 'I play CDs with the surround decoder on.'],
    ['upmixUse=off', 'For music we use plain stereo.'],
    ['upmixCenterControl=none', 'There is nothing to set in that mode, no spread, just on or off.'],
    ['alignmentBy=by-hand', 'Never ran auto setup, typed the distances by hand.'],
    ['calibrationSpot=elsewhere', 'The mic was just lying on the arm of the sofa.'],
    ['changedExactly=receiver', 'The last thing we touched was the amplifier.'],
    ['changedExactly=screen', 'Only the canvas was replaced.'],
    ['changedExactly=mains', 'It all began when I put the towers into the corners.'],
    ['changedExactly=soft-things', 'The drapes were removed shortly before.'],
    ['lastChange=source', 'What changed is the streaming stick.'],
    ['lastChange=calibration', 'Since we repeated the automatic setup it is odd.'],
    ['alignmentBy=both', 'The wizard set the levels. Later I typed in the distances by hand.'],
    ['likesTwoChannel=both', 'There is a real fault in the voice. Still, I prefer plain stereo.'],
    ['conesSeen=more', 'Behind the cloth of the center there are four equal woofers.'],
    ['polarityMeasured=left-inverted', 'In the recorded impulse the left main is upside down.'],
    ['seatDistanceFrom=wall', 'I measured the sofa from the front wall.'],
    ['equalizationReach=mains-only', 'The filters work on left and right, the center goes without.'],
    ['voiceLift=none', 'My amp has no dialog lift.'],
    ['obstacleFrom=above', 'The lower edge of the TV hangs over the center.'],
    ['testPosture=better-higher', 'The words are clear when we stand up.'],
    ['testCell=center-other', 'With a battery on the wires the cone of the center went the other way.'],
    ['testSubOff=thin', 'With the subwoofer off the narrator was thin.'],
    ['testBesideMain=differs', 'I stood the center beside the left tower, and they still sounded different.'],
    ['testNoiseEach=brighter', 'I stepped the pink noise round, and the center hisses more.'],
    ['testUnplugged=voice-weaker', 'I unplugged the center at the back, and the actors got weaker.'],
    ['settingsFromElsewhere=yes', 'The distances are still those from our old house.'],
    ['polarityMarks=center-crossed', "The center's red wire was on the black terminal."],
    ['polarityMessage=center', "The setup grumbled about the center's phase."],
    ['driversHeard=tweeter-silent', 'Both woofers play, the tweeter makes no sound.'],
    ['clapRing=flutter', "There's a metallic flutter when I clap."],
    ['whoHears=one-person', 'Nobody but me seems to hear it.'],
    ['whoHears=one-person', 'Only my father says the voice is not clear.'],
    ['likesTwoChannel=like-two', 'For music I always end up back on two channels.'],
    ['hearingChecked=loss', 'He has a loss on both ears.'],
    ['onset=gradual', 'It started slowly over the winter.'],
    ['onset=always', "It's no good since day one."],
    ['onset=with-change', 'It is like this since he unplugged all for painting.'],
    ['changedExactly=soft-things', 'We took the carpet up and laid wood.'],
    ['changedExactly=center-wires', 'I replaced the cable to the center.'],
    ['centerFamily=identical-box', 'All three fronts are the same speaker.'],
    ['fineSeats=front-row', 'Front row is great.'],
    ['fineContent=multichannel-film', 'Films are fantastic.'],
    ['onset=sudden', "It started at New Year's, after a very loud party."],
    ['fineSeats=middle', 'In the two middle ones dialog is crisp.'],
    ['troubleSeats=off-middle', 'On the far left and far right chair voices go hollow.'],
    ['fineTitles=other-mix', 'The original language version is fine.'],
  ])('%s: %s', (choice, text) => {
    expect(choices(text)).toContain(choice);
  });
});

describe('words that only look like a choice', () => {
  it.each([
    ['changedExactly', 'We live in a new flat.'],
    ['lastChange', 'It never changes.'],
    ['onset', "When I stand up it's suddenly clear."],
    ['obstacle', 'I put the microphone on the coffee table.'],
    ['centerPlacement', 'He sits on the floor.'],
    ['centerBassSize', 'The room size is set to small.'],
    ['mainsKind', 'The center stands on two stands.'],
    ['alignmentBy', 'I have had the amplifier out of the rack.'],
    ['hearingChecked', "You'd hear it, wouldn't you?"],
    ['polarityMarks', 'I pulled the wires off the right one.'],
    ['channelCheck', 'I put the test tone on and the center is a lot quieter.'],
    ['upmixAmbience', 'It sounds like being in a big hall.'],
    ['displaySpeakers', 'No noise from the surrounds.'],
    ['speechOrder', 'The news is crystal clear.'],
    ['centerCount', 'It is wired to the one center output.'],
    ['whoHears', 'The box has its own amplifier.'],
    ['whoHears', 'I put the wires back by myself.'],
    ['changedExactly', 'It sounds as if someone threw a blanket over the middle speaker.'],
    ['polarityMarks', 'The automatic setup said polarity OK.'],
    ['listenersDiffer', 'I want to move it but the wife says no.'],
    ['lastChange', 'Voices are muffled. I changed the cable, same thing.'],
    ['troubleWhenLoud', 'It is fine when loud enough.'],
    ['testUpmixOff', 'The singer is hollow. Music in stereo is still fine.'],
    ['centerCount', 'In the two middle ones dialog is crisp.'],
    ['speechOrder', 'Explosions wake the neighbors.'],
  ])('%s is not read from: %s', (fact, text) => {
    expect(choices(text).filter((choice) => choice.startsWith(`${fact}=`))).toEqual([]);
  });
});

describe('a value that says less yields', () => {
  it.each([
    ['lastChange=screen', 'We got a bigger TV, nothing else was changed.'],
    ['driversHeard=cone-silent', 'I heard every driver play. Later one cone was dead.'],
  ])('%s: %s', (choice, text) => {
    expect(choices(text)).toContain(choice);
  });
});
