/** Revisions for tests: valid, small, and as many as needed. */
import fc from 'fast-check';
import {
  newRecordId,
  sealRevision,
  type DeviceId,
  type RecordId,
  type Revision,
  type Stamp,
} from '../../../core/records/index.ts';

export const idOf = (n: number): RecordId =>
  newRecordId(1_750_000_000_000 + n, new Uint8Array(16).fill(n % 251));

export const stampAt = (ms: number, count = 0, device = 1): Stamp =>
  `${ms.toString(16).padStart(12, '0')}-${count.toString(16).padStart(4, '0')}-${String(device).padStart(16, '0') as DeviceId}` as Stamp;

/** Any revision of a few records by a few devices at a few instants, so that all kinds of clashes occur. */
export const anyRevision = (records = 3): fc.Arbitrary<Revision> =>
  fc
    .record({
      record: fc.nat(records - 1),
      ms: fc.nat(6),
      count: fc.nat(1),
      device: fc.nat(2),
      prev: fc.option(fc.nat(6)),
      word: fc.constantFrom('a', 'b'),
      state: fc.constantFrom('kept', 'kept', 'kept', 'deleted', 'erased'),
    })
    .map(({ record, ms, count, device, prev, word, state }) =>
      sealRevision(
        {
          id: idOf(record),
          kind: 'run',
          author: idOf(100 + device),
          sv: 1,
          body: state === 'kept' ? { word } : null,
          ...(state !== 'kept' && { deleted: true as const }),
          ...(state === 'erased' && { erased: true as const }),
        },
        stampAt(1000 + ms, count, device),
        prev === null ? null : stampAt(1000 + prev),
      ),
    );
