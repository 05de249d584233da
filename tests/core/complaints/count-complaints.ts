import { countTally, type FeetAnswer } from '../../../core/complaints/index.ts';
import { tallyAnswers } from '../../../core/complaints/tally.ts';

/** Counts of answers that nobody tallied before. */
export const countComplaints = (answers: readonly FeetAnswer[]) =>
  countTally(tallyAnswers(answers), answers);
