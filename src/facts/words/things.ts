/** Loudspeakers, where they stand, the seats, the picture and the screen: what can be seen and taped. */
import type { FamilyWords } from './lexicon.js';

export const thingWords: FamilyWords = {
  choices: {
    centerCount: {
      none: 'not own a center; no center by choice; 4.1 no center; center-less; sold the center; only four speakers; no center|middle speaker; without a center; have no center; no center at all',
      two: 'bought|added|have .. second center; @many of .. same|identical? center; =second =one .. center; @many centers one; one above .. one below; @many center speakers; doubled the center; center below .. and .. above; a twin of it above; one over and one under; a center .. below .. and .. twin; upper and lower center',
      one: 'single center; just the one center; one box under; only one in the middle; lone center',
    },
    centerLayout: {
      'mid-tweeter-mid':
        'cone on|at each|either|both side|sides .. tweeter; cone each side .. tweeter; two|2|pair|dual|twin|both cone|cones .. tweeter .. between|middle|center|in; cone tweeter cone; tweeter between .. two cones; two # .. tweeter .. between|middle|center|in; one cone .. tweeter .. one cone; # either side of .. tweeter; two # with? w tweeter; mtm; w t w; tweeter between .. cones; two cones and .. tweeter .. middle|between|center|in; tweeter .. in the middle cone each side; usual lying one; cone left and right of .. tweeter; two cones .. one tweeter; tweeter .. cones .. either|each|both side; wtw; two cones on the sides; two cones .. a tweeter between them; d appolito; cone .. tweeter .. cone in a row; dual # cones .. tweeter; tweeter .. flanked by .. cones; cones .. flank .. tweeter; tweeter .. sandwiched',
      'nested-mid-tweeter-mid':
        'tweeter .. raised between; tweeter .. notch between; cones close together .. tweeter above; cones tucked in under; tweeter .. high .. cones .. almost touching; tweeter on top of the gap; tweeter raised above .. cones; cones .. nearly touch; cones almost touch .. tweeter',
      'two-and-a-half-way':
        '2.5-way; # way .. left|right cone; one of the two cones only does bass; second cone .. bass only; right one only bass; one cone .. only bass; one of the cones .. only bass',
      'woofer-mid-tweeter-woofer':
        'wmtw; 3-way with the mid under; wtmw; dedicated midrange with tweeter above; two big cones and a small|one; mid and tweeter stacked; tweeter above .. mid .. between .. cones; three way center; woofers outside; mid with .. tweeter above it .. between',
      'tweeter-mid-mid-tweeter':
        'sideSeat .. tweeter .. sideSeat .. tweeter; tweeter .. between them .. two cones; end tweeter .. end tweeter; tweeter .. each|both|either .. end|ends; tweeter left .. tweeter right .. cone; tmmt; two tweeters on the outside; tweeter on|at each|every far|outer? end; tweeters outside; tweeters .. outer ends; tweeter .. both ends; tweeters at the ends; tweeter .. two|both|pair .. cone .. tweeter',
      'tweeter-mid-tweeter':
        'cone .. each|either|both side|sides .. tweeter; one cone .. tweeter .. each|either side; tweeter cone tweeter; tmt; two tweeters flank one; one mid in the middle and tweeters; tweeter on either side of .. cone; single|one cone .. flanked|between .. two tweeter; cone .. flanked by .. tweeter',
      'paired-boxes':
        'paired boxes; two bookshelf|bookshelves side by side; two .. boxes .. side by side; used a pair of .. as the center; two complete speakers for a center; pair of satellites next to each other; two bookshelf boxes end to end; two .. speakers side by side; two of my spare .. side by side; two small speakers next to each other .. center; two .. bookshelf|speakers|boxes .. lying|next|beside .. other|each; two whole|complete|full .. bookshelf|speakers',
      coaxial:
        'coaxial|coax|concentric|coincident; tweeter .. inside|in|throat|middle|center|heart .. cone|woofer; point source; tweeter .. right|sits inside|in|middle .. cone',
      'vertical-two-way':
        'normal bookshelf upright; one cone and a tweeter over it; single 2-way standing up; stand-mounter used as center; one cone one tweeter vertical; bookshelf .. upright .. center; bookshelf .. as .. center .. upright; standing bookshelf; two-way .. upright; upright box|speaker .. tweeter .. over|above .. one; upright .. tweeter over .. one cone',
      'horizontal-two-way':
        'tweeter a cone thats it .. side; bookshelf on .. side; one cone one tweeter next to each other; 2-way laid down; laid a bookshelf flat; cone left tweeter right; bookshelf .. lying|lies; one cone .. one tweeter .. side by side; two-way .. on its side; bookshelf .. sideways',
      'full-range':
        'one|single|just|lone|two? full range|wideband|broadband .. driver|cone|speaker|unit|drivers; no tweeter; single driver; fullrange driver; just one # cone; one cone does it all; wideband',
    },
    centerOrientation: {
      'upside-down':
        'other|wrong way up; on its head; badge|logo .. upside|bottom|down|floor|inverted|wrong; flipped|inverted|turned over|upside|head; upside & down; flipped & over; badge .. faces the floor',
      level:
        'lying flat|down|horizontal; the way it should; right way up; horizontal as designed; logo right side up; normal position',
      upright:
        'center|speaker .. stood|stands|standing .. end|upright|vertical|vertically; upright|vertical center; center .. turned on its end; stood it up; standing vertical; rotated it 90; upended it',
    },
    fullRangeMidSide: {
      left: 'left cone .. do|does .. voice|mids|midrange; one on the left plays voice; bass-only one .. right; cone .. left seen from; left-hand cone goes up; right one only bass; left one .. voice',
      right:
        'right cone .. do|does .. voice|mids; bass-only cone on the left; cone is on the right side; right-hand cone goes up; right one .. voice',
    },
    centerFamily: {
      'identical-box':
        'same speaker|speakers|boxes all round|around; @lcr|three|all|fronts|center .. same|identical|identicals|equal|like .. speaker|speakers|model|box|boxes|monitor|monitors|bookshelf|loudspeaker; same|identical .. speaker|speakers|model|box|boxes|monitors .. three|across|all|times|front|lcr|left; center .. identical|same .. to|as|model as|@mains|left|right; third .. of the same|same|main|bookshelf|monitor; three & identical|same & speaker|box|model|bookshelf|across; identical & front|across|lcr|all; same & speaker & across|three|all; identical .. speakers|boxes|bookshelf|model; @lcr identical|same; match|matches the mains exact; same speaker all across|round; @lcr .. the same model|speaker; used a third main as center; same model; same cubes; same little boxes; same three; same box as the mains|left|right; three bookshelf speakers',
      'same-series':
        'center .. same|belongs|matching|from|its|partner .. range|series|family|collection|package|kit|generation|lineup; same|matching range|series|line|family|package|collection; same|matching .. range|series|family; matched|matching|partnering center; bought|came|sold|comes .. as .. set|package|bundle|kit; came .. in one set|box|package; matching one .. series|range|towers|fronts; matching .. center; timbre matched; matching set|speakers; of the set; complete set; satellite set; set of five|5',
      'same-maker':
        'same .. brand|make|maker|manufacturer|company|firm|marque .. different|other|another|older|newer|not|cheaper|earlier|lower|smaller .. series|line|range|model|generation|one|family|level?; same & brand|make|maker|manufacturer|company & different|other|another|older|newer|not & series|line|range|model|generation; sister line',
      unrelated:
        'center .. different|another|other|unrelated|foreign .. brand|make|maker|manufacturer|company|outfit|firm; center .. cheap|freebie|leftover|stopgap|auction|flea|charity|garage|odd|mismatched; different|another|other brand|make|maker|manufacturer|company|firm|brands|makes|makers; not .. same brand|make|series|maker; center .. not .. match|matching|related .. @mains|set; mismatched|unmatched|mix|mixture .. speakers|brands|center|fronts|set; @mains .. something|different|another|other else|brand|make|maker; different|other|another|unrelated & brand|make|maker|manufacturer|company & center|than|front|main|tower; mismatched; leftover & center; not & match|same & brand|series|make & center; center & cheap|old|older|spare|leftover|freebie & main|tower|new; mixed brands|makes; random center; kept my old center; leftover from; center .. was on offer; box i had over; from a small workshop .. center; center .. different from; center .. not from the same|series; center .. second hand; unmatched; center .. from my old; mains .. horn .. center; some|supermarket|unknown|noname .. make|brand; no name .. center|speaker|brand',
    },
    mainsKind: {
      tower:
        'floorstander|floorstanders|floorstanding|towers|tower|tallboys|columns; floor standers; floor standing',
      compact:
        'bookshelf|standmounts|standmount|minimonitors; small|little .. bookshelf|speakers|monitors|mains|fronts .. on stands; @mains|left and right|fronts .. on .. stand|shelf; small|little @mains|fronts; sats; monitors on the shelf; mini speakers; bookshelves; stand-mounts; mains on stands; studio monitors; boxes on free? stands; speakers on stands; compact; palm sized; ordinary two-ways; small two-ways; satellite set',
      'panel-or-horn':
        'electrostatic|electrostats|electrostatics|ribbons|planars|planar|dipoles|horns|magnetostats .. @mains|speakers|left|right; @mains .. electrostatic|electrostats|horns|ribbons|planars|dipoles; ribbon|panel speakers; electrostats; ribbon panels; dipoles; planars; horns; magnetostats',
      'in-wall':
        '@mains .. in|inside|into|on .. wall|walls|plasterboard|drywall; inwall|inwalls|onwall|onwalls; built|flush|recessed into|mounted|in .. wall; in-walls; on-walls; flush mounted speakers; speakers in the plasterboard',
    },
    centerSizeAgainstMains: {
      smaller:
        'cones .. half|third|quarter .. size; small thing|box|one .. center; center .. thing|box .. half; center .. much|far|lot|way|considerably|half|third .. small|smaller|tiny; tiny|little|puny|mini|skinny|dinky center; # .. cones? .. against|versus|vs|compared .. #; center .. toy next to; center .. tiny; small than .. mains',
      similar:
        'center .. same|equal|similar|as big|large .. size|cones|as|woofers|drivers|big; same|equal|similar size|sized cones|drivers|woofers|as; as big|large as .. @mains|fronts|towers; equal size; same cones',
    },
    centerPowered: {
      no: 'passive center; driven by the receiver; normal passive; no power cord; center .. passive; passive speakers',
      yes: 'center .. active|powered|amplifier|own amp|self; active|powered|selfpowered center; powered speaker; plugs into the wall|mains; center .. powered|active; self-powered; powered one; has its own amplifier',
      'powered-mains-too':
        'all three .. active|powered; powered monitors lcr; three studio monitors; everything .. self-powered; all active; all powered; three active|powered; mains .. active .. too',
    },
    seating: {
      'several-rows':
        'two|2|three|3|second|back|both|front .. row|rows; =rows of; two|three|second|back|rear & row & seat|chair|sofa|of|recliner; @many rows; second row; sofa plus .. behind; back row; front row .. back; rear row; row two; row 2; rows # apart; behind .. sofa .. another|second|bench|row|stools; another|second .. bench|row|sofa .. behind; second row|line|bench .. @kin|people|kids|complain; front row .. rear|back row; in two lines|rows; @frontRow ... @backRow; @backRow ... @frontRow',
      'one-row':
        'seats|places|chairs|people in a|one row|line; one|a|single|our|the|three|3|four|4|two|2|big|corner|long .. seat|seater|seaters sofa; sofa for|with|of|seats|fits three|four|two|3|4|us|all; one row; one|single|corner|sectional|ushaped|l sofa; we sit .. sofa; all .. on|in .. sofa|row; sit|sitting in one|a line|row; five|four|three wide sofa|sectional; we|persons|people .. on the long .. sofa|diwan|bench; three seat side by side; single row; we .. sit .. next|beside|line|together .. each|one|other; sit .. all .. line|row; two|2|three|four armchair|seat|recliners .. next|beside .. other|each; all the seating',
      'single-seat':
        'have|got|is|s|there only|just .. one|single =chair|=seat|armchair|recliner; only|just have|got .. one|single =chair|=seat|armchair|recliner; only|sole|lone listener; one|single|my|just|only|lone|own seat|chair|armchair|listening chair|recliner .. only|alone|me|listen|room?; just|only one|me|my|a seat|chair|armchair; i .. alone|own|only|myself .. listen|sit|watch; solo|lone|single listener|listening; one armchair; armchair only; alone .. in the middle; sit alone; one listener|seat only; single chair; alone .. in .. flat|house|room; only|just one place|seat|chair .. used|listening|ever; alone from .. chair|seat',
    },
    centerPlacement: {
      bay: '@stuffed|inside|built|fitted|housed|hidden|recessed|lives|sits .. in|into|inside|within .. @furniture|@bay|slot; center|speaker|it|box .. in|inside|within .. @furniture|@bay|slot|opening|unit|shelving; closed box|cabinet|compartment .. front open|only; slot|opening|gap|space|hole in|of .. @furniture; carpenter|joiner .. niche|slot|opening|compartment|box; only|just .. front .. open; inside .. @furniture|@bay; slid into; in its hole; in cabinet; built into .. cabinet|furniture|unit; in|inside .. @bay; cubby; compartment; alcove; cubby hole; behind .. grille cloth .. cabinet; center .. between .. shelves; shut in; in .. with doors; in the @furniture; center .. in|inside a|the|its hole',
      'behind-screen':
        'center|speakers|@lcr|all|three|fronts|everything|it .. behind|through .. screen|@screenCloth|cloth|fabric|sheet|picture; fires|plays|shoots|talks|firing through|behind .. screen|@screenCloth|cloth|fabric|sheet|picture; behind the|an|my .. @screenCloth|sheet|fabric; behind .. @screenCloth; behind the cloth|sheet|picture|fabric; behind .. perforated|woven|acoustic; behind it; center .. back|behind of? .. canvas|@screenCloth|cloth|canvas|sheet; sound .. through .. @screenCloth|cloth|canvas|sheet',
      floor:
        'center|it|speaker|box .. on|lie|rest|near .. floor|carpet|hearth|ground|rug|boards|tiles; just|few|inches .. above|off .. floor; on the ground; on the carpet; on the floor; on the floorboards; center .. floor in front; center .. floor level|angled|below?; center .. lies|lie|sits|stands .. @floor; =floor angled',
      'shelf-top':
        'center .. sit|stand|lie .. back|front|edge of .. @furniture; center .. board of .. rack|shelf; lowest|top|middle board|shelf; center|speaker|it|box .. on|atop|onto .. @furniture; center|speaker|it .. on top .. @furniture; on|atop .. oak|glass|wooden|low|long|pine|wide|open|marble|top @furniture; on top of .. @furniture; on .. the|a|my @furniture; flat on .. @furniture; sits on .. @furniture; center .. top of; on .. glass|long|low|wooden|marble shelf|sideboard|board|furniture; on long; long low sideboard; on the television @furniture; stands on .. @furniture; lies on .. @furniture; on some sort of shelf; on top of it',
      stand:
        'center|it .. on|has|have|own .. stand|tripod|pedestal|trolley; on .. stand of .. own; on .. own|low|metal|dedicated|little|short|floor|speaker|separate .. stand; free standing|freestanding; stand .. nothing around; on a pedestal; stands free; center .. on a .. stand; center .. floor stand; center .. stand .. free; all three .. on stands; stand .. just|only|made|built for the center; built .. stand .. center',
      wall: 'mounted .. above|over|under .. television|ceiling|picture; under .. ceiling above; center|it|speaker .. screwed|bolted|fixed|hung|mounted .. wall|bracket; center .. over|above .. television|screen|picture; center|speaker|it .. wall mounted|wallmounted; bracket .. wall|above; center .. bracket; hung above|over .. television|picture|screen; center .. on the wall; wall bracket; mounted over|above .. television|screen|picture; center hangs; screwed|bolted .. wall|bricks|plaster|brick; center .. wall hung; screwed|bolted|fixed .. to|on|into .. =wall|bricks|plaster',
    },
    bayStuffing: {
      open: 'air|gap|gaps|inch|inches|cm|finger .. round|around .. it|center|speaker|box; all the way round; air around|round; empty|hollow|open space|behind|around|back|cavity; gaps|gap .. open|empty|unfilled; rattles|sits|loose .. in .. around; nothing|not|no stuffed|packed|stuffing .. in|there|round|around|it?; just sits in there; open all round|around; void behind; two finger-widths; inch around; gap of # around; open gaps; with gaps; gaps .. open; gaps .. beside|around .. center .. open; not filled .. space|gaps; see .. past .. center .. back; no foam; gaps|gap|space .... open|free|empty',
      filled:
        'foam|wadding|felt|rockwool .. round|around|gaps|gap|sides|behind; foam|stuff|wool|damping|insulation|towel|acoustic & gap|around|fill|bay|hole|cabinet|space; packed with; gaps .. filled; stuffing .. in; space|gaps .. around|beside ... full|filled|stuffed|packed .. foam|wool|wadding|felt; bedded|packed|wrapped .. in .. @softThing|foam|wadding|polyester|wool; stuffed|packed|filled|lined .. gap|gaps|round|around|sides|space|hole|@bay|bay; @bay|hole|around|gap|gaps|center ... stuffed|packed|filled|lined|full .. foam|wool|towels|rockwool|wadding|felt|@softThing|blankets|pillows|polyfill; stuffed|packed foam|wool|wadding|towels|felt; foam|wool|wadding .. all? around|round',
      sealed:
        'gap|gaps|opening|edges|front .. sealed|closed|covered|trimmed|blanked .. panel|frame|board|plate|flush|tape|mdf; panel|frame|board|plate .. flush|closes|seals|around .. front|center|speaker|gap|edges; framed in with a panel; closed off around; faceplate around it; built in flush; sealed .. into|in .. panel; frame around .. closed; closed|shut|shuts|covered|plane .. by|with? .. baffle|panel|plate|board|furniture; plate|panel|baffle .. flush|shuts|closes|closed; around .. center .. panel|plate|baffle',
    },
    floorCover: {
      bare: 'wood|wooden|hardwood|tile|tiled|stone|laminate|concrete|bare|parquet|marble|slate|cork|oak|polished|vinyl floor|floors|flooring|boards; tiles; floorboards|parquet|laminate|linoleum; no rug|rugs|carpet|carpets; floor & wood|hardwood|tile|stone|laminate|concrete|bare|parquet|marble|vinyl; hardwood; slate; concrete; naked|bare .. wood|floor|stone|boards; nothing .. ground|floor ... stone|wood|tiles; stone plates',
      carpet: 'carpet & floor|room|thick|wall|fitted|deep; carpeted; wall-to-wall; deep pile; shag',
      rug: 'rug; carpet runner; flat-weave; kilim .. over; thin|light|small mat|rug|carpet; mat .. between|front; light|thin|small .. rug|mat; rug .. on|over .. @floor',
    },
    obstacle: {
      'seat-row':
        '@frontRow .. hide|block|hides|tall|high|in|way; tall|high backs .. see|not; @backRow .. not see .. center|speaker; recliners .. tall|high backs; heads|head|headrests .. front|way|block|blocks|hide|hides; front row .. blocks|hides|way|front of; sit|sits behind .. heads|someone|people|row|them|backs; look|looks|looking over|past|between .. heads|seats|backs; @heads .. in front of|hide|block|before; @heads in the way; line of sight .. people|heads|seat; people before us; @heads .. hide|block|cover; see heads; recliners .. block; head of .. in front; backs|heads|chairs|recliners|seats|headrests .. in front|first|front .. hide|hides|cover|covers|block|between; front|first =chairs|=seats|row .. hide|cover|block; @frontRow .. between|stand; front =chairs|=seats|row .. cover|covers|hide|hides|block|blocks',
      object:
        '@clutter in front|before of? it|center|speaker|grille; plant|vase|lamp|ornament|candle|toy|flower|photo|books|statue|basket|soundbar|clock .. front|before|blocks|covers|hides .. it|center|speaker|grille; soundbar|television|bezel|edge|foot|stand|lip .. overhang|overhangs|covers|hides|blocks|hangs|dips|juts .. center|speaker|tweeter|it|grille|part|top; center|speaker|tweeter|it|grille .. behind|blocked|covered|hidden|obscured|masked by? .. @clutter|television|foot|stand|soundbar|door; something|things|stuff|ornaments .. front of .. center|speaker|it; dog bed .. in the way; cabinet door in front; base|foot of the television cover; hangs .. in front of the center; cover .. half of .. grille; covers the .. grille; border covers; stand foot .. front; cat sleeps in front; glass door; blocks the center; blocked by; screen .. edge .. cover; bezel .. covers; rod hangs; @clutter|ornament|thing|something .. stand|stands|standing|sits .. in front|before of? .. center|it; @clutter|ornament|thing .. front|before .. center',
      table:
        'coffee|low|glass|sofa|side|big|wooden|heavy table .. between|front|before|way|stands|sits|middle|line|there; table .. between|in front|before|in the way|line; ottoman|pouf|footstool .. front|between|before|way; table & front|between|before|way & coffee|low|sofa|us|center|me|of; glass table; sofa table in|between; coffee table; low table; over|past the table .. view|line; view|line ... over .. table',
      none: 'nothing|no .. between us|me|it|center|seat|sofa|listener|and; nothing .. in front|way|between; no obstacle|obstruction|obstacles; clear|free|open|direct|unobstructed line|view|path|sight|shot; line of sight .. clear|free; no table; unobstructed; nothing between; see|look .. center .. perfect|straight|clear|without .. nothing|anything?; straight at .. center .. without; nothing .. in the way; view .. center .. free|clear|unobstructed; not|nothing|without .. blocking|blocks it; view|path|line .. center .. unobstructed|free|clear',
    },
    screenKind: {
      perforated:
        'perforated|microperforated|perf|microperf|perforation|perforations screen|sheet|vinyl|pvc|@screenCloth|screens?; vinyl|screen|sheet .. with .. holes|perforations; tiny|little|small|micro holes; perforated & screen|sheet|vinyl|pvc|@screenCloth; perf & screen|vinyl|pvc; holes in the screen; vinyl .. holes; pinholes|pinhole; not .. woven ... holes|pinholes|perforated',
      woven:
        'woven|weave|textile|fabric|cloth|knitted|mesh .. screen|@screenCloth|material|acoustic|transparent; acoustic|acoustically .. woven|weave|cloth|fabric|textile; screen .. woven|weave|fabric|cloth|textile|mesh; woven & screen|cloth|fabric|@screenCloth|material; weave & screen; woven; weave; textile|fabric|tissue|mesh ... not .. holes|perforated|perforation; no|not .. perforation|perforated|holes ... tissue|mesh|woven|weave|fabric; @screenCloth|cloth|canvas|sheet .. textile|tissue|woven|weave; fine mesh',
      none: 'no & screen & front|before; just a television; normal television; nothing before the speaker; below the screen #; center .. below the screen; television|=tv ... nothing .. before|front; center .. below|under|above|over the .. @screenCloth|cloth|canvas|sheet|picture|panel|display .. not|no|so|with .. covered|screen; no|not .. projector; nothing between .. center|us|me ... no .. cloth|screen; plain view; no screen .. over|front|before; center .. below|under|above .. @screenCloth|screen ... not covered',
      solid:
        'ordinary|normal|regular|standard .. projection screen|@screenCloth; solid .. screen .. front; screen .. not|no|isnt|without .. transparent|perforated|holes|acoustic; not .. acoustically|acoustic .. transparent; opaque|blackout|matte white screen|cloth|pvc|vinyl; no perf; pull-down screen; normal .. screen .. in front of the center; non perforated; solid|closed|matte|plain|ordinary|normal .. @screenCloth|cloth|canvas|sheet|vinyl|plastic ... front|before|center|block|blocks; @screenCloth|cloth|canvas|sheet .. center .. closed|solid|no .. sound; no sound .. go|through|pass; neither|not .. perforated nor|or woven; @screenCloth|cloth|canvas|sheet .. blocks|block .. center ... vinyl|plain|solid; matte white|vinyl|plastic .. drops|comes|front; behind .. ordinary|solid|normal|plain .. @screenCloth|screen; canvas|cloth|@screenCloth .. closed|solid; no sound .. go|goes|pass through',
    },
    screenCovers: {
      'all-three':
        'all three|@lcr|three|whole front|everything|speakers|fronts .. behind .. it|screen|cloth|@screenCloth|sheet|fabric|material; screen|cloth .. covers|hides .. all|@lcr|three; all three .. behind; @lcr .. behind; covers all; everything up front .. hidden; all three .. behind it; three speakers behind|sit behind; @lcr|left center and right .. through|behind .. @screenCloth|cloth|canvas|sheet; @screenCloth|cloth|canvas|sheet .. hides|covers|wall to wall .. whole|all|everything|three; @mains|@leftMain|@rightMain|left and right .. also|too|stand|sit|behind .. behind .. @screenCloth|cloth|canvas|sheet; not only .. center ... @mains|@leftMain|@rightMain .. behind; left .. center .. right .. through|behind .. @screenCloth|cloth|sheet|fabric; @mains .. behind .. @screenCloth|cloth|sheet ... not only; @screenCloth|cloth .. hides .. whole|entire',
      'center-only':
        'only|just .. center .. behind|covered|screen|cloth|through; @mains|@leftMain|@rightMain .. outside|beside|either|next|flank|clear|left .. screen|frame|cloth|it; screen|cloth|fabric .. covers|hides|front .. only|just .. center; in front of the center only; covers just; @mains|@leftMain|@rightMain|towers .. stand .. left and right|beside|either|next; just the center .. hidden; stand beside the; either side of it .. center; @mains|@leftMain|@rightMain .. not|free|outside|clear .. covered|behind|@screenCloth|cloth|canvas|sheet ... only|just .. center; only|just .. center .. behind|covered',
    },
    centerEnclosure: {
      vented:
        'port|ports|ported|reflex|vented|vent; hole|tube|opening .. front|baffle|back|rear .. bass|air|box|cabinet; holes in the rear',
      sealed:
        'sealed|closed box|cabinet|center|design|enclosure|speaker; no|without|not .. port|ports|ported|reflex|vented; sealed; acoustic suspension',
    },
  },
};
