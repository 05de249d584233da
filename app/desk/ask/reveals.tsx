/** Warns where the words of a question would tell a tester what was changed; it forbids nothing. */
import { useMemo } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { changesToHide } from '../../../core/review/index.ts';
import { revealsChange } from '../../../core/words/index.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { sayOf } from '../frame/say.ts';

export const Reveals = (
  props: TabProps & {
    readonly tester: RecordId;
    readonly words: string;
  },
) => {
  const { records, review, tester } = props;
  const project = review.project.id;
  const changes = useMemo(() => changesToHide(records.round, project), [records, project]);
  const told = useMemo(() => revealsChange(props.words, changes), [props.words, changes]);
  if (told.length === 0) return null;
  const words = p().ask;
  const found = [...new Set(told.flatMap((one) => one.words))].map(words.quoted);
  return (
    <Notice tone="warn" live>
      {words.reveals(namesIn(review, records).tester(tester), sayOf(props).list(found))}
    </Notice>
  );
};
