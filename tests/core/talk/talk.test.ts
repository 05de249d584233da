/** Which questions wait, what was said where in which order, and that forged answers answer nothing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  askIds,
  answerOptions,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';
import {
  alwaysOffered,
  answersTo,
  asks,
  asksFor,
  doubtKinds,
  openQuestions,
  optionsOf,
  threadOfPair,
  threadOfRecord,
  threadsOf,
} from '../../../core/talk/index.ts';
import { idOf } from '../records/make.ts';
import { day, said, view } from './said.ts';

const [ADA, BEN] = [idOf(201), idOf(202)];
const RUN = idOf(1000);
const PAIR = idOf(101);
const question = (n: number, days: number, more: Readonly<Record<string, unknown>> = {}) =>
  said(idOf(300 + n), 'question', days, { tester: ADA, ask: 'sock-or-shoe', ...more });
const answer = (
  n: number,
  days: number,
  to: number | null,
  more: Readonly<Record<string, unknown>> = {},
  stampMs?: number,
) =>
  said(
    idOf(400 + n),
    'answer',
    days,
    { tester: ADA, ...(to !== null && { question: idOf(300 + to) }), option: 'sock', ...more },
    stampMs,
  );
const here = () => true;
const open = (
  records: ReturnType<typeof view>,
  tester = ADA,
  has: (id: RecordId) => boolean = here,
) => openQuestions(records, tester, has).map(({ revision }) => revision.id);

describe('the ready-made questions', () => {
  it('fit a doubt each, and every doubt has some', () => {
    expect(Object.keys(asks)).toEqual([...askIds]);
    for (const doubt of doubtKinds) expect(asksFor(doubt).length).toBeGreaterThan(0);
    expect(asksFor('early-sign', 'rubbing')).toContain('sock-or-shoe');
    expect(asksFor('early-sign', 'bottoming-out')).toEqual(['other-shoes', 'when-in-run']);
    for (const { fits, options } of Object.values(asks)) {
      expect(fits.length).toBeGreaterThan(0);
      expect(new Set(options).size).toBe(options.length);
      // With the two that are always there they fit on one screen.
      expect(options.length).toBeLessThanOrEqual(6);
      for (const always of alwaysOffered) expect(options).not.toContain(always);
    }
    const offered = new Set(Object.values(asks).flatMap(({ options }) => options));
    const unused = answerOptions.filter(
      (one) => !offered.has(one) && !(alwaysOffered as readonly string[]).includes(one),
    );
    // Only for questions in a lead's own words.
    expect(unused).toEqual(['partly']);
  });

  it('can always be left unanswered in so many words', () => {
    expect(optionsOf({ ask: 'sock-or-shoe' })).toEqual([
      'shoe',
      'sock',
      'both',
      'dont-know',
      'skipped',
    ]);
    expect(optionsOf({ options: ['yes', 'dont-know', 'no'] })).toEqual([
      'yes',
      'no',
      'dont-know',
      'skipped',
    ]);
    expect(optionsOf({})).toEqual(['dont-know', 'skipped']);
  });
});

describe('open questions', () => {
  it('wait oldest first, for who was asked', () => {
    const records = view(
      question(2, -1),
      question(1, -3),
      question(3, -2, { tester: BEN, words: 'Why?' }),
    );
    expect(open(records)).toEqual([idOf(301), idOf(302)]);
    expect(open(records, BEN)).toEqual([idOf(303)]);
  });

  it('leave with an answer, with a skip, and when they are withdrawn', () => {
    const asked = [question(1, -5), question(2, -4), question(3, -3, { withdrawn: day(-1) })];
    expect(open(view(...asked))).toEqual([idOf(301), idOf(302)]);
    expect(open(view(...asked, answer(1, -2, 1)))).toEqual([idOf(302)]);
    expect(open(view(...asked, answer(1, -2, 1), answer(2, -1, 2, { option: 'skipped' })))).toEqual(
      [],
    );
  });

  it('leave with the record that they are about', () => {
    const records = view(
      question(1, -5, { about: { record: { id: RUN, kind: 'run' } } }),
      question(2, -4, { about: { pair: PAIR } }),
    );
    expect(open(records)).toHaveLength(2);
    expect(open(records, ADA, (id) => id !== RUN)).toEqual([idOf(302)]);
  });

  it('are answered by the latest answer, and by nobody but who was asked', () => {
    const records = view(
      question(1, -5),
      answer(1, -4, 1, { option: 'shoe' }),
      answer(2, -3, 1, { option: 'both' }),
      answer(3, -1, 1, { tester: BEN, option: 'sock' }),
    );
    const to = answersTo(records.question, records.answer);
    expect(to.get(idOf(301))?.body.option).toBe('both');
    const forged = view(question(1, -5), answer(3, -1, 1, { tester: BEN }));
    expect(open(forged)).toEqual([idOf(301)]);
  });

  it('whatever the order of delivery, each is open or answered, once', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ n: fc.nat(5), ms: fc.nat(9), of: fc.constantFrom(ADA, BEN) })),
        fc.array(
          fc.record({ n: fc.nat(9), to: fc.nat(7), ms: fc.nat(9), by: fc.constantFrom(ADA, BEN) }),
        ),
        fc.infiniteStream(fc.nat()),
        (some, replies, keys) => {
          const heads = new Map(
            [
              ...some.map(({ n, ms, of }) => question(n, ms, { tester: of })),
              ...replies.map(({ n, to, ms, by }) => answer(n, ms, to, { tester: by })),
            ].map((one) => [one.id, one]),
          );
          const shuffled = [...heads.values()]
            .map((one) => [keys.next().value, one] as const)
            .sort((a, b) => a[0] - b[0])
            .map(([, one]) => one);
          const records = view(...heads.values());
          const again = view(...shuffled);
          for (const tester of [ADA, BEN]) {
            expect(open(again, tester)).toEqual(open(records, tester));
            const answered = answersTo(records.question, records.answer);
            const own = records.question.filter(({ body }) => body.tester === tester);
            const done = own.filter(({ revision }) => answered.has(revision.id));
            expect(open(records, tester).length + done.length).toBe(own.length);
            for (const one of done) expect(answered.get(one.revision.id)?.body.tester).toBe(tester);
          }
          expect([...threadsOf(again)].sort()).toEqual([...threadsOf(records)].sort());
        },
      ),
    );
  });
});

describe('threads', () => {
  const kindsIn = (thread: string, ...all: readonly Revision[]) =>
    threadsOf(view(...all))
      .get(thread)
      ?.map(({ kind }) => kind);

  it('hang on the run that is asked about, with the lead’s advice in its place', () => {
    const about = { record: { id: RUN, kind: 'run' } };
    expect(
      kindsIn(
        threadOfRecord(RUN),
        answer(1, -2, 1),
        question(1, -5, { about }),
        question(2, -1, { about }),
        said(idOf(500), 'reply', -3, { tester: ADA, about: RUN, advice: 'go-on' }),
      ),
    ).toEqual(['question', 'reply', 'answer', 'question']);
  });

  it('put an answer after its question, whatever the clocks say', () => {
    const about = { pair: PAIR };
    expect(kindsIn(threadOfPair(ADA, PAIR), question(1, 0, { about }), answer(1, -9, 1))).toEqual([
      'question',
      'answer',
    ]);
  });

  it('keep messages about a pair by tester', () => {
    const records = view(
      answer(1, -3, null, { pair: PAIR, option: undefined, words: 'The lace broke.' }),
      answer(2, -2, null, { pair: PAIR, tester: BEN, option: undefined, words: 'Fine.' }),
    );
    const threads = threadsOf(records);
    expect(threads.get(threadOfPair(ADA, PAIR))).toHaveLength(1);
    expect(threads.get(threadOfPair(BEN, PAIR))).toHaveLength(1);
  });

  it('show no forged answer, and no reply to a proposal of another finding', () => {
    const proposal = said(idOf(600), 'proposal', -4, { finding: idOf(700), answer: 'cannot' });
    const reply = (finding: RecordId) =>
      said(idOf(601), 'proposal-reply', -3, {
        ...{ finding, proposal: idOf(600), judged: proposal.stamp, answer: 'ask-again' },
      });
    expect(kindsIn(idOf(700), proposal, reply(idOf(700)))).toEqual(['proposal', 'proposal-reply']);
    expect(kindsIn(idOf(700), proposal, reply(idOf(701)))).toEqual(['proposal']);
    const forged = view(question(1, -5), answer(1, -4, 1, { tester: BEN }));
    expect([...threadsOf(forged).values()].flat().map(({ kind }) => kind)).toEqual(['question']);
  });
});
