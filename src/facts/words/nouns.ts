/**
 * Things people talk about, under one name each. A member of several words is taken as one word wherever it stands,
 * the longest first, so that "entertainment center" is no center and "left speaker" no direction.
 */
export const NOUNS = {
  center:
    'center; middle one|unit; the middle one; center channel|speaker|box|unit|chan|one; center channel speaker|box; middle speaker|box|channel|loudspeaker; c channel|speaker|box; c; speaker in the middle; box in the middle; mid speaker; voice speaker|channel|box; speech speaker|channel|loudspeaker; center unit|cabinet; centers',
  lcr: 'l c r; lcr; l c and r; all three fronts; all three front? speakers|boxes|channels; three front speakers; front three; whole front stage?; all 3 fronts; left center right; left center and right; l c r speakers',
  allChannels:
    'all round; all around; across the board; all speakers|channels|distances|three|of|boxes; every speaker|channel|distance|one; everything; everywhere; all the speakers|channels; each speaker|channel; all; everyone',
  tweeterToTweeter: 'tweeter to tweeter',
  headToHead: 'head to head',
  coneToCone: 'cone to cone; c t c; c to c; center to center; middle to middle',
  apartWord:
    'from each other; one from the other; from one another; away from each other; away one from the other; from one to the other',
  mains:
    'mains; main speakers|pair|boxes; left and right; left and right fronts; left right; l and r; l r; fronts; front; front speakers|pair|boxes|main|mains; front left and right; towers; tower; stereo pair|speakers; left and right speakers|boxes|towers|mains|channels; l r speakers; side speakers|boxes; both mains|towers|fronts; fl fr; outer speakers; left or right; the other two; two others; the two others; both others; the both others; the other speakers; the two sides; both sides; fronts l and r; sides boxes',
  leftMain:
    'left speaker|main|tower|box|channel|front|loudspeaker|horn; left main speaker; front left; fl; l channel|speaker; l',
  rightMain:
    'right speaker|main|tower|box|channel|front|loudspeaker|horn; right main speaker; front right; fr; r channel|speaker; r',
  subwoofer: 'subwoofer; bass box; bass module',
  surround:
    'surround speakers|boxes|channels; surround left|right; left|right surround|rear; rears; rear; rear speakers|boxes|channels; back speakers|boxes|channels; heights; height speakers|channels; ceiling speakers; speakers in the ceiling; speakers behind; upfiring speakers; side surrounds; effects speakers; surround and height speakers; surround backs; surrounds and heights; rears and heights; back and top speakers; rear and ceiling speakers; back and ceiling speakers; ceiling and rear speakers',
  display: 'television; flat screen; oled; lcd; projector; beamer; television set; panel; plasma; display',
  picture: 'picture; image|picture area; screen; television screen; projection screen',
  tvSpeakers:
    'television speakers|sound|speaker; internal|builtin speakers; built in speakers; televisions own sound|speakers; own sound|speakers; speakers of the television; sound of the television; tellys own sound|speakers; television volume; soundbar; sound bar; speakers of the set',
  voice: 'voice; dialog; speech; vocal; singer; vocals; talk; talking; spoken words; words',
  person:
    'actors; actor; people; everyone; everybody; announcer; newsreader; newscaster; presenter; anchor; men; man; women; woman; he; she; they; weatherman; newsman; characters; singers; someone; anybody; anyone; persons; voices of people',
  sound:
    'sound; audio; everything; it; tone; music; whole thing; the lot; all; stage; band; orchestra; stereo image; soundstage; sound stage; choir; image; group; quartet; players',
  stageWord:
    'stage; band; orchestra; stereo image; soundstage; sound stage; choir; whole thing; whole band; group; quartet; players; ensemble; music; everything; image; whole stage; record; concert; songs; instruments; guitars; violins; players; musicians',
  // Seats and people on them.
  mainSeat:
    'main seat|position|listening; listening position|seat|place|spot; sweet spot; money seat; mlp; middle seat|place; center seat; middle of the sofa; center of the sofa; middle chair; prime seat; my spot|place; main listening position; seat in the middle; middle of the seat; on axis; straight on; dead center; middle seats; middle ones; two middle ones; central seat; money spot',
  sideSeat:
    'far left and far right seat|chair|seats|chairs|place; far left|right seat|chair|place; end seat|place|spot|chair; ends of the sofa|row|bench; end of the sofa|row|bench; my end; side seat|chair|sofa; left|right hand seat|chair|side; sit on the side; outer|outside|corner|edge seat; off axis; off to the side; offaxis; sides of the sofa; left|right end; left|right end of the sofa; left and right seat; far end|seat; couch ends; sofa end; window end; door end; ends of my sofa; end of my|our sofa; outermost seat; from the side; sit off center; sit to the side; next to the middle; armchair at the side; seat at the end|side|ends|sides; off to one|either|the side; sofa corner; side of the sofa; far side of the sofa; corner of the sofa; end spot; end position; either end; outer two|three? seat; outer seat|place|chair; edges of the sofa|row; both ends; sofa edges; arm of the sofa; arms of the sofa; either side of the sofa; outer seats|places|chairs; ends of the row; end of a row; left and right ends; away from the middle; off to one|either side; end seats|places; people|those|guests|anyone at the ends|sides|end|side; edge of the row',
  backRow:
    'back row; second row; rear row; row two|2; last row; people in the back; those in the back; row behind; rear seats|seat|armchair|bench|recliners|chairs; seat|seats|chairs|bench|recliners behind; back seats|bench|chairs|recliners; people|folks|persons|kids|those|guests behind; rear of the room; people|folks|those at the back; people|folks|kids on the riser; riser; row 2; hindmost row; back rows; rows behind',
  seatWord:
    'sofa; seat; armchair; chair; listening distance; seating distance; bench; loveseat; listener; viewing distance; bed',
  // Places.
  furniture:
    'television stand|bench|unit|cabinet|console|rack|shelf|table|board|furniture|board; media console|unit|cabinet|stand|bench; entertainment center|unit|stand; sideboard; credenza; cabinet; cupboard; dresser; shelf; shelves; bookcase; rack; hifi rack; lowboard; low board; mantel; mantelpiece; chest; drawers; chest of drawers; furniture; commode; console; bookshelf unit; glass shelf; desk; lowboy; buffet; highboard; wall unit; media shelf; board; bench; trunk; sea chest; table; console table; stand under the television; stand below',
  bay: 'cubby; cubbyhole; cubby hole; compartment; middle|center compartment; niche; alcove; pigeonhole; open compartment; shelf opening; hutch; opening; cabinet|cupboard|rack|tv opening; opening in the cabinet|furniture|unit',
  floor: 'floor; carpet; ground; rug; floorboards; hearth; parquet; laminate; tiles',
  // Technique.
  testNoise:
    'test tone|noise|signal; pink|white noise; noise test; level test; channel test; test tones; noise; tone; calibration noise|tone; noise signal; hiss; test noise of the receiver; speaker test; balance test',
  autoSetup:
    'automatic setup|calibration|tuning|measurement|run; automatic set up; auto setup|calibration|tuning|eq; auto set up; setup microphone; set-up microphone; microphone setup|run|calibration; calibration; setup wizard; guided setup; room calibration|setup; autocal; auto calibration; set-up wizard; set up wizard; microphone wizard; setup routine; automatic room setup; automatic microphone; set up microphone; room measurement; microphone measurement',
  correction:
    'room correction|eq; equalizer; automatic correction|eq|equalizer; correction; auto eq; filters; room equalizer; correction filters; sound correction; tuning; automatic room correction; microphone eq; equalizing; room eq',
  upmix:
    'upmix; upmixer; upmixing; surround mode|decoder|upmix|upmixer; music upmix|upmixer|mode; surround processing; matrix decoder|mode; all channel|channels stereo; multichannel stereo; surround music mode; surround sound mode; surround button; sound mode; listening mode; music mode|setting; setting for music; surround program; sound program; multi channel stereo; 5.1 mode; dsp mode',
  plainStereo:
    'plain|pure|straight|normal|two|2|direct|proper stereo; plain stereo mode; stereo mode; two channel|channels; 2 ch|channel|channels; 2ch; direct mode; pure direct; direct; stereo only; two channel only|mode; straight two channel; plain two channels; straight mode; straight; just stereo; only stereo; bypass mode; 2ch bypass; pure mode; stereo|direct setting; without surround; without the upmix',
  spread:
    'center spread|width|image; center width setting|control; spread; spread control|setting; width control|setting; middle width; width; center image setting; center spread control|setting; spread setting',
  menu: 'menu; setup menu; setup; receiver; display; info screen; screen; setup page; receiver menu; on screen menu; avr; processor; set-up; set up',
  boostMode:
    'dialog enhancement|enhancer|boost|level|mode|enhance; speech enhancement|enhancer|boost|mode|thing; voice enhancement|enhancer|boost|mode; voice|speech mode; clear voice; dialog enhancer mode; voice boost mode; speech boost; dialog mode; speech setting; dialog|vocal|voice enhancing; voice booster; clear voice mode',
  nightMode:
    'night mode; late night mode; midnight mode|listening; drc; dynamic range compression|control; dynamic compression; dynamics compression; loudness management; night listening; dynamic volume; volume leveler|leveller; auto volume; evening mode; compression; late night function|setting|program; night function|setting|program|listening mode; dynamic range setting|function; dynamic range',
  voiceLift:
    'dialog|voice|speech lift|lifting; dialog|voice|speech lift function|option|feature|setting; lift for the dialog|voice; lifting of the voice|dialog; lift feature|function',
  wire: 'wire; wires; cable; cables; lead; leads; speaker wire|cable; speaker wires|cables; cord; plug; plugs; terminals; connections; connectors; cabling; wiring',
  screenCloth:
    'at screen; acoustically|acoustic transparent screen; acoustic screen; projection screen; screen cloth; screen material; sound screen; transparent screen; roll down screen; pull down screen; screen fabric; microperf; perf; screen',
  heads: 'heads; seat =backs; seatbacks; headrests; recliner =backs; chair =backs; people in front',
  frontRow: 'front row; front seats; first row; row one|1; front rows',
  sourceBox: 'cable|satellite|settop|streaming|media|android box; set top box; decoder',
  faultWord:
    'problem; trouble; issue; fault; it; effect; noise; buzz; buzzing; honk; dullness; echo; boom; rattle; complaint; weirdness; swish; gripe',
  // Programme.
  film: 'movie; blu ray; 4k ray; action movie; film nights; movie night; blockbuster; thriller; bluray; concert disc; concert video; multichannel music; surround discs|music; 5.1 music; action flicks; film disc; 4k disc; disc movies; sci fi; action scenes; film voices',
  news: 'news; newscast; talk shows; talk show; evening news; television news; weather forecast; quiz shows; documentary; baking contest; soaps; cable television; quiz; radio news; crime series',
  recordings:
    'stereo tracks|songs; tunes; cds; cd; compact discs; compact disc; vinyl; records; lp; lps; albums; album; two channel music; stereo music; songs; stereo albums; stereo records; stereo cds; classical music|radio; jazz; turntable; stereo lps; string quartets; stereo recordings; playlists; records and cds; song; opera',
} as const;

