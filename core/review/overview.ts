/**
 * How does a project stand, and what should its lead do next? Every step follows from what is in the log;
 * the order is: who may be hurt, what stops the test, what decides the shoe, what keeps the log whole.
 * The days and counts below are judgement, no source.
 */
import type { CellName } from '../complaints/index.ts';
import { isWithin } from '../mileage/index.ts';
import type { RecordId, StructuredChange } from '../records/index.ts';
import { acceptedOf, proposalsTo } from '../talk/index.ts';
import type { HoldWord } from '../wear/index.ts';
import type { Metres } from '../units/index.ts';
import { changeArrivals } from './change-arrivals.ts';
import { isProven } from './closer-look.ts';
import { openDamage } from './damage-findings.ts';
import { doubtsOf, RECENT_DAYS, unaskedDoubts } from './doubts.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import type { Quiet, Review, RoundReview } from './review-types.ts';
import { silentOf, type Silent } from './silence.ts';
import { thanksDue } from './thanks-due.ts';
import type { Verdict } from './verdict.ts';

/** Asked runs of the carrying round before its finding is asked about. */
export const RUNS_FOR_OUTCOME = 8;
const DAY_MS = 86_400_000;

/** What to do; `count` says how many things it is about. */
export type NextStep =
  /** Pain that calls for the caution, that is not over, and that no lead has answered. */
  | {
      readonly step: 'ask-about-pain';
      readonly testers: readonly RecordId[];
      readonly count: number;
    }
  | { readonly step: 'look-at-damage'; readonly pairs: readonly RecordId[]; readonly count: number }
  /** Testers who hold a withdrawn pair and have not read the notice. */
  | {
      readonly step: 'reach-about-stop-use';
      readonly testers: readonly RecordId[];
      readonly count: number;
    }
  /** Runs and readings that wait for the lead's decision. */
  | { readonly step: 'decide-what-counts'; readonly count: number }
  | { readonly step: 'add-round' | 'add-pairs' | 'add-testers'; readonly count: number }
  | { readonly step: 'hand-out'; readonly pairs: readonly RecordId[]; readonly count: number }
  /** Pairs of a round with a blueprint that nobody measured yet; one step a round. */
  | {
      readonly step: 'measure-on-arrival';
      readonly round: RecordId;
      readonly pairs: readonly RecordId[];
      readonly count: number;
    }
  /** Testers of whom nothing came yet. */
  | {
      readonly step: 'set-up-phones';
      readonly testers: readonly RecordId[];
      readonly count: number;
    }
  | {
      readonly step: 'ask-the-silent';
      readonly testers: readonly RecordId[];
      readonly count: number;
    }
  /** The whole test went quiet: `testers` fell silent together. */
  | ({ readonly step: 'ask-all'; readonly count: number } & Quiet)
  /** Proven complaints of the latest round without a finding. */
  | { readonly step: 'write-findings'; readonly cells: readonly CellName[]; readonly count: number }
  /** Findings with answers of specialists that wait for the lead; `count` of the answers. */
  | {
      readonly step: 'answer-proposals';
      readonly findings: readonly RecordId[];
      readonly count: number;
    }
  /** Open findings, and those with an accepted answer, that no round shall carry yet. */
  | {
      readonly step: 'assign-findings';
      readonly findings: readonly RecordId[];
      readonly count: number;
    }
  /** Damage that no finding answers. */
  | {
      readonly step: 'answer-damage';
      readonly damages: readonly RecordId[];
      readonly count: number;
    }
  /** A change in figures of which nobody can say whether it is in the shoe; one step each. */
  | {
      readonly step: 'measure-change';
      readonly round: RecordId;
      /** Its place in the round's list. */
      readonly at: number;
      readonly change: StructuredChange;
      /** New pairs that it was not read on yet. */
      readonly pairs: readonly RecordId[];
      readonly count: number;
    }
  /** Findings whose round has been run in, without an outcome. */
  | {
      readonly step: 'judge-findings';
      readonly findings: readonly RecordId[];
      readonly count: number;
    }
  /** Findings whose testers can be told what came of their reports; `count` says how many testers. */
  | {
      readonly step: 'thank-testers';
      readonly findings: readonly RecordId[];
      readonly count: number;
    }
  | { readonly step: 'set-limits'; readonly count: number }
  /** What the verdict does not know yet, in the latest round. */
  | { readonly step: 'settle-verdict'; readonly count: number }
  /** What a ready-made question could settle and nobody asked yet, odd runs and silence among it. */
  | { readonly step: 'ask-testers'; readonly testers: readonly RecordId[]; readonly count: number }
  /** Recent runs that look wrong, each counted once. */
  | {
      readonly step: 'ask-about-odd-runs';
      readonly testers: readonly RecordId[];
      readonly count: number;
    };

