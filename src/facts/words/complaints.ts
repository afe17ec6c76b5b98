/** What owners say they hear, and what they say when they do not hear it. */
import type { ComplaintWords } from './lexicon.js';

export const complaintWords: ComplaintWords = {
  'voice-unclear-off-side': {
    heard: `@sideSeat & @unclear|muffled|dull|@bad & sound|be|voice|dialog|talk|speech; @sideSeat & @cant & understand|follow|out|word|catch|get; side|end|corner|edge & sit|seat|chair|sofa & @unclear|muffled|@cant & dialog|word|voice|understand|follow|be|they; off & side|axis|middle & @unclear|muffled|mush|lose; only & clear & middle|mainSeat; anyone|those|whoever & side|end|sideSeat & @unclear|muffled|mush|cannot;
      @sideSeat ... @unclear; @sideSeat ... @never @follow; @sideSeat ... @never .. understand; @sideSeat ... cannot|can not|never understand|follow|hear; @sideSeat .. people|everybody|they mumble;
      @unclear .. @sideSeat; @sideSeat .. need subtitles; whoever gets|sits .. @sideSeat .. subtitles; consonants vanish|gone .. @sideSeat; not .. in the mainSeat .. @unclear; @unclear .. not in the mainSeat;
      lose .. edge .. @sideSeat; lose .. edge off to; @sideSeat ... keep asking; wife|husband|daughter|son|mother|father|kid .. @sideSeat ... keep ask; only get|catch every third|second|other word .. @sideSeat;
      @sideSeat .. dialog|voice .. fall apart; @sideSeat .. hear nothing; two seat over .. consonants; soup next to it; @sideSeat ... @never get the words; on the left|right hears lispy; @sideSeat ... muffled; muffled ... @sideSeat;
      @sideSeat ... hollow; @sideSeat ... what he|she|they say; keep ask .. what .. say; outside seat .. asking; @sideSeat .. lose .. words; @sideSeat .. newsreader|voice .. absent; armchair .. muffled|mumble|unclear;
      @voice .. unclear .. @sideSeat; @sideSeat .. lost; @sideSeat .. dull; nobody|none .. @sideSeat .. @follow; @unclear ... at the ends; hard|difficult to understand|follow .. @sideSeat; hard|difficult to understand|follow .. left|right seat|chair|armchair; left|right seat|chair|armchair ... @unclear; left|right seat|chair|armchair ... cannot|not @follow; @sideSeat ... nothing .. understand; only clear in the mainSeat; clear in the mainSeat .. not; clear in the mainSeat ... @bad; mainSeat .. clear ... @sideSeat .. @bad;
      mainSeat .. @good ... @sideSeat .. @unclear; @sideSeat .. cannot follow; off axis .. fall apart; guests|friends|kid at|on the ends|sides|end .. mumble|complain|unclear; @sideSeat .. get .. every third word`,
    absent: `side|end|outer seat .. just as clear; @sideSeat .. every word; @sideSeat .. just as good|clear; no difference when .. @sideSeat; intelligible|clear from|in|on every seat; @sideSeat .. be fine; @sideSeat .. follow perfect; outer seat .. not the issue|problem; sit .. both ends .. every word; wherever you sit .. clear; clear at|in every seat; every seat .. clear`,
  },
  'voice-unclear': {
    heard: `@cant & understand|follow|decipher|distinguish|comprehend|discern|intelligible & @talk|what|they|say; @cant & make & out & @talk|what|they|say|anything; hard|difficult|struggle|trouble|impossible|cannot & out & say; strain|concentrate & understand|follow|dialog|word|voice; intelligibility & @bad|low|no|lack|lose; huh & say;
      @voice|@person|center|they .. @unclear; everybody|everyone|people|they|actors|them|all mumble; @unclear dialog|speech|voice; can not|cannot|not|never|cant|hard|hardly|barely|difficult|struggle|trouble .. understand .. voice|speech|dialog|word|actors|anybody|anyone|thing|they|people|what;
      can not understand; cannot understand; not understand .. words|talking|speech|actors; can not make out; cannot|not make out .. words|what|dialog; never|not|hardly|no follow .. dialog|speech|words|voice|conversation; cant|not hear nothing|anything they say; cannot|not hear .. actors|what they|words|them speak; all mush; @voice be soup; speech .. blur; speech soup;
      catch maybe? half; half of what they say; need|use|read subtitles; without subtitles; subtitles .. all the time|always; have to rewind; rewind constantly; marbles in .. mouth; no intelligibility; poor|bad intelligibility; intelligibility .. @bad; words run together; voice .. run together; @voice .. unreadable;
      nothing .. to understand; @voice|dialog|speech could|should be? clear; every second|third|other word .. lost|miss; miss .. words; lose .. words|consonants; cannot hear anybody; say .. what .. say all; keep asking what; @voice .. lose .. edge|definition|clarity; @voice .. lacks clarity; lack .. clarity; no clarity; not clear; dialog .. hard to; hard|difficult to understand|follow|hear; voice .. get lost; voice|dialog .. be lost; cannot follow .. dialog|plot|films|movie; unclear; mumble; cotton wool .. voice; u cant hear anybody;
      voice .. swallow|swallowed; words .. swallow|swallowed; @voice .. smear`,
    absent: `understand every word; every word .. clear; speech|voice|dialog .. perfect clear; speech|voice|dialog .. be clear; voice .. crystal clear; dialog .. no problem; no|never trouble|problem follow|understanding; follow every line|word; no mumbling; speech intelligible; voice clear to my ear; voice .. clear .. everywhere; voices are clear`,
  },
  'voice-unclear-everywhere': {
    heard: `@everywhere & @unclear; @everywhere & @cant & understand|follow|out|word; seat & every|any|all|which|each & @unclear|mush; seat & every|any|all|which|each & @cant & understand|follow|out|word|words;
      @unclear wherever|everywhere|anywhere; wherever|everywhere .. @unclear; cannot|not make out .. words anywhere; cannot .. understand .. any seat; at every seat .. @unclear; every seat .. @never follow|understand; @unclear .. every seat|place; from|at all seat .. @unclear|muffled; nobody .. understand|follow; nobody can follow; none of us .. understand|follow; we all .. not understand; @unclear .. doesnt matter where`,
  },
  'voice-unclear-back-row': {
    heard: `@backRow & @unclear|muffled|@cant|lost|dull & understand|follow|dialog|voice|word|sound|be|hear;
      @backRow ... @unclear; @backRow ... @never .. follow|understand|hear; @unclear .. @backRow; @backRow .. need subtitles; @backRow .. muffled|dull; @backRow .. hear nothing; @backRow .. @bad; kids behind us .. @never follow|understand; row behind .. complain|mumble`,
  },
  'image-collapses-to-center': {
    heard: `@stageWord|stereo|everything|all|soundstage & collapse|shrink|narrow|squash|squeeze|cramp|cram|bunch|clump|huddle|crowd|suck|cave|implode|contract|heap|pile & middle|center|mono|box|point|one|together; width|soundstage|stage|spaciousness|spread|openness & gone|lost|lose|vanish|disappear|collapse|narrow|shrink|tiny|smaller; stage|soundstage & become|turn|get & tiny|narrow|mono|small|flat|point;
      @stageWord|all|everything|stage shrink|collapse|cave|narrow|fold|crowd|huddle|cram|squeeze|contract; shrink to|into .. middle|center|point|mono|blob|box; collapse .. to|into .. middle|center|point|mono|box; @stageWord .. collapse|shrink; crowd .. into|in .. middle|center; crammed in .. middle|center; crammed|squeezed|pressed|packed|heaped|piled .. into|in|between .. middle|center|box|legs; squeezed between;
      suck .. into .. center|box|middle; everything|all|it|band|orchestra|music|half .. come|comes|from|out .. from|of the middle|center|box|one|mid; everything|all .. come out of|from .. center|middle; everything|all .. from the center|middle; all in the middle; stand in a heap; heap in the middle; sound|sounds like mono; just mono; almost mono; like mono; turn mono;
      lose .. width; lost all .. width; no width; width .. gone|lost; stage .. gone; stage .. get .. narrow; narrow as a door; narrow stage|soundstage; stage .. narrow; soundstage .. cave; stereo .. gone; whole orchestra .. one|loudspeaker|speaker|box; sit .. in one|the speaker|box; sits stuck in .. box|center|cabinet; stuck in the center|box|middle; singer .. in the box|center; vocals sit in the box; left and right .. hardly anything; mains do|play .. hardly|nothing|little|barely; mains .. hardly do|play anything; mains .. almost silent|nothing; mains go .. silent; mains .. just|only reverb|ambience; sides .. just|only reverb;
      huddle in the middle; everyone .. in the middle; singers .. jump to|into .. center; jump .. into|to .. center; jumps into the center; snap to|into the center|middle; fat blob in the middle; blob in the middle; choir .. no longer wide; no longer wide; not wide anymore; image .. small|tiny|narrow .. center; singer and half the band .. in .. center; no stage left; flat and narrow; music all in the middle; center hogs|steals|eats|dominates everything|stage|image|sound; two dimensional; center .. take over; pulled|drawn|sucked into|to the center|middle; everything .. in the center; all lumped|bunched in|into the middle|center; tunnel vision; one point in the middle; no stereo left|anymore; stereo .. ruined|collapse; phantom .. gone .. box; stage is a .. point; lumps in the middle; shrinks`,
    absent: `stage .. nice|still and? wide; width be fine; plenty of spread; not collapse; stage .. still span; nothing shrink; stage is wide; spread left to right; wide stage`,
  },
  'voice-low-or-high': {
    heard: `@talk & come|from|out|talk|speak|emanate|originate & below|underneath|beneath|floor|ground|carpet|knee|foot|shoe|belly|furniture|fireplace|skirting|ceiling_line; @talk|sound & from|at|to & under|below|beneath|above|over|underneath & picture|screen|television|mouth|lip|face|image|display; sound & come & above|below|under & screen|picture|television;
      @voice|@person|it|talk|sound .. come .. from|out .. below|under|beneath|floor|ground|carpet|furniture|cabinet|fire|fireplace|shoes|knees|feet|bottom|upstairs|belly|plinth|skirting|basement; voice|talk|speak|dialog .. from .. below|floor|ground|knees|feet|shoes|knee|ankle|bottom|belly|chest|table|furniture|under|down; speak .. from|out .. shoes|knees|belly|buttons|chest|feet|cabinet|floor;
      talk .. at ankle|knee height; voice .. too low .. picture|screen; voices too low down; voice .. below the picture; voice .. under the picture; voice .. above the picture|screen|television; voice float|hang above; sound .. glued under; glued under .. picture; actors stand in a hole; mouths up there; voice .. not|doesnt match .. height; height .. wrong|off|mismatch; voice .. at the height of .. knees|floor; voice .. knee|ankle|waist high|height; come from below; comes from down; down at the skirting; sound .. low down; voice|dialog .. down there|low; center too low; voice .. high above; like .. calling|someone from upstairs; announcer .. ceiling line; image .. too low|high; voice lower|higher than .. picture|mouths|mouth|screen|actors|faces; lower than the mouths; voice .. drop to|towards the floor; dialog .. coming off the floor; voice .. from the box under; comes from underneath; voice|people|they .. speak .. under .. television|screen|picture; voice .. sink|sinks; voice .. not .. on .. picture|screen|mouth|mouths|lips|faces; voice .. out of .. cabinet under; knees of the actors; from the belly; navel; belt buckle; from their shoes|feet|boots; talk .. to .. my? knees; sound .. from the floor|ceiling|furniture; voice .. from over the picture; hear .. from .. floor; voices .. from .. heaven; everybody .. talks from the bottom`,
    absent: `voice .. right at .. screen height; height .. be fine; voice .. match .. mouths|height; never sound low; not .. from below; voice .. not .. above or below; voice .. on the mouth|picture; voice .. from the picture|screen`,
  },
  'voice-pulled-aside': {
    heard: `@talk|image|stage & pull|drift|lean|shift|skew|bias|drag|wander|tug|gravitate|slide|smear|veer & left|right|side|aside|window|door;
      image|voice|dialog|singer|sound|center|everything|it|talk|actors|he|she .. lean|pull|skew|shift|smear|drag|drift|wander|bias|tilt|veer .. left|right|side|aside|window; voice|actors|people|singer|announcer|dialog|talk|she|he|everybody|talks .. from|at|on|to .. left|right .. half|side|speaker|of; voice|dialog .. hang on|at .. left|right; speak|talk .. from .. left|right|plant|window|door|side|stove; singer .. not centered; voice .. not .. centered|in the middle|middle; off balance; center .. pull .. to .. left|right; off to the left|right; pull to one side; pulled aside; pulled to .. side|left|right; one side of the picture|screen|television; voice .. left|right of .. picture|screen|television|faces|middle; always .. to the right|left; announcer|newsreader .. sit left|right; drag over; to the right of the screens middle; image .. off|offset|shifted; voice .. at the left|right; singers lean to; lean to the sides; voice .. aside|sideways; half a meter .. to the left|right of the screen|television; come .. from .. leftMain|rightMain; hear .. from .. rightMain|leftMain; from the rightMain; out of the rightMain|leftMain`,
    absent: `dead center; no pulling; voice stay put; no lean; not wander; not .. off to .. side; perfect centered; voice .. in the middle of the picture|screen; stays in the middle; nails dead center`,
  },
  'voice-changes-tone': {
    heard: `tone|timbre|color|character|tonality|tonal & change|different|mismatch|jump|differ|shift|alter|unlike & center|middle|pan|walk|cross|voice|main|he|car|when|as|move|completely; pan|cross|walk|fly|drive|pass & dull|thin|hole|nasal|muffled|different|boxy|dark|hollow|honky|tinny & middle|center; center & match|blend|fit & not & main|tonally|tower|tone|rest|sound; center & different & sound & main|tower|left|other|rest;
      voice|tone|sound|timbre|color|singer|car|it|she|he .. change .. color|tone|timbre|character|when|as|cross|walk|pan|across; turn|go|get|become dull|dark|thin|small|boxy|nasal|woolly|muffled|different|sharp|honky|hollow ... when|as|walk|cross|pass|move|pan|middle|center; not the same sound .. center; timbre .. not|mismatch match; mismatch .. timbre|tone; timbre mismatch; tonal mismatch|jump|change; turn into somebody else; pans .. not seamless|smooth; different voice in the middle|center; tone jump; jump in tone; sound like three brands; three different brands; get a cold in the middle; pan .. hole|dip|gap|valley; when|as .. walk|cross|move|pan|fly|drive|pass .. dull|dark|thin|small|boxy|nasal|woolly|different|hollow|sharp|change|hole|valley|honky|muffled; car|helicopter|plane|bee|voice|horse .. left to right ... hole|dull|thin|different|change|small|valley|woolly|dark|hat; go from honky to|into sweet; honky .. sweet; silver .. middle .. velvet; velvet .. middle|sides; center .. sound different from|than .. mains; sound .. different from the|both mains; different tone|timbre|character|voice; tone .. differ|different; pan .. thin|hollow|dull|phasey; left to middle .. hollow|thin|dull; go .. thin .. on the way; change timbre; center .. not|doesnt match .. mains; doesnt match tonally|sonically; does not blend; not blend with; center stick out tonally; left and right have .. same .. sound full|normal; mains sound .. full|normal|fine ... center`,
    absent: `tone stay .. same; all three .. sound alike|same; no tonal jump; match left and right to a t; same voice left; pans .. seamless|fine|smooth; no change of color|tone`,
  },
  dull: {
    heard: `woolly; veiled; stuffy; dark & sound|voice|dialog|center|tone|very;
      dull; muffled; no|lack|lacks|lost|missing|without treble|highs|sparkle|top|air|sibilants|brilliance|presence; treble|highs|esses|top end|air .. be? gone|missing|lost|rolled|lack; blanket over; under a blanket; like a blanket; behind a curtain; through a curtain|wall|door|scarf|pillow|towel|blanket|sock; muddy; cotton wool; veil|veiled; dark sound|sounding|tone; sound dark; noticeably dark; go dark; hand before|over .. mouth; stuffy; highs .. roll; no top end; no highs; wool|woolly hat|blanket; talk .. into .. pillow|scarf; in|into a bag; voice .. in a bag; hat on in the middle; slide away .. down at; dark and; voice .. lack .. s; no s sounds; covered; smothered; as if .. cloth over; pillow over; head in a pillow; curtain .. voice; matt; flannel; fluff in .. ears; too dark; s .. disappear|vanish; like .. next room; behind a door`,
    absent: `treble .. all there; plenty of top|treble; bright enough; no blanket; enough treble; crisp enough; not dull at all`,
  },
  boomy: {
    heard: `boomy; chesty; bass & too|much|heavy & voice|dialog|man|male; @talk & boom|drone|thick|bloated|tubby|bassy|chesty;
      @bassy; voice|man|men|it|baritone boom; boom in; booming|boomed voice; too much bass .. voice; voice .. too much bass; radio dj; boxy and thick; men .. in|into a barrel; like .. in|into|from .. barrel|drum|tun|bucket; barrel; bucket over; hump .. #; overhang; chest .. too; too chesty; bass-heavy voice; too much chest; men .. boom; big chest; size of a wardrobe; sound .. barrel; wooden; announcer voice; hollow chest; hum along; voice .. growl`,
    absent: `no boom; bass of the voice .. fine; lean voice; no drone; no chestiness; without boom`,
  },
  boxy: {
    heard: `nasal; boxy; honky;
      boxy; boxed in; like .. in a box|crate|cupboard|cabinet|wardrobe|tin|closet; in a cupboard; honk|honky; nasal; from a crate; cardboard; cupboard sound; shoebox sound; like a megaphone; wooden box; voice .. box; tiled cupboard; hat box; like .. duck; cupped`,
    absent: `not boxy; no boxiness`,
  },
  hollow: {
    heard: `hollow; phasey; phasy;
      hollow; phasey|phasy|phasiness|phaser|phased; through|in|into a tube|pipe|cardboard|tunnel|drainpipe|hose; like .. in a pipe|tube|bathroom|cave|tunnel; out of phase; diffuse and empty; comb filter|filtering; hole in .. voice; two of them .. off; like two .. slightly; empty sounding; drainpipe; like a bathroom; cupped hands; voice .. hole; sound empty; papery; voice .. have no body; sucked out; metallic tube`,
    absent: `no phasiness; no tube; nothing like a tube; not phasey; solid voice`,
  },
  'swishes-with-head-movement': {
    heard: `whoosh & head|move|lean|nod;
      swish; swishing; swoosh; whoosh; treble|highs|s|esses|sound|it|voice .. change|come|flutter|wobble .. move|nod|lean|turn|shift|rock|go; when|as|if i move my head; move .. head .. change|different|whoosh|swish|comes|treble; move my head; moving my head change; each ear position; phaser effect; flanging; comes and goes .. move|head|lean|nod|lean; highs flutter; flutter .. shift; wobble in the highs; lean left|right .. whoosh|different|change; nod .. treble; sound changes if i move; couple of? inches .. change; treble comes and goes; esses come and go; head .. an inch; inch of head; with every movement of .. head; when .. get up|slouch .. change; slouch .. change color; twin .. comb; change .. with .. head; head in a vice|vise`,
    absent: `move my head .. no difference; moving my head .. no difference; steady wherever; no swish; nod .. stay .. same; stable treble; wherever .. head .. same|steady`,
  },
  'voice-too-quiet': {
    heard: `@talk|center & quiet|soft|weak|faint|inaudible|low & too|so|way|compared|than|much|very;
      center|voice|dialog|speech|@person|middle|they|talk .. too|very|so|way @quietWord; too|very @quietWord; center|voice|dialog .. @quietWord; voice .. quiet than|compared; quiet than .. music|effects|mains|rest; just|only quiet; can barely|hardly hear; barely|hardly hear .. them|voice|dialog|anything; dialog .. too low .. volume|level; dialog too low; voice .. too low; center too quiet; voice|dialog .. too low in; not enough volume|level; not loud enough; crank it .. talk; turn .. up .. hear|talk|voice|dialog|understand; have|need to turn .. up; speech .. lost .. soft; need .. turn it .. up; center .. weak; weak center; volume .. up and down; remote in .. hand; low level .. voice;  voice .. go under; cannot hear .. actors|voice|dialog|them; actors .. inaudible; inaudible; too faint; volume to .. understand; volume .. for .. dialog|voice`,
    absent: `loud enough; not a volume thing; level .. be? fine|ok|okay; volume .. plenty; volume .. not the issue|problem; volumes not the issue; enough volume; level is not`,
  },
  'voice-too-loud': {
    heard: `@talk|center & loud|overpower|dominate|dominant|shout|blast|blare|hot & too|much|way|than|far|everything;
      center|voice|dialog|speech|middle|talk|it .. too|much|way|far loud; too loud; way|much|clearly louder than .. rest|everything|mains; center .. be? overpowering|dominate|dominates|dominant|overpower; voice .. shout; shouts at; dialog .. way too loud; speech in .. face; in your face; in my face; middle .. drown; center .. drown; too hot; jump out at; blare; talking .. louder than; louder than everything; voice .. stick out; stick out; twice as loud;  sing .. in my face; center .. clearly .. loud; loudest of the three; center .. louder than`,
    absent: `not too loud; center .. not dominate; center .. not overpower; center level .. right; not in your face`,
  },
  'voice-missing': {
    heard: `center & dead|silent|mute & be|completely|go|stay|totally|channel|speaker;
      no dialog|speech|voice|voices|talk|sound|center .. at all; no dialog; no voice|speech from|in|out; center .. be? dead|silent|mute|gone; nothing .. out of|from .. center; center .. nothing; voice .. complete|total gone|missing; only music and effects; no speech; center .. not work|play|working|playing|on; no sound from .. center; not a sound .. center; go silent; went silent; talk disappear; voice .. disappear; move their lips and nothing; center silent; center .. silent; center .. no sound; no|not .. sound .. come .. out .. it; nothing from .. center; no output from .. center; center .. gives nothing|no; dead center speaker; center channel dead; voices .. gone; center .. quit|stopped|stops; hear no talk; middle .. silent`,
    absent: `center .. do play; center work; center definite .. sound; nothing missing; center .. plays .. fine|ok|well`,
  },
  'voice-from-behind': {
    heard: `@voice|@person|talk|it|he|she|quiz .. come .. from|out .. behind|ceiling|surround|rear|back|overhead|heights; @voice|@person .. behind me|us|sofa; @voice|@person .. from behind|@surround|ceiling; talk .. from behind; voice .. overhead; voice .. above my head; in the @surround; dialog .. out of .. @surround; talk .. back of the room; speech from .. @surround; hear .. at my back; sit .. behind the sofa; voices .. at my temples; at the temples; @voice .. in .. @surround; come .. down from .. ceiling; voice .. beside me|my; hear .. announcer|voice|voices .. from .. @surround|behind`,
    absent: `nothing from behind; @surround .. not .. voice; all up front; not from .. back; no voice in .. @surround`,
  },
  'no-middle': {
    heard: `no center image; nothing between .. speakers|mains|boxes; no phantom center|middle; middle .. drop out; middle .. missing|empty|gone; no middle; singer .. no place; nothing in between; vague and nothing; empty center; hole in the middle; center image .. gone|missing|vague|lost; float everywhere; singer .. not .. in the middle; image .. vague; vague .. flip; nobody in the middle; middle .. fall|falls apart; phantom .. vague|gone|missing`,
    absent: `phantom .. rock solid; singer .. nails dead center; middle is there; there be a middle; middle .. filled; no hole in the middle; singer .. stand|stands|sits .. in the middle`,
  },
  echo: {
    heard: `echo; twice & hear|word|voice|everything|sound; slapback;
      echo; echoey; hear .. everything? twice; hit twice; everything|word|words|it|all .. twice; voice .. twice; double voice; voice .. double|doubled|doubling; double; delay like in a; train station; station announcer; stadium announcer; reverb on speech|voice; second voice .. bit|later|behind; chorus on; short echo; church; from a church; like .. cave; back in the cave; slap; slapback; flam; voice .. twice; repeat; delayed voice; bathroom echo; big hall; cathedral; reverberant; swim .. in reverb; echoes`,
    absent: `not doubled; dry .. no reverb; no echo; not echoey; single clean voice; not .. hear it twice`,
  },
  harsh: {
    heard: `s|esses & sting|hurt|hiss|spit|sharp|pierce|sizzle|cut; harsh; shrill; sibilant; piercing; screechy; grating; too & bright|sharp & voice|center|dialog|sound|highs;
      harsh; shrill; sibilant; s sound|sounds hurt; piercing; ear-piercing; edgy; metallic; screech|screechy; aggressive; spitty; strident; glassy; s .. sting; s .. hiss|spit|hurt|sharp|cut; lisp|lisps .. hiss; too bright; tizzy; sharp; brittle; too sharp; steely; grating; like a razor; glare; sharp edge; esses .. sharp|hurt|spit|hiss|sting; hissy; hiss on voice; fatigue|fatiguing;`,
    absent: `smooth .. nothing shrill; no sibilant; s .. fine; highs .. gentle; no sting; not harsh`,
  },
  'distorts-when-loud': {
    heard: `distort|clip|strain|crackle|break|compress & loud|volume|turn|crank|shout|scream; distortion;
      break|breaks up .. crank|loud|volume|turn; break up; distort; distortion; crackle .. shout|loud|scream; clip; clips; clipping; sound|sounds strained; strain|strained .. loud|turn; fart|farts out; crunchy; overload; overloads; not take .. loud; fall apart .. party|loud|volume|level; shout .. crackle; only when .. loud; rasp .. loud; buzz .. loud; bottom|bottoms out; cones flap; loud .. distort; goes into .. distortion; compress .. loud`,
    absent: `stay .. clean .. loud; no distortion; never break up; no break-up; without strain; not clip; clean .. even loud; plays loud without`,
  },
  rattles: {
    heard: `buzz; buzzing; buzzes; rattle; rattling; vibrate; vibration; vibrates; scratchy noise; loose screw; paper tearing; crackle .. in the|from .. speaker|center; zizzing; zizz; scrape|scrapes; rasp|rasps; something .. rattle; scratch; scratching; crackling; crackles`,
    absent: `never rattle; nothing buzz; no rattle; mechanical quiet; no buzz; dead silent cabinet`,
  },
  'out-of-step-with-picture': {
    heard: `lip|mouth|picture|video & late|behind|lag|delay|before|ahead|early|sync|after & sound|voice|audio|word|out|not|bad|off|dialog; lip|mouth & not & match|fit|move & word|voice|sound|dialog; dubbed & like|look|film|sound;
      lips .. not match; lip sync .. off|problem|issue|bad|wrong|out; sound .. behind .. picture; voice .. before .. mouth|lips; audio|sound lag|lags; out of sync; dubbed film; dubbed; delay between .. mouth; bad lip sync; bad lipsync; lipsync .. off|bad; sound .. late|lags; voice .. after .. lips|mouth; late after .. lips; out of step; voice .. lag .. lips|picture; not .. in sync; arrive late after the lips`,
    absent: `lip sync .. fine|ok|good|perfect; mouths and voices match; no lag; not .. lip sync; not .. lipsync; sound and lips together; not delayed; perfect|perfectly in sync; in sync; lips match; lipsync .. fine|ok`,
  },
  'just-prefer-two-channels': {
    heard: `prefer & stereo|two|without|phantom;
      prefer stereo; simply|just prefer; two speakers sound .. good; like it .. good without .. center; not want .. center; do not want a center; nothing wrong .. nicer|prefer|like; stereo guy; back to .. plainStereo; rather have the phantom; just like two speakers; prefer it without; prefer .. without .. center; like .. without the center; prefer two; just like stereo; matter of taste; nicer with two; prefer .. phantom|two|stereo; old school .. stereo; happier without`,
    absent: `not a matter of taste; do want a center; actual like .. a center; not one of those; not a stereo purist`,
  },
  thin: {
    heard: `tinny; thin & @talk|center|sound; telephone & like|sound;
      thin; no chest; like .. telephone|phone; telephone; weedy; voice .. no body|weight|bass|chest; no body; lack .. body|weight|bass|warmth; no weight; anemic; anaemic; lean voice; skinny; no low|lower voice; squeaky; transistor radio; kitchen radio; pocket radio; reedy; bass .. gone .. voice; no warmth; pinched; phone speaker`,
  },
  'small-and-lifeless': {
    heard: `lifeless; no|lack|without & life|punch|dynamics|energy|impact;
      small and lifeless; lifeless; small and|small voice; voice .. small; sound|sounds small; dead sound; no life; without life; no punch; no dynamics; flat and lifeless; sounds flat|tiny; toy; no presence; far away; distant; from the next room; voice .. far; dull and far; pale; boring; no energy; tiny; reserved; recessed`,
  },
  'gaps-between-speakers': {
    heard: `hole|gap & between & left|right|main|speaker|center; jump|hop & speaker|box & from|to|between & next|another|other;
      gap|gaps between; hole|holes between .. left|center|mains|speakers|right; three blobs; three separate|separated speakers|boxes|islands|sources; three islands; nothing between .. left|right|mains and .. center; jump .. from speaker to speaker; jumps .. left .. center; not connect|connected; three spots; hop .. from box to box|speaker; sound stays in the three boxes; between left and center .. nothing|empty|hole; hard left .. hard right .. center; no blend between; isolated`,
  },
  'whispers-lost-effects-loud': {
    heard: `ride & volume; explosion|effects|action|music & blow|wake|deafen|scare|shake & house|kid|baby|neighbor|out|us|wall;
      whisper .. bang|loud|explosion|boom|lost|hear; explosions|effects|action|music|score|bangs .. too loud|wake|deafening|blow|scare|shake; quiet talk .. loud; voice .. quiet|low .. effects|explosions|music .. loud; up for talk .. down for|action; turn it up .. talk .. down; riding the volume; ride the volume; up and down with the volume; thumb on the volume; volume up .. volume down; up .. voice .. down .. explosions; loud effects; dynamic range .. big|huge|large|too; effects .. blow; whispering .. score`,
  },
  'image-follows-head': {
    heard: `follow .. my head; voice|image|singer .. follow .. head|me; walk .. with .. head|me; image .. shift|move|flip|jump .. move|lean|head|seat; flip sides; when i lean .. image|voice|singer .. move|shift|jump|flip; move with my head; lean .. singer|voice|image .. other|left|right; moves to the nearer|near speaker`,
  },
  'weak-bass': {
    heard: `weak bass; bass .. weak|thin|gone|missing|lack|disappear; no bass; bass of .. singer .. disappear|gone; lack of bass; bass .. go .. thin; kick drum .. no|weak; no low end; bass guitar .. gone|thin; no balls; no punch in .. bass`,
  },
};
