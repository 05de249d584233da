/** My runs: the latest first, to change or erase; what was erased can be brought back. */
import { editBody, type RecordId, type RecordOf, type Run } from '../../core/records/index.ts';
import { Button, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { formatDistance, formatNumber, formatPace, formatStart } from '../parts/format.ts';
import { session, store, useRecords, useStored } from '../parts/state.ts';
import { t } from '../words/index.ts';
import { OwnTests } from './heard/own-tests.tsx';
import { LeadsNote } from './leads-note.tsx';

const feetInWords = ({ feet }: RecordOf<'run'>['body']): string => {
  const words = t().runs;
  if (!feet) return words.notAsked;
  return feet.answer === 'nothing' ? words.nothing : words.complaints(feet.complaints.length);
};

const RunRow = ({ run, code }: { run: RecordOf<'run'>; code: string }) => {
  const words = t();
  const { body, revision } = run;
  const overall = body.comfort?.overall;
  const erase = async () => {
    const erased = await store.erase(revision.id);
    if (!erased.ok) return showToast({ text: words.log.lost });
    showToast({
      text: words.runs.erased,
      action: { label: words.undo, run: () => void restore(revision.id, body) },
    });
  };
  return (
    <li class="sheet">
      <div class="row row-apart">
        <strong>{formatDistance(body.distanceM)}</strong>
        <span class="soft">{code}</span>
      </div>
      <p class="soft small">
        {[
          formatStart(body),
          formatPace(body.distanceM, body.durationS),
          feetInWords(body),
          overall === undefined ? '' : words.runs.comfort(Number(formatNumber(overall, 0))),
        ]
          .filter(Boolean)
          .join(' · ')}
      </p>
      <LeadsNote run={body} />
      <div class="row">
        <a class="button" href={`/run/${revision.id}`}>
          {words.runs.open}
        </a>
        <a class="button button-quiet" href={`/runs/${revision.id}`}>
          {words.change}
        </a>
        <Button kind="quiet" onClick={() => void erase()}>
          {words.erase}
        </Button>
      </div>
    </li>
  );
};

const restore = async (id: RecordId, last: Run) => {
  // Only a lead may write these marks, and a run that its tester brings back is the tester's again.
  const restored =
    last.correctedBy || last.broughtIn
      ? await store.save(
          'run',
          editBody<'run'>(last, { correctedBy: undefined, broughtIn: undefined }),
          id,
        )
      : await store.restore(id);
  if (restored.ok) showToast({ text: t().runs.restored });
};

export const Runs = () => {
  const words = t();
  const runs = useRecords('run');
  const pairs = useRecords('pair');
  const gone = useStored((from) => from.deletedRecords('run'), ['run']);
  // What a lead brought in and took back again is not the tester's to bring back.
  const erased = gone?.filter(({ lastBody }) => lastBody.broughtIn === undefined);
  const tester = session.value?.member;
  const code = (id: RecordId) =>
    pairs?.find(({ revision }) => revision.id === id)?.body.code ?? '?';
  const mine = (runs ?? [])
    .filter(({ body, revision }) => body.tester === tester || revision.author === tester)
    .sort((a, b) => Date.parse(b.body.startedAt) - Date.parse(a.body.startedAt));
  return (
    <Page title={words.runs.title} back={{ href: '/', label: words.back }}>
      <OwnTests />
      {runs === null ? (
        <p class="soft">{words.loading}</p>
      ) : mine.length === 0 ? (
        <p>{words.runs.none}</p>
      ) : (
        <ul class="plain-list stack">
          {mine.map((run) => (
            <RunRow key={run.revision.id} run={run} code={code(run.body.pair)} />
          ))}
        </ul>
      )}
      {erased && erased.length > 0 && (
        <section class="stack">
          <h2>{words.runs.erasedRuns}</h2>
          <ul class="plain-list stack">
            {erased.map(({ id, lastBody }) => (
              <li class="row row-apart" key={id}>
                <span class="soft">
                  {`${formatDistance(lastBody.distanceM)} · ${formatStart(lastBody)}`}
                </span>
                <Button kind="quiet" onClick={() => void restore(id, lastBody)}>
                  {words.runs.bringBack}
                </Button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </Page>
  );
};
