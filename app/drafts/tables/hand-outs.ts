/** Hand-outs from the rows of a table. Pure. */
import type { HandOutSpan } from '../../../core/mileage/index.ts';
import { editBody, type HandOut, type RecordId } from '../../../core/records/index.ts';
import { toInstant } from '../../parts/instant.ts';
import type { Moment } from './cells.ts';
import { yesNo } from './names.ts';
import { fateBeside, wrongRow, type Seen } from './people.ts';
import type { ReadRow, RowReader } from './row.ts';
import { pairOf, testerOf, type WearContext } from './who.ts';

const DAY_MS = 86_400_000;

/** When a day that names no hour ends. */
const dayEnd = ({ ms, dayOnly }: Moment): number => (dayOnly ? ms + DAY_MS - 60_000 : ms);

interface Span {
  readonly tester: RecordId;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly line: number;
}

/** The hand-outs of the rows so far, by pair. */
export type RowSpans = Map<RecordId, Span[]>;

const overlaps = (a: Pick<Span, 'fromMs' | 'untilMs'>, b: typeof a): boolean =>
  a.fromMs < b.untilMs && b.fromMs < a.untilMs;

/** Another hand-out of the pair in that time, on record or in an earlier row. */
const heldBy = (
  reader: RowReader,
  own: readonly HandOutSpan[],
  rows: readonly Span[],
  span: Pick<Span, 'fromMs' | 'untilMs'>,
): void => {
  const held = own.find((one) => overlaps(one, span));
  const row = rows.find((one) => overlaps(one, span));
  if (held) reader.fail('from', { why: 'held', tester: held.tester });
  else if (row) reader.fail('from', { why: 'held-in-row', line: row.line });
};

const timesOf = (reader: RowReader, nowMs: number) => {
  const from = reader.moment('from');
  const until = reader.moment('until');
  if (from === undefined) reader.fail('from', { why: 'missing' });
  if (!from || until === null) return null;
  if (from.ms > nowMs) return reader.fail('from', { why: 'future' });
  // A day that is not over yet ends now.
  const untilMs = until ? Math.min(dayEnd(until), until.dayOnly ? nowMs : Infinity) : null;
  if (until && until.ms > nowMs) return reader.fail('until', { why: 'future' });
  if (untilMs !== null && untilMs <= from.ms) return reader.fail('until', { why: 'before-from' });
  return { from, untilMs };
};

export const readHandOut = (
  reader: RowReader,
  context: WearContext,
  seen: Seen,
  rows: RowSpans,
): ReadRow => {
  const [pair, tester] = [pairOf(reader, context), testerOf(reader, context)];
  const times = timesOf(reader, context.nowMs);
  const blind = reader.oneOf('blind', yesNo);
  if (!pair || !tester || !times || blind === null) return wrongRow(reader);
  const { from, untilMs } = times;
  const old = context.handOuts.find(
    ({ body }) =>
      body.pair === pair &&
      body.tester === tester &&
      (from.dayOnly
        ? Math.floor((Date.parse(body.from) - from.ms) / DAY_MS) === 0
        : Date.parse(body.from) === from.ms),
  );
  const span = { fromMs: from.ms, untilMs: untilMs ?? Infinity };
  const others = (context.spans.get(pair) ?? []).filter(({ id }) => id !== old?.revision.id);
  if (!seen.isFirst(`${pair} ${tester} ${from.ms}`, 'from', reader)) return wrongRow(reader);
  heldBy(reader, others, rows.get(pair) ?? [], span);
  if (reader.isWrong) return wrongRow(reader);
  rows.set(pair, [...(rows.get(pair) ?? []), { ...span, tester, line: reader.line }]);
  const told = {
    ...(untilMs !== null && old?.body.until === undefined && { until: toInstant(untilMs) }),
    ...(blind !== undefined && { blind: blind === 'yes' }),
  };
  const body: HandOut = old
    ? editBody<'hand-out'>(old.body, told)
    : {
        project: context.project,
        pair,
        tester,
        from: toInstant(from.ms),
        blind: true,
        ...told,
      };
  return fateBeside(
    reader,
    { kind: 'hand-out', body },
    old && { body: old.body, id: old.revision.id },
  );
};
