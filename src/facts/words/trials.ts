/**
 * What owners do to their systems, and the words in which they say what it did. An act is a verb of change with its
 * object and its direction or place, in any order (`&`); a pronoun among the objects stands for what was spoken of
 * last. An act without an outcome says nothing.
 */
import type { Came, FamilyWords, Phrases } from './lexicon.js';

/** Verbs of change, their objects and places. */
export const DOING = {
  shift:
    'move; pull; push; slide; slid; shift; drag; bring; put; place; draw; drew; scoot; nudge; set; stick; stuck; plop; plonk; plunk; park; perch; prop; stack; lift; hoist; raise; hold; held; carry; haul; lug; take; roll; hang; mount; stand; sit; balance; shove; ease; inch; relocate; get; have; dump; rest; pop; tug; yank; heave; wheel; dangle; let; swing; lay; lie; bump; jack; elevate; scooch; dump; drop; lean; run',
  heave: 'lift; raise; hoist; elevate; jack; prop; heave',
  sink: 'lowered; drop; dangle; sink',
  cbox: 'center; it; this; that; box; speaker; unit; thing; him; cabinet',
  prop: 'stool; barstool; chair; box; crate; book; keg; bucket; brick; block; phonebook; tripod; ladder; stand; stack; pile; carton; trolley; bench; bin; tin; sawhorse',
  bayWord:
    'bay; furniture; hole; unit; cupboard; cabinet; cubby; shelf; rack; niche; dresser; compartment; opening; box; slot; wall; hutch; console; trolley',
  pulled:
    'shift; pull; slide; slid; move; drag; bring; draw; scoot; nudge; shove; ease; inch; tug; push; stick; let',
  louden: 'turn; crank; bump; nudge; boost; push; bring; up; raise; increase; put; press; kick; goose; jack',
  soften:
    'turn; ease; back; drop; lowered; take; took; bring; knock; reduce; cut; pull; dial; trim; put; nudge; notch; wind; wound',
  level: 'level; trim; volume; gain; loudness',
  kill: 'bypass; disable; kill; defeat; deactivate; mute; unplug; disconnect; remove; skip; cut; silence; unhook',
  turnOff: 'turn; switch; take; shut; put; set; power; flip; go; leave; knock; flick',
  turnOn: 'turn; switch; set; put; flip; flick; engage; push; press; turned',
  enable: 'enable; activate; engage; use; open; try; add; apply',
  unplug: 'unplug; disconnect; detach; unhook; unscrew; pull; yank; lift; took; take; remove; cut',
  plug: 'plug; cable; wire; lead; cord; banana; connector; terminal',
  change:
    'change; swap; exchange; replace; try; borrow; buy; switch; trade; substitute; loan; lend; lent; hook; test; install; get; bring; use; send; put; upgrade; rent',
  other:
    'new; another; other; different; bigger; second; spare; replacement; expensive; thick; fresh; borrowed',
  flip: 'flip; swap; reverse; cross; turn; switch; invert; interchange; trade; exchange',
  fix: 'correct; fix; change; set; enter; type; retype; adjust; update; dial; put; rectify; re; edit; sort; reset; zero; add; subtract; knock; mend; redo; take; plug; key',
  rerun: 'rerun; reran; run; redo; redid; repeat; do; recalibrate; recalibration; perform',
  again: 'again; twice; over; afresh; anew; third; thrice',
  softThing:
    'towel; blanket; rug; duvet; carpet; pillow; foam; felt; cloth; quilt; mat; mattress; throw; comforter; fleece; wool; sheepskin; bedspread; pad; underlay',
  hardPlace:
    'shelf; glass; board; floor; wall; sideboard; table; tile; mantel; bench; boards; desk; cabinet; ground; hearth; parquet; laminate; stone',
  cover:
    'lay; lie; spread; throw; threw; drape; put; cover; stuff; pad; drag; roll; set; stick; stuck; place; fold; tuck; wedge; line; glue; tape; pack; stack; dump; sleep; slept; wrap',
  treatment:
    'curtain; drape; duvet; blanket; panel; quilt; absorber; carpet; rug; bookcase; mattress; tapestry; foam; trap; bedding; sheet; towel; felt; baffle; treatment',
  treated:
    'hang; put; pile; add; build; buy; install; cover; treat; glue; mount; stack; place; roll; draw; drew; close; stand; lean; line; lay; fit; plaster; fill',
  clear:
    'take; move; roll; remove; pull; carry; shove; push; clear; slide; slid; drag; shift; get; chuck; kick; evict; relocate; lift; swing; tidy',
  obstacle:
    'plant; vase; lamp; toy; trunk; table; ottoman; grille; grill; door; basket; figurine; flower; photo; stuff; junk; tree; cat; dog; pot; fern; bottle; statue; candle; clutter',
  away: 'away; aside; off; out; elsewhere; back; clear; sideways',
  cloth: 'screen; screenCloth; cloth; canvas; sheet; fabric; material',
  sitter:
    'wife; husband; son; daughter; friend; buddy; neighbor; kid; partner; brother; sister; dad; mom; mum; mother; father; guest; mate; nephew; niece; cousin; roommate; grandson; granddaughter; someone; somebody; colleague; visitor; she; he; they',
  seatPlace: 'seat; chair; place; spot; cushion; sofa; mainSeat; position; armchair; there; recliner',
  angle: 'tilt; angle; aim; tip; cock; incline; slant; lean',
  over: 'turn; flip; roll; rotate; put; stand; set; tip; have',
  dial: 'raise; set; change; move; bump; lowered; put; try; up; dial; drop; push; increase; turn; adjust; reset',
  upend: 'stand; set; put; turn; rotate; flip; prop; have; make; try; tip; place',
  distWord: 'distance; delay; entry; figure; entries',
  crossoverWord: 'crossover',
  headWear: 'headphones; headphone; earphone; earbud; headset; earpods',
} as const;

