/** A round, new or changed: what is different, its blueprint with tolerances, its last, and its layers. */
import { useState } from 'preact/hooks';
import { complaintKinds, foamIds, partIds, type FoamId } from '../../../core/foot/index.ts';
import {
  measures,
  ranges,
  roundStages,
  unitsOf,
  type RecordOf,
  type Round,
} from '../../../core/records/index.ts';
import { layeredZones } from '../../../core/review/index.ts';
import { practiceDimensions } from '../../../core/rounds/index.ts';
import { Button, Field, Notice } from '../../parts/controls/controls.tsx';
import { d, p, t, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { sayRange } from '../in-range.ts';
import {
  labelOf,
  saveFromForm,
  SelectField,
  SmallForm,
  TextField,
  Unfold,
} from '../form-parts.tsx';
import {
  canBeTakenOver,
  draftOfPractice,
  draftOfRound,
  duplicateOf,
  emptyChange,
  emptyDimension,
  lastFields,
  readDraft,
  takeOver,
  usualLeft,
  type DimensionDraft,
  type DimensionTrouble,
  type LastField,
  type ReadDraft,
  type RoundDraft,
} from '../../drafts/round.ts';

interface FormProps extends TabProps {
  /** The round that is edited; absent: a new one. */
  readonly of?: RecordOf<'round'>;
  /** A new round begins as this one. */
  readonly like?: Round;
}

/** A button that unfolds the form of a round: one that is edited, a new one, or one as another. */
export const RoundForm = (props: FormProps) => {
  const words = p().rounds;
  const { of, like } = props;
  return (
    <Unfold label={of ? words.edit : like ? words.duplicate(like.name) : words.add}>
      {(close) => <Fields {...props} close={close} />}
    </Unfold>
  );
};

interface PartProps {
  readonly draft: RoundDraft;
  readonly change: (part: Partial<RoundDraft>) => void;
}

const replaced = <T,>(list: readonly T[], index: number, part: Partial<T>): readonly T[] =>
  list.map((one, other) => (other === index ? { ...one, ...part } : one));
const without = <T,>(list: readonly T[], index: number): readonly T[] =>
  list.filter((_, other) => other !== index);

/** What is wrong in a part whose fields do not say it themselves; empty where they do. */
const troubleInWords = (trouble: Exclude<ReadDraft, { ok: true }>): string => {
  switch (trouble.part) {
    case 'name':
      return `${d().rounds.name}: ${d().missing}`;
    case 'blueprint':
      return '';
    case 'last': {
      const { field, range } = trouble;
      const label = field === 'name' ? d().blueprint.lastName : lastLabels()[field];
      return `${d().blueprint.last}, ${label}: ${range ? sayRange(range) : d().missing}`;
    }
    case 'layers':
      return `${d().blueprint.layers}: ${sayRange(ranges.layers)}`;
  }
};

const lastLabels = (): Readonly<Record<LastField, string>> => {
  const words = d().blueprint;
  return {
    sizeMm: words.lastSize,
    lengthMm: words.lastLength,
    ballWidthMm: words.lastWidth,
    ballGirthMm: words.lastGirth,
    widthPerStepMm: words.widthStep,
    girthPerStepMm: words.girthStep,
  };
};

/** The latest round that a new one can start from. */
const earlierRound = ({ records, review }: TabProps): Round | null =>
  records.round
    .map(({ body }) => body)
    .filter((body) => body.project === review.project.id && canBeTakenOver(body))
    .sort((a, b) => a.order - b.order)
    .at(-1) ?? null;

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
  const [draft, setDraft] = useState(() =>
    of
      ? draftOfRound(of.body)
      : like
        ? duplicateOf(like, words.nth(order))
        : { ...draftOfRound(null), name: words.nth(order) },
  );
  const [wrong, setWrong] = useState<DimensionTrouble | null>(null);
  const change = (part: Partial<RoundDraft>) => {
    setWrong(null);
    setDraft((now) => ({ ...now, ...part }));
  };
  const earlier = of || like ? null : earlierRound({ records, review });
  const save = async () => {
    const read = readDraft(draft, of?.body ?? null, { project: review.project.id, order });
    setWrong(!read.ok && read.part === 'blueprint' ? read : null);
    if (!read.ok) return troubleInWords(read);
    const saved = await saveFromForm('round', read.body, of?.revision.id);
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <div class="field-row">
        <TextField label={words.name} value={draft.name} onInput={(name) => change({ name })} />
        <SelectField
          label={words.stage}
          value={draft.stage}
          options={roundStages.map((value) => ({ value, label: terms().stages[value] }))}
          onChange={(stage) => change({ stage })}
        />
        <SelectField<FoamId | 'unsaid'>
          label={words.foam}
          value={draft.foam}
          options={[
            { value: 'unsaid', label: words.foamUnsaid },
            ...foamIds.map((value) => ({ value, label: terms().foams[value] })),
          ]}
          onChange={(foam) => change({ foam })}
        />
      </div>
      {like && <p class="soft">{p().rounds.duplicateHint(like.name)}</p>}
      <Changes draft={draft} change={change} />
      {earlier && <TakeOver earlier={earlier} setDraft={setDraft} />}
      <Blueprint draft={draft} change={change} wrong={wrong} />
      <LastPart draft={draft} change={change} />
      <Layers draft={draft} change={change} />
    </SmallForm>
  );
};

