/** What the terminal prints of an opened log, in one language. */
import { headlinesOf } from '../../../app/terminal/headlines.ts';
import { languageFile } from '../../../app/terminal/languages.ts';
import { printReview } from '../../../app/terminal/print-review.ts';
import {
  checkPanel,
  lookAtFeet,
  lookAtRounds,
  reviewProject,
  type ProjectLog,
} from '../../../core/review/index.ts';

export const printedIn = (log: ProjectLog, language: string, howSure: boolean): string => {
  const spoken = languageFile(language);
  const review = reviewProject(log);
  const looks = lookAtRounds(log, review);
  const verdicts = looks.map(({ verdict }) => verdict);
  const headlines = headlinesOf(log, review, verdicts, spoken);
  const [feet, panel] = [lookAtFeet(log), checkPanel(log)];
  return printReview({ review, looks, feet, panel, headlines }, spoken, howSure);
};
