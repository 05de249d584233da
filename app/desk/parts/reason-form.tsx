/** A form that asks why: what a lead sets aside stays on record with the reason. */
import { useState } from 'preact/hooks';
import { d, p } from '../../words/index.ts';
import { OpenForm, SmallForm, TextField } from './form-parts.tsx';

export const ReasonForm = (props: {
  /** What it does, as its title and on its button. */
  readonly label: string;
  readonly hint: string;
  readonly close: () => void;
  /** With the reason, which is not empty. */
  readonly save: (why: string) => Promise<void>;
}) => {
  const [why, setWhy] = useState('');
  const [isMissing, setMissing] = useState(false);
  const save = async () => {
    const said = why.trim();
    setMissing(said === '');
    if (said === '') return '';
    await props.save(said);
    return null;
  };
  return (
    <OpenForm label={props.label} close={props.close}>
      <p class="small soft">{props.hint}</p>
      <SmallForm save={save} label={props.label}>
        <TextField
          label={d().waiting.reason}
          value={why}
          onInput={(typed) => {
            setMissing(false);
            setWhy(typed);
          }}
          error={isMissing ? p().runs.noReason : undefined}
        />
      </SmallForm>
    </OpenForm>
  );
};
