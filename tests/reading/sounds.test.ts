import { describe, expect, it } from 'vitest';
import { complaintWords } from '../../src/facts/words/complaints.js';
import { readText } from '../../src/reading/read.js';

/** What owners hear in their own images, by complaint; invented sayings. `not`: a denial. */
const SAID: Readonly<Record<string, readonly string[]>> = {
  'voice-unclear': [
    "I can't make out a word he says.",
    'The wife keeps asking what he said.',
    'Dialogue is a swamp.',
    'The words melt into each other.',
    'He speaks as with a hot potato in the mouth.',
    'You have to guess the words.',
    'Actors sound as though they are chewing something.',
    'It takes real effort to hear what is being said.',
  ],
  'not voice-unclear': [
    'Words are perfectly clear.',
    'We hear every word.',
    'No problem to follow the dialogue.',
    'Intelligibility is not the issue.',
  ],
  'voice-unclear-off-side': [
    "People on the ends of the couch can't follow.",
    'At the side seats the voices turn to mush.',
    'Clear in the middle, mush at the ends.',
    'My daughter on the left seat cannot make out a word.',
  ],
  'voice-unclear-back-row': ['Row two hears mumbling.', 'The kids in the back row ask what he said.'],
  'voice-unclear-everywhere': [
    'From every chair the words are a blur.',
    "No matter where you sit you can't understand them.",
  ],
  'image-collapses-to-center': [
    'It all slides into the box.',
    'The stage falls into a heap in the center.',
    'The orchestra is squeezed between the legs of the TV stand.',
    'It turns into mono.',
    'All players crowd in the middle.',
    'Everything is in the center and nothing left or right.',
  ],
  'not image-collapses-to-center': ['The soundstage is as wide as ever.', 'The stage is not in one box.'],
  'voice-low-or-high': [
    'The voice comes from below the screen.',
    'People speak from the fireplace.',
    'He talks out of the furniture.',
    'I hear the words at my ankles.',
    'The voices sit above the picture, like gods.',
  ],
  'not voice-low-or-high': ["It doesn't come from below."],
  'voice-pulled-aside': [
    'Voices lean to the left.',
    'Everyone talks from the right edge of the picture.',
    'The phantom drifts to the right main.',
    'The singer stands right of center.',
  ],
  'voice-changes-tone': [
    'A car driving across gets dull in the middle.',
    'His voice turns reedy halfway across.',
    'The center has another tone than the mains.',
  ],
  dull: [
    'As if she had a scarf over her mouth.',
    "Sounds like he's speaking into a pillow.",
    'Like hearing people through a wall.',
    'The highs are missing.',
    'Sounds like from the next room.',
  ],
  boomy: ['Male voices boom.', 'Too much bass in the voices.', "Men's voices drone."],
  boxy: [
    'Like talking into a bucket.',
    "The guy's head is in a rain barrel.",
    'They got a head cold.',
    'Like somebody pinching his nose.',
  ],
  hollow: [
    'Like talking through a toilet roll.',
    'It has a phasey quality.',
    'As if speaking through a tube.',
  ],
  thin: ['Voices sound like over the telephone.', 'He misses his chest.', 'The voice has no belly.'],
  'small-and-lifeless': ['No punch, no life.', 'Big movies sound like a little TV.'],
  'gaps-between-speakers': ['Three islands.', 'A car hops from box to box.'],
  'swishes-with-head-movement': ['A whoosh with every nod.', 'The announcer gargles when I nod.'],
  'voice-too-quiet': [
    'Dialogue is drowned by the effects.',
    'Commentators are sunk below the crowd noise.',
    'I have to turn it up to hear them talk.',
  ],
  'not voice-too-quiet': ['Loudness is fine.', "The volume isn't to blame.", 'Right level.'],
  'voice-too-loud': [
    'Speech hits me in the face.',
    'The voice shouts at me.',
    'News anchors step out of the TV and into my lap.',
  ],
  'voice-missing': ['Mouths move and not one word comes out.', 'Films are a pantomime.'],
  'voice-from-behind': ['Actors talk from the rear speakers.', 'Actors are above and behind my head.'],
  'no-middle': ['The singer stands nowhere.', 'She is like a mist over the whole wall.'],
  echo: [
    'A slight repeat follows every word.',
    "It's like being in a cathedral.",
    'I hear everything twice.',
    'Like two men reading the same script a hair apart.',
  ],
  harsh: ['Every S is a razor.', 'The sibilants sting.', 'S sounds cut into my ears.'],
  'distorts-when-loud': ['Screams turn into gravel.', 'Past half volume it gets ugly.'],
  'weak-bass': ['The bass player is away.', 'The bottom third of him got sawed off.'],
  'whispers-lost-effects-loud': ['Explosions wake the kids while the talking is too soft.'],
  'image-follows-head': ['The singer follows my head.', 'When I lean left the voice goes left.'],
  'out-of-step-with-picture': ['The words come after the lips.'],
  'not out-of-step-with-picture': ['Lips are in step.', 'Lips and voice agree.'],
  'just-prefer-two-channels': ['I simply like stereo more.', 'I just like it more without.'],
};

