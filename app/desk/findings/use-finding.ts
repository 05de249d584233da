/** What a form of a finding works on: its draft, what was wrong with it, and how it is saved. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { tradeOf } from '../../../core/foot/index.ts';
import type { Finding, RecordId, RecordOf } from '../../../core/records/index.ts';
import {
  findingTroubles,
  readFinding,
  type FindingDraft,
  type FindingOrigin,
} from '../../drafts/finding.ts';
import { findingSchema } from '../../drafts/kept.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { d, terms } from '../../words/index.ts';
import { linksOf } from '../frame/route.ts';
import { saveFromForm } from '../parts/form-parts.tsx';
import { useKept, type KeptForm } from '../../parts/kept.tsx';

/**
 * @param draft as the form shows it
 * @param done once it is saved
 * @returns `save` answers the record, or what the form says: nothing where a field says it
 */
export const useFindingForm = (
  draft: FindingDraft,
  setDraft: (next: (now: FindingDraft) => FindingDraft) => void,
  done: () => Promise<void>,
) => {
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const { route } = useLocation();
  const change = (part: Partial<FindingDraft>) => setDraft((now) => ({ ...now, ...part }));
  const troubles = tried ? findingTroubles(draft) : [];
  const save = async (
    from: Finding | FindingOrigin,
    id?: RecordId,
  ): Promise<RecordOf<'finding'> | string> => {
    const read = readFinding(draft, from);
    if (!read.ok) {
      setTried(true);
      return '';
    }
    const saved = await saveFromForm('finding', read.body, id);
    if (typeof saved === 'string') return saved;
    await done();
    const { project, round, title, part } = saved.body;
    const trade = tradeOf[part];
    const words = d().finding;
    showToast({
      text: words.saved(title, terms().trades[trade]),
      action: {
        label: words.openSheet(terms().trades[trade]),
        run: () => route(linksOf(project).sheet(round, trade)),
      },
    });
    return saved;
  };
  return { draft, change, troubles, save };
};

/** The same of a form that asks for the finding alone, with its draft kept. */
export const useFinding = (form: Omit<KeptForm<FindingDraft>, 'schema'>) => {
  const kept = useKept<FindingDraft>({ ...form, schema: findingSchema });
  return { kept, ...useFindingForm(kept.draft, kept.setDraft, kept.done) };
};
