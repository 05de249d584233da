/**
 * Does the panel tell rounds apart, and by how much does one score move from day to day?
 *
 * Rows are rounds, columns testers, each the mean of at least two sessions (common practice, no source): the
 * intraclass correlations of Shrout PE & Fleiss JL, Psychol Bull 1979;86:420-428. What moves within a tester
 * and a pair is the error of measurement.
 *
 * Agreement is shown where the interval lies above 0. An estimate of 0 or below shows none: analysis of variance gives
 * such ones by chance where rounds hardly differ.
 */
import type { RecordId } from '../records/index.ts';
import {
  groupBy,
  intraclassCorrelations,
  repeatability,
  type Icc,
  type Repeatability,
} from '../statistics/index.ts';

/** One comfort score after wearing. */
export interface PanelScore {
  readonly tester: RecordId;
  readonly round: RecordId;
  readonly pair: RecordId;
  /** 0 to 100. */
  readonly score: number;
}

export interface PanelAgreement {
  /** Rounds and testers that are compared: every one of these testers scored every one of these rounds. */
  readonly rounds: readonly RecordId[];
  readonly testers: number;
  /** One tester's score, absolute; one tester's after the tester's own level is taken off; the panel's mean. */
  readonly one: Icc;
  readonly oneLevelled: Icc;
  readonly panel: Icc;
}

export type AgreementAnswer =
  | { readonly ok: true; readonly agreement: PanelAgreement }
  /**
   * `few`: no two testers with two sessions in each of two rounds; `same`: no tester's score differs from round to
   * round; `alike`: all testers' scores move from round to round by exactly the same, so that nothing says how far
   * that is chance.
   */
  | { readonly ok: false; readonly why: 'few' | 'same' | 'alike' };

/** Sessions of a tester in a round before the mean of them counts. Common practice, no source. */
export const LEAST_SESSIONS = 2;
/** All sets of so many rounds are tried for the widest comparison; beyond, the latest of them. */
const MOST_ROUNDS = 12;

const mean = (scores: readonly PanelScore[]): number =>
  scores.reduce((sum, { score }) => sum + score, 0) / scores.length;

/**
 * @param rounds all rounds, the latest last
 */
export const panelAgreement = (
  scores: readonly PanelScore[],
  rounds: readonly RecordId[],
): AgreementAnswer => {
  const considered = rounds.slice(-MOST_ROUNDS);
  const testers = [...groupBy(scores, ({ tester }) => tester)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, own]) => {
      const byRound = groupBy(own, ({ round }) => round);
      return considered.map((round) => {
        const sessions = byRound.get(round) ?? [];
        return sessions.length >= LEAST_SESSIONS ? mean(sessions) : null;
      });
    });
  const masks = testers.map((means) =>
    means.reduce((mask: number, value, at) => (value === null ? mask : mask | (1 << at)), 0),
  );
  // The rounds and testers that leave most degrees of freedom for the error.
  let best = { set: 0, freedom: 0 };
  for (let set = 1; set < 1 << considered.length; set++) {
    const size = considered.filter((_, at) => (set >> at) & 1).length;
    const who = masks.filter((mask) => (mask & set) === set).length;
    const freedom = (size - 1) * (who - 1);
    if (freedom > best.freedom) best = { set, freedom };
  }
  if (best.freedom === 0) return { ok: false, why: 'few' };
  const chosen = considered.flatMap((round, at) => ((best.set >> at) & 1 ? [{ round, at }] : []));
  const judges = testers.filter((_, at) => ((masks[at] ?? 0) & best.set) === best.set);
  const icc = intraclassCorrelations(chosen.map(({ at }) => judges.map((means) => means[at] ?? 0)));
  if (!icc) return { ok: false, why: 'same' };
  const { between, error } = icc.meanSquares;
  if (error === 0) return { ok: false, why: between > 0 ? 'alike' : 'same' };
  return {
    ok: true,
    agreement: {
      rounds: chosen.map(({ round }) => round),
      testers: judges.length,
      one: icc.single2,
      oneLevelled: icc.single3,
      panel: icc.mean2,
    },
  };
};

/** What a correlation says of agreement: `none`, the estimate is not above 0; `open`, its interval reaches 0. */
export const agreementShown = ({ icc, lower }: Icc): 'none' | 'open' | 'shown' =>
  icc <= 0 ? 'none' : lower <= 0 ? 'open' : 'shown';

/** How far a tester's score in the same pair moves from session to session; null without repeated sessions. */
export const sessionError = (scores: readonly PanelScore[]): Repeatability | null =>
  repeatability(
    [...groupBy(scores, ({ tester, pair }) => `${tester} ${pair}`).values()].map((sessions) =>
      sessions.map(({ score }) => score),
    ),
  );
