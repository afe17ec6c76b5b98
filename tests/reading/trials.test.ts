import { describe, expect, it } from 'vitest';
import { ACT_IDS, type ActId } from '../../src/facts/acts.js';
import { readText } from '../../src/reading/read.js';

/** Ways to tell of an act, parted by `/`; the sentence before says what "it" is. */
const FORMS: Readonly<Record<ActId, readonly [before: string, forms: string]>> = {
  'entry-corrected': [
    'The center sounds late.',
    'I corrected the center distance in the menu / fixed the distance entry / put the right distance in for the center / entered the real distance / typed in the taped distance for the center / changed the center distance from 12 to 9 ft / set the distances by tape / with the distance corrected / re-entered the distances / took 2 ms off the center delay / zeroed the delay of the center / the distance figure being put right on Monday / I set the delay properly',
  ],
  'center-turned-up': [
    'The center is weak.',
    'I turned the center up 3 dB / bumped it up 4 dB / nudged center up to -1 / cranked the center / raised the center trim by 3 dB / gave the center three more dB / upped the center level / put the center on plus 6 / brought the center up a notch / the center was turned up two clicks / turning up the center / we made the middle one louder',
  ],
  'center-turned-down': [
    'The center is hot.',
    'I turned the center down 3 dB / turned it down two notches / eased it down to 0 / lowered the center level by four / backed the center off 3 dB / dropped the center trim to -2 / took the center down by six / the center was turned down / with the center turned down / pulled the center level down / brought the center level down / knocked the center back 4 dB / reduced the center volume',
  ],
  'center-moved-to-midline': [
    'The center stands to the right of the fireplace.',
    'I moved the center to the middle / slid it over to the middle / put it dead center under the screen / shifted it to the midline / centered it between the mains / plopped it on a stool in the middle / the center was moved to the middle / scooted it sideways to the center of the wall / dragged it to the exact middle / with it in the middle / brought it to the middle of the TV / set it down right in the middle for a test',
  ],
  'center-raised': [
    'The center sits on the floor.',
    'I raised the center / lifted it to ear height / put it on a crate / set it on two moving boxes / propped it up to screen height / jacked it up on books / stood it on a bar stool / hoisted it up under the TV / moved it up one shelf / stacked it on bricks / with the center up at ear level / the center was raised a foot / plonked it on a beer crate',
  ],
  'center-lowered': [
    'The center hangs above the screen.',
    'I lowered the center / brought it down below the screen / took it down to the shelf / moved it down under the TV / dropped it to ear height / my brother let it dangle at 1.2 m / hung it lower / the center was lowered a foot / put it below the TV / moved the center down / slid it down the wall / set it down on the bench',
  ],
  'center-tilted': [
    'The center lies flat on the bench.',
    'I tilted the center up / angled it toward our ears / a wedge under the front edge / aimed it at the sofa / tipped it back / propped the front up with a doorstop / shoved a book under its front edge / leaned it back / put rubber feet under the front / pointed it at my head / the center was tilted up / with the center tilted / cocked it up a few degrees',
  ],
  'center-stood-upright': [
    'The center lies on its side.',
    'I stood the center upright / turned it upright / stood it on end / set it on its end / propped it up vertically / rotated it vertical / put it standing up / with the center standing on end / had it standing upright / made the unit stand on its end / flipped it vertical / tried it standing up / rotated the box 90 degrees',
  ],
  'center-turned-over': [
    'The tweeter of the center is low.',
    'I turned the center over / flipped it upside down / turned it the other way up / put it upside down / flipped the box over / stood it on its head / turned it bottom up / with the center upside down / rolled it over / inverted it / the center was turned upside down / rotated it 180 degrees',
  ],
  'center-pulled-forward': [
    'The center sits deep on the shelf.',
    'I pulled the center forward / slid it to the front edge / brought it flush with the edge / scooted it out to the edge / dragged it forward three inches / moved the center forward / inched it forward / nudged the box ahead / shoved it up to the front / it was pulled forward / with it hanging over the edge / let it stick out over the edge / eased it out to the lip of the shelf',
  ],
  'center-taken-out': [
    'The center lives in a cubby.',
    'I took the center out of the cubby / pulled it out of the cabinet / had it out of the furniture / stood it on a stool in front of the unit / put it on top of the cabinet / it was taken out of the shelf / dragged it out of the hole / set it on a chair in front / got it out of the cabinet / with the center out of the cubby / moved it out onto a barstool / in the open / lifted it out of the bay',
  ],
  'center-unplugged': [
    'The voice is thin.',
    'I unplugged the center / pulled the center cable / disconnected the center / pulled the plug of the center / took the wire off the center / the center was unplugged / with the center unplugged / yanked the center plug / with the center disconnected / pulled its plug / detached the center wire / unhooked the center',
  ],
  'center-set-to-none': [
    'The center is a mess.',
    'I set the center to none / turned the center off in the menu / tried phantom / in phantom mode / with no center / switched the center off / disabled the center / told the receiver there is no center / with the center off / ran it without the center / went phantom / took the center out of the setup',
  ],
  'center-exchanged': [
    'The center sounds dull.',
    'I swapped the center for another one / tried another center / borrowed a bigger center / replaced the center / a new center / bought a different center / the shop lent me another center / the center was replaced under warranty / exchanged the center / put in a bigger center / changed the center speaker / hooked up my old center / got a second sample of the center',
  ],
  'mains-moved-closer': [
    'The mains stand far apart.',
    'I moved the mains closer together / pushed the towers together / brought the fronts in a foot each / slid the speakers closer together / the mains were moved in / with the towers closer together / narrowed the mains / pulled the mains in / put the mains nearer to each other / shifted both towers inward / scooted the left and right in / set the towers 2 m apart',
  ],
  'mains-toed-in': [
    'The mains look straight ahead.',
    'I toed the mains in / toed in the towers / turned the towers in / angled the mains toward us / aimed the fronts at the seat / turned the mains toward the sofa / the mains were toed in / with more toe-in / swiveled the towers inward / with the towers turned in / rotated the mains inwards / gave the mains some toe-in / pointed the towers at my chair',
  ],
  'seat-moved-back': [
    'The sofa is close.',
    'I moved the sofa back / pushed the couch back two feet / sat farther back / pulled my chair back a yard / slid the sofa back / scooted my chair back / the sofa was moved back / sitting further back / with the sofa further back / shoved the couch back / rolled the chair backward / dragged the armchair back',
  ],
  'seat-moved-to-middle': [
    'My chair is off to the side.',
    'I moved my chair to the middle / slid the sofa to the middle / put the armchair in the middle / dragged my seat to the center of the room / shifted the sofa to the middle / centered the sofa / scooted my chair over to the middle / the sofa was moved to the middle / centered my chair / pushed the couch over to the middle / rolled my chair to the midline / lined the sofa up with the TV',
  ],
  'seats-exchanged': [
    'My wife does not follow at her end.',
    'We swapped seats / traded places / swapped spots on the loveseat / changed places with my wife / I took her chair / she sat in my seat / switched seats / exchanged places / traded spots with my daughter / we played musical chairs / I sat in her spot / swapped chairs',
  ],
  'ears-raised': [
    'The sofa is low.',
    'I sat up straight / stood up / sat on two cushions / put a pillow under me / when I stand / raised my head / sitting up / with my ears higher / stretched my neck / sat up taller / kneeling on the sofa / sat on the armrest',
  ],
  'ears-lowered': [
    'The center is low.',
    'I slouched / sat on the floor / lay down / sitting on the rug / slid down in the seat / reclined / ducked / with my head down / lay on the floor / crouched down / lowered my head / sat on the carpet / leaned back in the recliner',
  ],
  'obstacle-removed': [
    'There is a plant before the center.',
    'I took the plant away / moved the table aside / rolled it aside / removed the grille / with the plant out of the way / pulled the coffee table away / opened the cabinet door / carried the vase off / shoved the toy box aside / the table was moved / took the grille off / cleared the stuff in front of it / with the door open',
  ],
  'screen-removed': [
    'The center plays through the cloth.',
    'I rolled up the screen / raised the screen / with the screen up / took the cloth off / lifted the screen off its hooks / rolled the canvas up / without the screen / the screen was taken down / unhooked the cloth / cranked the screen up / rolled the frame off its hooks / took down the screen / pulled the fabric away',
  ],
  'one-center-disconnected': [
    'There are two centers.',
    'I unplugged the upper one / disconnected one of the two / pulled the plug of the lower one / with the top one off / pulled the banana plugs out of the top one / with only one center connected / took the second center off / switched off the upper center / only the lower one playing / ran just one of them / the bottom one was unplugged / cut the upper one',
  ],
  'ambience-changed': [
    'The hall program is on small.',
    'I set the room size to large / changed the hall size / chose a larger room / with the size at large / turned the size up / put the room size on medium / made the hall bigger / went from small to large hall / the room size was changed / picked the large hall / with a bigger room / raised the room size',
  ],
  'spread-on': [
    'The upmix squeezes the band.',
    'I turned the center spread on / switched on center spread / enabled the center width / with center spread on / center spread on / turned up the center width / activated the spread / opened the center width / put the center width to half / set center spread to on / the spread was switched on / flipped center spread on',
  ],
  'spread-changed': [
    'The center width slider stands at zero.',
    'I opened it up to 0.5 / set the center width to 3 / raised the spread from 0 to 0.5 / moved the slider to half / changed the spread to 5 / pushed the width up to 0.7 / slid it to 0.4 / the center width went from 0 to 4 / upped the spread a bit / tried the width at 4 / lowered the spread to 2 / put the width setting on 6',
  ],
  'upmix-off': [
    'Music goes through the surround mode.',
    'I turned the upmix off / switched to plain stereo / with the upmix off / without the surround mode / bypassed the upmixer / went to two channel / in stereo / upmix off / killed the surround mode / in direct mode / the upmix was switched off / off with the upmix / in pure stereo / hit the stereo button',
  ],
  'other-listening-mode': [
    'The voice is behind us.',
    'I changed the listening mode / tried another sound mode / switched to the movie mode / chose a different mode / tried all the modes / with another listening mode / picked the plain decode mode / went to the standard mode / switching to movie mode / put it in the dialog mode / the mode was changed / cycled through the modes',
  ],
  'size-changed': [
    'The center is set to large.',
    'I set the center to small / changed it from large to small / switched the center to small / changed the size to small / with the center on small / made it small / put the center on small / the center was set to small / told the receiver it is small / went from large to small / flipped the center to small / set all speakers to small',
  ],
  'crossover-changed': [
    'The crossover is at 40.',
    'I raised the crossover to 120 / set the crossover to 100 Hz / changed the crossover from 40 to 110 / moved the crossover up / bumped the crossover up to 100 / lowered the crossover to 80 / with the crossover at 120 / put the crossover at 100 Hz / the crossover was raised / tried a higher crossover / upped the crossover / set it to 120 Hz for a test / dialed the crossover up',
  ],
  'subwoofer-turned-down': [
    'The subwoofer booms.',
    'I turned the sub down / lowered the sub level / turned the subwoofer down 4 dB / dropped the sub by 3 dB / reduced the sub volume / cut the sub back / with the sub turned down / the sub was turned down / backed off the sub / eased the sub down / took the sub down a notch / pulled the sub level down',
  ],
  'subwoofer-off': [
    'There is one subwoofer.',
    'I switched the sub off / turned off the subwoofer / with the sub off / unplugged the sub / pulled the plug on the sub / without the sub / the sub was switched off / killed the subwoofer / sub off / disconnected the sub / shut the sub down / powered off the subwoofer / muted the sub',
  ],
  'surrounds-off': [
    'Four ceiling speakers were added.',
    'I unplugged the surrounds / turned the surrounds off / pulled the surround plugs / with the surrounds off / without the heights / disconnected the ceiling speakers / switched off the rears / muted the surrounds / the surrounds were unplugged / killed the rear speakers / turned off the heights / pulled the wires of the back boxes',
  ],
  'subwoofer-polarity-turned': [
    'The bass is weak around the crossover.',
    'I flipped the sub phase / turned the phase switch of the sub / set the sub phase to 180 / with the sub at 180 / reversed the subwoofer polarity / switched the sub phase / with the sub phase reversed / put the phase switch on 180 / inverted the sub / changed the phase on the sub / the sub phase was flipped / moved the phase knob to 180',
  ],
  'equalization-bypassed': [
    'The room correction is on.',
    'I turned the correction off / bypassed the EQ / with the EQ off / switched off the room correction / without the correction / took the correction out / EQ off / disabled the equalizer / killed the EQ / put the correction out / defeated the room EQ / the correction was switched off / turned off the filters / with the tuning off',
  ],
  'correction-run-again': [
    'The automatic setup was run in May.',
    'I ran the auto setup again / re-ran the calibration / redid the setup / repeated the microphone run / ran it again / ran the mic setup twice / did the calibration over / ran a new calibration / re-ran it twice / reran auto cal / recalibrated / the calibration was repeated / did the room correction again',
  ],
  'amplifier-exchanged': [
    'The receiver is old.',
    'I tried another receiver / swapped the amp / borrowed an amplifier / replaced the receiver / a new receiver / bought a bigger amp / hooked up a different amplifier / the receiver was replaced / exchanged the amp / sent in the receiver / tried it on my old receiver / changed the receiver / put in a new amp',
  ],
  'cable-exchanged': [
    'The cable is long.',
    'I swapped the cable / replaced the center wire / tried another cable / new speaker wire / bought expensive cables / exchanged the cables / changed the leads / the cable was exchanged / rewired the center with thicker wire / put in new cables / ran a new wire / had an electrician exchange its cable / tried different interconnects / cables I have exchanged',
  ],
  'source-exchanged': [
    'Films come from the streamer.',
    'I tried another player / swapped the streaming stick / same film on disc / played it from disc / another source / tried a different service / the same scene on disc / switched to the disc player / used another streamer / played the same movie from a stick / from another app / changed the player / tried other sources',
  ],
  'channels-put-right': [
    'The left one plays the center.',
    'I put the cables on the right terminals / swapped the wires back to the right outputs / put the plugs where they belong / corrected the wiring / moved the wires to the right terminals / rewired it correctly / sorted the cables out / plugged the center into the center output / connected the center to the right output / fixed the wiring / the wiring was corrected / put the leads on their proper posts',
  ],
  'channels-swapped': [
    'The center buzzes.',
    'I swapped the left and center outputs / swapped L and C at the amp / switched the left and center wires at the receiver / with left and center swapped at the amp / exchanged the center and left leads at the amplifier / traded the L and C plugs at the back / swapped the channels at the amplifier / swapped the outputs / connected the center to the left output / swapped center and left at the receiver / put the center on the left terminals / swap of left and center at the amp',
  ],
  'polarity-swapped': [
    'The voice has no body.',
    'I swapped plus and minus / reversed the wires on the center / flipped the polarity / swapped the red and black / reversed the polarity of the center / turned the plug around / switched the plus and minus at the center / crossed the center wires / flipped the two wires / with the wires reversed / the polarity was reversed / swapped the leads on the center / reversed its leads',
  ],
  'voice-boost-changed': [
    'The receiver has a dialog enhancer.',
    'I turned on the dialog enhancer / switched the voice boost on / with dialog enhancement on / tried the dialog boost / dialog enhancer on / turned off the dialog enhancer / set the dialog level to 4 / raised the dialog level / enabled speech mode / with the voice boost off / the dialog enhancer was switched on / used the clear voice thing',
  ],
  'night-mode-changed': [
    'There is a night mode.',
    'I turned night mode on / switched night mode off / with night mode on / tried night mode / night mode off / turned off the dynamic compression / enabled the night mode / without night mode / the night mode was switched off / disabled drc / killed the dynamic volume / put night mode on',
  ],
  'display-muted': [
    'The voice echoes.',
    'I muted the TV / turned the TV sound off / turned the TV volume to zero / with the TV muted / switched the TV speakers off / took the TV volume down to nothing / the television was muted / disabled the TV speakers / killed the TV sound / turned down the telly / tv on mute / set the TV volume to 0 / unplugged the soundbar',
  ],
  'surface-covered': [
    'The center lies on a glass shelf.',
    'I laid a towel on the shelf / put a blanket in front of it / spread a quilt on the floor / a towel on the glass / threw a rug on the boards / covered the shelf with felt / draped a blanket over the table / with a towel on the board / stuck felt on the shelf / a folded blanket under it / put foam around it / the shelf was covered / dragged in a rug',
  ],
  'room-treated': [
    'The room is bare.',
    'I hung curtains / put up a duvet on the wall / hung four blankets along the glass / added absorbers / bought a big carpet / put panels on the walls / with the curtains drawn / hung up a quilt / built two panels / installed bass traps / put down a rug / the walls were covered with panels / drew the curtains / placed absorbers at the sides',
  ],
  'other-person-listened': [
    'I hear the voice at the right.',
    'My wife sat in my place / I had my son listen / a friend came over and listened / my daughter listened from my chair / my wife takes my seat / let my neighbor listen / my buddy had a listen / two friends sat in my chair / I asked my wife to listen / my brother sat there / had someone else listen / my kids listened from my spot',
  ],
  'headphones-tried': [
    'The voice is muffled.',
    'With headphones / on headphones / I tried headphones / through my earphones / put on headphones / listened on headphones / gave me his headphones / with earbuds / plugged in headphones / over headphones / I used my headphones / wore headphones',
  ],
};

