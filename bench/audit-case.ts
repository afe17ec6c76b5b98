/** A system with eight seats in two rows and about everything told: the heaviest audit an owner can bring. */
import type { FactBook } from '../src/facts/book.js';
import { readCase } from '../src/facts/case-file.js';

/** @param n moves the seats a little, so that no earlier result fits */
export function eightSeats(n: number): FactBook {
  const nudge = n * 1e-4;
  const measured = (value: number) => ({ value, how: 'measured' });
  const facts = {
    playedContent: 'everything',
    troubleSeats: 'off-middle',
    centerCount: 'one',
    centerLayout: 'woofer-mid-tweeter-woofer',
    centerOrientation: 'level',
    centerDriverSpacing: measured(0.42),
    centerCrossover: measured(2400),
    centerFamily: 'same-series',
    mainsKind: 'tower',
    seating: 'several-rows',
    seatDistance: measured(3 + nudge),
    mainsBase: measured(3.2),
    earHeight: measured(1.02),
    centerTweeterHeight: measured(0.5),
    mainsTweeterHeight: measured(1),
    centerTilt: measured(5),
    displayDiagonal: measured(1.65),
    displayMiddleHeight: measured(1.2),
    centerPlacement: 'bay',
    bayWidth: measured(0.8),
    bayHeight: measured(0.25),
    bayDepth: measured(0.45),
    bayRecess: measured(0.05),
    bayStuffing: 'open',
    centerWidth: measured(0.6),
    centerHeight: measured(0.2),
    centerDepth: measured(0.3),
    floorCover: 'bare',
    obstacle: 'table',
    obstacleHeight: measured(0.45),
    obstacleDistance: measured(1.8),
    upmixUse: 'on',
    upmixCommonPart: 'shares',
    upmixCenterControl: 'present',
    centerSpread: 'on',
    alignmentBy: 'by-hand',
    entryKind: 'distances',
    enteredLeft: measured(3.3),
    enteredCenter: measured(3.3),
    enteredRight: measured(3.3),
    subwoofer: 'one',
    centerBassSize: 'small',
    centerBassCrossover: measured(80),
    centerLowLimit: measured(60),
    centerEnclosure: 'vented',
  };
  const seats = Array.from({ length: 8 }, (_, i) => ({
    name: `seat ${i + 1}`,
    xM: ((i % 4) - 1.5) * 0.65 + nudge,
    yM: 3 + Math.floor(i / 4) * 1.1 + nudge,
    row: 1 + Math.floor(i / 4),
    ...(i === 1 ? { main: true } : {}),
  }));
  const text = JSON.stringify({
    format: 'center-audit/case',
    version: 1,
    units: 'metric',
    title: 'eight seats',
    complaints: ['voice-unclear-off-side', 'hollow'],
    facts,
    seats,
  });
  return readCase(text).book;
}
