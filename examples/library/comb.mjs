// One calculation: where two arrivals half a millisecond apart cancel, and how deep.
import { calculate } from 'center-audit';

const { nullsHz, dipDb } = calculate('comb', { delayMs: 0.5, relativeLevelDb: -6 });
console.log(`${nullsHz} Hz, ${Number(dipDb).toFixed(1)} dB`);
