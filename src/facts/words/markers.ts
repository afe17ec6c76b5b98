/**
 * What takes a phrase out of "this system, as it is": who else speaks or owns, when, wishes, advice and norms, doubt.
 * `ahead`: what stands behind the marker, as far as its kind reaches; `back`: the clause that ends with the marker.
 * `=` before a word means that very form of it.
 */
import type { Phrases } from './lexicon.js';

export type MarkerKind = 'likened' | 'other' | 'planned' | 'past' | 'brief' | 'hedged' | 'unknown';

const KIN =
  'friend|buddy|mate|pal|neighbor|sister|brother|nephew|niece|cousin|uncle|aunt|colleague|coworker|boss|dad|inlaw|parent|parents|grandson|soninlaw|somebody|someone';
/** Those of them who live elsewhere. */
const AWAY = 'friend|buddy|pal|neighbor|nephew|niece|cousin|uncle|aunt|colleague|coworker|boss';
const OUTSIDE = `${KIN}|dealer|shop|salesman|installer|forum|internet|people|reviewer|technician|support|decorator|electrician|expert|son|website|sticky|thread|article|review|video|blog|book|guide|chatbot|poster|member|board|theory|wisdom|store|seller|hotline|barber|dentist|plumber|tailor|builder|carpenter|net|web`;
const CLAIMS =
  'think|reckon|claim|suspect|blame|suggest|recommend|mean|believe|convince|swear|advise|advice|offer|insist|guess|assume|bet|argue|write|post|warn|told|quote|diagnose|reply|answer';
const SAYS = `say|tell|want|offer|quote|warn|${CLAIMS}`;
const THINGS =
  'center|speaker|box|system|setup|set-up|place|house|room|flat|home|receiver|television|living|apartment|den|tower|mains|display|rig|theater|kit';
const DO =
  'move|put|try|sit|raise|lower|bring|place|go|set|turn|use|buy|get|swap|pull|push|make|hang|mount|replace|order|add|build|borrow|lift|tilt|switch|change|exchange|return|sell|drill|rotate|slide|have|live|like|prefer|rather|love|say|call';

