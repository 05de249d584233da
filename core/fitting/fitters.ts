/** Who tried what on in a session, and which of a person's trials speaks for them. */
import { fitPlaces, type FitPlace } from '../foot/index.ts';
import type { Fit, FitTrial, Foot, HeelSlip, RecordId, RecordOf } from '../records/index.ts';

export type TrialRecord = RecordOf<'fit-trial'>;

/** The foot that is looked at; `both`: of the two the one that is further from right. */
export type FeetLooked = Foot | 'both';

/** A member by their id, somebody else by their code in the session; whoever said neither is a person of their own. */
export const fitterOf = ({ body, revision }: TrialRecord): string =>
  body.fitter !== undefined ? `code ${body.fitter}` : (body.tester ?? revision.id);

export interface Answer {
  readonly fit: Fit;
  /** As estimated, never negative; null: not said. */
  readonly mm: number | null;
}

const further = (a: Answer, b: Answer): Answer => {
  if (a.fit === 'right' || b.fit === 'right') return a.fit === 'right' ? b : a;
  return (b.mm ?? 0) > (a.mm ?? 0) ? b : a;
};

/** What a person said of a place; of one foot, what they said of both where they did not set it apart. Null: nothing. */
export const answerOf = (
  { standing }: Pick<FitTrial, 'standing'>,
  place: FitPlace,
  foot: FeetLooked,
): Answer | null => {
  const of = (which: Foot | undefined): Answer | null => {
    // The last one, where another app wrote two.
    const said = standing.findLast((one) => one.place === place && one.foot === which);
    return said ? { fit: said.fit, mm: said.fit === 'right' ? null : (said.mm ?? null) } : null;
  };
  const both = of(undefined);
  if (foot !== 'both') return of(foot) ?? both;
  const [left, right] = [of('left') ?? both, of('right') ?? both];
  return left && right ? further(left, right) : (left ?? right);
};

const slipRank: Readonly<Record<HeelSlip, number>> = { stays: 0, lifts: 1, 'slips-out': 2 };

/** How the heel held while walking; of both feet the one that held less. Null: not said. */
export const slipOf = ({ heel }: Pick<FitTrial, 'heel'>, foot: FeetLooked): HeelSlip | null => {
  const own = (heel ?? []).filter(
    (one) => foot === 'both' || one.foot === undefined || one.foot === foot,
  );
  const ofFoot = own.filter((one) => one.foot !== undefined);
  const counted = foot !== 'both' && ofFoot.length > 0 ? ofFoot : own;
  return counted.reduce<HeelSlip | null>(
    (worst, { slip }) => (worst === null || slipRank[slip] > slipRank[worst] ? slip : worst),
    null,
  );
};

/** How many places are off, those with an estimate weighing by it. */
const misfit = (body: FitTrial): readonly [isLengthOff: number, off: number, mm: number] => {
  const answers = fitPlaces.map((place) => answerOf(body, place, 'both'));
  const off = answers.filter((one) => one !== null && one.fit !== 'right');
  return [
    answers[0] && answers[0].fit === 'right' ? 0 : 1,
    off.length,
    off.reduce((sum, one) => sum + (one?.mm ?? 0), 0),
  ];
};

const compareMisfit = (a: TrialRecord, b: TrialRecord): number => {
  const other = misfit(b.body);
  for (const [at, one] of misfit(a.body).entries()) {
    const difference = one - (other[at] as number);
    if (difference !== 0) return difference;
  }
  // Of two that fit alike the later one.
  return a.revision.stamp < b.revision.stamp ? 1 : -1;
};

export interface Fitter {
  /** {@link fitterOf} */
  readonly key: string;
  readonly tester: RecordId | null;
  readonly code: string | null;
  /** In the pair that fits best: the length first, then the fewest places off, then the fewest millimetres. */
  readonly best: TrialRecord;
  /** The latest in each pair, as they were written. */
  readonly trials: readonly TrialRecord[];
}

/** Every person of some trials with the trial that speaks for them, members first as they came, then by code. */
export const fittersIn = (trials: readonly TrialRecord[]): readonly Fitter[] => {
  const inTime = [...trials].sort((a, b) => (a.revision.stamp < b.revision.stamp ? -1 : 1));
  const people = new Map<string, Map<RecordId, TrialRecord>>();
  for (const trial of inTime) {
    const key = fitterOf(trial);
    const own = people.get(key) ?? new Map<RecordId, TrialRecord>();
    own.set(trial.body.pair, trial);
    people.set(key, own);
  }
  return [...people]
    .map(([key, byPair]): Fitter => {
      const own = [...byPair.values()];
      const best = own.reduce((a, b) => (compareMisfit(a, b) <= 0 ? a : b));
      const code = best.body.fitter ?? null;
      return {
        ...{ key, best, trials: own, code },
        tester: code === null ? (best.body.tester ?? null) : null,
      };
    })
    .sort((a, b) => Number(a.code !== null) - Number(b.code !== null) || byCode(a.code, b.code));
};

const byCode = (a: string | null, b: string | null): number =>
  a === null || b === null ? 0 : a.localeCompare(b, 'en', { numeric: true });

/** As long as the code of a person may be, less the number after it. */
const LONGEST_PREFIX = 9;

/**
 * A code for the next person without a membership: `T01-1`, `T01-2` … It begins with whose phone it is, because phones
 * without a network must not give two people the same one.
 */
export const nextFitterCode = (
  trials: readonly Pick<TrialRecord, 'body'>[],
  phone: string,
): string => {
  const taken = new Set(trials.map(({ body }) => body.fitter));
  const prefix = phone.slice(0, LONGEST_PREFIX);
  let at = 1;
  while (taken.has(`${prefix}-${at}`)) at++;
  return `${prefix}-${at}`;
};
