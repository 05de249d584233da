/** The gauge of each kind of reading in a check: the one that read it last, until the lead names another. */
import { measures, unitsOf } from '../../../core/records/index.ts';
import { d, terms } from '../../words/index.ts';
import { kindKey, kindsOf, type Gauges, type ReadingKind } from '../../drafts/check-gauges.ts';
import { TextField } from '../parts/form-parts.tsx';

/** A kind in words, with its unit where the measure has several. */
const kindName = ({ measure, unit }: ReadingKind): string =>
  unitsOf[measure].length > 1
    ? `${terms().measures[measure]} (${terms().units[unit]})`
    : terms().measures[measure];

export const GaugeFields = (props: {
  readonly rows: readonly ReadingKind[];
  readonly gauges: Gauges;
  /** With what was changed alone. */
  readonly onChange: (part: Gauges) => void;
}) => {
  const { rows, gauges, onChange } = props;
  const inOrder = [...kindsOf(rows)].sort(
    (a, b) => measures.indexOf(a.measure) - measures.indexOf(b.measure),
  );
  return (
    <div class="field-row">
      {inOrder.map((kind) => (
        <TextField
          key={kindKey(kind)}
          label={d().bench.gaugeFor(kindName(kind))}
          value={gauges[kindKey(kind)] ?? ''}
          onInput={(gauge) => onChange({ [kindKey(kind)]: gauge })}
          optional
        />
      ))}
    </div>
  );
};
