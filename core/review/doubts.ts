/**
 * What may a lead want to ask a tester about, and with which ready-made questions? Everything follows from the review;
 * what was asked already is known by its questions.
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { LoggedRun, RunOddity } from '../mileage/index.ts';
import type { AskedAbout, AskId, RecordId, RecordOf } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { asks, asksFor, doubtKinds } from '../talk/index.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';
import { outlyingScores, type OutlyingScore } from './score-doubts.ts';
import { silentOf } from './silence.ts';

/** Odd runs of so many days stand among the steps: a run may be odd and right, for ever. So do pain and damage of pairs that came back. */
export const RECENT_DAYS = 14;
const DAY_MS = 86_400_000;

/** What stands behind a doubt, by its kind. */
export type DoubtFacts =
  | { readonly kind: 'pain'; readonly score: number }
  | { readonly kind: 'damage' }
  | { readonly kind: 'odd-run'; readonly whys: readonly RunOddity['why'][] }
  | {
      readonly kind: 'early-sign';
      readonly zone: ZoneCode;
      readonly complaint: ComplaintKind;
      /** Runs of this tester that report it. */
      readonly runs: number;
    }
  | ({ readonly kind: 'outlying-score' } & Pick<OutlyingScore, 'attribute' | 'score' | 'usual'>)
  /** `runs`: recent runs of this tester without the answer; the question is about the latest. */
  | {
      readonly kind: 'missing-answer';
      readonly missing: 'feet' | 'comfort';
      readonly runs: number;
    }
  | { readonly kind: 'silence'; readonly days: number };

export type Doubt = DoubtFacts & {
  readonly tester: RecordId;
  /** What a question about it would name. */
  readonly about: AskedAbout;
  /** Since when there is a doubt, milliseconds since 1970. */
  readonly sinceMs: number;
  /** Ready-made questions that fit and were not asked, the best first. */
  readonly asks: readonly AskId[];
  /** Questions that were asked about it and not withdrawn, earliest first. */
  readonly asked: readonly RecordId[];
};

type Raw = DoubtFacts & {
  readonly tester: RecordId;
  readonly about: AskedAbout;
  readonly sinceMs: number;
  /** The best first; the others that fit the kind follow. */
  readonly first: readonly AskId[];
  /** Of the others only those. */
  readonly only?: readonly AskId[];
};

const aboutRun = (run: RecordId, pair: RecordId): AskedAbout => ({
  record: { id: run, kind: 'run' },
  pair,
});

const askOfOddity: Readonly<Record<RunOddity['why'], AskId>> = {
  distance: 'really-distance',
  pace: 'really-pace',
  'in-the-future': 'really-day',
  'not-handed-out': 'really-pair',
  'unknown-pair': 'really-pair',
  'logged-twice': 'really-day',
  'tester-overlap': 'really-day',
  'pair-overlap': 'really-pair',
};

const oddRuns = (review: Review, isRecent: (ms: number) => boolean): readonly Raw[] => {
  const waiting = review.waiting.flatMap((item) =>
    item.about === 'run'
      ? item.whys.map(({ why }) => ({
          ...{ why, run: item.subject.record, pair: item.pair, tester: item.tester },
          startedAt: item.startedAt,
        }))
      : [],
  );
  const counted = review.oddities.filter(({ startedAt }) => isRecent(Date.parse(startedAt)));
  return [...groupBy([...waiting, ...counted], ({ run }) => run).values()].flatMap((odd) => {
    const [one] = odd;
    if (!one) return [];
    const whys = [...new Set(odd.map(({ why }) => why))];
    const first = [...new Set(whys.map((why) => askOfOddity[why]))];
    return [
      {
        ...{ kind: 'odd-run' as const, whys, tester: one.tester, first, only: first },
        about: aboutRun(one.run, one.pair),
        sinceMs: Date.parse(one.startedAt),
      },
    ];
  });
};

/** Runs of the latest round that report a complaint which is not proved yet, by who reported it. */
const earlySigns = (log: ProjectLog, review: Review): readonly Raw[] => {
  const latest = review.rounds.at(-1);
  if (!latest) return [];
  const runs = new Map(log.counted.map((run) => [run.id, run]));
  return latest.complaints.cells
    .filter(({ word }) => word === 'early-sign')
    .flatMap(({ zone, kind, runIds }) => {
      const reported = runIds.flatMap((id) => runs.get(id) ?? []);
      return [...groupBy(reported, ({ tester }) => tester)].flatMap(([tester, own]): Raw[] => {
        const last = own.reduce((a, b) => (b.startMs > a.startMs ? b : a));
        return [
          {
            ...{ kind: 'early-sign', zone, complaint: kind, runs: own.length, tester },
            about: { ...aboutRun(last.id, last.pair), zone, complaint: kind },
            ...{ sinceMs: last.startMs, first: [] },
          },
        ];
      });
    });
};

