/** The parts of a round's form: what changed, its blueprint with tolerances, its last, its layers. */
import { complaintKinds, partIds, type ZoneCode } from '../../../core/foot/index.ts';
import { measures, unitsOf } from '../../../core/records/index.ts';
import { layeredZones } from '../../../core/review/index.ts';
import { practiceDimensions } from '../../../core/rounds/index.ts';
import { Button, Field } from '../../parts/controls/controls.tsx';
import { d, t, terms } from '../../words/index.ts';
import {
  draftOfPractice,
  emptyChange,
  emptyDimension,
  lastFields,
  usualLeft,
  type DimensionDraft,
  type LastField,
  type RoundDraft,
} from '../../drafts/round.ts';
import { type DimensionTrouble } from '../../drafts/round-reading.ts';
import { labelOf, SelectField, TextField } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { PasteDimensions } from './paste-dimensions.tsx';

export interface PartProps {
  readonly draft: RoundDraft;
  readonly change: (part: Partial<RoundDraft>) => void;
}

const replaced = <T,>(list: readonly T[], index: number, part: Partial<T>): readonly T[] =>
  list.map((one, other) => (other === index ? { ...one, ...part } : one));
const without = <T,>(list: readonly T[], index: number): readonly T[] =>
  list.filter((_, other) => other !== index);

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

export const Changes = ({ draft: { changes }, change }: PartProps) => {
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

export const Blueprint = ({
  draft,
  change,
  wrong,
}: PartProps & { readonly wrong: readonly DimensionTrouble[] }) => {
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
          wrong={wrong.filter((trouble) => trouble.at === index)}
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
      <PasteDimensions onAdd={(pasted) => change({ dimensions: [...dimensions, ...pasted] })} />
    </>
  );
};

const DimensionRow = (props: {
  readonly at: number;
  readonly one: DimensionDraft;
  readonly wrong: readonly DimensionTrouble[];
  readonly onChange: (part: Partial<DimensionDraft>) => void;
  readonly onRemove: () => void;
}) => {
  const words = d().blueprint;
  const { one, wrong, onChange } = props;
  const unit = terms().units[one.unit];
  const errorOf = (field: DimensionTrouble['field']): string | undefined => {
    const found = wrong.find((trouble) => trouble.field === field);
    if (!found) return undefined;
    if (field === 'site') return d().bench.siteHint;
    return found.range ? sayRange(found.range) : d().wrongNumber;
  };
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
        error={errorOf('site')}
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
          error={errorOf(field)}
        />
      ))}
      <Button kind="quiet" onClick={props.onRemove}>
        {t().remove}
      </Button>
    </fieldset>
  );
};

export const LastPart = ({
  draft: { last },
  change,
  errors,
}: PartProps & {
  readonly errors: Partial<Readonly<Record<'name' | LastField, string>>>;
}) => {
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
          error={errors.name}
          onInput={(name) => change({ last: { ...last, name } })}
        />
        {lastFields.map((field) => (
          <TextField
            key={field}
            label={labels[field]}
            required={false}
            value={last[field]}
            error={errors[field]}
            onInput={(value) => change({ last: { ...last, [field]: value } })}
            numeric
          />
        ))}
      </div>
    </>
  );
};

export const Layers = ({
  draft: { layers },
  change,
  errors,
}: PartProps & { readonly errors: Partial<Readonly<Record<ZoneCode, string>>> }) => {
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
            error={errors[zone]}
            onInput={(value) => change({ layers: { ...layers, [zone]: value } })}
            numeric
          />
        ))}
      </div>
    </>
  );
};
