/** What the person wants moved: what usually follows from their answers, to be tapped, and anything else. */
import { useState } from 'preact/hooks';
import { Button, Choices } from '../../parts/controls/controls.tsx';
import { ChangeFields } from '../../parts/change-fields.tsx';
import { sayChange } from '../../parts/change-speaker.ts';
import {
  changeTroubles,
  emptyChangeForm,
  readChange,
  type ChangeFormDraft,
} from '../../drafts/change.ts';
import { moveKey } from '../../../core/fitting/index.ts';
import { suggestedMoves } from '../../drafts/fit-trial.ts';
import { fitWords, t } from '../../words/index.ts';
import type { StepProps } from './step-props.ts';

const begun = (): ChangeFormDraft => ({ ...emptyChangeForm('upper-pattern'), what: 'line collar' });

const OtherMove = ({ change, close }: StepProps & { readonly close: () => void }) => {
  const words = fitWords().walking;
  const [draft, setDraft] = useState(begun);
  const [tried, setTried] = useState(false);
  const add = () => {
    setTried(true);
    const move = readChange(draft, null);
    if (!move) return;
    change((now) => ({ ...now, others: [...now.others, move] }));
    close();
  };
  return (
    <section class="sheet" aria-label={words.other}>
      <ChangeFields draft={draft} set={setDraft} troubles={tried ? changeTroubles(draft) : []} />
      <div class="row">
        <Button onClick={add}>{words.add}</Button>
        <Button kind="quiet" onClick={close}>
          {t().cancel}
        </Button>
      </div>
    </section>
  );
};

export const WantedPart = (props: StepProps) => {
  const { form, change } = props;
  const words = fitWords().walking;
  const [isOpen, setOpen] = useState(false);
  const moves = suggestedMoves(form);
  const accepted = new Set(form.accepted);
  return (
    <section class="stack" aria-label={words.wanted}>
      <Choices
        label={words.wanted}
        options={moves.map((one) => ({ value: moveKey(one), label: sayChange(one) }))}
        values={accepted}
        onToggle={(key) =>
          change((now) => ({
            ...now,
            accepted: now.accepted.includes(key)
              ? now.accepted.filter((one) => one !== key)
              : [...now.accepted, key],
          }))
        }
      />
      <p class="soft small">{moves.length > 0 ? words.wantedHint : words.noneSuggested}</p>
      {form.others.length > 0 && (
        <ul class="plain-list stack">
          {form.others.map((one, at) => (
            <li key={`${at} ${moveKey(one)}`} class="row row-apart">
              <span>{sayChange(one)}</span>
              <Button
                kind="quiet"
                onClick={() =>
                  change((now) => ({ ...now, others: now.others.filter((_, of) => of !== at) }))
                }
              >
                {t().remove}
              </Button>
            </li>
          ))}
        </ul>
      )}
      {isOpen ? (
        <OtherMove {...props} close={() => setOpen(false)} />
      ) : (
        <Button kind="quiet" onClick={() => setOpen(true)}>
          {words.other}
        </Button>
      )}
    </section>
  );
};
