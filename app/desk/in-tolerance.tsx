/** Are all pairs read, or only those in tolerance? A switch that stands over every tab while it matters. */
import { useEffect } from 'preact/hooks';
import { isOutOfTolerance } from '../../core/review/index.ts';
import { Notice } from '../parts/controls/controls.tsx';
import { d } from '../words/index.ts';
import { readInTolerance, type TabProps } from './desk-state.ts';

export const InTolerance = ({ review }: TabProps) => {
  const words = d().blueprint;
  const { id } = review.project;
  useEffect(() => {
    // The switch belongs to the project that it was pressed in.
    if (readInTolerance.value !== id) readInTolerance.value = null;
  }, [id]);
  const { without } = review;
  const out = review.pairs.filter(({ outOfTolerance }) => isOutOfTolerance(outOfTolerance));
  const unmeasured = review.pairs.filter(({ outOfTolerance }) => outOfTolerance.judged === 0);
  if (without === null && out.length === 0) return null;
  return (
    <div class="stack">
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={readInTolerance.value !== null}
          onChange={(event) => (readInTolerance.value = event.currentTarget.checked ? id : null)}
        />
        {words.only}
      </label>
      {without !== null && (
        <Notice tone="warn">
          {[
            without.length === 0
              ? words.withoutNone
              : words.without(without.length, without.map(({ code }) => code).join(', ')),
            ...(unmeasured.length > 0 ? [words.stays(unmeasured.length)] : []),
            words.isOn,
          ].join(' ')}
        </Notice>
      )}
    </div>
  );
};
