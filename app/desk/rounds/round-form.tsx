/** A round, new or changed: what is different, its blueprint with tolerances, its last, and its layers. */
import { useState } from 'preact/hooks';
import type { ZoneCode } from '../../../core/foot/index.ts';
import { ranges, roundStages, type RecordOf, type Round } from '../../../core/records/index.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { d, p, terms } from '../../words/index.ts';
import {
  canBeTakenOver,
  saysSole,
  draftOfRound,
  duplicateOf,
  newRound,
  takeOver,
  type LastField,
  type RoundDraft,
} from '../../drafts/round.ts';
import type { SolePart as PartOfSole } from '../../drafts/compound.ts';
import { roundSchema } from '../../drafts/kept.ts';
import { readDraft, type RoundTrouble } from '../../drafts/round-reading.ts';
import { sayChange } from '../../parts/change-speaker.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { useMoveOn } from '../start/guide.ts';
import { useKept } from '../../parts/kept.tsx';
import { DimensionTable } from './dimension-table.tsx';
import { Changes, LastPart, Layers } from './round-parts.tsx';
import { SolePart } from './sole-part.tsx';

interface FormProps extends TabProps {
  /** The round that is edited; absent: a new one. */
  readonly of?: RecordOf<'round'>;
  /** A new round begins as this one. */
  readonly like?: Round;
  /** From the beginning. */
  readonly isOpen?: boolean;
}

/** A button that unfolds the form of a round: one that is edited, a new one, or one as another. */
export const RoundForm = (props: FormProps) => {
  const words = p().rounds;
  const { of, like } = props;
  return (
    <Unfold
      label={of ? words.edit : like ? words.duplicate(like.name) : words.add}
      isOpen={props.isOpen === true}
    >
      {(close) => <Fields {...props} close={close} />}
    </Unfold>
  );
};

/** What is wrong with each field, in words; the table of dimensions says its own. */
const errorsOf = (troubles: readonly RoundTrouble[]) => {
  const last: Partial<Record<'name' | LastField, string>> = {};
  const layers: Partial<Record<ZoneCode, string>> = {};
  const sole: Partial<Record<PartOfSole, string>> = {};
  let name: string | undefined;
  for (const trouble of troubles)
    switch (trouble.part) {
      case 'name':
        name = d().missing;
        break;
      case 'sole':
        sole[trouble.of] = trouble.range ? sayRange(trouble.range) : d().wrongNumber;
        break;
      case 'last':
        last[trouble.field] = trouble.range ? sayRange(trouble.range) : d().missing;
        break;
      case 'layers':
        layers[trouble.zone] = sayRange(ranges.layers);
        break;
      case 'blueprint':
      case 'changes':
      // Said cell by cell, and at each change.
    }
  return { name, sole, last, layers };
};

const ownRounds = ({ records, review }: TabProps): readonly Round[] =>
  records.round
    .map(({ body }) => body)
    .filter((body) => body.project === review.project.id)
    .sort((a, b) => a.order - b.order);

/** The latest round that a new one can start from. */
const earlierRound = (props: TabProps): Round | null =>
  ownRounds(props).filter(canBeTakenOver).at(-1) ?? null;

/** A new round mostly differs from the one before in a few things only. */
const TakeOver = ({
  earlier,
  setDraft,
}: {
  readonly earlier: Round;
  readonly setDraft: (next: (now: RoundDraft) => RoundDraft) => void;
}) => {
  const words = d().blueprint;
  const [taken, setTaken] = useState(false);
  return taken ? (
    <Notice tone="plain" live>
      {words.takenOver(earlier.name)}
    </Notice>
  ) : (
    <div class="row">
      <Button
        onClick={() => {
          setDraft((now) => takeOver(now, earlier));
          setTaken(true);
        }}
      >
        {words.takeOver(earlier.name)}
      </Button>
    </div>
  );
};

const Fields = ({
  records,
  review,
  of,
  like,
  close,
}: FormProps & { readonly close: () => void }) => {
  const words = d().rounds;
  const order = of?.body.order ?? Math.max(0, ...review.rounds.map((round) => round.order)) + 1;
  const before = of || like ? null : (ownRounds({ records, review }).at(-1) ?? null);
  const kept = useKept<RoundDraft>({
    key: of
      ? `round ${of.revision.id}`
      : `new round ${review.project.id}${like ? ` as ${like.order}` : ''}`,
    of: of?.revision.stamp,
    schema: roundSchema,
    begin: () =>
      of
        ? draftOfRound(of.body)
        : like
          ? duplicateOf(like, words.nth(order))
          : newRound(words.nth(order), before),
  });
  const { draft, setDraft } = kept;
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const moveOn = useMoveOn('round');
  const change = (part: Partial<RoundDraft>) => setDraft((now) => ({ ...now, ...part }));
  const place = { project: review.project.id, order };
  const read = readDraft(draft, of?.body ?? null, place, sayChange);
  const errors = errorsOf(tried && !read.ok ? read.troubles : []);
  const earlier = of || like ? null : earlierRound({ records, review });
  const save = async () => {
    setTried(true);
    if (!read.ok) return '';
    const saved = await saveFromForm('round', read.body, of?.revision.id);
    if (typeof saved === 'string') return saved;
    await kept.done();
    if (!moveOn()) close();
    return null;
  };
  return (
    <SmallForm save={save} kept={kept}>
      <div class="field-row">
        <TextField
          label={words.name}
          value={draft.name}
          onInput={(name) => change({ name })}
          error={errors.name}
        />
        <SelectField
          label={words.stage}
          value={draft.stage}
          options={roundStages.map((value) => ({ value, label: terms().stages[value] }))}
          onChange={(stage) => change({ stage })}
        />
      </div>
      {like && <p class="soft">{p().rounds.duplicateHint(like.name)}</p>}
      <Changes
        draft={draft}
        change={change}
        limits={review.project.brief.limits}
        troubles={(at) =>
          tried && !read.ok
            ? read.troubles.flatMap((one) => (one.part === 'changes' && one.at === at ? [one] : []))
            : []
        }
      />
      <SolePart
        draft={draft}
        change={change}
        errors={errors.sole}
        {...(before && saysSole(before) && { from: before.name })}
      />
      {earlier && <TakeOver earlier={earlier} setDraft={setDraft} />}
      <DimensionTable
        draft={draft}
        change={change}
        troubles={read.ok ? [] : read.troubles.filter((one) => one.part === 'blueprint')}
        tried={tried}
      />
      <LastPart draft={draft} change={change} errors={errors.last} />
      <Layers draft={draft} change={change} errors={errors.layers} />
    </SmallForm>
  );
};