export interface RoundState extends Pick<RoundReview, 'id' | 'name' | 'order' | 'stage'> {
  readonly pairs: number;
  /** Pairs that somebody has now. */
  readonly out: number;
  readonly runs: number;
  readonly distanceM: Metres;
  /** Farthest pair. */
  readonly farthestM: Metres;
  /** Proven complaints. */
  readonly recurs: readonly CellName[];
  /** Whether the answers to the question after pain prove it, for one tester or across testers. */
  readonly painRecurs: boolean;
  readonly word: HoldWord;
}

export interface Overview {
  /** Latest first. */
  readonly rounds: readonly RoundState[];
  /** Longest silent first. */
  readonly silent: readonly Silent[];
  /** Most urgent first. */
  readonly next: readonly NextStep[];
}

/** Runs that no figure reads, for who logged one was not silent. */
const runsOutside = ({ standing: { waiting, decided } }: Pick<ProjectLog, 'standing'>) =>
  [...waiting, ...decided].filter((one) => one.about === 'run');

/**
 * Testers of whom nothing came yet: no run, no answer. Whether they joined is known to the hub alone. Those who have
 * pairs of other projects only are theirs to ask about; a log without some pairs lacks what was logged of them.
 */
export const unheardOf = ({ id, records, without, standing }: ProjectLog): RecordId[] => {
  if (without !== null) return [];
  const heard = new Set([
    ...(['run', 'ranking', 'damage-report', 'acknowledgement'] as const).flatMap((kind) =>
      records[kind].map(({ body }) => body.tester),
    ),
    ...runsOutside({ standing }).map(({ tester }) => tester),
  ]);
  const placed = new Set(records['hand-out'].map(({ body }) => body.tester));
  const here = new Set(ownRecords(records['hand-out'], id).map(({ body }) => body.tester));
  return records.tester
    .map(({ revision }) => revision.id)
    .filter((tester) => !heard.has(tester) && (here.has(tester) || !placed.has(tester)));
};

const roundState = (log: ProjectLog, review: Review, round: RoundReview, word: HoldWord) => {
  const own = review.pairs.filter((pair) => pair.round === round.id);
  return {
    id: round.id,
    name: round.name,
    order: round.order,
    stage: round.stage,
    pairs: log.pairs.filter((pair) => pair.round === round.id).length,
    out: own.filter(({ holder }) => holder !== null).length,
    runs: round.size.runs,
    distanceM: round.size.distanceM,
    farthestM: own.reduce<Metres>(
      (most, { totalM }) => (totalM > most ? totalM : most),
      0 as Metres,
    ),
    recurs: round.complaints.cells.filter(isProven).map(({ zone, kind }) => ({ zone, kind })),
    painRecurs: round.pain !== null && isProven(round.pain),
    word,
  };
};

/**
 * Which pairs still wait to be measured against the blueprint? Running in them does not settle that: without a first
 * check nobody knows whether a complaint is the design's or the sample's. Withdrawn pairs are not asked for.
 * @returns one step for each round with such pairs, the latest round first
 */
