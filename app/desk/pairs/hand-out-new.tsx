/** One pair into one tester's hands. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm } from '../parts/form-parts.tsx';
import { testerLabel } from '../testers/tester-label.ts';
import {
  BlindField,
  freePairs,
  pairLabel,
  SinceField,
  sinceMs,
  troubleInWords,
} from './hand-out-fields.tsx';

/** @param of the pair, where it is not to be chosen */
export const NewHandOut = ({
  records,
  review,
  of,
  close,
}: TabProps & { readonly of?: RecordId; readonly close: () => void }) => {
  const words = d().pairs;
  const [pair, setPair] = useState<RecordId | ''>(of ?? '');
  const [tester, setTester] = useState<RecordId | ''>('');
  const [blind, setBlind] = useState(true);
  /** Null: now. */
  const [since, setSince] = useState<string | null>(null);
  const save = async () => {
    if (pair === '' || tester === '') return d().missing;
    const project = review.project.id;
    const fromMs = sinceMs(since);
    const trouble = troubleInWords(records['hand-out'], pair, fromMs);
    if (trouble !== null) return trouble;
    const from = toInstant(fromMs);
    const saved = await saveFromForm('hand-out', { project, pair, tester, from, blind });
    if (typeof saved === 'string') return saved;
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
    <SmallForm save={save}>
      {of === undefined && (
        <SelectField
          label={words.pair}
          value={pair}
          options={freePairs(review).map((one) => ({
            value: one.id,
            label: pairLabel(one, review),
          }))}
          onChange={setPair}
        />
      )}
      <SelectField
        label={words.handOutTo}
        value={tester}
        options={records.tester.map(({ body, revision }) => ({
          value: revision.id,
          label: testerLabel(body),
        }))}
        onChange={setTester}
      />
      <SinceField value={since} onInput={setSince} />
      <BlindField value={blind} onChange={setBlind} />
    </SmallForm>
  );
};
