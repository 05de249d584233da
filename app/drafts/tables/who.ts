/** Whom and which pair does a row name, and what is known of both? Pure. */
import type { HandOutSpan } from '../../../core/mileage/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { RowReader } from './row.ts';

export interface WearContext {
  readonly project: RecordId;
  /** By code, and testers by name too. */
  readonly pairs: ReadonlyMap<string, RecordId>;
  readonly testers: ReadonlyMap<string, RecordId>;
  readonly handOuts: readonly RecordOf<'hand-out'>[];
  readonly spans: ReadonlyMap<RecordId, readonly HandOutSpan[]>;
  readonly nowMs: number;
  /** Who brings the runs in. */
  readonly by: RecordId;
}

export const pairOf = (reader: RowReader, { pairs }: WearContext): RecordId | null => {
  const code = reader.text('pair').toUpperCase();
  if (code === '') return reader.fail('pair', { why: 'missing' });
  return pairs.get(code) ?? reader.fail('pair', { why: 'unknown-pair' });
};

export const testerOf = (reader: RowReader, { testers }: WearContext): RecordId | null => {
  const named = reader.text('tester').toUpperCase();
  if (named === '') return reader.fail('tester', { why: 'missing' });
  return testers.get(named) ?? reader.fail('tester', { why: 'unknown-tester' });
};
