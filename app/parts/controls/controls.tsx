/** The controls that every screen is made of: native elements with a label and a clear state. */
import type { ComponentChildren, JSX } from 'preact';
import { saidOf } from '../../words/index.ts';
import { useId } from 'preact/hooks';

export type ButtonKind = 'plain' | 'main' | 'quiet' | 'danger';

const classOf = (kind: ButtonKind, big?: boolean): string =>
  `button${kind === 'plain' ? '' : ` button-${kind}`}${big ? ' button-big' : ''}`;

export interface ButtonProps extends Omit<JSX.IntrinsicElements['button'], 'class' | 'type'> {
  readonly kind?: ButtonKind;
  readonly big?: boolean;
  readonly submit?: boolean;
}

export const Button = ({ kind = 'plain', big, submit, ...rest }: ButtonProps) => (
  <button type={submit ? 'submit' : 'button'} class={classOf(kind, big)} {...rest} />
);

export interface LinkButtonProps {
  readonly href: string;
  readonly kind?: ButtonKind;
  readonly big?: boolean;
  readonly children: ComponentChildren;
}

/** A link that looks like a button, for going somewhere. */
export const LinkButton = ({ kind = 'plain', big, ...rest }: LinkButtonProps) => (
  <a class={classOf(kind, big)} {...rest} />
);

export interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  /** Gets the ids that tie label, hint and error to the control. */
  readonly children: (ids: {
    readonly id: string;
    readonly 'aria-describedby'?: string;
    readonly 'aria-invalid'?: true;
  }) => ComponentChildren;
}

/** A labelled control with its hint and, where something is wrong, what to do about it. */
export const Field = ({ label, hint, error, children }: FieldProps) => {
  const id = useId();
  const about = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div class="field">
      <label class="label" for={id}>
        {label}
      </label>
      {children({
        id,
        ...(about && { 'aria-describedby': about }),
        ...(error && { 'aria-invalid': true as const }),
      })}
      {about && (
        <div class="field-notes">
          {hint && (
            <span class="soft small" id={`${id}-hint`}>
              {hint}
            </span>
          )}
          {error && (
            <span class="field-error" id={`${id}-error`}>
              {error}
            </span>
          )}
        </div>
      )}
    </div>
  );
};

export interface ChoiceOption<T extends string> {
  readonly value: T;
  readonly label: string;
}

export interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly options: readonly ChoiceOption<T>[];
  readonly value: T | null;
  readonly onChange: (value: T) => void;
  readonly hideLabel?: boolean;
  /** Eleven numbers in two rows, with words for the first and the last. */
  readonly ten?: Ends;
}

export interface Ends {
  readonly low: string;
  readonly high: string;
}

/** One of a few: radio buttons that read as chips. Nothing is chosen until the person chooses. */
export const Choice = <T extends string>(props: ChoiceProps<T>) => {
  const name = useId();
  const { ten, options } = props;
  const endAt = (at: number): string | undefined =>
    at === 0 ? ten?.low : at === options.length - 1 ? ten?.high : undefined;
  return (
    <fieldset class="field">
      <legend class={props.hideLabel ? 'hidden-words' : 'label'}>{props.label}</legend>
      <div class={ten ? 'choices-ten' : 'choices'}>
        {options.map(({ value, label }, at) => (
          <label class="choice" key={value}>
            <input
              type="radio"
              name={name}
              value={value}
              checked={value === props.value}
              onChange={() => props.onChange(value)}
              {...(endAt(at) && { 'aria-label': saidOf(label, endAt(at) ?? '') })}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
      {ten && (
        <div class="scale-words" aria-hidden="true">
          <span>{`${options[0]?.label} ${ten.low}`}</span>
          <span>{`${options.at(-1)?.label} ${ten.high}`}</span>
        </div>
      )}
    </fieldset>
  );
};

export interface ChoicesProps<T extends string> {
  readonly label: string;
  readonly options: readonly ChoiceOption<T>[];
  readonly values: ReadonlySet<T>;
  readonly onToggle: (value: T) => void;
  /** A last chip that brings further options. */
  readonly more?: { readonly label: string; readonly onOpen: () => void };
}

/** Any number of a few: check boxes that read as chips. */
export const Choices = <T extends string>(props: ChoicesProps<T>) => (
  <fieldset class="field">
    <legend class="label">{props.label}</legend>
    <div class="choices">
      {props.options.map(({ value, label }) => (
        <label class="choice" key={value}>
          <input
            type="checkbox"
            checked={props.values.has(value)}
            onChange={() => props.onToggle(value)}
          />
          <span>{label}</span>
        </label>
      ))}
      {props.more && (
        <Button kind="quiet" onClick={props.more.onOpen}>
          {props.more.label}
        </Button>
      )}
    </div>
  </fieldset>
);

const TEN = Array.from({ length: 11 }, (_, at) => ({ value: String(at), label: String(at) }));

/** A whole number from 0 to 10, or no answer. */
export const Ten = (props: {
  readonly label: string;
  readonly ends: Ends;
  readonly value: number | null;
  readonly onChange: (value: number) => void;
}) => (
  <Choice
    ten={props.ends}
    label={props.label}
    options={TEN}
    value={props.value === null ? null : String(props.value)}
    onChange={(value) => props.onChange(Number(value))}
  />
);

export const Notice = (props: {
  readonly tone?: 'plain' | 'warn' | 'danger';
  /** Read out at once where it appears in answer to something. */
  readonly live?: boolean;
  readonly children: ComponentChildren;
}) => (
  <div
    class={`notice${props.tone && props.tone !== 'plain' ? ` notice-${props.tone}` : ''}`}
    {...(props.live && { role: 'alert' })}
  >
    {props.children}
  </div>
);

/** A screen: heading, a way back where there is one, and its content. */
export const Page = (props: {
  readonly title: string;
  readonly back?: { readonly href: string; readonly label: string };
  readonly aside?: ComponentChildren;
  /** A page of tables and maps: as wide as the window has room. */
  readonly wide?: boolean;
  readonly children: ComponentChildren;
}) => (
  <main class={props.wide ? 'page desk' : 'page'}>
    <header class="page-head">
      {props.back && (
        <a class="back" href={props.back.href} aria-label={props.back.label}>
          <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
            <path d="M15 5l-7 7 7 7" />
          </svg>
        </a>
      )}
      <h1>{props.title}</h1>
      {props.aside}
    </header>
    {props.children}
  </main>
);
