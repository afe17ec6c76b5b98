/**
 * The best entries over the real steps of the menu. Branch and bound: for each spread and trim the part of the cost that no
 * delay can lower is a bound, branches are taken from the lowest bound up, and once a bound reaches the best cost found,
 * neither that branch nor any behind it can hold a better one. So the result is the least of all settings of the grid.
 */
import type { Triple } from '../acoustics/arrival.js';
import {
  type Choice,
  costOf,
  harmsAt,
  leastCost,
  type Played,
  playedBy,
  type SeatModel,
  speechCost,
} from './cost.js';
import type { System } from './system.js';

export interface Grid {
  /** Delays that the menu can add to the center against left, in steps. */
  readonly centerMs: readonly number[];
  /** The same for right against left. */
  readonly rightMs: readonly number[];
  readonly trimChangeDb: readonly number[];
  readonly spread: readonly (number | undefined)[];
  readonly tiltDeg: readonly number[];
}

interface Found {
  readonly choice: Choice;
  readonly cost: number;
}

/** @param weights of the seats, in their order; not all zero */
function costOver(
  models: readonly SeatModel[],
  weights: readonly number[],
  of: (model: SeatModel) => number,
): number {
  let [sum, total] = [0, 0];
  for (const [i, model] of models.entries()) {
    const weight = weights[i] ?? 0;
    total += weight;
    if (weight > 0) sum += weight * of(model);
  }
  return total === 0 ? 0 : sum / total;
}

/** Delays as a processor adds them: the earliest loudspeaker gets none. */
export function delaysOf(centerMs: number, rightMs: number): Triple<number> {
  const least = Math.min(0, centerMs, rightMs);
  return { left: -least, center: centerMs - least, right: rightMs - least };
}

export function bestChoice(
  system: System,
  models: readonly SeatModel[],
  weights: readonly number[],
  grid: Grid,
): Found {
  // Tilt adds to the cost by itself, whatever the other entries are.
  const tiltDeg = least(grid.tiltDeg, (deg) => costOver(models, weights, (model) => speechCost(model, deg)));
  const branches = grid.spread
    .flatMap((spread) => {
      const played = playedBy(system, spread);
      return grid.trimChangeDb.map((trimChangeDb) => {
        const choice: Choice = { delaysMs: delaysOf(0, 0), trimChangeDb, spread, tiltDeg };
        return {
          choice,
          played,
          bound: costOver(models, weights, (model) => leastCost(model, choice, played)),
        };
      });
    })
    .sort((a, b) => a.bound - b.bound);
  let best: Found | undefined;
  for (const { choice, played, bound } of branches) {
    if (best !== undefined && bound >= best.cost) break;
    for (const centerMs of grid.centerMs) {
      for (const rightMs of grid.rightMs) {
        const here = { ...choice, delaysMs: delaysOf(centerMs, rightMs) };
        const cost = costOfChoice(system, models, weights, here, played);
        if (best === undefined || cost < best.cost - 1e-12) best = { choice: here, cost };
      }
    }
  }
  if (best === undefined) throw new RangeError('a grid without settings');
  return best;
}

export function costOfChoice(
  system: System,
  models: readonly SeatModel[],
  weights: readonly number[],
  choice: Choice,
  played: Played = playedBy(system, choice.spread),
): number {
  return costOver(models, weights, (model) => costOf(harmsAt(model, system, choice, played)));
}

const least = <T>(list: readonly T[], of: (item: T) => number): T => {
  const costs = list.map(of);
  return list[costs.indexOf(Math.min(...costs))] as T;
};