const Changes = ({ draft: { changes }, change }: PartProps) => {
  const words = d().rounds;
  const set = (index: number, part: Partial<RoundDraft['changes'][number]>) =>
    change({ changes: replaced(changes, index, part) });
  return (
    <>
      <h3>{words.changes}</h3>
      {changes.length > 0 && <p class="soft small">{words.mendsHint}</p>}
      {changes.map((one, index) => (
        <fieldset class="field-row reading" key={index}>
          <legend class="hidden-words">{`${words.changes} ${index + 1}`}</legend>
          <SelectField
            label={words.part}
            value={one.part}
            options={partIds.map((value) => ({ value, label: terms().parts[value].name }))}
            onChange={(part) => set(index, { part })}
          />
          <TextField label={words.what} value={one.what} onInput={(what) => set(index, { what })} />
          <SelectField
            label={words.mends}
            optional
            value={one.mends}
            options={complaintKinds.map((value) => ({ value, label: terms().kinds[value].name }))}
            onChange={(mends) => set(index, { mends })}
          />
          <Button kind="quiet" onClick={() => change({ changes: without(changes, index) })}>
            {t().remove}
          </Button>
        </fieldset>
      ))}
      <Button kind="quiet" onClick={() => change({ changes: [...changes, emptyChange] })}>
        {words.addChange}
      </Button>
    </>
  );
};

