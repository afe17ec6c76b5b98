/** How each screen is put: question, hint, numbered choices, and what stands there already. */
import { capital, factText, howText, listText, minutesText } from '../explain/words.js';
import { OUTCOME_IDS, OUTCOMES } from '../facts/acts.js';
import { acceptedAnswer } from '../facts/answer.js';
import type { Answer } from '../facts/book.js';
import { FACT_IDS, type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINT_IDS, COMPLAINTS, type ComplaintId } from '../facts/complaints.js';
import { type Family, HOWS } from '../facts/spec.js';
import { takenText } from '../reading/words.js';
import { isTest } from '../reasoning/hypotheses.js';
import { earlier } from './answers.js';
import { progress } from './flow.js';
import { MARKS } from './marks.js';
import { offers } from './offers.js';
import type { Prompt } from './port.js';
import { breathOf, type SpokenGroup, spokenGroups } from './spoken.js';
import { bookOf, isOpening, OPENING, type Screen, type State, type Topic, top } from './state.js';

const FAMILY_NAMES: Readonly<Record<Family, string>> = {
  complaint: 'what is heard',
  source: 'signal path',
  speakers: 'loudspeakers',
  geometry: 'seats and distances',
  placement: 'place of the center',
  upmix: 'upmix',
  entries: 'settings',
  tone: 'tone and screen',
  bass: 'bass',
  wiring: 'wiring',
  room: 'room and people',
  recording: 'recording at the seat',
  history: 'history',
  tests: 'home test',
};

const SYSTEMS = [
  { value: 'imperial', label: 'feet and inches' },
  { value: 'metric', label: 'meters and centimeters' },
] as const;

/** One entry of a list that can be typed by number, value or beginning. */
export interface Entry {
  readonly value: string;
  readonly label: string;
}

const CLASH_ENDS: readonly Entry[] = [
  { value: 'both', label: 'both are right' },
  { value: 'open', label: 'leave it open' },
];

const SURE: readonly Entry[] = [
  { value: 'yes', label: 'yes, that is right' },
  { value: 'no', label: 'no, I give it again' },
];

/** What a remedy did; that nobody can tell yet is the mark for not known. */
const CURED: readonly Entry[] = OUTCOME_IDS.filter((id) => id !== 'cannot-tell').map((id) => ({
  value: id,
  label: OUTCOMES[id],
}));

/** An act may end one of several complaints and leave the others as they were. */
const endedOnly = (complaints: readonly ComplaintId[]): readonly Entry[] =>
  complaints.length < 2
    ? []
    : complaints.map((id) => ({ value: `gone ${id}`, label: `only this was gone: ${COMPLAINTS[id].title}` }));

const STAYS: readonly Entry[] = [
  { value: 'yes', label: 'yes, it stays as it is now' },
  { value: 'no', label: 'no, it was put back' },
];

/** What a numbered screen offers; empty where text or a quantity is typed. */
export function entriesOf(state: State, screen: Screen): readonly Entry[] {
  switch (screen.kind) {
    case 'topic': {
      const groups = groupsHere(screen.topic);
      return groups?.map(({ say }) => ({ value: say, label: say })) ?? topicEntries(screen.topic);
    }
    case 'among':
      return topicEntries(screen.topic).filter(({ value }) => screen.values.includes(value));
    case 'sure':
      return SURE;
    case 'how':
      return HOWS.map((how) => ({ value: how, label: howText(how) }));
    case 'meant': {
      const mark = MARKS.find(({ action }) => action === screen.mark);
      return [
        ...screen.answers.map(({ text, label }) => ({ value: text, label })),
        { value: screen.typed, label: `${mark?.long ?? ''} (or ${screen.typed} again)` },
      ];
    }
    case 'clash':
      return [
        ...screen.topics.map((topic) => ({ value: `again-${topic}`, label: lookAgain(state, topic) })),
        ...CLASH_ENDS,
      ];
    case 'review':
      return reviewed(state).map((topic) => ({ value: topic, label: reviewLine(state, topic) }));
    case 'result':
      return offers(state).map(({ id, label }) => ({ value: id, label }));
    case 'cured':
      return [...CURED, ...endedOnly(bookOf(state).complaints)];
    case 'stays':
      return STAYS;
    case 'understood':
      return screen.items.map((item, place) => ({
        value: String(place + 1),
        label: takenText(item, screen.reading.units ?? bookOf(state).units),
      }));
    case 'note':
    case 'name':
    case 'place':
      return [];
  }
}

