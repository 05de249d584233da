/** What can be done with the pairs that are selected: a form for each, open in the place of its button. */
import { useState } from 'preact/hooks';
import type { PairRow } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { OpenForm } from '../parts/form-parts.tsx';
import { SeveralHandOuts } from './hand-out-several.tsx';
import { StopUseForm } from './stop-use.tsx';
import { TakeBackForm } from './take-back.tsx';

type Act = 'back' | 'out' | 'stop';

export const PairActs = (
  props: TabProps & { readonly chosen: readonly PairRow[]; readonly none: () => void },
) => {
  const { records, review, chosen, none } = props;
  const words = p().pairs;
  const [act, setAct] = useState<Act | null>(null);
  const pairs: Readonly<Record<Act, readonly PairRow[]>> = {
    back: chosen.filter(({ handOut }) => handOut !== null),
    out: chosen.filter(({ holder, stopped }) => holder === null && !stopped),
    stop: chosen.filter(({ stopped }) => !stopped),
  };
  const label: Readonly<Record<Act, (n: number) => string>> = {
    back: words.takeBack,
    out: words.handOutSelected,
    stop: words.stopSelected,
  };
  const acts = (['back', 'out', 'stop'] as const).filter((one) => pairs[one].length > 0);
  if (act === null || pairs[act].length === 0)
    return (
      <>
        {acts.map((one) => (
          <Button key={one} onClick={() => setAct(one)}>
            {label[one](pairs[one].length)}
          </Button>
        ))}
      </>
    );
  const tab = { records, review };
  const close = () => setAct(null);
  const done = () => {
    close();
    none();
  };
  const ids = pairs[act].map(({ pair }) => pair);
  return (
    <div class="list-form">
      {act === 'back' ? (
        <TakeBackForm {...tab} rows={pairs.back} done={done} cancel={close} />
      ) : (
        <OpenForm label={label[act](ids.length)} close={close}>
          {act === 'out' ? (
            <SeveralHandOuts {...tab} only={new Set(ids)} close={done} />
          ) : (
            <StopUseForm {...tab} pairs={ids} close={done} />
          )}
        </OpenForm>
      )}
    </div>
  );
};
