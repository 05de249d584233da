/** How do the testers' feet fit the lasts that they wear, and do they stand for the feet that the brief is for? */
import type { RecordId, Tester } from '../records/index.ts';
import {
  asymmetryOf,
  coverageOf,
  fitOf,
  lastAt,
  mondopointOf,
  type Asymmetry,
  type Coverage,
  type FootFit,
  type MondopointSize,
} from '../rounds/index.ts';
import type { Millimetres } from '../units/index.ts';
import { byCode } from './by-code.ts';
import type { ProjectLog } from './project-log.ts';

export interface FeetInPair {
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly sizeMm: Millimetres;
  /** Null: no last is noted for the round. */
  readonly left: FootFit | null;
  readonly right: FootFit | null;
}

export interface TesterFeet extends Pick<Tester, 'footLengthMm' | 'footWidthMm' | 'ballGirthMm'> {
  readonly tester: RecordId;
  readonly code: string;
  readonly asymmetry: Asymmetry;
  /** Size of the longer foot in steps of 5 and of 7.5 mm; null where no length was measured. */
  readonly size: { readonly by5: MondopointSize; readonly by7half: MondopointSize } | null;
  /** The pairs that the tester holds or held, by round and code. */
  readonly pairs: readonly FeetInPair[];
}

export interface FeetLook {
  /** Who holds or held a pair or logged a run, by code. */
  readonly testers: readonly TesterFeet[];
  /** Of the longer and of the wider foot; null where the brief names no such range. */
  readonly length: Coverage | null;
  readonly width: Coverage | null;
}

const longer = (both: { readonly left: number; readonly right: number } | undefined) =>
  both === undefined ? null : Math.max(both.left, both.right);

/** Looks at the feet of a project's testers. */
export const lookAtFeet = ({
  project,
  rounds,
  pairs,
  spans,
  counted,
  records,
}: ProjectLog): FeetLook => {
  const lasts = new Map(rounds.map(({ body, revision }) => [revision.id, body.last]));
  const orderOf = new Map(rounds.map(({ body, revision }) => [revision.id, body.order]));
  const held = new Map<RecordId, Set<RecordId>>();
  for (const { tester, pair } of [...spans, ...counted])
    held.set(tester, (held.get(tester) ?? new Set()).add(pair));
  const testers = records.tester
    .filter(({ revision }) => held.has(revision.id))
    .map(({ body, revision }): TesterFeet => {
      const lengthMm = longer(body.footLengthMm);
      const own = pairs
        .filter(({ id }) => held.get(revision.id)?.has(id))
        .map(({ id, record: { body: pair } }) => ({ ...pair, id }))
        .sort((a, b) => (orderOf.get(a.round) ?? 0) - (orderOf.get(b.round) ?? 0) || byCode(a, b));
      return {
        tester: revision.id,
        code: body.code,
        ...(body.footLengthMm && { footLengthMm: body.footLengthMm }),
        ...(body.footWidthMm && { footWidthMm: body.footWidthMm }),
        ...(body.ballGirthMm && { ballGirthMm: body.ballGirthMm }),
        asymmetry: asymmetryOf(body),
        size:
          lengthMm === null
            ? null
            : { by5: mondopointOf(lengthMm, 5), by7half: mondopointOf(lengthMm, 7.5) },
        pairs: own.map(({ id, round, sizeMm }): FeetInPair => {
          const last = lasts.get(round);
          const at = last && lastAt(last, sizeMm);
          return {
            pair: id,
            round,
            sizeMm,
            left: at ? fitOf(body, 'left', at) : null,
            right: at ? fitOf(body, 'right', at) : null,
          };
        }),
      };
    })
    .sort(byCode);
  const { feet } = project.brief;
  const cover = (
    range: readonly [number, number] | undefined,
    of: (one: TesterFeet) => number | null,
  ) => (range ? coverageOf(range, testers.map(of)) : null);
  return {
    testers,
    length: cover(feet?.lengthMm, ({ footLengthMm }) => longer(footLengthMm)),
    width: cover(feet?.widthMm, ({ footWidthMm }) => longer(footWidthMm)),
  };
};
