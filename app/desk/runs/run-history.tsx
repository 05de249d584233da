/** Every saved version of a run: what changed from one to the next, by whom and when. */
import type { RecordId } from '../../../core/records/index.ts';
import { versionsOf, type RunVersion } from '../../../core/review/index.ts';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { useStored } from '../../parts/state.ts';
import { p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { sayOf } from '../frame/say.ts';
import { fieldInWords } from '../../words/say-run.ts';

const Changes = (props: TabProps & { readonly version: RunVersion }) => {
  const { version } = props;
  const words = p().runs;
  const { pair } = namesIn(props.review, props.records);
  const { run, previous, changed } = version;
  if (!run || !previous) return null;
  if (changed.length === 0) return <p class="soft">{words.nothingShown}</p>;
  return (
    <ul class="plain-list">
      {changed.map((field) => (
        <li key={field}>
          <span class="soft">{words.labels[field]}</span>{' '}
          {words.fromTo(
            fieldInWords(field, previous, pair) || words.none,
            fieldInWords(field, run, pair) || words.none,
          )}
        </li>
      ))}
    </ul>
  );
};

export const RunHistory = (props: TabProps & { readonly id: RecordId }) => {
  const words = p().runs;
  const { records, review, id } = props;
  const history = useStored((from) => from.history(id), ['run'], [id]);
  if (!history) return null;
  const versions = versionsOf(history);
  const names = namesIn(review, records);
  const { upper } = sayOf(props);
  const named = (author: string): string =>
    records.tester.some(({ revision }) => revision.id === author)
      ? names.tester(author as RecordId)
      : words.aLead;
  const who = (author: string): string => upper(named(author));
  const line = ({ author, savedMs, erased, previous }: RunVersion): string => {
    const say = erased ? words.erasedOn : previous ? words.changedOn : words.loggedOn;
    return say(who(author), formatDateTime(savedMs));
  };
  return (
    <section class="run-history small">
      <h2>{words.history}</h2>
      <ol class="plain-list">
        {versions.map((version) => (
          <li key={version.savedMs}>
            {line(version)}
            {version.run?.broughtIn && (
              <p>
                {p().tables.broughtInBy(
                  named(version.run.broughtIn.by),
                  formatDate(version.run.broughtIn.at),
                )}
                {version.run.broughtIn.dayOnly && ` ${p().tables.dayOnly}`}
              </p>
            )}
            {version.run?.correctedBy && (
              <p>
                {words.correctedOn(
                  named(version.run.correctedBy.by),
                  formatDate(version.run.correctedBy.at),
                  version.run.correctedBy.why,
                )}
              </p>
            )}
            <Changes {...props} version={version} />
          </li>
        ))}
      </ol>
      {versions.length === 1 && <p class="soft">{words.neverChanged}</p>}
    </section>
  );
};
