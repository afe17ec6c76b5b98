/** Source, menu and connections: what the receiver is told to do, and what it does. */
import type { FamilyWords } from './lexicon.js';

export const setupWords: FamilyWords = {
  choices: {
    sourceFormat: {
      multichannel:
        'display|receiver|panel .. say|show|read .. multichannel|5.1|surround; multichannel input|signal|track; 5.1 input|signal|track|disc; receiver|display|info|menu|it say|show|reads 5.1|7.1|multichannel|multi; show multichannel in; info say multi; incoming 5.1|7.1|multichannel; six channels in; bitstream surround; c light is on; multichannel in|input; 5.1 input|signal|track|soundtrack; input .. 5.1|multichannel; display .. 5.1|multichannel|7.1; incoming .. 5.1',
      'two-channel':
        'display|receiver|panel .. say|show|read .. stereo|2.0|pcm; two channel input|signal; stereo signal|input|source|feed; it say 2.0; pcm stereo; receiver|display show|say|reads 2|two ch|channel|stereo|channels; television .. sends stereo; incoming .. stereo|2.0; only l and r lights; stick puts out 2|two; input .. stereo|2.0|2; pcm 2.0; display .. 2.0|stereo in; sends only stereo; stereo input|in; output .. set to stereo|pcm; player .. set to stereo',
    },
    centerMode: {
      none: 'menu .. center .. none|off|no; center none; center|c be? set to none|no|off; center none; turned off in the menu; center .. off in .. setup|menu; no center in .. config|configuration|setup|menu; center none|no|off; center|c off in; without center in the menu; center .. not in .. menu; set to phantom',
      present:
        'set to small tone ok; center be? set to small|large; menu .. center .. yes|small|large; center|c small|large|yes; enabled in .. setup|menu; center active; center|c small|large; center .. set to .. small|large; center yes',
    },
    channelCheck: {
      right:
        '@testNoise .. round correct; each channel .. from .. right speaker; @testNoise ok|fine|right|correct; steps l c r; all tones where; correct order; noise .. correct order; @testNoise .. each from its own; @testNoise .. center .. hisses; @testNoise .. as it should; each from its own; tones .. right speaker|place',
      swapped:
        'center @testNoise .. out of|from|at .. left|right|surround|@leftMain|@rightMain|another; l and c be swapped; @testNoise .. center .. plays on|at|from|in .. left|right|@leftMain|@rightMain|surround; wrong speaker plays; tones .. mixed up; @testNoise .. called center .. left|right|surround|@leftMain; say center .. noise|tone from .. left|right|surround|another|behind; display says center noise from; c tone .. left|right; center .. from the wrong',
      silent:
        'testNoise|noise|tone & center & nothing|silent|no|not|missing|dead; @testNoise .. center .. nothing|silent|dead|none; no @testNoise .. from .. center; center stays silent on .. noise; nothing when it says center; skip the center; @testNoise .. skip|skips .. center; @testNoise on c .. dead; center .. no @testNoise; c .. no tone|noise',
      'several-at-once':
        'center @testNoise .. from three|several|all|both; noise from left and right too; several play at once; @testNoise everywhere up front; all the fronts; three boxes hiss; center @testNoise .. left and right|@mains too|also; several .. at once .. center; noise .. from all three',
      'center-elsewhere-too':
        '@testNoise .. @surround .. as well|too|also; center @testNoise .. also in|from .. @surround|back|rear|above; @surround play along; c tone from the back as well; @surround hiss; tone leaks into .. @surround; some of it from above; center noise .. out .. @surround; @testNoise .. also .. @surround; center .. also from .. @surround; heights .. as well',
    },
    displaySpeakers: {
      muted:
        '@tvSpeakers & off|mute|muted|disabled; television mute|muted; tvSpeakers .. be? off|muted|mute|disabled|silent|0|zero; television .. be? muted|mute|silent; own sound .. off; internal speakers disabled; tv set to external; television volume 0|zero|off; tvSpeakers at zero|0; display muted|mute; set to external speakers; television sound off; mute .. television; television .. volume .. 0|zero; television muted sure; television .. on mute',
      playing:
        'display plays along; tvSpeakers .. still|also? on|playing|running; forgot to mute .. display; sound from .. display as well|too; tvSpeakers runs too; both .. display and .. amplifier|receiver .. play; television .. plays too|along|also|as; tvSpeakers be on; display .. sound on too; television .. still talking|on|plays',
    },
    lipSync: {
      'in-step':
        'lip sync ok|fine|good; lips match; spot on with the picture; no delay to the picture; in sync; lipsync ok|fine; sync .. be? fine|ok|good|perfect; mouths and voices match; not lip sync; sound and lips together',
      'voice-late':
        'voice be late; voice|sound|audio be behind the picture|lips; voice|sound|audio arrive .. after the picture|lips; sound lags; audio behind; hear it after; voice trails; voice .. late after .. lips|picture; sound .. behind the picture; sound .. late|after|lags|lag; audio lags; arrive late after the lips; after the mouth move; sound arrives late; voice lags',
      'voice-early':
        'voice be early; sound comes before; audio ahead; words before; picture lags; voice .. before .. lips|mouth; sound .. before the lips; hear .. before he opens; before the mouth moves',
    },
    voiceBoost: {
      on: '@boostMode & on|use|active|enabled|engaged|always|switch|turn|level; turn|turning|switch on boostMode; boostMode .. be? on|active|enabled|max|high; boostMode on; television .. in boostMode; use the boostMode; boostMode + #; boostMode enabled; speech thing; with boostMode; boostMode .. level #; boostMode max; clear voice',
      off: '@boostMode & off|not|never|disabled|no; boostMode .. off|disabled|0|zero|not; no boostMode; boostMode is off; boostMode level 0; without boostMode',
    },
    dynamicCompression: {
      on: '@nightMode & on|use|active|enabled|engaged|always|run; nightMode .. be? on|auto|max|active|enabled; nightMode on|auto; compress set to max; nightMode; nightMode helps; use nightMode; with nightMode',
      off: '@nightMode & off|not|never|disabled|no; nightMode .. off|disabled; no nightMode; full dynamic range; nightMode is off; without nightMode',
    },
    upmixUse: {
      on: 'surround|upmix mode on for; @upmix .. always on|be on; @upmix .. for music|cds|stereo|records; with the @upmix .. on; all channels stereo; upmixer on; through .. @upmix; through the surround decoder; matrix mode; everything upmixed; upmixed music; party mode; play .. through .. @upmix|all speakers; through all speakers; hall mode; hall program; upmix; upmixer; music upmix; upmix on; upmixed; with the upmixer; use .. upmixer|upmix; ambience upmixer; in surround for music; stereo music with the spread; film-type surround mode; setting for music; surround on for music; music with all speakers; music through all; music upmix for; mode with all',
      off: 'display .. show|say|says|reads .. stereo; display says two channel|2|direct; upmix off for music; be? upmix off; direct mode; two channel only; no upmixing|upmix; 2ch bypass; plainStereo .. only; listen .. 2ch|in plainStereo; play .. in plainStereo; display stereo; plain stereo only; never use .. upmix|music modes|surround; pure mode; display says stereo|direct; always in plainStereo; music in plainStereo; stereo for music; receiver shows stereo; lamp .. stereo; pure direct; never use music modes|upmix',
      sometimes:
        'sometimes stereo sometimes; depends .. switch between; change by itself; now and then .. surround; most stereo but not always; switch between stereo and; sometimes surround',
    },
    upmixCommonPart: {
      'takes-out':
        'no singer|voice left in .. mains|l; left and right .. only the band; only the band; vocal vanish .. l|mains|left; ear .. left .. no voice|singer|nothing; only the center sing; mains .. go? almost? silent; no voice|singer in .. mains|left; almost no singer; singer .. gone .. from .. mains|left; mains play only; singer .. only .. center; left and right .. just|only|no reverb|band|singer; sides are just reverb; voice .. only .. from the center; mains .. almost nothing|silent',
      leaves:
        'singer .. still loud .. left|mains; voice .. as strong .. mains; still carry the singer; vocal unchanged; voice in the mains .. loud as; left speaker still sing; singer .. still .. in .. mains|left; still there as loud',
      shares:
        'singer .. weak .. mains|left; bit of .. voice .. left|mains; some vocal left in; voice .. there but soft; reduced but there; keep some of the singer; singer .. still .. weak|soft',
    },
    upmixCenterControl: {
      present:
        'center spread; center width; center image; width control; spread control; middle width; there be a center width setting; has .. spread option; center image slider; found a width control; spread in the menu; spread .. to|on|at .. half|max|full|maximum; upmix .. thing called; center width .. set',
      none: 'no setting for the center; no center width anywhere; not adjust the spread; no such option; no width control; nothing for the center; no spread|width|center setting|control|option; there is none only on and off; only on and off; only on or off; nothing to turn; no center control|adjustment; no setting .. center; no way to adjust',
    },
    centerSpread: {
      on: '@spread .. be? on|full|max|maximum|high|open|up; @spread on; @spread at .. 50|100|half; enabled spread|width; opened the center image; open up the @spread; with the @spread .. on; on full #; @spread full; have it on full; on maximum',
      off: '@spread .. be? off|0|zero|none|low|minimum; @spread off; never turned .. @spread on; @spread .. on none; never touched .. @spread; default off; @spread at 0; its on none; width at zero',
    },
    upmixAmbience: {
      yes: 'hall mode|program|effect|preset|setting; concert hall; music club; club mode; church effect; adds reverb; stadium preset|mode; jazz club; hall; large|big|small hall; ambience upmixer|mode; ambience; cathedral mode|program; large hall; room simulation; reverb mode; dsp hall; chamber mode; hall and stage; theater mode|program; opera house; arena; club program; effect mode',
      no: 'no reverb added; dry upmix; no hall effect; dsp .. off; just the plain decoder; no ambience|hall',
    },
    ambienceSize: {
      large:
        'large|big hall; room size large|max|big; biggest hall; size l; cathedral size; size maxed; room large; size large|big|max|maximum; size .. on|at large|max|maximum; large hall; size .. large|biggest|maximum',
      small:
        'room size small; smallest room; size s; small club; size 1; room small; at the smallest; size small|minimum|low|1|one; size .. on|at small|minimum|smallest|lowest; small hall',
      medium:
        'room size medium; mid setting; size m; middle size; size in the middle; room medium; size medium; size .. on|at medium|middle',
    },
    alignmentBy: {
      automatic:
        '@autoSetup & run|do|use|set|put|after|by|with|decide|finish; microphone & setup|run|do & receiver|room|calibration; distance|level & set & @autoSetup|microphone|receiver|itself|automatic; ran the @autoSetup; @autoSetup .. run|performed|done|made; @autoSetup set|put|says|did|gave|measured; with the microphone that came; correction set it; little microphone; run the @autoSetup; ran .. microphone; microphone .. set; with the microphone; automatic with microphone; did the @autoSetup; measured .. by the receiver; receiver measured; auto setup; made the automatic; used the microphone; auto microphone; set .. by the auto',
      'by-hand':
        'set|enter|dial & hand|manually|myself & distance|level|delay|trim; set by hand; enter|typed .. distances .. myself|in; spl meter and a tape; manual setup; dial in by ear; pro set it up; set .. manual|manually|myself; typed .. in; type .. distances; typed # for; by hand; typed them in; put # for all; i put # for; enter .. tape; keyed in; typed new distances; entered manually; distances .. by hand; with a tape and; i set .. by ear; set up by a pro; i typed',
      nobody:
        'nobody|never & ever & calibrate|@autoSetup|setup|set; plug and play; never .. calibrated|calibrate; nobody .. set; just plug it in; never set up; out of the box|carton; defaults; plugged it in and play; nobody ran; factory setting; never .. calibrated|set; never ran; as it came; never .. measured; straight out of the box; no calibration|setup; without .. setup|calibration; set anything; not calibrated|set up; never touched .. settings|distances; still on default; never done .. setup|calibration',
    },
    calibrationSpot: {
      'main-seat':
        'microphone & mainSeat; microphone .. on .. sofa|seat; microphone .. ear height; microphone .. ear height .. seat|sofa|position; microphone .. where my head; tripod at .. mainSeat|seat; first position .. mainSeat; at the mainSeat; microphone .. at|in .. mainSeat|my seat|listening; microphone on .. tripod; microphone .. tripod .. ear height; microphone at my ears; microphone .. headrest; microphone at ear height; microphone .. seat',
      elsewhere:
        'microphone .. on|near|at .. table|floor|shelf|television|carpet|rack; microphone .. table|floor|shelf|armrest|hand|cushion|wall|windowsill|back of the sofa|lap|plant; on the back of the sofa; held the microphone; put the microphone on the|a floor|table; lie on the seat; by the wall on a shelf; microphone .. on the coffee table; microphone .. in my hand; microphone .. on a|the table; microphone .. behind; microphone .. corner; microphone .. lying|flat on|carpet; microphone .. not at; microphone .. next to the; microphone stood on .. table',
      'changed-since':
        '@moved|change|rearrange & since|after & @autoSetup; sofa|seat|chair & @moved & since|after|then; moved .. sofa since; not rerun|repeat|redone since; before we rearrange; ran it in the old; calibrated before .. new; never redone|repeated|rerun after; not rerun|repeat .. auto|autoSetup|calibration|anything; not re-run the; never rerun; old flat .. calibration; calibrated .. before .. moved; not re-ran; levels and distances .. from before; from before the move; before i moved; not run .. again; setup .. before .. change; still from the old; not .. run .. autoSetup again; since moved .. not; not re-run anything; no new calibration since',
    },
    entryKind: {
      distances:
        'menu .. show|say|lists .. # ; lists distances; shows feet|meters; distance for each; menu shows meter; speaker distance page; menu says ft|feet|m|meters; distance entry|setting|entries; enter .. distance; the menu shows|says center|everything #; set-up says # ; setup says #m',
      delays:
        'lists delays; only millisecond; delay setting|settings|page|entry; speaker delay page; shows ms; delay in ms; delays .. set; menu .. ms',
    },
    voiceLoudness: {
      softer:
        'center & soft|quiet|quieter|softer|weak & than|compared & main|left|rest|other|tower|sides; center|c .. soft|weak|quiet|low than .. mains|left|l|rest|others; center|c .. tad|bit|clear|little|noticeably|much soft|weak|quiet|low; center noise .. low|soft|quiet; center sounds soft; c .. quiet on the tones; lags in level; soft than l; weak than left',
      equal:
        'center & same|equal|equally|match & loud|level|loudness|volume & main|left|rest|other|as|ear|three|by; equally loud; same loudness; all three match in level; no difference in level; as loud on c as; not tell the levels; levels .. matched|equal|same|perfect|right; equal loud; level within #; matched .. levels; about equally loud; same level on all; levels .. set|checked .. meter; all three .. equally|same loud|level',
      louder:
        'center & loud|hotter & than|compared & main|left|rest|other|tower|sides; center|c .. loud|hot|strong than .. mains|left|l|rest|others|everything; c sticks out on; noise from the center .. loud; center jumps out in level; c .. hot on .. test; hiss jumps up; loudest of the three; way|much|clear louder than the rest; twice as loud; center .. clear .. louder; louder than the rest by ear',
    },
    equalization: {
      none: 'equalizer be? off; no equalizer; flat no correction; pure mode; equalizer bypassed; @correction .. off|disabled|bypassed; no @correction; without @correction; correction off for; @correction off; equalizer off everywhere; no room correction',
      automatic:
        '@correction & on|active|enabled|run|automatic|engaged|use & all|channel|is|with|i|the|my|auto; equalizer auto; room equalizer on; auto equalizer; @correction .. active|on|running|auto; correction filters on; equalizer auto; microphone equalizer .. enabled; automatic correction; room correction; with .. @correction running|on; @correction on; automatic equalizer; automatic tuning; auto eq',
      'by-hand':
        'manual equalizer; set .. equalizer by ear; graphic equalizer; my own filters; peq; parametric equalizer; equalizer by hand; set by hand .. equalizer; tone controls; treble + #; i set the equalizer',
    },
    equalizationReach: {
      'all-alike':
        '@correction & all|every|each|everything|three & channel|speaker|on|three|alike; flatten all three; equalizer on all channels; correct|corrects all three; whole front .. equalizer; all speakers flat; all three get .. correction; equalizer the same way; all channels .. correction|equalized; left center and right .. corrected; @correction .. all three|channels|speakers',
      'center-only':
        'equalizer only on the center; l r bypass; front bypass mode|setting; only c .. equalized; skips the front; only the middle .. filters; @correction .. only .. center; bypass for .. fronts; fronts .. bypassed .. center; bypass l r; left and right nearly as before .. center; front .. untouched .. center',
      'mains-only':
        'equalizer on .. mains only; center left alone; only left and right .. corrected; c not equalized; center .. excluded; filters on l and r; @correction .. only .. mains; center .. no equalizer|correction|filters; center .. without correction',
    },
    centerBassSize: {
      small:
        'center & small & set|setting|crossover|hz|large|main|be|run|as|to; all|everything & small & set|speaker|crossover|hz; set to small;  center be? set to small; center|c small; crossed over at; small #; all speakers small; center small; center small; crossover .. for the center; all small; center .. to small; cross .. center .. at #; small box .. crossed',
      large:
        'center be? set to large|big; full range center; center|c large; no crossover on center; all large; center large; set to large; center .. large; center .. full range|band; small center is set to large; all speakers large; center on large; center full range',
    },
    subwoofer: {
      several:
        'two|dual|both|pair|three|four & subwoofer; subwoofer 2|two; two|2|dual|four|4|three|pair subwoofer; subwoofer 2 x; several subwoofer; pair of subwoofer; subwoofer front and back; two # subwoofer; both subwoofer; subwoofers at',
      one: 'subwoofer; one|single|my|the|a subwoofer; with a subwoofer; # subwoofer',
      none: 'no|without subwoofer; not have a subwoofer; no bass box; no sub; there is no subwoofer; without any subwoofer',
    },
    subTiming: {
      automatic:
        'subwoofer .. distance|delay .. @autoSetup|automatic; subwoofer distance .. set by .. calibration|autoSetup|microphone; @autoSetup did the subwoofer; microphone set .. subwoofer; subwoofer .. from the microphone; autoSetup measured the subwoofer; calibration did it; @autoSetup .. subwoofer .. distance; subwoofer .. by the autoSetup',
      'by-ear':
        'subwoofer .. align|aligned by|myself; subwoofer phase .. by ear; tuned the subwoofer distance; align the subwoofer; knob until .. full; nudged the subwoofer; time align the subwoofer; aligned by measurement|ear; subwoofers aligned; time-aligned; subwoofer delay .. set by|adjusted; set the subwoofer .. by ear',
      untouched:
        'subwoofer & never|untouched|not|default|factory & distance|delay|phase|touch|set|adjust; subwoofer distance .. never touched|untouched; phase knob at 0; subwoofer left as it came; never adjusted the phase; subwoofer .. factory; nobody ever set the subwoofer; subwoofer distance untouched; subwoofer .. untouched|never; phase .. never touched; never touched .. subwoofer|phase; subwoofer .. at default',
    },
    subPolarity: {
      'fuller-as-set':
        'full the way it is; flipping the phase made it thin; as-is has more body; left at the present; flip .. bad .. flip it back; current phase .. most body; full as .. set; phase .. better at 0',
      'fuller-other-way':
        'full .. with .. phase flipped; more body at the other setting; sounds full reversed; switch to 180 .. back|full|chest; switch on the other side .. big; reverse gives more; at 180 .. full; full at 180; phase .. 180 .. full|fuller|body|better|chest; flip .. phase .. full|better|body; full .. at 180; phase to 180 .. good|full|better',
      'no-difference':
        'phase switch .. nothing|no; no difference either way; not hear any change when flip; same at 0 and 180; all the same to me; phase knob .. no; 0 or 180 .. same; phase .. no difference; no change .. phase',
    },
    polarityMarks: {
      'all-match':
        'red to red; polarity .. checked|ok|right|correct|good; all the wires are right; checked + and -; plus to plus; + to +; polarity checked; wires .. right way; polarity .. all ok; plus and minus .. right|correct|checked; wiring .. checked|correct|right',
      'center-crossed':
        'center .. wire|lead|cable .. reversed|crossed|swapped|backwards|wrong|inverted; wire|lead|cable|polarity .. center .. reversed|crossed|swapped|backwards|wrong|inverted; red .. on|to black; red and black .. swapped|reversed|crossed .. center; center wires .. swapped|reversed|crossed|wrong; red on black; center .. out of phase; plus and minus crossed .. c|center; reversed on the center; center .. reversed|backwards|wrong polarity|inverted; center .. wired .. backwards|wrong|reverse; center plus .. minus; red was on black; black was on red; polarity .. center .. wrong|reversed; swapped + and - .. center; plus and minus .. swapped; center be connected wrong',
      'main-crossed':
        'left|right|@leftMain|@rightMain .. wired backwards|wrong|reverse; @rightMain|@leftMain .. reversed|inverted; one main .. out of phase; + and - swapped on .. left|right; left .. red .. to black; one of the mains .. reversed; @leftMain|@rightMain .. out of phase; main .. wired .. wrong|backwards',
    },
    polarityMessage: {
      center:
        'setup|autoSetup|calibration|receiver|microphone|wizard|message|warn|complain|report|display & phase|polarity|reverse & center; say|says|said center .. out of phase; phase error on c; center polarity; complain about the center .. phase; reverse phase center; check phase center; phase .. warning|error|message .. center; center reversed; center .. reverse|reversed phase; warning .. center; phase center; setup said .. center .. phase; message .. phase .. center; out of phase .. center',
      none: 'no phase warning; setup found no errors; no polarity message; calibration .. not complain; all ok in the report; no phase error|message; no error|warning .. phase; without phase .. warning',
      main: 'front left reverse phase; phase warning for the right; polarity error on l; complain about the mains phase; fr phase; phase .. error|warning .. left|right|@leftMain|@rightMain; @leftMain|@rightMain .. reverse phase',
    },
    driversHeard: {
      all: 'all|every|each|both & driver|cone|tweeter & work|play|fine|ok|sound|alive|good; all drivers|cones play; everything on the center works; tweeter and cone .. all ok; every cone play; nothing dead in .. center; tweeter and both mids; each .. plays; all .. drivers .. work|fine|ok; ear to the box all .. clean; drivers .. all .. fine|play|work',
      'tweeter-silent':
        'tweeter .. dead|silent|blown; tweeter .. not work|play; nothing .. from .. tweeter; tweeter be dead|silent; no sound from .. tweeter; tweeter not play; highs unit silent; tweeter .. dead|silent|nothing|gone|blown|quiet; nothing from the tweeter; no hiss .. tweeter; tweeter .. no sound; tweeter .. not .. work|play; blown tweeter',
      'cone-silent':
        'one cone .. dead|silent; one cone not move; left|right cone silent|dead; only one of the two cone; cone not work; cone .. not move; cone .. dead|silent; one .. cone .. no sound; only one cone plays',
      rattles:
        'cone .. buzz|scratch|rattle|scrape|rasps; one of the cone scratch; voice coil rub; cone rattle; buzz in the .. driver|cone|center; cone is torn; something buzz; left|right cone buzz; torn .. surround|cone; voice coil scrap',
      crackles:
        'come and go when .. wiggle; cuts out .. touch; crackle at the terminal; loose connection; intermittent .. cable|wire; wiggle .. cable .. comes|back|goes|sound; touch the wire .. cuts|comes; contact .. loose|bad; crackles .. cable; bad contact; cable .. moves .. comes',
    },
    jumpers: {
      tight:
        'terminal|strap|jumper|link|connection|binding|screw & tight|secure|firm|ok|fine|checked; terminal .. tight; strap .. tight; both .. straps .. tight; jumper in place; binding post .. done up|tight; bi-wire link ok; straps .. tight; all terminals tight; wires .. tight; terminals .. tight|fine|ok; connections .. tight|firm; clamp .. tight; jumpers .. tight|in place|fine',
      loose:
        'terminal|strap|jumper|link|wire|connection|screw|binding & loose|off|missing|fell|corroded; strap .. missing|loose; jumper fell off; loose binding post; wire hang loose; bridge .. gone|missing; link came off; jumper .. loose|missing|off; terminal .. loose; strap fell; wire .. fell|come off; wire .. loose; links .. missing|loose; clamp .. loose; strand .. loose; plug .. half out|loose; metal strap .. missing',
    },
    highPassSlope: {
      '12': '12 per? octave|oct; second order; two pole high pass; 2 order',
      '24': '24 per? octave|oct; fourth order; four pole; 4 order',
    },
  },
};
