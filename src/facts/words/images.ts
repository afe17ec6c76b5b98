/**
 * What a sound is likened to and how people say what they hear, by what it does to a voice: what muffles it, what it
 * seems to stand in, what it comes through, what is missing from it, where it seems to be. Classes of single words.
 */
export const IMAGES = {
  // Who and what is heard.
  speaker:
    'voice; dialog; speech; vocal; singer; soprano; words; talker; actor; actress; people; person; everyone; everybody; announcer; newsreader; newscaster; presenter; anchor; commentator; narrator; narration; host; hero; detective; reader; character; conversation; man; woman; male; female; guy; gentleman; chap; baritone; tenor; lady',
  heardThing:
    'voice; dialog; speech; vocal; singer; word; actor; people; everyone; everybody; announcer; newsreader; narrator; commentator; man; woman; male; sound; center; everything; music; movie; talking; he; she; they; it',
  into: 'in; into; inside; from; through; out; behind; under; within; down',
  // Images.
  muffler:
    'blanket; quilt; duvet; pillow; scarf; towel; curtain; sock; coat; jacket; wool; woolen; cloth; rag; flannel; mattress; mask; mitten; veil; foam; sack; wadding; gag; drape; jumper; sweater; shawl; tarp; hood; balaclava; gauze; eiderdown; fleece',
  wall: 'wall; door; room; neighbor; window; closed; ceiling',
  barrel:
    'barrel; bucket; tub; vat; tun; cask; crate; cupboard; wardrobe; closet; locker; trunk; tin; kettle; jug; shoebox; coffin; pail; bin; dustbin; helmet; churn; larder; cardboard; drum; crypt; hatbox',
  tube: 'tube; pipe; tunnel; drain; drainpipe; culvert; hose; cave; cistern; vase; chimney; funnel; bathroom; gutter; bottle; sewer; cavern; cellar; toilet',
  phone:
    'telephone; phone; walkie; intercom; transistor; earphone; headset; loudhailer; gramophone; mosquito; wasp; cricket; kazoo; insect',
  hall: 'church; cathedral; stadium; station; gym; gymnasium; pool; canyon; valley; stairwell; chapel; airport; cave; tunnel; underpass; crypt',
  tiny: 'tiny; small; mini; toy; dwarf; doll; miniature; shrunken',
  // Places that are no picture.
  aloft: 'cornice; molding; moulding; attic; upstairs; heaven; sky; roof; lintel; loft; rafter; crown',
  picturePart: 'picture; screen; television; mouth; lip; face; display',
  // What happens to a stage.
  shrink:
    'shrink; collapse; narrow; squash; squeeze; cram; cramp; bunch; clump; huddle; crowd; suck; cave; implode; contract; heap; pile; fold; pack; stuff; march; slide; park; nail; drain; funnel; compress; glue; stuck; fall; lump; cluster; retreat; concentrate; bundle; shove; jam; gather; tuck; trap',
  inBox:
    'box; shoebox; center; middle; cabinet; point; blob; heap; pile; spot; mono; slit; dot; ball; knot; pinhole',
  // What is missing.
  lacks:
    'no; not; without; lack; lose; lost; miss; gone; nothing; absent; disappear; vanish; zero; never; stolen; rolled; hardly',
  treble:
    'treble; highs; sparkle; air; brilliance; presence; sibilant; esses; crispness; shine; glitter; sheen; fizz; overtone; freshness; consonant; cymbal',
  body: 'body; chest; belly; warmth; weight; lung; flesh; foundation; heft; ballast; fundament',
  size: 'width; soundstage; stage; spaciousness; spread; openness; panorama; stereo; breadth',
  drive:
    'life; punch; dynamics; energy; impact; drive; scale; slam; excitement; vigor; grandeur; pep; oomph; thrill',
  // How well it is understood.
  grasp:
    'understand; follow; catch; decipher; distinguish; comprehend; discern; grasp; intelligible; decode; recognize',
  notable:
    'not; cannot; never; hardly; barely; rarely; nobody; unable; scarcely; impossible; no; neither; nor; none',
  toil: 'trouble; difficult; hard; struggle; tough; difficulty; strain; effort; concentrate; work; tiring; problem; headache; fight; strenuous',
  unit: 'word; syllable; sentence; letter; consonant; phrase; ending; line',
  murk: 'swamp; porridge; soup; mud; muddle; muddled; mush; mash; smear; blur; swim; slur; vowel; smudge; unclear; lava; dough; gravy; foggy; messy; mess; gibberish; washy',
  clear:
    'clear; intelligible; understand; crisp; distinct; readable; plain; transparent; clean; articulate; legible',
  fine: 'fine; ok; okay; good; perfect; great; sufficient; enough; right; normal; correct; plenty; alright; adequate; order; excellent; spot',
  innocent:
    'issue; problem; thing; blame; trouble; point; matter; cause; culprit; fault; question; complaint; lack',
  // How loud it is.
  loudness: 'loud; loudness; volume; level',
  drown:
    'drown; bury; buried; swamp; sunk; sink; mask; cover; swallow; overpower; submerge; smother; outshout; overwhelm; flood; engulf',
  others:
    'music; effect; score; explosion; action; soundtrack; noise; crowd; everything; rain; orchestra; band; rest; mains; background; ambience; engine; bagpipes; audience; instruments; drums',
  bang: 'explosion; effect; action; bang; gunshot; gunfire; advert; advertisement; commercial; crash; shot',
  shout: 'shout; yell; bellow; bark; blare; blast; scream; holler; roar; shouty; shouter; barks; thunder',
  faint: 'quiet; soft; weak; faint; timid; feeble; inaudible; puny; meek; recessed; hushed; subdued',
  // How it moves.
  nodding: 'head; lean; nod; rock; slouch; sway; wiggle',
  crossing: 'cross; walk; pan; across; pass; drive; fly; halfway; way',
  timbreWord: 'tone; timbre; color; character; tonality; tonal; voicing; flavor',
  unlike: 'other; another; different; change; mismatch; differ; alter; foreign; shift',
  toned:
    'dull; thin; nasal; muffled; boxy; dark; hollow; honky; tinny; reedy; glassy; woolly; small; sharp; dim; bright; harsh; veiled; mosquito; papery; metallic; squeaky; brittle; steely; edgy; weedy; murky; hole; valley; cold',
  distorting:
    'distort; clip; crackle; break; compress; crunchy; tear; rasp; fry; gravel; overload; hoarse; saturate; croak; sizzle; splinter; gritty; grit; fart',
  nowhere: 'nowhere; mist; float; vague; diffuse; drift; hover; everywhere; cloud',
} as const;
