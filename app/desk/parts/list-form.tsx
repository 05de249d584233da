/** Many records at once: typed or pasted one a line, beside what each line will add. */
import { useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { showToast } from '../../parts/controls/toast.tsx';
import { Button, Field } from '../../parts/controls/controls.tsx';
import { d, saidOf } from '../../words/index.ts';
import { SmallForm } from './form-parts.tsx';
import type { ReadLine } from '../../drafts/lines.ts';
import { Some } from './some.tsx';

const LEAST_ROWS = 6;

export const ListForm = <Body, Why extends string>(props: {
  readonly label: string;
  readonly hint: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly rows: readonly ReadLine<Body, Why>[];
  /** So many in words, such as "3 pairs". */
  readonly count: (count: number) => string;
  /** What a line adds, and what is wrong with one. */
  readonly says: (body: Body) => string;
  readonly whys: Readonly<Record<Why, string>>;
  /** Answers the trouble, or null when it is saved. */
  readonly save: (body: Body) => Promise<string | null>;
  readonly close: () => void;
  /** Ways to fill the list, before it. */
  readonly children?: ComponentChildren;
  /** Ways to add to it, after it. */
  readonly after?: ComponentChildren;
}) => {
  const words = d().lines;
  const { text, rows } = props;
  const [saving, setSaving] = useState(false);
  const good = rows.flatMap((row) => (row.ok ? [row] : []));
  const bad = rows.length - good.length;
  const inWords = (row: ReadLine<Body, Why>): string =>
    row.ok
      ? props.says(row.body)
      : words.wrong(
          row.line,
          row.text,
          'first' in row
            ? words.twice(row.first)
            : row.why === 'unclear'
              ? words.unclear
              : props.whys[row.why],
        );
  const saveAll = async () => {
    if (rows.length === 0) return saidOf(props.label, d().missing);
    if (bad > 0) return words.putRight(bad);
    const lines = text.split(/\r?\n/);
    const saved = new Set<number>();
    for (const { line, body } of good) {
      const trouble = await props.save(body);
      if (trouble !== null) return trouble;
      saved.add(line);
      // What is saved leaves the list at once: whatever happens, the rest stands there still.
      props.onText(lines.filter((_, at) => !saved.has(at + 1)).join('\n'));
    }
    showToast({ text: words.added(props.count(good.length)) });
    props.close();
    return null;
  };
  // What is typed meanwhile would be lost: each line that is saved writes the text anew.
  const save = async () => {
    setSaving(true);
    try {
      return await saveAll();
    } finally {
      setSaving(false);
    }
  };
  return (
    <SmallForm save={save}>
      {props.children && (
        <div class="stack" inert={saving}>
          {props.children}
        </div>
      )}
      <div class="two-columns">
        <Field label={props.label} hint={props.hint}>
          {(ids) => (
            <textarea
              class="input"
              rows={Math.max(LEAST_ROWS, text.split('\n').length)}
              autocomplete="off"
              spellcheck={false}
              required
              readOnly={saving}
              {...ids}
              value={text}
              onInput={(event) => props.onText(event.currentTarget.value)}
            />
          )}
        </Field>
        <section class="stack" aria-label={words.check}>
          <p role="status">
            {rows.length === 0
              ? words.nothingYet
              : [
                  words.willBeAdded(props.count(good.length)),
                  ...(bad > 0 ? [words.putRight(bad)] : []),
                ].join(' ')}
          </p>
          <ul class="plain-list">
            <Some of={rows}>
              {(row) => (
                <li key={row.line} class={row.ok ? '' : 'outside'}>
                  {inWords(row)}
                </li>
              )}
            </Some>
          </ul>
        </section>
      </div>
      {props.after && (
        <div class="stack" inert={saving}>
          {props.after}
        </div>
      )}
    </SmallForm>
  );
};

/** Fields that write into the list: Enter in one of them does so, and saves nothing yet. */
export const ListDraw = (props: {
  readonly label: string;
  readonly act: () => void;
  readonly children: ComponentChildren;
}) => (
  <div
    class="list-draw"
    onKeyDown={(event) => {
      if (event.key !== 'Enter' || event.isComposing || !(event.target instanceof HTMLInputElement))
        return;
      event.preventDefault();
      props.act();
    }}
  >
    {props.children}
    <Button onClick={props.act}>{props.label}</Button>
  </div>
);
