/** The first step: a table is pasted or chosen as a file. */
import { useId } from 'preact/hooks';
import { Field } from '../../parts/controls/controls.tsx';
import { p } from '../../words/index.ts';
import { tableText } from '../../drafts/table.ts';

const ROWS = 8;

export const TakeTable = (props: { readonly onText: (text: string) => void }) => {
  const words = p().tables;
  const id = useId();
  const read = async (file: File | undefined) => {
    if (file) props.onText(tableText(await file.arrayBuffer()));
  };
  return (
    <div class="table-take">
      <Field label={words.paste} hint={words.pasteHint}>
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
          {words.file}
        </label>
        <input
          id={id}
          class="input"
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values"
          onChange={(event) => void read(event.currentTarget.files?.[0])}
        />
      </div>
    </div>
  );
};
