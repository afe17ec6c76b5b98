/** What the command needs of the interview, in one place: it is loaded only once a terminal is there. */
export { begin } from './conversation.js';
export type { Style } from './draw.js';
export type { Terminal } from './port.js';
export { chooseUnfinished } from './resume.js';
export { type Ending, goingOnLines, hold, openingLines } from './session.js';
export type { Written } from './state.js';
