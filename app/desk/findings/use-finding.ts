/** What a form of a finding works on: its draft, what was wrong with it, and how it is saved. */
import { useState } from 'preact/hooks';
import type { Finding, RecordId, RecordOf } from '../../../core/records/index.ts';
import {
  readFinding,
  type FindingDraft,
  type FindingOrigin,
  type FindingTrouble,
} from '../../drafts/finding.ts';
import { saveFromForm } from '../parts/form-parts.tsx';

/**
 * @param begin the draft when the form opens
 * @returns `save` answers the record, or what the form says: nothing where a field says it
 */
export const useFinding = (begin: () => FindingDraft) => {
  const [draft, setDraft] = useState(begin);
  const [trouble, setTrouble] = useState<FindingTrouble | null>(null);
  const change = (part: Partial<FindingDraft>) => {
    setTrouble(null);
    setDraft((now) => ({ ...now, ...part }));
  };
  const save = async (
    from: Finding | FindingOrigin,
    id?: RecordId,
    typed: FindingDraft = draft,
  ): Promise<RecordOf<'finding'> | string> => {
    const read = readFinding(typed, from);
    if (read.ok) return saveFromForm('finding', read.body, id);
    setTrouble(read.trouble);
    return '';
  };
  return { draft, change, trouble, save };
};