/** Phrases that begin with a person of the first kind are bound to a verb, so that a witness at home stays one. */
export const MARKERS: Readonly<Record<MarkerKind, { readonly ahead: Phrases; readonly back?: Phrases }>> = {
  likened: {
    ahead: `as if|though; =like a|an|in|from|someone|somebody|through|behind|under; =like it|he|she|they =is|=was|=were|=had|=sat|=stood; as in|from|through a|an|the; =as a|an`,
  },
  other: {
    ahead: `${KIN}|${OUTSIDE} .. ${SAYS}; ${KIN} ${THINGS}; dealer|shop|store ${THINGS}; ${AWAY} .. =his|=her|=their|=always|=still|=likes|=prefers|=wears|=uses|=got|=listens; my|the =car =has|=stereo|=radio|=is; the =cinema|=bathroom|=church|=multiplex =has|=echoes|=is|in; at|in the =multiplex|=church|=theater|=hall; manual|guide =says|=say|=tells|=recommends to; ${KIN} also? =has|=have|=owns|=uses|=runs|=sits|=watches|=listens; ${KIN} .. who =has|=had|=owns; ${KIN} =had =a|=an|=the|=one; ${KIN} =had|=has =that|=it|=this|=same|=his|=her|=theirs; dentist|barber|dealer|neighbor =has|=had|=keeps; ${OUTSIDE}|man|others|people|everybody : ; at my|our =own =place|=house|=home|=flat; ${KIN} with .. same; at|unlike|like my|our|a|his|her|the ${KIN}; his|her|their =former|=new|=old|=own? ${THINGS};
      =thinks|=reckons|=believes|=suspects|=blames|=swears|=claims|=insists|=suggests|=recommends|=advises|=supposes|=guesses|=assumes|=suspected|=blamed|=swore|=claimed|=insisted|=suggested|=recommended|=advised|=reckoned; =tells|=telling me|us|you|him|her; =says|=said|=told|=tells; upstairs; bedroom set; my|the other|second room|system|set-up|setup|set|house|receiver|television; former|previous flat|house|place|apartment|home|room; in|at|from my|our|the|his|her|their? =old|=last|=first flat|house|place|apartment|home|room|quarters; the|my|our =bedroom|=kitchen|=guest|=office|=dining|=sleeping room? @display|ceiling|ceilings|@mains|sound; =in|=at my|our|the|a|his|her =bedroom|=kitchen|=study|=office|=garage|=shop|=store|=showroom|=cinema|=cinemas|=theatre|=dealer|=dealers|=demo|=hotel|=gym|=car; at work; my bedroom|office; his|her|their place; at the =movies|=pictures|=dealership;
      the forum|board|internet|web wisdom|lore; =expect|=expected; i|we =suspected|=suspect|=blame|=blamed|=assumed|=assuming|=assume|=figured|=theory|=thought|=feared|=expected|=worried|=wondered|=believed; i be convinced|afraid|worried|scared; =im =afraid|=worried|=scared|=convinced; first thought|guess|idea|suspicion be; everybody|everyone|people on .. say; my theory|suspicion|fear|guess be; i read that|about|somewhere|online|on|everywhere|here|things|many; i =been|was|been =told; been|was =told; =hear|=heard|=read|=reading that|about; they|people always|often|usually? =say|=recommend; be =said; allegedly; according to .. =guide|=calculator|=article|=norm|=standard|=forum|=internet|=book|=dealer|=him|=her|=them|=recommendation|=recommendations;
      rule of thumb; most|many|some|normal people; some|many|most =say|=claim|=swear|=think; =normal|=typical|=standard|=average .. here; in general; as a rule; normally|typically; of another|different model; for another|different model; test|review of; unlike; compared|comparing to|with .. my? ${KIN}; on a|the forum|thread; =manuals say|recommend; the manual|standard|guide say|recommend .. =should; anyone|anybody else|with; somewhere else; other owners|people|users; his|her =was`,
    back: `in|at my|our|the? =old|=former|=last|=previous house|flat|place|apartment|home; they|people|some|he =say|=says|=said|=claims|=claim|=think|=thinks|=reckons; so he|they =say|=says|=said|=claims; i =am told; i read; or so i; according to .. =guide|=calculator|=article|=norm|=standard|=forum|=internet|=book|=dealer|=him|=her|=them; his|her|their words`,
  },
  planned: {
    ahead: `should; ought; wish; shall; ill; gonna; wanna; id; youd; hed; =would; i|we =will|=may|=might|=could|=can|=must not? ${DO}; you =will|=can|=could|=might; will =be =getting|=moving|=buying|=trying; =could =move|=put|=try|=sit|=raise|=lower|=bring|=place|=go|=set|=turn|=use|=buy|=get|=swap|=pull|=push|=make; plan; consider; =want|=wants|=wanted to?; tempt to; =going|=about to; =thinking|=dreaming|=thought of|about; =asked|=asks|=asking .. about a|an|another|new; =asked|=asks|=asking whether|if; =could|=might =be the|my|our|us|that; =looking for|at; =shopping|=saving up? for; =could|=can|=might =be =tilted|=turned|=moved|=raised|=lowered|=set|=changed|=placed|=switched; hope; propose; recommend; advise; suggest; =offered|=offers; =supposed|=meant to; next week|month|year|weekend|step|thing; tomorrow; one day i|we; someday; some day; eventually; in the future; intend to; quote for; eye on; =told me|us|to|him|her; =dont =tell|=want; instead of; rather than; as opposed to; need a|new|some; ideally; ideal; theoretically; in theory; on paper; =suppose i|we|the; assuming; lets say; imagine i|we; what if; if only; unless; if i|we =bought|=buy|=get|=got|=had|=were|=was; worth; for sale|my next; upgrade to .. =one day; on the wish list; =debating|=pondering; do i|we need; would be easy; =cost|=costs|=price|=priced|=paid; =must =i; better if`,
    back: `would .. =good|=nice|=better|=ideal|=easy; next|this week|month|weekend|year|summer; tomorrow; be the|my plan|idea|next; or so i hope; =to =choose =from; i|ive|we =never =tried|=used|=run; some day; one day; not =yet; =instead`,
  },
  past: {
    ahead: `used to; previously; formerly; earlier; back then; back when; back in the? =day|=days|_; =went|=switched|=changed|=moved|=upgraded|=swapped =from; be through;  =at =first; first week|weeks|month|months|year .. be|have|i|we|the; in the beginning; at the beginning; for a while|time|year|month; in those days; those|old days; at the|that time; =until|=till|=til last|recently|a|=yesterday|then; =when i|we =had|=lived|=was|=were|=used|=still; with|in|on my|our|the =old|=previous|=former|=last ${THINGS}; my|our =old|=former|=previous ${THINGS}|screen|soundbar; my|our|the|his|her =old|=previous|=former .. =was|=were|=had|=did|=sounded|=showed|=used; my|our =last place|flat|house|apartment|home|room; on|in|at its|the|my|our|their =old|=former|=previous|=original =stand|=place|=spot|=shelf|=bench|=position|=cabinet; i|we =had ... =before|=once|=earlier; =had =said|=told|=thought|=heard; 1st|first|last|earlier|previous =call|=visit; previous|former =owner|=tenant|=receiver|=center|=centre|=speaker|=tv|=one|=pair|=set|=box|=towers|=system; =old ${THINGS} .. =was|=were|=had|=did|=showed|=sounded|=said|=stood|=sat|=hung|=used|=came|=measured|=gave|=wrote|=read; once =had; =years|=months|=decades ago; before that; =originally; =had been; =sold|=scrapped my|our|the|a|it|them|away|out; replaced .. =old; came from|out of .. old`,
    back: `=years|=months|=decades ago; back then|when; in those days; at the|that time; before that; when =new`,
  },
  brief: {
    ahead: `for a|one|an|the =test|try|evening|night|scene|film|movie|episode|workout|afternoon|moment|minute|hymn|song|experiment|lark; for =tonights|=last|=sundays|=saturdays|=one .. =movie|=film|=scene|=show; temporarily; out of curiosity; on a lark; =one|=some =time|=evening|=night|=day i|we =had|=set|=put|=was|=tried`,
    back: `for a|one|an|the =test|try|evening|night|scene|film|movie|episode|workout|afternoon|moment|minute|hymn|song|experiment; temporarily`,
  },
  hedged: {
    ahead: `maybe; probably; perhaps; =think; guess; possibly; apparently; suppose; supposedly; believe; might; must; seems; reckon; assume; afaik; imagine; kinda; somehow; likely; presumably; if i remember; from memory; =could be; looks like; as far as i`,
    back: `i =think|=guess|=believe|=reckon|=suppose|=assume|=imagine; i|id =say; maybe; perhaps; probably; possibly; if i remember; from memory; or so; or thereabouts; give or take; guess; afaik; not measured; unmeasured; by eye|feel; roughly; must be`,
  },
  unknown: {
    ahead: `dunno; idk; unsure; wonder; forgot; unknown; clueless; tbd; whether; no idea|clue; not sure|certain|know|remember|recall|checked; never =checked|=looked|=measured; have to =check|=look|=measure; cannot|not tell|say if|whether`,
    back: `dunno; idk; unsure; forgot; unknown; tbd; no idea|clue; not sure|know|remember|certain; never =checked|=looked`,
  },
};