/** Something is done to an object, perhaps to some place: in the active, with a particle in front, in the passive. */
const done = (verb: string, object: string, to?: string): Phrases =>
  to === undefined
    ? `${verb} .. ${object}; ${object} =was|=were|=been|=being .. ${verb}; ${object} i|we have ${verb}`
    : `${verb} .. ${object} .. ${to}; ${verb} ${to} .. ${object}; ${object} =was|=were|=been|=being .. ${verb} .. ${to}; with .. ${object} ${verb}? ${to}`;
/** The object in another state than before: "with the upmix off", "upmix off". */
const state = (object: string, to: string): Phrases =>
  `with|without|having .. ${object} .. ${to}; ${object} ${to}; ${to} with .. ${object}`;

export const OUTCOME_WORDS: Readonly<Record<Came, Phrases>> = {
  gone: `problem|trouble|issue|@faultWord be? gone; gone; disappear; vanish; cease; stop|stopped|stops; cure; fix|fixes|fixed it|that; solve; resolve; sorted; mended; heal; trouble|problem|voice|it|sound|dialog be? perfect; perfect; perfection; problem solved|gone|away; did the trick; that|it was it; put|puts @voice .. front|back|screen|picture; solid voice; stage .. open|opens|opened; unpack; grew; heard|understood all|every|everything; voice .. up where; right|fine|ok|good at once|instantly|immediately; stand|stood still; one mouth; sweet again; bingo; hallelujah; hurray; hooray; wow; voila; eureka; magic; heaven; bliss; night and day; what a difference; like a different speaker; spot on; spotless; flawless; pure; crystal; clear as; clear at once; perfectly|completely|totally|absolutely clear; every|each|all .. word|words|syllable|consonant|line; get|got .. all|every .. words|word; understand|understands|understood everything|all; could follow|understand; followed; back to normal|life; go|went|come|came|jump|snap|move|land|drop .. back to|on|under|into|in|between|where; come|came|be|have|with|get .. back; @voice|stage|bass|body|chest|sparkle|treble|highs|life|warmth|width .. back; back between; come|came alive; come|came to life; firm up; firmed; firm; snap|snapped|jump|jumped|lock|locked|pop|popped|land|landed|sit|sat|settle|glue|stand|be|come|came|go|sitting|move|drop .. to|on|onto|in|at .. face|mouth|lips|screen|picture|television; on the mouth; with her|his|their|the mouth|picture|lips; where .. belong|should; belong; instant; instantly; right away; immediately; at once; straight away; @voice|he|she|it .. himself|herself|itself; turned into himself|herself|itself; at last; once more; be|sound|look|turn|speak|sing|become|feel ... again; =wide|=clear|=normal|=whole|=full|=firm|=natural|=alike|=human|=free|=good|=fine|=crisp|=steady|=open again; speak .. alike; speak .. normally; never noticed|noticed it; nobody noticed; nobody complained; no problem|trouble|complaint|issue; no more @faultWord|echo|echoes|mumble|boom|barrel|trouble; never came back; stays away; come on picture; was|were|is|are|its|sounds|sounded|be =fine|=great|=lovely|=wonderful|=excellent|=super|=superb|=fantastic|=brilliant|=ok|=okay|=glorious|=beautiful|=right|=normal|=natural; =fine; =lovely; =great; =wonderful; =excellent; =super; =superb; =fantastic; =brilliant; =glorious; =flawlessly; both fine; all fine; for good; in the middle again; click; clicked; away; without .. complaint; as it should; how it should|must; be one; are one; explosion of joy; large and beautiful; human; sings; match|matched|matches perfect|perfectly|exactly|now|right|well; there it|he|she =was|=were; be standing in front of; like it should; mend; mended; melted away; lifted; @voice =in|=between the picture|speakers|screen|middle; voice .. in front; be standing in front; hands off; opened .. right .. up|across; spread .. wide|out; not|no .. need subtitles; @faultWord|all|it be? over|history|past|cured|finished; put an end to|of; that be .. end|cure|answer|solution; all|everything|things be|go|run|go .. well|right|good|fine|okay|perfect; everything|all|things|it|now fit|fits; fell|fall|falls|falling|come|came into place; no complaints; all clear; clear everywhere|now|again; =content|=happy|=pleased|=satisfied|=delighted|=thrilled|=overjoyed; cheer; joy|pleasure|treat|delight; not|neither|none|nobody|cannot ... any more|anymore|longer; gives|gave|give|given .. @stageWord|@voice|body|bass|podium back; took|take|takes care of; without .. murmur|hitch|flaw|fault; have ... chest|body|bass|consonants|treble|weight|life|voice again; could|can hear|follow|understand .. again|every|all|everything; follow|catch|get|caught|got|hear|heard the whole|every|each; superb; @voice|mouths|everybody|everyone|he|she|they .. back? in|on|at the? picture|screen|mouth; =awake|=wakes; in focus; fill|filled out; @faultWord|@barrel|gargle|drone stop|stopped|lost at once; not|never came|come|comes|heard|hear .. again; like new; mouths on the screen; none the wiser; job done; sound|sounded|was|is|were|be .. as it should|normally|right|pleasant|intelligible; good as new; =good|=fine|=ok|=okay|=right|=perfect now`,
  better: `took|take care of .. only; =better; =nicer; =clearer; =crisper; =tighter; =steadier; =fuller; =warmer; =wider; =cleaner; =easier; =softer; =calmer; =brighter; =sharper; =closer; =richer; improve; improvement; help|helped|helps|helping; open|opens|opened up|out; opens; opened; more body|bass|life|air|presence|detail; softened; tamed; less @faultWord|boomy|boom|echo|harsh|honk|muddy|dull; big|huge|real|noticeable|clear|definite|massive change|difference|improvement; almost|nearly|mostly|basically|partly gone; half .. cured|gone|solved; readable; what man clarity; clarity; asked what he had bought; wonders; went down to; dip gone; voices moved|went up; nodded; =good; somewhat|bit|little|decidedly|marginally|noticeably good; breathe; =best; =clear; nice; up where; =quieter; was right; good deal; for the most part; more intelligible|understandable|natural; =firmer; =sweeter; bearable; tolerable; acceptable; usable; works|worked; =happier; =freer; =opener; =livelier; =smoother; =nearer; more open|direct|alive|lively|intelligible|distinct|present|spacious|focus; touch|shade|hair|tad good; step forward|in the right direction; took|takes the worst|edge; lot|bit|somewhat|slightly|touch improved|good; quite intelligible|understandable; mended|fixed|cured .. only; only .. mended|cured; remains|left a bit|little; a bit|little|trace remains|remain|left; =pleasanter`,
  same: `same; unchanged; nothing; nada; zilch; zip; nix; =nil; zero result|gain; no good|better|dice|joy|go|cigar|different; no avail; in vain; not|no .. jot|iota|bit|whit|hair|inch|smidge|sausage|scrap; either way; as bad; nothing came of; still .. there|bad|same|muddy|boomy|dull|muffled|mumble|unclear|hollow|thin|echo|low|quiet|double|center|not; to no; exactly so; again .. the same; keeps|kept on; remain; leaves it; just|only|merely|simply .. loud|louder|quiet|quieter|softer|soft|faint; merely; louder|loud but; loud .. but .. not .. better|clear; got louder .. not; louder|loud .. not; louder|quieter blur|soup|mush|mess|barrel; changed|changes =neither|nothing|little; did|does|do =neither|nothing|zip|squat|nada; wasted; for naught|nothing; didnt|doesnt do anything|much|a thing; identical; also loaned; have|had it too; persist; did not budge; indifferent; like|as|than|just|exactly .. before|ever|always; like|than it was; everything|all|things|it be =as it was; =still the|a|an|exactly|everything|hear|happens; not .. different; just|exactly|equally|every bit =as|=so? =bad|=wrong|=dull|=muddy|=boomy|=unclear|=quiet|=loud; stay|remain .. =as|=so|=same; =nope; =helped|=changed|=mended not|nothing|nowt; none the better; cannot hear .. difference; half .. as bad; =only|=just =louder|=quieter|=softer; =louder|=quieter|=shrill @voice|@faultWord|@barrel|soup|mud|murmur|nose; as if nothing; no =clearer|=better|=closer|=different; for nothing; wasted time; no wiser; fruitless; pointless; no|zero|any|nil .. change|difference|gain|odds|result|effect|improvement|help|luck|use|avail|success|joy; without .. difference|effect|improvement|luck|avail|success|result; not .. change|help|matter|difference|improve|better|move|widen|cure|fix|solve; still @trouble|there|so; as bad`,
  idle: `settings|menu|setup|configuration|distances|levels|everything|rest|volume else? be? unchanged|same|untouched; without|not changing|touching|altering; nothing else =changed|touched|altered; same settings|seat|scene|film|volume|level|place|test; not .. touch|touched|alter`,
  'cannot-tell': `not .. tell|say; cannot|couldnt|honestly .. tell|decide; hard to tell|say; kidding myself; may|might be imagining; imagining it; not sure .. difference|better|helped|change; cannot make up my mind; either|maybe better or|maybe worse; some evenings better`,
  worse: `=worse; even worse; more boomy|muddy|dull|hollow|harsh; =thinner; =duller; =muddier; =boomier; =harsher; =weaker; =fainter; not as good; made it thin|dull|harsh|worse; =terrible; =awful; =horrible; =dreadful; a mess; ruined; less clear|body|bass; music all in the middle; lost .. body|bass|chest|weight; made .. worse; bad|worse than; backfired; unbearable; =harder|=tougher .. follow|understand|hear|catch|make; even =harder|=stranger|=duller|=thinner|=muddier; =stranger; =weirder; from bad to worse; =shriller; =harsher|=hollower; more @trouble; lose|lost all? .. bass|body|life; nothing but trouble; =worst; =hollow`,
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
    'center-turned-up': `${done('@louden', '@cbox', 'up|louder|hotter')}; turn|turned|crank|bring .. @voice .. up; raise|boost|bump|increase|up .. center .. #; @louden up? .. center .. @level .. up|#; @louden .. it up .. by? #; give .. center ... #|more|notch|click; put|set|run|ran .. center|it .. at|to|on plus; make .. @cbox|voice .. louder|hotter; crank|boost|goose|up .. @cbox; up .. center @level; raise|boost|increase|up .. center @level; center up; raising it; pressed the center volume up; the level .. right|mended|up; # more loud; # louder|hotter; # on .. center; center + #; + #; center @level .. up; more volume; loud .. center; @level .. put right; +5`,
    'center-turned-down': `${done('@soften', '@cbox', 'down')}; ease|back|knock|drop|cut|trim|took .. center|it .. off|back|down|to|by .. #?; lowered|reduce|drop|cut|trim|reducing|lowering .. center|it .. @level|#; @soften .. center @level .. down|to|by|back; ${done('lowered|reduce|drop|cut', 'center @level')}; center down; with trim at minus; trim at -; center at minus; @soften .. that down; # less|lower|down on .. center`,
    'center-moved-to-midline': `${done('@shift', '@cbox', 'middle|midline')}; @shift .. @cbox ... middle|midline; @shift .. @cbox .. dead|to|into|in|over .. center .. of|under|between|below|on; @shift .. @cbox mainSeat; @shift .. @cbox mainSeat under|below .. screen|@display; @shift .. @cbox ... on .. @prop in .. middle; @shift .. @cbox down|over|right|smack? right|smack? in|to .. middle; =centered|=centred|=centering|center it; @shift .. @cbox ... middle of; @shift .. @cbox dead center; have|with|had .. @cbox centered|in .. middle|centered; @cbox =was|=were .. centered; @cbox in the middle; plop|put|set|place|stand .. center ... middle of everything`,
    'center-raised': `${done('@heave', '@cbox')}; ${done('@shift', '@cbox', '=up|=higher|level')}; @heave .. @cbox .. up .. under|to|below .. @display; @shift .. @cbox .. on|onto|upon|atop ... @prop; @shift .. @cbox ... to|at ... height; hold|held|prop .. up on .. @prop; stack .. @prop and set|put the? center; prop|put|shove|stick .. stool|crate|box|bricks|books .. under|beneath .. @cbox; @cbox .. up .. to|at|on .. ear|picture|height|screen|level; with .. @cbox .. raised|=higher|up; @cbox on .. bar|beer|bar stool|chair|crate|keg|box; on three books; on a|an bar|beer|old? stool|crate|keg; =higher; =higher up; on a box; at|to television height; =raised; =raising; =lifted; =lifting; =elevated; jack it up; put it above; from up there`,
    'center-lowered': `${done('@sink', '@cbox')}; ${done('@shift', '@cbox', 'down|=lower')}; @shift|let .. @cbox .. below|under|beneath .. @display|screen|picture; @shift .. @cbox .. down .. to|on|below|under; let .. @cbox .. dangle|hang|drop; with .. @cbox .. =lower; =lowered; lowered it; drop|lowered .. @cbox .. to .. ear height|level; @shift .. @cbox down .. on|to .. bench|shelf|floor`,
    'center-tilted': `${done('@angle', '@cbox')}; @angle|point|pointed .. @cbox .. up|down|toward|towards|at|back; tilt|angle|aim|tip|lean|cock .. up; with .. @cbox .. tilted|angled|aimed|tilt|pointing; wedge|doorstop|shim|rubber|book|door|foot|feet|block|coaster|eraser|atlas|stoppers|something|cardboard|magazine|shims .. under|beneath .. front|edge|it|center|nose; prop|jack|lift|raise .. its|the? front|nose; =wedge; under the front edge; front edge .. up; tip back; angling|angled it; toward|at my|our|the ears; =tilting`,
    'center-stood-upright': `${done('@upend', '@cbox', 'upright|vertical|standing|tall|end')}; @upend .. @cbox .. up? vertical|upright|tall; @upend .. @cbox .. on .. end|side; make .. @cbox stand; @upend .. @cbox stand|standing up|upright; have .. @cbox .. stand|standing .. up|upright|end; rotate|turn .. @cbox .. 90; with .. @cbox .. upright|vertical|on .. end|standing; upright for a test; =on its end; stand|stood up? on end`,
    'center-turned-over': `@over .. @cbox .. over|upside|around; ${done('@over', '@cbox', 'upside|over')}; @over .. @cbox .. upside .. down; @cbox =was|=were .. @over? upside down; @over .. @cbox .. other way up|round; @over .. @cbox ... on its head; @over .. @cbox bottom up; with .. @cbox .. upside .. down; invert .. @cbox; put it the right way up; put .. @cbox upside down; rotate|turn .. @cbox .. 180 degrees; rotate|turn .. @cbox ... 180|180deg; rotate|turn it 180 _?`,
    'center-pulled-forward': `${done('@pulled', '@cbox', 'forward|forwards|ahead|edge|lip|closer|nearer|flush|front')}; @pulled .. @cbox .. up|out? .. to|at|with .. edge|lip|front; with .. @cbox .. over|at .. edge; let|have|had .. @cbox ... over .. edge; hang|stick|stuck|hung|sticking|hanging out? over .. edge|shelf; flush with the|its edge|front; to the front? edge; sticking out over; =pulled|=pulling|=pull|=slid|=scooted it out; =pulled|=pulling|=pull|=dragged|=slid|=inched .. @cbox; flush or not; moved forward; pulled forward|out; pull .. center .. out; =brought .. @cbox .. front`,
    'center-taken-out': `@shift .. @cbox .. out of|onto|from .. @bayWord; @shift .. @cbox .. out of|onto .. @prop|there; =took|=taken|=had|=got|=lifted|=hauled|=take .. @cbox out; out of .. @bayWord; @cbox =was|=were|=been .. out|taken; @shift .. @cbox .. on|onto .. @prop .. right? in? front; @shift|sat ... on ... @prop ... front .. of ... @bayWord|television; @shift .. @cbox ... on|onto .. top .. of .. @bayWord; =put .. @cbox on top; on top of the @bayWord; =had it out; @shift .. @cbox .. in .. open; in the open; outside .. @bayWord; free standing in front of; center on a .. chair|stool .. front; chair|stool in front of .. @bayWord|television|it; taken out of|from .. @bayWord; with .. @cbox out|free .. of`,
    'center-set-to-none': `set|put|switch|go .. center|it .. to|on|as .. none|no|off; center|it .. none; ${done('@turnOff', 'center', 'off')}; ${done('disable|kill', 'center')}; phantom|phantoms .. mode|image|center?; =tried|=went|in|with .. phantom; no|without the? center; without it; ${state('center', 'off|disabled|out')}; none; center =was disabled|off|none; told .. no center; take|took .. center .. out .. of .. menu|setup|configuration`,
    'center-unplugged': `=unplug|=unplugged|disconnect|disconnected|detach|unhook|unscrew .. center; pull|yank|take|remove|lift|unscrew|undo|detach|unhook .. center .. @plug; pull|yank|take|remove|undo|detach|unhook .. its @plug; pull|yank|take|remove|undo|detach|unhook .. @plug .. of|on|off|from|at .. center|it; =unplugged it; with .. center .. unplugged|disconnected; center =was|=were .. unplugged|disconnected`,
    'center-exchanged': `@change .. @other|=old center; swap|exchange|replace|change .. center .. for|with|by|speaker|under; ${done('exchange|replace|swap', 'center')}; @other center; second|other|another sample|specimen .. of .. center; change .. center; hook|hooked .. up? .. my? @other|=old center; bring|put|hook .. @other center; loaned for; shop lent one; one bigger loaned; two centers and; run|ran|hook|connect|put .. main|tower|bookshelf|horn|it .. on|off|to .. center wire|lead|cable|terminals|output; technician replaced .. center`,
    'mains-moved-closer': `${done('@pulled|set|put', '@mains|=speakers|=boxes|=both|them', 'closer|together|nearer|inward|inwards')}; @pulled .. both|the? @mains|=speakers in; @mains =was|=were .. @pulled in; narrow .. @mains|distance|base; @shift .. @mains .. # .. apart; slid|slide|push|move|pull|bring .. =speakers|both closer together; @shift both @mains|towers inward|inwards|in|closer|together; set .. @mains|towers # apart; =boxes|=speakers|@mains .. put|moved|stood .. at .. between|apart; =boxes|=speakers|@mains .. put|moved|stood .. at # between|apart; @mains close|closer together; with .. @mains|=speakers .. closer|together|nearer`,
    'mains-toed-in': `toe|toed|toeing .. @mains|them|=speakers .. in; toed in; @mains be toed in; toe in .. @mains|them; toe .. @mains .. in; toe in the @mains; @mains be toe in; toe|toeing in; toe-in; more|some toe; @mains =was|=were .. toe .. in; ${done('turn|angle|aim|point|swivel|rotate|twist', '@mains|=speakers|them|both', 'in|inward|inwards|toward|towards|at')}`,
    'seat-moved-back': `${done('@shift', '@seatWord', 'back|backward|backwards|farther')}; @shift .. @seatWord .. back; =scooted|=pulled|=slid|=pushed my|the heads; sit|sat|sitting .. farther back; @seatWord .. back by|to the wall|farther; moved back; scoot|roll|slide back; moved my|the seat # back`,
    'seat-moved-to-middle': `${done('@shift', '@seatWord', 'middle|midline')}; @shift .. @seatWord ... middle|midline; center .. the|my|our @seatWord; @shift .. @seatWord .. to .. center .. of; line|align|lined .. @seatWord .. up .. with; with .. @seatWord .. in|at .. middle|midline|mainSeat; @shift .. @seatWord ... mainSeat; @shift .. @seatWord .. to .. center of the room; with my|the seat|chair in .. middle`,
    'seats-exchanged': `swap|trade|exchange|switch|change .. seat|seats|place|places|spot|spots|sides .. with|on|in|around?; =traded|=trade|=swapped|=exchanged|=switched|=swap .. places|spots|seats|sides; musical =chairs; =took|=take|=takes .. his|her seat|chair|place|spot; i|we sit|sat .. in|on|at .. her|his|their seat|chair|place|spot; she|he|wife|husband|daughter|son sit .. in|on|at my|mine seat|place|spot|chair; all|we .. sit .. in her|his own seat|chair; once we traded; =changed =chairs|=seats|=places`,
    'ears-raised': `=sit|=sat|=sitting|=sits =up; sit|sat|sitting up? straight|taller|upright|tall|=higher; stand|stood|standing up; when i|we|you stand; get|got up; put|stuck|shoved|with|sat|a .. pillow|=cushion|book|=cushions|phonebook .. under .. me|my|us|bottom|butt; sit|sat on .. =cushions|pillow|books|armrest|arm; raise|lift|stretch .. my .. head|neck|ears|chin; with .. ears|head .. =higher|=up|raised; kneel|knelt .. on .. sofa|seat; =kneeling|=knelt; perch .. on .. armrest|arm|back; on tiptoe; pillow under me`,
    'ears-lowered': `slouch; slump; recline; =lay|=lie|=lies down; i|we lying down; lie|lying|lay .. on .. floor|rug|carpet|sofa; sit|sat|sitting .. on .. floor|rug|carpet|ground; slide|slid down .. in|on .. seat|sofa; =duck|=ducked|=ducking; crouch; squat; with .. ears|head .. down|=lower; lowered .. my head|ears; lie|lean back in .. seat; head down; lay back; slouching`,
    'obstacle-removed': `${done('@clear', '@obstacle', '@away')}; @clear it|him|them aside|away|out|off; remove|removed .. plant|vase|lamp|grille|table|stuff|junk|toys|fern|cover; =took .. grille|grill|door|cover off; with .. @obstacle .. out of the way|gone|away|open|removed|aside; without .. table|plant|grille|door|vase; open|opened|opening .. door; door .. open|opened; clear|cleared .. front; @obstacle =was|=were .. moved|removed|gone|away; @obstacle away|gone|moved; move|moved .. plant|table; carry|carried .. @obstacle .. off|away; pulled .. three quarters; grille off; out of the way`,
    'screen-removed': `${done('roll|raise|crank|lift|wind|hoist|pull|fold', '@cloth', '=up|away|aside|off')}; =rolled|=raised|=lifted|=cranked .. @cloth|frame .. off|up|away; take|took|unhook|remove|lift|removed .. @cloth .. off|down|away|aside|out; took down|off .. @cloth; remove|removed|unhook|raise|raised .. @cloth; @cloth =was|=were .. taken|rolled|lifted|removed|raised|up; ${state('@cloth', '=up|raised|rolled|lifted|off|away|down')}; without .. the|a|any screen|cloth|canvas|sheet; pull .. fabric|cloth|sheet .. away|aside|off`,
    'one-center-disconnected': `@unplug|turn|switch|kill|mute|cut|took .. one of; @unplug|turn|switch|kill|mute|cut|took|take|power .. off? .. upper|lower|top|second|bottom .. one|center|off?; plug .. fell|fall out; pull|yank|take|took .. @plug .. of|out|on|from .. upper|top|lower|bottom|one|second|them; with .. just|only one .. connected|playing|center; only|just one .. connected|playing; only|just .. lower|upper|top|bottom .. one? playing|connected|on; with .. upper|top|lower|bottom|second .. off|disconnected|unplugged|out; run|ran|played just|only one; top|upper|lower|bottom .. =was|=were .. unplugged|disconnected|off; one of the .. centers .. off|disconnected; only the lower|upper; took|take|switch|turn .. upper|lower|top|second|bottom center off`,
    'ambience-changed': `set|put|change|turn|make|choose|pick|raise|increase|switch|reduce|lowered|try|move|go|went .. room|hall .. size? .. to|on|at? large|medium|small|bigger|larger|smaller|up; change|raise|reduce|turn .. room|hall .. size; room|hall size .. =was|=were changed|raised|set; size .. to|at|on large|medium; =larger|=bigger|=smaller|large|medium room|hall; size .. up; from small|medium|large .. to .. large|small|medium hall|room; picked .. hall; make .. hall|room bigger|smaller; with .. size .. at|on large|small|medium`,
    'spread-on': `${done('@turnOn', '@spread', 'on|half')}; @enable|raise|boost|open .. @spread; ${done('enable|activate|engage', '@spread')}; ${done('@louden', '@spread', 'up')}; ${state('@spread', 'on|up|back|full|maximum|active')}; put .. it to half; have .. it on full; fiddle .. @spread; more @spread; with @spread; set .. @spread .. to on|half; @spread .. to half`,
    'spread-changed': `set|put|raise|change|move|push|up|open|lowered|drop|slide|slid|try|dial|turn|went .. @spread|slider|it .. to|at|on|from|by|up|down .. #; @spread|slider .. went|from|to|at .. #; slider|it .. to half; change|up|raise|lowered|drop|moved .. @spread .. a? bit|notch|step|little|half; set|put .. @spread .. #`,
    'upmix-off': `${done('@turnOff', '@upmix', 'off')}; ${done('@kill', '@upmix')}; ${state('@upmix', 'off|out|away|bypassed|disabled')}; off with .. @upmix; without|no .. @upmix|upmix|upmixer|surround|upmixing; in|to|with|on|into|=plain plainStereo; plainStereo; =in|=with stereo; back in|to stereo; switch|go|went|change|set|put|listen|play|played .. in|to|into|on .. plainStereo|stereo|2ch; hit|press|push|chose|use|used|pressed .. stereo|direct|straight .. button|mode?; ${state('button|it|mode', 'off')}; button straight; ${done('@turnOff', 'it|button|everything', 'off')}; everything set back to normal; stereo mode; surround .. off|out; only|just stereo; off`,
    'other-listening-mode': `change|try|choose|pick|switch|use|cycle|go|went|put|set|select|tried|chose .. @other|movie|plain|standard|dialog|film|cinema|direct|game|news|all .. @upmix|mode|modes|program|decode; change|changed .. upmix|mode|@upmix; @upmix|mode =was|=were changed; @other @upmix|mode|program; with .. @other @upmix|mode|program; cycle|went .. through .. modes|mode|programs; switch|switched|switching .. to .. movie|film|standard|dialog|news|game|plain|cinema|theater|decode mode|program|decode?; plain decode mode; party mode off; put|set .. it in|on|to .. dialog|movie|cinema|standard mode; put it in the boostMode`,
    'size-changed': `set|switch|change|make|put|flip|tell|told|toggle .. center|mains|=speakers|it|all .. to|on|as|is? .. small|large; =from large|small .. to small|large; center|it .. to small|large; with .. center|it .. on|to|as|at small|large; size .. to small|large; make|made .. center|it small|large; receiver .. it be small|large; center =was|=were set .. to small|large; to small`,
    'crossover-changed': `${done('@dial', 'crossover', 'up|down|=higher|=lower')}; @dial .. crossover .. to|at|on|from|by|up|down #?; @dial .. crossover; crossover =was|=were .. @dial; crossover .. to|at|up #|down; with .. crossover .. at|on #; @dial .. =higher|=lower|different|another crossover; =higher|=lower|different|another crossover; @dial .. it|that .. to|on|at|up # for; @dial .. it|that to|at|on|up .. to? #; raise|set .. it .. to .. hz`,
    'subwoofer-turned-down': `${done('@soften|shut', 'subwoofer', 'down|back')}; lowered|reduce|drop|cut|trim|ease|back .. off? .. subwoofer .. @level?; @soften .. subwoofer .. by|to|level .. #|down; subwoofer =was|=were .. turned|taken down; subwoofer .. down; subwoofer level .. down|lower`,
    'subwoofer-off': `${done('@turnOff|power', 'subwoofer', '=off|=out')}; ${done('@kill|unplug', 'subwoofer')}; ${state('subwoofer', '=off|unplugged|muted|disconnected')}; pull|yank .. plug .. subwoofer; without .. subwoofer; shut .. the? subwoofer .. down; @turnOff .. black|bass cube|box off; =turned|=switched|=powered|=shut off .. subwoofer`,
    'surrounds-off': `${done('@turnOff', '@surround|ceilings|rears', 'off')}; ${done('@kill|unplug|mute', '@surround|ceilings|heights|rears')}; ${state('@surround|surrounds|heights|rears', 'off|unplugged|muted')}; pull|pulled .. @surround|back .. @plug|plugs|boxes; pull|pulled .. @plug|plugs|wires .. of|from|on|at .. @surround|back; without .. @surround|heights|ceilings; pulled both @surround plugs; surrounds out`,
    'subwoofer-polarity-turned': `@flip|set|put|move|change|switched .. subwoofer .. phase|polarity|180; @flip|set|put|move|change|switched .. phase|polarity .. of|on|at|switch|knob .. subwoofer|180|it?; subwoofer .. phase|polarity .. be? flipped|reversed|changed|inverted|180; phase .. to|at|on 180; @flip .. phase switch|knob; switch|flip|set|switching .. to 180; ${done('invert|reverse|flip', 'subwoofer')}; with .. subwoofer .. 180|reversed|inverted; subwoofer .. at|to|on 180; =at 180; phase .. =was|=were .. flipped|reversed; reverse|reversed .. subwoofer .. polarity; phase switch|knob`,
    'equalization-bypassed': `${done('@turnOff', '@correction', 'off|out')}; =in =pure mode; ${done('@kill', '@correction')}; ${state('@correction', 'off|out|bypassed|disabled')}; without .. @correction; @correction on or off; took|take .. @correction .. out|off; bypass|bypassing it; in? =pure =mode; whether @correction be on; no @correction`,
    'correction-run-again': `@rerun .. @autoSetup|setup|it|correction|calibration ... @again; =rerun|=reran|recalibrate|=redid|=redo|=redone|repeat|repeated .. @autoSetup|setup|correction|it|calibration|measurement|microphone; re ran|run .. @autoSetup|setup|it|correction; =recalibrate|=recalibrated; new|fresh|second calibration|@autoSetup|run|measurement; @autoSetup|setup|calibration =was|=were .. repeated|redone|rerun|run again?; ran|run .. @autoSetup|setup .. again|twice|over; @autoSetup .. again|twice; setup again`,
    'amplifier-exchanged': `@change .. @other|=old receiver|amplifier|processor|avr; ${done('exchange|replace|swap|change', 'receiver|amplifier|processor')}; @other receiver|amplifier|processor; =send|=sent in .. amplifier|receiver; borrow|borrowed .. amplifier|receiver; three receivers; bigger amplifier; hook|tried|connect|put .. to|on|into .. @other|=old receiver|amplifier; tried .. receiver|amplifier`,
    'cable-exchanged': `@change .. @other @wire|interconnect; ${done('exchange|replace|swap|change', '@wire|interconnect')}; exchange|replace|swap|change .. center @wire; @other @wire|interconnect; @other speaker? @wire; cable turned around; audiophile cables; rewire .. with .. @wire?; run|ran .. @other @wire; @wire exchange|replace|swap; exchange|change .. its @wire; exchange|replace|swap|change the|my|all|both @wire; speaker wire for; buy|bought .. cable|wire; put .. in .. @other @wire; have .. exchange its cable`,
    'source-exchanged': `@change|play|watched|put .. @other player|streamer|stick|service|source|app|disc; swap|change|replace .. stick|streamer|player|source|streaming|box .. stick?; @other player|source|service|streamer|stick|app; same|the .. movie|film|scene|show|recording|episode .. disc|stream|other|service|source|stick|app; disc or|vs stream; from disc|another|stick|usb; films from disc; switch .. to .. disc|player; play|played .. from .. disc|stick|usb|other; same scene|film|movie on; try|tried .. players|sources|services|apps; three sources; fine from disc; played .. it from`,
    'channels-put-right': `put|move|plug|swap|rewire|connect|set|switch|place .. @wire|plugs|it|them|center|wiring .. on|into|to|in|back|where? .. right|belong|proper|correct .. output|terminal|post|channel|place?; correct|fix|sort .. wiring|@wire|connections .. out?; wiring =was|=were .. corrected|fixed|right; plug|put|connect .. center .. into|to|on|in .. center|right|proper|correct .. output|terminal|post; rewire .. it? correctly|right|properly; @wire .. belong; plugs where they belong; on their proper posts`,
    'channels-swapped': `@flip|swap|exchange .. left|leftMain|l and? center|c .. output|outputs|amplifier|receiver|back|wire|wires|leads|plugs|channels; @flip|exchange .. center|c and? left|leftMain|l .. output|amplifier|receiver|back|leads|plugs|wires?; @flip .. l|left|leftMain and c|center at|on .. amplifier|receiver|back; @flip .. outputs|channels .. at?; connect|put|plug .. center .. to|on|into .. left|leftMain .. output|channel|terminal|terminals; swap of .. left|center|leftMain; with .. left|leftMain and center swapped; swapped at the amplifier|receiver; swap .. at the amplifier; center .. on the left output|terminal`,
    'polarity-swapped': `@flip .. plus and? minus; @flip .. red and? black; @flip .. + and? -; @flip .. polarity .. of? .. center?; polarity|phase .. =was|=were .. reversed|flipped|swapped|changed|turned; reverse|flip|cross|swap|invert .. center|its|the|two|speaker? @wire .. on|of|at? .. center?; with .. @wire|polarity .. reversed|crossed|flipped|swapped; @wire .. be? reversed|flipped|swapped|crossed; turn .. plug .. around|round; crossing .. wires; flip .. two wires; full the other way; original wiring; turned the plug; swapped plus and minus`,
    'voice-boost-changed': `${done('@turnOn|turn|switch', 'boostMode', 'on|off')}; @enable|kill|disable|raise|set|lowered|use|used .. @boostMode; @enable|used|tried .. clear voice; ${state('@boostMode', 'on|off|up|enabled')}; @boostMode =was|=were .. switched|turned? on|off; with|without|no .. @boostMode; @boostMode .. help; try|tried .. @boostMode; set .. dialog level .. to; turn .. on|off .. @boostMode`,
    'night-mode-changed': `${done('@turnOn|turn|switch', '@nightMode', 'on|off')}; @enable|kill|disable|use .. @nightMode; @kill .. @nightMode; turn .. on|off .. @nightMode; ${state('@nightMode', 'on|off')}; @nightMode .. help; with|without .. @nightMode; try|tried .. @nightMode`,
    'display-muted': `mute|kill|silence|disable .. @display|tvSpeakers .. sound?; ${state('@display|tvSpeakers', 'muted|mute|silent|off')}; @turnOff|turn|take|bring .. @tvSpeakers .. off|down .. to? zero|nothing|0?; set|turn|take|took|put|bring .. @tvSpeakers .. to zero|nothing|0|#; @turnOff|turn|take|bring .. @display .. sound|volume .. off|down|to|zero .. zero|nothing|0?; @turnOff|turn|take|bring .. its own volume|sound .. down|off|to .. nothing|zero|0?; set|turn|put .. @display volume .. to zero|nothing|0|#; on mute; @display =was|=were .. muted|silenced; =unplug|=unplugged|turn|switch .. @tvSpeakers .. off?; turn down .. @display; turn|switch .. television|display .. down`,
    'surface-covered': `@cover .. @softThing|=cushion .. on|over|under|before|across|in|onto|around|ahead|beneath|behind|along; @softThing|=cushion .. on|over|under|before|across|onto|around|beneath .. @hardPlace|it|center|speaker; @softThing|=cushion .. in? front .. of; cover .. @hardPlace|it .. with|by?; @hardPlace =was|=were .. covered; drag|dragged .. in .. @softThing; with .. @softThing .. on|over|under|in|across; @softThing .. help|no|nothing|do; @cover .. @softThing; blanket|rug|towel|quilt|duvet .. front; cover .. floor|shelf|table|board; slept .. mattress .. front|floor; =cushion in front`,
    'room-treated': `hang|hung|build|built|add|added|install|piled .. @treatment; @treated .. @treatment .. on|along|across|at|behind|up|to .. wall|glass|window|ceiling|corner|side|door; @treatment =was|=were .. hung|drawn|closed|piled; wall .. covered .. with|in .. @treatment; add|build|install|put|buy|bought|place|placed .. absorber|panel|trap|traps|curtain|duvets|rug|carpet .. up|down|at|in?; bass trap; with .. curtain|curtains|drapes .. drawn|closed; drew|draw|close|closed .. curtain|drapes; acoustic panel; treat|treated .. room; put down .. rug|carpet; duvets|bedding|@treatment .. stood|stand|piled .. along|up|in; has hung a curtain; curtain .. hung; carpet .. laid; foam on`,
    'other-person-listened': `@sitter =sit|=sat|=takes|=took|=take .. in|on|at? my|mine|same @seatPlace; @sitter =takes|=took my @seatPlace; @sitter =sat|=sits there; @sitter =sat|=sits|=took|=listened .. in|on|at|from mainSeat; @sitter .. had|have .. listen; @sitter =listened|=listens; @sitter .. and =listened; have|had|let|ask|asked|got .. @sitter .. listen; @sitter had|have a listen`,
    'headphones-tried': `with|on|through|over|use|used|wear|wore|put|try|tried|plug|give|gave|by .. @headWear; @headWear`,
    'entry-corrected': `@fix .. center|subwoofer|mains|right|real|proper|correct|true? @distWord; @fix .. right|real|proper|correct|true|taped .. @distWord; @fix .. @distWord .. right|properly|correctly|straight|to|from|by; @distWord =was|=were|=being|be .. put|set|corrected|entered|fixed|right|changed .. right?; with .. @distWord .. corrected|right|fixed|entered|set; zero|zeroed .. delay|distance; take|took|add|knock|subtract|put .. # .. on|off|of|to|more|from .. delay; add|added # .. delay|of; right|proper|real|correct|true distance .. in|entered; correct|fix|retype|mend|rectify .. distance|delay|entry; re entered .. distances; change .. distance .. from; correct .. center distance`,
  },
};
