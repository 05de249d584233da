/** The answers to the question about pain as a table for a spreadsheet, one row a round. */
import type { Review } from '../../../core/review/index.ts';

export const painTable = ({ rounds }: Review) => ({
  name: 'pain',
  columns: [
    'round',
    'evidence',
    'testers_asked',
    'testers_once',
    'testers_twice',
    'runs_asked',
    'runs_any_pain',
    'runs',
    'runs_caution',
    'most_of_10',
    'run_share',
    'run_share_lower_95',
    'run_share_upper_95',
    'allowed_rate',
    'e_value',
    'e_value_needed',
  ],
  rows: rounds.flatMap(({ name, pain: of }) =>
    of
      ? [
          [
            name,
            of.word,
            of.asked.testers,
            of.testersOnce,
            of.testersTwice,
            of.asked.runs,
            of.anyRuns,
            of.runs,
            of.cautionRuns,
            of.most,
            of.runShare.share,
            of.runShare.lower,
            of.runShare.upper,
            of.allowedRate,
            of.eValue,
            of.needed,
          ],
        ]
      : [],
  ),
});
