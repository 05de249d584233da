/** What a lead can put right about a run: correct it, count it or set it aside, and take each of these back. */
import { useState } from 'preact/hooks';
import type { RecordId, Ruling, Run } from '../../../core/records/index.ts';
import { decisionOn } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { ReasonForm } from '../parts/reason-form.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';
import type { RunPageAnswer } from '../worker/runs-answers.ts';
import { undoCorrection } from './save-correction.ts';

type Props = TabProps & RunPageAnswer;

const decide = ({ review, look, stamp }: Props, ruling: Ruling, why: string): Promise<boolean> => {
  const subject = { record: look.id, recordKind: 'run', judged: stamp, reading: null } as const;
  const said = { project: review.project.id, ruling, why, at: toInstant(Date.now()) };
  const words = d().waiting;
  return saveDecisions(
    [decisionOn(subject, said)],
    ruling === 'counted' ? words.countedNow : words.setAsideNow,
  );
};

const takeBack = async (decision: RecordId) => {
  const erased = await store.erase(decision);
  if (!erased.ok) return showToast({ text: d().trouble });
  showToast({
    text: p().runs.decisionBack,
    action: { label: t().undo, run: () => void store.restore(decision) },
  });
};

/** Who a lead is, to a lead: a code where they test as well, else just a lead. */
const leadNamed = (by: string, props: TabProps): string => {
  const isTester = props.records.tester.some(({ revision }) => revision.id === by);
  return isTester ? namesIn(props.review, props.records).tester(by as RecordId) : p().runs.aLead;
};

const Corrected = (props: Props & { readonly mark: NonNullable<Run['correctedBy']> }) => {
  const words = p().runs;
  const { mark, look } = props;
  return (
    <div class="run-ruling">
      <p>{words.correctedOn(leadNamed(mark.by, props), formatDate(mark.at), mark.why)}</p>
      <Button kind="quiet" onClick={() => void undoCorrection(look.id)}>
        {words.undoCorrection}
      </Button>
    </div>
  );
};

export const RunStanding = (props: Props & { readonly correct: () => void }) => {
  const words = p().runs;
  const { look } = props;
  const { decided, run, state } = look;
  const [isOpen, setOpen] = useState(false);
  const said = decided?.ruling === 'set-aside' ? words.asideSince : words.countedSince;
  return (
    <section class="run-standing no-print">
      {look.odd.length > 0 && (
        <ul class="plain-list small">
          {look.odd.map((why) => (
            <li key={why}>{d().ask.oddity[why]}</li>
          ))}
        </ul>
      )}
      {decided && (
        <div class="run-ruling">
          <p>{said(formatDate(decided.at), decided.why)}</p>
          <Button kind="quiet" onClick={() => void takeBack(decided.decision)}>
            {words.takeBackDecision}
          </Button>
        </div>
      )}
      {run.correctedBy && <Corrected {...props} mark={run.correctedBy} />}
      {isOpen ? (
        <ReasonForm
          label={words.setAside}
          hint={words.setAsideHint}
          close={() => setOpen(false)}
          save={async (why) => {
            if (await decide(props, 'set-aside', why)) setOpen(false);
          }}
        />
      ) : (
        <div class="row">
          <Button onClick={props.correct}>{words.correct}</Button>
          {state === 'waits' && (
            <Button onClick={() => void decide(props, 'counted', d().waiting.checked)}>
              {words.countIt}
            </Button>
          )}
          {state !== 'set-aside' && (
            <Button kind="quiet" onClick={() => setOpen(true)}>
              {words.setAside}
            </Button>
          )}
        </div>
      )}
    </section>
  );
};
