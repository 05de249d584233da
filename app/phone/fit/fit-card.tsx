/** On Today while a session of fit trials is on: the way into it, and how many were here on this phone. */
import { fittersIn } from '../../../core/fitting/index.ts';
import type { RecordOf } from '../../../core/records/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { useStored } from '../../parts/state.ts';
import { fitWords } from '../../words/index.ts';
import { fitDraftKey } from './fit-session.ts';

export const FitCard = ({ session }: { readonly session: RecordOf<'fit-session'> }) => {
  const words = fitWords().card;
  const { id } = session.revision;
  const found = useStored(
    async (from) => ({
      begun: (await from.draft(fitDraftKey(id))) ?? null,
      people: fittersIn((await from.list('fit-trial')).filter(({ body }) => body.session === id))
        .length,
    }),
    ['fit-trial'],
    [id],
  );
  return (
    <section class="sheet" aria-label={words.title(session.body.name)}>
      <h2>{words.title(session.body.name)}</h2>
      <p>{words.what}</p>
      {found !== null && found.people > 0 && <p class="soft small">{words.done(found.people)}</p>}
      <LinkButton href={`/fit/${id}`}>{found?.begun ? words.goOn : words.start}</LinkButton>
    </section>
  );
};
