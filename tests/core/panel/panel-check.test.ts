import { describe, expect, it } from 'vitest';
import {
  panelAgreement,
  panelQuestions,
  sessionError,
  type PanelQuestionToAsk,
  type TesterLogs,
} from '../../../core/panel/index.ts';
import {
  betaBinomialAll,
  correlation,
  foretellEach,
  intraclassCorrelations,
  measurementError,
  repeatability,
  seededChance,
} from '../../../core/statistics/index.ts';
import { idOf } from '../records/make.ts';

const numbers = (text: string) => text.split(' ').map(Number);
const columns = (...lists: readonly string[]) => {
  const rows = lists.map(numbers);
  return (rows[0] ?? []).map((_, at) => rows.map((row) => row[at] ?? NaN));
};

describe('error of measurement', () => {
  it('is that of two trials of a squat (Weir 2005)', () => {
    const icc = intraclassCorrelations(
      columns('146 148 170 90 157 156 176 205', '140 152 152 99 145 153 167 218'),
    );
    const digits = [icc?.single1, icc?.single2, icc?.single3].map((one) => one?.icc.toFixed(5));
    expect(digits).toEqual(['0.95005', '0.94998', '0.94702']);
    expect(icc?.mean3.icc.toFixed(5)).toBe('0.97279');
    expect(icc?.meanSquares.error.toFixed(5)).toBe('57.10714');
    const error = measurementError(icc?.meanSquares.error ?? NaN);
    expect(error.standardError.toFixed(4)).toBe('7.5569');
    expect(error.smallestChange.toFixed(3)).toBe('20.946');
  });

  it('within subjects is that of two flow meters (Bland & Altman 1986)', () => {
    const large = columns(
      '494 395 516 434 476 557 413 442 650 433 417 656 267 478 178 423 427',
      '490 397 512 401 470 611 415 431 638 429 420 633 275 492 165 372 421',
    );
    const mini = columns(
      '512 430 520 428 500 600 364 380 658 445 432 626 260 477 259 350 451',
      '525 415 508 444 500 625 460 390 642 432 420 605 227 467 268 370 443',
    );
    expect(repeatability(large)?.standardError.toFixed(4)).toBe('15.3067');
    expect(repeatability(mini)?.standardError.toFixed(4)).toBe('19.9108');
    expect(repeatability(mini)).toMatchObject({ groups: 17, scores: 34 });
  });

  it('has an interval that holds the truth as often as it says', () => {
    const chance = seededChance(3);
    const normal = () =>
      Math.sqrt(-2 * Math.log(1 - chance.share())) * Math.cos(2 * Math.PI * chance.share());
    let held = 0;
    for (let test = 0; test < 400; test++) {
      const groups = [1, 2, 3].map((level) => [0, 1, 2].map(() => 50 * level + 6 * normal()));
      const { lower, upper } = repeatability(groups)?.interval ?? { lower: NaN, upper: NaN };
      if (lower <= 6 && 6 <= upper) held++;
    }
    // 95 % of 400: standard deviation 4.4.
    expect(Math.abs(held - 380)).toBeLessThan(18);
  });

  it('says nothing without a second score', () => {
    expect(repeatability([[1], [2], []])).toBeNull();
  });
});

describe('correlation', () => {
  it('is that of an exact case, and needs four points that vary', () => {
    const found = correlation([1, 2, 3, 4, 5], [2, 1, 4, 3, 5]);
    expect(found?.r).toBeCloseTo(0.8, 12);
    // atanh 0.8 = 1.0986; ± 1.95996 / √2.
    expect(found?.lower).toBeCloseTo(Math.tanh(1.0986123 - 1.3859038), 5);
    expect(found?.upper).toBeCloseTo(Math.tanh(1.0986123 + 1.3859038), 5);
    expect(correlation([1, 2, 3], [3, 2, 1])).toBeNull();
    expect(correlation([1, 1, 1, 1], [1, 2, 3, 4])).toBeNull();
    expect(correlation([1, 2, 3, 4], [4, 3, 2, 1])?.r).toBe(-1);
  });
});

