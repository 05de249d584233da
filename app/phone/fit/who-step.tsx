/** Who tries which pair on: the member of this phone, or somebody here by a code; no names. */
import { lacings, socks, type RecordId } from '../../../core/records/index.ts';
import { Button, Choice, Field } from '../../parts/controls/controls.tsx';
import { formatSize } from '../../parts/format.ts';
import { fitWords, t, terms } from '../../words/index.ts';
import type { SessionHere } from './fit-session.ts';
import type { StepProps } from './step-props.ts';

type WhoProps = StepProps & {
  readonly here: SessionHere;
  readonly member: RecordId;
  readonly isLead: boolean;
  readonly onNext: () => void;
};

/** A lead may write for any tester who is here. */
const TesterField = ({ form, change, here }: WhoProps) => (
  <Field label={fitWords().who.tester}>
    {(ids) => (
      <select
        class="input"
        {...ids}
        value={form.who}
        onChange={(event) => {
          const who = event.currentTarget.value;
          change((now) => ({ ...now, who }));
        }}
      >
        <option value="another">{fitWords().who.another}</option>
        {[...here.testers]
          .sort((a, b) => a.body.code.localeCompare(b.body.code, 'en', { numeric: true }))
          .map(({ body, revision }) => (
            <option key={revision.id} value={revision.id}>
              {body.code}
            </option>
          ))}
      </select>
    )}
  </Field>
);

const CodeField = ({ form, change, troubles }: WhoProps) => {
  const words = fitWords();
  const wrong = troubles.find((one) => one === 'code' || one === 'code-taken');
  return (
    <Field label={words.who.code} hint={words.who.codeHint} error={wrong && words.errors[wrong]}>
      {(ids) => (
        <input
          class="input"
          autocapitalize="characters"
          autocomplete="off"
          maxLength={12}
          {...ids}
          value={form.code}
          onInput={(event) => {
            const code = event.currentTarget.value;
            change((now) => ({ ...now, code }));
          }}
        />
      )}
    </Field>
  );
};

/** Of more people only the latest are offered again. */
const MOST_AGAIN = 3;

/** Somebody who was here tries another pair on: under the same code, so that they stay one person. */
const Again = ({ change, here }: WhoProps) => {
  const codes = [
    ...new Set(here.trials.toReversed().flatMap(({ body }) => body.fitter ?? [])),
  ].slice(0, MOST_AGAIN);
  if (codes.length === 0) return null;
  return (
    <div class="row">
      {codes.map((code) => (
        <Button
          key={code}
          kind="quiet"
          onClick={() => change((now) => ({ ...now, who: 'another', code }))}
        >
          {fitWords().who.again(code)}
        </Button>
      ))}
    </div>
  );
};

export const WhoStep = (props: WhoProps) => {
  const { form, change, troubles, here, member, isLead, onNext } = props;
  const words = fitWords();
  const own = here.testers.find(({ revision }) => revision.id === member)?.body.code ?? '';
  return (
    <>
      {isLead ? (
        <TesterField {...props} />
      ) : (
        <Choice
          label={words.who.title}
          options={[
            { value: 'me', label: words.who.me(own) },
            { value: 'another', label: words.who.another },
          ]}
          value={form.who === 'another' ? 'another' : 'me'}
          onChange={(who) => change((now) => ({ ...now, who }))}
        />
      )}
      {form.who === 'another' && <CodeField {...props} />}
      {form.who === 'another' && <Again {...props} />}
      <Choice
        label={words.who.pair}
        options={here.pairs.map(({ body, revision }) => ({
          value: revision.id,
          label: words.who.pairOf(body.code, formatSize(body.sizeMm)),
        }))}
        value={form.pair === '' ? null : (form.pair as RecordId)}
        onChange={(pair) => change((now) => ({ ...now, pair }))}
      />
      {troubles.includes('pair') && (
        <p class="field-error" role="alert" tabIndex={-1} aria-invalid>
          {words.errors.pair}
        </p>
      )}
      <Choice
        label={words.who.lacing}
        options={lacings.map((value) => ({ value, label: terms().lacings[value] }))}
        value={form.lacing}
        onChange={(lacing) => change((now) => ({ ...now, lacing }))}
      />
      <Choice
        label={t().log.sock}
        options={socks.map((value) => ({ value, label: terms().socks[value] }))}
        value={form.sock}
        onChange={(sock) => change((now) => ({ ...now, sock }))}
      />
      <div class="foot-bar">
        <Button kind="main" big onClick={onNext}>
          {words.who.start}
        </Button>
      </div>
    </>
  );
};