const formsOf = (act: ActId): [before: string, form: string][] => {
  const [before, forms] = FORMS[act];
  return forms.split('/').map((form) => [before, form.trim()]);
};

const readActs = (text: string): string[] =>
  readText(text).trials.flatMap(({ act, outcome }) => (act === undefined ? [] : [`${act}=${outcome}`]));

describe('what was done, in the words of owners', () => {
  it.each(ACT_IDS)('%s is told in a dozen forms at least', (act) => {
    const forms = formsOf(act);
    expect(forms.length).toBeGreaterThanOrEqual(12);
    const unread = forms.filter(
      ([before, form]) => !readActs(`${before} ${form}, and the trouble was gone.`).includes(`${act}=gone`),
    );
    expect(unread.map(([, form]) => form)).toEqual([]);
  });
});

const OUTCOMES: Readonly<Record<'gone' | 'better' | 'same' | 'worse', string>> = {
  gone: 'and the trouble was gone / : barrel gone, instantly / and hallelujah / : night and day / and there it was / : voice came back / and every word was there / : perfect / and the voice sat on the face / : voices went up where they belong / and that cured it / and it was fine / : like magic / and he was himself again / and the voice snapped to the screen / and it firmed up / : problem solved',
  better:
    'and it helped a good deal / : much better / and it was clearer / : crisper / and it improved / : somewhat better / and the boom was gone for the most part / : almost gone / and it was half cured / : a big improvement / and it helped a little / : noticeably better',
  same: ": no change / and it did nothing / : same / : not a jot of difference / : zero result / : no dice / but it is still muddy / and nothing came of that / and it made no difference / : as before / : didn't help one bit / : just louder / : zilch / and nothing changed / : still the same",
  worse:
    'and it was worse / : even worse / and it got thinner / : more boomy / : less clear / and it was a mess / : worse than before / and it sounded terrible / : not as good / and it got duller',
};

