/** What does the log say about one project? Puts the rooms' answers together. */
import { answerToPain, callsForCaution, painStands } from '../complaints/index.ts';
import { handOutSpan, type RunOddity } from '../mileage/index.ts';
import {
  damageStands,
  standingReplies,
  type RecordId,
  type RecordOf,
  type Reply,
} from '../records/index.ts';
import { benchSeries } from './bench.ts';
import { byCode } from './by-code.ts';
import { sizeOf } from './evidence-size.ts';
import { reviewPair } from './pair-review.ts';
import { preferencesOf } from './preferences.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import type { LeadAnswer, Review } from './review-types.ts';
import { allComfortAnswers, noComfort, reviewRound } from './round-review.ts';
import { quietOf, silentOf } from './silence.ts';
import { reviewTesters } from './tester-review.ts';

/** Reviews one project. */
export const reviewProject = (log: ProjectLog): Review => {
  const { id, project, nowMs, rounds, pairs, counted, spans, records } = log;
  const orderOfRound = new Map(rounds.map(({ body, revision }) => [revision.id, body.order]));
  const testers = new Map(records.tester.map(({ body, revision }) => [revision.id, body]));
  const stops = ownRecords(records['stop-use'], id);
  const silent = new Map(silentOf(log).map(({ tester, days }) => [tester, days]));
  const replies = standingReplies(records.reply);
  const comfort = rounds.map(({ revision }) =>
    allComfortAnswers(pairs.filter(({ round }) => round === revision.id)),
  );
  return {
    project: { id, name: project.name, brief: project.brief },
    nowMs,
    size: sizeOf(pairs.length, counted),
    groupTesters: records.tester.length,
    rounds: rounds.map((round, at) =>
      reviewRound(round, log, comfort[at] ?? noComfort, comfort[at - 1] ?? noComfort),
    ),
    pairs: pairs
      .map((pair) => reviewPair(pair, log, stops, testers, silent))
      .sort(
        (a, b) =>
          (orderOfRound.get(a.round) ?? 0) - (orderOfRound.get(b.round) ?? 0) || byCode(a, b),
      ),
    testers: reviewTesters(records.tester, spans, counted, silent),
    preferences: preferencesOf(
      ownRecords(records.ranking, id),
      new Map(pairs.map((pair) => [pair.id, pair.round])),
      rounds.map(({ revision }) => revision.id),
      ownRecords(records['hand-out'], id).map((handOut) => ({
        span: handOutSpan(handOut),
        blind: handOut.body.blind,
      })),
    ),
    bench: pairs.flatMap(benchSeries),
    deviations: pairs.flatMap(({ deviations }) => deviations),
    sides: pairs.flatMap(({ sides }) => sides),
    quiet: quietOf(log),
    gauges: log.gauges,
    without:
      log.without
        ?.map(({ body, revision }) => ({ id: revision.id, code: body.code }))
        .sort(byCode) ?? null,
    damages: ownRecords(records['damage-report'], id).map(({ body, revision }) => ({
      id: revision.id,
      pair: body.pair,
      tester: body.tester,
      what: body.what,
      at: body.at,
      words: body.words ?? null,
      photos: body.photos ?? [],
      answer: answerIn(replies.get(revision.id)?.body),
      stands: damageStands(replies.get(revision.id)?.body),
    })),
    pains: painsOf(log, replies),
    ...log.standing,
    oddities: odditiesOf(log),
    leftOut: records.leftOut,
  };
};

const answerIn = (reply: Reply | undefined): LeadAnswer | null =>
  reply?.advice ? { advice: reply.advice, at: reply.at, words: reply.words ?? null } : null;

/** Of every run, whether or not it counts: pain is no figure. One that came a second time is told once. */
const painsOf = (
  { everyRun, oddities }: ProjectLog,
  replies: ReadonlyMap<RecordId, RecordOf<'reply'>>,
): Review['pains'] => {
  const again = new Set(oddities.flatMap(({ why, run }) => (why === 'logged-twice' ? [run] : [])));
  return everyRun
    .flatMap(({ body: { pain, tester, pair, startedAt }, revision: { id: run } }) => {
      if (!callsForCaution(pain) || again.has(run)) return [];
      const reply = replies.get(run)?.body;
      const { score, signs = [], over = null } = pain;
      const answer = answerIn(answerToPain(pain, reply));
      const stands = painStands(pain, reply);
      return [{ run, tester, pair, at: startedAt, score, signs, over, answer, stands }];
    })
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at) || (a.run < b.run ? 1 : -1));
};

/** What to ask first: what a figure hangs on goes before what may well be so. */
const askOrder: readonly RunOddity['why'][] = [
  'distance',
  'pace',
  'in-the-future',
  'unknown-pair',
  'not-handed-out',
  'logged-twice',
  'tester-overlap',
  'pair-overlap',
];

const isOverlap = ({ why }: RunOddity): boolean =>
  why === 'tester-overlap' || why === 'pair-overlap';

/** In the order to ask; a run that overlaps with several is asked about once. */
const toAsk = (oddities: readonly RunOddity[]): RunOddity[] => {
  const overlapping = new Set<RecordId>();
  return oddities
    .toSorted((a, b) => askOrder.indexOf(a.why) - askOrder.indexOf(b.why))
    .filter((one) => {
      if (!isOverlap(one)) return true;
      const isFirst = !overlapping.has(one.run);
      overlapping.add(one.run);
      return isFirst;
    });
};

const odditiesOf = ({ id, oddities, records }: ProjectLog): Review['oddities'] => {
  const odd = new Set(oddities.map(({ run }) => run));
  const runs = new Map(
    ownRecords(records.run, id).flatMap(({ body, revision }) =>
      odd.has(revision.id) ? [[revision.id, body] as const] : [],
    ),
  );
  return toAsk(oddities).flatMap((oddity) => {
    const run = runs.get(oddity.run);
    if (!run) return [];
    const { tester, pair, startedAt, distanceM } = run;
    return [{ ...oddity, tester, pair, startedAt, distanceM }];
  });
};
