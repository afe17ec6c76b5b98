/** The trade's words with their meaning; a report explains those it uses. */
export const GLOSSARY: Readonly<Record<string, string>> = {
  'off axis': 'away from the line that a loudspeaker points along',
  crossover: 'the frequency at which one driver hands over to the next, or the loudspeaker to the subwoofer',
  'comb filtering':
    'two copies of one sound, one a little later: they cancel at regular steps of pitch and sound hollow',
  comb: 'the row of notches that two copies of one sound leave when one is a little later',
  'phantom center': 'a voice that left and right make between them, without a center loudspeaker',
  phantom: 'an image that two loudspeakers make between them',
  upmix: 'a mode that makes more channels out of two',
  'center spread': 'a setting of the upmix that leaves part of the middle in left and right',
  trim: 'the level setting of one channel in the menu of the receiver',
  polarity: 'which way round the two wires are; reversed, the cone moves in when it should move out',
  'bass management': 'sending the bass of a loudspeaker to the subwoofer',
  lobing: 'drivers apart from each other add in some directions and cancel in others',
  'mid-tweeter-mid': 'a tweeter with a mid-range cone on each side',
  woofer: 'the large cone that plays the bass',
  coaxial: 'a tweeter in the middle of a cone, so that both play from one place',
  equalization: 'raising and lowering parts of the tone, by hand or by an automatic setup',
  latency: 'the time that processing takes before a loudspeaker plays',
  'test noise':
    'the rushing sound that the receiver plays from one loudspeaker after the other to set levels',
  driver: 'one cone or dome of a loudspeaker',
  tweeter: 'the small driver that plays the treble',
  'third octave': 'a band a third of an octave wide, about what the ear hears as one pitch region',
  dip: 'a range of pitch that is weaker than its neighbors',
  mains: 'the left and right loudspeakers',
  decibans: 'a measure of evidence: 10 make the odds ten times longer',
  speech: 'in losses: weighted by how much each pitch region matters for understanding words',
};

/** Entries whose term occurs in one of the texts, alphabetically. */
export function glossaryFor(texts: readonly string[]): { term: string; meaning: string }[] {
  const all = texts.join('\n').toLowerCase();
  return Object.entries(GLOSSARY)
    .filter(([term]) => new RegExp(`\\b${term}s?\\b`, 'u').test(all))
    .map(([term, meaning]) => ({ term, meaning }))
    .sort((a, b) => a.term.localeCompare(b.term, 'en'));
}
