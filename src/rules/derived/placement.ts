/** What floor, shelf and wall do to the center. */
import { heardDepthDb } from '../../acoustics/holes.js';
import { bounceRipple, floorBounce, frontWall } from '../../acoustics/reflection.js';
import { shelfEffect, shelfSpecular } from '../../acoustics/shelf.js';
import { choice, derive, number, type Reader, SEAT_FACTS } from '../../compute/reader.js';
import { BEARING_FACTS, mainBearing, mainHead, requireCenter } from './places.js';

/** A null above this is none, Hz: the end of hearing, textbook. */
const HEARD_TO_HZ = 20_000;
const heard = (nullHz: number | null): number | undefined =>
  nullHz !== null && nullHz <= HEARD_TO_HZ ? nullHz : undefined;

const BOUNCE_FACTS = [...BEARING_FACTS, 'centerCount', 'centerTweeterHeight'] as const;
function centerBounce(r: Reader<(typeof BOUNCE_FACTS)[number]>) {
  requireCenter(r);
  const sourceHeightM = r.number('centerTweeterHeight');
  const { distanceM } = r.from(mainBearing);
  return { sourceHeightM, earHeightM: r.from(mainHead).earHeightM, distanceM };
}

const centerNullHz = (r: Reader<(typeof BOUNCE_FACTS)[number]>): number | undefined =>
  heard(floorBounce(r.from(centerBounce)).firstNullHz);

const MAINS_BOUNCE_FACTS = [...SEAT_FACTS, 'mainsBase', 'mainsTweeterHeight'] as const;
/** Of the nearer main. */
function mainsNullHz(r: Reader<(typeof MAINS_BOUNCE_FACTS)[number]>): number | undefined {
  const [baseM, sourceHeightM] = r.numbers('mainsBase', 'mainsTweeterHeight');
  const { xM, yM, earHeightM } = r.from(mainHead);
  const distanceM = Math.hypot(Math.abs(xM) - baseM / 2, yM);
  return heard(floorBounce({ sourceHeightM, earHeightM, distanceM }).firstNullHz);
}

/** A thin rug does little at the frequencies of the null: it counts as a bare floor (acoustic model, 2b). */
const COVER = { bare: 'bare', rug: 'bare', carpet: 'carpet' } as const;

const SHELF_FACTS = [
  ...BEARING_FACTS,
  'centerCount',
  'centerPlacement',
  'centerTweeterHeight',
  'centerAboveShelf',
  'shelfSetback',
] as const;
type ShelfFact = (typeof SHELF_FACTS)[number];
function shelfGeometry(r: Reader<ShelfFact>) {
  requireCenter(r);
  if (r.choice('centerPlacement') !== 'shelf-top') return r.stop();
  const [exposedDepthM, heightAboveShelfM, tweeterM] = r.numbers(
    'shelfSetback',
    'centerAboveShelf',
    'centerTweeterHeight',
  );
  const { distanceM } = r.from(mainBearing);
  const earAboveShelfM = r.from(mainHead).earHeightM - (tweeterM - heightAboveShelfM);
  return { heightAboveShelfM, earAboveShelfM, distanceM, exposedDepthM };
}

const shelf = (r: Reader<ShelfFact>) => shelfEffect(r.from(shelfGeometry), r.sketchGrid()?.stepDecades);

/** Above 115 / W Hz a box of width W m sends less to the rear, by a first-order fall. From memory. */
const REAR_FALL_HZ_M = 115;
const USUAL_BOX_WIDTH = { value: 0.5, spread: 0.15 } as const;
const USUAL_BOX_DEPTH = { value: 0.3, spread: 0.15 } as const;

const WALL_FACTS = [
  ...BEARING_FACTS,
  'centerCount',
  'centerPlacement',
  'centerWidth',
  'centerDepth',
  'behindCenter',
  'wallDistance',
] as const;
function wall(r: Reader<(typeof WALL_FACTS)[number]>): { nullHz: number | undefined; dipDb: number } {
  requireCenter(r);
  const behindM = r.toldNumber('behindCenter');
  const wallDistanceM =
    behindM === undefined || r.toldNumber('wallDistance') !== undefined
      ? r.number('wallDistance')
      : behindM + r.numberOr('centerDepth', USUAL_BOX_DEPTH);
  const widthM = r.numberOr('centerWidth', USUAL_BOX_WIDTH);
  const { distanceM: listeningDistanceM } = r.from(mainBearing);
  const firstNullHz = heard(frontWall({ wallDistanceM, listeningDistanceM }).firstNullHz);
  if (firstNullHz === undefined) return { nullHz: undefined, dipDb: 0 };
  const reflection = 1 / Math.hypot(1, (firstNullHz * widthM) / REAR_FALL_HZ_M);
  const { nullDepthDb } = frontWall({ wallDistanceM, listeningDistanceM, reflection });
  return { nullHz: firstNullHz, dipDb: heardDepthDb(nullDepthDb) };
}

export const placement = {
  // Nobody leaves out that the box hangs, so what is not told counts as standing.
  hangsOnWall: derive(
    choice('center told to hang on the wall', ['yes', 'no'] as const),
    ['centerPlacement'],
    (r) => (r.toldChoice('centerPlacement') === 'wall' ? 'yes' : 'no'),
  ),
  floorRippleDb: derive(
    number('dB', 'ripple from the floor reflection of the center, smoothed'),
    [...BOUNCE_FACTS, 'floorCover'],
    (r) => {
      const geometry = r.from(centerBounce);
      const cover = COVER[r.choice('floorCover')];
      const { dipDb, peakDb } = bounceRipple({ ...geometry, cover }, r.sketchGrid()?.stepDecades);
      return peakDb - dipDb;
    },
  ),
  floorNullHz: derive(number('Hz', 'first null of the floor reflection of the center'), BOUNCE_FACTS, (r) =>
    r.from(centerNullHz),
  ),
  floorNullMainsHz: derive(
    number('Hz', 'first null of the floor reflection of the mains'),
    MAINS_BOUNCE_FACTS,
    (r) => r.from(mainsNullHz),
  ),
  floorNullRatio: derive(
    number('1', 'first floor nulls of center and mains, the higher over the lower'),
    [...BOUNCE_FACTS, ...MAINS_BOUNCE_FACTS],
    (r) => {
      const nulls = [r.from(centerNullHz), r.from(mainsNullHz)];
      const [lower, higher] = nulls.map((hz) => hz ?? 0).sort((a, b) => a - b);
      return lower && higher ? higher / lower : undefined;
    },
  ),
  shelfDipDb: derive(number('dB', 'dip from the strip of shelf in front of the center'), SHELF_FACTS, (r) =>
    heardDepthDb(r.from(shelf).dipDb),
  ),
  shelfReach: derive(
    number('1', 'bare shelf in front over the way to the spot where it mirrors the voice to the ears'),
    SHELF_FACTS,
    (r) => {
      const { exposedDepthM, ...geometry } = r.from(shelfGeometry);
      const specular = shelfSpecular(geometry);
      // An ear at or below the shelf gets nothing from its top.
      return specular ? exposedDepthM / specular.specularM : 0;
    },
  ),
  shelfRiseDb: derive(
    number('dB', 'rise around 400 Hz from the shelf'),
    SHELF_FACTS,
    (r) => r.from(shelf).riseDb,
  ),
  wallNullHz: derive(
    number('Hz', 'first null from the wall behind the center'),
    WALL_FACTS,
    (r) => r.from(wall).nullHz,
  ),
  wallDipDb: derive(number('dB', 'depth of that null'), WALL_FACTS, (r) => r.from(wall).dipDb),
};
