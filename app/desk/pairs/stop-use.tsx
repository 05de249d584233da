/** Pairs that nobody may run in: the notice, who has read it, and its end. */
import { useState } from 'preact/hooks';
import { editBody, type RecordId, type RecordOf } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { comma, d, p, saidOf } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import {
  saveFromForm,
  saveRecord,
  SelectField,
  SmallForm,
  TextField,
} from '../parts/form-parts.tsx';
import { linksOf } from '../frame/route.ts';
import { NotRead } from './not-read.tsx';

/** @param pairs of which it is; absent: a pair or a whole round is chosen */
export const StopUseForm = (
  props: TabProps & { readonly pairs?: readonly RecordId[]; readonly close: () => void },
) => {
  const { review, close } = props;
  const words = d().pairs;
  const [target, setTarget] = useState<RecordId | ''>('');
  const [reason, setReason] = useState('');
  const save = async () => {
    const pairs =
      props.pairs ??
      review.pairs.filter(({ id, round }) => id === target || round === target).map(({ id }) => id);
    if (pairs.length === 0 || reason.trim() === '') return d().missing;
    const saved = await saveFromForm('stop-use', {
      project: review.project.id,
      pairs: [...pairs],
      reason: reason.trim(),
      from: toInstant(Date.now()),
    });
    if (typeof saved === 'string') return saved;
    const undo = async () => {
      const erased = await store.erase(saved.revision.id);
      showToast({ text: erased.ok ? p().pairs.undone : d().trouble });
    };
    showToast({
      text: p().pairs.stoppedNow(pairs.length),
      action: { label: p().pairs.undo, run: () => void undo() },
    });
    close();
    return null;
  };
  return (
    <SmallForm
      save={save}
      {...(props.pairs && { label: p().pairs.stopSelected(props.pairs.length) })}
    >
      {props.pairs === undefined && (
        <SelectField
          label={`${words.pair} / ${words.round}`}
          value={target}
          options={[
            ...review.rounds.map(({ id, name }) => ({ value: id, label: name })),
            ...review.pairs.map(({ id, code }) => ({ value: id, label: code })),
          ]}
          onChange={setTarget}
        />
      )}
      <TextField label={words.stopReason} value={reason} onInput={setReason} />
    </SmallForm>
  );
};

/** Who holds such a pair now, and which of them have said that they read the notice. */
const readersOf = ({ records, review }: TabProps, stop: RecordOf<'stop-use'>) => {
  const holders = new Set(
    review.pairs.flatMap(({ id, holder }) =>
      holder !== null && stop.body.pairs.includes(id) ? [holder] : [],
    ),
  );
  const read = new Set(
    records.acknowledgement
      .filter(({ body }) => body.stopUse === stop.revision.id && holders.has(body.tester))
      .map(({ body }) => body.tester),
  );
  return {
    read: read.size,
    holders: holders.size,
    waiting: [...holders].filter((one) => !read.has(one)),
  };
};

const ReadBy = (props: TabProps & { readonly stop: RecordOf<'stop-use'> }) => {
  const { records, review, stop } = props;
  const { read, holders, waiting } = readersOf(props, stop);
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  return (
    <>
      <span class="soft">{d().pairs.readBy(read, holders)}</span>
      <NotRead
        notice={stop.revision.id}
        testers={waiting.map((id) => ({ id, code: names.tester(id), href: links.tester(id) }))}
      />
    </>
  );
};

/** The notices that stand, of the project or of one pair. */
export const Notices = (props: TabProps & { readonly pair?: RecordId }) => {
  const { records, review, pair } = props;
  const words = p().pairs;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const standing = records['stop-use'].filter(
    ({ body }) =>
      body.project === review.project.id &&
      body.until === undefined &&
      (pair === undefined || body.pairs.includes(pair)),
  );
  if (standing.length === 0) return null;
  return (
    <section class="people-notices" aria-label={words.notices}>
      <h2>{words.notices}</h2>
      <ul class="plain-list">
        {standing.map((stop) => (
          <li class="row row-apart" key={stop.revision.id}>
            <span class="grow">
              {stop.body.pairs.map((id, at) => (
                <span key={id}>
                  {at > 0 && comma()}
                  <a href={links.pair(id)}>{names.code(id)}</a>
                </span>
              ))}
              {`${saidOf('', stop.body.reason)} `}
              <ReadBy {...props} stop={stop} />
            </span>
            <Button
              kind="quiet"
              onClick={() =>
                void saveRecord(
                  'stop-use',
                  editBody<'stop-use'>(stop.body, { until: toInstant(Date.now()) }),
                  stop.revision.id,
                )
              }
            >
              {words.endNotice}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
};