/** Words that do one job in many phrases. */
export const CLASSES = {
  good: 'gorgeous; marvelous; marvellous; terrific; immaculate; flawless; faultless; pleased; splendid; stunning; bell; natural; breathtaking; fabulous; good; fine; ok; okay; great; perfect; clear; excellent; lovely; super; superb; wonderful; better; crisp; crystal; beautiful; sweet; intelligible; solid; magic; brilliant; fantastic; spotless; nicer; amazing; ace; clean; readable; sublime; sensational; superbly; effortless; delightful; glorious',
  bad: 'bad; terrible; awful; wrong; muddy; dull; muffled; boomy; mushy; mush; horrible; worse; poor; rubbish; crap; hollow; unclear; thin; boxy; honky; nasal; harsh; weird; off; odd; soup; nasty; papery; unintelligible; blurred; mumble; indistinct; distant; swims; slurred',
  unclear:
    'unclear; mush; mushy; mumble; mumbling; mumbles; unintelligible; indistinct; blur; blurred; blurry; soup; smear; smears; smeared; slurred; slur; slurs; garbled; incomprehensible; smudged; smudgy; inarticulate; gibberish; mumbly; swallow; swallowed; washy; mud; porridge; unreadable; lisp; lispy',
  be: 'be; sound; seem; get; become; go; feel; look; appear; come; stay; turn; remain',
  never: 'not; never; no; hardly; barely; rarely; cannot',
  everywhere: 'everywhere; wherever; anywhere',
  same: 'same; unchanged; nothing; nil; identical',
  on: 'on; active; enabled; engaged; running; activated; always; up; full; in',
  off: 'off; disabled; deactivated; bypassed; inactive; out; zero; 0',
  under: 'under; below; underneath; beneath; beneat',
  above: 'above; over; atop; overhead',
  front: 'front; before; ahead',
  my: 'my; our; the; a; his; her; their; me; its; own; this; that; one; your; an; each; every; both',
  left: 'left; l; lefthand; left-hand',
  right: 'right; r; righthand; right-hand',
  side: 'left; right; side; aside; sideways; window; door',
  quietWord: 'quiet; soft; weak; faint; timid; feeble; inaudible; puny',
  bassy:
    'boomy; chesty; tubby; bloated; drone; drones; droning; bassy; boominess; bass-heavy; rumble; rumbles; chestiness',
  moved: 'move; pull; push; slide; shift; drag; bring; put; place; draw; scoot; nudge',
  many: 'two; 2; both; dual; double; pair; twin; couple; several',
  play: 'play; listen; watch; put; spin; stream; run; enjoy',
  trouble:
    'bad; terrible; awful; muddy; dull; muffled; mushy; mush; worse; poor; hollow; unclear; thin; soup; unintelligible; blurred; mumble; mumbles; mumbling; indistinct; distant; lose; loses; lost; miss; misses; complain; complains; struggle; struggles; subtitles; subtitle; faint; vanish; fade; fades; disappear; smear; smeared; slurred; garbled; what; pardon; strain; suffer; suffers; vague; mud; problem; trouble; rubbish; hopeless; useless; murky; muted',
  shift: 'shift; move; slide; scoot; sit; go; step; lean; budge; shuffle; slip; walk; wander',
  lowPlace:
    'floor; carpet; rug; ground; shoes; feet; ankle; ankles; knee; knees; shin; shins; belt; buckle; waist; belly; navel; tummy; skirting; fireplace; hearth; basement; cellar; below; underneath; beneath; bottom; boots; socks; trousers; downstairs; foot; shoe; boot; slipper; stomach; fire; baseboard; furniture; shelf; sideboard; drawer; floorboard; pit; dresser',
  stuckWord:
    'stuck; stick; nailed; glued; anchored; lock; tied; pinned; pin; tethered; chained; trapped; welded; fixed; hang; live; sit; stay; parked; planted; rooted',
  panWord:
    'pan; pans; panning; panned; cross; crosses; crossing; pass; passes; passing; walk; travel; sweep; sweeps; traverse; helicopter; motorbike; train; plane; car; flyover; midway; halfway',
  kin: 'wife; husband; partner; mother; father; mum; mom; dad; grandad; granddad; grandpa; grandfather; gran; grandma; grandmother; son; daughter; kid; family; roommate; flatmate; guests; spouse; mate; in-laws; him; her; boyfriend; sister; brother; friend',
  gotNew: 'buy; install; fit; replace; swap; upgrade; add; exchange; inherit; new',
  buried:
    'bury; buried; drown; drowned; swamp; swamped; mask; masked; masks; cover; covered; covers; lost; lose; swallow; swallowed; submerged; sink; sunk; drowning; overpower; overwhelm; overwhelmed; obscured; washed',
  strain:
    'strain; strained; strains; distort; distorts; distortion; harsh; shout; shouty; shouts; crackle; crackles; clip; clips; clipping; nasty; grating; breaks; break; compress; congested; rough; scream; screams; screechy; ugly; buzz; fart; crunch; crunchy; gritty; edgy; falls; fall; hurts; hurt; unpleasant',
  headMove: 'move; lean; tilt; turn; nod; shift; rock; slouch; bob; bend; duck; sway; moving',
  language:
    'german; french; english; spanish; italian; dutch; swedish; danish; polish; original; dubbed; foreign; other',
  male: 'men; man; male; baritone; baritones; blokes; gruff; narrators',
  female: 'women; woman; female; soprano; girls; girl; ladies; lady; sopranos; actresses; kid; children',
  settingsWord: 'settings; distances; levels; trims; calibration; entries; delays; values; setup; tuning',
  drapery: 'carpet; rug; curtain; drape; underlay; tapestry; blinds',
  stuffed:
    'stuff; stuffed; shove; shoved; cram; crammed; tuck; tucked; squeeze; squeezed; wedge; wedged; slid; slide; slot; slotted; push; pushed; jammed; box; boxed; bury; buried; put; stash; stashed',
  clutter:
    'plant; vase; lamp; ornament; ornaments; candle; candles; toy; toys; flower; flowers; photo; photos; frame; frames; books; statue; basket; pot; cactus; fern; cat; dog; remote; console; soundbar; clock; bowl; figurine; radio; blanket; box; fireguard; pouf',
  changedVerb:
    'bought; install; fit; replace; swap; upgrade; add; change; move; rewire; unplug; reconnect; rearrange; redecorate; decorate; paint; clean; mount; connect; wire; redo; tidy; hook; press; reset; update; hang',
  altered:
    'alter; modify; adjust; touch; exchange; renew; redo; remove; put; set; give; switch; choose; chosen; lowered; shift; broke; cut; change; swap; replace; move; install; fit; add; buy; get; bring; brought; hang; mount; redid; shorten; raise; rewire; connect; turn; upgrade; rearrange; relocate; reposition; rotate; tidy; clean; rebuild; built; tweak; plug; reconnect; trade; extend; rip; throw; thrown; redecorate',
  began: 'begin; began; start; arise; appear; emerge; occur',
  bought: 'bought; replace; upgrade; install',
  reset: 'update; reset; outage; thunderstorm; storm; blackout',
  fiddled:
    'press; fiddle; play; mess; change; twiddle; sat; touch; poke; push; hit; tweak; alter; adjust; select; choose',
  tweaked:
    'change; correct; tweak; adjust; edit; override; raise; nudge; alter; overwrite; overwrote; rewrote; lowered',
  coneWord: 'cone; membrane; diaphragm; midwoofer; bass',
  recorded: 'record; recording; impulse; measure; measurement; pulse; click',
  inverted:
    'invert; reverse; flip; flipped; negative; upside; phase; turn; opposite; backward; negative; minus; swap',
  aims: 'point; aim; angle; tilt; tip; face; fire; look; play; talk; beam; hit; shoot; blow; end; sight',
} as const;
