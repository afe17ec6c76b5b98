/** What was changed before it began: a few frames, and in each of them every thing that may have been changed. */
import { type FamilyWords, framed, type Phrases } from './lexicon.js';

/** "The last thing I touched was X", "only X was moved", "it began with X", "X was replaced, and since then …" */
const changed = (...things: string[]): Phrases =>
  framed(
    things,
    (thing) =>
      `last thing|change|work|touched ... ${thing}; what .. @altered .. ${thing}; ${thing} .. =was|=were|=came .. last|=latest;
    only|just .. ${thing} .. =was|=were .. @altered; @altered .. ${thing} .. =just|right|shortly|night|directly before; ${thing} .. @altered .. =just|right|shortly|night|directly before;
    ${thing} .. @altered ... @began|=since|=ever; @altered .. ${thing} ... @began|=since|=ever; @began ... with|after|when|following ... ${thing};
    =since|after .. @altered .. ${thing}; =since|after .. =new|=another|=other|=different .. ${thing}; =since the|my|our|a|this ${thing} .. came|went|=is|=was|in`,
  );

/** A thing that is new, whatever came of it. */
const gained = (...things: string[]): Phrases =>
  framed(
    things,
    (thing) =>
      `@gotNew|=bigger|=second|=got .. =new|=bigger|=another|=other|=different|=second|=larger .. ${thing}; =new|=bigger|=another|=different|=larger .. ${thing} .. =since|=now|came|arrived|last;
    =new ${thing}; @bought|=fitted .. ${thing}`,
  );

const CABLED = 'unplugged|disconnected|reconnected|rewired|replugged|recabled|cabled';
const CHILD = 'son|daughter|grandson|nephew|kid|wife|husband|cat|guest';
const REMOVED = 'took|ripped|rolled|sold|threw|thrown|pulled|removed|lost|gave';
const SETTING = '=setting|=settings|menu|crossover|distances|levels|options';
const RESET = 'update|reset|firmware|factory|default|outage|blackout';
const ROOM = 'sofa|@furniture|carpet|rug|curtains|drapes|parquet|laminate|flooring';
const PLAYER = 'streamer|streaming|player|stick|console|=service|app|provider|settop|@sourceBox';
const MODE = 'mode|program|@upmix|@boostMode|@nightMode';
const OTHER =
  'window|windows|wall|lamp|ceiling|=door|aquarium|tank|conditioning|heater|radiator|heating|stove|piano|antenna';

