/** What a run said before, and what another device said at the same time; and taking it back for good. */
import { useLocation } from 'preact-iso';
import {
  readBody,
  stampParts,
  unseenByHead,
  type RecordId,
  type Revision,
} from '../../core/records/index.ts';
import { Button, Notice, Page } from '../parts/controls/controls.tsx';
import { formatDateTime, formatDistance } from '../parts/format.ts';
import { store, useStored } from '../parts/state.ts';
import { t } from '../words/index.ts';

const Version = ({ revision }: { revision: Revision }) => {
  const words = t();
  const read = revision.body === null ? null : readBody('run', revision.body);
  return (
    <li>
      <strong>{read?.ok ? formatDistance(read.body.distanceM) : words.runs.erased}</strong>{' '}
      <span class="soft small">
        {words.runs.savedAt(formatDateTime(stampParts(revision.stamp).ms))}
      </span>
    </li>
  );
};

export const RunHistory = ({ run }: { run: string }) => {
  const words = t();
  const { route } = useLocation();
  const history = useStored((from) => from.history(run as RecordId), ['run'], [run]);
  const takeBack = async () => {
    if (!window.confirm(words.runs.takeBackAsk)) return;
    if ((await store.eraseForGood(run as RecordId)).ok) route('/runs', true);
  };
  const lost = history ? unseenByHead(history) : [];
  return (
    <Page title={words.runs.history} back={{ href: `/run/${run}`, label: words.back }}>
      {history && (
        <>
          {lost.length > 0 && (
            <Notice tone="warn">
              <p>{words.runs.beside}</p>
              <ul class="plain-list">
                {lost.map((revision) => (
                  <Version key={revision.hash} revision={revision} />
                ))}
              </ul>
            </Notice>
          )}
          <ol class="plain-list stack">
            {[...history.older, history.head].reverse().map((revision) => (
              <Version key={revision.hash} revision={revision} />
            ))}
          </ol>
          <Button kind="danger" onClick={() => void takeBack()}>
            {words.runs.takeBack}
          </Button>
        </>
      )}
    </Page>
  );
};
