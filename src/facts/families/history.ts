import { family } from '../spec.js';

/** How the trouble began, and what has changed. */
export const historyFacts = family({
  onset: {
    kind: 'choice',
    family: 'history',
    label: 'onset',
    ask: 'Did the trouble come suddenly, slowly, with a change you made, or was it always there?',
    hint: 'Think back to when it was still good.',
    why: 'A sudden start points to a loose wire, a defect or a setting; always points to the layout.',
    findOut: ['Recall when you first noticed it.'],
    minutes: 0.5,
    usually: 'recalled',
    choices: {
      sudden: 'suddenly',
      gradual: 'slowly',
      'with-change': 'with a change I made',
      always: 'it was always like this',
    },
  },
  lastChange: {
    kind: 'choice',
    family: 'history',
    label: 'last change',
    ask: 'What was the last thing that changed in the system or the room before it began?',
    hint: 'Also count things that somebody else moved.',
    why: 'The last change is the first suspect.',
    findOut: ['Ask everyone who lives there.'],
    minutes: 1,
    usually: 'recalled',
    choices: {
      nothing: 'nothing',
      loudspeaker: 'a new or moved loudspeaker',
      furniture: 'furniture, seats or floor',
      settings: 'settings, a reset or an update',
      calibration: 'a new automatic setup',
      wiring: 'cables',
      screen: 'the display or the screen',
      source: 'a new player or service',
    },
  },
  triedTrim: {
    kind: 'choice',
    family: 'history',
    label: 'turning the center up',
    ask: 'If you have tried turning the center up, what did it do?',
    hint: 'A few decibels in the level menu.',
    why: 'Level cures a level fault, and hardly anything else.',
    findOut: ['Raise the center by 3 dB for one evening.'],
    minutes: 3,
    usually: 'recalled',
    choices: {
      cured: 'yes, and it was fine then',
      louder: 'yes: louder but no clearer',
      'not-tried': 'not tried',
    },
  },
});