const arrivalSteps = (log: ProjectLog, review: Review): NextStep[] => {
  const withdrawn = new Set(review.pairs.flatMap(({ id, stopUse }) => (stopUse ? [id] : [])));
  return [...log.rounds].reverse().flatMap(({ revision: { id: round }, body }): NextStep[] => {
    if (body.blueprint.length === 0) return [];
    const pairs = log.pairs
      .filter((pair) => pair.round === round && pair.checks.length === 0 && !withdrawn.has(pair.id))
      .map(({ id }) => id);
    return [{ step: 'measure-on-arrival', round, pairs, count: pairs.length }];
  });
};

/** Changes in figures that are not measured, or on too few pairs, where new pairs are left to measure. */
const changeSteps = (log: ProjectLog): NextStep[] =>
  [...log.rounds].reverse().flatMap(({ revision: { id: round } }) =>
    changeArrivals(log, round).flatMap((arrival, at): NextStep[] => {
      const place = arrival?.places.find(({ word }) => word === 'open' || word === 'not-measured');
      if (!arrival || !place || (arrival.word !== 'open' && arrival.word !== 'not-measured'))
        return [];
      const pairs = place.unread;
      return [
        { step: 'measure-change', round, at, change: arrival.change, pairs, count: pairs.length },
      ];
    }),
  );

type Asked = Pick<Review['pains'][number], 'at' | 'pair' | 'tester' | 'stands' | 'answer'>;

const uniqueOf = <T>(list: readonly T[]): T[] => [...new Set(list)];

/**
 * How the project stands at `log.nowMs`.
 * @param verdicts one for each round of the review
 */
