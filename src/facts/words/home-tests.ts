/** Home tests told in one breath, what was done and what it did: "with the small cell all three move the same way". */
import { type FamilyWords, framed, type Phrases } from './lexicon.js';

/** What was done, and in its sentence what came of it. */
const told = (done: Phrases, ...came: string[]): Phrases =>
  framed(done.split(';'), (act) => framed(came, (outcome) => `${act.trim()} .... ${outcome}`));

const NO_CHANGE = [
  'no|not|nothing .. change|changes|difference|tell|differ|better|clearer|easier',
  'same|unchanged',
];
const BATTERY = 'battery|=cell';
const OPPOSITE = 'other|inward|reversed|opposite|inverted|backward';
const NOISE = '@testNoise|=rushing ... center|middle|c; center|middle|c .. @testNoise|=rushing';
const NOISES = '@testNoise|=rushing';
const SUB_OFF = 'subwoofer .. =off|unplugged; =off .. subwoofer; plug .. subwoofer; =off .. =woofer';
const SILENCED = 'silenced|muted|unplugged|disconnected|=off';
const CENTER_OFF = `center .. ${SILENCED}; unplug|disconnect|disconnecting .. center|it; pull|took|take .. center .. @wire; =wire =off .. center; without .. center .. playing|sound; =disconnected|=unplugged it|,`;
const SAID = 'voice|voices|dialog|speech|singer|talking|actors';
const NEAR =
  '=near|close .. center|speaker|box; sit|kneel|knelt|stood|i .. front|before .. center|speaker|box|it; meter .. front|from|before .. center|it|speaker; near =up|by; from near';
const PHANTOM =
  'center .. =off|=no|none|deactivated .. menu|set|setup|to; without .. center .. menu|setup|via; set|removing .. center .. none|no|setup; @mains .. carry|do .. @voice';
const MAIN_IN =
  '@leftMain|main .. place|where|job|standing|stood|on .. center; hooked .. main .. center @wire; =main|@mains .. standing in; main .. there';
const AT_AMP =
  'swap|crossed|wires ... at|on ... receiver|amplifier; swap at the receiver|amplifier; swap .. outputs';
const AT_BOXES =
  'swap .. boxes|speakers; center box|speaker? .. on .. left|whichever cable; boxes changed places; swap .. at|@wire .. =loudspeakers; left speaker|box|one .. on .. center @wire';
const SEATS =
  'swap|exchanged|traded|changing|trade .. seats|places|chairs|=same; seats swap|exchanged|traded; we =swapped|=traded|=exchanged; took another seat; sat on hers|mine';
const COVERED =
  'cloth|sock|towel|covering|covered ... one|upper|lower|second|of .. tweeter; tweeter under a cloth';
const ONE_OFF =
  'one|upper|lower .. center .. =off|disconnected|unplugged; disconnected|unplugged|taking .. one|upper|lower .. center; one of .. center .. disconnected';
const TILTED = 'tilt|wedged|angled|pointing .. up|upward|center|front|box';
const LIFTED =
  'lifted|raised|raising|holding|put|lift .. center|it|box .. on|higher|crates|stool|up; center raised|lifted|higher; =lifted|=raised';
const MAIN = '@leftMain|@rightMain|=main|@mains';
const EITHER = 'as wired or swapped; two polarities|ways; one swapped or not; normal or one|reversed';

