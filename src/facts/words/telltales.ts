/** Remarks that decide: where it is fine, what exactly was changed, which voices, who hears it elsewhere. */
import type { FamilyWords } from './lexicon.js';

export const telltaleWords: FamilyWords = {
  choices: {
    changedExactly: {
      'center-wires':
        'changed|new|swapped .. center wire|cable|lead; swapped the wires; wires of the center; new plugs on the center',
      'all-unplugged':
        'unplugged everything; everything unplugged; rewired it all; redid all cabling; redid .. cabling; re-terminated all; re-cabled everything; new cables everywhere; all new cables; moved house; moved .. rack; new flat; rewired .. everything; plugged .. everything; re-terminated .. leads',
      subwoofer: 'moved .. subwoofer; new subwoofer; subwoofer .. moved; subwoofer .. new place',
      wireless:
        'wireless kit|link|transmitter|speaker|rears; over wireless; extra processor; put .. processor .. between',
      'furniture-center':
        'new cabinet|sideboard|television unit|shelf; moved .. into the cabinet|shelf; new tv stand|bench|furniture; put .. in the cabinet',
      'soft-things':
        'rug .. gone|went|away|removed; curtains .. gone|down|away|removed; sofa .. gone; carpet .. out|removed|gone; took .. curtains|rug|carpet .. down|away|out; new parquet|tiles|floor; sold .. rug|carpet|sofa',
      seats:
        'moved .. sofa; new sofa|seats|chairs; moved the seats; turned the sofa; corner sofa new; sofa moved',
      receiver:
        'new receiver|amplifier; bought .. receiver|amplifier; receiver .. gave; exchanged the receiver; second hand receiver; another receiver; inherited .. receiver; since the new receiver',
      trim: 'turned .. voices up; pressed .. center volume up; center up to; raised .. center level; wanted voices louder; turned up the voices; center already raised; put .. center .. + #; plus # now',
      mode: 'pressed .. mode|button; changed the mode; searched sound programs; selected .. program|mode; other mode; set all speakers; mode with all; light it selects; danced with large hall',
      reset:
        'factory reset; firmware update; software update; after the update; reset .. receiver; power cut; after the reset',
      'center-box':
        'new center; bought .. center; exchanged the center; replaced the center; added a center; since the new center; got .. center',
      mains:
        'new mains|fronts|towers|front; moved .. mains|towers|fronts; bought .. towers|fronts|front; new left and right',
      screen:
        'new screen|cloth; new projection screen; put in a .. screen; hung .. screen; changed the screen',
      display: 'new television|display; bought .. television; bigger television; hung .. television; new tv',
    },
    subwooferPlace: {
      'near-center':
        'subwoofer .. under|beside|next to|near .. center; subwoofer below the television; subwoofer next to the television',
      front:
        'subwoofer .. between .. mains|left|center; subwoofer .. beside .. main|left|right; subwoofer .. front wall; subwoofer left of the television',
      corner: 'subwoofer .. corner; subwoofer in the corner; in the corner .. subwoofer',
      seats:
        'subwoofer .. behind|beside|next to .. sofa|seat|us|couch|me; subwoofer .. back wall; subwoofer behind us; subwoofer at the back',
    },
    screenAgainst: {
      'clearer-up':
        'screen up .. clear|fine|good|lovely|different|better; cranked the sheet up .. lovely|clear|fine; screen rolled up .. good|clear|fine; without the screen .. clear|good|fine; in the daytime with the television perfect; sheet up .. lovely|clear',
      same: 'screen up or down .. same; no difference .. screen up; screen up .. same|no change; same with the screen up',
    },
    allChannelMode: {
      yes: 'all channel|channels stereo; all speakers; mode with all; all stereo; party mode; multi channel stereo; all-channel; five channel stereo',
    },
    elsewhereToo: {
      headphones:
        'headphones too|also; with my? headphones .. announcers|too|also|same; on headphones too|same|also; on the train .. headphones',
      'other-room':
        'my sister|friend|buddy|neighbor|brother .. same .. problem|bad|whisper|subtitles; on a tablet .. subtitles|same; also on .. kitchen radio|phone|tablet; in other rooms too; same .. in the kitchen; at my sister .. just as bad; streams .. tablet .. switched the subtitles; totally different system .. same',
      'fine-elsewhere':
        'checked in the? shop fine; in the shop .. fine|good|perfect; at .. friend|buddy|brother .. fine|clear|perfect; in the old place center was|were ace|fine|great; in her|his|our former flat .. crystal|fine|perfect|clear; in the old flat .. fine|perfect|good|great; worked in the old; in the old house .. perfect|fine',
    },
    centerPointsAt: {
      ears: 'aimed|inclined|points|pointed|tilted .. my|the head|ears|seat; laser pointer; points at .. ears; aimed at the ears',
      below:
        'at the knees; points .. knees|chest|legs|floor; fires .. into|at .. knees|legs; pointing .. knees|below; flat on the bench horizontally',
      above: 'points .. above|over .. head|ceiling; fires over; at the ceiling; shoots over our heads',
    },
    whichVoices: {
      low: 'men|male|deep|low voices .. boom|barrel|honk|thick|fat; women .. right|fine men; only men; deep voice; male voices; blokes voices; women sound right but men; low male voices; men boom; deep voices',
      high: 'female voices; women only; soprano; kids voices; only women|female; high voices',
      's-sounds': 's sounds; esses; sibilants; the s; s and f; lispy; lisps; s sting',
      soft: 'whispers; whispering; quiet voices; soft voices; whispered',
    },
    fineContent: {
      'two-channel-music':
        'records|cds|music|albums|vinyl .. fine|lovely|perfect|good|great|beautiful; music .. perfect wide',
      'multichannel-film':
        'movie be fine; movie .. very pleased; discs .. five channels .. beautiful; movie .. all fine|great|perfect|fine; films .. fine',
      television: 'fine on television; news .. fine|clear|good|perfect; television .. fine|perfect',
    },
    fineSeats: {
      middle:
        'middle .. fine|lovely|clear|good|great; in the mainSeat .. fine|lovely|clear|perfect|great|good; middle of the sofa .. lovely|clear|fine|good; hear everything in the middle; middle seat flat|fine|clear',
      'other-height':
        'stand up .. clear|fine|good|different; when i stand .. clear|good|fine; sitting up .. clear; clear sitting up; sit up straight .. clear',
      near: 'up close .. clear|perfect|fine|great; meter|metre .. front .. clear|glass|bell; close up .. clear|fine',
    },
    smallHeadMove: {
      changes:
        'move my head .. change|inch; head .. inch .. change|whoosh|different; with every inch; lean .. whoosh|swish|change; nod .. treble; slouch .. change; when i lean; get up or slouch',
      steady: 'move my head .. no difference|same; steady wherever',
    },
    hearingChecked: {
      fine: 'hearing .. fine|ok|tested|age appropriate; ears .. fine; ent says .. fine',
      loss: 'hard of hearing; hearing loss; lost the highs; hearing .. bad; something with an ear; tinnitus; half deaf',
      aid: 'hearing aid|aids; hearing-aid',
    },
    settingsFromElsewhere: {
      yes: 'distances .. from before; levels .. from before; from the old flat|house|room|place; ones from before; still says .. old flat; second hand receiver; settings .. previous owner|old|before; from my old system; still from the old; receiver .. from .. friend|father|cousin|uncle',
    },
    microphonePlacement: {
      stand: 'microphone .. tripod|stand; tripod',
      hand: 'held the microphone; microphone .. in my? hand; hand held',
      cushion:
        'microphone .. cushion|table|headrest|armrest|sofa|back|seat; microphone on the; microphone flat on',
      shaded: 'microphone behind; behind a cushion',
    },
    twinArrangement: {
      'side-by-side': 'two centers .. side by side|left and right|next to',
      'above-below':
        'one above .. one below; two centers above and below; center below .. twin .. above; one over and one under',
      stacked: 'stacked; one on top of the other',
    },
    mainsWhenLoud: {
      clean: 'mains .. stay clean; mains .. clean|fine .. loud; left and right .. stay clean|clean',
      'strain-too': 'mains .. strain|distort too|also; all speakers distort',
    },
    toneDiffers: {
      yes: 'different timbre|tone|character; silver .. velvet; another timbre; honky .. sweet; tone differs|different',
      no: 'same tone; sound alike; all three sound the same',
    },
    listenersDiffer: {
      differ:
        'wife|husband|partner|roommates|kids .. hears nothing|fine|crazy; my wife .. points to the middle; i hear .. she|he not; nobody else hears',
      alike: 'we both hear; both hear it; everybody hears it; all hear it',
    },
    faultyMain: {
      left: 'left speaker|main|tower .. dead|silent|wired wrong|reversed; leftMain .. dead|silent|crackles',
      right:
        'right speaker|main|tower .. dead|silent|reversed; rightMain .. dead|silent|crackles; right side goes quiet',
    },
    heightAgainstMains: {
      same: 'same height as the mains|towers|left; level with the mains; at the same height; tweeters in a line',
      lower: 'center .. lower than .. mains|left; much lower than the mains',
      higher: 'center .. higher than .. mains|left',
    },
    troubleSide: {
      left: 'only on the left; left seat only; left side only; left end of the sofa',
      right: 'only on the right; right seat only; right end of the sofa; right side only',
      both: 'same on the other side; both sides; same on both; left seat bad .. right seat bad',
    },
  },
};
