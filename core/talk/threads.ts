/**
 * What was said about each thing, in its order. A thread hangs on the record that it is about: a run, a report of
 * damage, a finding; else on a tester's pair; else on the tester.
 */
import type { RecordId, RecordOf } from '../records/index.ts';
import { answersTo, writtenMs } from './questions.ts';

export const saidKinds = [
  'question',
  'answer',
  'reply',
  'proposal',
  'proposal-reply',
  'thanks',
] as const;
export type SaidKind = (typeof saidKinds)[number];
export type Said = { readonly [K in SaidKind]: RecordOf<K> }[SaidKind];

/** Whatever records of these kinds are here; a phone has no proposals. */
export type SaidRecords = { readonly [K in SaidKind]?: readonly RecordOf<K>[] };

export const threadOfRecord = (record: RecordId): string => record;
export const threadOfPair = (tester: RecordId, pair: RecordId): string => `${tester} ${pair}`;
export const threadOfTester = (tester: RecordId): string => tester;

const threadOfQuestion = ({ body: { about, tester } }: RecordOf<'question'>): string =>
  about?.record
    ? threadOfRecord(about.record.id)
    : about?.pair
      ? threadOfPair(tester, about.pair)
      : threadOfTester(tester);

interface Placed {
  readonly thread: string;
  readonly said: Said;
  /** Never before what it answers, whatever the clocks said. */
  readonly ms: number;
  /** Breaks a tie: what answers comes after what is answered. */
  readonly depth: number;
}

const after = (own: number, other: Placed | undefined): number => Math.max(own, other?.ms ?? own);

const placedTalk = ({ question = [], answer = [] }: SaidRecords): readonly Placed[] => {
  const questions = new Map(
    question.map((said): [RecordId, Placed] => [
      said.revision.id,
      { thread: threadOfQuestion(said), said, ms: writtenMs(said), depth: 0 },
    ]),
  );
  const standing = new Set(answersTo(question, answer).values());
  const answers = answer.flatMap((said): readonly Placed[] => {
    const { question: named, tester, pair } = said.body;
    const ms = writtenMs(said);
    if (named === undefined) {
      const thread = pair === undefined ? threadOfTester(tester) : threadOfPair(tester, pair);
      return [{ thread, said, ms, depth: 0 }];
    }
    const asked = questions.get(named);
    return asked && standing.has(said)
      ? [{ thread: asked.thread, said, ms: after(ms, asked), depth: 1 }]
      : [];
  });
  return [...questions.values(), ...answers];
};

const placedProposals = (records: SaidRecords): readonly Placed[] => {
  const { proposal = [], 'proposal-reply': replies = [] } = records;
  const proposals = new Map(
    proposal.map((said): [RecordId, Placed] => [
      said.revision.id,
      { thread: threadOfRecord(said.body.finding), said, ms: writtenMs(said), depth: 0 },
    ]),
  );
  const answered = replies.flatMap((said): readonly Placed[] => {
    const to = proposals.get(said.body.proposal);
    // A reply that names another finding than its proposal does is nobody's.
    if (!to || to.thread !== threadOfRecord(said.body.finding)) return [];
    return [{ thread: to.thread, said, ms: after(writtenMs(said), to), depth: 1 }];
  });
  return [...proposals.values(), ...answered];
};

const plain = ({ reply = [], thanks = [] }: SaidRecords): readonly Placed[] => [
  ...reply.map((said): Placed => ({
    thread: threadOfRecord(said.body.about),
    said,
    ms: writtenMs(said),
    depth: 0,
  })),
  ...thanks.map((said): Placed => ({
    thread: threadOfRecord(said.body.finding),
    said,
    ms: writtenMs(said),
    depth: 0,
  })),
];

/**
 * Everything that was said, by thread, in order. Of several answers to one question the latest stands here; answers in
 * the name of somebody who was not asked stand nowhere.
 */
export const threadsOf = (records: SaidRecords): ReadonlyMap<string, readonly Said[]> => {
  const placed = [...placedTalk(records), ...placedProposals(records), ...plain(records)].sort(
    (a, b) =>
      a.ms - b.ms || a.depth - b.depth || (a.said.revision.id < b.said.revision.id ? -1 : 1),
  );
  const threads = new Map<string, Said[]>();
  for (const { thread, said } of placed) {
    const there = threads.get(thread);
    if (there) there.push(said);
    else threads.set(thread, [said]);
  }
  return threads;
};