/** A long list is put in two steps; the first one, or undefined where the list is short. */
export function groupsHere(topic: Topic): readonly SpokenGroup[] | undefined {
  return spokenGroups(
    topic,
    topicEntries(topic).map(({ value }) => value),
  );
}

function topicEntries(topic: Topic): readonly Entry[] {
  if (topic === 'words') return [];
  if (topic === 'complaints') return COMPLAINT_IDS.map((id) => ({ value: id, label: COMPLAINTS[id].title }));
  if (topic === 'units') return SYSTEMS;
  const spec = factSpec(topic);
  if (spec.kind !== 'choice') return [];
  return Object.entries(spec.choices).map(([value, label]) => ({ value, label }));
}

export function promptOf(state: State): Prompt {
  const screen = top(state);
  const marks = screen.kind === 'topic';
  const base = { head: '', hint: '', onEnter: '', draft: state.draft, marks };
  const choices = entriesOf(state, screen).map(({ label }) => label);
  switch (screen.kind) {
    case 'topic':
      return { ...base, choices, ...topicPrompt(state, screen.topic) };
    case 'among':
      return {
        ...base,
        choices,
        ask: `${capital(screen.say)}: which of these?`,
        hint: 'Several are fine: 1 3.',
      };
    case 'name':
      return {
        ...base,
        choices,
        ask: 'What shall this case be filed under?',
        hint: 'A name, the customer’s reference, the day: one line.',
        onEnter: 'goes without',
      };
    case 'sure':
      return { ...base, choices, ask: `${screen.remark}. Is that right?` };
    case 'how':
      return { ...base, choices, ask: `How was the ${factSpec(screen.fact).label} found?`, hint: HOW_HINT };
    case 'meant':
      return {
        ...base,
        choices,
        ask: `“${screen.typed}” can mean more than one thing here. Which is meant?`,
      };
    case 'clash':
      return {
        ...base,
        choices,
        ask: `Two answers hardly go together. ${screen.text}`,
        hint: 'It may stay open; the report shows both.',
        onEnter: 'leaves it open',
      };
    case 'review':
      return {
        ...base,
        choices,
        ask:
          choices.length === 0
            ? 'Nothing was answered yet.'
            : 'The answers so far. Type a number to change one.',
        onEnter: 'goes on',
      };
    case 'note':
      return { ...base, choices, ask: noteAsk(screen.about), onEnter: 'goes on without' };
    case 'result':
      return { ...base, choices, ask: 'What now?', onEnter: 'ends the interview' };
    case 'cured':
      return { ...base, choices, ask: 'Play the same minute of speech again. What did it do?' };
    case 'stays':
      return { ...base, choices, ask: 'Does it still stand as changed?' };
    case 'understood':
      return {
        ...base,
        choices,
        ask: screen.besides ? 'You also told this. Is it right?' : 'I understood this. Is it right?',
        hint: 'Type the numbers of lines that are wrong (0: all), or say it again.',
        onEnter: choices.length === 1 ? 'keeps it' : 'keeps all of it',
      };
    case 'place':
      return {
        ...base,
        choices,
        ask: 'Where else may the case be saved? Type the path of a file.',
        onEnter: 'goes on without saving',
      };
  }
}

const HOW_HINT = 'It matters here: the result hangs on this number.';

const noteAsk = (about: string): string => (about === '' ? 'The note, in one line:' : about);

