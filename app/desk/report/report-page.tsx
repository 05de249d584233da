/** The report of a round, or a trade's sheet of it: to read, to print, to save as a file, to send. */
import { useLocation } from 'preact-iso';
import { useEffect, useState } from 'preact/hooks';
import { strToU8 } from 'fflate';
import { trades, type Trade } from '../../../core/foot/index.ts';
import { MAX_ATTACHMENT_BYTES, type RecordId } from '../../../core/records/index.ts';
import type { RoundReport } from '../../../core/review/index.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { sendFile } from '../../parts/send-file.ts';
import { PrintedTitle } from '../../parts/printed-title.ts';
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import type { DocumentProps } from '../../report/document-props.ts';
import {
  documentTitle,
  isTrade,
  printedTitle,
  ReportDocument,
  shownPhotos,
} from '../../report/document.tsx';
import { fileName, reportFile } from '../../report/file.tsx';
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
import { askWorker, useWork, type TabProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { everythingZip } from './everything.ts';
import { usePhotoAddresses } from './photos.ts';
import { reportStyles } from './styles.ts';
import '../../report/report.css';

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
    const next = { round: round.id, trade, languages: choice, ...change };
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
      <ReportDocument {...document} />
    </>
  );
};

/** The bytes to send, without photos where they would make it too large; null where even that is too large. */
const fittingFile = (document: DocumentProps): { bytes: Uint8Array; photos: boolean } | null => {
  const whole = strToU8(reportFile(document, reportStyles));
  if (whole.length <= MAX_ATTACHMENT_BYTES) return { bytes: whole, photos: true };
  const bare = strToU8(reportFile({ ...document, photos: new Map() }, reportStyles));
  return bare.length <= MAX_ATTACHMENT_BYTES ? { bytes: bare, photos: false } : null;
};

/** Does the group have a specialist's device? Null: the hub has not said. */
const useSpecialists = (): boolean | null => {
  const [found, setFound] = useState<boolean | null>(null);
  useEffect(() => {
    let current = true;
    const ask = async () => {
      const answer = await (await store.hub())?.devices();
      if (current && answer?.ok)
        setFound(
          answer.value.devices.some(({ role, revoked }) => role === 'specialist' && !revoked),
        );
    };
    // A hub out of reach leaves it open: the report can be sent all the same.
    ask().catch(() => undefined);
    return () => {
      current = false;
    };
  }, []);
  return found;
};

const Actions = (
  props: TabProps & { readonly document: DocumentProps; readonly ids: readonly Language[] },
) => {
  const { document, ids, review } = props;
  const { report, trade } = document;
  const words = d().report.page;
  const [busy, setBusy] = useState(false);
  const nobody = useSpecialists() === false;
  const project = review.project.id;
  const figures = () => askWorker((desk) => desk.figures(project));

  const send = async () => {
    const file = fittingFile(document);
    if (!file) return showToast({ text: words.tooLarge });
    const kept = await store.putAttachment(file.bytes, 'text/html');
    const saved =
      kept.ok &&
      (await store.save('report', {
        project,
        round: report.round.id,
        title: documentTitle(document).slice(0, 200),
        at: toInstant(Date.now()),
        languages: [...ids],
        ...(trade !== null && { trade }),
        sha256: kept.value,
      }));
    showToast({
      text:
        !saved || !saved.ok
          ? d().trouble
          : !file.photos
            ? words.withoutPhotos
            : nobody
              ? words.sentAhead
              : words.sent,
    });
  };
  const once = (work: () => Promise<void>) => () => {
    if (busy) return;
    setBusy(true);
    void work()
      .catch(() => showToast({ text: d().trouble }))
      .finally(() => setBusy(false));
  };
  const save = (
    ending: string,
    bytes: () => Uint8Array | Promise<Uint8Array>,
    named: readonly string[] = [],
  ) =>
    once(async () => {
      // Tables and JSON hold the whole project, whatever the trade.
      const name = fileName({ report, trade: named.length > 0 ? trade : null }, named, ending);
      await sendFile(name, await bytes());
    });

  return (
    <div class="stack no-print">
      <div class="row">
        <Button onClick={() => window.print()}>{words.print}</Button>
        <Button
          disabled={busy}
          onClick={save('html', () => strToU8(reportFile(document, reportStyles)), ids)}
        >
          {words.html}
        </Button>
        <Button disabled={busy} onClick={save('zip', async () => everythingZip(await figures()))}>
          {words.csv}
        </Button>
        <Button disabled={busy} onClick={save('json', async () => strToU8((await figures()).json))}>
          {words.json}
        </Button>
        <Button kind={nobody ? 'quiet' : 'main'} disabled={busy} onClick={once(send)}>
          {words.send}
        </Button>
      </div>
      {nobody && (
        <Notice tone="plain">
          {`${words.noSpecialist} `}
          <a href="/desk/group">{words.inviteOne}</a>
        </Notice>
      )}
      <Sent {...props} round={report.round.id} />
    </div>
  );
};

/** The report leaves the specialists' list, and can be brought back. */
const erase = async (id: RecordId) => {
  const erased = await store.erase(id);
  showToast(
    erased.ok
      ? {
          text: d().report.board.erased,
          action: { label: t().undo, run: () => void store.restore(id) },
        }
      : { text: d().trouble },
  );
};

/** What the specialists have of this round already. */
const Sent = ({ records, round }: TabProps & { readonly round: RecordId }) => {
  const words = d().report.page;
  const own = records.report
    .filter(({ body }) => body.round === round)
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));
  return (
    <details>
      <summary class="button button-quiet">{`${words.earlier} (${own.length})`}</summary>
      {own.length === 0 ? (
        <p>{words.noneSent}</p>
      ) : (
        <ul>
          {own.map(({ body, revision }) => (
            <li key={revision.id}>
              {`${formatDateTime(body.at)}: ${body.title} `}
              <Button
                kind="quiet"
                aria-label={`${d().report.board.erase}: ${body.title}, ${formatDateTime(body.at)}`}
                onClick={() => void erase(revision.id)}
              >
                {d().report.board.erase}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
};
