/** What a lead does with a specialist's answer, each with its undo. */
import {
  editBody,
  type ProposalReplyAnswer,
  type RecordId,
  type RecordOf,
} from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import { d, proposeWords, t } from '../../words/index.ts';

const undone = (text: string, undo: () => Promise<unknown>) =>
  showToast({ text, action: { label: t().undo, run: () => void undo() } });

/**
 * Accepts a proposal as it is now, or asks again.
 * @returns what went wrong, in words; null: nothing
 */
export const replyTo = async (
  { body, revision }: RecordOf<'proposal'>,
  answer: ProposalReplyAnswer,
  typed: string,
): Promise<string | null> => {
  const words = typed.trim();
  const saved = await store.save('proposal-reply', {
    project: body.project,
    finding: body.finding,
    proposal: revision.id,
    judged: revision.stamp,
    at: toInstant(Date.now()),
    answer,
    ...(words !== '' && { words, language: settings.value.language }),
  });
  if (!saved.ok) return d().trouble;
  const said = proposeWords();
  undone(answer === 'accepted' ? said.accepted : said.askedAgainNow, () =>
    store.erase(saved.value.revision.id),
  );
  return null;
};

/** Takes a reply back: the proposal waits for the lead anew. */
export const takeReplyBack = async (id: RecordId): Promise<void> => {
  const gone = await store.erase(id);
  if (gone.ok) undone(proposeWords().replyGone, () => store.restore(id));
  else showToast({ text: d().trouble });
};

/** From now on the trade is asked. */
export const askTrade = async ({ body, revision }: RecordOf<'finding'>): Promise<void> => {
  const { id } = revision;
  const asked = editBody<'finding'>(body, { state: 'asked-for', asked: toInstant(Date.now()) });
  const saved = await store.save('finding', asked, id);
  if (saved.ok) undone(proposeWords().askedTrade, () => store.save('finding', body, id));
  else showToast({ text: d().trouble });
};
