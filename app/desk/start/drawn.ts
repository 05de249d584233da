/** What a shoe has of each step of its start, as far as a small picture shows it. Pure. */
import type { Brief, RecordId } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import type { Metres, Millimetres } from '../../../core/units/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

export interface DrawnBrief {
  readonly distanceM: Metres;
  /** Of what a new pair has; null: no such limit is set. */
  readonly share: number | null;
  readonly feet: readonly [number, number] | null;
}

export const drawnBrief = ({ distanceM, limits, feet }: Brief): DrawnBrief => ({
  distanceM,
  share: limits.find(({ basis }) => basis === 'share-of-new')?.value ?? null,
  feet: feet?.lengthMm ?? null,
});

export interface DrawnPair {
  readonly code: string;
  readonly sizeMm: Millimetres;
}

export interface DrawnFoot {
  readonly code: string;
  /** Its length; null: not measured. */
  readonly mm: number | null;
  /** In front of it, in its last; absent: without a last, which belongs to the round. */
  readonly room?: number;
}

export interface DrawnPlan {
  /** A pair and its testers, one a period. */
  readonly rows: readonly (readonly string[])[];
  /** First day of each period. */
  readonly days: readonly number[];
}

/** The first few that the shoe has; null: none yet. */
const some = <T>(list: readonly T[], most: number): readonly T[] | null =>
  list.length > 0 ? list.slice(0, most) : null;

const [PLAN_ROWS, PERIODS] = [4, 2] as const;

/** The first hand-outs of the shoe's first pairs, by day; null where there are none. */
export const ownPlan = (
  records: Pick<DeskRecords, 'hand-out' | 'pair' | 'tester'>,
  project: RecordId | null,
): DrawnPlan | null => {
  const own = records['hand-out']
    .map(({ body }) => body)
    .filter((body) => body.project === project)
    .sort((a, b) => Date.parse(a.from) - Date.parse(b.from));
  if (own.length === 0) return null;
  const codeOf = <T extends { readonly body: { readonly code: string } }>(
    list: readonly (T & { readonly revision: { readonly id: RecordId } })[],
  ) => new Map(list.map(({ body, revision }) => [revision.id, body.code]));
  const [pairs, testers] = [codeOf(records.pair), codeOf(records.tester)];
  const byPair = new Map<RecordId, typeof own>();
  for (const one of own) byPair.set(one.pair, [...(byPair.get(one.pair) ?? []), one]);
  const shown = [...byPair].slice(0, PLAN_ROWS);
  const days = Array.from({ length: PERIODS }, (_, period) =>
    Math.min(...shown.flatMap(([, of]) => of[period] ?? []).map(({ from }) => Date.parse(from))),
  ).filter(Number.isFinite);
  return {
    days,
    rows: shown.map(([pair, of]) => [
      pairs.get(pair) ?? '',
      ...of.slice(0, PERIODS).map(({ tester }) => testers.get(tester) ?? ''),
    ]),
  };
};

const [PAIRS, FEET] = [6, 4] as const;

/** The smallest pairs of the shoe; null: none yet. */
export const ownPairs = (
  records: Pick<DeskRecords, 'pair'>,
  project: RecordId | null,
): readonly DrawnPair[] | null =>
  some(
    records.pair
      .map(({ body }) => body)
      .filter((body) => body.project === project)
      .sort((a, b) => a.sizeMm - b.sizeMm || byCode(a, b)),
    PAIRS,
  );

/** The first testers of the group, with the longer of their feet; null: none yet. */
export const ownFeet = (records: Pick<DeskRecords, 'tester'>): readonly DrawnFoot[] | null =>
  some(
    records.tester
      .map(({ body }) => body)
      .sort(byCode)
      .map(({ code, footLengthMm }) => ({
        code,
        mm: footLengthMm ? Math.max(footLengthMm.left, footLengthMm.right) : null,
      })),
    FEET,
  );
