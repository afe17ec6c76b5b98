/** All causes, in the order of the contract. Written by `npm run index`; do not edit. */
import type { Cause } from './cause.js';
import type { CauseId } from './cause-ids.js';
import { aim } from './causes/aim.js';
import { ambienceSetting } from './causes/ambience-setting.js';
import { bassManagement } from './causes/bass-management.js';
import { blockedPath } from './causes/blocked-path.js';
import { cabinetBay } from './causes/cabinet-bay.js';
import { correctionMismatch } from './causes/correction-mismatch.js';
import { delay } from './causes/delay.js';
import { doublePlayback } from './causes/double-playback.js';
import { driverFault } from './causes/driver-fault.js';
import { driverLayout } from './causes/driver-layout.js';
import { fixedExtraction } from './causes/fixed-extraction.js';
import { height } from './causes/height.js';
import { level } from './causes/level.js';
import { listener } from './causes/listener.js';
import { mainsLayout } from './causes/mains-layout.js';
import { nearSurface } from './causes/near-surface.js';
import { offMidline } from './causes/off-midline.js';
import { outerTweeters } from './causes/outer-tweeters.js';
import { overload } from './causes/overload.js';
import { polarity } from './causes/polarity.js';
import { preference } from './causes/preference.js';
import { programme } from './causes/programme.js';
import { roomAcoustics } from './causes/room-acoustics.js';
import { routing } from './causes/routing.js';
import { screenLoss } from './causes/screen-loss.js';
import { setBack } from './causes/set-back.js';
import { spreadOff } from './causes/spread-off.js';
import { surroundSpill } from './causes/surround-spill.js';
import { timbre } from './causes/timbre.js';
import { twinCenters } from './causes/twin-centers.js';

export const CAUSES: readonly Cause[] = [
  driverLayout,
  outerTweeters,
  height,
  aim,
  cabinetBay,
  setBack,
  nearSurface,
  blockedPath,
  offMidline,
  delay,
  level,
  spreadOff,
  fixedExtraction,
  ambienceSetting,
  timbre,
  correctionMismatch,
  screenLoss,
  polarity,
  bassManagement,
  driverFault,
  routing,
  programme,
  twinCenters,
  mainsLayout,
  roomAcoustics,
  doublePlayback,
  surroundSpill,
  overload,
  listener,
  preference,
];

const BY_ID = new Map<CauseId, Cause>(CAUSES.map((cause) => [cause.id, cause]));

export function causeOf(id: CauseId): Cause {
  const cause = BY_ID.get(id);
  if (!cause) throw new RangeError(`no cause file for ${id}`);
  return cause;
}
export function isCauseId(id: string): id is CauseId {
  return BY_ID.has(id as CauseId);
}
