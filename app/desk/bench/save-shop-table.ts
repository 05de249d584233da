/** The table for the shop as a file: filled with the pairs of a round, or its heading alone. */
import type { RecordOf } from '../../../core/records/index.ts';
import { lastGauges } from '../../drafts/check-gauges.ts';
import { sendFile } from '../../parts/send-file.ts';
import { session } from '../../parts/state.ts';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';

/** The rounds of the project, the latest first. */
export const roundsOf = ({ review, records }: TabProps): readonly RecordOf<'round'>[] =>
  records.round
    .filter(({ body }) => body.project === review.project.id)
    .sort((a, b) => b.body.order - a.body.order);

export const saveShopTable = async (
  { review, records }: TabProps,
  round: RecordOf<'round'>,
): Promise<void> => {
  // The writer of tables is fetched with the first table.
  const { filledBenchTable } = await import('../../drafts/check-table.ts');
  const { askedOf } = await import('../../drafts/shop-table.ts');
  const { blueprint, name } = round.body;
  const own = review.pairs.filter((pair) => pair.round === round.revision.id);
  const text = filledBenchTable(
    own.map(({ code }) => code),
    askedOf(blueprint, review.project.brief.limits),
    lastGauges(
      records['bench-check'].filter(({ body }) => body.project === review.project.id),
      new Set(own.map(({ id }) => id)),
      session.value?.member ?? null,
    ),
  );
  await sendFile(d().bench.tableName(name), new TextEncoder().encode(text));
};

export const saveEmptyTable = async (): Promise<void> => {
  const { emptyBenchTable } = await import('../../drafts/check-table.ts');
  await sendFile('bench-checks.csv', new TextEncoder().encode(emptyBenchTable()));
};