/** Where he comes back to his own system as it is; a clause that begins so ends what was opened before it. */
export const RETURNS: Readonly<Record<MarkerKind, Phrases>> = {
  likened: 'but; because; since; now',
  other: `=i|=we; now; =im|=ive; mine; ours; =here; at home; in my|our case; =my|=our .. be|have`,
  planned: `=i|=we =have|=had|=did|=tried|=moved|=turned|=put|=set|=am|=sit; now; =its|=theres|=heres; =it =is|=sits|=stands|=sounds; right now; currently; today; at the moment; so far`,
  past: `now; today; nowadays; these days; currently; since; meanwhile; this time; then; =its|=theres; =it|=this|=that|=center|=everything|=voices =is|=sits|=stands|=sounds|=comes|=has; the =center|=tv|=couch|=sofa|=voice|=voices =is|=are|=sits|=stands|=sounds|=come|=comes|=hangs; after; =i|=we =have|=sit|=am|=moved|=bought|=got|=use`,
  brief: `now; since; then; but`,
  hedged: 'definitely; certainly; =know',
  unknown: 'but; =know',
};

/** Who or what may say how it is: people of the home, and devices that show it. */
export const WITNESSES =
  'i we you it cust missus wife husband daughter partner girlfriend boyfriend mother mum mom wifes kids kid children caller customer owner client she he they lady gentleman everybody everyone all both one family guests she hers menu display receiver screen sheet spec tape meter label panel info page line that this which what amplifier amp avr player box readout app remote paper manual datasheet television tv telly window autoSetup correction center box wizard setup upmix mains subwoofer display specs sofa couch seat chair end row corner side';
