/** Complaints and comfort of each round. */
import type { Review } from '../../../core/review/index.ts';
import type { Table } from './table.ts';

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
