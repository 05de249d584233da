/** Walking: the heel, what presses, rubs or gapes, pain, and what the person wants moved. */
import { useRef } from 'preact/hooks';
import { fitPains, heelSlips, walkWays } from '../../../core/records/index.ts';
import { Button, Choice, Choices, Notice } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { fitCaution, shoesAsked, withPain } from '../../drafts/fit-trial.ts';
import { fitWords, terms } from '../../words/index.ts';
import { CautionBar, CautionWords } from '../log/caution-bar.tsx';
import { SpotsPart } from './spots-part.tsx';
import { WantedPart } from './wanted-part.tsx';
import type { StepProps } from './step-props.ts';

type WalkingProps = StepProps & {
  readonly who: string;
  readonly onBack: () => void;
  readonly onSave: () => void;
};

/** Of both feet, or of the one that was set apart. */
const HeelPart = ({ form, change }: StepProps) => {
  const words = fitWords();
  return (
    <div class="stack">
      <Choice
        label={words.walking.where}
        options={walkWays.map((value) => ({ value, label: terms().walkWays[value] }))}
        value={form.walked}
        onChange={(walked) => change((now) => ({ ...now, walked }))}
      />
      <div class="fit-feet">
        <Choice
          hideLabel
          label={words.standing.feet}
          options={shoesAsked.map((value) => ({ value, label: words.standing[value] }))}
          value={form.foot}
          onChange={(foot) => change((now) => ({ ...now, foot }))}
        />
      </div>
      <div class="fit-row">
        <Choice
          label={words.walking.heel}
          options={heelSlips.map((value) => ({ value, label: terms().heelSlips[value] }))}
          value={form.heel[form.foot] ?? (form.foot === 'both' ? null : (form.heel.both ?? null))}
          onChange={(slip) =>
            change((now) => ({
              ...now,
              heel: now.foot === 'both' ? { both: slip } : { ...now.heel, [now.foot]: slip },
            }))
          }
        />
      </div>
    </div>
  );
};

const PainPart = ({ form, change }: StepProps) => {
  const words = fitWords().walking;
  const none = 'none' as const;
  return (
    <Choices
      label={words.pain}
      options={[
        { value: none, label: words.painNone },
        ...fitPains.map((value) => ({ value, label: terms().fitPains[value] })),
      ]}
      values={new Set(form.pain === null ? [] : form.pain.length === 0 ? [none] : form.pain)}
      onToggle={(sign) =>
        change((now) =>
          sign === none ? { ...now, pain: [], cautionRead: false } : withPain(now, sign),
        )
      }
    />
  );
};

export const WalkingStep = (props: WalkingProps) => {
  const { form, change, troubles, who, onBack, onSave } = props;
  const words = fitWords();
  const pain = useRef<HTMLDivElement>(null);
  const caution = fitCaution(form);
  return (
    <>
      <h2>{words.walking.title}</h2>
      <HeelPart {...props} />
      <SpotsPart {...props} />
      <div ref={pain} class="stack">
        <PainPart {...props} />
        {caution !== 'none' && <p class="field-error">{words.walking.takeOff}</p>}
        {caution === 'read' && (
          <Notice tone="danger">
            <CautionWords />
          </Notice>
        )}
      </div>
      <WantedPart {...props} />
      <LimitedField
        label={words.walking.words}
        rows={2}
        most={4000}
        value={form.words}
        onInput={(said) => change((now) => ({ ...now, words: said }))}
      />
      {troubles.includes('nothing-said') && (
        <p class="field-error" role="alert" tabIndex={-1} aria-invalid>
          {words.errors['nothing-said']}
        </p>
      )}
      <Button kind="quiet" onClick={onBack}>
        {words.walking.back}
      </Button>
      {caution === 'unread' ? (
        <CautionBar asked={pain} onRead={() => change((now) => ({ ...now, cautionRead: true }))} />
      ) : (
        <div class="foot-bar">
          <Button kind="main" big onClick={onSave}>
            {words.walking.save(who)}
          </Button>
        </div>
      )}
    </>
  );
};
