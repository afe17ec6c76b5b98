/**
 * What owners do to their systems. An act is looked for with what came of it, before or behind it in the same
 * sentence or in the next one; an act without an outcome says nothing.
 */
import type { FamilyWords, Outcome, Phrases } from './lexicon.js';

export const OUTCOME_WORDS: Readonly<Record<Outcome, Phrases>> = {
  gone: `problem|trouble|issue|@faultWord be? gone; stage .. open|opened|opens; voice .. match .. picture|screen; gone; disappear|disappeared|disappears|vanish|vanished|vanishes|left|stopped|stops|ceased|cured|fixed|solved|resolved|sorted; @voice|trouble|problem|it .. be? perfect; be? perfect; problem solved|gone; solid voice; stage back; stage be back; back to normal; back between; voice be back; be back; bingo; fix|fixes|fixed it; did the trick; it|that was it; that .. cured; all good; wide again; clear again; normal again; never noticed it; never noticed; nobody noticed; spoke .. normally; no problem; no trouble; no more @faultWord; not .. any more; never came back; it stops; stops doing it; come on picture; on the mouth; voice .. with the picture; with her mouth; on the screen; jumped to the screen; sitting on the telly; good now; fine now; ok now; it was fine; was fine; sounded right; both fine; all fine; for good; crystal; clear as a bell; clear as glass; every word; clear at once; sings again; large and beautiful; explosion of joy; in the middle again; snapped onto .. screen; clicked; whole|full again; problem .. away; went away; away; no|without .. complaint; is himself; was himself; as it should; could follow; understands everything; perfectly clear; heaven; what a difference; like a different speaker; night and day; is|was the three are one; are one; firm; without a complaint; super; magic; spot on; sounds right`,
  better: `better; improved|improve|improves|improvement; help|helped|helps; clear|clearer|clears|cleared; opened up|opens up|open; much nicer; nicer; sooo much; tighter; steadier; somewhat|bit|little|lot|much|decidedly|marginally|noticeably good; fuller; more body; wider|opens; softened; best; big change; big difference; huge difference; less @faultWord; almost gone; nearly gone; basically gone; good; fine; great; lovely; ok; nice; wonderful; excellent; sounded .. good|right|fine; readable; what man clarity; clarity; asked what he had bought; half cured; did wonders; went down to; dip gone; better now; tad wider; easier; nodded; voices moved up; quieter; was right`,
  same: `no|zero|any? change|difference|effect|improvement|help|luck|good|use; not .. change|help|matter|difference|improve|better; same; unchanged; nothing; did nothing; no better; made no difference; still .. there|bad|same|muddy|boomy|dull|muffled|mumble|unclear|hollow|thin|echo|low|quiet|double|center|swishes|not; still; no avail; in vain; not a bit; without success|effect|result; neither; to no; didnt? do anything; exactly so; again .. the same; also loaned; makes no odds; same story|thing|result|mush|honk|fault; keeps on; remains|remained; leaves it; not one bit; just|only louder; louder|loud but; loud .. but .. not .. better|clear; got|get louder .. not; still cannot; a louder blur; louder blur`,
  worse: `worse; bad|worse than; horrible|terrible|awful; made .. worse; even worse; more boomy|muddy|dull; thinner; not as good; weaker; made it thin; terrible; awful; a mess; muddier; ruined; less clear; hollow; music all in the middle`,
};

