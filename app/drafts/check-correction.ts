/** What the correction of a bench check means for its record, and for what was decided of its readings. Pure. */
import {
  canonicalJson,
  editBody,
  type BenchCheck,
  type CorrectedBy,
  type Decision,
  type Reading,
  type RecordOf,
  type Stamp,
} from '../../core/records/index.ts';

/** The corrected check with who corrected it and why; null where nothing was changed. */
export const correctionOf = (
  before: BenchCheck,
  after: BenchCheck,
  correctedBy: CorrectedBy,
): BenchCheck | null => {
  // Both as they would be sent, so that neither the order of fields nor one left empty counts as a change.
  const bare = ({ correctedBy: _correctedBy, ...rest }: BenchCheck) =>
    canonicalJson(JSON.parse(JSON.stringify(rest)));
  return bare(before) === bare(after) ? null : editBody<'bench-check'>(after, { correctedBy });
};

const isSamePlace = (
  a: Pick<Reading, 'measure' | 'site' | 'foot'> & { unit?: string | undefined },
  b: Reading,
) =>
  a.measure === b.measure &&
  a.site === b.site &&
  a.foot === b.foot &&
  (a.unit ?? b.unit) === b.unit;

/**
 * What was decided about readings that a correction leaves as they were, said anew of the corrected check: a decision
 * holds only for what was judged, and a reading that was set aside must not come back because a note was changed.
 */
export const decisionsKept = (
  decisions: readonly RecordOf<'decision'>[],
  before: Pick<RecordOf<'bench-check'>, 'body' | 'revision'>,
  after: { readonly body: BenchCheck; readonly stamp: Stamp },
): readonly Decision[] => {
  const own = decisions
    .filter(
      ({ body }) =>
        body.record === before.revision.id &&
        body.recordKind === 'bench-check' &&
        body.judged === before.revision.stamp,
    )
    .sort((a, b) => (a.revision.stamp < b.revision.stamp ? -1 : 1));
  return own.flatMap(({ body }): Decision[] => {
    const { reading } = body;
    const valuesIn = (check: BenchCheck) =>
      check.readings
        .filter((one) => !reading || isSamePlace(reading, one))
        .map(({ value }) => value);
    const [was, is] = [valuesIn(before.body), valuesIn(after.body)];
    const kept = was.length === is.length && was.every((value, at) => value === is[at]);
    return kept ? [editBody<'decision'>(body, { judged: after.stamp })] : [];
  });
};

/** The check as it stood before its latest correction, from its history; null where that is not known. */
export const beforeCorrection = (
  revisions: readonly { readonly stamp: string; readonly body: unknown }[],
  at: string,
): unknown => {
  const correctedMs = (body: object): number => {
    const by =
      'correctedBy' in body ? (body.correctedBy as { at?: string } | undefined) : undefined;
    return by?.at === undefined ? -Infinity : Date.parse(by.at);
  };
  const earlier = revisions
    .filter(
      ({ body }) => typeof body === 'object' && body !== null && correctedMs(body) < Date.parse(at),
    )
    .sort((a, b) => (a.stamp < b.stamp ? -1 : 1));
  return earlier.at(-1)?.body ?? null;
};
