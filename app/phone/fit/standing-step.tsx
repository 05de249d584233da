/** Standing: of each place too little, right or too much, and by how much where the person can say it. */
import { fitPlaces, type FitPlace } from '../../../core/foot/index.ts';
import { fitSteps } from '../../../core/fitting/index.ts';
import { fits } from '../../../core/records/index.ts';
import { Button, Choice } from '../../parts/controls/controls.tsx';
import { formatNumber } from '../../parts/format.ts';
import {
  openPlaces,
  restRight,
  shoesAsked,
  shownAnswer,
  withFit,
  withMm,
} from '../../drafts/fit-trial.ts';
import { fitWords, terms } from '../../words/index.ts';
import type { StepProps } from './step-props.ts';

const Row = ({ form, change, place }: StepProps & { readonly place: FitPlace }) => {
  const words = fitWords().standing;
  const said = terms().fitPlaces[place];
  const answer = shownAnswer(form, place);
  return (
    <div class="fit-row">
      <Choice
        label={said.name}
        options={fits.map((value) => ({
          value,
          label: value === 'right' ? words.fine : said[value],
        }))}
        value={answer?.fit ?? null}
        onChange={(fit) => change((now) => withFit(now, place, fit))}
      />
      {answer && answer.fit !== 'right' && (
        <div class="fit-far">
          <Choice
            hideLabel
            label={words.far(said.name)}
            options={fitSteps[place].map((mm) => ({
              value: String(mm),
              label: words.mm(formatNumber(mm, 1)),
            }))}
            value={answer.mm === null ? null : String(answer.mm)}
            onChange={(mm) => change((now) => withMm(now, place, Number(mm)))}
          />
        </div>
      )}
    </div>
  );
};

export const StandingStep = (props: StepProps & { readonly onNext: () => void }) => {
  const { form, change, onNext } = props;
  const words = fitWords().standing;
  const open = openPlaces(form).length;
  return (
    <>
      <h2>{words.title}</h2>
      <div class="fit-feet">
        <Choice
          hideLabel
          label={words.feet}
          options={shoesAsked.map((value) => ({ value, label: words[value] }))}
          value={form.foot}
          onChange={(foot) => change((now) => ({ ...now, foot }))}
        />
      </div>
      {fitPlaces.map((place) => (
        <Row key={place} {...props} place={place} />
      ))}
      {open > 0 && open < fitPlaces.length && (
        <Button kind="quiet" onClick={onNext}>
          {words.skip}
        </Button>
      )}
      <div class="foot-bar">
        <Button
          kind="main"
          big
          onClick={() => {
            if (open > 0) change(restRight);
            onNext();
          }}
        >
          {open > 0 ? words.restNext : words.next}
        </Button>
      </div>
    </>
  );
};