describe('agreement of the panel', () => {
  /** Shrout & Fleiss 1979: six targets as rounds, four judges as testers, each score given twice. */
  const table = '9 2 5 8/6 1 3 2/8 4 6 8/7 1 2 6/10 5 6 9/6 2 4 7'.split('/').map(numbers);
  const scores = table.flatMap((row, round) =>
    row.flatMap((score, tester) =>
      [score - 0.5, score + 0.5].map((session) => ({
        tester: idOf(tester),
        round: idOf(100 + round),
        pair: idOf(200 + round),
        score: session,
      })),
    ),
  );
  const rounds = table.map((_, round) => idOf(100 + round));

  it('gives the published correlations', () => {
    const answer = panelAgreement(scores, rounds);
    if (!answer.ok) throw new Error(answer.why);
    const { one, oneLevelled, panel, testers } = answer.agreement;
    expect([one, oneLevelled, panel].map(({ icc }) => icc.toFixed(2))).toEqual([
      '0.29',
      '0.71',
      '0.62',
    ]);
    expect([one.lower.toFixed(4), one.upper.toFixed(4)]).toEqual(['0.0188', '0.7611']);
    expect([oneLevelled.lower.toFixed(4), oneLevelled.upper.toFixed(4)]).toEqual([
      '0.3425',
      '0.9459',
    ]);
    expect([panel.lower.toFixed(4), panel.upper.toFixed(4)]).toEqual(['0.0711', '0.9272']);
    expect(testers).toBe(4);
  });

  it('compares the rounds and testers that leave most to compare, whatever is missing', () => {
    const partly = scores.filter(
      ({ tester, round }) => !(tester === idOf(3) && round !== rounds[0] && round !== rounds[1]),
    );
    const answer = panelAgreement(partly, rounds);
    if (!answer.ok) throw new Error(answer.why);
    expect(answer.agreement.rounds).toEqual(rounds);
    expect(answer.agreement.testers).toBe(3);
    expect(panelAgreement([...partly].reverse(), rounds)).toEqual(answer);
  });

  it('says what is missing instead of a number', () => {
    expect(panelAgreement([], rounds)).toEqual({ ok: false, why: 'few' });
    const once = scores.filter((_, at) => at % 2 === 0);
    expect(panelAgreement(once, rounds)).toEqual({ ok: false, why: 'few' });
    const same = scores.map((score) => ({ ...score, score: 70 }));
    expect(panelAgreement(same, rounds)).toEqual({ ok: false, why: 'same' });
  });

  it('takes the error of a session within tester and pair', () => {
    expect(sessionError(scores)?.standardError).toBeCloseTo(Math.SQRT1_2, 10);
    expect(sessionError([])).toBeNull();
  });
});

describe('what the others foretell', () => {
  it('is close to the binomial tail where the others are many and alike', () => {
    const others = Array.from({ length: 200 }, (_, at) => ({ x: at % 5 === 0 ? 3 : 4, n: 20 }));
    const [first] = foretellEach([{ x: 0, n: 10 }, ...others]) ?? [];
    expect(first?.asFew).toBeCloseTo((1 - 0.19) ** 10, 1);
  });

  it('sums to one with the count itself counted twice, and says nothing of one alone', () => {
    const units = [
      { x: 2, n: 9 },
      { x: 5, n: 9 },
      { x: 0, n: 4 },
    ];
    for (const { asFew, asMany } of foretellEach(units) ?? []) {
      expect(asFew + asMany).toBeGreaterThan(1);
      expect(asFew + asMany).toBeLessThanOrEqual(2);
    }
    expect(foretellEach([{ x: 1, n: 2 }])).toBeNull();
  });
});

