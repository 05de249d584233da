/** What came of the reports that a pair or a run holds, each to be read again. */
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { useStored } from '../../parts/state.ts';
import { ownWords, talkWords, terms } from '../../words/index.ts';
import { feltInThanks } from '../../words/say-thanks.ts';
import { thanksFor } from './told.ts';

/** Nothing where nothing came of them yet. */
export const CameOf = (props: {
  readonly runs: readonly RecordOf<'run'>[];
  readonly tester: RecordId;
}) => {
  const all = useStored((from) => from.list('thanks'), ['thanks']);
  const thanks = all ? thanksFor(all, props.runs, props.tester) : [];
  if (thanks.length === 0) return null;
  const talk = talkWords();
  const { cameOf } = ownWords().heard;
  return (
    <section class="sheet" aria-label={cameOf}>
      <h2>{cameOf}</h2>
      <ul class="plain-list stack">
        {thanks.map(({ revision, body }) => (
          <li key={revision.id}>
            <a href={`/thanks/${revision.id}`}>{feltInThanks(body, { talk, glossary: terms() })}</a>
            <br />
            <span class="soft">{talk.thanksResults[body.result]}</span>
          </li>
        ))}
      </ul>
    </section>
  );
};
