import type { Table } from './claim.js';
import { LAYOUT_CLAIMS } from './layout.js';

/** Every table of claims. */
export const TABLES: readonly Table[] = [LAYOUT_CLAIMS];
