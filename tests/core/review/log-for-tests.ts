/** A small log for the tests of a review: one project, and whatever records a test adds. */
import { sealRevision, type RecordId, type Revision } from '../../../core/records/index.ts';
import { idOf, stampAt } from '../records/make.ts';

type Fields = Readonly<Record<string, unknown>>;

/** The project that every other record of the log is of. */
export const PROJECT = idOf(1);

/** A record as a lead saved it once. */
export const record = (id: RecordId, kind: string, body: Fields): Revision =>
  sealRevision({ id, kind, author: idOf(9), sv: 1, body: { ...body } }, stampAt(1), null);

/** A record of the project. */
export const own = (id: RecordId, kind: string, body: Fields): Revision =>
  record(id, kind, { project: PROJECT, ...body });

/** The project, 400 km on the road by neutral runners, no limits; with other fields of its brief. */
export const project = (brief: Fields = {}): Revision =>
  record(PROJECT, 'project', {
    name: 'Test',
    brief: {
      runner: 'neutral',
      use: 'tempo',
      surfaces: ['road'],
      distanceM: 400_000,
      allowedRate: { complaint: 0.05, pain: 0.01 },
      limits: [],
      attributes: ['overall'],
      ...brief,
    },
  });

/** A round of first samples, without changes and blueprint unless they are given. */
export const round = (id: RecordId, order: number, more: Fields = {}): Revision =>
  own(id, 'round', {
    name: `R${order}`,
    order,
    stage: 'first-samples',
    changes: [],
    blueprint: [],
    ...more,
  });

/** A pair of 270 mm. */
export const pair = (id: RecordId, of: RecordId, code: string, more: Fields = {}): Revision =>
  own(id, 'pair', { round: of, code, sizeMm: 270, ...more });

/** A blind hand-out. */
export const handOut = (
  id: RecordId,
  of: { readonly pair: RecordId; readonly tester: RecordId },
  from: string,
  more: Fields = {},
): Revision => own(id, 'hand-out', { ...of, from, blind: true, ...more });

/** A run of 10 km whose distance was typed. */
export const run = (
  id: RecordId,
  of: { readonly pair: RecordId; readonly tester: RecordId },
  startedAt: string,
  more: Fields = {},
): Revision =>
  own(id, 'run', { ...of, startedAt, distanceM: 10_000, distanceFrom: 'typed', ...more });
