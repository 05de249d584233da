/** Small pieces that the desk's forms share. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import type { BodyOf, Kind, RecordId, RecordOf } from '../../../core/records/index.ts';
import { Button, Field, Notice } from '../../parts/controls/controls.tsx';
import { useLimit } from '../../parts/controls/limited-field.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import type { ManyDraft, SaveProblem } from '../../store/index.ts';
import { d } from '../../words/index.ts';
import { KeptNotice, type Kept } from '../../parts/kept.tsx';
import { Select } from './options.tsx';

/** Whether a field may stay empty; as words: what that means, or what else is to know. */
type MayBeEmpty = boolean | string | undefined;

/** The label of a field, or the title of several, with word of it where they may stay empty: all others must be filled. */
export const labelOf = (label: string, optional: MayBeEmpty): string =>
  optional === undefined || optional === false
    ? label
    : d().optional(label, optional === true ? null : optional);

/** As long as one line of a record may be. */
const LINE = 200;

export const TextField = (props: {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly hint?: string;
  /** What is wrong with it. */
  readonly error?: string | undefined;
  readonly numeric?: boolean;
  readonly optional?: MayBeEmpty;
  /** Where it does not follow from `optional`: the title over several fields, or words beside them, say it. */
  readonly required?: boolean;
  /** So many characters at most: one line, unless said otherwise. */
  readonly most?: number;
}) => {
  const { limits, note } = useLimit(props.value, props.most ?? LINE);
  return (
    <Field
      label={labelOf(props.label, props.optional)}
      hint={note ?? props.hint}
      error={props.error}
    >
      {(ids) => (
        <input
          class="input"
          inputMode={props.numeric ? 'decimal' : 'text'}
          autocomplete="off"
          required={props.required ?? !props.optional}
          {...ids}
          {...limits}
          value={props.value}
          onInput={(event) => props.onInput(event.currentTarget.value)}
        />
      )}
    </Field>
  );
};

export const DateTimeField = (props: {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly hint?: string;
  /** What is wrong with it. */
  readonly error?: string | undefined;
  readonly optional?: boolean;
  /** A day without its hour. */
  readonly isDay?: boolean;
}) => (
  <Field
    label={labelOf(props.label, props.isDay && props.optional)}
    hint={props.hint}
    error={props.error}
  >
    {(ids) => (
      <input
        class="input"
        type={props.isDay ? 'date' : 'datetime-local'}
        required={!props.optional}
        {...ids}
        value={props.value}
        onInput={(event) => props.onInput(event.currentTarget.value)}
      />
    )}
  </Field>
);

export const SelectField = <T extends string>(props: {
  readonly label: string;
  readonly value: T | '';
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
  readonly optional?: boolean;
  /** What is wrong with it. */
  readonly error?: string | undefined;
}) => (
  <Field label={labelOf(props.label, props.optional)} error={props.error}>
    {(ids) => (
      <Select<T | ''>
        class="input"
        // One without an empty choice cannot stay empty, and many of those only set what is shown.
        required={props.value === '' && !props.optional}
        {...ids}
        value={props.value}
        options={[
          ...(props.value === '' ? [{ value: '' as const, label: d().none }] : []),
          ...props.options,
        ]}
        onChoose={(value) => props.onChange(value as T)}
      />
    )}
  </Field>
);

/** Saves a record. @returns it, or in words why it could not be saved */
const trySave = async <K extends Kind>(
  kind: K,
  body: BodyOf<K>,
  id?: RecordId,
): Promise<RecordOf<K> | string> => {
  const saved = await store.save(kind, body, id);
  return saved.ok ? saved.value : problemInWords(saved);
};

const problemInWords = (problem: SaveProblem): string => {
  if (problem.why !== 'invalid') return d().trouble;
  const field = problem.problems[0]?.field ?? '';
  return field === 'code' ? d().notACode : `${d().wrongNumber} ${field}`;
};