const complaints = (text: string): string[] =>
  readText(text)
    .taken.filter(({ fact }) => fact in complaintWords)
    .map(({ fact, negated }) => (negated ? `not ${fact}` : fact));

describe('what owners say it sounds like', () => {
  it.each(
    Object.entries(SAID).flatMap(([complaint, sayings]) =>
      sayings.map((saying): [string, string] => [saying, complaint]),
    ),
  )('%s is %s', (saying, complaint) => {
    expect(complaints(saying)).toContain(complaint);
  });

  it.each([
    ['He speaks from left beside the picture.', 'voiceDirection=aside'],
    ['The voice comes from down on the floor.', 'voiceDirection=low'],
    ['The voices drip from the ceiling!', 'voiceDirection=high'],
    ['The voice comes from behind me.', 'voiceDirection=behind'],
    ['The voice is over in the corner where the sub lives.', 'voiceDirection=subwoofer'],
    ['The voice is not standing anywhere.', 'voiceDirection=nowhere'],
    ['Voices come straight out of the center speaker.', 'voiceDirection=center-box'],
    ['Voices come from the mouths.', 'voiceDirection=picture'],
    ['from below', 'voiceDirection=low'],
    ["With men's voices there is a buzz.", 'whichVoices=low'],
    ['Every S is a razor.', 'whichVoices=s-sounds'],
    ['All three match on the noise test.', 'voiceLoudness=equal'],
    ['The center sounds sharper than the left and right.', 'toneDiffers=yes'],
    ['It is hollow in the middle of the couch.', 'hollow=true'],
    ['His voice turns reedy halfway across.', 'toneAcrossPan=thinner'],
    ['A car going across gets dull in the middle.', 'toneAcrossPan=duller'],
    ['The voice turns nasal in the middle as he crosses.', 'toneAcrossPan=boxier'],
    ['The voice gets glassy in the middle as he walks across.', 'toneAcrossPan=brighter'],
  ])('%s tells %s', (text, told) => {
    expect(readText(text).taken.map(({ fact, value }) => `${fact}=${value}`)).toContain(told);
  });

  it.each([
    'A pair on brackets beside the bookcase, one speaker below the picture, flat as the maker meant it.',
    'He tilts his down from over the screen and likes it, which is another animal.',
  ])('%s places no voice', (text) => {
    expect(readText(text).taken.map(({ fact }) => fact)).not.toContain('voiceDirection');
  });

  it.each([
    'They are hard to pronounce for all of us.',
    'The music is too loud.',
    'It adds some echo of the hall, and I like that.',
    'I turned the treble down.',
    'There is a church hall next door.',
    'My gran is sharp as a tack.',
    'I use the Hall programme because it adds a church around me.',
    "The cat's scratching post stands beside it.",
    'I double checked the distances.',
    'Turn the upmix off and boom, the stage is back.',
    'The center stands on a wooden floor.',
    'My pal says never.',
    'The picture is too dark.',
    'I ran the setup twice.',
    'The speaker sits below the screen.',
    'The surround speakers are behind the sofa.',
    'A thick curtain covers the window.',
    'There is a blanket on the sofa.',
    'The phone app measured 70 dB.',
    'Room is long and skinny.',
    'The TV has thin bezels.',
  ])('%s is no complaint', (text) => {
    expect(complaints(text)).toEqual([]);
  });
});
