/**
 * Quantities by what is measured and which of its measures: "sofa … 3 m … away". For a quantity that no phrase of the
 * lexicon fits, the fact whose thing and property stand nearest to it and in whose range it lies. A member with a capital or `@` is a noun of `nouns.ts`.
 */
import type { NumberFactId } from '../catalog.js';

interface Slot {
  /** Names of the thing that is measured; one must stand near. */
  readonly thing: string;
  /** Words that say which of its measures; one must stand near. */
  readonly property: string;
  /** Where one of the two is enough when it stands right beside the quantity. */
  readonly alone?: 'thing' | 'property' | 'either';
}

export const SLOTS: { readonly [Id in NumberFactId]?: Slot } = {
  seatDistance: {
    thing: '@seatWord @mainSeat sit listen we i us me listener viewer chair distance eyes nose',
    property: 'away back from distance sit farther far between',
    alone: 'either',
  },
  mainsBase: {
    thing: '@mains @leftMain @rightMain speakers boxes',
    property: 'apart between base spread spacing separated distance other',
    alone: 'property',
  },
  mainsTweeterHeight: {
    thing: '@mains @leftMain @rightMain',
    property: 'high height floor ground up tweeter tall',
  },
  centerTweeterHeight: {
    thing: '@center it box tweeter axis',
    property: 'high height floor ground up above low off carpet',
  },
  earHeight: { thing: 'ear head', property: 'height floor high ground up at off above' },
  displayMiddleHeight: {
    thing: '@picture @display middle',
    property: 'middle center height high up floor hang above',
  },
  centerSideOffset: { thing: '@center it box', property: 'left right beside aside off sideways middle' },
  mainSeatOffset: { thing: '@seatWord @mainSeat i sit we my', property: 'left right off middle side' },
  wallDistance: { thing: '@center it box face baffle', property: 'wall' },
  shelfSetback: { thing: '@center it box shelf board @furniture', property: 'edge setback back' },
  bayRecess: { thing: '@bay @center it face', property: 'inside recess recessed' },
  bayWidth: { thing: '@bay inside', property: 'wide width breit' },
  bayHeight: { thing: '@bay inside', property: 'high height tall' },
  bayDepth: { thing: '@bay inside', property: 'deep depth' },
  centerWidth: { thing: '@center box', property: 'wide width long' },
  centerHeight: { thing: 'box', property: 'high height tall' },
  centerDepth: { thing: '@center box', property: 'deep depth' },
  obstacleHeight: { thing: 'table obstacle ottoman back plant vase pouf', property: 'high height tall' },
  obstacleDistance: { thing: 'table obstacle ottoman', property: 'front from before distance' },
  centerDriverSpacing: { thing: 'cone', property: 'apart between spacing distance centers middles' },
  centerTweeterSpacing: { thing: 'tweeter', property: 'apart between spacing distance' },
  rowSpacing: { thing: 'row backRow', property: 'apart behind back between farther distance' },
  rowRiser: { thing: 'row backRow riser platform step', property: 'riser platform step raise high' },
  seatSpacing: { thing: 'seat heads neighbor', property: 'apart between next' },
  ceilingHeight: { thing: 'ceiling', property: 'ceiling height high', alone: 'thing' },
  displayDiagonal: { thing: '@display @picture', property: 'diagonal inch size tv', alone: 'thing' },
  centerMidSize: { thing: 'cone', property: 'cone dual two size diameter', alone: 'thing' },
  centerAboveShelf: { thing: 'tweeter @center it', property: 'shelf board' },
  centerBehindMains: { thing: '@center it', property: '@mains line' },
  enteredCenter: {
    thing: '@center',
    property: 'menu receiver display enter type say setup entry distance set',
  },
  tapedCenter: {
    thing: '@center',
    property: 'tape measure laser ruler string real really actually nose ear',
  },
  tapedMains: { thing: '@mains', property: 'tape measure laser ruler string real really actually nose ear' },
  centerTrim: {
    thing: '@center it',
    property: 'trim level volume set setting raise turn up down boost plus minus menu reduce lower',
  },
  measuredCenterLevel: {
    thing: '@center',
    property: 'meter level noise spl read measure phone app show db',
    alone: 'thing',
  },
  measuredLeftLevel: {
    thing: '@leftMain left',
    property: 'meter level noise spl read measure phone app show db',
    alone: 'thing',
  },
  measuredRightLevel: {
    thing: '@rightMain right',
    property: 'meter level noise spl read measure phone app show db',
    alone: 'thing',
  },
  centerBassCrossover: {
    thing: '@center crossover small',
    property: 'crossover cross hz cut small high-pass',
    alone: 'either',
  },
  mainsBassCrossover: { thing: '@mains', property: 'crossover cross small', alone: 'thing' },
  centerCrossover: {
    thing: 'tweeter crossover @center',
    property: 'crossover cross tweeter',
    alone: 'either',
  },
  centerLowCrossover: { thing: 'cone crossover', property: 'crossover cross cone mid', alone: 'either' },
  centerLowLimit: { thing: '@center box', property: 'down limit response reach play low' },
  subDelay: { thing: 'subwoofer', property: 'late later delay behind after early before' },
  centerLatency: {
    thing: 'latency processing dsp delay',
    property: 'latency processing dsp',
    alone: 'property',
  },
  reverberationTime: {
    thing: 'rt rt60 reverb reverberation decay t30 t60 t20',
    property: 'rt rt60 60 reverb time reverberation decay t30 t60 t20',
    alone: 'either',
  },
  centerTilt: {
    thing: 'tilt angle aim @center it',
    property: 'tilt up down angle aim upward back',
    alone: 'property',
  },
  screenCompensation: { thing: 'treble shelf highs', property: 'treble shelf screen cloth raise more' },
  screenHoleDiameter: {
    thing: 'hole perforation',
    property: 'hole perforation diameter size',
    alone: 'either',
  },
};