const Blueprint = ({
  draft,
  change,
  wrong,
}: PartProps & { readonly wrong: DimensionTrouble | null }) => {
  const words = d().blueprint;
  const { dimensions } = draft;
  const add = (one: DimensionDraft) => change({ dimensions: [...dimensions, one] });
  const named = (at: number): string => {
    const one = practiceDimensions[at];
    if (!one) return '';
    const { tolerance } = one;
    const size =
      tolerance.by === 'share'
        ? `${100 * tolerance.value} %`
        : `${tolerance.value} ${terms().units[one.unit]}`;
    return `${terms().measures[one.measure]}: ${words.sites[one.site] ?? one.site} (± ${size})`;
  };
  return (
    <>
      <h3>{d().rounds.blueprint}</h3>
      {dimensions.length > 0 && <p class="soft small">{words.percentHint}</p>}
      {dimensions.map((one, index) => (
        <DimensionRow
          key={index}
          at={index}
          one={one}
          wrong={wrong?.at === index ? wrong : null}
          onChange={(part) => change({ dimensions: replaced(dimensions, index, part) })}
          onRemove={() => change({ dimensions: without(dimensions, index) })}
        />
      ))}
      <Field label={words.usual} hint={words.usualHint}>
        {(ids) => (
          <select
            class="input"
            {...ids}
            value=""
            onChange={(event) => {
              const one = practiceDimensions[Number(event.currentTarget.value)];
              if (event.currentTarget.value !== '' && one) add(draftOfPractice(one));
              event.currentTarget.value = '';
            }}
          >
            <option value="">{d().none}</option>
            {usualLeft(draft).map((at) => (
              <option key={at} value={at}>
                {named(at)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Button kind="quiet" onClick={() => add(emptyDimension)}>
        {d().rounds.addDimension}
      </Button>
    </>
  );
};

const DimensionRow = (props: {
  readonly at: number;
  readonly one: DimensionDraft;
  readonly wrong: DimensionTrouble | null;
  readonly onChange: (part: Partial<DimensionDraft>) => void;
  readonly onRemove: () => void;
}) => {
  const words = d().blueprint;
  const { one, wrong, onChange } = props;
  const unit = terms().units[one.unit];
  const figures = [
    ['nominal', d().bench.nominal],
    ['lower', d().rounds.lower],
    ['upper', d().rounds.upper],
    ['leftRight', words.leftRight],
  ] as const;
  return (
    <fieldset class="field-row reading">
      <legend class="small soft">
        {`${words.dimension(props.at + 1)}${words.sites[one.site] === undefined ? '' : `: ${words.sites[one.site]}`}`}
      </legend>
      <SelectField
        label={d().bench.reading}
        value={one.measure}
        options={measures.map((value) => ({ value, label: terms().measures[value] }))}
        onChange={(measure) => onChange({ measure, unit: unitsOf[measure][0] })}
      />
      <TextField
        label={d().bench.site}
        value={one.site}
        onInput={(site) => onChange({ site })}
        error={wrong?.field === 'site' ? d().bench.siteHint : undefined}
      />
      <SelectField
        label={words.forFoot}
        value={one.foot}
        options={[
          { value: 'both', label: words.both },
          { value: 'left', label: t().left },
          { value: 'right', label: t().right },
        ]}
        onChange={(foot) => onChange({ foot })}
      />
      {unitsOf[one.measure].length > 1 && (
        <SelectField
          label={d().rounds.unit}
          value={one.unit}
          options={unitsOf[one.measure].map((value) => ({ value, label: terms().units[value] }))}
          onChange={(chosen) => onChange({ unit: chosen })}
        />
      )}
      {figures.map(([field, label]) => (
        <TextField
          key={field}
          label={`${label}, ${unit}`}
          value={one[field]}
          optional={field === 'leftRight'}
          onInput={(value) => onChange({ [field]: value })}
          error={
            wrong?.field === field
              ? wrong.range
                ? sayRange(wrong.range)
                : d().wrongNumber
              : undefined
          }
        />
      ))}
      <Button kind="quiet" onClick={props.onRemove}>
        {t().remove}
      </Button>
    </fieldset>
  );
};

const LastPart = ({ draft: { last }, change }: PartProps) => {
  const words = d().blueprint;
  const labels = lastLabels();
  return (
    <>
      <h3>{labelOf(words.last, true)}</h3>
      <div class="field-row">
        <TextField
          label={words.lastName}
          required={false}
          value={last.name}
          onInput={(name) => change({ last: { ...last, name } })}
        />
        {lastFields.map((field) => (
          <TextField
            key={field}
            label={labels[field]}
            required={false}
            value={last[field]}
            onInput={(value) => change({ last: { ...last, [field]: value } })}
            numeric
          />
        ))}
      </div>
    </>
  );
};

const Layers = ({ draft: { layers }, change }: PartProps) => {
  const words = d().blueprint;
  return (
    <>
      <h3>{labelOf(words.layers, true)}</h3>
      <p class="soft small">{words.layersHint}</p>
      <div class="field-row">
        {layeredZones.map((zone) => (
          <TextField
            key={zone}
            label={`${zone} ${terms().zones[zone].name}`}
            required={false}
            value={layers[zone] ?? ''}
            onInput={(value) => change({ layers: { ...layers, [zone]: value } })}
            numeric
          />
        ))}
      </div>
    </>
  );
};
