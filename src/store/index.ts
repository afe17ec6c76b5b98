/** What a command needs to keep the case of an interview, in one place. */
export { openStore } from './case-store.js';
export { listCases, removeCase, type SavedCase } from './saved-cases.js';
export { stateFolder } from './state-folder.js';
export { listUnfinished } from './unfinished.js';
