/** Says over every place that only pairs in tolerance are read, and which are left out, while the bar's choice is so. */
import { useEffect } from 'preact/hooks';
import { Notice } from '../../parts/controls/controls.tsx';
import { d, listed } from '../../words/index.ts';
import { readInTolerance, type TabProps } from '../desk-state.ts';

export const InTolerance = ({ review }: TabProps) => {
  const words = d().blueprint;
  const { id } = review.project;
  useEffect(() => {
    // The switch belongs to the project that it was pressed in.
    if (readInTolerance.value !== id) readInTolerance.value = null;
  }, [id]);
  const { without } = review;
  const unmeasured = review.pairs.filter(({ outOfTolerance }) => outOfTolerance.judged === 0);
  if (without === null) return null;
  return (
    <Notice tone="warn">
      {[
        without.length === 0
          ? words.withoutNone
          : words.without(without.length, listed(without.map(({ code }) => code))),
        ...(unmeasured.length > 0 ? [words.stays(unmeasured.length)] : []),
        words.isOn,
      ].join(' ')}
    </Notice>
  );
};
