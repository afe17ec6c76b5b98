/**
 * Short answers that mean something only where their question is on the screen: "sofa" says nothing of the seats
 * in a post, and everything behind "one seat, one row or several?".
 */
import type { ChoiceWords } from './lexicon.js';

export const ANSWER_WORDS: ChoiceWords = {
  playedContent: {
    'two-channel-music': 'music; stereo; cd; vinyl; records; radio; streaming music; playlists',
    'multichannel-film': 'film; bluray; discs; concert; streaming films; cinema',
    television: 'television; news; shows; series; sports',
    everything:
      'everything; all; anything; both; all of them; television .. film; film .. television; music .. film; film .. music; music .. television',
  },
  seating: {
    'one-row': 'sofa; loveseat; three|3|four|4 seats; two of us; family; settee; sectional',
    'single-seat': 'armchair; one armchair; single; alone; one; just me; only me',
    'several-rows': 'rows; two rows; second row; second; theater; several',
  },
  voiceDirection: {
    picture: 'television; tv; display; picture; actors; in front',
    'center-box': 'center; speaker; loudspeaker; box; itself',
    low: 'below; low; under; beneath; down; floor; too low',
    high: 'above; high; up; over the picture|television; ceiling; too high',
    aside: 'left; right; side; aside; off to; one main',
    behind: 'behind; surrounds; rear; back; above me; behind me',
    subwoofer: 'subwoofer; sub',
    nowhere: 'nowhere; vague; wide; everywhere; all over; diffuse',
  },
  troubleSeats: {
    'off-middle': 'ends; sides; side; outside; edge; corner; off center; the end; left and right; side seats',
    'middle-only': 'middle; center; sweet spot',
    'one-seat': 'one; one seat; my seat; just one; only one',
    everywhere: 'everywhere; all; all of them; every; anywhere; whole sofa; no matter',
  },
  troubleTitles: {
    all: 'everything; all; always; every',
    some: 'some; few; certain; depends',
    'one-source': 'one; only one; one app|player|channel|box',
  },
  centerPlacement: {
    'shelf-top':
      'shelf; sideboard; cabinet top; on the cabinet; tv bench; console; table; credenza; lowboard; mantel; on top; furniture',
    bay: 'cabinet; cubby; compartment; inside; in it; cupboard; rack; in the cabinet',
    stand: 'stand; stool; free; pedestal',
    floor: 'floor; carpet; ground',
    wall: 'wall; bracket; above .. television',
    'behind-screen': 'screen; behind',
  },
  whoHears: {
    everyone: 'everyone; everybody; all; all of us; we all; both',
    'one-person': 'me; wife; husband; only i; just me; father; mother',
    'only-me': 'alone; only listener',
  },
  onset: {
    sudden: 'suddenly; overnight',
    gradual: 'slowly; gradually',
    'with-change': 'since; after',
    always: 'always; from the start; day one',
  },
  subwoofer: { one: 'yes; one; 1', several: 'two; 2; three; several', none: 'no; none; 0' },
  mainsKind: { tower: 'towers; floor', compact: 'bookshelf; small; stands; compact', 'in-wall': 'wall' },
  centerCount: { one: 'one; 1; single', two: 'two; 2; both', none: 'none; no; 0' },
};
