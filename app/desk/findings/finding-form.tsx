/**
 * The one form of a finding: title, part, urgency, state, which round carries it, what is wanted, photos. It keeps what
 * is typed as a draft (`app/drafts/finding.ts`); where a finding comes from is asked by whoever shows the form.
 */
import { partIds } from '../../../core/foot/index.ts';
import { findingStates, ranges, type RecordId } from '../../../core/records/index.ts';
import type { FindingDraft, FindingTrouble } from '../../drafts/finding.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { d, locale, p, terms } from '../../words/index.ts';
import { languageIn } from '../../words/figures.ts';
import { InFigures } from '../parts/in-figures.tsx';
import { DateTimeField, SelectField, TextField } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';

export interface FindingFieldsProps {
  readonly draft: FindingDraft;
  readonly change: (part: Partial<FindingDraft>) => void;
  /** What is wrong since it was last to be saved, each said at its field. */
  readonly troubles: readonly FindingTrouble[];
  /** The rounds that can carry the change; none: nothing is asked. */
  readonly carriers: readonly { readonly id: RecordId; readonly name: string }[];
  /** Whether its title and state are asked: not of one that is begun from a complaint. */
  readonly short?: boolean;
  readonly photos?: boolean;
}

export const FindingFields = (props: FindingFieldsProps) => {
  const { draft, change, troubles, carriers, short } = props;
  const words = d().finding;
  const { board } = d().report;
  const said = p().changes.form;
  const has = (field: FindingTrouble['field']): boolean =>
    troubles.some((one) => one.field === field);
  const { other } = draft;
  const language = languageIn(other.language, locale());
  return (
    <>
      {!short && (
        <TextField
          label={board.titleField}
          value={draft.title}
          onInput={(title) => change({ title })}
          error={has('title') ? said.nothing(board.titleField) : undefined}
        />
      )}
      <div class="field-row">
        <SelectField
          label={words.part}
          value={draft.part}
          options={partIds.map((value) => ({ value, label: terms().parts[value].name }))}
          onChange={(part) => change({ part })}
        />
        <SelectField
          label={words.priority}
          value={draft.priority}
          options={(['high', 'medium', 'low'] as const).map((value) => ({
            value,
            label: words.priorities[value],
          }))}
          onChange={(priority) => change({ priority })}
        />
        {!short && (
          <SelectField
            label={board.state}
            value={draft.state}
            options={findingStates.map((value) => ({ value, label: words.states[value] }))}
            onChange={(state) => change({ state })}
          />
        )}
        {carriers.length > 0 && (
          <SelectField<RecordId | 'undecided'>
            label={words.carriedBy}
            value={draft.carriedBy === '' ? 'undecided' : draft.carriedBy}
            options={[
              { value: 'undecided', label: words.undecided },
              ...carriers.map(({ id, name }) => ({ value: id, label: name })),
            ]}
            onChange={(carrier) => change({ carriedBy: carrier === 'undecided' ? '' : carrier })}
          />
        )}
      </div>
      <TextField
        label={words.wanted}
        value={draft.wanted}
        onInput={(wanted) => change({ wanted })}
        most={4000}
        optional
      />
      <InFigures
        draft={draft.change}
        set={(figures) => change({ change: figures })}
        troubles={troubles}
      />
      <div class="field-row">
        <TextField
          label={words.wantedMm}
          value={draft.mm}
          onInput={(mm) => change({ mm })}
          error={has('mm') ? sayRange(ranges.wantedMm) : undefined}
          numeric
          optional
        />
        <DateTimeField
          label={said.due}
          value={draft.due}
          onInput={(due) => change({ due })}
          error={has('due') ? d().missing : undefined}
          optional
          isDay
        />
      </div>
      {other.language !== '' && (
        <>
          <TextField
            label={said.titleIn(language)}
            value={other.title}
            onInput={(title) => change({ other: { ...other, title } })}
            optional
          />
          <TextField
            label={said.wantedIn(language)}
            value={other.wanted}
            onInput={(wanted) => change({ other: { ...other, wanted } })}
            most={4000}
            optional
          />
        </>
      )}
      {props.photos && (
        <PhotoPicker
          label={draft.title}
          photos={draft.photos}
          onChange={(photos) => change({ photos })}
        />
      )}
    </>
  );
};
