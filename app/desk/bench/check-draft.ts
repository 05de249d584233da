/**
 * A bench check as it is typed: a new one, or the correction of one that was saved. Pure. What is not touched stays as
 * it was saved, to the second and to the metre, and so do fields that this version does not know.
 */
import {
  canonicalJson,
  editBody,
  ranges,
  type BenchCheck,
  type CorrectedBy,
  type Decision,
  type Range,
  type Reading,
  type RecordId,
  type RecordOf,
  type Stamp,
} from '../../../core/records/index.ts';
import { celsius, toMetres, type Metres } from '../../../core/units/index.ts';
import { toInstant, toLocalMinute } from '../../parts/instant.ts';
import { typedIn } from '../in-range.ts';
import {
  emptyReading,
  isTyped,
  numberOf,
  readingsOf,
  type ReadingForm,
  type WrongRow,
} from './bench-rows.ts';

export interface CheckDraft {
  readonly pair: RecordId | '';
  /** As `datetime-local` gives it, in the time of the device. */
  readonly at: string;
  /** Distance on the pair, km; empty: from the logged runs. */
  readonly km: string;
  readonly room: string;
  readonly rested: string;
  readonly operator: string;
  /** Of all readings; empty in a correction: each keeps its own. */
  readonly gauge: string;
  readonly method: string;
  readonly words: string;
  /** Before the first run: the distance is what was on the pair before the test. */
  readonly arrival: boolean;
  readonly readings: readonly ReadingForm[];
  readonly photos: readonly string[];
}

export const newCheckDraft = (nowMs: number): CheckDraft => ({
  pair: '',
  at: toLocalMinute(nowMs),
  km: '',
  room: '',
  rested: '',
  operator: '',
  gauge: '',
  method: '',
  words: '',
  arrival: false,
  readings: [emptyReading],
  photos: [],
});

const textOf = (value: number | undefined): string => (value === undefined ? '' : String(value));

/** What all readings have in common; empty where they differ. */
const common = (values: readonly (string | undefined)[]): string => {
  const [first] = values;
  return first !== undefined && values.every((one) => one === first) ? first : '';
};

/** The form filled with a check that was saved. */
export const checkDraftOf = (check: BenchCheck): CheckDraft => ({
  pair: check.pair,
  at: toLocalMinute(Date.parse(check.at)),
  km: textOf(check.distanceM === undefined ? undefined : check.distanceM / 1000),
  room: textOf(check.temperatureC),
  rested: textOf(check.restedH),
  operator: check.operator ?? '',
  gauge: common(check.readings.map(({ gauge }) => gauge)),
  method: common(check.readings.map(({ method }) => method)),
  words: check.words ?? '',
  arrival: false,
  readings: check.readings.map(
    ({ measure, site, foot, unit, value, uncertainty, loadN }, of): ReadingForm => ({
      measure,
      site,
      foot,
      unit,
      value: String(value),
      uncertainty: textOf(uncertainty),
      load: textOf(loadN),
      of,
    }),
  ),
  photos: check.photos ?? [],
});

/** What is wrong with the draft, for the form to say at the field. */
export type CheckTrouble =
  | { readonly what: 'missing'; readonly field: 'pair' | 'at' | 'value' }
  | {
      readonly what: 'number';
      readonly field: 'km' | 'room' | 'rested';
      /** Null: no number. */
      readonly value: number | null;
      readonly range: Range;
    }
  | { readonly what: 'row'; readonly wrong: WrongRow };

const inKm = typedIn(ranges.distanceM, 'km', 1 / 1000);

const numberTroubleOf = (draft: CheckDraft): CheckTrouble | null => {
  const fields = [
    ['km', draft.arrival ? '' : draft.km, inKm],
    ['room', draft.room, ranges.temperatureC],
    ['rested', draft.rested, ranges.restedH],
  ] as const;
  for (const [field, text, range] of fields) {
    const value = numberOf(text);
    if (value === undefined) continue;
    if (value === null || value < range.least || value > range.most)
      return { what: 'number', field, value, range };
  }
  return null;
};

const line = (text: string): string | undefined => (text.trim() === '' ? undefined : text.trim());

/** A reading as typed over the one it was filled with: what the form does not show is kept. */
const readingOver = (
  typed: Reading,
  source: Reading | undefined,
  keeps: { readonly gauge: boolean; readonly method: boolean },
): Reading => {
  if (!source) return typed;
  const { gauge, method, uncertainty: _uncertainty, loadN: _loadN, ...rest } = source;
  return {
    ...rest,
    ...typed,
    ...(keeps.gauge && gauge !== undefined && { gauge }),
    ...(keeps.method && method !== undefined && { method }),
  };
};

type Typed = { readonly check: BenchCheck } | { readonly trouble: CheckTrouble };

/**
 * The check as it would be saved, or the first thing that is wrong with it.
 * @param carriedM what was on the pair before the test
 * @param before the check that is corrected; null: a new one
 */
export const typedCheck = (
  draft: CheckDraft,
  project: RecordId,
  carriedM: Metres,
  before: BenchCheck | null,
): Typed => {
  const start = before && checkDraftOf(before);
  const same = (field: 'at' | 'km' | 'gauge' | 'method') => start?.[field] === draft[field];
  const { pair } = draft;
  if (pair === '') return { trouble: { what: 'missing', field: 'pair' } };
  const atMs = new Date(draft.at).getTime();
  if (Number.isNaN(atMs)) return { trouble: { what: 'missing', field: 'at' } };
  const trouble = numberTroubleOf(draft);
  if (trouble) return { trouble };
  const rows = draft.readings.filter(isTyped);
  const read = readingsOf(rows, draft);
  if ('wrong' in read) return { trouble: { what: 'row', wrong: read.wrong } };
  if (read.readings.length === 0) return { trouble: { what: 'missing', field: 'value' } };
  const [km, room, rested] = [draft.km, draft.room, draft.rested].map(numberOf);
  const keeps = { gauge: same('gauge'), method: same('method') };
  const said = {
    project: before?.project ?? project,
    pair,
    at: before && same('at') ? before.at : toInstant(atMs),
    distanceM: draft.arrival
      ? carriedM
      : before && same('km')
        ? before.distanceM
        : typeof km === 'number'
          ? toMetres(km, 'km')
          : undefined,
    temperatureC: typeof room === 'number' ? celsius(room) : undefined,
    restedH: rested ?? undefined,
    operator: line(draft.operator),
    words: line(draft.words),
    readings: read.readings.map((reading, at) => {
      const of = rows[at]?.of;
      return readingOver(reading, of === undefined ? undefined : before?.readings[of], keeps);
    }),
    photos: draft.photos.length > 0 ? [...draft.photos] : undefined,
  };
  // Of a new check `editBody` only leaves out what is undefined.
  return {
    check: editBody<'bench-check'>(before ?? ({} as BenchCheck), said),
  };
};

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
