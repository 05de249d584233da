/** What can be done with the findings that are selected: one round carries their changes, or they are closed. */
import { useState } from 'preact/hooks';
import { editBody, type RecordId, type RecordOf } from '../../../core/records/index.ts';
import { carriersOf } from '../../drafts/finding.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { OpenForm, SelectField, SmallForm } from '../parts/form-parts.tsx';
import { saveSeveral } from '../parts/save-several.ts';

type Findings = readonly RecordOf<'finding'>[];

const AssignForm = (
  props: TabProps & {
    readonly findings: Findings;
    readonly close: () => void;
    readonly done: () => void;
  },
) => {
  const { records, review, findings, close, done } = props;
  const words = p().changes;
  const rounds = carriersOfAll(findings, review.rounds);
  const [round, setRound] = useState<RecordId | ''>(rounds.at(-1)?.id ?? '');
  const save = async () => {
    if (round === '') return d().missing;
    const trouble = await saveSeveral(
      'finding',
      findings.map(({ revision, body }) => ({
        id: revision.id,
        body: editBody<'finding'>(body, { carriedBy: round }),
      })),
      findings,
      words.assigned(findings.length, namesIn(review, records).round(round)),
    );
    if (trouble === null) done();
    return trouble;
  };
  const label = words.assign(findings.length);
  return (
    <OpenForm label={label} close={close}>
      <p class="small soft">{words.assignHint}</p>
      <SmallForm save={save} label={label}>
        <SelectField
          label={words.assignTo}
          value={round}
          options={rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setRound}
        />
      </SmallForm>
    </OpenForm>
  );
};

/** Rounds that can carry every one of the findings. */
const carriersOfAll = (findings: Findings, rounds: TabProps['review']['rounds']) =>
  findings.reduce(
    (left, { body }) => {
      const own = new Set(carriersOf(rounds, body.round).map(({ id }) => id));
      return left.filter(({ id }) => own.has(id));
    },
    [...rounds],
  );

export const FindingActs = (
  props: TabProps & { readonly chosen: Findings; readonly none: () => void },
) => {
  const { records, review, chosen, none } = props;
  const words = p().changes;
  const [isOpen, setOpen] = useState(false);
  const open = chosen.filter(({ body }) => body.state !== 'closed');
  const canAssign = open.length > 0 && carriersOfAll(open, review.rounds).length > 0;
  const closeAll = async () => {
    const trouble = await saveSeveral(
      'finding',
      open.map(({ revision, body }) => ({
        id: revision.id,
        body: editBody<'finding'>(body, { state: 'closed' }),
      })),
      open,
      words.closedNow(open.length),
    );
    if (trouble === null) none();
    else showToast({ text: trouble });
  };
  if (isOpen && canAssign)
    return (
      <div class="list-form">
        <AssignForm
          records={records}
          review={review}
          findings={open}
          close={() => setOpen(false)}
          done={() => {
            setOpen(false);
            none();
          }}
        />
      </div>
    );
  return (
    <>
      {canAssign && <Button onClick={() => setOpen(true)}>{words.assign(open.length)}</Button>}
      {open.length > 0 && (
        <Button onClick={() => void closeAll()}>{words.close(open.length)}</Button>
      )}
    </>
  );
};