const plain = (tester: number, part: Partial<TesterLogs> = {}): TesterLogs => ({
  tester: idOf(tester),
  overall: [60, 70, 65, 72, 58, 66],
  asked: 12,
  reported: 4,
  delaysH: [0.2, 0.3, 1, 0.1, 20, 0.4],
  profile: new Map(),
  ...part,
});
const panel = (first: Partial<TesterLogs>): TesterLogs[] =>
  Array.from({ length: 8 }, (_, at) => plain(at, at === 0 ? first : { reported: 3 + (at % 3) }));
const about = (questions: readonly PanelQuestionToAsk[]) =>
  questions.map(
    (question) => `${question.tester === idOf(0) ? 'first' : 'other'} ${question.about}`,
  );

describe('questions to ask', () => {
  it('are none where everybody answers as people do', () => {
    expect(panelQuestions(panel({}))).toEqual([]);
  });

  it('come for nearly the same score in five logs, not in four', () => {
    expect(about(panelQuestions(panel({ overall: [70, 71, 69, 70, 72] })))).toEqual([
      'first same-score',
    ]);
    expect(panelQuestions(panel({ overall: [70, 71, 69, 70] }))).toEqual([]);
  });

  it('come for never a complaint among those who have them, by the probability and not by a threshold', () => {
    expect(about(panelQuestions(panel({ asked: 30, reported: 0 })))).toEqual([
      'first no-complaint',
    ]);
    // Six runs without one are no surprise at one in three.
    expect(panelQuestions(panel({ asked: 6, reported: 0 }))).toEqual([]);
    // Nor are many where others have none either.
    const quiet = panel({ asked: 30, reported: 0 }).map((own) => ({ ...own, reported: 0 }));
    expect(panelQuestions(quiet)).toEqual([]);
  });

  it('come for a complaint in nearly every run', () => {
    const questions = panelQuestions(panel({ asked: 24, reported: 23 }));
    expect(about(questions)).toEqual(['first many-complaints']);
    expect(questions[0]).toMatchObject({ others: 7, reported: 23, asked: 24 });
  });

  it('are seldom asked by mistake: at most one panel of ten where testers differ by chance alone', () => {
    const chance = seededChance(5);
    let asked = 0;
    const all = betaBinomialAll(12, 0.3, 0.2);
    for (let test = 0; test < 60; test++) {
      const logs = Array.from({ length: 8 }, (_, at) => {
        let left = chance.share();
        return plain(at, {
          reported: Math.max(
            0,
            all.findIndex((p) => (left -= p) < 0),
          ),
        });
      });
      if (panelQuestions(logs).length > 0) asked++;
    }
    // 10 % of 60 is 6, standard deviation 2.3.
    expect(asked).toBeLessThan(14);
  });

  it('come for logs that are mostly written days later, and for clocks that disagree', () => {
    const late = panelQuestions(panel({ delaysH: [60, 70, 0.2, 90, 0.1, 55] }));
    expect(late).toMatchObject([{ about: 'written-late', late: 4, logs: 6, medianH: 57.5 }]);
    const clock = panelQuestions(panel({ delaysH: [-30, 0.2, 0.1, 0.3, 0.1, 0.2] }));
    expect(clock).toMatchObject([{ about: 'clock', logs: 1 }]);
    expect(panelQuestions(panel({ delaysH: [60, 70, 80] }))).toEqual([]);
  });

  it('come for a line that is read the other way round', () => {
    const cells = Array.from({ length: 10 }, (_, at) => `cell ${at}`);
    const logs = panel({}).map((own, tester) => ({
      ...own,
      profile: new Map(
        cells.map((cell, at) => {
          const score = 40 + 4 * at + ((tester * 7 + at * 3) % 5);
          return [cell, tester === 0 ? 100 - score : score] as const;
        }),
      ),
    }));
    expect(about(panelQuestions(logs))).toEqual(['first other-way-round']);
  });
});
