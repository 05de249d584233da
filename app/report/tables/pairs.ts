/** The pairs: how far each has come, and whether it is within its tolerances. */
import type { Review } from '../../../core/review/index.ts';
import { km, type Table } from './table.ts';

export const pairsTable = ({ pairs: list }: Review, round: (id: string) => string): Table => ({
  name: 'pairs',
  columns: [
    'pair',
    'round',
    'size_mm',
    'total_km',
    'carried_in_km',
    'runs',
    'share_of_brief',
    'steps_per_shoe',
    'holder_silent_days',
    'withdrawn',
    'dimensions_proved_out',
    'dimensions_read_outside',
    'dimensions_undecided',
  ],
  rows: list.map((pair) => [
    pair.code,
    round(pair.round),
    pair.sizeMm,
    km(pair.totalM),
    km(pair.carriedInM),
    pair.runs,
    pair.shareOfBrief,
    pair.course.at(-1)?.stepsPerShoe,
    pair.holderSilentDays,
    pair.stopUse !== null,
    pair.outOfTolerance.proved,
    pair.outOfTolerance.outside,
    pair.outOfTolerance.undecided,
  ]),
});
