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

const prepare = (log: ProjectLog) => {
  const review = reviewProject(log);
  const looks = lookAtRounds(log, review);
  return { review, looks, feet: lookAtFeet(log), panel: checkPanel(log) };
};

/** A log is printed in several languages; its figures are the same in all. */
const prepared = new WeakMap<ProjectLog, ReturnType<typeof prepare>>();

export const printedIn = (log: ProjectLog, language: string, howSure: boolean): string => {
  const spoken = languageFile(language);
  const figures = prepared.get(log) ?? prepare(log);
  prepared.set(log, figures);
  const verdicts = figures.looks.map(({ verdict }) => verdict);
  const headlines = headlinesOf(log, figures.review, verdicts, spoken);
  return printReview({ ...figures, headlines }, spoken, howSure);
};
