/** What can be done with a report: print it, save it, send it to the specialists; and what they have already. */
import { useEffect, useState } from 'preact/hooks';
import { strToU8 } from 'fflate';
import { MAX_ATTACHMENT_BYTES, type RecordId } from '../../../core/records/index.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { sendFile } from '../../parts/send-file.ts';
import { store } from '../../parts/state.ts';
import type { DocumentProps } from '../../report/document-props.ts';
import { documentTitle } from '../../report/document.tsx';
import { fileName, reportFile } from '../../report/file.tsx';
import { clauses, d, saidOf, t, type Language } from '../../words/index.ts';
import { askWorker, type TabProps } from '../desk-state.ts';
import { everythingZip } from './everything.ts';
import { reportStyles } from './styles.ts';

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

export const Actions = (
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
              {`${saidOf(formatDateTime(body.at), body.title)} `}
              <Button
                kind="quiet"
                aria-label={saidOf(
                  d().report.board.erase,
                  clauses(body.title, formatDateTime(body.at)),
                )}
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
