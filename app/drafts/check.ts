/**
 * A bench check as it is typed: a new one, or the correction of one that was saved. Pure. What is not touched stays as
 * it was saved, to the second and to the metre, and so do fields that this version does not know.
 */
import {
  editBody,
  type BenchCheck,
  type Reading,
  type RecordId,
} from '../../core/records/index.ts';
import type { Metres } from '../../core/units/index.ts';
import { toInstant, toLocalMinute } from '../parts/instant.ts';
import { gaugesOf, kindKey, type Gauges } from './check-gauges.ts';
import {
  emptyReading,
  isTyped,
  readCircumstances,
  readingsOf,
  type CircumstanceField,
  type ReadingForm,
  type WrongNumber,
  type WrongRow,
} from './check-readings.ts';
import { typedLine } from './typed.ts';

export interface CheckDraft {
  readonly pair: RecordId | '';
  /** As `datetime-local` gives it, in the time of the device. */
  readonly at: string;
  /** Distance on the pair, km; empty: from the logged runs. */
  readonly km: string;
  readonly room: string;
  readonly rested: string;
  readonly operator: string;
  /** By kind of reading; empty in a correction: each reading keeps its own. */
  readonly gauges: Gauges;
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
  gauges: {},
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
  gauges: gaugesOf(check.readings),
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
  | ({ readonly what: 'number' } & WrongNumber<CircumstanceField>)
  | ({ readonly what: 'row' } & WrongRow);

/** A reading as typed over the one it was filled with: what the form does not show is kept. */
const readingOver = (
  typed: Reading,
  source: Reading | undefined,
  keeps: { readonly gauge: boolean; readonly method: boolean },
): Reading => {
  if (!source) return typed;
  const { gauge, method, uncertainty: _uncertainty, loadN: _loadN, ...rest } = source;
  const keepsGauge = keeps.gauge && kindKey(typed) === kindKey(source);
  return {
    ...rest,
    ...typed,
    ...(keepsGauge && gauge !== undefined && { gauge }),
    ...(keeps.method && method !== undefined && { method }),
  };
};

const troublesOf = (
  draft: CheckDraft,
  atMs: number,
  numbers: readonly WrongNumber<CircumstanceField>[],
  { readings, wrong }: ReturnType<typeof readingsOf>,
): readonly CheckTrouble[] => [
  ...(draft.pair === '' ? [{ what: 'missing', field: 'pair' } as const] : []),
  ...(Number.isNaN(atMs) ? [{ what: 'missing', field: 'at' } as const] : []),
  ...numbers.map((one) => ({ what: 'number', ...one }) as const),
  ...wrong.map((one) => ({ what: 'row', ...one }) as const),
  ...(readings.length + wrong.length === 0 ? [{ what: 'missing', field: 'value' } as const] : []),
];

type Typed = { readonly check: BenchCheck } | { readonly troubles: readonly CheckTrouble[] };

/**
 * The check as it would be saved, or everything that is wrong with it.
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
  const same = (field: 'at' | 'km' | 'method') => start?.[field] === draft[field];
  const { pair } = draft;
  const atMs = new Date(draft.at).getTime();
  const typed = readCircumstances(draft.arrival ? { ...draft, km: '' } : draft);
  const read = readingsOf(draft.readings, draft);
  const troubles = troublesOf(draft, atMs, typed.wrong, read);
  if (pair === '' || troubles.length > 0) return { troubles };
  const rows = draft.readings.filter(isTyped);
  const { distanceM, temperatureC, restedH, operator } = typed.said;
  const said = {
    project: before?.project ?? project,
    pair,
    at: before && same('at') ? before.at : toInstant(atMs),
    distanceM: draft.arrival ? carriedM : before && same('km') ? before.distanceM : distanceM,
    temperatureC,
    restedH,
    operator,
    words: typedLine(draft.words),
    readings: read.readings.map((reading, at) => {
      const of = rows[at]?.of;
      const kind = kindKey(reading);
      return readingOver(reading, of === undefined ? undefined : before?.readings[of], {
        gauge: start?.gauges[kind] === draft.gauges[kind],
        method: same('method'),
      });
    }),
    photos: draft.photos.length > 0 ? [...draft.photos] : undefined,
  };
  // Of a new check `editBody` only leaves out what is undefined.
  return {
    check: editBody<'bench-check'>(before ?? ({} as BenchCheck), said),
  };
};