export const overviewOf = (
  log: ProjectLog,
  review: Review,
  verdicts: readonly Verdict[],
): Overview => {
  const { records, nowMs } = log;
  const latest = review.rounds.at(-1);
  const ofLatest = review.pairs.filter(({ round }) => round === latest?.id);
  const words = new Map(verdicts.map(({ round, word }) => [round, word]));
  const isRecent = (at: string) => nowMs - Date.parse(at) <= RECENT_DAYS * DAY_MS;
  const findings = ownRecords(records.finding, log.id);
  const silent = silentOf(log);
  const unheard = unheardOf(log);
  // Who never logged a run is asked about that, not about the days since.
  const { quiet } = review;
  const fellSilent = silent.filter(
    ({ tester }) => !unheard.includes(tester) && !quiet?.testers.includes(tester),
  );
  const asked = new Map(review.rounds.map(({ id, complaints }) => [id, complaints.asked.runs]));

  const held = new Set(
    log.spans
      .filter((span) => isWithin(span, nowMs))
      .map(({ pair, tester }) => `${pair} ${tester}`),
  );
  // Whoever still has the pair waits for an answer, however long ago it was.
  const awaitsAnswer = ({ at, pair, tester, stands, answer }: Asked): boolean =>
    stands && answer === null && (isRecent(at) || held.has(`${pair} ${tester}`));
  const pains = review.pains.filter(awaitsAnswer);
  const damages = review.damages.filter(
    (one) => awaitsAnswer(one) && !review.pairs.find(({ id }) => id === one.pair)?.stopUse,
  );
  const broken = openDamage(log);
  const odd = review.oddities.filter(({ startedAt }) => isRecent(startedAt));
  const read = new Set(records.acknowledgement.map(({ body }) => `${body.stopUse} ${body.tester}`));
  const unread = review.pairs.flatMap(({ holder, stopUse }) =>
    holder !== null && stopUse && !read.has(`${stopUse.id} ${holder}`) ? [holder] : [],
  );
  const everOut = new Set(log.spans.map(({ pair }) => pair));
  const waiting = ofLatest.filter(({ id, stopUse }) => !everOut.has(id) && !stopUse);
  const proven = latest?.complaints.cells.filter(isProven) ?? [];
  const unwritten = proven.filter(
    ({ zone, kind }) => !findings.some(({ body }) => body.zone === zone && body.kind === kind),
  );
  const answered = findings
    .filter(({ body }) => body.state !== 'closed' && body.carriedBy === undefined)
    .map((finding) => ({
      finding,
      standing: proposalsTo(finding.revision.id, records.proposal, records['proposal-reply']),
    }))
    .filter(({ standing }) => standing.length > 0);
  const accepted = new Set(
    answered.flatMap(({ finding, standing }) => (acceptedOf(standing) ? [finding] : [])),
  );
  /** Of a finding with an accepted answer the others are settled. */
  const toAnswer = answered.flatMap(({ finding, standing }) =>
    accepted.has(finding)
      ? []
      : standing.flatMap(({ reply }) => (reply === null ? [finding.revision.id] : [])),
  );
  const unassigned = findings.filter(
    (one) => accepted.has(one) || (one.body.state === 'open' && one.body.carriedBy === undefined),
  );
  const unjudged = findings.filter(
    ({ body }) =>
      body.state !== 'closed' &&
      body.outcome === undefined &&
      body.carriedBy !== undefined &&
      (asked.get(body.carriedBy) ?? 0) >= RUNS_FOR_OUTCOME,
  );
  const thanks = thanksDue(log).filter(({ withheld }) => withheld === null);
  const open = verdicts
    .find(({ round }) => round === latest?.id)
    ?.items.filter(({ word }) => word === 'not-known-yet').length;

  const toAsk = unaskedDoubts(doubtsOf(log, review));

  const steps: readonly NextStep[] = [
    {
      step: 'ask-about-pain',
      testers: uniqueOf(pains.map(({ tester }) => tester)),
      count: pains.length,
    },
    {
      step: 'look-at-damage',
      pairs: uniqueOf(damages.map(({ pair }) => pair)),
      count: damages.length,
    },
    { step: 'answer-damage', damages: broken.map(({ id }) => id), count: broken.length },
    { step: 'reach-about-stop-use', testers: uniqueOf(unread), count: uniqueOf(unread).length },
    { step: 'decide-what-counts', count: review.waiting.length },
    { step: 'add-round', count: latest ? 0 : 1 },
    { step: 'add-pairs', count: latest && ofLatest.length === 0 ? 1 : 0 },
    { step: 'add-testers', count: records.tester.length === 0 ? 1 : 0 },
    ...arrivalSteps(log, review),
    ...changeSteps(log),
    { step: 'hand-out', pairs: waiting.map(({ id }) => id), count: waiting.length },
    { step: 'set-up-phones', testers: unheard, count: unheard.length },
    ...(quiet ? [{ step: 'ask-all', count: quiet.testers.length, ...quiet } as const] : []),
    {
      step: 'ask-the-silent',
      testers: fellSilent.map(({ tester }) => tester),
      count: fellSilent.length,
    },
    {
      step: 'write-findings',
      cells: unwritten.map(({ zone, kind }) => ({ zone, kind })),
      count: unwritten.length,
    },
    { step: 'answer-proposals', findings: uniqueOf(toAnswer), count: toAnswer.length },
    {
      step: 'assign-findings',
      findings: unassigned.map(({ revision }) => revision.id),
      count: unassigned.length,
    },
    {
      step: 'judge-findings',
      findings: unjudged.map(({ revision }) => revision.id),
      count: unjudged.length,
    },
    {
      step: 'thank-testers',
      findings: uniqueOf(thanks.map(({ finding }) => finding)),
      count: uniqueOf(thanks.map(({ tester }) => tester)).length,
    },
    { step: 'set-limits', count: log.project.brief.limits.length === 0 ? 1 : 0 },
    { step: 'settle-verdict', count: review.size.runs > 0 ? (open ?? 0) : 0 },
    {
      step: 'ask-testers',
      testers: uniqueOf(toAsk.map(({ tester }) => tester)),
      count: toAsk.length,
    },
    {
      step: 'ask-about-odd-runs',
      testers: uniqueOf(odd.map(({ tester }) => tester)),
      count: uniqueOf(odd.map(({ run }) => run)).length,
    },
  ];
  return {
    rounds: review.rounds
      .map((round) => roundState(log, review, round, words.get(round.id) ?? 'not-known-yet'))
      .reverse(),
    silent,
    next: steps.filter(({ count }) => count > 0),
  };
};
