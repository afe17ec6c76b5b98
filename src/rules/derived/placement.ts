/** What floor, shelf and wall do to the center. */
import { heardDepthDb } from '../../acoustics/holes.js';
import { bounceRipple, floorBounce, frontWall, nearbyWallsDb } from '../../acoustics/reflection.js';
import { shelfEffect, shelfSpecular } from '../../acoustics/shelf.js';
import { choice, derive, number, type Reader, SEAT_FACTS } from '../../compute/reader.js';
import { CORRECTION_FACTS, LOW_RISE_FACTS, LOW_VOICE_HZ, lowRiseLeftDb, riseLeftDb } from './correction.js';
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

const CEILING_FACTS = [...BOUNCE_FACTS, 'ceilingHeight'] as const;
/** The ceiling is a floor upside down. */
function ceilingNullHz(r: Reader<(typeof CEILING_FACTS)[number]>): number | undefined {
  const { sourceHeightM, earHeightM, distanceM } = r.from(centerBounce);
  const ceilingM = r.number('ceilingHeight');
  const below = (heightM: number): number => Math.max(0, ceilingM - heightM);
  return heard(
    floorBounce({ sourceHeightM: below(sourceHeightM), earHeightM: below(earHeightM), distanceM })
      .firstNullHz,
  );
}
/** A center is high where the ceiling is nearer to it than the floor by half. Our own choice. */
const NEAR_CEILING = 0.5;

function nearestSurface(r: Reader<(typeof CEILING_FACTS)[number]>): 'floor' | 'ceiling' {
  const sourceM = r.from(centerBounce).sourceHeightM;
  const ceilingM = r.toldNumber('ceilingHeight');
  return ceilingM !== undefined && ceilingM - sourceM < NEAR_CEILING * sourceM ? 'ceiling' : 'floor';
}
const surfaceNullHz = (r: Reader<(typeof CEILING_FACTS)[number]>): number | undefined =>
  r.from(r.from(nearestSurface) === 'ceiling' ? ceilingNullHz : centerNullHz);

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

/** A hole shallower than this has no frequency worth naming, dB. Our own choice. */
const NAMED_DIP_DB = 0.5;

export const SHELF_FACTS = [
  ...BEARING_FACTS,
  'centerCount',
  'centerPlacement',
  'centerTweeterHeight',
  'centerAboveShelf',
  'shelfSetback',
] as const;
type ShelfFact = (typeof SHELF_FACTS)[number];
/** A center on furniture below a picture, m (0.40 to 0.65). From memory. */
const USUAL_SHELF_CENTER_M = { value: 0.55, spread: 0.25 } as const;
function shelfGeometry(r: Reader<ShelfFact>) {
  requireCenter(r);
  if (r.choice('centerPlacement') !== 'shelf-top') return r.stop();
  const [exposedDepthM, heightAboveShelfM] = r.numbers('shelfSetback', 'centerAboveShelf');
  const tweeterM = r.numberOr('centerTweeterHeight', USUAL_SHELF_CENTER_M);
  const { distanceM } = r.from(mainBearing);
  const earAboveShelfM = r.from(mainHead).earHeightM - (tweeterM - heightAboveShelfM);
  return { heightAboveShelfM, earAboveShelfM, distanceM, exposedDepthM };
}

const shelf = (r: Reader<ShelfFact>) => shelfEffect(r.from(shelfGeometry), r.sketchGrid()?.stepDecades);

/** The hole that the shelf makes, 0 where it makes none worth naming, Hz. */
export function shelfHoleHz(r: Reader<ShelfFact>): number {
  const { dipDb, dipHz } = r.from(shelf);
  return dipDb <= -NAMED_DIP_DB ? dipHz : 0;
}

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

const RISE_FACTS = [...WALL_FACTS, ...LOW_RISE_FACTS, 'sideWallDistance'] as const;
/** Wall behind and, where told, the side wall; a center in a bay or behind a screen has no such wall of its own. */
function wallRise(r: Reader<(typeof RISE_FACTS)[number]>): number {
  requireCenter(r);
  if (r.toldChoice('centerPlacement') === 'bay') return r.stop();
  const riseDb = nearbyWallsDb({
    wallDistanceM: r.number('wallDistance'),
    sideWallDistanceM: r.toldNumber('sideWallDistance'),
    listeningDistanceM: r.from(mainBearing).distanceM,
    frequenciesHz: LOW_VOICE_HZ,
  });
  return lowRiseLeftDb(r, Math.max(0, riseDb));
}

export const SURFACE_HOLE_FACTS = [...CEILING_FACTS, ...WALL_FACTS] as const;
/** Of floor or ceiling, and of the wall behind where its distance was told, Hz. */
export function surfaceHolesHz(
  r: Reader<(typeof SURFACE_HOLE_FACTS)[number]>,
): readonly (number | undefined)[] {
  const wallHz = r.toldNumber('wallDistance') === undefined ? undefined : r.from(wall).nullHz;
  return [r.from(surfaceNullHz), wallHz];
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
  surfaceNullHz: derive(
    number('Hz', 'first null of the center from the floor, or from the ceiling where that is nearer'),
    CEILING_FACTS,
    (r) => r.from(surfaceNullHz),
  ),
  surfaceNullRatio: derive(
    number('1', 'that null of the center over the floor null of the mains'),
    [...CEILING_FACTS, ...MAINS_BOUNCE_FACTS],
    (r) => {
      const [centerHz, mainsHz] = [r.from(surfaceNullHz), r.from(mainsNullHz)];
      return centerHz && mainsHz ? centerHz / mainsHz : undefined;
    },
  ),
  shelfDipDb: derive(number('dB', 'dip from the strip of shelf in front of the center'), SHELF_FACTS, (r) =>
    heardDepthDb(r.from(shelf).dipDb),
  ),
  shelfDipHz: derive(
    number('Hz', 'deepest hole from the strip of shelf in front of the center'),
    SHELF_FACTS,
    (r) => r.from(shelfHoleHz) || undefined,
  ),
  shelfRippleDb: derive(
    number(
      'dB',
      'from the rise to the dip that the shelf makes, what a correction takes off the rise left out',
    ),
    [...SHELF_FACTS, ...CORRECTION_FACTS],
    (r) => {
      const { dipDb, riseDb } = r.from(shelf);
      return heardDepthDb(dipDb) + riseLeftDb(r, riseDb);
    },
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
    number('dB', 'rise around 400 Hz from the shelf, less what a correction takes off'),
    [...SHELF_FACTS, ...CORRECTION_FACTS],
    (r) => riseLeftDb(r, r.from(shelf).riseDb),
  ),
  wallRiseDb: derive(
    number('dB', 'rise of the low voice, 100 to 200 Hz, from the walls close to the center'),
    RISE_FACTS,
    wallRise,
  ),
  ceilingNullHz: derive(
    number('Hz', 'first null of the ceiling reflection of the center'),
    CEILING_FACTS,
    (r) => r.from(ceilingNullHz),
  ),
  nearestSurface: derive(
    choice('surface nearest to the center, up or down', ['floor', 'ceiling'] as const),
    CEILING_FACTS,
    (r) => r.from(nearestSurface),
  ),
  wallNullHz: derive(
    number('Hz', 'first null from the wall behind the center'),
    WALL_FACTS,
    (r) => r.from(wall).nullHz,
  ),
  wallDipDb: derive(number('dB', 'depth of that null'), WALL_FACTS, (r) => r.from(wall).dipDb),
};
