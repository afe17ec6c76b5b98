/** What is played, where, when and by whom the trouble is heard, and the people and the room around it. */
import type { FamilyWords } from './lexicon.js';

export const listeningWords: FamilyWords = {
  choices: {
    playedContent: {
      'two-channel-music':
        'with|for|on|play|to|when music; music be|sound|through|from|plays; in stereo music; two channel music; stereo music; upmixed music; music upmix; music only; two channel stuff',
      'multichannel-film':
        'concert discs; 5.1 music discs; multichannel music|discs|concerts; surround discs|concerts; concert disc in surround',
      television:
        'on television; watch television; cable television; terrestrial television; television programs|shows|series; regular programs; sports broadcasts',
      everything:
        'no matter what .. play|on; whatever source|plays|is on; everything music and movies; all content|sources|material; any material; movies television and cds; music and movies; movies and music; movies music and television; all movies .. television; television and movies; movies and television; everything alike; on everything; music or movie; all kinds of; always there no matter; regardless of source|content; movies and records; whatever i play|watch; news and films; films and news',
    },
    troubleSeats: {
      'off-middle':
        'only at the ends; from the side seats; further out .. bad|worse; not in the mainSeat; outer seats; off to either side; left and right seats; @sideSeat|wife|kids|daughter .. @unclear|dull|muffled|hollow|cannot|complain|loses|lose|mumble|hears nothing|keep; middle .. @good ... ends|@sideSeat|sides .. @bad|mush|nothing|ask; in the mainSeat .. @good ... @sideSeat|ends|sides .. @bad|@unclear; bad .. at the @sideSeat; right|left end .. cannot follow; both sides .. bad; @sideSeat .. @bad; armchair .. muffled|dull|hollow|absent; only one good seat|one; only from the side; mainSeat .. @voice .. lovely|clear|perfect; hear everything in the mainSeat; hear everything in the middle',
      'one-seat':
        'just my seat; only the left|right seat; on the left|right seat only; one seat and no other; only where i sit; seat by the door only; armchair only; left seat .. right seat .. @good; only on one|that seat; only at one|my seat; just the one seat; left seat only; on the left seat ... right seat; only my seat|chair|spot|place; one seat only; at that seat only',
      everywhere:
        'doesnt|not matter what|which|where seat|sit; wherever you|we|i|one sit; all seats the same; every seat; anywhere in the room; no matter which|where seat|sit; everywhere in the room; same all over .. sofa; same at every|all|each seat; from every|any seat; every place in the room; in the whole room; whole room; all seats; in every seat; at any seat; even in the kitchen; it makes no difference where .. sit',
      'middle-only':
        'only in the mainSeat; ends .. good than .. middle; in the mainSeat of all places; dead center .. hollow; mainSeat .. bad|worst|hollow|worse; sit dead center .. hollow; in the mainSeat .. hollow|thin|dull ... sides|ends .. @good; worse in the middle',
    },
    troubleTitles: {
      all: 'every movie|film|title|disc|show|program|channel|source; all titles|movies|discs|channels|programs; on everything; any disc|show|movie; whatever i put on; each and every; with everything i play; everything i play|watch; on all channels|sources|movies; dialog in all movies; any movie|title|program; all of them mumble; every evening on all; on anything; all alike',
      some: 'some|certain|few|several|particular & film|title|show|scene|series|disc|mixes & other|others|fine|ok|only|great|terrible|worse|bad|depend|not; depend & film|title|mix|movie; only|just on some|certain movies|titles|discs|shows|films; one movie|film|title in particular; newer movies; newer movies mostly; certain shows|movies|titles|films; depends on the movie|film|title|mix|disc; hit and miss; only a couple of; other movies .. @good; two shows on one; one series; some movies .. others; a few movies|titles; only certain|some; season two; one space epic; just one movie|show|series; only that film|movie|series|show; one movie .. unlistenable; some .. fine some',
      'one-source':
        'only from the streaming|cable|disc; just on the cable|streaming; only one app|service|channel|input|player; disc player be @good; discs @good; only when i use the television; one service only; input two|2 be @good; only from one player|source|app|box; only on the stream|streaming; only through .. app|apps|stick|box; only via; just from the|one app|stick|box; discs .. be @good; streaming .. bad .. disc; only with the stick|box|player',
    },
    troubleWhenLoud: {
      yes: 'only & loud|crank|volume|turn & when|if|at|up; loud|volume|up & worse|only|start|then & when|gets|if|with; only when .. loud; only when i turn .. up; past half volume; @good at low level|volume; at late-night level no issue; only on loud scenes; loud .. the bad; get bad .. turn|up|loud; when .. turn it up; when i crank; at high volume; only .. loud passages|parts|scenes|peaks; when it gets loud; when loud; above|past|over .. volume .. strain|distort|harsh; at low volume .. @good; clean when soft; quiet .. be @good',
      no: 'same at any volume|level; loud or soft; volume not matter; even at whisper level; independent of level|volume; at any volume|level; no matter how loud; regardless of volume|level; soft or loud; quiet or loud; at all volumes; also at low volume; even when quiet|soft',
    },
    voiceDirection: {
      'center-box':
        'out of a shoebox; from a shoebox; stuck in .. box|cabinet|center; point at the box|speaker; obvious the speaker talking; from a little|small box; hear the loudspeaker|box|speaker not; localize to the center; speaker calls attention; singer|voice|vocals .. in the box|center; sit in the box; from the box; out of .. box|small box|shoebox; from one small box; sucked into the box|center; clear from the center; hear .. comes from the center; blob in the middle; glued to the center; jump .. into the center; everything .. from the center; all .. out of the center|box; hard point; voice from the box',
      low: 'from the bottom; out of the fire|fireplace; belly buttons; from below; at knee|ankle height; out of the cabinet under; low than the mouths; down at the skirting; from the floor; from .. shoes|knees|feet; from under .. picture|screen|television; below .. picture|screen|mouths; out of the cabinet|furniture|floor|carpet; speak from .. shoes; down there; too low down; from the ground|carpet; come .. from underneath; comes off the floor; from the carpet; voice too low; from down',
      subwoofer:
        'low part .. from the subwoofer; deep voice .. subwoofer; from the subwoofer; men from the subwoofer; chest .. from the subwoofer; bass of his voice .. subwoofer; out of the subwoofer; over at the subwoofer; voice .. from|in .. subwoofer|corner',
      behind:
        'from the ceiling; from behind; from the @surround; above my head; voice|talk|hear|sound|come .. behind me|us; out of the @surround|ceiling; sit|talk|speak|come .. behind the sofa; at my back; at my temples; overhead; from the back of the room; from above me; in the @surround; beside my head',
      aside:
        'over on the right|left; one side of the picture|screen; voice|image|singer|dialog .. lean to .. side; to the left|right of .. picture|screen|television|faces; from the left|right of; talk .. from .. plant; from .. left|right half; from the @leftMain|@rightMain; pull to .. left|right|side; off to the left|right|side; at the right|left .. window; left of the faces; stand at the right; voice|image .. to the left|right; always .. to the right|left; voice|image|dialog|singer leans left|right',
      nowhere:
        'not|cannot say|tell where .. come|from; all over the place; diffuse; voice|it|he|she float|floats everywhere|about|around|somewhere; no location; wide and vague; in the air somewhere; big blob; hang all over; from nowhere; vague; everywhere and nowhere; spread all over; hollow wide; all over the front|wall; hard to place; not .. placed|located; without a place; no fixed place; from everywhere; somewhere in the air; hang in the air',
      high: 'from above the picture|screen|television; high than the picture; ceiling line; too high; from over the picture|screen|television; above the picture|screen; calling from upstairs; from upstairs; come down from heaven; over the picture',
      picture:
        'voice .. from the picture|screen; right out of the mouths; be on the picture; lock to the picture|screen; from where the actor; on the mouth|mouths|lips|picture; from .. mouths; voice .. on the picture|screen; from the whole television; land on .. the screen|picture',
    },
    toneAcrossPan: {
      duller:
        'turn|go|get|become dull|dark|muffled|woolly .. middle|center|cross|pass|walk|as|when; dark at|in .. center|middle; loses highs .. middle; dull as it pass; blanket .. in the center|middle; in the middle .. dull|dark; walk|pass|cross|pan .. dull|dark|muffled|woolly; go dark in the middle; woolly hat',
      thinner:
        'shrink|shrinks in the middle; get small; thin at|in .. center|middle; no body when .. cross; telephone at the center; become|becomes small; dull and small; thin .. when|as .. cross|pass|pan|way; go|goes|gets thin .. on the way|middle|center|cross; pan .. thin; thins out',
      brighter:
        'sharp in the middle; bright in|at .. center|middle; edgy as it pass; hiss at the center; tinny at|in the middle|center; small and sharp; become|get|go|turn sharp|bright|tinny|edgy|harsh .. middle|center|pass|cross; silver in the middle; sharp .. as|when .. pass|cross',
      'no-change':
        'same tone all the way; pan be? seamless|fine|smooth; no change of color; car keep its sound; match perfect; pans are seamless; same across; pans fine; keep its tone; tone stays the same; no difference across',
      boxier:
        'boxy in|at the middle|center; nasal at|in the center|middle; honky as it pass; boomy in|at the center|middle; barrel .. cross; go|get|turn boxy|nasal|honky|boomy .. middle|center; honky .. when|as .. cross|pass|walk; from honky to sweet; middle .. nasal|boxy|honky',
    },
    speechOrder: {
      'news-clear-film-buried':
        'news|talk|quiz & clear|fine|good|ok|perfect & film|movie|action|series & not|bury|buried|lost|drown|unclear|cannot|bad|terrible|hard|mush|muddy; dialog|voice|speech|talk & bury|buried|drown|drowned|swamp|mask|masked|cover|covered|lost & music|effects|score|explosion|action|soundtrack|noise; explosions .. wake; news be? @good|clear; news .. clear .. movies .. not|bad|drowned; newsreader @good; can follow the weather|news .. not; music and effects .. bury|drown; voice .. drown .. music|effects|score|explosions; dialog .. drown|buried .. explosions|effects|music; only movies .. problem; score .. cover; news @good; news .. no problem|trouble; never .. trouble with news|talk shows; news .. perfect|crystal|clear; everything else news; evening news .. clear; whispering .. score; whisper then bang; music .. drown|covers|buries .. voice|dialog|words; effects .. loud .. voice; voice .. buried|drown|lost .. music|effects|score|action; newscasts .. clear|fine',
      'both-unclear':
        'news .. just as bad; even the newsreader|news; not .. understand news or movies; weatherman mumble; same with the evening news|news; television and movies both unclear; news too; news .. also|as|too bad|unclear; newsreader .. absent|mumble|unclear|too; news and movies .. unclear; even on the news; even .. news .. unclear|mumble',
      'both-clear':
        'news and movies both clear|fine; follow both; words .. no problem anywhere; understand .. news and the movies; no trouble with news nor; speech .. ok whatever; speech clear on everything',
    },
    clapRing: {
      long: 'flutter echo; flutter; rings forever; clap .. zing|rings|ring; swimming pool; back and forth; bathroom acoustics; clap .. goes on|long; clapping .. like a gym|hall; like a gym|church|gymnasium; room rings; machine gun; room .. echoes; echoey room; clap .. echo; goes on like; hall .. clap',
      dry: 'clap & dry|dead|nothing|short; room & dead|dry|damped|treated; clap .. dead|gone|dry; no ring at all; gone at once; dry room; very damped; room .. dry|damped|dead; dead room',
      some: 'bit of a tail; short ring|tail; slight live; small echo when i clap; slight zing; little bit of ring; a bit live',
    },
    backgroundNoise: {
      quiet:
        'dead quiet; silent room; hear a pin drop; quiet house|room|flat|street; house .. quiet; flat .. quiet; room be quiet|silent; no noise in the room',
      some: 'fan|fridge|traffic|projector|air|computer|hum & hear|audible|noise|noisy|background|whir|can; fan hum; some noise from; a? c in the background; slight traffic; some hum; fridge hum; projector fan; fan noise; fan running; air con|conditioning .. quiet|low|hum; humming',
      loud: 'traffic|street|road|train|tram|noise & loud|constant|considerable|heavy|busy; street noise; noisy street|road; kid screaming; loud air con|conditioning; next to a highway; dishwasher running; real noisy; noisy room|house; traffic .. loud; busy road; traffic noise; tram; trains pass; tumble dryer; open kitchen .. noise; noisy; air conditioning .. loud|noisy|running',
    },
    listeningLevel: {
      soft: 'listen quiet|soft; listens soft; low volume; whisper level; soft because; thin walls; quiet because; keep it down|low|quiet; at low level|volume always; play .. quiet|soft|low; so the kid|baby|neighbors not wake; late at night quiet; not loud .. neighbors; volume .. low because; always .. low volume',
      loud: 'like it loud; reference level; cinema loud; neighbors complain; full blast; play .. loud; listen loud; crank it; cinema level; real loud; at party level; very loud',
      normal:
        'normal volume|level; moderate level|volume; conversation level; average; ordinary volume; room level',
    },
    whoHears: {
      everyone:
        'everybody|everyone hears it; we all notice|hear; whole family; guests notice .. too; anyone who sits down; everyone .. complains|says|hears; both of us hear; everybody else says; we both hear; all of us; my wife hears it too; wife .. hear .. it too; kids hear .. too; all .. visitors|guests .. hear',
      'one-person':
        'only|just .. wife|husband|i|me|he|she|mother|father .. hear|notice|complain|bother|mind; nobody else .. hear|notice|complain|mind|bother; only my mother|father|wife|husband|dad|grandfather .. complain|hears|hear; just my husband|wife|father|mother|dad; only me the rest; my dad and nobody else; nobody else hears; no one else hears; roommates .. crazy; i am the only one .. hear; only i hear; wife .. hears nothing|not; others .. not hear|hear nothing; everybody else .. fine; wife|partner .. points to the middle; say .. imagining; nobody else .. notice|complain; only he|she hear|complain; wife .. says it .. fine',
      'one-place':
        'whoever sits there; anybody|anyone in that seat; whoever gets the left|right seat; every guest on that end; seat not the person; anyone who takes the end; whoever sits .. end|side|corner; everyone .. in that seat',
      'only-me':
        'alone in the flat|house; nobody else listens; live alone; only listener; no one else has heard; just me here; i live alone; lives alone; only me; i .. listen alone; single household; one chair one me; one me; sit alone; i am alone; listen alone',
    },
    likesTwoChannel: {
      'something-wrong':
        'something be wrong; cannot|not be right; broken somehow; not taste .. fault; must be a mistake; something .. not right; something .. broken; it .. defective',
      'like-two':
        'just like stereo; nothing .. wrong with it; matter of taste; prefer it without; stereo is my thing; just prefer .. without; prefer two|stereo; like two speakers; prefer stereo; like .. without the center; nicer with two; like two channels',
      both: 'bit of both; partly taste; half habit; like stereo and also; prefer stereo but; both i guess',
    },
    onset: {
      sudden:
        'sudden|suddenly|overnight|instantly; out & blue; one & day|evening|morning & just|stop|start|go|suddenly|gone|dead; yesterday|thunderstorm|outage & since|after; from one day to the next; out of the blue; all of a sudden; since yesterday; sudden; suddenly; silent since; overnight; since last weekend; since the power cut; since the thunderstorm; ever since the power; one day; since saturday|sunday|monday|friday|sat|sun|mon|fri|last week|yesterday; from one evening to; just stopped; after a thunderstorm; stopped working; died',
      gradual:
        'gradual|gradually|slowly|creep|worse & over|year|month|time|week|get; getting worse and worse; over the months|years; crept in; gradual; slowly; more and more; bit by bit; little by little; over time; gets worse every',
      'with-change':
        'since|after .. i|we|the|he|she .. new|moved|changed|bought|installed|swapped|replaced|upgraded|added|rearranged|rewired; began|started|begin|start .. when|after .. i|we|the|he|she; was fine|ok|great|perfect .. before|until|till; worse since; ever since; since i|we|the|my|he|she moved|bought|got|changed|installed|put|have|move|swap|ran|run|redecorate; since .. new; after the update|move|last; since we moved; right after we|i; after re-cabling; since then|the move; since this day; since moving; after i|we moved|changed|typed|swapped|bought|put|ran|run|swap; since .. installer; since .. change; new .. and now; bought .. and now; got .. and now; now with the new; since i use|have|own|play|added; since christmas|easter; after .. update; after .. moved; since i ran; since the center|new; with my new; since .. new|bought|installed|moved',
      always:
        'from|since .. day one; from|since the .. beginning|start; always be|have|had like|this|so|a|bad; always be? like this|that|so; from day one; never was good; since i bought it|have it|own it; has been so; always has; from the start|beginning; ever since i have|own it; since it was new; since he has had it; since i have it; never been right|good; since day one',
    },
    lastChange: {
      nothing:
        'nothing changed; not touch a thing|anything; all as before; changed nothing; nothing else changed; nothing was changed; not change anything; nothing has change',
      loudspeaker:
        'bought .. center|speakers|fronts|towers|mains|matching|horns; buy .. center|speakers|fronts|mains; new center|speakers|fronts|front|mains|towers|speaker; upgraded .. fronts|mains|center|speakers; swapped the center; replaced .. speaker|center; installer added; added .. speakers|center|heights; got .. center|speakers; added a center; center since friday; installed .. speakers|center|heights; put .. center|speakers .. in; new bookshelf|loudspeakers; install .. heights',
      furniture:
        'moved .. sofa|chair|furniture|seats|table; move the sofa; new rug|sofa|carpet|curtains|table|furniture|floor|cabinet|shelf; rearranged .. room; bigger sofa; turned the room; redecorated; redecorating; new coffee table; bought .. sofa|cabinet|table; moved house; since the move; new flat|house|home|room|apartment; moved .. rack; i|we moved into|to; new parquet|floor',
      settings:
        'firmware update; factory reset; software update; last update; pressed some button; kid played with; changed a setting|settings|mode; did|made|cust .. reset; reset the receiver|processor; pressed .. button; played with the remote|receiver|menu; turned up the voices; turned .. voices up; changed .. in the menu; son|daughter|nephew|grandson|kid .. turned|changed|pressed|set|selected|fiddle; typed .. distances|levels; typed in|new distances; selected a .. program|mode; press the center volume up; someone changed; play with the receiver; corrected it; set the crossover; searched sound programs; settings .. changed; pressed the wrong; wanted voices louder; mother in law .. louder; changed the distances',
      calibration:
        '@autoSetup & since|after|again|redo|rerun|last|new & run|do|ran|i|re; re-ran the autoSetup; re-ran .. setup|calibration; new autoSetup; run|running .. microphone again; ran the autoSetup; ran .. autoSetup; after the autoSetup; new correction run; recalibrate; since i ran; after .. calibration|autoSetup; recalibrated; run the autoSetup; re-run .. calibration; did the autoSetup; since the autoSetup',
      wiring:
        'rewire|recable|new|change|replace|redo|swap|reconnect|unplug & wire|cable|wiring|cabling|plug|banana|lead & since|after|i|we|new|all|last|everything; recabled; rewired; new wire|cables; rewire; rewired; changed the wire|cable|wires; unplugged everything; electrician was here; re-terminated; redid .. cabling|wiring|cables; re-cabling; recabled; swapped the wires; new plugs; banana plugs; wired .. new; fresh cable; plugged .. in new; renewed .. cables; rewired it all; connected .. new|again; changed the cables; swapped .. cables|leads|wires',
      screen:
        'bigger display|television; new picture|screen|display|television|tv; mounted the display|television high; went from .. display|television|tv to; put in a .. screen; new projection screen; switched to a projector; got .. television|projector|screen; hung the television; bought .. television|projector|screen; new projector; from .. display .. to .. display',
      source:
        'new streaming|disc|console|player|stick|box|cable; new disc player; changed cable provider; new console; switched to another app; new streaming box|stick|player; new bluray player; other provider; new settop; new set top; new app; new computer; bought .. player|stick|console',
    },
  },
};
