/** What is typed into a form is kept on this device as it stands, until it is saved: leaving by accident loses nothing. */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { keptDraft } from '../drafts/kept.ts';
import type { KeptSchema } from '../drafts/kept-schema.ts';
import { Button, Notice } from './controls/controls.tsx';
import { showToast } from './controls/toast.tsx';
import { store } from './state.ts';
import { d, t } from '../words/index.ts';

export interface KeptForm<T> {
  /** Of the form and what it is about: one draft each. */
  readonly key: string;
  /** Stamp of the record that is changed; absent: a new one. */
  readonly of?: string | undefined;
  readonly schema: KeptSchema<T>;
  readonly begin: () => T;
}

export interface Kept {
  /** What stands in the form was typed before it was opened. */
  readonly isFromBefore: boolean;
  readonly afresh: () => void;
}

/**
 * The draft of a form.
 * @returns `done` once it is saved: nothing is kept of it any more
 */
export const useKept = <T,>({ key, of = '', schema, begin }: KeptForm<T>) => {
  const [draft, setDraftHere] = useState(begin);
  const [isFromBefore, setFromBefore] = useState(false);
  const isTouched = useRef(false);
  useEffect(() => {
    let isOpen = true;
    store.draft(key).then(
      (value) => {
        const found = keptDraft(value, of, schema);
        if (!isOpen || isTouched.current || found === null) return;
        setDraftHere(() => found);
        setFromBefore(true);
      },
      // A device that cannot be read from says so wherever the log is shown.
      () => {},
    );
    return () => {
      isOpen = false;
    };
  }, [key, of, schema]);
  // Before the next picture, not after it: a form that is left at once keeps its last key too.
  useLayoutEffect(() => {
    // Where there is no room the form still holds it, and saving it will say so.
    if (isTouched.current) store.saveDraft(key, { of, draft }).catch(() => {});
  }, [draft, key, of]);
  const setDraft = (next: (now: T) => T) => {
    isTouched.current = true;
    setDraftHere(next);
  };
  const done = async () => {
    isTouched.current = false;
    setFromBefore(false);
    await store.dropDraft(key).catch(() => {});
  };
  const afresh = () => {
    const before = draft;
    void done();
    setDraftHere(begin);
    showToast({
      text: d().kept.dropped,
      action: { label: t().undo, run: () => setDraft(() => before) },
    });
  };
  return { draft, setDraft, isFromBefore, done, afresh };
};

/** Says that a form holds what was typed before, and empties it. */
export const KeptNotice = ({ isFromBefore, afresh }: Kept) =>
  isFromBefore ? (
    <Notice>
      <div class="row row-apart">
        <span>{d().kept.fromBefore}</span>
        <Button onClick={afresh}>{d().kept.afresh}</Button>
      </div>
    </Notice>
  ) : null;
