/** What does the panel check say, in sentences? The same on desk and terminal. */
import { agreementShown, type PanelQuestionToAsk } from '../../core/panel/index.ts';
import type { Icc } from '../../core/statistics/index.ts';
import type { PanelCheck } from '../../core/review/index.ts';
import { percentOf } from './figures.ts';
import type { Speaker } from './say-complaint.ts';

const questionInWords = (question: PanelQuestionToAsk, speaker: Speaker): string => {
  const words = speaker.desk.panel.check.question;
  const { number } = speaker;
  const tester = speaker.tester(question.tester);
  switch (question.about) {
    case 'same-score':
      return words['same-score'](
        tester,
        question.logs,
        number(question.least, 0),
        number(question.most, 0),
      );
    case 'no-complaint':
      return words['no-complaint'](
        tester,
        question.asked,
        percentOf(question.othersShare, number),
        question.others,
        number(question.p, 3),
      );
    case 'many-complaints':
      return words['many-complaints'](
        tester,
        question.reported,
        question.asked,
        percentOf(question.othersShare, number),
        question.others,
        number(question.p, 3),
      );
    case 'written-late':
      return words['written-late'](
        tester,
        question.late,
        question.logs,
        number(question.medianH, 0),
      );
    case 'clock':
      return words.clock(tester, question.logs);
    case 'other-way-round':
      return words['other-way-round'](
        tester,
        number(question.correlation.r, 2),
        number(question.correlation.lower, 2),
        number(question.correlation.upper, 2),
        question.correlation.n,
      );
  }
};

/** An estimate with its interval, in words where it shows no agreement. */
const correlationInWords = (correlation: Icc, { desk, number }: Speaker): string => {
  const words = desk.panel.check.correlation;
  const { icc, lower, upper } = correlation;
  // A share of spread is not below 0, whatever the end of an interval is.
  const end = (value: number) => number(Math.max(0, value), 2);
  switch (agreementShown(correlation)) {
    case 'none':
      // An interval that ends at 0 as well would sound sure of what is only not seen.
      return words.none(end(upper) === end(0) ? null : end(upper));
    case 'open':
      return words.open(end(icc), end(upper));
    case 'shown':
      return words.shown(end(icc), end(lower), end(upper));
  }
};

export interface PanelInWords {
  /** Questions to ask, or why there are none. */
  readonly questions: readonly string[];
  readonly noQuestion: string | null;
  /** What the correlations are of, and the correlations; no lines where there are too few scores. */
  readonly agreement: string;
  readonly correlations: readonly string[];
  readonly error: string;
}

/** The panel check in sentences; null where nobody logged a run. */
export const panelInWords = (check: PanelCheck, speaker: Speaker): PanelInWords | null => {
  const words = speaker.desk.panel.check;
  const { number } = speaker;
  const { agreement: answer, sessionError, questions, testers, testersEnough } = check;
  if (testers === 0) return null;
  const agreement = answer.ok
    ? words.icc(
        answer.agreement.testers,
        speaker.desk.joined.names(answer.agreement.rounds.map(speaker.round)),
      )
    : words[answer.why];
  const correlations = answer.ok
    ? (['one', 'oneLevelled', 'panel'] as const).map((which) =>
        words[which](correlationInWords(answer.agreement[which], speaker)),
      )
    : [];
  const error = sessionError
    ? words.error(
        number(sessionError.standardError, 1),
        number(sessionError.interval.lower, 1),
        number(sessionError.interval.upper, 1),
        number(sessionError.smallestChange, 1),
        sessionError.groups,
        sessionError.scores,
      )
    : words.noError;
  return {
    questions: questions.map((question) => questionInWords(question, speaker)),
    noQuestion: questions.length === 0 ? words.none(testers, testersEnough) : null,
    agreement,
    correlations,
    error,
  };
};
