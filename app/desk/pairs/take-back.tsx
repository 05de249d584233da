/** Pairs taken back at one date: those that were selected, or all of a tester's. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { toLocalMinute } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, p } from '../../words/index.ts';
import { readReturn, type ReadReturn } from '../../drafts/hand-out.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { DateTimeField, SmallForm } from '../parts/form-parts.tsx';

/** Saves hand-outs as they are given; how many could not be saved. */
const saveAll = async (
  handOuts: readonly { readonly id: RecordId; readonly body: RecordOf<'hand-out'>['body'] }[],
): Promise<number> => {
  let failed = 0;
  for (const { id, body } of handOuts) if (!(await store.save('hand-out', body, id)).ok) failed++;
  return failed;
};

/** Saves changed hand-outs, says so, and offers to put them back as they were. */
export const saveHandOuts = async (
  changed: readonly { readonly id: RecordId; readonly body: RecordOf<'hand-out'>['body'] }[],
  before: readonly RecordOf<'hand-out'>[],
  said: string,
): Promise<string | null> => {
  const failed = await saveAll(changed);
  if (failed > 0) return d().trouble;
  const undo = async () => {
    const left = await saveAll(before.map(({ revision, body }) => ({ id: revision.id, body })));
    showToast({ text: left > 0 ? d().trouble : p().pairs.undone });
  };
  showToast({ text: said, action: { label: p().pairs.undo, run: () => void undo() } });
  return null;
};

export const TakeBackForm = (
  props: TabProps & {
    readonly rows: readonly { readonly handOut: RecordId | null }[];
    readonly done: () => void;
  },
) => {
  const { records, review, rows, done } = props;
  const words = p().pairs;
  const names = namesIn(review, records);
  /** Null: now. */
  const [back, setBack] = useState<string | null>(null);
  const ids = new Set(rows.map(({ handOut }) => handOut));
  const out = records['hand-out'].filter(({ revision }) => ids.has(revision.id));
  /** Saving was tried: from then on the field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const readNow = () => readReturn(back, out, Date.now());
  const inWords = (read: Exclude<ReadReturn, { ok: true }>): string => {
    if (read.why === 'before-from') return words.beforeOut(read.pairs.map(names.code).join(', '));
    return read.why === 'not-yet' ? words.inFuture : words.backMissing;
  };
  const wrong = readNow();
  const save = async () => {
    setTried(true);
    const read = readNow();
    if (!read.ok) return '';
    const trouble = await saveHandOuts(read.returned, out, words.tookBack(out.length));
    if (trouble === null) done();
    return trouble;
  };
  const label = words.takeBack(out.length);
  return (
    <section class="paper take-back" aria-label={label}>
      <SmallForm
        save={save}
        ask={
          <div class="row">
            <Button kind="main" submit>
              {label}
            </Button>
            <Button kind="quiet" onClick={done}>
              {d().cancel}
            </Button>
          </div>
        }
      >
        <DateTimeField
          label={words.back}
          hint={words.backHint}
          value={back ?? toLocalMinute(Date.now())}
          onInput={setBack}
          error={tried && !wrong.ok ? inWords(wrong) : undefined}
        />
        <p class="soft small">{out.map(({ body }) => names.code(body.pair)).join(', ')}</p>
      </SmallForm>
    </section>
  );
};
