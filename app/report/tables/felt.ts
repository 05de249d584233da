/** Complaints and comfort of each round. */
import type { Review } from '../../../core/review/index.ts';
import { tableOf, type Table } from './table.ts';

export const complaintsTable = ({ rounds }: Review): Table => ({
  name: 'complaints',
  columns: [
    'round',
    'zone',
    'kind',
    'evidence',
    'testers_asked',
    'testers_once',
    'testers_twice',
    'share_twice_lower_95',
    'share_twice_upper_95',
    'runs_asked',
    'runs',
    'runs_left_foot',
    'runs_right_foot',
    'severity_mean_of_10',
    'severity_most_of_10',
    'allowed_rate',
    'e_value',
    'e_value_needed',
  ],
  rows: rounds.flatMap(({ name, complaints: { asked, cells } }) =>
    cells.map((cell) => [
      name,
      cell.zone,
      cell.kind,
      cell.word,
      asked.testers,
      cell.testersOnce,
      cell.testersTwice,
      cell.shareTwice.lower,
      cell.shareTwice.upper,
      asked.runs,
      cell.runs,
      cell.byFoot.left,
      cell.byFoot.right,
      cell.severity?.mean,
      cell.severity?.most,
      cell.allowedRate,
      cell.eValue,
      cell.needed,
    ]),
  ),
});

export const comfortTable = ({ rounds }: Review): Table => ({
  name: 'comfort',
  columns: [
    'round',
    'attribute',
    'when',
    'mean_of_100',
    'lower_95',
    'upper_95',
    'testers',
    'scores',
    'change_per_100_km',
    'change_per_100_km_lower_95',
    'change_per_100_km_upper_95',
    'change_per_100_km_testers',
  ],
  rows: rounds.flatMap((round) =>
    round.comfort.flatMap((one) =>
      (['wear', 'firstImpression'] as const).flatMap((when) => {
        const score = one[when];
        const drift = when === 'wear' ? one.drift : null;
        return score
          ? [
              [
                round.name,
                one.attribute,
                when === 'wear' ? 'wear' : 'first-impression',
                score.mean,
                score.interval?.lower,
                score.interval?.upper,
                score.n,
                score.runs,
                drift?.per100Km,
                drift?.interval.lower,
                drift?.interval.upper,
                drift?.testers,
              ],
            ]
          : [];
      }),
    ),
  ),
});

/** Too little, just right, too much, by testers, and what it costs. */
export const twoSidedTable = ({ rounds }: Review): Table =>
  tableOf(
    'comfort-two-sided',
    rounds.flatMap(({ name, twoSided }) => twoSided.map((one) => ({ round: name, ...one }))),
    {
      round: ({ round }) => round,
      attribute: ({ attribute }) => attribute,
      testers: ({ mean }) => mean.n,
      answers: ({ runs }) => runs,
      too_little: ({ counts }) => counts.low,
      just_right: ({ counts }) => counts.right,
      too_much: ({ counts }) => counts.high,
      share_too_little_lower_95: ({ share }) => share.low.lower,
      share_too_little_upper_95: ({ share }) => share.low.upper,
      share_too_much_lower_95: ({ share }) => share.high.lower,
      share_too_much_upper_95: ({ share }) => share.high.upper,
      mean_mark: ({ mean }) => mean.mean,
      mean_mark_lower_95: ({ mean }) => mean.interval?.lower,
      mean_mark_upper_95: ({ mean }) => mean.interval?.upper,
      known: ({ word }) => word,
      sure: ({ word, sure }) => (word === 'low' || word === 'high' ? sure : undefined),
      p: ({ p }) => p,
      p_over_all_questions: ({ adjustedP }) => adjustedP,
      cost_too_little: ({ cost }) => cost.low?.points,
      cost_too_little_lower_95: ({ cost }) => cost.low?.interval.lower,
      cost_too_little_upper_95: ({ cost }) => cost.low?.interval.upper,
      cost_too_much: ({ cost }) => cost.high?.points,
      cost_too_much_lower_95: ({ cost }) => cost.high?.interval.lower,
      cost_too_much_upper_95: ({ cost }) => cost.high?.interval.upper,
    },
  );

/** Closer to just right or further from it than in the round before, by testers who answered in both. */
export const twoSidedChangesTable = ({ rounds }: Review): Table =>
  tableOf(
    'comfort-two-sided-changes',
    rounds.flatMap(({ name, twoSidedChanges }, at) =>
      twoSidedChanges.map((one) => ({ round: name, before: rounds[at - 1]?.name, ...one })),
    ),
    {
      earlier_round: ({ before }) => before,
      round: ({ round }) => round,
      attribute: ({ attribute }) => attribute,
      testers: ({ testers }) => testers,
      mean_mark_before: ({ from }) => from,
      mean_mark: ({ to }) => to,
      just_right_before: ({ earlier }) => earlier.right,
      just_right: ({ later }) => later.right,
      closer_by: ({ closer }) => closer,
      closer_by_lower_95: ({ interval }) => interval?.lower,
      closer_by_upper_95: ({ interval }) => interval?.upper,
      known: ({ word }) => word,
    },
  );
