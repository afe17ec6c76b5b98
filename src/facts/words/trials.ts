/**
 * What owners do to their systems. An act is looked for with what came of it, before or behind it in the same
 * sentence or in the next one; an act without an outcome says nothing.
 */
import type { FamilyWords, Outcome, Phrases } from './lexicon.js';

export const OUTCOME_WORDS: Readonly<Record<Outcome, Phrases>> = {
  gone: `gone; disappear; vanish; stopped|stops; ceased; cure|cured; fix|fixes|fixed; solve|solved; resolved; sorted; mend|mended; put|puts @voice .. front|back|screen|picture;
    went away; go away; problem .. away; be? perfect; perfect|perfectly; bingo; hallelujah; night and day; did the trick; it|that was it; that .. cured; what a difference; wow; magic; heaven; explosion of joy; like a different speaker; for good; all good; never came back; not .. any more; no more @faultWord; no problem|trouble; no|without .. complaint; never|nobody noticed;
    be back; come back .. and|where|again; back to normal|life; back in|on|between|under|where|in .. front|screen|picture|middle|mouth|face|place|they|he|she|it|chin; have|get .. back; stage|voice|width|chest|sparkle|air|highs|treble|singer|image back; again in|on .. middle|picture|screen|mouth; again;
    wide|clear|normal|right|whole|full|free|himself|herself|alike|crisp|good|mortal|here|alone|one|natural|proper|pure|spotless|superb|glorious again|now; all back; himself|herself; turned into himself; turned mortal|normal|human; as it should; where they|it|he|she belong; up where; stand|stood still; stay put; snap|snapped to|onto|into; jump|jumped to|onto .. screen|picture|television|face|middle; click|clicked;
    @voice|he|she|it|sound|sheriff be|sit|stay|come|stand .. on|at|in|with the|her|his face|mouth|picture|screen|lips|television|saloon|middle; on the mouth|picture|screen|face; with her mouth; voice .. match|with .. picture|screen; sounded right; right|fine|ok|good at once|instantly|immediately; good|fine|ok now; it|both|all|everything be fine; be fine; follow everything|all|every; every|each word|words|consonant|syllable|line; all the words; got|get|heard|understood all|every|everything; could follow; understands everything; one mouth; clear as; crystal; pure as; are one; three are one; firm up|firmed; come|came alive; sings again; large and beautiful; spoke .. normally; solid voice; stage .. open|opens; unpack|unpacked; grew; match perfectly|exactly; voices matched; super; spot on; problem solved`,
  better: `better; improve|improvement; help|helped|helps; clear|clearer|clears; open|opens up; much nicer; nicer; tight|tighter; steady|steadier; somewhat|bit|little|lot|much|decidedly|marginally|noticeably good; full|fuller; more body; wide|wider; soften; best; big|huge change|difference; less @faultWord; almost|nearly|basically|mostly gone|away; for the most part; good deal; to a degree; good; fine; great; lovely; ok; nice; wonderful; excellent; sound .. good|right|fine; readable; what man clarity; clarity; crisp|crisper; firm|firmer; asked what he had bought; half cured|gone|away; did wonders; went down to; dip gone; tad wider; easy|easier; nodded; voices moved up; quieter; was right; more intelligible|understandable|natural; sharper; sweeter; warmer; brighter`,
  same: `no|zero|any? change|difference|effect|improvement|help|luck|good|use|gain|odds; not a|one|the jot|bit|whit|scrap|thing|slightest; not .. change|help|matter|difference|improve|better|widen|cure|fix|solve|do|plain|plainer|clear|clearer; no real|noticeable|audible change|difference|effect; zero result; nothing came of; same; unchanged; nothing; zip; nil; zilch; nada; did nothing; no better; made no difference; still .. there|bad|same|muddy|boomy|dull|muffled|mumble|unclear|hollow|thin|echo|low|quiet|double|center|swishes|not|god; still; no avail; in vain; without success|effect|result; to no; didnt? do anything; exactly so; again .. the same; also loaned; makes no odds; same story|thing|result|mush|honk|fault; keeps on; remain; leaves it; just|only|merely|simply loud|louder|quiet|quieter|soft|softer|faint|fainter|a; loud|louder but|not; louder soup|mush|blur|mumble|mud; loud .. but .. not .. better|clear; get louder .. not; just makes; still cannot; louder blur; as bad|before; both|either way; on or off`,
  worse: `worse; bad|worse than; horrible|terrible|awful; made .. worse; even worse; more boomy|muddy|dull; thin|thinner; not as good; weak|weaker; made it thin; a mess; muddy|muddier; ruin; less clear; hollow; music all in the middle; duller; lost .. body|bass|weight; thinner still; poorer`,
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
    'entry-corrected':
      '@moveV|correct|fix|type|enter|retype|reenter|adjust|change & distance|delay|entry|figure|entries|distances; distance|delay|entry|figure & right|correct|corrected|fixed; correct|corrected|fix the distance|distances|entry|entries|number|numbers; typed|entered in .. real|right|correct|taped|measured; typed .. tape|taped; distance|distances .. put|set|corrected right|straight|to',
    'center-turned-up':
      'turn|crank|bump|push|press|boost|nudge|pump|increase|step & center|c|middle|voice|it|that|level & up|louder|hotter; # more loud|louder; # louder|hotter; # on .. center; center|c up; raise|boost|increase .. center|voice|voices .. by|#; more volume; center|middle level|volume|channel|trim .. up; louder .. center; +5; more level|gain .. center',
    'center-turned-down':
      'turn|ease|dial|bring|drop|lower|cut|reduce & center|c|middle|it|that|level & down|lower; center|c down; lower|lowered|reduce|cut .. center level|volume|trim; with trim at minus; trim at -; center at minus; reduce the center; center .. turned down; ease it down|back; less center',
    'center-moved-to-midline':
      '@moveV & center|it|box & midline|middle & right|exact|under|between|above|dead; center in the middle on; center .. centered; put it in the middle; center .. exactly in the middle|center of; shift .. to the middle; right under|above .. middle; middle of everything',
    'center-raised':
      '@moveV & @itCenter & higher|stool|stools|books|book|crate|crates|cartons|barstool|tripod|ladder|bricks|stack|height|elevated|stepladder; @lifted .. center|it|speaker|box .. up .. to .. ear|picture|height; @lifted .. center|it|speaker|box .. up|higher|on .. stool|box|books|crate|chair|boxes; raise|lift it; lifted; raise .. center|box|speaker; on a .. bar stool|chair; with a bar chair .. center on it; center on a bar stool; on three|two|some|a books|boxes|stack|pile; jacked it up; up at tv height; @lifted .. up to .. ear|television|height; sat on a bar stool; on a stool; moved it up; center above the television; put it above; raised it; higher up; up on .. boxes|stool|box|books|stand',
    'center-lowered':
      '@moveV & center|it|speaker|box & lower|down|dangle|below|beneath; lower|lowered the center|it .. down; put .. center .. lower; moved .. down to .. shelf|bench; took it down to; below .. picture|television|screen for; dangle at; hang it lower',
    'center-tilted':
      'tilt|angle|aim|tip|prop|point|lean & @itCenter & up|ear|ears|us|me|head|back|front|down|seat|sofa|face; wedge|doorstop|doorstops|shim|shims & under|front|edge; tilt it|center|up|speaker|box; wedge .. under|front|center; wedge .. edge; aim it; books|book|atlas under .. front; angle it|center; rubber|door|something|doorstop stoppers under .. front; tip it up; under the front edge; front edge .. up; point|pointed .. ears; tipped back; under the front; aims at|to us|me|ears',
    'center-stood-upright':
      '@moveV|turn|rotate|flip|upend & @itCenter & upright|vertical|vertically|end|tall|upended|edgewise; stand|stood .. upright|end; upright for; had it standing up; upended .. it|center; standing up? on end; on its end; tall ways',
    'center-turned-over':
      'turn|flip|roll & center|it|box & over|upside|round|head; turn it the other way up; put it the right way up; badge .. right way',
    'center-pulled-forward':
      '@moveV & @itCenter & forward|forwards|edge|lip|overhang|flush; @moved .. it|center|box|speaker .. forward|edge; pull|slide .. it|center|box|speaker .. forward|edge; pull it forward|out; to the edge; stick out over; slid .. front edge; moved forward; flush with the edge; hang over the edge; pulled it; keeps pulling the center out; flush or not; brought .. to the front; pulled forward|out; to the front edge; over the edge; past the edge; leave it forward',
    'center-taken-out':
      '@moveV & @itCenter & out|outside & @unitWord; pull|take|drag|lift & out & on|onto|and & stool|barstool|chair|floor|table|top|stand; out of .. cabinet|cubby|furniture|compartment|hole|rack|shelf|cupboard|dresser; take it out; on top of the dresser|cabinet|rack; center on a .. chair|stool .. front; stool in front of .. television; put .. in front of|on top of .. cabinet|dresser|rack|trolley; chair in front of .. it; outside the cabinet; taken out of; free standing in front of .. cabinet; had it out; put .. speaker on top; in the open; outside .. furniture; onto .. in front of .. @unitWord',
    'center-unplugged':
      'unplug|disconnect & center|c|middle & lead|plug|cable|wire|it|from|at; center unplugged|disconnected; pull .. center plug|wire|lead; pulled the plug; plug of the center',
    'center-set-to-none':
      'center|c|middle & @moveV|switch|select & none|off; center .. set to none; without the center; phantom mode; turn|switch .. center off; with no center; center off; center disabled; with none; none ; disabled the center; set to none; phantom; without center; without it; with center off; told .. no center; none for .. evening|night|scene',
    'center-exchanged':
      'exchange|replace|swap|try|borrow|loan|lend|lent|hook & another|new|bigger|different|other|spare|friend & center; main|tower|horn|bookshelf|monitor|twin & center & wire|cable|place|spot|lead|position; replaced the center; bigger center; bought another center; shop lent one; loaned for; new center; one bigger loaned; bought a new center; another center; ran .. off the center wire',
    'mains-moved-closer':
      '@moveV & @mains|boxes|speakers|pair & close|closer|together|nearer|narrower|inwards; @mains|boxes|speakers close|closer together; brought .. @mains in|closer; @mains .. nearer; boxes|speakers .. put at # between',
    'mains-toed-in':
      'toe|toeing .. in; turn|angle|aim|swing & @mains|boxes|speakers|pair & in|inward|inwards|toward|towards|seat; toe in; toed .. in',
    'seat-moved-back':
      '@moveV & @seatWord & back|backwards|farther; sit farther back; @seatWord .. back by|back to the wall|farther|further; sat|sit further back; moved back; further away',
    'seat-moved-to-middle':
      '@moveV & @seatWord|chair & middle|center; armchair .. to the middle; moved my chair .. middle',
    'seats-exchanged':
      'swap|trade|change|exchange|switch|rotate & place|seat|chair|spot|side|cushion|end; musical chairs; sit|sat in her|his|my chair|seat|place|spot; moved to my|her|his seat; trade|swap|switch seats|places|spots; in each other',
    'ears-raised':
      'sit up|upright|higher; stand up; when i stand; get up; pillow|cushion under me|my; sit up straight; kneel; on tiptoe; raise my head; stretch',
    'ears-lowered':
      'slouch; recline; when we recline; lie down; lie on the floor|rug; sit on the floor; head down; lay back; duck; slide down',
    'obstacle-removed':
      '@moveV|remove|clear|shift|carry & table|plant|vase|lamp|toy|bar|dog|trunk|tower|ottoman|basket|flowers|frame|tray|candles|books|ornament|grille & away|aside|off|gone|out; take|move|remove|put .. table|plant|vase|lamp|toy|bar|door|grille|dog bed .. away|out|off|aside; table away; table .. gone; without the table|plant|grille; open .. door|doors; grille off; remove the grille; away .. table; door|doors open; roll|push|shove it aside|away',
    'screen-removed':
      'roll|take|lift|raise|crank|pull|unhook|fold|wind|draw & screen|cloth|canvas|sheet|frame|fabric & up|off|away|down|aside; screen .. up; roll .. screen up; without the screen|cloth|canvas; sheet up; screen rolled|raised; raise the screen; lift the sheet|cloth; took .. cloth off; canvas rolled; off its hooks',
    'one-center-disconnected':
      'disconnect|unplug|pull|mute|cover|silence|take & top|upper|lower|bottom|second|twin & plug|wire|lead|one|center|off|it; disconnect|unplug .. one|upper|lower|top|second; one plug fell out; top ones plug; only one .. connected|playing; one of the .. centers .. off|disconnected; with .. upper|top|lower .. off; only the lower|upper|top|bottom',
    'ambience-changed':
      '@moveV|change|turn|choose|have|switch|try & large|larger|bigger|medium|huge & room|hall|size|it; size to large; larger room|hall; change .. room|hall size; turn .. size up; choose .. larger hall|room; size .. at|on|to large|larger',
    'spread-on':
      '@spread on|up|full; turn up @spread; enable @spread; open .. @spread; put .. @spread|it to half; open up the @spread; with .. @spread on; more spread; have it on full; @spread .. maximum; with width up; fiddle with .. @spread; with @spread; switch .. @spread on; turn .. @spread on',
    'spread-changed':
      '@spread & # & to|from|at|up; open it up? to # for; opened it up to; move|turn|set|dial .. slider to; @moveV|turn|open|dial .. @spread to #; slider .. to|at #; spread to #',
    'upmix-off':
      '@offV & @upmix|decoder|button & off|out|away; turn off .. @upmix; @upmix .. switched|turned|be off; bypass|disabled .. @upmix; in plainStereo; to plainStereo; plainStereo; turn upmix off; upmix off; off with the upmix; turn .. upmixer off; switch .. to plainStereo; no upmix; surround off; with button off; button off; with it off; without .. upmix; in 2ch; direct mode; straight stereo; button straight; in stereo; upmixer off; back in stereo; with the surround off; stereo mode;  without the @upmix|hall|program|button|mode|decoder; mode|program off',
    'other-listening-mode':
      'switch|change|press|try|choose|select|hold|cycle|pick & mode|program|decode|decoder|button|setting & movie|other|another|different|plain|normal|regular|down|green|direct; other|another|different listening mode|mode|program|sound mode; changed .. mode; tried .. modes; switch .. to .. movie|music mode; different word came',
    'size-changed':
      'put|set|change|switch|let & center|c|it|speaker & small|large; center to small|large; to small|large; set .. to small|large; changed .. small|large',
    'crossover-changed':
      '@moveV|change|raise|lower|dial|try|type & crossover|frequency|hertz|hz & #; crossover .. to #; raise|lower .. crossover; crossover to|at #; change .. crossover; set the crossover; crossover up|down; set|put|changed|moved|raised|lowered|dialed it|number|him to|at #; put the number|figure at|to #',
    'subwoofer-off':
      '@offV & subwoofer|cube & off|out|away; subwoofer off|unplugged|muted; without the subwoofer; unplug|mute .. subwoofer; no subwoofer; pull the plug of the subwoofer',
    'subwoofer-turned-down': 'turn|bring|dial & subwoofer & down|lower; subwoofer down; less subwoofer',
    'surrounds-off':
      'unplug|disconnect|mute|turn|switch|pull|kill & @surround|ceiling|heights|rears & off|at|from|out|one|night|wires; @surround|heights off|unplugged|disconnected|muted|silent; unplug|mute|disconnect .. @surround; without the @surround; only the front',
    'subwoofer-polarity-turned':
      'flip|turn|switch|set|reverse|change & subwoofer|bass & phase|polarity|180; subwoofer phase switch|to 180; phase to 180|0; phase switch; switching to 180; phase .. flipped|turned|180',
    'equalization-bypassed':
      '@offV & equalizer|@correction|correction & off|out; turn|switch off .. equalizer|@correction; bypass|disable|defeat .. equalizer|@correction|it; equalizer off|out; without equalizer|@correction; @correction off|bypassed|out; with @correction off; equalizer on or off; switch it off; without correction; pure mode; correction off|out; put|switch .. correction out|off',
    'correction-run-again':
      'run|redo|repeat|rerun|do|make|redone & setup|calibration|correction|wizard|measurement|@autoSetup & again|twice|new|fresh|re|third; re-run it|the|.. setup|@autoSetup; reran|repeat|redo|redid .. @autoSetup|it; ran .. @autoSetup again|twice; new calibration; ran the microphone again; run .. again; re-ran it; recalibrated',
    'amplifier-exchanged':
      '@changeV & another|new|other|different|bigger|old|borrowed & receiver|amplifier; new|another|other|different|borrowed receiver|amplifier; exchange|replace|swap .. receiver|amplifier; three receivers; sent in the amplifier; tried .. receiver|amplifier; bigger amplifier',
    'cable-exchanged':
      'change|swap|exchange|replace|renew|buy|new|try|other & cable|wire|lead|interconnect|cables|wires|leads; new|other|another|different|expensive|better cables|wire|wires|leads|lead; swap .. interconnects|cables; exchange .. cables|cable; cable turned around; audiophile cables; speaker wire for',
    'source-exchanged':
      'swap|change|exchange|replace|try|switch|another|other|different & stick|player|streamer|streaming|disc|source|app|service|box|provider|console; same .. movie|film|scene .. disc|stream|other|service|source; other player; another player|source|service; from .. disc; same scene on; tried .. players; disc or stream; disc vs stream; films from disc; three sources; other source; same film on disc; fine from disc; from .. stick',
    'channels-put-right':
      '@moveV|swap|change|sort & cable|wire|plug|wires|cables & right|correct|proper & terminal|output|post|socket|place; put .. cables .. right; plugged .. center into .. right|center|proper',
    'polarity-swapped':
      'flip|swap|reverse|cross|turn|change & wire|wires|polarity|lead|leads|plus|red|plug; wires .. reversed|flipped|swapped; swapped .. + and -; reversed the polarity; red .. and black .. swapped; full the other way; crossing the center wires; swapped plus and minus; turned the plug; polarity .. reversed; original wiring',
    'voice-boost-changed':
      'turn|switch|try|use|set|put & boostMode & on|off|up|level; boostMode on|off; with boostMode; tried .. boostMode; boostMode .. helps|level',
    'night-mode-changed':
      'turn|switch|try|use|set|put & nightMode & on|off; nightMode on|off; with nightMode; tried nightMode; nightMode .. help',
    'display-muted':
      'mute|turn|take|switch|set|bring|put & television|tvSpeakers|display|set & down|off|mute|silent; mute .. display|tele|television; display .. mute; tvSpeakers off; television .. on mute; display sound off; television off|mute; with the set silent; with the television muted; own volume .. down|off to nothing|zero|0; own volume down|off; television volume .. zero|nothing|down',
    'surface-covered':
      '@moveV|cover|put|drape & @softStuff & on|over|across|under|before|front|ahead|floor|boards|shelf|desk|table|glass|tiles|top; @softStuff on|over|in|before|under .. shelf|glass|board|boards|floor|it|wall|sideboard|front|tiles|box|center; laid .. @softStuff; covered .. shelf|floor|table|board; blanket .. no; towel did; rug on the; bath towel; duvet on',
    'room-treated':
      'hang|hung|put|lean|stand|pile|build|add|mount & @softStuff|panel|panels|absorber|absorbers|trap|traps|bookcase|bookcases & wall|walls|glass|window|windows|up|corner|corners|room|along|behind; hung .. curtain|duvet|blankets|panel|quilt; hanging a duvet; bedding .. piled; duvets .. along; absorber|absorbers|panels|curtains|bass traps; built .. panels; put an absorber; four duvets; curtain .. hung; carpet .. laid; acoustic panels; treated the room; foam on; boxes and .. duvets stood; built two panels; quilt up',
    'headphones-tried':
      'headphones|headset|earphones|earbuds & with|on|through|over|put|wear|his|same; with .. headphones; gave me .. headphones; headphones; on headphones; through headphones',
    'other-person-listened':
      'ask|had|got & neighbor|friend|wife|son|daughter|guest & listen|hear; had .. listen; let .. listen',
  },
};
