/**
 * One spelling for the many ways a word is written: British and American, endings, irregular verbs, the mistakes
 * and short forms of posts. Texts and lexicon go through the same function, so an over-eager ending does no harm.
 */

/** Written form -> the word it stands for; both lower case, without apostrophes. */
const SAME: Readonly<Record<string, string>> = Object.fromEntries(
  `
  center: centre ctr cntr centr cntre senter centar zenter centers centres
  speaker: loudspeaker speeker spkr spkrs lautsprecher loudspeakers speakr spk
  receiver: reciever recever receiever avr avrs amplituner
  amplifier: amp amps amplifyer
  subwoofer: sub subs subwoofers subwoffer woofersub
  television: tv tvs telly tele tellies televison televisions fernseher teevee
  dialog: dialogue dialogues dialogs dialouge dialoge
  surround: surrounds suround
  color: colour colours colors
  meter: metre metres meters mtr
  centimeter: centimetre centimetres centimeters
  gray: grey
  neighbor: neighbour neighbours
  equalizer: eq eqs equaliser equalization equalisation
  crossover: xover xo crossovers crossovr
  calibration: cal callibration calibrations
  microphone: mic mike mics
  cabinet: cab cabinets cabinett
  distance: dist dists distances
  volume: vol volumn volumne
  because: bc cuz cos coz cause bcause
  you: u ya
  people: ppl peeps folks
  with: w wth
  though: tho
  without: wo
  something: smth sth
  sofa: couch couches settee sofas
  seat: chair chairs seats cushion cushions recliner recliners seating
  movie: film films movies flick flicks flic picture_show
  not: isnt arent wasnt werent aint dont doesnt didnt wont cant couldnt wouldnt havent hasnt hadnt shouldnt cannot nor neither nope
  kid: kids child children
  wife: missus missis wifes girlfriend
  none: null
  stereo: stero sterio
  muffled: muffeled mufled muffle
  quiet: quite_low quieter quietest
  high: higher highest hight
  low: lower lowest
  loud: louder loudest
  near: nearer nearest close closer
  far: farther further furthest farthest
  wide: wider widest
  small: smaller smallest
  big: bigger biggest
  dull: duller dullest
  dark: darker darkest
  bright: brighter brightest
  thin: thinner thinnest
  soft: softer softest
  weak: weaker weakest
  clear: clearer clearest cleared clears clearly
  good: better best
  bad: worse worst
  full: fuller fullest
  sharp: sharper sharpest
  put: puts putting
  sit: sat sits sitting seated
  stand: stood stands standing
  lie: lay laying lies lying laid lays lain
  hang: hung hangs hanging
  say: said says saying sez
  tell: told tells telling
  hear: heard hears
  take: took takes taken taking
  make: made makes making
  go: went goes going
  come: came comes coming
  get: got gets getting gotten
  give: gave gives given giving
  run: ran runs running
  buy: bought buys buying
  keep: kept keeps keeping
  think: thought thinks thinking
  find: found finds finding
  read: reads reading
  set: sets setting settings
  swap: swapped swaps swapping swopped exchanged exchange exchanging swop
  turn: turned turns turning
  shut: shuts
  be: is are am was were been being im its hes shes thats theres whats were_
  have: has had having ive
  do: does did done doing
  sing: sang sings singing sung
  speak: spoke speaks spoken speaking
  fall: fell falls fallen falling
  build: built
  send: sent
  bring: brought
  feel: felt feels feeling
  understand: understood understands undrstand undestand understanding understandable
  stay: stayed stays staying
  show: showed shows shown showing
  steal: stole
  write: wrote written writes writing
  leave: leaves leaving
  lose: lost loses losing
  raise: raised raises raising rised risen
  drown: drowned drowns drowning drownd
  change: changed changes changing
  shrink: shrank shrunk shrunken
  stick: stuck
  break: broke broken
  begin: began begun
  throw: threw thrown
  sink: sank sunk
  drive: drove driven
  fly: flew flown flies
  forget: forgot forgotten
  tear: tore torn
  blow: blew blown
  choose: chose chosen
  manufacturer: mfr mfg
  different: diff
  version: ver
  try: tried tries trying
  woman: women womans ladies lady
  man: men mans mens bloke blokes guys
  foot: feet
  half: halfway halve
  voice: voices vocals vocal
  sibilant: sibilance sibilants
  harsh: harshness harsher
  boom: booms boomed booming
  wireless: wifi bluetooth
  program: programme programs programmes
  front: fronts
  tweeter: tweeters tweaters dome domes
  cone: cones woofer woofers mid mids midrange midranges mid_range driver drivers woofa
  `
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [word = '', list = ''] = line.trim().split(': ');
      return list.split(' ').map((written): [string, string] => [written, word]);
    }),
);

/** Words whose last s is no plural. */
const WHOLE = new Set(
  'note notes news series always bass across early nearly lately barely hardly directly likely evening hearing opening'.split(
    ' ',
  ),
);
const VOWEL = /[aeiouy]/;

const known = new Map<string, string>();
/** Words of a text are told apart in their thousands; a text of nothing but new words may not fill the memory. */
const MOST_KNOWN = 20_000;

/** The one form of a lower-case word without apostrophes. */
export function canonical(word: string): string {
  const before = known.get(word);
  if (before !== undefined) return before;
  const found = stemmed(SAME[word] ?? word);
  if (known.size < MOST_KNOWN) known.set(word, found);
  return found;
}

/** Endings cut: plural, -ing, -ed, -ly, a last e. Short words stay. */
function stemmed(word: string): string {
  if (word.length <= 3 || WHOLE.has(word)) return word;
  let stem = word;
  if (stem.endsWith('ies') && stem.length > 4) stem = `${stem.slice(0, -3)}y`;
  else if (/(?:s|x|z|ch|sh)es$/.test(stem)) stem = stem.slice(0, -2);
  else if (stem.endsWith('s') && !/(?:ss|us|is)$/.test(stem)) stem = stem.slice(0, -1);
  for (const ending of ['ing', 'ed', 'ly']) {
    const cut = stem.slice(0, -ending.length);
    if (stem.endsWith(ending) && cut.length >= 3 && VOWEL.test(cut)) {
      stem = ending === 'ly' ? cut : undoubled(cut);
      break;
    }
  }
  return stem.length > 3 && stem.endsWith('e') ? stem.slice(0, -1) : stem;
}

function undoubled(stem: string): string {
  const last = stem.at(-1);
  return last === stem.at(-2) && !'lsz'.includes(last ?? '') ? stem.slice(0, -1) : stem;
}
