/** What every form of a finding asks: the part, how urgent, what is wanted, and which round carries it. */
import { partIds, type PartId } from '../../../core/foot/index.ts';
import { ranges, type Finding, type RecordId } from '../../../core/records/index.ts';
import type { RoundSummary } from '../../../core/review/index.ts';
import { millimetres, parseDecimal } from '../../../core/units/index.ts';
import { d, terms } from '../../words/index.ts';
import { SelectField, TextField } from '../form-parts.tsx';
import { numberTrouble } from '../in-range.ts';

export type Carrier = RecordId | 'undecided';

/** The part and the urgency, side by side with the fields that stand beside them. */
export const PartAndPriority = (props: {
  readonly part: PartId;
  readonly onPart: (part: PartId) => void;
  readonly priority: Finding['priority'];
  readonly onPriority: (priority: Finding['priority']) => void;
}) => {
  const words = d().finding;
  return (
    <>
      <SelectField
        label={words.part}
        value={props.part}
        options={partIds.map((value) => ({ value, label: terms().parts[value].name }))}
        onChange={props.onPart}
      />
      <SelectField
        label={words.priority}
        value={props.priority}
        options={(['high', 'medium', 'low'] as const).map((value) => ({
          value,
          label: words.priorities[value],
        }))}
        onChange={props.onPriority}
      />
    </>
  );
};

export const CarrierField = (props: {
  readonly value: Carrier;
  readonly rounds: readonly Pick<RoundSummary, 'id' | 'name'>[];
  readonly onChange: (carrier: Carrier) => void;
}) => {
  const words = d().finding;
  return (
    <SelectField<Carrier>
      label={words.carriedBy}
      value={props.value}
      options={[
        { value: 'undecided', label: words.undecided },
        ...props.rounds.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      onChange={props.onChange}
    />
  );
};

export const WantedFields = (props: {
  readonly wanted: string;
  readonly onWanted: (wanted: string) => void;
  readonly mm: string;
  readonly onMm: (mm: string) => void;
}) => {
  const words = d().finding;
  return (
    <>
      <TextField
        label={words.wanted}
        value={props.wanted}
        onInput={props.onWanted}
        most={4000}
        optional
      />
      <TextField label={words.wantedMm} value={props.mm} onInput={props.onMm} numeric optional />
    </>
  );
};

/** What is wanted as the record says it, or what is wrong with the number. */
export const readWanted = (
  wanted: string,
  mm: string,
): Pick<Finding, 'wanted' | 'wantedMm'> | string => {
  const size = mm.trim() === '' ? undefined : parseDecimal(mm);
  const wrong = numberTrouble(d().finding.wantedMm, size, ranges.wantedMm);
  if (wrong !== null) return wrong;
  return {
    ...(wanted.trim() !== '' && { wanted: wanted.trim() }),
    ...(typeof size === 'number' && { wantedMm: millimetres(size) }),
  };
};
