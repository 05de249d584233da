/**
 * The least imbalance that any plan has, where every tester can wear every round in every period.
 *
 * It is 0 but for the numbers listed here, for which no plan with 0 exists (for three and five rounds in
 * three and five periods: Williams EJ, Aust J Sci Res A 1949;2:149-168). The values were found and proven
 * by integer programming over all orders (`tests/core/panel/plan.test.ts` says how).
 */

/** By `rounds,periods`: the least imbalance by number of testers. */
const ABOVE_ZERO: Readonly<Record<string, Readonly<Record<number, number>>>> = {
  '3,3': { 2: 2, 3: 6, 4: 2, 8: 2, 9: 6, 10: 2 },
  '4,3': { 2: 2, 6: 2, 10: 2 },
  '5,3': { 3: 2, 4: 2, 6: 2, 7: 2, 9: 2, 10: 4 },
  '5,4': { 2: 2, 3: 2, 7: 2, 8: 2, 12: 2 },
  '5,5': { 4: 2, 5: 8, 6: 2 },
  '6,3': { 5: 4 },
  '6,4': { 2: 2, 4: 2, 5: 6, 7: 4, 8: 4, 10: 6, 11: 2 },
  '6,5': { 2: 2, 3: 6, 4: 2, 8: 2, 9: 6, 10: 2 },
};

/**
 * @returns null beyond 12 testers or 6 rounds, where it was not worked out
 */
export const leastImbalance = (rounds: number, periods: number, testers: number): number | null =>
  rounds > 6 || testers > 12 || periods > rounds
    ? null
    : (ABOVE_ZERO[`${rounds},${periods}`]?.[testers] ?? 0);
