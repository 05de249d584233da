/** On the card of a pair: the caution of a pain that stands, damage that stands, and what the lead answered. */
import { editBody, type RecordId, type RecordOf, type Run } from '../../core/records/index.ts';
import { answerToPain } from '../../core/complaints/pain-stands.ts';
import { Button, Notice } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { formatDateTime, formatStart } from '../parts/format.ts';
import { toInstant } from '../parts/instant.ts';
import { PhotoRow } from '../parts/photos/photo-view.tsx';
import { store } from '../parts/state.ts';
import { careWords, t, terms } from '../words/index.ts';
import { shownCautions, type ShownCautions } from './pair-cautions.ts';
import type { PairCautions } from './pair-off.ts';
import './pair-care.css';

type Reply = RecordOf<'reply'>['body'];

const LeadSays = ({ reply }: { readonly reply: Reply | undefined }) => {
  const words = careWords().lead;
  if (!reply?.advice) return <p class="soft">{words.none}</p>;
  return (
    <>
      <p>
        <strong>{words.says[reply.advice](formatDateTime(reply.at))}</strong>
      </p>
      {reply.words && <p>{words.words(reply.words)}</p>}
    </>
  );
};

/** Notes in the runs that their pain is over, or takes the note out again. */
const setOver = async (
  runs: readonly RecordId[],
  over: NonNullable<Run['pain']>['over'],
): Promise<boolean> => {
  for (const id of runs) {
    const run = await store.get('run', id);
    if (!run?.body.pain) continue;
    const { over: _, ...pain } = run.body.pain;
    // The tester saves it anew, so a lead's marks go.
    const { correctedBy: __, broughtIn: ___, ...own } = run.body;
    const body = editBody<'run'>(own, { pain: over === undefined ? pain : { ...pain, over } });
    if (!(await store.save('run', body, id)).ok) return false;
  }
  return true;
};

type Shown = ShownCautions & Pick<PairCautions, 'replies'>;

const Pain = ({ pains, replies }: Shown) => {
  const words = careWords();
  const sayOver = async () => {
    const runs = pains.map(({ revision }) => revision.id);
    if (!(await setOver(runs, toInstant(Date.now()))))
      return showToast({ text: words.pain.overTrouble });
    showToast({
      text: words.pain.overSaved,
      action: { label: t().undo, run: () => void setOver(runs, undefined) },
    });
  };
  return (
    <Notice tone="danger">
      <h3>{words.caution.title}</h3>
      {pains.map(({ body, revision }) => (
        <div class="stack" key={revision.id}>
          <p>
            <a href={`/runs/${revision.id}`}>
              {words.pain.of(body.pain?.score ?? 0, formatStart(body))}
            </a>
          </p>
          <LeadSays reply={body.pain && answerToPain(body.pain, replies.get(revision.id)?.body)} />
        </div>
      ))}
      <p>{words.caution.body}</p>
      <p class="small">{words.caution.disclaimer}</p>
      <div class="row">
        <Button onClick={() => void sayOver()}>{words.pain.over}</Button>
      </div>
      <p class="small">{words.pain.overHint}</p>
    </Notice>
  );
};

const Damage = ({ damages, replies }: Shown) => {
  const words = careWords().damage;
  return (
    <Notice tone="danger">
      <h3>{words.keep}</h3>
      {damages.map(({ body, revision }) => {
        const what = terms().damages[body.what];
        return (
          <div class="stack" key={revision.id}>
            <p>
              {words.reported(
                what,
                body.foot ? t().foot[body.foot] : null,
                formatDateTime(body.at),
              )}
            </p>
            {body.words && <p>{careWords().lead.words(body.words)}</p>}
            <PhotoRow photos={body.photos ?? []} label={what} />
            <LeadSays reply={replies.get(revision.id)?.body} />
            <div class="row">
              <a class="button" href={`/damage/${body.pair}/${revision.id}`}>
                {words.open}
              </a>
            </div>
          </div>
        );
      })}
    </Notice>
  );
};

export const PairCare = ({ told }: { readonly told: PairCautions }) => {
  const shown = { ...shownCautions(told), replies: told.replies };
  return (
    <>
      {shown.damages.length > 0 && <Damage {...shown} />}
      {shown.pains.length > 0 && <Pain {...shown} />}
      {shown.goOn && (
        <Notice>
          <LeadSays reply={shown.goOn.body} />
        </Notice>
      )}
    </>
  );
};
