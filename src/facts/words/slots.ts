/**
 * Which fact a quantity is of: the thing that is measured `|` which of its measures. The fact whose two words stand
 * nearest takes the quantity. `not`: words beside the quantity that say it is of something else; `need`: one of these
 * stands in the sentence or the one before; `alone`: thing (`of`), measure (`as`) or either is enough where it stands
 * right beside the quantity. `@` is a noun of `nouns.ts`; a word with `~` weighs less and is never enough alone.
 */
import type { NumberFactId } from '../catalog.js';

export const SLOTS: { readonly [Id in NumberFactId]?: string } = {
  seatDistance:
    '@seatWord @mainSeat ~row sit listen i we us me listener viewer eyes nose watch head | away back ~from distance sit out far watch listen viewing view position listening ~until ~between ~wall | not left right apart behind row edge above riser table real tape taped ear floor ceiling apartWord tweeterToTweeter coneToCone | alone either',
  mainsBase:
    '@mains @leftMain @rightMain speaker boxes them l | apart between base spread spacing separate separated separation space apartWord tweeterToTweeter | not tweeter cone row seat heads toe | alone as',
  mainsTweeterHeight:
    '@mains @leftMain @rightMain tweeter it they them | high height floor ground up tweeter carpet ~off ~at | not tall deep wide apart toe behind',
  centerTweeterHeight:
    '@center it box tweeter axis stand | ~high ~height floor ground ~up ~above ~off carpet ~tweeter ~at | not wall crossover khz run tall shelf board ear below under hole peak dip hump wide deep middle apart left right back ceiling table @display @picture | alone as',
  earHeight:
    'ear eyes | height floor high ground up ~at ~off ~above carpet level | not below under center tape apart | alone of',
  displayMiddleHeight:
    '@picture @display middle image | middle center height high up floor hang ~above mount ~at | not distance top bottom edge left right wide away ear tweeter',
  displayTopHeight: '@picture @display | top upper edge | not bottom lower middle below',
  ceilingHeight: 'ceiling ~room | ceiling height high | not long wide away left | alone of',
  centerSideOffset:
    '@center it box | left right beside aside off sideways middle offset | not high above floor edge behind forward wall apart i db sit seat me us',
  mainSeatOffset:
    '@seatWord @mainSeat i sit we my | left right off middle side | not floor high apart away back from wall',
  centerBehindMains:
    '@center it @mains | behind back forward front farther ahead line set_back | not wall edge shelf us me seat sofa table row cabinet board picture inside tall | need @mains line',
  wallDistance:
    '@center it box face baffle front | wall | not @mains @leftMain @rightMain sit i we side sofa seat screen @display',
  sideWallDistance:
    '@center it | wall side cabinet bookcase | not @mains @leftMain @rightMain i we sit sofa seat behind | need side near beside',
  toeIn:
    '@mains @leftMain @rightMain they them | toe toed toein inward angle | not up down back tilt | alone as',
  centerTilt:
    'tilt angle aim @center it wedge lean | tilt lean up down angle aim upward downward back tip incline point wedge slope | not toe toed inward main tower @display recliner | alone as',
  shelfSetback:
    '@center it box shelf board @furniture face baffle wood oak | edge setback front stick lip overhang behind | not wall compartment opening inside table main tower | need edge shelf board @furniture lip wood oak',
  centerAboveShelf:
    'tweeter @center it | shelf board sideboard wood top surface | not edge back front | need above over tweeter down',
  bayRecess:
    '@bay @center it face box | inside recess recessed into | not floor high wide deep tall wall | need @bay @furniture inside recess recessed hole | alone as',
  bayWidth: '@bay opening hole slot bay | wide width across breit ~inside | not receiver amplifier',
  bayHeight: '@bay opening hole slot bay | high height tall h ~inside | not receiver amplifier',
  bayDepth: '@bay opening hole slot bay | deep depth d ~inside | not receiver amplifier',
  centerToeIn:
    '@center it | toe turn rotate angle aside | not up down tilt back mains tower | need left right aside window door toe',
  pictureSideOffset:
    '@picture @display | left right | not bottom top high away wide apart sit seat edge door window under below',
  bayGap: 'gap air space | gap ~around ~round air | not wall behind | alone of',
  behindCenter:
    '@center it | behind back rear | not @mains line front face baffle side edge | need @furniture @bay gap space panel wall',
  centerWidth: '@center it box speaker | wide width long | not @bay opening hole slot bay shelf board',
  centerHeight:
    '@center box speaker | tall high height h | not floor off up above ground tweeter shelf board @bay opening hole slot bay',
  centerDepth: '@center box speaker | deep depth d | not @bay opening hole slot bay shelf board',
  obstacleHeight:
    'table obstacle ottoman plant vase pouf footstool trunk thing pot ornament aquarium | high height tall upper | not dining kitchen | alone of',
  obstacleWidth:
    'table obstacle ottoman plant vase pouf footstool trunk thing pot ornament aquarium | wide width across | not dining kitchen',
  obstacleDistance:
    'table obstacle ottoman plant vase pouf footstool trunk thing pot ornament aquarium | front from before ~distance edge ahead | not high tall height wide us me we i left right',
  centerDriverSpacing:
    'cone coneToCone | apart between spacing distance middles ctc coneToCone | not tweeter crossover',
  centerTweeterSpacing:
    'tweeter tweeterToTweeter | apart between spacing distance tweeterToTweeter | not floor ear cone | alone as',
  centerMidSize:
    'cone | cone dual two size diameter pair each | not apart between subwoofer coneToCone | alone of',
  seatCount: '@seatWord us people person sofa row recliner | seat across | not apart behind db back',
  seatSpacing:
    'seat heads neighbor recliner headToHead me | apart between next headToHead each either | not row behind tweeter | alone as',
  rowSpacing:
    'row backRow chairs | apart behind between farther distance | not riser platform high step raise | need row backRow',
  twinSpacing:
    '@center tweeter them | apart between spacing | not left right mains | need two both twin pair dual second upper',
  rowRiser: 'riser platform | riser platform step raise raised high higher | not ear tweeter | alone of',
  displayDiagonal:
    '@display @picture diagonal ~set | diagonal size inch incher screen television | not say show read channel bottom top middle high height hang away from back wide width ceiling up off apart between center above sofa seat out | alone of',
  tapedCenter:
    '@center | nose ear tape laser ruler measure real actual actually really taped | not high floor | need tape taped measure laser ruler string real really actual actually',
  tapedMains:
    '@mains | nose ear tape laser ruler measure real actual actually really taped me us | not high floor apart | need tape taped measure laser ruler string real really actual actually',
  automaticDistanceCenter:
    '@center it | put write set find measure came measured | need autoSetup microphone automatic | not tape laser high floor wall edge',
  enteredCenter:
    '@center | menu receiver display enter entered type setup entry say set put processor default autoSetup microphone calibration automatic factory reads avr came | not tape laser real really high floor wall edge left right | need menu receiver display enter entered type setup entry say set put processor default autoSetup microphone calibration automatic factory reads avr came',
  entryStep: 'step increment click whole entry | step increment click whole per | alone either',
  centerTrim:
    '@center it trim level | trim level volume set turn up down boost plus minus bump reduce lower raise crank hot increase louder add put back sit ~at dial bring | not match matched over above from around within percent subwoofer reflection clarity c50 @correction @spread @sideSeat treble shelf hole dip peak hump point crossover meter night master octave difference below than | alone either',
  centerAgainstMainsDb:
    '@center it | hot loud louder soft softer quiet above below under over more down | not trim @sideSeat end | need @mains others other rest',
  centerAgainstMainsSideDb:
    '@center it | down below under soft quiet loud hot above over | need @sideSeat side end armchair corner | not trim',
  measuredCenterLevel: '@center | meter spl noise phone app testNoise db dbc decibel | alone of',
  measuredLeftLevel: '@leftMain left | meter spl noise phone app testNoise db dbc decibel | alone of',
  measuredRightLevel: '@rightMain right | meter spl noise phone app testNoise db dbc decibel | alone of',
  centerBassCrossover:
    '~@center crossover small bass hpf high-pass octave oct | crossover cross hz cut small high-pass hpf management setting | not tweeter down reach hole dip peak hump rate response resonance rated limit boost | alone either',
  mainsBassCrossover: '@mains | crossover cross small run set | not tweeter down reach peak hump | alone of',
  centerCrossover:
    'tweeter crossover ~@center cone | crossover cross tweeter over | not hole dip peak hump suckout boost notch | alone either',
  centerLowCrossover:
    'cone crossover | crossover cross cone mid low | not hole dip peak hump tweeter | alone either',
  centerLowLimit:
    '@center box point it f3 spec response | down limit response reach play low f3 rate rated point db spec | not crossover cross hole dip peak hump | alone as',
  centerLowLimitDrop: 'point hz | point | not hole dip peak | alone as',
  measuredHoleHz:
    'hole dip suckout null notch trough cancellation | hole dip suckout null notch trough cancellation | alone either',
  measuredHoleDb:
    'hole dip suckout null notch trough | hole dip suckout null notch trough deep | alone either',
  measuredPeakHz: 'peak hump bump resonance | peak hump bump resonance | alone either',
  correctionBoostHz: '@correction curve | boost lift fill raise',
  upmixMainsDrop:
    '@voice singer soprano | drop fall lower less down soft go | need @upmix mode button kick mains @leftMain @rightMain tweeter | not @center trim',
  reflectionMeasuredMs: 'reflection bounce | reflection bounce after later come arrive | alone either',
  reflectionMeasuredDb: 'reflection bounce | reflection bounce ~down ~below strong | alone either',
  clarityMeasuredDb: 'clarity c50 | clarity c50 | alone either',
  distortionCenter: '@center distortion thd | distortion thd | not @mains left right | need distortion thd',
  distortionMains: '@mains @leftMain @rightMain | distortion thd | need distortion thd',
  toneMeasuredDb: 'octave third | octave third off difference | not slope crossover per',
  toneMeasuredHz: 'octave third | octave third | not slope crossover per',
  subDelay: 'subwoofer | late later delay behind after early before lag',
  arrivalMeasuredMs:
    '@center it | late later early before after arrive lag behind | not subwoofer processing latency reflection @voice lips picture',
  centerLatency:
    '@center latency process dsp delay | latency process dsp | not lips subwoofer picture @mains | alone as',
  mainsLatency:
    '@mains monitors | latency process dsp | not lips subwoofer picture | need latency process dsp',
  reverberationTime:
    'rt rt60 reverb reverberation decay clap balloon t30 t60 t20 | rt rt60 60 reverb ~time reverberation decay clap balloon measure t30 t60 t20 | alone either',
  centerSpreadAmount: '@spread width | @spread width ~full ~on ~at | not wide | alone either',
  screenCompensation:
    'treble shelf highs @screenCloth cloth fabric | treble shelf screen cloth raise more highs fabric compensate',
  screenHoleDiameter:
    'hole perforation perf | hole perforation diameter size across | not thick per | alone either',
  screenThickness: 'thick sheet @screenCloth | thick sheet thickness | alone as',
};

