/** Pairs taken back at one date: those that were selected, or all of a tester's. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { toLocalMinute } from '../../parts/instant.ts';
import { d, listed, p } from '../../words/index.ts';
import { readReturn, type ReadReturn } from '../../drafts/hand-out.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { DateTimeField, SmallForm } from '../parts/form-parts.tsx';
import { saveSeveral } from '../parts/save-several.ts';

export const TakeBackForm = (
  props: TabProps & {
    readonly rows: readonly { readonly handOut: RecordId | null }[];
    readonly done: () => void;
    readonly cancel: () => void;
  },
) => {
  const { records, review, rows, done, cancel } = props;
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
    if (read.why === 'before-from') return words.beforeOut(listed(read.pairs.map(names.code)));
    return read.why === 'not-yet' ? words.inFuture : words.backMissing;
  };
  const wrong = readNow();
  const save = async () => {
    setTried(true);
    const read = readNow();
    if (!read.ok) return '';
    const trouble = await saveSeveral('hand-out', read.returned, out, words.tookBack(out.length));
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
            <Button kind="quiet" onClick={cancel}>
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
        <p class="soft small">{listed(out.map(({ body }) => names.code(body.pair)))}</p>
      </SmallForm>
    </section>
  );
};
