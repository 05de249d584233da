/** The rounds, and how much was worn of each. */
import type { Review } from '../../../core/review/index.ts';
import { km, type Table } from './table.ts';

export const roundsTable = ({ rounds }: Review): Table => ({
  name: 'rounds',
  columns: [
    'round',
    'order',
    'stage',
    'pairs',
    'testers',
    'runs',
    'km',
    'runs_asked',
    'testers_asked',
  ],
  rows: rounds.map(({ name, order, stage, size, complaints: { asked: of } }) => [
    name,
    order,
    stage,
    size.pairs,
    size.testers,
    size.runs,
    km(size.distanceM),
    of.runs,
    of.testers,
  ]),
});