/** Said without a number: how far the spread is opened. */
export const SPREADS: Readonly<Record<string, string>> = {
  1: 'width all the way up; @spread all the way up|open; @spread at|on|to full|max|maximum; @spread .. fully open|opened',
  0.5: 'open|opened .. @spread =half|=halfway|half way; @spread .. open|opened|at|to|is =half|=halfway|half way; @spread .. to the =middle|=half; @spread .. at|to|on =half',
  0.25: '@spread .. by|at|to a quarter',
};

/** Said without a number: nothing of it. */
export const ZEROS: { readonly [Id in NumberFactId]?: string } = {
  toeIn: '@mains|boxes|speakers .. straight ahead|forward; no|zero toe|toein; not toed; toed straight ahead',
  pictureSideOffset:
    '@picture|@display ... centered; @picture|@display .. in the middle between; @picture|@display .. exactly? in the middle between',
  mainSeatOffset:
    'i|we sit right|dead|bang|exactly? in the middle; i|we sit .. in the middle; i|we .. bang in the middle; alone .. in the middle; @seatWord in the middle; i|we sit dead center; dead in the middle; in the exact center; straight before|in it; chair straight before',
  centerAgainstMainsDb: 'level|levels .. match|matched|equal|same .. meter|app|spl',
  rowRiser:
    'no riser; backRow|row not .. raised|higher; both rows .. same floor|level; second row flat; no platform',
  centerTilt: 'lies flat no tilt; not tilted; no tilt; flat on the bench',
  behindCenter:
    'back of @center touches; @center .. touches the wall; @center .. hard|right against the wall',
  centerSideOffset:
    'center .. midway between; center .. exactly|dead|right in the middle; exactly in the middle',
  centerBehindMains:
    '@center ... flush with|to the =line|@mains|towers; on the same line; in line with the mains',
  shelfSetback: 'front edge flush; flush with .. edge; right at the front? edge; edge of the shelf flush',
  bayRecess: 'flush with the front of .. @furniture|@bay',
  mainsBassCrossover: '@mains be? set? to? large; @mains be? full range|band; @mains as large',
  screenCompensation:
    'nothing|not .. done|put .. on|for the|it screen|heights|highs|treble; no treble boost|lift; no treble|lift|boost|compensation .. in|set|for|dialed; no treble lift; nothing .. for the highs|treble|heights',
};