describe('what it did', () => {
  it.each(Object.entries(OUTCOMES))('%s', (outcome, said) => {
    const unread = said
      .split(' / ')
      .filter(
        (words) =>
          !readActs(`I pulled the center forward ${words}.`).includes(`center-pulled-forward=${outcome}`),
      );
    expect(unread).toEqual([]);
  });

  it.each([
    ['I tilted the center up. Nothing.', 'center-tilted=same'],
    ['I muted the TV. The echo was gone.', 'display-muted=gone'],
    ['Much better with the upmix off.', 'upmix-off=better'],
    ['I pressed the pure button and it was huge.', 'equalization-bypassed=gone'],
    ['I turned the upmix off and it was not huge at all.', 'upmix-off=same'],
    ['I set it to phantom and the voice snapped into place.', 'center-set-to-none=gone'],
    ['I turned the upmix off. The echo stayed.', 'upmix-off=same'],
    ['Off = lovely wide stage, so it is the surround mode.', 'upmix-off=gone'],
    ['I moved the center forward, it is clearer but not fixed.', 'center-pulled-forward=better'],
    ['Swapped the cable, no change, tried another receiver: same.', 'amplifier-exchanged=same'],
    ['The equalizer is on. I switched it off and it was perfect.', 'equalization-bypassed=gone'],
    ['The voice boost is on. I turned it off, no difference.', 'voice-boost-changed=same'],
    [
      'The center hangs above the screen. Held up on a tripod below the TV it was perfect.',
      'center-lowered=gone',
    ],
    ['The center lives in a cubby. I put it on a stool and the boom was gone.', 'center-taken-out=gone'],
  ])('%s', (text, trial) => {
    expect(readActs(text)).toContain(trial);
  });
});

describe('what is no trial', () => {
  it.each([
    ['I want to raise the center, that would be better.'],
    ['Should I pull the center forward? Would it be better?'],
    ['My dealer says to swap the cable and it will be gone.'],
    ['Since I raised the center the voice is worse.'],
    ['I have not turned the upmix off, no difference so far.'],
    ['The center stands on a low bench. It sounds terrible.'],
    ['I raised the center.'],
    ['My neighbor has his center on a stool and it is perfect.'],
    ['If I moved the sofa back it would be better.'],
    ['We sit 10 feet away, center in the middle under the screen. Perfect picture.'],
    ["I turned the center up 5 dB because my father couldn't follow the news."],
    ['I turned the center up 5 dB so my mother could follow the news.'],
    ["I don't have night mode or dialog enhancer on, no change there."],
    ['The manual says I should run the setup again and it is gone.'],
  ])('%s', (text) => {
    expect(readActs(text)).toEqual([]);
  });

  it('keeps no act of what was put back, and tells that it was', () => {
    const trials = readText('I pulled the center forward: perfect. Shoved it back: bad again.').trials;
    expect(trials.map(({ act, outcome, stays }) => [act, outcome, stays])).toEqual([
      ['center-pulled-forward', 'gone', false],
    ]);
  });
});
