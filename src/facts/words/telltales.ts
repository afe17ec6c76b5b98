/** Remarks that decide: where it is fine, what exactly was changed, which voices, who hears it elsewhere. */
import type { FamilyWords, Phrases } from './lexicon.js';

const SEATED = '@seatWord|@mainSeat|head|ears|eyes|heads|us';

/** Where the tape to the seat began. */
const tapedFrom = (thing: string): Phrases =>
  `from|between|beginning|start|starting .. ${thing} .. to .. ${SEATED}; ${SEATED}|distance ... measured|distance|counts|counted|taken|taped|took|start|starting|begin|meters|feet .. from|at|by|between .. ${thing};
  measured|measuring|tape ... ${SEATED}|sit|distance .. from|to .. ${thing}; distance .. from .. ${thing}; sit .. away from .. ${thing}; ${thing} to .. eyes|head|ears`;

export const telltaleWords: FamilyWords = {
  choices: {
    subwooferPlace: {
      'near-center':
        'subwoofer .. @under|beneath|near|by|below|beside|next|in .. center|television|screen|@furniture; subwoofer .. in the middle|centre; subwoofer .. right by|next|beside .. center; subwoofer .. under|beside|next to|near .. center',
      front:
        'subwoofer ... near|beside|by|next .. @leftMain|@rightMain|tower; subwoofer .. beside|next|near|by|between|left|right|outside|inside|under|behind .. @leftMain|@rightMain|@mains|tower; subwoofer .. front wall|left|right|along; subwoofer .. left|right of .. television|@furniture|screen|center; subwoofer .. between .. center|television|@furniture|and; subwoofer .. between .. mains|left|center; subwoofer .. beside .. main|left|right',
      corner:
        'subwoofer .. in|sit|stand|live|into|at .. corner; corner .. subwoofer; corner loaded|loading|subwoofer; subwoofer .. corner',
      seats:
        'subwoofer .. behind|beside|next|near|under|at|by .. sofa|seat|seats|me|us|my|listening|chair|back|armchair; subwoofer .. end table|side table; subwoofer .. rear|back .. room|wall|of; subwoofer .. behind|beside|next to .. sofa|seat|us|couch|me',
    },
    screenAgainst: {
      'clearer-up':
        'screen|cloth|sheet|fabric .. up|rolled|raised|off|away|aside|lifted|removed|out|retracted ... @good|bright|back|treble|highs|consonants|sparkle|different|night; lift|lifted|raise|raised|roll|rolled|retract|remove|removed|pull|pulled|without|crank .. screen|cloth|sheet|fabric ... @good|bright|back|treble|highs|consonants|sparkle|different|night; @good|bright|clear .. without|when|with|once .. screen|cloth|sheet .. up|rolled|raised|off|away|out; in the daytime with the television perfect; @screenCloth|cloth|canvas|sheet .. up|rolled|raised|away|lifted ... back|clear|loses .. veil|again|sounds?; lift|lifted|raise|raised .. @screenCloth|cloth|canvas|sheet ... come|comes back',
      same: 'screen|cloth|sheet .. up|down|rolled|raised|off .. or|and|vs|versus? .. no|not|same|nothing|identical|either; with or|and without .. screen|cloth|sheet .. no|same|not|nothing?; same|no .. with|whether .. screen|cloth|sheet .. up|down|without|raised|rolled; no difference .. screen up; @screenCloth|cloth|canvas|sheet .. up or down ... same; @screenCloth|cloth|canvas|sheet .. away|up|out|off ... equal|same|just|equally .. dull|unclear|same|muffled|bad|before|like; raising|lifting .. @screenCloth|cloth|canvas|sheet .. not .. clear|better|change; not .. screen .. out of the way; raising|lifting|raise|lift .. @screenCloth|screen ... not .. clear|better; @screenCloth|screen .. out of the way ... just|same|as',
    },
    allChannelMode: {
      yes: 'all channel|channels stereo; allChannels stereo|mode; multi|multichannel channel? stereo; party mode; same .. from|out|in .. all|every speaker|speakers|corner|box|channels; mode .. all .. speakers|channels|in .. name; five|seven|5|7 channel? stereo; all stereo; stereo in all|every; mode .. blasts|plays|sends|feeds .. every|all speaker|speakers .. same|with; all ch; every speaker .. same stuff|thing|signal|sound',
    },
    elsewhereToo: {
      headphones:
        'headphones ... just as; headphones ... same mumble|mumbling|problem|trouble|unclear|mush|swamp|thing; headphones .. also|too|still not|unclear|hard|bad|mumbling; same .. with|on|over|through headphones; headphones .. just as|also|too|still|equally|cannot|neither; headphones .. same mumble|problem|trouble|bad|unclear|mess; headphones .. not .. understand|follow|catch|clear; same|also|still|even|neither .. headphones; headphones too|also; with my? headphones .. announcers|too|also|same; on headphones too|same|also; on the train .. headphones',
      'other-room':
        'same|also|neither not? .. on|in|at .. car|bedroom|kitchen|tablet|phone|laptop|caravan|brother|sister|friend|parents; on|at .. brother|sister|friend|parents .. system|place|house|home .. same|also|too; bedroom .. same|also|too; bedroom|kitchen|tablet|phone|laptop|computer|office|caravan|study|den|friend|friends|neighbor|sister|brother|parents|television|set|hotel|cinema|car .. same|just|also|too|still|equally|no better|cannot|as bad|@unclear; same|also|equally|just .. on|in|at|with .. bedroom|kitchen|tablet|phone|laptop|computer|caravan|friend|neighbor|sister|brother|parents|car; same .. trouble|problem|mumbling|thing .. at|in|on .. bedroom|friend|kitchen|other; at|in|on .. friend|friends|sister|brother|parents|bedroom|kitchen|cinema|hotel|center ... same|exact|also|too; my sister|friend|buddy|neighbor|brother .. same .. problem|bad|whisper|subtitles; on a tablet .. subtitles|same; streams .. tablet .. switched the subtitles; totally different system .. same',
      'fine-elsewhere':
        'headphones|bedroom|kitchen|tablet|phone|laptop|caravan|car|radio|other room|rooms|elsewhere .. @good|no|every; @good|every .. on|in|at|with|through|via .. headphones|bedroom|kitchen|tablet|phone|laptop|caravan|car|radio; in the shop .. fine|good|perfect; at .. friend|buddy|brother .. fine|clear|perfect; in the old place center was|were ace|fine|great; in her|his|our former flat .. crystal|fine|perfect|clear; in the old flat .. fine|perfect|good|great; worked in the old; in the old house .. perfect|fine',
    },
    centerPointsAt: {
      ears: 'points|pointing|point|aimed|aim|angled|tilted|tipped|wedged|faces|facing|firing|inclined|fires .. at|to|toward|towards .. ears|ear|head|heads|listener|listeners|my|me|us|listening|face|eyes|@mainSeat; looks|look|leaned|leaning .. straight? .. in|at|to .. face|us|eyes; aimed|inclined|points|pointed|tilted .. my|the head|ears|seat; laser pointer; top .. center ... head|ears|face; @aims .. directly|straight|right|exactly .. ears|face; @aims .. where .. ears',
      below:
        'points|pointing|point|aimed|aim|faces|facing|firing|fires|fire|shoots|blows|plays|talks|beams|looks|speaks .. at|to|into|toward|towards|straight .. knees|knee|chest|chests|legs|floor|shins|shin|feet|table|ankles|belly|stomach|shoes|carpet|rug|waist|laps|lap|below|sofa; level|flat|horizontal|horizontally .. below|under .. ears; at the knees; points .. knees|chest|legs|floor; pointing .. knees|below; center|it ... hits|looking|looks|aims|@aims .. stomach|belly|low|knees|chest|seat of the|table|feet; top .. center ... belly|knees|chest|stomach; too low .. seat|chest; hits us in; looking too low',
      above:
        'points|pointing|point|aimed|aim|faces|facing|firing|fires|shoots|tilted|angled|blows .. over|above|past|ceiling|at .. heads|head|ceiling|us|ears|me; fires over; at the ceiling; center|it ... @aims .. above|over|higher|past .. head|heads|us|ears|me; top .. center|sight ... above|over .. ears|head|heads; center ... above|over .. ears|head|heads; over our heads; well above .. ears',
    },
    whichVoices: {
      low: '@trouble|boomy|boom|worst .. on|with|for @male|deep|low; @male .. boom|boomy|honk|thick|fat|chesty|barrel|@bad|@unclear|boxy|bassy|chest|drone|worst|most; only|mostly|mainly|especially|worst .. men|male|man|baritones|narrators; every|all|only|any male|men|deep|low|baritone voices|voice|narrator|speak|talk; when|always .. deep|low|fat voice|voices|man speak|speaks|talks; with|on men|male|blokes|guys; with|on|in|most|mostly|worst deep|low|male voices; =men|=guys|chaps|blokes|male|deep .. sound|speak|talk|have|boom .. like|as|no|from|in|barrel|thin|thick; deep|low|male chaps|men|voices|guys|fellows above|all|worst|most|only; deep|low voices .. @bad|boom|chesty|worst|buzz|rattle|muddy|thick; men voices have|sound|boom|come|are; @male .. women|female .. @good|right|fine|nothing; deep male voices; boomy|boxy|muddy|thin|honky on men|male',
      high: '@female .. shrill|sharp|sting|screech|harsh|@bad|@unclear|worst|most|lose|thin; only|mostly|mainly|especially|worst .. @female; high voices|voice .. @bad|shrill; cannot|not hear .. ladies|women|girls|child; women|female only; kids voices',
      's-sounds':
        's|ss|esses|sibilant .. change|spit|spitty|sharp|sting|hurt|gone|missing|lost|disappear|vanish|splash|lisp|hiss|razor|swoosh|go|sch; s and t|f|th|z; lose|lost|missing .. esses|s; only the hiss sounds; s sounds only|mostly; only|mostly .. esses|sibilants|s',
      soft: 'whisper|whispered|murmur|murmured|hushed|quiet|soft|mumbled .. lines|voices|voice|dialog|passages|speech|words|parts|scenes .. lost|gone|disappear|vanish|drown; whispers|whispering .. lost|gone|disappear|cannot|vanish|drown; only .. whispers',
      all: 'all voices @unclear|@murk|swim|alike|same|sound; men and women alike|both|the; every voice .. @unclear|dull|muffled',
    },
    fineContent: {
      'two-channel-music':
        '@recordings|music|stereo|plainStereo .. @good; @good .. with|for|on|with .. @recordings|music|stereo',
      'multichannel-film':
        '@film .. @good; @good .. with|for|on|in .. @film; movie .. very pleased; discs .. five channels .. beautiful; movie .. all fine|great|perfect|fine',
      television:
        '@news|television|commentary|football|sport|sports .. @good; @good .. with|for|on .. @news|television',
    },
    fineSeats: {
      middle:
        '@mainSeat|middle .. hear|get|understand|follow .. fine|good|all|everything|every|perfect; @mainSeat|middle .. @good|every; @good|every .. in|at|from|on .. @mainSeat|middle; i sit .. middle .. @voice|words|it .. crisp|clear|fine|perfect; i|me|self .. in .. center|middle ... no issue|problem|trouble; in the mainSeat .. fine|lovely|clear|perfect|great|good; hear everything in the middle; middle seat flat|fine|clear',
      'other-height':
        '@good .. when|if .. sit|lie|slide .. floor|carpet|ground|low|lower|down; when .. slide|slip|slump down .. @good|bright|brighter; stand|standing|kneel|crouch|squat|slouch|recline|lie|get|sit up|straight|upright|higher|lower|down ... @good|back|there|comes|clear; crouch|kneel|squat|slouch|stand ... treble|highs|voice .. back|return|clear; @good .. when|if|once .. stand|kneel|crouch|slouch|lie|recline|up; stand up .. clear|fine|good|different; when i stand .. clear|good|fine; clear sitting up',
      near: 'one|half|# .. in front|from|away|before|of .. it|center|speaker|box .. @good; close|near|head|ear|ears|nose|kneel|squat|right .. to|at|by|front|against .. it|center|speaker|box|grille .. @good; near|close to? .. @good; meter|metre .. front .. clear|glass|bell; close up .. clear|fine',
      'front-row':
        '@frontRow .. @good; in front .. marvelous|perfect|clear|hear; front row|seats|rows .. @good|every; in front .. @good',
    },
    smallHeadMove: {
      changes:
        '@headMove .. head|my|forward|back|inch|inches|sideways|hand|bit|little|cm|# ... change|different|swish|whoosh|comes|goes|vanish|jump|flutter|shift|phase; head .. change|different|swish|whoosh; inch|inches|hand|# .. left|right|sideways|up|forward|aside ... change|different|swish|whoosh|comes; @headMove .. head .. few|inch|inches|hand|wide|cm|bit|little|#; head .. inch .. change|whoosh|different; lean .. whoosh|swish|change; nod .. treble; slouch .. change; when i lean; get up or slouch',
      steady:
        '@headMove .. head .. no|not|never|nothing|same|steady|stable .. difference|change|matter?; head still or moving|moved; steady|same|stable .. when|if|however|wherever .. @headMove .. head; up and down .. nothing|no; head .. nothing|no difference|change; steady wherever',
      'up-down':
        'head .. up or|and down .. change|morph|swish|different|inch|inches; bob .. head; only up and down; nod .. change|morph|swish|different|treble',
    },
    hearingChecked: {
      fine: 'ears|hearing .. tested|checked|test|check|audiogram|audiologist .. fine|ok|normal|perfect|good|passed; tested|checked .. ears|hearing .. fine|normal|perfect|ok|good; hearing .. fine|perfect|excellent|normal|good; ears .. fine|perfect|normal; hearing .. fine|ok|tested|age appropriate; ent says .. fine; test|tested ... pass|passed|normal .. good|values|normal|fine; hearing|ears|ear|audiogram|audiologist .. test|tested|checked|examined|doctor|ent ... fine|normal|perfect|order|pass|good; =hearing|=ears .. fine|normal|perfect|order',
      loss: 'loss on|in|of .. ears|ear|both|hearing; ear doctor .. loss; has|have some|a|slight|mild .. loss; hard of hearing; half|bit|little|rather|partly|slightly|nearly|going|going? deaf; hearing .. loss|poor|failing|weak; tinnitus; audiogram .. drop|loss|down|shows; i|he|she|dad|mum lost .. hearing|highs; audiologist .. loss|drop; told .. loss; loss .. up top|high|both ears|ears; hearing .. bad; lost .. high|hearing|frequencies; hearing|ears|ear|audiogram|audiologist|loss .. reduced|moderate|mild|severe|minus|no longer; moderate|mild|severe|slight|some .. loss; no longer good .. hearing|ears|ear|audiogram|audiologist; hearing|ears|ear|audiogram|audiologist .. no longer good; hearing|listeners .. reduced; loss|minus|drop ... above|khz ... ears; audiogram ... minus|drop|loss|both',
      aid: 'hearing aid|aids|instrument; hearing device|devices|implant; wear|wears|wearing .. aids|aid; cochlear|hearing .. implant|aid|aids|device; thing|things .. behind .. ear',
      not: 'refuse|refuses|not|never|wont .. hearing .. test|tested|check|checked; never|not .. tested|checked .. hearing|ears; hearing .. never|not .. tested|checked; not .. audiologist|hearing test|check; ears|hearing .. tested|checked .. never|not|supposed; never went to .. hearing|audiologist|ear; supposed .. ears|hearing; never|not|no .. hearing|ears|ear|audiogram|audiologist .. test|tested|doctor|checked|examined; hearing|ears|ear|audiogram|audiologist .. never|not .. test|tested|checked|examined|looked; never .. ear doctor; not .. had|have .. audiogram; nobody|never|not|refuse|refuses .. test|tested|examined|checked|looked .. =hearing|=ears|=ear; not|never .. see|been .. doctor; refuse|refuses|never|not .. hearing|ears|ear .. test|checked|examined|looked; never had them|it examined|tested|checked; not think .. hearing',
    },
    settingsFromElsewhere: {
      yes: 'still had|has his|her|their .. room|settings|numbers|distances; distance|distances|levels|settings|trims|calibration|values|entries|numbers|setup|those|ones|tuning|delays .. from|of .. old|previous|former|last|other|before|owner|seller|friend|flat|house|home; @settingsWord .. old|previous|former|last house|flat|room|home|place|speakers|setup|system|owner; @settingsWord .. kept|still|left|never cleared; kept .. its? settings|values|calibration; still|never .. @settingsWord .. previous|old|former|from; used|secondhand|second|inherited .. settings|never reset; previous owner|owners .. settings|distances|calibration; nobody|not|never .. touched .. numbers|settings|menu .. since|made; numbers|settings|distances|values .. made in|at|for .. old|other|his|her|another|barn|shop; from the old flat|house|room|place; still says .. old flat; settings .. previous owner|old|before; receiver .. from .. friend|father|cousin|uncle; moved house|home|flat ... never|not .. @autoSetup|calibration; used|secondhand|second ... previous|former owner; @settingsWord ... come|from .. bedroom|flat|house|home|where .. before; @settingsWord|calibration .. with|for .. old|former|previous|other speakers|system|center|@mains; not made here; @autoSetup|calibration|measured .. with .. old|former|other speakers|@mains|bookshelf|center|receiver',
      no: '@settingsWord .. made|done|run .. in this room|here|in here; done .. in this room; calibrated here; @settingsWord|calibration|setup ... in .. here|this|very room|place; @settingsWord|setup ... here|new|anew .. fresh|same|here; @settingsWord|setup|calibration .. after|since we|i moved; @settingsWord .. belong|fresh|made .. here|room; nothing .. moved|carried .. another|over|old',
    },
    microphonePlacement: {
      stand:
        'microphone .. tripod|stand|boom|pole; tripod|boom|stand .. microphone; tripod; microphone .. boom|stand|tower|pole; cardboard tower; tower .. microphone; nothing near it',
      hand: 'held|hold|holding .. microphone; microphone .. hand|hands|held|holding; microphone .. in my? hand; hand held; gripped|gripping|held|arm .. microphone; microphone .. arms length',
      cushion:
        'microphone .. on|lay|lie|lying .. cushion|pillow|backrest|back|armrest|arm|headrest|table|sofa|seat|blanket|book|box|lap|knee; microphone on the|a|my .. sofa|seat|table|armrest; microphone .. cushion|table|headrest|armrest|sofa|back|seat; microphone on the; microphone .. sitting|stood|put|was .. backrest|cushion|armrest|table|sofa|pillow',
      shaded:
        'microphone .. behind .. cushion|pillow|back|headrest|table|person|head|me; between .. microphone .. and; microphone .. covered|shaded|buried|hidden|low behind; @clutter|head|table|screen|person|plant|laptop ... between|blocked|front .. microphone; i|he|she|we stood .. front .. microphone; microphone .. not see; blocked .. microphone; in the way ... microphone; microphone ... in the way; stood .. in front of .. microphone; between .. microphone|setup and; blocked .. line .. microphone; standing between .. microphone',
    },
    twinArrangement: {
      'side-by-side':
        'they|both|two sit|stand|lie side by side|next; two|both|pair|twin|2 .. center|centers|center speakers .. side by side|next|beside; centers .. next|beside|alongside; centers .. side by side; two centers .. side by side|left and right|next to',
      'above-below':
        'one .. @above|top .. one|other|another|second .. @under|bottom; one .. @under .. one|other|another|second .. @above|top; centers .. above and below|under; @above and @under .. picture|television|screen; a? second center|one .. above|over .. television|screen|picture; center below .. twin .. above',
      stacked:
        'two|both .. center .. stacked|on top of; centers stacked; stacked centers; one .. on top of .. other',
    },
    mainsWhenLoud: {
      clean:
        '@mains|@leftMain|@rightMain .. clean|fine .. at|when|same|loud|level|even|that; @mains|@leftMain|@rightMain clean; @mains|@leftMain|@rightMain|left and right|others|towers|fronts .. stay|remain|play|keep|are|go|take|sound|handle|loud .. clean|effortless|loud|fine|unstrained|composed|without|no|same|unbothered|calm|relaxed|easy|easily|never; mains .. stay clean; @mains|@leftMain|@rightMain .. perfectly|still .. clean|clear|good|fine; @mains|@leftMain|@rightMain .. stay|keep|remain|play .. clean|effortless|clear|without strain; loud|crank|=high|harsh|rough ... @mains|@leftMain|@rightMain .. clean|fine|clear|good|effortless|without; @mains|@leftMain|@rightMain .. effortless',
      'strain-too':
        '@mains|@leftMain|@rightMain|left and right|all|everything|others|towers|fronts .. strain|distort|harsh|break|clip .. too|also|as|well|equally|likewise; mains .. strain|distort too|also; @mains|@leftMain|@rightMain|towers .. strain|strains|harsh|distort|distorts|dirty|rough|shriek|stressed|break|breaks|clip|shouts .. too|also|as|like|just|well; @mains|@leftMain|@rightMain .. get|becoming|become|sound .. strain|strains|harsh|distort|distorts|dirty|rough|shriek|stressed|break|breaks|clip|shouts; everything|all .. strain|strains|harsh|distort|distorts|dirty|rough|shriek|stressed|break|breaks|clip|shouts .. loud|high|volume; mains included; not .. just|only the center ... @mains|@leftMain|@rightMain .. strain|strains|harsh|distort|distorts|dirty|rough|shriek|stressed|break|breaks|clip|shouts',
    },
    toneDiffers: {
      yes: 'center .. =sharper|=duller|=darker|=brighter|=thinner|=harsher|=boxier|=muddier .. than .. @mains|left|other|others|rest; hiss|noise .. another|different|other tone|color; center|it|middle .. not .. sound|tone|match|blend|fit|mate .. like|same|as|with|match|@mains|left|right|others|rest; center|it|middle .. different|other|another|own .. tone|voice|color|timbre|character|sound|flavor|tonality|personality; different tone|color|timbre|character|tonality|voicing|flavor; not match .. tone|tonal|timbre|color; unlike|differ|differs|different from|than|to .. @mains|left|right|others|rest; tonal mismatch|different|difference; timbre .. mismatch|different|off|jump|changes; sound|sounds like .. different|another .. speaker|brand|loudspeaker|system; center .. from another|different planet|world; different timbre|tone|character; silver .. velvet; another timbre; honky .. sweet; tone differs|different',
      no: 'noise|hiss ... same tone|color; @testNoise|noise|tone .. identical|alike .. on|in|from all|three|left|@mains; sound|sounds alike|identical|same .. all three; tonally|timbre .. match|identical|same|alike|close|seamless; cannot|not .. tell .. center|them .. apart|from; same tone; sound alike',
    },
    listenersDiffer: {
      differ:
        '@kin .. not|nothing|never .. hear|notice|bother .. it|at|anything|same|in; i hear|notice .. @kin .. not|nothing|no; @kin hears|notices .. nothing|fine|no|none|other; @kin says .. nothing|fine|other; @kin .. fine .. i; disagree|disagrees|differently|different ears; @kin .. gets|understands|hears|follows|understand .. all|everything|lot|every|fine; i .. cannot ... she|he .. all|everything|every|fine|no; wife|husband|partner|roommates|kids .. hears nothing|fine|crazy; my wife .. points to the middle; i hear .. she|he not; nobody else hears',
      alike:
        'we|both|two .. both|same|alike|agree .. hear|same|thing|it|on; @kin .. hear|hears|notice .. it|same|too|also; @kin agrees|agree; we both|all agree|hear; @kin .. in|from .. same .. seat|chair .. same|exactly|also|too; @kin .. hears exactly? .. the same; everybody hears it',
    },
    faultyMain: {
      left: 'left speaker|main|tower .. dead|silent|wired wrong|reversed; leftMain .. dead|silent|crackles; dead|silent|broken|blown ... leftMain|left =main|@leftMain',
      right:
        'right speaker|main|tower .. dead|silent|reversed; rightMain .. dead|silent|crackles; right side goes quiet; dead|silent|broken|blown ... rightMain|right =main|@rightMain',
      both: 'both @mains|mains .. @strain|scratch|dead|buzz|distort',
      none: 'nothing .. wrong|broken .. with .. @mains|main; @mains|both mains .. fine|ok|healthy|intact',
    },
    heightAgainstMains: {
      same: 'tweeters|tweeter|three|@lcr .. same|one|equal|identical|level .. height|line|level; all .. same|equal|one height; same height as .. @mains|@leftMain|@rightMain|left|others; level|line|flush|aligned with .. towers|tweeters|mains; center .. same|equal height; at the same height; center|tweeter ... as high|same height|equal|level .. as|with .. tweeters|@mains|@leftMain|@rightMain|others|fronts; center .. @mains|@leftMain|@rightMain|others|fronts .. line up; not lower and not higher; neither lower nor|or higher; just as high as .. @mains|@leftMain|@rightMain|others|fronts; tweeter .. equal',
      lower:
        'center .. lower|below|under|beneath|deeper .. than|tweeters|@mains|@leftMain|@rightMain|left|them|those|others; center .. # lower|below; tweeters? of .. @mains|@leftMain|@rightMain .. higher|above .. center; tweeter .. far|well|much|deep|way .. beneath|below|under|lower .. theirs|@mains|@leftMain|@rightMain|others|fronts|tweeters; @mains|@leftMain|@rightMain|others|fronts .. tweeters .. higher .. center|one; center .. not reach .. height .. @mains|@leftMain|@rightMain|others|fronts; well under',
      higher:
        'center .. higher|above .. than|tweeters|@mains|@leftMain|@rightMain|left|them|others; center .. # higher|above .. @mains|@leftMain|@rightMain|left; center ... well|far|much? over|above .. tweeters|@mains|@leftMain|@rightMain|others|fronts; tweeters .. @mains|@leftMain|@rightMain|others|fronts|left and right .. lower|below .. center; center .. tweeter .. more|further|higher up|above .. than|tweeters',
    },
    troubleSide: {
      left: 'bad|worse|worst|only|just|more|mostly .. on|at|from|to .. left side|end|seat|hand|half|of; only .. left seat|side|end|hand; left seat only',
      right:
        'bad|worse|worst|only|just|more|mostly .. on|at|from|to .. right side|end|seat|hand|half|of; only .. right seat|side|end|hand',
      both: 'both ends; either end; equally .. both ends|sides; both sides .. equally|same|alike|bad; at both sides|ends; left and|or right ends|end|seats; left and right ends|end|seats|seat|sides .. equal|equally|same|alike|both|bad; both ends|sides .. bad|same|alike|equal|@trouble; either end|side .. bad|same|alike|@trouble; left or right end|seat|side .. same|no|equal; same on the other side; left seat bad .. right seat bad',
    },
    loudnessCompensation: {
      on: 'loudness be? on|engaged|active|pressed|enabled; with loudness; loudness compensation|contour|button|key|eq .. on|active|engaged|pressed; dynamic eq|equalizer .. on|active|enabled|engaged',
      off: 'loudness|loudness compensation|button|key .. off|not|disabled|out; no loudness; without loudness; dynamic eq|equalizer .. off|disabled',
    },
    fineTitles: {
      most: 'other|others|all|rest .. titles|films|movies|shows|discs|series .. @good; most|many|other|others|rest .. @film|titles|shows|discs|series|stuff .. @good; everything|all else .. @good; it .. that one only; everything|all else .. intelligible|plain|perfectly; all of it .. perfect|plain|@good',
      news: 'only|just .. news|newscasts|newsreader .. @good; lone|only|single newsreader|presenter .. @good',
      'other-mix':
        '@language dub|dubbed|track|version|language|soundtrack|mix|audio .. @good; other|original|stereo|different track|version|language|mix|dub .. @good|clear; dub|dubbed .. @good; same .. in @language .. @good; with|on|in|same|to .. @language track|dub|version|soundtrack .. follow|understand|clear|fine|nearly|every|good',
    },
    correctionState: {
      changed:
        'not .. run|done|repeated .. @autoSetup|calibration since; @autoSetup .. done|run|made before .. screen|cloth|furniture|sofa|carpet; screen .. up|down|not .. when|while|during .. run|ran|measured|calibrated|@autoSetup; @autoSetup|run|ran|measured|calibrated .. with|without|before .. screen|cloth|furniture|sofa|curtains|carpet|new; before .. screen|cloth .. came|down|in|installed|hung|was; run|ran|calibrated|@autoSetup .. screen .. up|rolled|raised; moved|got|pulled|bought|new|changed ... since|after|older|before .. @correction|@autoSetup; @correction|@autoSetup|measured ... speakers|room|furniture|center|sofa .. another|other|different .. place|way; room .. not .. when .. @correction|measured; @correction|@autoSetup .. older',
      'as-now':
        '@autoSetup|run|ran|rerun .. with .. speaker|center|it|screen .. in|where|as .. hole|place|now|is|stands|bay|cabinet; ran .. after .. in place|moved|everything; nothing|not|no|never .. moved|shift|shifted|changed|touched ... since|after .. @correction|@autoSetup|measurement; @correction|@autoSetup|calibrated|measured ... everything|furniture|screen|room|speakers .. same|exactly|unchanged|as .. today|now|when|stands|same; room|everything .. unchanged|same|exactly ... @autoSetup|@correction|measurement|measured; calibration .. screen down; redid|reran|ran .. @correction|@autoSetup yesterday|last|today',
    },
    toneControl: {
      on: 'bass|treble|tone .. turned|set|knob|control|up|at .. up|+|plus|down|max|boosted|full|#; loudness key|button .. on|in; switch|filter .. at? the? back .. on|set; =loudness .. switched? on; tone control|controls .. active|on|used; bass|treble .. raised|boosted|made|turned .. little|bit|up|lower|down; raised|boosted .. bass|treble',
      off: 'tone controls|control|knobs .. flat|off|zero|0|neutral|middle|center|defeat|bypassed|12; bass and treble .. flat|zero|0|neutral|middle|off; never touch .. bass|treble|tone; nothing .. switched on for the tone; no|never|not .. tone|bass|treble|loudness .. control|=setting|active|touch|switched|flat',
    },
    measuredHoleSeat: {
      side: '@sideSeat|armchair|side|off axis|end ... dip|hole|null|notch|suckout|gap|trough .. #?; dip|hole|null|notch|suckout .. at|in|from|on .. @sideSeat|armchair|end|side; dip|hole|null|notch ... side|end|off|@sideSeat|@kin; far end|chair|side|seat|place|row ... dip|hole|null|notch; last|outer|far|side|end chair|seat|end|place .... dip|hole|null|notch; far end .... dip|hole|notch',
      main: '@mainSeat ... dip|hole|null|notch|suckout; dip|hole|null|notch|suckout .. at|in|from .. @mainSeat; dip|hole|null|notch ... where i|we sit; dip|hole|null|notch ... @mainSeat|middle|spot|best place; @mainSeat|prime .. dip|hole|null|notch; dip|hole|null|notch .... middle .. sofa|row; dip|hole|null|notch .... best|main|my|usual place|seat|spot|chair; where i always? sit ... dip|hole|notch; prime spot .... dip|hole|notch',
    },
    holeFollows: {
      seat: 'dip|hole|null|notch .. moves|shift|shifts|wander|wanders|slides|changes .. seat|sofa|along|microphone|row|position; microphone ... dip|hole|notch|null .. move|moves|shift|shifts; dip|hole|null|notch|suckout ... each|other|every|another|next|one .. seat|chair|place|row; seat|chair|microphone|place .. beside|over|right|left|other ... dip|hole|null|notch|suckout; dip|hole|null|notch|suckout .. changes .. seat; changes .. from one seat|place|chair; dip|hole|notch .... changes|moves|shifts .. seat|chair|place',
      box: 'dip|hole|null|notch .. gone|move|moves|shift|shifts|shrink|shrinks|fills|vanish|disappear .. when|once|if|after|with .. speaker|center|box|pull|pulled|forward|moved|out; dip|hole|null|notch|suckout .. follows|depends|went|got|moves|changes|moving ... center|box; moved|moving|slid|pulled|put|lift|raised .. center|box|speaker ... dip|hole|null|notch|suckout; center|box .. other|different height|place|spot ... dip|hole|null|notch|suckout',
      cover:
        'dip|hole|null|notch .. gone|shrink|shrinks|fills|half|halves|less|vanish .. with|when|once .. blanket|towel|cushion|rug|foam|cloth|felt|cover|covered; @softThing|blanket|towel|pillow|duvet|cushion ... dip|hole|null|notch|suckout; dip|hole|null|notch|suckout ... @softThing|blanket|towel|pillow|duvet; blanket|towel|duvet|pillow|cushion|rug|carpet .... dip|hole|notch .. smaller|less|filled|shallower|shrinks|gone|half|much',
      nothing:
        'dip|hole|null|notch|suckout .. never|stays|always|stuck|not .. budges|put|same|move|moves|stuck|frequency; nothing|neither|none ... dip|hole|null|notch|suckout; dip|hole|null|notch|suckout .. stuck; dip|hole|null|notch|suckout .. whatever i; neither|nothing|nor .. difference|shifted|reduced|moved|changed .. dip|hole|notch; nothing ... dip|hole|notch',
    },
    voiceLift: {
      on: 'dialog|voice lift .. on|up|at #; dialog|voice lift .. on|active|set|at|engaged|enabled|#; @voiceLift ... on|activated|active|enabled|engaged|in; activated|enabled|turned|use|using .. lift|lifts|raises|@voiceLift; raise|raises|lift|lifts .. voice|voices|dialog ... @surround|picture|help ... on|activated|active|in',
      off: 'dialog|voice lift .. off|zero|0|not|disabled; @voiceLift ... off|zero|not|disabled|out|inactive|deactivated; lift feature .. not; raise|raises|lift|lifts|put .. voice|voices|dialog ... @surround|menu|picture|up ... disabled|off|not use|used; lift|raises|lifting .. voice|voices|dialog ... =off|out|disabled|inactive',
      none: 'no|not|lack|lacks|without|never .. @voiceLift; @voiceLift ... not .. offered|exist|there|available; no|not|lacks|cannot ... lift|lifting|raise|share .. voice|dialog|voices .. up|@surround|picture?; no function .. lift; not|no .. exist|function .. lift|lifting; lift|lifting .. not exist|available|offered',
    },
    conesSeen: {
      'two-side-by-side':
        'two|2|pair|both cone|cones .. side by|next|beside|left and .. side|other|right; two equal|identical|same|round|black cones; @coneWord .. @coneWord .. row|line|side; @coneWord tweeter @coneWord; two|both|pair|dual|2 .. @coneWord|round|equal ... side|next|beside|left|right|horizontal; @coneWord .. one|1? left .. one|1? right; @coneWord .. horizontal|beside|next; @coneWord .. tweeter .. @coneWord; @coneWord .. beside|alongside; @coneWord .. sit|lie|are|one .. @mains',
      one: 'only one @coneWord; center ... single|lone|solitary .. unit|driver; center ... single|lone|only|solitary .. @coneWord|round; center ... one @coneWord; single|lone|solitary .. @coneWord ... center; one @coneWord ... center; center|mine ... single|lone|solitary .. unit|speaker',
      'two-above-each-other':
        'two|both|pair|dual|2 .. @coneWord|same|speakers ... above|over|top|upper|stacked|vertical|under|lower|up; @coneWord .. stacked|vertical; one @coneWord? .. top ... other|second .. under|below; one .. over|above .. other',
      more: 'three|four|five|six .. equal|identical|same .. @coneWord|speakers; center ... three|four|five|six .. @coneWord|little|small|equal|identical|them; three|four|five|six .. @coneWord ... center',
    },
    rearPort: {
      yes: 'port|ports|ported|hole|opening|vent|reflex|tube .. at|on|in|out .. back|rear|behind; rear|back port|ported|ports|firing|vent|hole; reflex .. back|rear; center ... port|hole|vent|opening|pipe .. back|rear|behind|wall; port|vent|hole|bass .. center ... back|rear|behind|backside; fires toward the? wall; behind .. center .. hole|port',
      no: 'port|slit|vent|hole .. center ... =front|bottom|baffle|under; no .. port|hole|opening|vent .. at all|anywhere|rear|back; port .. on the front; center ... no|not|without .. port|vent|hole|opening; no|not .. opening|hole|port|vent .. rear|back; slit|port|hole|vent .. bottom|front',
    },
    mainsPowered: {
      yes: '@mains|left and right|fronts .. active|powered|amplifier|amplifiers|wireless|self; active|powered|wireless @mains|fronts|towers|monitors|left',
      no: '@mains .. passive; passive @mains|speakers|towers',
    },
    noiseFrom: {
      receiver:
        'receiver|avr .. own? noise|hiss|tone|tones; noise|hiss|tone|tones of|from|in .. receiver|menu|avr; built in .. noise|tones; @testNoise .. in|from|of|out|by .. receiver|amplifier|menu|itself|remote; receiver|amplifier|menu .. makes|sent|sends|its|generate|level .. @testNoise; pressed @testNoise; not .. any? disc .. @testNoise .. amplifier|receiver; @testNoise .... amplifier|receiver .. makes|own|itself|level|channel',
      file: 'noise|tone|tones .. from|off|on .. file|disc|disk|download|stick; test disc|file; @testNoise ... file|stick|disc|dvd|bluray|wav|download|video|online|stream|laptop; file|disc|dvd|bluray|wav|stick|video .. for|with|of .. @testNoise; calibration bluray|disc|dvd; played .. file; calibration bluray|disc|dvd ... @testNoise',
    },
    testStillTwo: {
      'still-two':
        'still .. like|liked|prefer .. stereo|two|plainStereo|without .. better|every|time; levels .. matched ... still .. two|stereo|plainStereo; long go at it .. no',
    },
    polarityMeasured: {
      'center-inverted':
        '@recorded ... center|=c .. @inverted; center|=c .. @inverted ... @recorded; center|=c @recorded ... @inverted; @recorded & center|=c & @inverted; center .. negative ... @recorded; @recorded ... center .. down|wrong|opposite',
      'left-inverted':
        '@recorded ... @leftMain|=left .. @inverted; @leftMain|=left .. @inverted ... @recorded; @leftMain|=left @recorded ... @inverted; @recorded & @leftMain|=left & @inverted; @recorded ... left|@leftMain .. wrong|opposite .. polarity?',
      'right-inverted':
        '@recorded ... @rightMain|=right .. @inverted; @rightMain|=right .. @inverted ... @recorded; @rightMain|=right @recorded ... @inverted; @recorded & @rightMain|=right & @inverted; @recorded ... right|@rightMain .. wrong|opposite .. polarity?',
      alike:
        '@recorded ... @lcr|three|all|none .. same|alike|positive|up|phase|agree|direction|flipped; @recorded & @lcr|three|all & same|alike|agree|phase; @lcr|three|all .. same|direction|agree ... @recorded; @recorded ... left .. right .. all|same|positive; @recorded ... none|not|nothing .. flipped|inverted|reversed; three|all|@allChannels|@lcr .. same direction|way|polarity; @recorded .. left .. center .. right ... same|positive|phase',
    },
    seatDistanceFrom: {
      mains: tapedFrom('@mains|@leftMain|line|speakers'),
      display: tapedFrom('@display|@picture'),
      wall: `${tapedFrom('=wall')}; ${tapedFrom('front =wall')}`,
    },
    obstacleMake: {
      solid:
        'thing|object|panel|what|edge|box .. front|before|covers|blocks|hides .. center ... wooden|wood|glass|metal|ceramic|plastic|board|solid|massive|porcelain|stone|steel; front|before|blocks|hides .. center ... wooden|wood|glass|metal|ceramic|plastic|board|solid|massive|porcelain|stone|steel; not .. cloth|fabric .. hides|covers|front ... board|wood|solid|massive',
      cloth:
        'front|before|over|covers .. center ... cloth|fabric|curtain|textile|airy|mesh|gauze|net; cloth|fabric|curtain|textile|airy|mesh|gauze|net .. hangs|stretched|front|before|over .. center; breathe|air|breath|breathable .. through|passes|easily|cloth|fabric',
    },
    obstacleFrom: {
      below:
        'thing|@clutter|object|obstacle|vase .. stands|rises|stand|comes|reaches|up .. front|shelf|floor|rack|cabinet|up ... center|line|sight; stands in front .. center; stand|stands|standing .. @furniture .. blocks|covers|hides|cover ... center; covers|blocks|hides .. lower|bottom .. half|part|center; from down .. up',
      above:
        'television|display|screen|@picture|panel .. hangs|hang|comes|goes|dangles|overlaps|overhangs|lowered .. down|over|front|center|top; lower edge .. television|display|screen|@picture|panel; from above ... center|overlaps|covers; overlaps .. center; covers .. top|upper .. center; edge .. hangs|overhangs|covers .. center|top',
    },
    boundarySwitch: {
      none: 'no .. placement|position|boundary|wall switch',
      wall: 'switch ... wall|boundary',
      free: 'switch ... free|freestanding|neutral|open',
    },
    sideWalls: {
      both: 'wall .. next|beside|near|by|close .. @leftMain ... @rightMain|another; both @mains|speakers .. near|next|close|by .. wall',
      'one-side':
        '@leftMain|@rightMain|left|right .. wall ... @leftMain|@rightMain|left|right|other .. open|free|room|no',
      neither: '@mains|both .. far|away from .. side? =wall|=walls',
    },
    triedTrim: {
      'not-tried':
        'not|never|nobody .. tried|turned|raised|touched|touch|attempted|changed .. center|=level|level; center level .. untouched|untested; center .. untried; untried',
      cured:
        'more level|center ... @good|gone|away|happy|every; center raised|plus .. # ... @good|gone|follow|every; raised|turned .. center ... follow every',
      louder:
        'more level|center ... only|merely|just louder; raised|turned .. center .. up? .. merely|only|just louder',
    },
  },
};
