/** What can be done with pairs, one form open at a time. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { d, p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { OpenForm, SelectField } from '../parts/form-parts.tsx';
import { PairForm, PairsForm } from './pair-forms.tsx';
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

const AddPairs = (props: TabProps) => {
  const { rounds } = props.review;
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const round = chosen ?? rounds.at(-1)?.id;
  if (round === undefined) return <p>{d().pairs.none}</p>;
  return (
    <div class="stack">
      <SelectField
        label={p().pairs.toRound}
        value={round}
        options={rounds.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={setChosen}
      />
      <div class="row" key={round}>
        <PairForm {...props} round={round} />
        <PairsForm {...props} round={round} />
      </div>
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

export const PairActions = (props: TabProps) => {
  const [act, setAct] = useState<Act | null>(null);
  const close = () => setAct(null);
  if (act !== null)
    return (
      <OpenForm label={labelOf(act)} close={close}>
        <Form {...props} act={act} close={close} />
      </OpenForm>
    );
  return (
    <div class="row people-actions no-print">
      {acts.map((one) => (
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
