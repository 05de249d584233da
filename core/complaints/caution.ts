/** Does this pain call for the notice to stop and see a clinician? */

/**
 * True for new pain of 3 or more of 10, and for any pain with swelling, a limp, numbness, at night, or
 * where the foot bears no weight. The stricter line of published clinic rules (run on only below 3 of 10,
 * not rising, none at night, no swelling or numbness); drawing the line there is a judgement. False never
 * means that it is safe to run.
 * @param score 0 to 10; null: not answered
 * @param isNew null: not answered, taken as new
 */
export const isCautionDue = (
  score: number | null,
  isNew: boolean | null,
  signs: readonly unknown[],
): boolean => score !== null && score > 0 && ((score >= 3 && isNew !== false) || signs.length > 0);
