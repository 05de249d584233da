/** One pair into one tester's hands. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import {
  readNewHandOut,
  type NewHandOutDraft,
  type NewHandOutTrouble,
} from '../../drafts/hand-out.ts';
import { handOutSchema } from '../../drafts/kept.ts';
import { store } from '../../parts/state.ts';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm } from '../parts/form-parts.tsx';
import { useKept } from '../../parts/kept.tsx';
import { testerLabel } from '../testers/tester-label.ts';
import {
  BlindField,
  freePairs,
  pairLabel,
  Promised,
  SinceField,
  sinceInWords,
} from './hand-out-fields.tsx';

/** @param of the pair, where it is not to be chosen */
export const NewHandOut = ({
  records,
  review,
  of,
  close,
}: TabProps & { readonly of?: RecordId; readonly close: () => void }) => {
  const words = d().pairs;
  const kept = useKept<NewHandOutDraft>({
    key: `new hand-out ${of ?? review.project.id}`,
    schema: handOutSchema,
    begin: () => ({ pair: of ?? '', tester: '', since: null, blind: true }),
  });
  const { draft, setDraft } = kept;
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const change = (part: Partial<NewHandOutDraft>) => setDraft((now) => ({ ...now, ...part }));
  const readNow = () => readNewHandOut(draft, review.project.id, records['hand-out'], Date.now());
  const read = readNow();
  const errorOf = (field: NewHandOutTrouble['field']): string | undefined => {
    const trouble =
      tried && !read.ok ? read.troubles.find((one) => one.field === field) : undefined;
    return trouble && sinceInWords(trouble);
  };
  const save = async () => {
    setTried(true);
    // "Now" is when it is saved.
    const now = readNow();
    if (!now.ok) return '';
    const { pair, tester } = now.body;
    const saved = await saveFromForm('hand-out', now.body);
    if (typeof saved === 'string') return saved;
    await kept.done();
    const names = namesIn(review, records);
    const undo = () => void store.erase(saved.revision.id);
    showToast({
      text: p().pairs.handedOutTo(names.code(pair), names.tester(tester)),
      action: { label: p().pairs.undo, run: undo },
    });
    close();
    return null;
  };
  return (
    <SmallForm save={save} kept={kept}>
      {of === undefined && (
        <SelectField<RecordId>
          label={words.pair}
          value={draft.pair}
          options={freePairs(review).map((one) => ({
            value: one.id,
            label: pairLabel(one, review),
          }))}
          onChange={(pair) => change({ pair })}
          error={errorOf('pair')}
        />
      )}
      {draft.pair !== '' && <Promised {...{ records, review }} pair={draft.pair} />}
      <SelectField<RecordId>
        label={words.handOutTo}
        value={draft.tester}
        options={records.tester.map(({ body, revision }) => ({
          value: revision.id,
          label: testerLabel(body),
        }))}
        onChange={(tester) => change({ tester })}
        error={errorOf('tester')}
      />
      <SinceField
        value={draft.since}
        onInput={(since) => change({ since })}
        error={errorOf('since')}
      />
      <BlindField value={draft.blind} onChange={(blind) => change({ blind })} />
    </SmallForm>
  );
};