/** Saves a record and says so; null where it could not be saved, after saying that. */
export const saveRecord = async <K extends Kind>(
  kind: K,
  body: BodyOf<K>,
  id?: RecordId,
): Promise<RecordOf<K> | null> => {
  const saved = await trySave(kind, body, id);
  showToast({ text: typeof saved === 'string' ? saved : d().saved });
  return typeof saved === 'string' ? null : saved;
};

/** Saves a record and says so; what went wrong is answered, for the form to say it in its one place. */
export const saveFromForm = async <K extends Kind>(
  kind: K,
  body: BodyOf<K>,
  id?: RecordId,
): Promise<RecordOf<K> | string> => {
  const saved = await trySave(kind, body, id);
  if (typeof saved !== 'string') showToast({ text: d().saved });
  return saved;
};

/** Saves several records, all or nothing, and says so. @returns null, or in words why they could not be saved */
export const saveAllFromForm = async (drafts: readonly ManyDraft[]): Promise<string | null> => {
  const saved = await store.saveAll(drafts);
  if (!saved.ok) return problemInWords(saved);
  showToast({ text: d().saved });
  return null;
};

/** A form behind a button: opens in place, closes when it is saved. */
export const Unfold = (props: {
  readonly label: string;
  /** From the beginning. */
  readonly isOpen?: boolean;
  readonly children: (close: () => void) => ComponentChildren;
}) => {
  const [open, setOpen] = useState(props.isOpen === true);
  const close = () => setOpen(false);
  return open ? (
    <OpenForm label={props.label} close={close} takesFocus={props.isOpen === true}>
      {props.children(close)}
    </OpenForm>
  ) : (
    <Button onClick={() => setOpen(true)}>{props.label}</Button>
  );
};

/** A form that is open, with the way out of it. */
export const OpenForm = (props: {
  readonly label: string;
  readonly close: () => void;
  /** The place was opened for it: a person with a keyboard goes on typing. */
  readonly takesFocus?: boolean;
  readonly children: ComponentChildren;
}) => {
  const form = useRef<HTMLElement>(null);
  useEffect(() => {
    // On a phone the keyboard would hide what the form asks.
    if (props.takesFocus && matchMedia('(pointer: fine)').matches)
      form.current?.querySelector<HTMLElement>('input, textarea, select')?.focus();
    // Only as it opens.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, []);
  return (
    <section class="sheet" aria-label={props.label} ref={form}>
      <div class="row row-apart">
        <h2>{props.label}</h2>
        <Button kind="quiet" onClick={props.close}>
          {d().cancel}
        </Button>
      </div>
      {props.children}
    </section>
  );
};

/**
 * A form that says what is missing instead of saving it. `save` answers the trouble, or null when done; an empty text
 * where a field says it, or a question (`data-ask`) waits at one, which is then brought to the person.
 */
export const SmallForm = (props: {
  readonly save: () => Promise<string | null>;
  /** Its draft, where it is kept until it is saved. */
  readonly kept?: Kept;
  /** What its button does; absent: it saves. */
  readonly label?: string;
  /** A question in the place of its button, with a button of its own that sends the form. */
  readonly ask?: ComponentChildren;
  readonly children: ComponentChildren;
}) => {
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (!saving && trouble === '')
      form.current?.querySelector<HTMLElement>('[aria-invalid], [data-ask]')?.focus();
  }, [saving, trouble]);
  const save = async () => {
    // A second press while the first is under way would save it twice.
    if (saving) return;
    setSaving(true);
    setTrouble(await props.save().catch(() => d().trouble));
    setSaving(false);
  };
  return (
    <form
      class="stack"
      ref={form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      {props.kept && <KeptNotice {...props.kept} />}
      {props.children}
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      {props.ask ?? (
        <Button kind="main" submit>
          {props.label ?? d().save}
        </Button>
      )}
    </form>
  );
};
