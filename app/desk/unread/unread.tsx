/** Records that cannot be read because a number in them cannot be: which, what is wrong, and the way to put it right. */
import { useState } from 'preact/hooks';
import { isIn, rangeAt, readBody, type Kind, type LeftOut } from '../../../core/records/index.ts';
import { parseDecimal } from '../../../core/units/typed.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { formatNumber } from '../../parts/format.ts';
import { store } from '../../parts/state.ts';
import { clauses, d, terms } from '../../words/index.ts';
import { fieldInWords, problemsInWords, recordInWords } from '../../words/say-left-out.ts';
import { saveFromForm, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { Some } from '../parts/some.tsx';
import type { DeskRecords } from '../worker/desk-work.ts';
import { withNumbers } from './with-numbers.ts';

const words = () => ({ desk: d(), glossary: terms(), number: formatNumber });

export const Unread = ({ records: { unread } }: { readonly records: DeskRecords }) =>
  unread.all === 0 ? null : (
    <Notice tone="danger">
      <h2>{d().unread.title(unread.all)}</h2>
      <p>{d().unread.what}</p>
      <ul>
        <Some of={unread.first} step={5}>
          {(one) => (
            <li key={one.id}>
              <strong>{recordInWords(one, words())}</strong>
              <ul>
                {problemsInWords(one, words()).map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              {canBeCorrected(one) && (
                <Unfold label={d().unread.correct}>
                  {(close) => <Correction one={one} close={close} />}
                </Unfold>
              )}
            </li>
          )}
        </Some>
      </ul>
    </Notice>
  );

/** Numbers can be typed anew here; whatever else is wrong was not written by any version of this app. */
const canBeCorrected = ({ kind, problems = [] }: LeftOut): boolean =>
  problems.length > 0 && problems.every(({ field }) => rangeAt(kind, field) !== null);

const Correction = ({ one, close }: { readonly one: LeftOut; readonly close: () => void }) => {
  const fields = (one.problems ?? []).map(({ field }) => field);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [wrong, setWrong] = useState<string | null>(null);
  const save = async (): Promise<string | null> => {
    const numbers = new Map<string, number>();
    for (const field of fields) {
      const value = parseDecimal(typed[field] ?? '');
      const range = rangeAt(one.kind, field);
      if (value === null || !range || !isIn(value, range)) {
        setWrong(field);
        return '';
      }
      numbers.set(field, value);
    }
    setWrong(null);
    const head = (await store.history(one.id))?.head;
    if (!head?.body) return d().trouble;
    const kind = one.kind as Kind;
    const read = readBody(kind, withNumbers(head.body, numbers));
    // Somebody else may have changed it meanwhile.
    if (!read.ok) return d().trouble;
    const saved = await saveFromForm(kind, read.body, one.id);
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      {fields.map((field) => {
        const range = rangeAt(one.kind, field);
        const hint = range ? sayRange(range) : '';
        return (
          <TextField
            key={field}
            label={clauses(fieldInWords(field, words()), ...(range?.unit ? [range.unit] : []))}
            hint={hint}
            value={typed[field] ?? ''}
            onInput={(value) => setTyped({ ...typed, [field]: value })}
            error={wrong === field ? hint : undefined}
            numeric
          />
        );
      })}
    </SmallForm>
  );
};
