/** Parts of a round's form: what changed, its last, its layers. */
import { complaintKinds, partIds, type ZoneCode } from '../../../core/foot/index.ts';
import type { Limit } from '../../../core/records/index.ts';
import { layeredZones } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { d, t, terms } from '../../words/index.ts';
import {
  emptyChange,
  lastFields,
  limitKey,
  type LastField,
  type RoundDraft,
} from '../../drafts/round.ts';
import { placeName } from '../../words/say-place.ts';
import { labelOf, SelectField, TextField } from '../parts/form-parts.tsx';
import { InFigures } from '../parts/in-figures.tsx';

export interface PartProps {
  readonly draft: RoundDraft;
  readonly change: (part: Partial<RoundDraft>) => void;
}

const replaced = <T,>(list: readonly T[], index: number, part: Partial<T>): readonly T[] =>
  list.map((one, other) => (other === index ? { ...one, ...part } : one));
const without = <T,>(list: readonly T[], index: number): readonly T[] =>
  list.filter((_, other) => other !== index);

/** Stands for no limit among the options of a change. */
const NO_LIMIT = 'none';

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

/** The limits of the brief, as a change can name them. */
const limitOptions = (limits: readonly Limit[]) => {
  const said = { desk: d(), glossary: terms() };
  return [...new Map(limits.map((one) => [limitKey(one), one])).entries()].map(([value, one]) => ({
    value,
    label: one.site
      ? placeName({ measure: one.measure, site: one.site }, said)
      : terms().measures[one.measure],
  }));
};

export const Changes = ({
  draft: { changes },
  change,
  limits,
  troubles,
}: PartProps & {
  readonly limits: readonly Limit[];
  /** What is wrong with each change's figures. */
  readonly troubles: (at: number) => readonly { readonly field: string }[];
}) => {
  const words = d().rounds;
  const meant = limitOptions(limits);
  const set = (index: number, part: Partial<RoundDraft['changes'][number]>) =>
    change({ changes: replaced(changes, index, part) });
  return (
    <>
      <h3>{words.changes}</h3>
      {changes.length > 0 && <p class="soft small">{words.mendsHint}</p>}
      {changes.map((one, index) => (
        <fieldset class="field-row reading change-row" key={index}>
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
          <InFigures
            draft={one.figures}
            set={(figures) => set(index, { figures })}
            troubles={troubles(index)}
          >
            {meant.length > 0 && (
              <SelectField
                label={words.meantLimit}
                optional
                value={one.limit}
                options={[
                  ...(one.limit === '' ? [] : [{ value: NO_LIMIT, label: d().none }]),
                  ...meant,
                ]}
                onChange={(limit) => set(index, { limit: limit === NO_LIMIT ? '' : limit })}
              />
            )}
          </InFigures>
        </fieldset>
      ))}
      <Button kind="quiet" onClick={() => change({ changes: [...changes, emptyChange] })}>
        {words.addChange}
      </Button>
    </>
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
