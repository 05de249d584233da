/** What can be done with the runs that are selected: set aside with a reason, or count. Both can be undone. */
import { useState } from 'preact/hooks';
import type { Ruling } from '../../../core/records/index.ts';
import { decisionOn, type RunRow } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { toInstant } from '../../parts/instant.ts';
import { d, p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { ReasonForm } from '../parts/reason-form.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';

export const RunActs = (
  props: TabProps & { readonly chosen: readonly RunRow[]; readonly none: () => void },
) => {
  const { review, chosen, none } = props;
  const words = p().runs;
  const [isOpen, setOpen] = useState(false);
  const counting = chosen.filter(({ state }) => state === 'counts' || state === 'waits');
  const out = chosen.filter(({ state }) => state === 'set-aside' || state === 'waits');
  const decide = async (rows: readonly RunRow[], ruling: Ruling, why: string, said: string) => {
    const at = toInstant(Date.now());
    const saved = await saveDecisions(
      rows.map(({ run, stamp }) =>
        decisionOn(
          { record: run, recordKind: 'run', judged: stamp, reading: null },
          { project: review.project.id, ruling, why, at },
        ),
      ),
      said,
    );
    if (saved) none();
    return saved;
  };
  if (isOpen && counting.length > 0)
    return (
      <div class="list-form">
        <ReasonForm
          label={words.asideSelected(counting.length)}
          hint={words.setAsideHint}
          close={() => setOpen(false)}
          save={async (why) => {
            if (await decide(counting, 'set-aside', why, words.asideNow(counting.length)))
              setOpen(false);
          }}
        />
      </div>
    );
  return (
    <>
      {counting.length > 0 && (
        <Button onClick={() => setOpen(true)}>{words.asideSelected(counting.length)}</Button>
      )}
      {out.length > 0 && (
        <Button
          onClick={() =>
            void decide(out, 'counted', d().waiting.checked, words.countedNow(out.length))
          }
        >
          {words.countSelected(out.length)}
        </Button>
      )}
    </>
  );
};
