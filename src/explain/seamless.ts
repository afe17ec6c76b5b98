/**
 * The seamless switch, the acceptance test of the trade: with everything right, turning the upmix on for
 * two-channel music leaves the voice in the same place and about equally loud at the main seat. What the case
 * already tells of it, and the steps by which the owner hears it.
 */
import type { UnitSystem } from '../facts/book.js';
import type { DerivedNumberId } from '../rules/derived/table.js';
import { DERIVED } from '../rules/derived/table.js';
import { type Limit, type LimitId, limit } from '../rules/limits.js';
import type { View } from '../rules/view.js';
import { listText, quantityText } from './words.js';

interface Check {
  readonly id: string;
  readonly of: DerivedNumberId;
  readonly limit: LimitId;
  readonly what: string;
  /** What is heard where it fails. */
  readonly fails: string;
}

/** Each error is held against the grade that is just noticed: the switch has to pass unnoticed. */
const CHECKS: readonly Check[] = [
  {
    id: 'loudness',
    of: 'levelErrorDb',
    limit: 'levelDb',
    what: 'center against the mains in level',
    fails: 'the voice changes its loudness',
  },
  {
    id: 'arrival',
    of: 'delayErrorMs',
    limit: 'delayMs',
    what: 'center against the mains in time',
    fails: 'the voice changes its tone or place',
  },
  {
    id: 'sideways',
    of: 'centerOffsetDeg',
    limit: 'offsetDeg',
    what: 'center off the middle, seen from the main seat',
    fails: 'the voice moves sideways',
  },
  {
    id: 'height',
    of: 'heightMismatchDeg',
    limit: 'heightDeg',
    what: 'center above or below the mains, seen from the ear',
    fails: 'the voice moves up or down',
  },
  {
    id: 'pull',
    of: 'mainSeatPullDeg',
    limit: 'pullDeg',
    what: 'pull of the phantom voice toward one main',
    fails: 'the phantom voice is not in the middle to begin with',
  },
];

const STEPS: readonly string[] = [
  'Sit in the main seat and play two-channel music with a singer in the middle.',
  'Switch the upmix off. Close your eyes and point at the singer.',
  'Let somebody switch the upmix on, and leave the volume alone.',
  'Point again. The singer should be in the same place and about equally loud, within 1 dB.',
  'Switch back and forth a few times before you judge.',
  'Save the case again after each change and compare the two audits.',
];

const NOTE =
  'It is not the same sound. A phantom voice is some 7 dB weaker near 1.6 to 2 kHz, and up to 3 dB stronger in the bass, because each ear hears both mains. So a firmer voice with a little less bass is normal and no fault.';

/** `passes`: null where it is not known. `atStake`: music or an upmix is, so that the test belongs to the answer. */
export function seamlessSwitch(view: View, units: UnitSystem) {
  const checks = CHECKS.map((check) => {
    const table: Limit = limit(check.limit);
    const value = view.read(check.of).value;
    const known = typeof value === 'number';
    const passes = known ? value <= table.noticeable : null;
    const bound = quantityText(table.noticeable, table.unit, units);
    return {
      id: check.id,
      passes,
      value: known ? value : null,
      limit: table.noticeable,
      unit: DERIVED[check.of].unit,
      text: known
        ? `${check.what}: ${quantityText(value, table.unit, units)}, ${passes ? 'within' : 'beyond'} the ${bound} that is just noticed`
        : `${check.what}: not known yet`,
      fails: check.fails,
    };
  });
  const failing = checks.filter((check) => check.passes === false);
  const open = checks.filter((check) => check.passes === null);
  const passes = failing.length > 0 ? false : open.length > 0 ? null : true;
  return {
    passes,
    steps: STEPS,
    atStake: isAtStake(view),
    summary: summaryOf(passes, failing, open.length),
    checks: checks.map(({ fails: _, ...check }) => check),
    note: NOTE,
  };
}

/** Music in two channels is played, or an upmix is part of what was told. */
function isAtStake(view: View): boolean {
  const use = view.read('upmixUse').value;
  return view.read('playedContent').value === 'two-channel-music' || use === 'on' || use === 'sometimes';
}

function summaryOf(
  passes: boolean | null,
  failing: readonly { readonly fails: string }[],
  open: number,
): string {
  if (passes === true)
    return 'From what is known the voice should stay where it is when the upmix is switched on. Your ears decide.';
  if (passes === false)
    return `From what is known the switch will be heard: ${listText(failing.map((check) => check.fails))}.`;
  return open === CHECKS.length
    ? 'Nothing that decides it is known yet, so only listening tells.'
    : 'What is known speaks for it, but not everything that decides it is known, so only listening tells.';
}
