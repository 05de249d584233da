/** A report that was sent, shown inside the app, so that it opens without a network and under the app's own rules. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { RecordId, RecordOf, Sha256 } from '../../core/records/index.ts';
import { Button, Page } from '../parts/controls/controls.tsx';
import { formatDate } from '../parts/format.ts';
import { ownTree } from '../parts/own-tree.tsx';
import { PrintedTitle } from '../parts/printed-title.ts';
import { sendFile } from '../parts/send-file.ts';
import { store, useStored } from '../parts/state.ts';
import { clauses, d, t } from '../words/index.ts';
import { readReport } from './read-report.ts';

export const ReportScreen = ({ id }: { id: string }) => {
  const report = useStored((from) => from.get('report', id as RecordId), ['report'], [id]);
  return (
    <Page title={d().tabs.report} wide back={{ href: '/', label: t().back }}>
      {report && <Opened body={report.body} />}
    </Page>
  );
};

/** A title as a name that every system takes for a file. */
const nameOf = (title: string): string =>
  `${title.replace(/[^\p{L}\p{N}+]+/gu, '-').slice(0, 80)}.html`;

type Found = { readonly bytes: Uint8Array } | 'missing' | null;

const Opened = ({ body }: { body: RecordOf<'report'>['body'] }) => {
  const words = d().report.reader;
  const [found, setFound] = useState<Found>(null);
  const { sha256 } = body;
  useEffect(() => {
    let current = true;
    const none = () => null;
    void store
      .attachment(sha256 as Sha256)
      .catch(none)
      .then((file) => current && setFound(file ?? 'missing'));
    return () => {
      current = false;
    };
  }, [sha256]);
  if (found === null) return <p class="soft">{t().loading}</p>;
  if (found === 'missing') return <p>{words.missing}</p>;
  return (
    <>
      <PrintedTitle title={clauses(body.title, formatDate(body.at))} />
      <div class="row">
        <Button onClick={() => void sendFile(nameOf(body.title), found.bytes)}>{words.save}</Button>
      </div>
      <Shown bytes={found.bytes} />
    </>
  );
};

/** The document in a tree of its own, where neither its styles nor the app's touch the other. */
const Shown = ({ bytes }: { bytes: Uint8Array }) => {
  const place = useRef<HTMLDivElement>(null);
  const [unreadable, setUnreadable] = useState(false);
  useEffect(() => {
    const host = place.current;
    if (!host) return;
    const read = readReport(new TextDecoder().decode(bytes));
    if (!read) return setUnreadable(true);
    ownTree(host, read.styles).replaceChildren(document.importNode(read.article, true));
  }, [bytes]);
  return unreadable ? <p>{d().report.reader.unreadable}</p> : <div ref={place} />;
};
