/** The verdict of each round, item by item, and what its changes did. */
import { unitsOf } from '../../../core/records/index.ts';
import {
  placeOf as placeOfWear,
  type RoundReport,
  type VerdictItem,
} from '../../../core/review/index.ts';
import type { Cell, Table } from './table.ts';

/** What of an item is about a measure: for a limit without readings the brief's own. */
const placeOf = (item: VerdictItem): readonly Cell[] => {
  if (item.what !== 'wear' && item.what !== 'not-measured') return ['', '', '', '', '', ''];
  const { limit } = item;
  const own = item.what === 'wear' ? placeOfWear(item) : null;
  return [
    limit.measure,
    own?.unit ?? unitsOf[limit.measure][0],
    own?.site ?? limit.site,
    limit.bound,
    limit.value,
    limit.basis,
  ];
};

export const verdictsTable = (reports: readonly RoundReport[]): Table => ({
  name: 'verdicts',
  columns: [
    'round',
    'round_verdict',
    'item',
    'measure',
    'unit',
    'site',
    'bound',
    'limit',
    'limit_basis',
    'verdict',
  ],
  rows: reports.flatMap(({ round, verdict }) =>
    verdict.items.map((item) => [round.name, verdict.word, item.what, ...placeOf(item), item.word]),
  ),
});

export const changesTable = (
  reports: readonly RoundReport[],
  round: (id: string) => string,
): Table => ({
  name: 'changes',
  columns: ['round', 'against', 'part', 'what', 'zone', 'kind', 'verdict', 'testers_of_both'],
  rows: reports.flatMap(({ against }) =>
    against
      ? against.changes.map(({ round: by, part, what, mends, found }) => [
          round(by),
          round(against.earlier),
          part,
          what,
          mends?.zone,
          mends?.kind,
          found?.verdict,
          against.testers.both,
        ])
      : [],
  ),
});