/** Said in a frame of words with its number (`#`), where the thing and the measure alone would mislead. */
export const FRAMES: { readonly [Id in NumberFactId]?: string } = {
  seatDistance:
    '# to|from the =speakers|=loudspeakers|@mains; # away? from|to|off|behind the|their|that =line|=plane; @mains|line|plane .. to|and our|my|the =heads|head|sofa|couch #; sit|sits|seat|row|sofa|chair|couch .. # back|away|out',
  seatSpacing: 'seat to seat #; head to head #; neighbors # from each other; recliner|seat # over',
  rowSpacing: 'row to row .. #',
  rowRiser:
    'row|backRow|riser|platform .. raised|higher|up .. #; row|backRow sits|is|stands # above|higher|up; on a step|riser|platform of? #; # step|riser|platform; row .. # riser|step|platform',
  mainsBase:
    'l|left to r|right #; @leftMain to @rightMain .. #; left tweeter to the? right tweeter .. #; # from the left one|speaker|main',
  centerTweeterHeight: '@center tweeter height #; tweeter of the center .. # off|above .. floor|ground',
  mainsTweeterHeight: '@mains tweeter height #',
  toeIn: '@mains .. turned in by? #; toe|toed # in|inward',
  centerWidth: '@center be? # wide|across|long; @center width #; # from left to right',
  centerHeight: '@center height #; @center be? # tall|high',
  centerDepth: '@center depth #; # from front to back',
  wallDistance:
    '@center front|face to .. wall #; face|front|baffle of @center to .. wall ... #; front|face of the center ... # off|from .. wall; # from .. front|baffle|face .. to the wall',
  shelfSetback:
    '# beyond the face|front; # of .. @furniture|shelf|wood|oak|top|board .. front|before|ahead|past; # behind|from|inside the? front? edge|lip',
  centerAboveShelf:
    '# from the tweeter down; # between the shelf|board|wood|top .. tweeter; tweeter .. above the shelf|board|top|wood .. #; top|shelf|board to .. tweeter #',
  tapedMains: '# from|to each|both of? them|@mains|speakers',
  bayWidth: '@bay .. # wide|across; clear|inside width .. #; # from side to side',
  bayHeight: '@bay .. # high|tall; clear|inside height .. #',
  bayDepth: '@bay .. # deep; bay depth ... #',
  bayRecess: '# in from the lip|edge|front; # deep in the @bay|bay|slot',
  bayGap:
    '# gap|air|free|clearance .. round|around; gap round|around ... #; # gap between the center and .. bay|@bay|cabinet',
  obstacleWidth: 'in front of @center .. # wide|across; in front of @center .. width #',
  obstacleDistance: '# in? front|ahead|before of? it|center|the center; # before the =speaker',
  enteredRight: '@rightMain .. entered .. #; right .. entered at|as #',
  enteredLeft: '@leftMain .. entered .. #; left .. entered at|as #',
  delayLeft: '@leftMain .. delay ... #; # .. delay .. left',
  delayRight: '@rightMain .. delay ... #; # .. delay .. right',
  entryStep: 'click|step|press changes|moves .. #; step in .. menu #; # at a time; steps of #',
  centerTrim: 'level .. center stands|is|reads at #',
  upmixMainsDrop: 'lost|loses|lose about? # of|with .. singer|voice|upmix',
  reflectionMeasuredDb: 'reflection ... #; echo ... # softer|below|weaker',
  reflectionMeasuredMs: 'reflection|echo ... #',
  clarityMeasuredDb: 'c50|clarity .. @center ... #; @center ... c50|clarity ... #; c50|clarity .. #',
  distortionCenter:
    '# distortion .. center|=middle; @center|middle ... distortion #; @center .. # distortion; distortion .. center ... #; thd center #',
  distortionMains:
    '# distortion .. @mains|left; @mains|left ... distortion #; @mains .. # distortion; distortion .. @mains|left|@leftMain ... #; thd @mains #',
  toneMeasuredDb: 'third octave ... #; worst band ... #',
  toneMeasuredHz:
    'third octave ... #; worst band|mismatch ... #; differs most ... #; biggest|greatest difference ... #',
  correctionBoostHz:
    '@correction|correction ... boost|bump|lift|peak .. #; boost|boosts|lifts .. # on the center',
  centerBassCrossover: '@center to|at small #; crossover .. put|set|stands|sits at|to|on #',
  twinSpacing:
    'twin|second ... # tweeterToTweeter; side by side .. # tweeterToTweeter; # tweeterToTweeter .. second|twin|both; # from ones tweeter to the others',
  seatCount: 'sofa|couch|row|bench for|of #; # abreast',
  mainsLatency: '@mains ... latency ... #; @mains .. delay the sound .. #',
};
