/** What can be done with pairs, one form open at a time. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { d, p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { OpenForm, SelectField } from '../parts/form-parts.tsx';
import { NEW } from '../start/guide.ts';
import { PairLines } from './pair-forms.tsx';
import { linksOf } from '../frame/route.ts';
import { NewHandOut } from './hand-out-new.tsx';
import { SeveralHandOuts } from './hand-out-several.tsx';
import { StopUseForm } from './stop-use.tsx';

const acts = ['hand-out', 'several', 'add', 'stop'] as const;
type Act = (typeof acts)[number];

const labelOf = (act: Act): string =>
  ({
    'hand-out': d().pairs.handOut,
    several: d().pairs.handOutSeveral,
    add: p().pairs.add,
    stop: p().pairs.stop,
  })[act];

const AddPairs = (props: TabProps & { readonly close: () => void }) => {
  const { rounds } = props.review;
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const round = chosen ?? rounds.at(-1)?.id;
  if (round === undefined)
    return (
      <p>
        {d().rounds.none}{' '}
        <a href={linksOf(props.review.project.id).place('rounds', NEW)}>{p().rounds.add}</a>
      </p>
    );
  return (
    <div class="stack">
      {rounds.length > 1 && (
        <SelectField
          label={p().pairs.toRound}
          value={round}
          options={rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setChosen}
        />
      )}
      <PairLines {...props} round={round} />
    </div>
  );
};

const Form = (props: TabProps & { readonly act: Act; readonly close: () => void }) => {
  switch (props.act) {
    case 'hand-out':
      return <NewHandOut {...props} />;
    case 'several':
      return <SeveralHandOuts {...props} />;
    case 'add':
      return <AddPairs {...props} />;
    case 'stop':
      return <StopUseForm {...props} />;
  }
};

/** @param props.isAdding the place was opened to add pairs */
export const PairActions = (props: TabProps & { readonly isAdding: boolean }) => {
  const [act, setAct] = useState<Act | null>(props.isAdding ? 'add' : null);
  const close = () => setAct(null);
  if (act !== null)
    return (
      <OpenForm label={labelOf(act)} close={close} takesFocus={props.isAdding}>
        <Form {...props} act={act} close={close} />
      </OpenForm>
    );
  return (
    <div class="row people-actions no-print">
      {(props.review.pairs.length === 0 ? (['add'] as const) : acts).map((one) => (
        <Button key={one} onClick={() => setAct(one)}>
          {labelOf(one)}
        </Button>
      ))}
      <LinkButton href={linksOf(props.review.project.id).place('tables')}>
        {p().tables.title}
      </LinkButton>
    </div>
  );
};
