import type { Table } from './claim.js';
import { LAYOUT_CLAIMS } from './layout.js';
import { NEIGHBOR_CLAIMS } from './neighbors.js';
import { ORDER_CLAIMS } from './order.js';
import { PLACE_CLAIMS } from './place.js';
import { SETTINGS_CLAIMS } from './settings.js';
import { SIGNAL_CLAIMS } from './signal.js';
import { TONE_CLAIMS } from './tone.js';

/** Every table of claims. */
export const TABLES: readonly Table[] = [
  LAYOUT_CLAIMS,
  PLACE_CLAIMS,
  TONE_CLAIMS,
  SIGNAL_CLAIMS,
  SETTINGS_CLAIMS,
  ORDER_CLAIMS,
  NEIGHBOR_CLAIMS,
];