export const trialWords: FamilyWords = {
  tests: {
    testSitMiddle: {
      act: 'when i move .. middle|center; slid to the middle; in the mainSeat; scoot to the middle; straight on; mainSeat; at both ends; along the sofa; all seats; every seat; middle seat; move to the center of the sofa; sit in the middle; in the middle of the sofa; in the middle',
      outcome: { gone: 'clear-in-middle', worse: 'worse-in-middle' },
      after: {
        'clear-in-middle': 'clear|great|fine|perfect|lovely|every word|good|gone|ok',
        'worse-in-middle': 'worse|worst',
      },
    },
    testNearCenter: {
      act: 'up close; close up; near the speaker|center|box; close to it|the|speaker|center; # from it|the center|speaker|box; from # |one yard; right in front of .. center|speaker|it; sit # from it|the center|speaker|box; # away .. it; from a meter; at # from .. center|speaker; stool # before .. center; # before|in front of .. center|it|box|speaker; stand # in front of; nose on it; near by; clear close up; ear to the box; ear close; go close; kneel|kneeling .. front|before; next to the center|speaker; directly in front of the center|speaker; at one meter; crouch; with my ear|head .. at|to .. center',
      outcome: { gone: 'good-near', better: 'good-near', same: 'still-bad', worse: 'still-bad' },
      after: {
        better:
          'somewhat better; a bit clearer; better but|near; improves a little; half cured; bit better; little better',
      },
    },
    testUnplugged: {
      act: 'pulled .. center plug|wire|lead|cable; unplug|unplugged .. center|it; pull|pulled the plug; disconnect|disconnected .. center; with the center wire off; center out; pull the wire; plug out; center disconnected; pulled .. center; center .. unplugged; unplugged; with .. center .. unplugged; center .. disconnected',
      outcome: {},
      after: {
        'voice-gone':
          'voice .. gone; voices gone; no dialog|voice|talk|voices|singer; nothing left in; silent; no voices left; hear no talk; voice .. complete gone; no voice whatsoever; singer .. gone',
        'voice-weaker':
          'voice still there but weak; some of the voice; quiet but there; half the voice; faint voice; voice dropped but; weaker; still a faint',
        'voice-full':
          'nothing changed; voice as loud; no difference; full voice; dialog .. not care; dialog as before; singer .. as before; voice .. still there; nothing .. missing; same',
      },
    },
    testTape: {
      act: 'tape; taped; laser; measured .. distances; distance; distances; ruler; menu; checked with .. tape|laser; entered distance; string',
      outcome: {},
      after: {
        agrees:
          'match|matches .. menu|entries|setup; distances .. right|correct|ok|agree; within an? inch|cm of; ok; agree; matches',
        off: 'off by .. foot|feet|m|cm|inch; # off; not match .. tape; wrong; doesnt match; is wrong',
        'wrong-unit':
          'feet as meters; unit .. set to feet; 10 instead of 3; numbers were meters; factor of three; mixed feet and',
      },
    },
    testSwapAtAmplifier: {
      act: 'swap .. l and c; swap .. left and center; swap .. at the .. amplifier|receiver|back; swap .. cables|leads|wires .. at .. amplifier|receiver; swapped at the amplifier|receiver; swap .. center and left; swap .. outputs; center .. on the left output; center on .. left terminal|output|channel; connected .. center .. to .. left; replugged; swapped and; after swapping; after the swap; swapped l c; swap|changed channels',
      outcome: { gone: 'gone', same: 'stays' },
      after: {
        'moves-left':
          'moves to the left; left speaker .. bad; follows the amplifier|channel; now the left; jumped over; left does it; moved to the left; went left; left .. does it; left .. has it',
        stays:
          'stay .. center|box|there|same; still the center; not move; still bad; remain|remains; stays with; box still bad; stayed',
        gone: 'gone; both fine; disappear|disappeared; never came back; neither',
      },
    },
    testSwapAtLoudspeakers: {
      act: 'moved .. center .. to the left position|place; swap .. boxes; swap .. l and c boxes; center box .. left; swapped .. cables; exchanged center with left; swap .. center .. with .. left|right|main; center .. in the place of .. left|right; put .. center .. left|right position|place|spot; box|speaker .. on the other wire|cable; swapped .. speakers; carried them about; horn in the place; whichever box .. cable; swap .. center and left .. boxes|speakers; center .. on .. left .. stand',
      outcome: {},
      after: {
        'follows-box':
          'follow .. box|speaker; moves with the box; goes where the box; same .. honk|fault|dull|sound; bad box stays; honk went left; now she was silver on the left; silver on the left; moved with; went with; went left; it goes with',
        'stays-with-cable':
          'stays with the cable|wire; other box has it; its the cable; new box on .. old wire; whichever box; wire .. culprit; on that wire .. too; is thin too; too',
      },
    },
    testMainInPlace: {
      act: 'put .. left|right|main|tower|bookshelf|@leftMain .. in|on .. center place|cable|spot|position; main|tower|left|bookshelf .. on the center cable|lead; put .. main there; with a main there; main .. in its place; left tower in the middle; borrowed .. main|right; @leftMain|left one .. in the center place; put a bookshelf there; even the tower .. spot; another speaker there; main in the; l on the center lead|cable; former left now in the middle; one of the mains .. in its place; left one lying in the center; swap .. with one of the mains; left main .. center; main .. the place of the center',
      outcome: { gone: 'right', better: 'right', same: 'wrong', worse: 'wrong' },
      after: {
        right: 'perfect|right|great|fine|velvet|well; sounded|sounds good|right',
        wrong: 'thin too; muddy|bad|boomy|boomed|thin .. too; same fault; as bad; just as bad; too',
      },
    },
    testNoiseEach: {
      act: '@testNoise .. center|c; center|c @testNoise; @testNoise l c r; @testNoise on all three; @testNoise .. left center right; overlay; pink noise .. c; noise alike; tones identical',
      outcome: {},
      after: {
        alike:
          'alike; same tone; identical; no .. difference; sound .. same; hiss the same; overlay within; sounds the same',
        duller: 'dull; dark; less hiss; muffled; blanket; less fizz; slides away; woolly',
        brighter: 'bright; more hiss; sharp; piercing; fizzier; shriller',
        boxy: 'boxy; in a box; boomy; crate; rumbly; honky; nasal',
        thin: 'thin; no bottom; lacks body; skinny; no body; lean; tinny',
        phasey: 'hollow; cannot place; phasey; in a tube; no place; swishy; everywhere; vague',
        softer:
          'soft|quiet|low same; only lower|quieter|softer; just quieter|softer; colour identical; lower .. colour|tone .. identical|same',
        louder: 'only higher|louder; just louder; louder same; louder .. same|identical tone|colour',
      },
    },
    testEarToDrivers: {
      act: 'ear to it|each|the|every; with my ear; ear .. tweeter|dome|cone|driver|grille; ear close|near; up close; each driver; ear test; put my ear',
      outcome: {},
      after: {
        all: 'all .. play|fine|working|clean|work; every driver; all fine; makes noise; passed; sounds clean; all sounds clean',
        silent: 'silent; dead; nothing from; no hiss; no sound; nothing; quiet',
        rattles: 'buzz|buzzes; scratchy; rattle; scrape|scrapes; rasp|rasps; scratches',
      },
    },
    testCoverTweeter: {
      act: 'towel over .. tweeter; cover|covered|covering .. tweeter; sock over; towel on one tweeter; cloth over one tweeter; one tweeter covered; cloth on one; sock test; one covered; taped .. tweeter; one tweeter .. off; hand over .. one tweeter; over one tweeter',
      outcome: { gone: 'steadier', better: 'steadier', same: 'same' },
      after: { steadier: 'stop|stops|steady|steadier|no more; fixed', same: 'still' },
    },
    testSwapSeats: {
      act: 'swap|swapped|trade|traded|change|exchanged places|seats|chairs; moved to my seat; whoever sits there; traded; my partner in the same seat; takes my seat; in the same seat; whoever moves; in my seat; once we traded',
      outcome: {},
      after: {
        'stays-with-seat':
          'now she|he hears it; its the seat; hears it; stays with; loses the words; i was the one',
        'goes-with-person':
          'goes with .. him|her|person; still could not follow; its the person; still only him; still .. him|her',
        'no-one':
          'nobody|none|neither .. heard|hears|noticed; gone; all was fine; hears nothing; points to the middle; nope; hears it not',
      },
    },
  },
  acts: {
    'center-turned-up':
      '# more loud|louder; # louder|hotter; # on .. center; turn|turned|crank|cranked|bump|bumped|raise|raised|pushed|pressed|put .. center .. up|to; turn|turned|crank|bump|bumped it up; center up; + # ; center .. turned up; turned up the center|voices; raising it; boost|boosted the center; center .. raised by; more volume; center level .. up; bumping it; turn the center up; center + #; center volume up; cranked center; turned the voices up; louder .. center; pressed the center volume up; +5; turned center up',
    'center-turned-down':
      'turn|turned .. center down; center down; turn|turned it down; took it down; center .. lower|lowered by; lower|lowered .. center level|volume|trim; with trim at minus; trim at -; center at minus; reduced the center; center .. turned down',
    'center-moved-to-midline':
      'move|moved|put|made .. center .. to|in|on .. middle|midline; center in the middle on; moved it to the middle; center .. centered; put it in the middle; center .. exactly in the middle|center of; shifted .. to the middle',
    'center-raised':
      '@lifted .. center|it|speaker|box .. up .. to .. ear|picture|height; @lifted .. center|it|speaker|box .. up|higher|on .. stool|box|books|crate|chair|boxes; raised|raising|lifted|lifting|lift it; lifted; raise .. center; put .. on a .. stool|crate|keg|beer|bar chair; on a .. bar stool|chair; center on a bar stool; on three books; jacked it up; higher; up at tv height; with a bar chair .. center on it; @lifted .. up to .. ear|television|height; sat on a bar stool; on a stool; moved it up; center above the television; put it above; raised it; higher up; elevated',
    'center-lowered':
      'lower|lowered the center|it .. down; put .. center .. lower; moved .. down to .. shelf|bench; took it down to',
    'center-tilted':
      'tilt|tilted|tilting .. it|center|up|speaker|box; wedge .. under|front|center; wedge; aimed .. ears|up; aim|aimed it; books under .. front; atlas under; angled|angling|angle it; rubber|door|something|doorstop stoppers under .. front; tipped it up; under the front edge; front edge .. up; point|pointed .. ears; tipped back; under the front',
    'center-stood-upright':
      'stood|stand .. it|box|center .. upright|up|on end|vertical|end; standing up? on end; turned .. upright; upright for a test; put .. upright; stood on its end; rotated .. upright; had it standing up; stand the center on end; on its end',
    'center-turned-over':
      'turn|turned|flip|flipped .. center|it|box over|upside|round; turned it the other way up; put it the right way up; flipped it over; turned it over',
    'center-pulled-forward':
      '@moved .. it|center|box|speaker .. forward|edge; pull|slide .. it|center|box|speaker .. forward|out|edge; pull|pulled it forward|out; pulled it to .. edge; to the edge; stick|sticking out over; slid .. front edge; moved forward; pulling it out; flush with the edge; pull the center to the edge; hanging over the edge; pulled it; keeps pulling the center out; flush or not; moved .. to the front edge; brought .. to the front; moved it out of the hole; pulled forward; pulled out; hang over the edge; to the front edge; over the edge',
    'center-taken-out':
      'took|take|taken it out; out of .. cabinet|cubby|furniture|compartment|hole|rack|shelf|cupboard|dresser; on top of the dresser|cabinet|rack; center on a .. chair|stool .. front; stool in front of .. television; put .. in front of|on top of .. cabinet|dresser|rack|trolley; chair in front of .. it; outside the cabinet; took .. out of; taken out of; free standing in front of .. cabinet; had it out; put .. speaker on top; on a bar stool in front of .. television; on a chair in front; in the open; outside .. furniture',
    'center-set-to-none':
      'center .. set to none; set .. center to none|off|no; without the center; phantom mode; turn|turned|switched .. center off; with no center; center off; center disabled; with none; none ; center set to none; disabled the center; do none .. menu; set to none; phantom; without center; without it; with center off',
    'center-exchanged':
      'another|new|bigger|different|other|loaned|lent|borrowed center; exchanged .. center; replaced the center; bigger center; tried another center; bought another center; shop lent one; loaned for; new center; one bigger loaned; two centers and; bought a new center',
    'mains-moved-closer':
      'moved .. @mains .. closer|together|nearer|in; @mains close|closer together; pushed .. @mains together; brought .. @mains in|closer; @mains .. nearer',
    'mains-toed-in':
      'toe|toed|toeing .. in; turned .. @mains .. in|inward|towards; toe-in; angled .. @mains in|toward; @mains .. turned in|inwards',
    'seat-moved-back':
      'moved|pushed|pulled|slid .. @seatWord .. back; sit|sitting farther back; @seatWord .. back by|back to the wall|farther|further; sat|sit further back; moved back',
    'seat-moved-to-middle':
      'moved .. @seatWord .. to the middle; armchair .. to the middle; moved my chair .. middle',
    'ears-raised':
      'sit|sitting up|upright|higher; stand|standing up; when i stand; get up; pillow under me|my; cushion under; sat up; clear sitting up; sit up straight; kneel',
    'ears-lowered':
      'slouch; recline; when we recline; lie|lying down; lie on the floor|rug; sit on the floor; head down; lay back;',
    'obstacle-removed':
      'took|moved|removed|take|put .. table|plant|vase|lamp|toy|bar|door|grille|dog bed .. away|out|off|aside; table away; table .. gone; without the table; opened? .. door; open door; moved .. table; took the grille off; removed the grille; table .. moved; pulled .. three quarters; moved the plant; away .. table; door open; opened the door',
    'screen-removed':
      'screen .. up; roll|rolled .. screen up; cranked the sheet up; without the screen; sheet up; screen rolled|raised; raise|raised the screen; lift|lifted the sheet|cloth; took .. cloth off; sheet .. lifted',
    'one-center-disconnected':
      'disconnected|unplugged .. one|upper|lower|top|second; one plug fell out; plug fell out .. top|upper; top ones plug; only one .. connected|playing; one of the .. centers .. off|disconnected; pulled .. plug of the upper|top|lower; with .. upper|top .. off; only the lower|upper',
    'ambience-changed':
      'set .. room|size|hall .. large|larger|small|bigger; size to large; larger room|hall; changed .. room|hall size; turned .. size up; chose .. larger hall|room',
    'spread-on':
      '@spread on|up|full; turned? up @spread; enabled @spread; opened? .. @spread; put .. @spread|it to half; open up the @spread; with .. @spread on; spread on; put it to half; switched? .. @spread on; more spread; have it on full; @spread .. maximum; with width up; fiddled with .. @spread; with @spread',
    'upmix-off':
      'turn|switch|switched|turned|took off .. @upmix; @upmix .. switched|turned off; bypass|bypassed|disabled .. @upmix; in plainStereo; to plainStereo; plainStereo; turned? upmix off; upmix off; off with the upmix; turned? .. upmixer off; switched .. to plainStereo; no upmix; surround off; with button off; button off; with it off; without .. upmix; in 2ch; direct mode; straight; everything set back to normal; button straight; in stereo; upmixer off; back in stereo; with the surround off; stereo mode',
    'other-listening-mode':
      'other|another|different listening mode|mode|program|sound mode; changed .. mode; tried .. modes; switched .. to .. movie|music mode',
    'size-changed':
      'center to small|large; set .. to small; to small; switched to small; set to large; changed .. small|large; set the center .. small|large',
    'crossover-changed':
      'crossover .. to #; raise|raised|lower|lowered .. crossover; crossover to #; changed .. crossover; set the crossover; crossover up|down',
    'subwoofer-polarity-turned':
      'flip|flipped|turned? .. subwoofer phase|polarity; subwoofer phase switch|to 180; phase to 180; phase switch; switching to 180',
    'equalization-bypassed':
      'turn|switch off .. equalizer|@correction; bypass|bypassed|bypassing .. equalizer|@correction|it; equalizer off; without equalizer|@correction; @correction off|bypassed; turned? .. @correction off; with @correction off; took .. equalizer out; equalizer on or off; with tuning off; with the @correction bypassed; switch|switched|switching .. @correction|it off; without correction; pure mode; correction off',
    'correction-run-again':
      'reran|repeated|ran|run .. @autoSetup again; re-ran .. @autoSetup; ran .. @autoSetup .. again|twice; new calibration; ran the microphone again; repeated the @autoSetup',
    'amplifier-exchanged':
      'new|another|other|different receiver|amplifier; exchanged|replaced|swapped .. receiver|amplifier; three receivers; sent in the amplifier; borrowed .. amplifier|receiver; tried .. receiver|amplifier; bigger amplifier; replaced the amplifier',
    'cable-exchanged':
      'new|other|another|different|expensive|better cables|wire|wires|leads|lead; swapped .. interconnects|cables; exchanged .. cables; changed .. leads|cables|wires; cable turned around; audiophile cables; speaker wire for; bought .. cable|wire',
    'source-exchanged':
      'same .. movie|film|scene .. disc|stream|other|service|source; other player; another player|source|service; from .. disc; same scene on; tried .. players; disc or stream; disc vs stream; films from disc; three sources; other source; same film on disc; fine from disc; from .. stick',
    'polarity-swapped':
      'flip|flipped|swap|swapped|reverse|reversed|cross|crossed .. wires|polarity|+|plus; wires .. reversed|flipped|swapped; swapped .. + and -; reversed the polarity; red .. and black .. swapped; wires reversed; full the other way; crossing the center wires; flipped .. polarity; swapped plus and minus; turned the plug; polarity .. reversed; original wiring',
    'voice-boost-changed':
      'turn|turning|turned|switch on boostMode; boostMode on; with boostMode; tried .. boostMode; boostMode .. helps|helped|level',
    'night-mode-changed':
      'turn|turned|switched .. nightMode on|off; nightMode on|off; with nightMode; tried nightMode; nightMode .. help|helps',
    'display-muted':
      'mute|muted|muting .. display|tele; display .. muted|mute; turned? .. display sound off; tvSpeakers off; television .. on mute; display sound off; television off; tv mute; with the set silent; with the telly muted; turned .. television down',
    'surface-covered':
      'towel|blanket|rug|duvet|cushion|carpet|pillow|foam|felt|cloth on|over|in front|under|before .. shelf|glass|board|floor|it|wall|sideboard; laid .. towel|blanket|rug|duvet|cushion; covered .. shelf|floor|table|board; put .. rug|carpet|towel|blanket; towel on the; blanket .. no; towel did; rug on the; blanket in front; bath towel; cushion in front; duvet on',
    'room-treated':
      'hung .. curtain|duvet|blankets|panel; hanging a duvet; bedding .. piled; duvets .. along; absorber|absorbers|panels|curtains|bass traps; built .. panels; put an absorber; four duvets; curtain .. hung; carpet .. laid; acoustic panels; treated the room; has hung a curtain; foam on; boxes and .. duvets stood; built two panels',
    'headphones-tried':
      'with .. headphones; headphones; on headphones; through headphones; with my headphones',
  },
};
