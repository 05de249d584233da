/** What a form of a finding works on: its draft, what was wrong with it, and how it is saved. */
import { useState } from 'preact/hooks';
import type { Finding, RecordId, RecordOf } from '../../../core/records/index.ts';
import {
  findingTroubles,
  readFinding,
  type FindingDraft,
  type FindingOrigin,
} from '../../drafts/finding.ts';
import { saveFromForm } from '../parts/form-parts.tsx';

/**
 * @param begin the draft when the form opens
 * @returns `save` answers the record, or what the form says: nothing where a field says it
 */
export const useFinding = (begin: () => FindingDraft) => {
  const [draft, setDraft] = useState(begin);
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const change = (part: Partial<FindingDraft>) => setDraft((now) => ({ ...now, ...part }));
  const troubles = tried ? findingTroubles(draft) : [];
  const save = async (
    from: Finding | FindingOrigin,
    id?: RecordId,
    typed: FindingDraft = draft,
  ): Promise<RecordOf<'finding'> | string> => {
    const read = readFinding(typed, from);
    if (read.ok) return saveFromForm('finding', read.body, id);
    setTried(true);
    return '';
  };
  return { draft, change, troubles, save };
};