function topicPrompt(state: State, topic: Topic): Omit<Prompt, 'choices' | 'draft' | 'marks'> {
  const isNew = state.screens.length === 1;
  const head = isNew ? progress(state) : '';
  if (isOpening(topic)) {
    const { ask, aloud, hint } = OPENING_PROMPTS[topic];
    const asked = state.settings.call ? `Say: “${aloud}”` : ask;
    return { head, ask: asked, hint, onEnter: openingOnEnter(state, topic) };
  }
  const spec = factSpec(topic);
  const kept = earlier(state, topic);
  const steps = isTest(topic) ? ` (${minutesText(spec.minutes)})` : '';
  return {
    head: [head, `${FAMILY_NAMES[spec.family]}${steps}`].filter((part) => part !== '').join(' - '),
    ask: state.settings.call ? `Say: “${spec.ask}”` : spec.ask,
    hint: state.settings.call ? `If asked how: ${breathOf(topic)}` : spec.hint,
    onEnter: kept === undefined ? '' : `keeps: ${answerWords(state, topic, kept)}`,
  };
}

const OPENING_PROMPTS = {
  words: {
    ask: 'In the owner’s own words: what is the trouble with the center loudspeaker?',
    aloud: 'What is the trouble with the center loudspeaker, in your own words?',
    hint: 'Kept word for word, and read for what it tells.',
  },
  complaints: {
    ask: 'Which of these are heard? Type their numbers.',
    aloud: 'Which of these do you hear? It may be several.',
    hint: 'Several are fine: 1 3.',
  },
  units: {
    ask: 'Which do you measure in?',
    aloud: 'Do you measure in feet and inches, or in meters?',
    hint: 'Others are understood too, with their unit.',
  },
} as const;

function openingOnEnter(state: State, topic: Topic): string {
  const { words, complaints, units } = bookOf(state);
  if (topic === 'words') return words === undefined ? 'skips this' : 'keeps the words';
  if (topic === 'complaints')
    return complaints.length === 0 ? '' : `keeps: ${listText(complaints.map((id) => COMPLAINTS[id].title))}`;
  return state.history.includes('units') ? `keeps ${units}` : '';
}

/** Facts and openings that were answered, in the order they were put; what came with the case follows. */
export function reviewed(state: State): Topic[] {
  const book = bookOf(state);
  const asked = state.history.filter((topic) => isOpening(topic) || book.answers.has(topic));
  const rest = FACT_IDS.filter((id) => book.answers.has(id) && !asked.includes(id));
  return [...OPENING.filter((topic) => state.given.has(topic)), ...asked, ...rest];
}

export function reviewLine(state: State, topic: Topic): string {
  const { words, complaints, units } = bookOf(state);
  if (topic === 'words') return `own words: ${words === undefined ? 'none' : `“${words}”`}`;
  if (topic === 'units')
    return `measures in: ${SYSTEMS.find(({ value }) => value === units)?.label ?? units}`;
  if (topic === 'complaints') {
    const heard = complaints.map((id) => COMPLAINTS[id].title);
    return `heard: ${heard.length === 0 ? 'none named' : listText(heard)}`;
  }
  return `${factSpec(topic).label}: ${answerWords(state, topic, bookOf(state).answers.get(topic))}`;
}

function lookAgain(state: State, topic: Topic): string {
  if (topic === 'complaints') return 'ask again what is heard';
  if (isOpening(topic)) return `ask again: ${topic}`;
  return `ask again: ${factSpec(topic).label} (${answerWords(state, topic, bookOf(state).answers.get(topic))})`;
}

function answerWords(state: State, id: FactId, answer: Answer | undefined): string {
  if (!answer || !('value' in answer)) return 'not known';
  const guessed = answer.how === 'guessed' ? ', a guess' : '';
  return `${factText(id, answer.value, bookOf(state).units)}${guessed}`;
}

/** What may be typed at a screen, in one line, for those who pressed Enter on nothing. */
export function acceptedHere(state: State): string {
  const screen = top(state);
  const topic = screen.kind === 'topic' ? screen.topic : undefined;
  if (topic !== undefined && !isOpening(topic) && factSpec(topic).kind !== 'choice') {
    const { accepted, example } = acceptedAnswer(factSpec(topic), bookOf(state).units);
    return `Type ${accepted}; for example ${example}.`;
  }
  return entriesOf(state, screen).length > 0 ? 'Type the number of a line.' : 'Type a few words.';
}
