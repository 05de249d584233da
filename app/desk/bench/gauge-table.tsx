/** A gauge study read from a table: pasted, or a file; what cannot be read is told by line and column. */
import { useId, useState } from 'preact/hooks';
import { Button, Field, Notice } from '../../parts/controls/controls.tsx';
import { sendFile } from '../../parts/send-file.ts';
import { d } from '../../words/index.ts';
import { TroubleList } from '../parts/trouble-list.tsx';
import type { GaugeTableTrouble, ReadGaugeTable } from '../../drafts/gauge-table.ts';

const troubleInWords = ({ why, line, column }: GaugeTableTrouble): string =>
  d().blueprint.gaugeTroubles[why](line, column);

export const FromTable = (props: {
  readonly table: ReadGaugeTable | null;
  /** What else is wrong with its readings. */
  readonly troubles: readonly string[];
  readonly onRead: (table: ReadGaugeTable | null) => void;
}) => {
  const words = d().blueprint;
  const id = useId();
  const { table, onRead } = props;
  const [pasted, setPasted] = useState('');
  const [failed, setFailed] = useState(false);
  const doing = (work: () => Promise<void>) => {
    setFailed(false);
    work().catch(() => setFailed(true));
  };
  const read = async (text: string) => {
    // The reader of tables is fetched with the first table.
    const { readGaugeTable } = await import('../../drafts/gauge-table.ts');
    onRead(text.trim() === '' ? null : readGaugeTable(text));
  };
  const readFile = async (file: File | undefined) => {
    if (!file) return;
    const { tableText } = await import('../../drafts/table.ts');
    await read(tableText(await file.arrayBuffer()));
  };
  const saveTemplate = async () => {
    const { emptyGaugeTable } = await import('../../drafts/gauge-table.ts');
    await sendFile('gauge-study.csv', new TextEncoder().encode(emptyGaugeTable()));
  };
  return (
    <>
      <Field label={words.paste}>
        {(ids) => (
          <textarea
            class="input"
            rows={3}
            {...ids}
            value={pasted}
            onInput={(event) => {
              const { value } = event.currentTarget;
              setPasted(value);
              doing(() => read(value));
            }}
          />
        )}
      </Field>
      <div class="options">
        <div class="field">
          <label class="label" for={id}>
            {words.gaugeFile}
          </label>
          <input
            id={id}
            class="input"
            type="file"
            accept=".csv,.tsv,.txt,text/csv"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              doing(() => readFile(file));
            }}
          />
        </div>
        <Button kind="quiet" onClick={() => doing(saveTemplate)}>
          {words.gaugeTemplate}
        </Button>
      </div>
      {failed && (
        <Notice tone="danger" live>
          {d().trouble}
        </Notice>
      )}
      <TroubleList of={[...(table?.troubles ?? []).map(troubleInWords), ...props.troubles]} />
      {table && table.readings.length > 0 && (
        <p>
          {words.gaugeRead(
            table.readings.length,
            new Set(table.readings.map(({ part }) => part)).size,
            new Set(table.readings.map(({ operator }) => operator)).size,
          )}
        </p>
      )}
    </>
  );
};
