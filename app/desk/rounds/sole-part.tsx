/** What the sole of a round is made of: the midsole's foam and the outsole's rubber, each with its hardness. */
import { foamIds, type FoamId } from '../../../core/foot/index.ts';
import { hardnessUnits } from '../../../core/records/index.ts';
import { soleParts, type CompoundDraft, type SolePart as Part } from '../../drafts/compound.ts';
import { clauses, d, terms } from '../../words/index.ts';
import { SelectField, TextField } from '../parts/form-parts.tsx';
import type { PartProps } from './round-parts.tsx';

export const SolePart = ({
  draft: { foam, sole },
  change,
  errors,
  from,
}: PartProps & {
  readonly errors: Partial<Readonly<Record<Part, string>>>;
  /** Name of the round that it was taken over from. */
  readonly from?: string;
}) => {
  const words = d().rounds;
  const put = (part: Part, typed: Partial<CompoundDraft>) =>
    change({ sole: { ...sole, [part]: { ...sole[part], ...typed } } });
  return (
    <>
      <h3>{words.sole}</h3>
      {from !== undefined && <p class="soft small">{words.soleFrom(from)}</p>}
      <div class="field-row">
        <SelectField<FoamId | 'unsaid'>
          label={words.foam}
          value={foam}
          options={[
            { value: 'unsaid', label: words.foamUnsaid },
            ...foamIds.map((value) => ({ value, label: terms().foams[value] })),
          ]}
          onChange={(chosen) => change({ foam: chosen })}
        />
        {soleParts.map((part) => (
          <>
            <TextField
              key={`${part} name`}
              label={words.compound[part]}
              value={sole[part].name}
              onInput={(name) => put(part, { name })}
              optional
            />
            <TextField
              key={`${part} hardness`}
              label={clauses(words.compoundHardness[part], terms().units[sole[part].unit])}
              value={sole[part].hardness}
              onInput={(hardness) => put(part, { hardness })}
              error={errors[part]}
              numeric
              optional
            />
            <SelectField
              key={`${part} unit`}
              label={words.compoundScale[part]}
              value={sole[part].unit}
              options={hardnessUnits.map((value) => ({ value, label: terms().units[value] }))}
              onChange={(unit) => put(part, { unit })}
            />
          </>
        ))}
      </div>
    </>
  );
};