export const homeTestWords: FamilyWords = {
  choices: {
    testPosture: {
      'better-higher':
        'clear|@good|distinct .. when|if|as .. i|he|she|you|we .. stand|stretch; i|he|she|you|we .. stand|stretch|get up|upright ... clear|distinct|@good; =standing .. clear|@good .. than .. sit|sitting; higher .. head .. clear|@good; @good .. on my feet; best .. on my feet; =stand clear',
      'better-lower':
        'clear|@good|distinct .. when|if|as .. i|he|she|you|we .. slouch|crouch|lie|slump|slide; i|he|she|you|we .. slouch|crouch|slump|lie|slide ... clear|distinct|@good; low|slouching down .. @good|clear .. than .. sit|upright; lower .. head .. clear|@good; crouch clear',
      changes:
        'tone|voice|color|it|different .. changes|varies|change|different|time ... height|stand|slouch|up|down ... neither|none|never|without|not|both; varies with height; stand .. or .. sit|slouch|lower .. voice|tone|sound|it .. changes|different|flips; stand .. slouch ... neither|none|never',
      same: 'not|no|nothing .. change|difference|changes|happens .. whether|if|when .. i .. stand|slouch|sit; stand|standing or sit|sitting ... same; stand .. sit .. slouch .. no change; i .. stretch|slide|stand ... nothing|no .. happens|change|changes|difference; height .. head .. no difference|change; muffled|bad|dull on my feet as',
    },
    testCell: {
      alike: `${told(BATTERY, '@lcr|@allChannels|three|all|each|every|same .. alike|same|outward|way|direction|jump|push|out|polarity|move')}; ${told(BATTERY, 'alike|same direction')}`,
      'center-other': `${told(BATTERY, `center|middle .. ${OPPOSITE}`)}; ${told(BATTERY, 'center goes in')}`,
      'main-other': `${told(BATTERY, `${MAIN}|=left|=right .. ${OPPOSITE}`)}; ${told(BATTERY, 'right|left one|goes goes|in in?')}; ${told(BATTERY, 'one of the mains|@mains')}`,
      'cannot-see': `${told(BATTERY, 'not|cannot|nothing|too .. see|seen|visible|made|small|tell')}; not tell which way .. jump; hidden .. which way`,
    },
    testPolarity: {
      'fuller-as-wired':
        'as wired .. fuller|full; swap|reversed .. thin|thinner .. as wired .. full|fuller; center ... =swapped|wires|reversed ... thinner|thin; current|present .. one|connection|polarity? .. more|fuller|body|bass .. center|body?; fuller .. as .. wired|was; more bass .. present|current',
      'fuller-swapped':
        'as wired .. thin ... full|fuller; swapped .. center wires ... full|fuller|body|bass; reversed one .. more body|bass|fuller; fuller|bass|body .. when|with .. center .. reversed|turned|exchanged|swapped; more bass .. center .. exchanged|reversed; =swapped full',
      'no-difference': `as wired or swapped; two|both polarities ... ${NO_CHANGE[0]}; ${told('swapped .. center wires; both polarities of the center', 'not|no .. tell|difference', 'same|alike|apart')}; just as full .. center reversed; swapping .. center .. not .. fuller|thinner`,
    },
    testPolarityMains: {
      'fuller-as-wired': `${told(`${MAIN} .. wires|reversed|swapped|test; reversed ${MAIN}`, 'thinner|thin|bass went|right before')}; @mains|both ... as wired|connected|are ... fuller|body; @mains .. fuller .. as wired; @mains ... fuller|body .. than with one|swapped; present polarity|connection .. more body; as connected fuller`,
      'fuller-swapped': `@mains .. fuller|body .. with one|swapped|reversed|exchanged; ${told(`wires of .. ${MAIN}; reversed ${MAIN}`, 'came back|had bass', 'fuller|bass|body')}; on one main made .. fuller; more body with the right|left; fuller with one .. reversed|swapped`,
      'no-difference': `@mains|both ... difference between the two; ${told(`wires of .. ${MAIN}; reversed ${MAIN}; ${EITHER}`, ...NO_CHANGE)}; on one main .. not .. fuller|thinner`,
    },
    testSubOff: {
      gone: told(SUB_OFF, 'gone|less|normal|clean|disappears|vanished|cured'),
      same: told(
        SUB_OFF,
        'same|unchanged',
        'still .. hear|boom|boomy|there|bad',
        'no|nothing change|changes|changed',
        'just as bad',
      ),
      thin: `${told(SUB_OFF, 'thin|skinny|lean|weak', 'no|without body')}; turns lean|thin .. =off .. subwoofer|=woofer`,
    },
    testBesideMain: {
      alike: told(
        `center ... beside|next|by .. ${MAIN}|tower; next|beside|by .. ${MAIN} .. center; beside .. ${MAIN}; ${MAIN} side`,
        'alike|equals|equal',
        'same sound|tone|=and|the? same?',
      ),
      differs: told(
        `center ... beside|next|by .. ${MAIN}|tower; next|beside|by .. ${MAIN} .. center; beside .. ${MAIN}; ${MAIN} side; not match .. main .. beside`,
        'differ|differs|unlike',
        'still|not .. other|another|different|same|unlike|stands',
      ),
    },
    testStillTwo: {
      'still-two':
        'shared|compared|matched .. middle|fairly|three ... stereo|two|channels .. please|win|favorite|better|prefer; still two channels|speakers for; two|stereo .. remain|remains .. favorite; continues .. prefer .. stereo|two; two channels win; two speakers remain',
      'shared-pleases':
        'shared|sharing .. middle|three ... @fine|like|please|satisfied|win|yes; middle shared .. like|please|fine; satisfied|pleased .. shared middle; no longer need two; three with .. shared middle',
    },
    testUnplugged: {
      'voice-gone': told(
        CENTER_OFF,
        `nobody|no .. speak|speaks|${SAID}`,
        `${SAID} .. gone|vanish|vanished|away`,
        'no talking',
      ),
      'voice-weaker': told(
        CENTER_OFF,
        `${SAID} ... weaker|softer|fainter|faintly|faint|reduced|weak`,
        'got weaker|softer',
      ),
      'voice-full': `${told(CENTER_OFF, `${SAID} .. as|still|just before|loud|full|strong|unchanged|there`, 'nothing change|changes|changed', `all the ${SAID}`)}; ${SAID} .. fully|full there without .. center`,
      'voice-fuller': `${told(CENTER_OFF, 'fuller|richer|fatter|warmer|gains', 'more body|warmth')}; ${SAID} .. fuller|richer|fatter .. when|without|with .. center`,
    },
    testNoiseEach: {
      alike: `${told(NOISES, 'same|alike|difference .. left|@lcr|three|others|center', 'cannot|not tell .. apart|them', 'three alike|same', 'no difference .. center', 'center .. like|equals .. others|left|@mains')}`,
      duller: told(
        NOISE,
        'less treble|bright|highs|hiss',
        'muffled|dull|duller|dark',
        'lacks|no highs|treble',
      ),
      brighter: told(
        NOISE,
        'more treble|highs|hiss|bright',
        'bright|brighter|sharper|crisper|hisses more?',
        'hisses more',
      ),
      boxy: told(NOISE, 'box|barrel|booms|boxy|boomy|nasal|honky'),
      thin: told(NOISE, 'thin|thinner|skinny|telephone|lean'),
      phasey: told(NOISE, 'diffuse|hollow|phasey|vague|no place'),
      softer: told(
        NOISE,
        'softer|quieter|weaker|lower|loud ... tone|color|same|equal|alike|sound .. same|equal|alike|different?',
        'softer|quieter|weaker ... otherwise|only|different .. alike|level|sound?',
      ),
      louder: told(
        NOISE,
        '=louder|higher|sticks ... tone|color|same|identical .. same|equal|alike|identical?',
        '=louder ... otherwise alike',
        'only higher|louder .. level',
      ),
    },
    testTape: {
      agrees:
        'tape ... menu .. too|also|same|agree|agrees|match|matches|fit; menu .. fit|match|agree .. tape; tape and menu ... same|agree|match; numbers .. fit .. tape',
      off: 'taped|tape ... menu .. off|differ|differs; entered|menu ... # .. too long|short|much|far; menu|numbers .. not fit|match|agree .. tape; tape .. # .. closer|nearer ... receiver|menu .. only|as|same; by # compared with .. tape',
      'wrong-unit':
        'wrong unit; meters .. where|while .. feet; in feet .. meters; feet .. meters .. tape; factor of three; three times; # meters .. in place|instead of #; tape|measured .. # ... menu|entered .. #',
    },
    testSwapSeats: {
      'stays-with-seat': told(
        SEATS,
        '=its|=it .. seat|chair|place',
        'remained|remains|stays|stayed .. that|place|seat|there',
        'now she|he has',
        'in mine got',
      ),
      'goes-with-person': told(
        SEATS,
        '=its|=it .. person',
        'goes|went|followed|follows|came with|along|me|him|her|my|@kin',
        'still .. not|had|understand',
      ),
      'no-one': told(
        SEATS,
        'nobody|noone|neither|none .. hear|hears|noticed|had',
        'both .. fine|good',
        'no one|either',
        'all right',
      ),
    },
    testNearCenter: {
      'good-near': told(NEAR, 'perfect|nothing wrong|@good', '@voice .. @good'),
      'still-bad': `${told(NEAR, 'no|not|still|same|just|exactly .. better|same|bad|trouble|mumbling|mush', 'same mumbling|trouble|mush')}; bad|same .. from near .. too|also?`,
      better: `${told(NEAR, 'more|better|improved|improves|helps .. not|still|without .. good|right|fully|clean', 'helps|improves .. bit|little|not')}; improved|better .. not|without .. clean|good|right`,
    },
    testSitMiddle: {
      'clear-in-middle':
        'middle|@mainSeat|centrally .. @good|every ... end|edge|@sideSeat|outer|side ... @trouble|lose|bad|unclear; end|edge|@sideSeat|outer ... @trouble|bad|unclear ... middle|@mainSeat .. @good; @good .. on|in middle|@mainSeat .. @trouble|unclear .. outer|end|@sideSeat; from .. middle .. to .. end .. drop|worse',
      'same-everywhere':
        'middle|center|@mainSeat or|and .. end|side|@sideSeat ... same|equal|no|difference; middle|@mainSeat ... end|side|outermost|@sideSeat ... same|equal; middle|@mainSeat ... end|side|outermost|@sideSeat ... nothing|no .. changed|change|difference; no difference between .. seats|them; just as muddy|bad .. middle|@mainSeat .. as .. end|@sideSeat',
      'worse-in-middle':
        'end|side|@sideSeat .. @good|better ... than .. middle|@mainSeat; end|side|@sideSeat .. to .. middle|@mainSeat .. worse|bad; @sideSeat|end .. @good ... middle|@mainSeat .. hard|bad|worse; center|middle place|seat|one .. bad one|worse; @mainSeat .. bad one',
    },
    testPhantom: {
      gone: told(PHANTOM, 'gone|perfect|clear|well|cured|fine', 'no|not .. trouble|present'),
      same: told(PHANTOM, 'same|equal|still .. have|trouble?', 'not|no .. change|difference'),
      worse: `${told(PHANTOM, '=worse|=harder|deteriorated')}; deteriorated|=worse .. once|when .. center .. none`,
    },
    testEarToDrivers: {
      all: 'every|each|all .. cone .. work|works|plays|play|playing .. ear|close|checked|clean; ear ... every|each|all .. cone .. play|work; none silent; no rattle anywhere; tweeter plays .. cone play',
      silent:
        'one|left|right|upper|lower cone|one .. mute|silent|dead; no sound|nothing .. from one|cone|driver; cone at low volume ... mute|silent',
      rattles:
        'cone .. scratch|scratches|buzzes|rattles .. when|near; scratching|scratchy|buzzing .. noise|sound .. from|ear|cone; cone .. makes .. scratchy|scratching',
    },
    testMainInPlace: {
      right: told(MAIN_IN, 'right|good|fine|correct|proper|perfect'),
      wrong: told(MAIN_IN, 'wrong|same .. trouble|fault|as?', 'no better', 'just as wrong|bad'),
    },
    testSwapAtAmplifier: {
      'moves-left': told(
        AT_AMP,
        'left|@leftMain .. has|sounds|does|be .. trouble|bad|it|=fault',
        'moves|moved|wandered .. left|leftMain',
      ),
      stays: told(
        AT_AMP,
        'center .. still|keeps|has .. trouble|it|bad',
        'stays|remains|remained .. center|box',
      ),
      gone: told(AT_AMP, 'gone|nowhere', 'both .. fine|good'),
    },
    testSwapAtLoudspeakers: {
      'follows-box': told(
        AT_BOXES,
        'follows|stuck|remained|it is .. box|center',
        'still .. bad|rattles|trouble',
        'box that|itself',
      ),
      'stays-with-cable': `${told(AT_BOXES, 'stays|stuck|stayed|remains .. cable|lead|wire', 'now .. bad|has|trouble')}; stuck|stays to|with the? lead|cable|wire`,
    },
    testOneCenterOff: {
      steadier: told(ONE_OFF, 'steadier|steady|fuller', 'not change|changes', 'hardly change|changes'),
      same: told(ONE_OFF, 'only .. level', 'nothing|no .. change|steadiness', 'just as much'),
    },
    testCoverTweeter: {
      steadier: told(COVERED, 'steady|steadier', 'keep|keeps|stay still', 'made .. steady'),
      same: told(COVERED, 'no change|difference', 'still wander|change|move', 'same'),
    },
    testTilt: {
      clearer: told(TILTED, '=clearer|@good', 'clears up'),
      same: told(TILTED, ...NO_CHANGE, 'like it did|lying'),
    },
    testSpreadOn: {
      opens: told(
        '@spread .. on|activated|open|enabled|halfway; opened .. @spread',
        'opens|widens|wider|wide',
      ),
      same: `${told('@spread .. on|activated|open|enabled|halfway|does; opened .. @spread', 'no|not|nothing .. change|difference|happens|hear', 'same|unchanged')}; narrow .. with @spread as; not .. hear .. @spread`,
      worse: `${told('@spread', '=worse|deteriorated', 'step back')}; =worse|deteriorated ... @spread`,
    },
    testLift: {
      'tone-only': told(
        LIFTED,
        'only .. tone',
        'tone|timbre .. same|not|remained|still .. place|move|position?',
        'tone .. but|place .. place|same|not',
      ),
    },
  },
};
