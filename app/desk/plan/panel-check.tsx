/** Whether the panel answers steadily, and whom to ask what: sentences, no ranking. */
import type { PanelQuestionToAsk } from '../../../core/panel/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { formatNumber, formatPercent } from '../../parts/format.ts';
import { d, t } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';

const two = (value: number): string => formatNumber(value, 2, 2);
const one = (value: number): string => formatNumber(value, 1, 1);
const three = (value: number): string => formatNumber(value, 3, 3);

const inWords = (question: PanelQuestionToAsk, name: (id: RecordId) => string): string => {
  const words = d().panel.check.question;
  const tester = name(question.tester);
  switch (question.about) {
    case 'same-score':
      return words['same-score'](
        tester,
        question.logs,
        formatNumber(question.least, 0),
        formatNumber(question.most, 0),
      );
    case 'no-complaint':
      return words['no-complaint'](
        tester,
        question.asked,
        formatPercent(question.othersShare),
        question.others,
        three(question.p),
      );
    case 'many-complaints':
      return words['many-complaints'](
        tester,
        question.reported,
        question.asked,
        formatPercent(question.othersShare),
        question.others,
        three(question.p),
      );
    case 'written-late':
      return words['written-late'](
        tester,
        question.late,
        question.logs,
        formatNumber(question.medianH, 0),
      );
    case 'clock':
      return words.clock(tester, question.logs);
    case 'other-way-round':
      return words['other-way-round'](
        tester,
        two(question.correlation.r),
        two(question.correlation.lower),
        two(question.correlation.upper),
        question.correlation.n,
      );
  }
};

export const PanelCheckPart = ({ records, review }: TabProps) => {
  const words = d().panel.check;
  const names = namesIn(review, records);
  const project = review.project.id;
  const check = useWork((desk) => desk.panelCheck(project), records, [project]);
  if (!check) return <p class="soft">{t().loading}</p>;
  const { agreement: answer, sessionError, questions, testers, testersEnough } = check;
  return (
    <section class="sheet" aria-label={words.title}>
      <h2>{words.title}</h2>
      <hr class="stitch" />
      {testers === 0 ? (
        <p>{words.nobody}</p>
      ) : (
        <>
          <h3>{words.ask}</h3>
          {questions.length === 0 ? (
            <p>{words.none(testers, testersEnough)}</p>
          ) : (
            <ul>
              {questions.map((question) => (
                <li key={`${question.tester} ${question.about}`}>
                  {inWords(question, names.tester)}
                </li>
              ))}
            </ul>
          )}
          {answer.ok ? (
            <>
              <p>
                {words.icc(
                  answer.agreement.testers,
                  answer.agreement.rounds.length,
                  answer.agreement.rounds.map(names.round).join(', '),
                )}
              </p>
              <ul>
                {(['one', 'oneLevelled', 'panel'] as const).map((which) => {
                  const { icc, lower, upper } = answer.agreement[which];
                  return <li key={which}>{words[which](two(icc), two(lower), two(upper))}</li>;
                })}
              </ul>
            </>
          ) : (
            <p>{words[answer.why]}</p>
          )}
          <p>
            {sessionError
              ? words.error(
                  one(sessionError.standardError),
                  one(sessionError.interval.lower),
                  one(sessionError.interval.upper),
                  one(sessionError.smallestChange),
                  sessionError.groups,
                  sessionError.scores,
                )
              : words.noError}
          </p>
          <p class="soft small">{words.how}</p>
        </>
      )}
    </section>
  );
};