export const changeWords: FamilyWords = {
  choices: {
    lastChange: {
      nothing:
        'no|not|never|nobody|noone|without .. change|changed|modification|alteration .. before|prior|ahead|beforehand; not|never|nobody|noone .. move|change|touch|swap|alter .. anything|nothing|thing; nothing .. changed|altered|moved|touched|swapped|shifted; no change at all; same setup|system|everything for .. years|months; all as before; changed nothing',
      loudspeaker: `${changed('center|@mains|@leftMain|@rightMain|speakers|subwoofer|@surround')}; ${gained('center|@mains|speakers|@surround|bookshelf')}; =got .. @surround; moved|pushed|shoved center|@mains .. against|back|corner|corners|apart|closer|wall; added .. speakers|center|@surround; put .. center|speakers .. in`,
      furniture: `${changed(ROOM)}; ${gained(ROOM)}; i|we|@kin|they .. moved|rearranged|turned|built .. sofa|@furniture|room|rug|carpet|curtains; ${REMOVED} .. @drapery; @drapery .. gone|removed|sold|dump|skip|ruined|taken|up|out; redecorated|renovated|refurbished|rearranged|moved house|home|room; we|i moved into; since .. move`,
      settings: `${changed(`${SETTING}|${RESET}|${MODE}`)}; after|since .. @reset; firmware|software .. update|updated|upgrade|receiver|avr; ${CHILD} .. @fiddled .. remote|button|buttons|menu|settings|something|mode|receiver|with; =pressed|=fiddled|=messed|=played|=poked|=pushed .. remote|button|buttons|menu|settings; changed|altered|tweaked|adjusted .. ${SETTING}|mode; factory reset|settings|defaults; power .. cut|outage|failure ... lost|reset|settings|forgot; receiver|processor .. forgot|lost .. everything|all|settings; back to factory|default|defaults; turned .. voices up; turned up the voices; son|daughter|grandson|nephew|kid .. turned|changed|selected|set; typed .. distances|levels; selected a .. program|mode; set the crossover; wanted voices louder; settings .. changed; someone changed; louder .. mother in law; corrected it`,
      calibration: `${changed('@autoSetup|@correction|measurement|microphone')}; redo|rerun|redid|redone|repeated|fresh|recalibrated|re-ran .. @autoSetup; new @autoSetup; since|after .. @autoSetup|calibrated; recalibrated|recalibrate|recalibration; run|running .. microphone again; new|fresh correction|measurement; did the autoSetup; dates from .. @autoSetup; measured .. in .. microphone`,
      wiring: `${changed('@wire|wiring|=connection|=connections')}; replaced|renewed|rewired|recabled|tidied|reconnected|shortened|extended|redid|changed .. @wire|wiring|cabling; new|fresh|longer|thicker|different @wire|banana; everything|all|lot|system|whole .. ${CABLED}; ${CABLED} .. everything|all|lot|system|whole; recabled; rewired; electrician was here; re-terminated; re-cabling; plugged .. in new; connected .. new|again; everything|all .. plugged .. again|back`,
      screen: `${changed('television|@display|@screenCloth|cloth|canvas')}; ${gained('television|@display|@screenCloth|projector')}; =got .. projector|@screenCloth|television; hung|mounted the|our|a|my|new television|screen|display; mounted the display|television high; went from .. display|television to; from .. display .. to .. display; put in a .. screen`,
      source: `${changed(PLAYER)}; ${gained(PLAYER)}; new disc|bluray player; changed|switched .. provider|=service; other provider; new computer`,
    },
    changedExactly: {
      'center-wires': `${changed('center .. @wire', '@wire .. center')}; @altered|longer|renewed|extended|shortened .. @wire .. to|for|of|on .. center; @altered|longer|renewed .. center @wire; swapped the wires`,
      'all-unplugged': `${CABLED} .. everything|all|lot|whole|every|entire|again; everything|all|lot|whole|system|entire|=every .. ${CABLED}; all|every .. @wire .. out|off|undone|redone; took .. system|rack|everything|setup .. apart|down; banana|new @wire|bananas .. all|every|everywhere|throughout|everything; moved house|home|flat; since .. move; redid .. cabling; re-terminated all|leads; re-cabled everything; plugged .. everything; everything|all .. plugged .. again|back`,
      subwoofer: `${changed('subwoofer')}; =new|second|bigger|another subwoofer; bought|added|moved|shifted|swapped .. subwoofer; subwoofer .. moved|shifted; subwoofer .. new place`,
      wireless: `${changed('wireless|transmitter|dsp|=radio .. link', 'extra|external|additional .. processor|box|unit|equalizer')}; went wireless; wireless .. kit|link|adapter|transmitter|sender|module|speaker|@surround; over|via wireless|radio; put|added|installed|bought|new .. wireless|transmitter|extractor|splitter; processor|dsp|box .. between .. receiver|amplifier; put .. processor .. between`,
      'furniture-center': `${changed('@furniture|@bay', 'furniture')}; ${gained('@furniture|@bay')}; built|got .. @furniture; @furniture .. arrived|delivered|replaced; moved|put .. center|speaker|it .. into|inside .. @furniture|@bay; moved .. into the @furniture`,
      'soft-things': `${REMOVED} .. @drapery; ${changed('@drapery')}; @drapery .. gone|removed|sold|dump|skip|ruined|wash|cleaner|cleaners|moths|cleaned|taken|away|down|out|went; sofa .. gone|thrown; sold|threw .. sofa; new|=laid floor|parquet|laminate|tiles|flooring; =laid .. floor|parquet|laminate|tiles|wood|boards; @drapery .. up .. floor|wood|boards|tiles`,
      seats: `${changed('sofa|=seats|=seat|=seating|=chairs|armchair|armchairs')}; ${gained('sofa|armchair|=seats|loveseat')}; i|we|@kin|she|he moved|turned|pushed|rearranged .. sofa|=seats|armchair|chairs; sofa|seats .. moved|turned|pushed .. back|to|forward|round|against`,
      receiver: `${changed('receiver|amplifier|processor')}; ${gained('receiver|amplifier|processor')}; up|the|my|our .. =new|=another|=different receiver|amplifier|processor; bought|inherited|switched|borrowed|exchanged|replaced|swapped|upgraded .. receiver|amplifier|processor; receiver|amplifier .. replaced|exchanged|repaired|arrived; left me .. receiver|amplifier|set|system; receiver .. gave`,
      trim: `${changed('center .. @level', '@level .. center')}; i|he|she|we|@kin turned|cranked|bumped|raised|pushed|nudged|upped|increased|boosted|lowered .. center|dialog|voices|speech .. up|down|by|@level|#; wanted .. voices|dialog|speech .. louder; bumped|upped|cranked .. center; turned .. voices up; turned up the voices; pressed .. center volume up; center up to; raised .. center level; center already raised; put .. center .. + #; plus # now`,
      mode: `${changed(MODE)}; press|pressed|hit|selected|chose|found|discovered|activated .. ${MODE}|button; @kin|kids|i .. changed|switched .. ${MODE}; mode .. changed|different|switched; sitting|sat on .. remote; other mode; mode with all`,
      reset: `${changed(RESET)}; firmware|software .. update|updated|upgrade; updated|upgraded .. firmware|software|itself; after .. update; factory reset|defaults; back to factory; reset .. receiver|avr|processor; outage|blackout|thunderstorm|lightning|power .. lost|reset|settings|forgot|wiped|factory; receiver .. forgot .. everything|all; lost .. settings|memory; power cut|outage|failure`,
      'center-box': `${changed('@other center')}; ${gained('center')}; @bought .. center; got .. new|bigger|matching center; exchanged the center; new center; brought|put .. @other center`,
      mains: `${changed('@mains|@leftMain|@rightMain')}; ${gained('@mains|bookshelf|pair')}; moved|pushed|put|spread .. @mains .. to|into|apart|closer|corners|back|against|further|wider; moved .. mains|towers|fronts`,
      screen: `${changed('@screenCloth|cloth|canvas')}; ${gained('@screenCloth|cloth|canvas')}; new|acoustic|transparent screen|@screenCloth .. since|now|went|came|last|in|and; put|hung|built .. acoustic|perforated|woven|projection|transparent|roll .. screen|@screenCloth; went from .. to .. projector|projection; put in a .. screen; new roll-down`,
      display: `${changed('television|panel|oled|flat')}; ${gained('television|panel|display')}; hung|mounted the|our|a|my|new .. television|panel`,
      several: `several|lots|everything|lot|all|number|three|multiple|many .. changed|moved|replaced|redid|things|changes .. once|same|together|weekend|simultaneously; @altered ... at once; @altered|new ... same|one|single time|day|weekend|go; at once|same time .. changed|replaced|moved`,
      other: changed(OTHER),
    },
  },
};