/** Recent runs without an answer that the brief asks for; one doubt a tester and question, about the latest run. */
const missingAnswers = (log: ProjectLog, recent: readonly LoggedRun[]): readonly Raw[] => {
  const asksOverall = log.project.brief.attributes.includes('overall');
  const lacks = {
    feet: ({ run }: LoggedRun) => run.feet === undefined,
    comfort: ({ run }: LoggedRun) => asksOverall && run.comfort?.overall === undefined,
  };
  return (['feet', 'comfort'] as const).flatMap((missing) =>
    [...groupBy(recent.filter(lacks[missing]), ({ tester }) => tester)].map(([tester, own]) => {
      const last = own.reduce((a, b) => (b.startMs > a.startMs ? b : a));
      const ask: AskId = missing === 'feet' ? 'feet-unanswered' : 'comfort-unanswered';
      return {
        ...{ kind: 'missing-answer' as const, missing, runs: own.length, tester },
        about: aboutRun(last.id, last.pair),
        ...{ sinceMs: last.startMs, first: [ask], only: [ask] },
      };
    }),
  );
};

const rawDoubts = (log: ProjectLog, review: Review): readonly Raw[] => {
  const isRecent = (ms: number) => ms <= log.nowMs && log.nowMs - ms <= RECENT_DAYS * DAY_MS;
  const recent = log.counted.filter(({ startMs }) => isRecent(startMs));
  const pains = review.pains
    .filter(({ stands, answer }) => stands && answer === null)
    .map(({ run, pair, tester, at, score }): Raw => ({
      ...{ kind: 'pain', score, tester, about: aboutRun(run, pair) },
      ...{ sinceMs: Date.parse(at), first: ['pain-now'] },
    }));
  // Nobody runs in a pair that was stopped.
  const stopped = new Set(review.pairs.filter(({ stopUse }) => stopUse).map(({ id }) => id));
  const damages = review.damages
    .filter(({ stands, answer, pair }) => stands && answer === null && !stopped.has(pair))
    .map(({ id, pair, tester, at }): Raw => ({
      ...{ kind: 'damage', tester, sinceMs: Date.parse(at), first: [] },
      about: { record: { id, kind: 'damage-report' }, pair },
    }));
  const scores = outlyingScores(log.counted, log.project.brief.attributes, ({ startMs }) =>
    isRecent(startMs),
  ).map(({ run, pair, tester, attribute, score, usual }): Raw => ({
    ...{ kind: 'outlying-score', attribute, score, usual, tester, first: [] },
    about: { ...aboutRun(run, pair), attribute },
    sinceMs: log.counted.find(({ id }) => id === run)?.startMs ?? log.nowMs,
  }));
  // Silence of the whole test is said once, not of each.
  const quiet = new Set(review.quiet?.testers);
  const silent = silentOf(log)
    .filter(({ tester }) => !quiet.has(tester))
    .map(({ tester, pairs, days }): Raw => ({
      ...{ kind: 'silence', days, tester, first: [] },
      about: pairs[0] === undefined ? {} : { pair: pairs[0] },
      sinceMs: log.nowMs - days * DAY_MS,
    }));
  return [
    ...pains,
    ...damages,
    ...oddRuns(review, isRecent),
    ...earlySigns(log, review),
    ...scores,
    ...missingAnswers(log, recent),
    ...silent,
  ];
};

/** Whether a question is about what a doubt is about. Of a complaint the zone says it, whichever run it was. */
const isAbout = ({ body }: RecordOf<'question'>, doubt: Raw): boolean => {
  if (body.tester !== doubt.tester) return false;
  const { about = {}, ask } = body;
  if (ask !== undefined && !asks[ask].fits.includes(doubt.kind)) return false;
  if (doubt.kind === 'early-sign')
    return about.zone === doubt.zone && (about.complaint ?? doubt.complaint) === doubt.complaint;
  // Who ran since and fell silent again is asked anew.
  if (doubt.kind === 'silence')
    return about.record === undefined && Date.parse(body.at) >= doubt.sinceMs;
  if (about.record?.id !== doubt.about.record?.id) return false;
  return ask === undefined || !doubt.only || doubt.only.includes(ask);
};

const known = new WeakMap<Review, readonly Doubt[]>();

/** What a lead may ask about: the most pressing kind first, within it the latest. Worked out once for each review. */
export const doubtsOf = (log: ProjectLog, review: Review): readonly Doubt[] => {
  const doubts = known.get(review) ?? findDoubts(log, review);
  known.set(review, doubts);
  return doubts;
};

const findDoubts = (log: ProjectLog, review: Review): readonly Doubt[] => {
  const questions = ownRecords(log.records.question, log.id)
    .filter(({ body }) => body.withdrawn === undefined)
    .sort((a, b) => Date.parse(a.body.at) - Date.parse(b.body.at));
  return rawDoubts(log, review)
    .map((raw): Doubt => {
      const { first, only, ...doubt } = raw;
      const asked = questions.filter((question) => isAbout(question, raw));
      const done = new Set(asked.map(({ body }) => body.ask));
      const complaint = raw.kind === 'early-sign' ? raw.complaint : undefined;
      const fitting = only ?? [...new Set([...first, ...asksFor(raw.kind, complaint)])];
      return {
        ...doubt,
        asks: fitting.filter((ask) => !done.has(ask)),
        asked: asked.map(({ revision }) => revision.id),
      };
    })
    .sort(
      (a, b) => doubtKinds.indexOf(a.kind) - doubtKinds.indexOf(b.kind) || b.sinceMs - a.sinceMs,
    );
};

/** Those that nobody asked about yet. */
export const unaskedDoubts = (doubts: readonly Doubt[]): readonly Doubt[] =>
  doubts.filter(({ asked }) => asked.length === 0);
