/** The first step: a table is pasted or chosen as a file. */
import { useId, useState } from 'preact/hooks';
import { Field, Notice } from '../../parts/controls/controls.tsx';
import { d, p } from '../../words/index.ts';

const ROWS = 8;

export const TakeTable = (props: {
  /** What a table must hold; absent: whatever a spreadsheet has. */
  readonly hint?: string;
  /** Of the choice of a file. */
  readonly file?: string;
  readonly onText: (text: string) => void;
}) => {
  const words = p().tables;
  const id = useId();
  const [failed, setFailed] = useState(false);
  const read = async (file: File | undefined) => {
    setFailed(false);
    if (!file) return;
    // The reader of tables is fetched with the first file.
    const { tableText } = await import('../../drafts/table.ts');
    props.onText(tableText(await file.arrayBuffer()));
  };
  return (
    <div class="table-take">
      <Field label={words.paste} hint={props.hint ?? words.pasteHint}>
        {(ids) => (
          <textarea
            class="input"
            rows={ROWS}
            autocomplete="off"
            spellcheck={false}
            wrap="off"
            {...ids}
            onInput={(event) => props.onText(event.currentTarget.value)}
          />
        )}
      </Field>
      <div class="field">
        <label class="label" for={id}>
          {props.file ?? words.file}
        </label>
        <input
          id={id}
          class="input"
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values"
          onChange={(event) => {
            read(event.currentTarget.files?.[0]).catch(() => setFailed(true));
          }}
        />
      </div>
      {failed && (
        <Notice tone="danger" live>
          {d().trouble}
        </Notice>
      )}
    </div>
  );
};
