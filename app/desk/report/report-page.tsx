/** The report of a round, or a trade's sheet of it: to read, to print, to save as a file, to send. */
import { useLocation } from 'preact-iso';
import { useEffect, useState } from 'preact/hooks';
import { trades, type Trade } from '../../../core/foot/index.ts';
import type { RoundReport } from '../../../core/review/index.ts';
import { OwnTree } from '../../parts/own-tree.tsx';
import { PrintedTitle } from '../../parts/printed-title.ts';
import { settings } from '../../parts/settings.ts';
import type { DocumentProps } from '../../report/document-props.ts';
import { isTrade, printedTitle, ReportDocument, shownPhotos } from '../../report/document.tsx';
import { spokenIn, type Languages, type ReportWords } from '../../report/spoken.tsx';
import {
  d,
  languages,
  nameOfLanguage,
  t,
  terms,
  wordsOf,
  type Language,
} from '../../words/index.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { queryNow } from '../frame/query-now.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { usePhotoAddresses } from './photos.ts';
import { Actions } from './report-actions.tsx';
import { reportStyles } from './styles.ts';

/** Each language alone, then the reader's own above each of the others. */
const languageChoices = (own: Language): readonly string[] => [
  ...languages,
  ...languages.filter((one) => one !== own).map((other) => `${own}+${other}`),
];

const idsOf = (choice: string): readonly Language[] => choice.split('+');

const isChoice = (choice: string | undefined): choice is string =>
  choice !== undefined &&
  idsOf(choice).length <= 2 &&
  new Set(idsOf(choice)).size === idsOf(choice).length &&
  idsOf(choice).every((one) => languages.includes(one));

/** The words of the chosen languages; null until they are there. */
const useWords = (choice: string): readonly ReportWords[] | null => {
  const [found, setFound] = useState<{
    readonly choice: string;
    readonly words: readonly ReportWords[];
  } | null>(null);
  useEffect(() => {
    let current = true;
    void Promise.all(idsOf(choice).map(wordsOf)).then(
      (words) => current && setFound({ choice, words }),
    );
    return () => {
      current = false;
    };
  }, [choice]);
  return found?.choice === choice ? found.words : null;
};

export const ReportPage = (props: TabProps) => {
  const { review, records } = props;
  const { path, query, route } = useLocation();
  const words = d().report.page;
  const withRuns = review.rounds.filter(({ size }) => size.runs > 0);
  const round =
    review.rounds.find(({ id }) => id === query['round']) ??
    withRuns.at(-1) ??
    review.rounds.at(-1);
  const trade: Trade | null = isTrade(query['trade']) ? query['trade'] : null;
  const own = settings.value.language;
  const choice = isChoice(query['languages']) ? query['languages'] : own;
  const report = useWork(
    async (desk) => (round ? desk.report(review.project.id, round.id) : null),
    records,
    [round?.id],
  );
  const spoken = useWords(choice);
  if (!round) return <p>{d().rounds.none}</p>;
  const go = (change: Readonly<Record<string, string | null>>) => {
    const next = { round: round.id, languages: choice, ...queryNow(), ...change };
    const search = new URLSearchParams(
      Object.entries(next).flatMap(([key, value]) => (value ? [[key, value]] : [])),
    );
    route(`${path}?${search.toString()}`, true);
  };
  return (
    <>
      <div class="options no-print">
        <SelectField
          label={d().complaints.round}
          value={round.id}
          options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => go({ round: id })}
        />
        <SelectField<Trade | 'whole'>
          label={words.trade}
          value={trade ?? 'whole'}
          options={[
            { value: 'whole', label: words.whole },
            ...trades.map((value) => ({ value, label: terms().trades[value] })),
          ]}
          onChange={(value) => go({ trade: value === 'whole' ? null : value })}
        />
        <SelectField
          label={words.language}
          value={choice}
          options={[...new Set([...languageChoices(own), choice])].map((value) => ({
            value,
            label: idsOf(value).map(nameOfLanguage).join(' + '),
          }))}
          onChange={(value) => go({ languages: value })}
        />
      </div>
      {report && spoken ? (
        <Ready {...props} report={report} spoken={spoken} choice={choice} trade={trade} />
      ) : (
        <p class="soft">{t().loading}</p>
      )}
    </>
  );
};

const Ready = (
  props: TabProps & {
    readonly report: RoundReport;
    readonly spoken: readonly ReportWords[];
    readonly choice: string;
    readonly trade: Trade | null;
  },
) => {
  const { report, spoken, trade, choice } = props;
  const photos = usePhotoAddresses(shownPhotos(report, trade));
  const ready = spoken.map((words) => spokenIn(words, report.names, settings.value.distance));
  const [lead, ...others] = ready;
  if (!lead || !photos) return <p class="soft">{t().loading}</p>;
  const document: DocumentProps = {
    report,
    languages: [lead, ...others] satisfies Languages,
    trade,
    photos,
  };
  return (
    <>
      <Actions {...props} document={document} ids={idsOf(choice)} />
      <PrintedTitle title={printedTitle(document)} />
      <OwnTree styles={reportStyles}>
        <ReportDocument {...document} />
      </OwnTree>
    </>
  );
};
