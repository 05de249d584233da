/** The accepted answer, or else what the finding asks for, as a change of a round: prefilled, edited before it is saved, with its undo. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { changeForRound } from '../../../core/talk/index.ts';
import { carriersOf } from '../../drafts/finding.ts';
import {
  draftOfRoundChange,
  readRoundChange,
  roundChangeTroubles,
} from '../../drafts/round-change.ts';
import { ChangeFields } from '../../parts/change-fields.tsx';
import { sayChange } from '../../parts/change-speaker.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatNumber } from '../../parts/format.ts';
import { store } from '../../parts/state.ts';
import { d, proposeWords, t } from '../../words/index.ts';
import { linksOf } from '../frame/route.ts';
import { SelectField, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { NEW } from '../start/guide.ts';
import type { FindingProps } from './finding-props.ts';

/** `proposal`: null where no answer is accepted. */
type Props = FindingProps & { readonly proposal: RecordOf<'proposal'> | null };

export const RoundChange = (props: Props) => {
  const { finding, proposal, records, review } = props;
  const words = proposeWords();
  const carriers = carriersOf(review.rounds, finding.body.round, finding.body.carriedBy);
  const holding = records.round.find(({ body }) =>
    body.changes.some((one) =>
      proposal ? one.proposal === proposal.revision.id : one.finding === finding.revision.id,
    ),
  );
  if (!changeForRound(finding, proposal, sayChange)) return null;
  return (
    <div class="no-print stack">
      {holding && <p>{words.alreadyIn(holding.body.name)}</p>}
      {carriers.length === 0 ? (
        <>
          <p>{words.needsRound}</p>
          <LinkButton href={linksOf(review.project.id).place('rounds', NEW)}>
            {words.addRound}
          </LinkButton>
        </>
      ) : (
        <Unfold label={words.putIn}>
          {(close) => <Fields {...props} carriers={carriers} close={close} />}
        </Unfold>
      )}
    </div>
  );
};

const Fields = (
  props: Props & {
    readonly carriers: readonly { readonly id: RecordId; readonly name: string }[];
    readonly close: () => void;
  },
) => {
  const { finding, proposal, records, carriers, close } = props;
  const words = proposeWords();
  const [made] = useState(() => changeForRound(finding, proposal, sayChange));
  const [draft, setDraft] = useState(
    () =>
      made &&
      draftOfRoundChange(made, finding.body.carriedBy ?? carriers.at(-1)?.id ?? '', (value) =>
        formatNumber(value, 3),
      ),
  );
  const [tried, setTried] = useState(false);
  if (!made || !draft) return null;
  const troubles = tried ? roundChangeTroubles(draft) : [];
  const has = (field: string) => troubles.some((one) => one.field === field);
  const save = async () => {
    setTried(true);
    const round = records.round.find(({ revision }) => revision.id === draft.round);
    if (!round) return d().missing;
    const read = readRoundChange(draft, made, round.body, finding.body);
    if (!read.ok) return '';
    const write = (one: typeof round.body, of: typeof finding.body) =>
      store.saveAll([
        { kind: 'round', id: round.revision.id, body: one },
        { kind: 'finding', id: finding.revision.id, body: of },
      ]);
    const saved = await write(read.round, read.finding);
    if (!saved.ok) return d().trouble;
    showToast({
      text: words.inRound(read.round.name),
      action: { label: t().undo, run: () => void write(round.body, finding.body) },
    });
    close();
    return null;
  };
  return (
    <SmallForm save={save} label={words.save}>
      <p class="soft small">{words.putInHint}</p>
      <SelectField
        label={words.round}
        value={draft.round}
        options={carriers.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(round) => setDraft({ ...draft, round })}
        error={has('round') ? d().missing : undefined}
      />
      <ChangeFields
        draft={draft.change}
        set={(change) => setDraft({ ...draft, change })}
        troubles={troubles}
      />
      <TextField
        label={words.line}
        value={draft.line}
        onInput={(line) => setDraft({ ...draft, line })}
        error={has('line') ? words.lineMissing : undefined}
      />
    </SmallForm>
  );
};
