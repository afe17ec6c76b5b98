/**
 * Decision-theoretic troubleshooting (Heckerman, Breese & Rommelse 1995): the expected minutes until the
 * fault is found and put right, the best order of checks, and what a question is worth. Causes are taken
 * as excluding each other here: probabilities sum to 1 at most, the rest being a cause that is not listed.
 */

export interface Suspect {
  /** Probability that this is the cause. */
  readonly p: number;
  /** Minutes to confirm or clear it (Co), above 0. */
  readonly confirmMinutes: number;
  /** Minutes to put it right once found (Cr). */
  readonly repairMinutes: number;
  /** Minutes to check afterwards (Cp). */
  readonly checkMinutes: number;
}

/** Index order by p / Co, the best one for independent costs and perfect checks; ties stay as given. */
export function checkOrder(suspects: readonly Suspect[]): number[] {
  return orderByWorth(
    suspects.map((s) => s.p),
    suspects.map((s) => s.confirmMinutes),
  );
}

/** Suspects by p / Co, those less probable than `least` left out. */
export function orderByWorth(p: readonly number[], confirm: readonly number[], least = 0): number[] {
  const worth = confirm.map((minutes, i) => (p[i] ?? 0) / minutes);
  const order = confirm.map((_, i) => i).filter((i) => (p[i] ?? 0) >= least);
  // Whole numbers: a comparison that returns fractions makes an object of each, and this is the innermost loop.
  return order.sort((a, b) => {
    const x = worth[a] ?? 0;
    const y = worth[b] ?? 0;
    return x === y ? a - b : x < y ? 1 : -1;
  });
}

/**
 * Expected minutes of checking one suspect after the other until the right one is found:
 * sum_i (1 - sum_{j<i} p_j) Co_i along the order. Removing a cleared suspect scales all others alike, so
 * the order by p / Co stays the order re-ranked after every result. `otherMinutes` is paid when it was
 * none of them.
 */
export function searchMinutes(
  p: readonly number[],
  confirm: readonly number[],
  otherMinutes = 0,
  order: readonly number[] = orderByWorth(p, confirm),
): number {
  let left = 1;
  let minutes = 0;
  for (const i of order) {
    const q = p[i];
    const check = confirm[i];
    if (q === undefined || check === undefined) throw new RangeError(`no suspect ${i}`);
    minutes += left * check;
    left -= q;
  }
  return minutes + Math.max(0, left) * otherMinutes;
}

/**
 * Expected cost of repair in minutes: the search, and for the suspect that it is repair and check,
 * sum_i (1 - sum_{j<i} p_j) Co_i + p_i (Cr_i + Cp_i).
 */
export function repairMinutes(
  suspects: readonly Suspect[],
  order: readonly number[] = checkOrder(suspects),
  otherMinutes = 0,
): number {
  const search = searchMinutes(
    suspects.map((s) => s.p),
    suspects.map((s) => s.confirmMinutes),
    otherMinutes,
    order,
  );
  return suspects.reduce((sum, s) => sum + s.p * (s.repairMinutes + s.checkMinutes), search);
}

interface AnswerOutlook {
  readonly p: number;
  readonly posterior: readonly number[];
  readonly value: number;
}
interface Outlook {
  /** Value with what is known now. */
  readonly now: number;
  readonly answers: readonly AnswerOutlook[];
  /** Expected gain from the answer, cost of asking left out; never negative for a best-choice value. */
  readonly gain: number;
}

/**
 * Expected value of asking: `likelihood[a][i]` is P(answer a | state i), columns summing to 1 over the
 * answers; `worth` is the value of acting on a distribution (minutes are negative values), `now` that of the
 * prior where it is known already.
 */
export function outlook(
  prior: readonly number[],
  likelihood: readonly (readonly number[])[],
  worth: (p: readonly number[]) => number,
  now = worth(prior),
): Outlook {
  const answers = likelihood.map((row): AnswerOutlook => {
    let p = 0;
    const posterior = prior.map((q, i) => {
      const joint = q * (row[i] ?? 0);
      p += joint;
      return joint;
    });
    posterior.forEach((joint, i) => {
      posterior[i] = p > 0 ? joint / p : 0;
    });
    return { p, posterior, value: p > 0 ? worth(posterior) : 0 };
  });
  const later = answers.reduce((sum, a) => sum + a.p * a.value, 0);
  return { now, answers, gain: later - now };
}
