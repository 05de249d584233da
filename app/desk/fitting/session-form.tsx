/** A session of fit trials, new or changed: where, when, which pairs of which round. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../../core/records/index.ts';
import {
  draftOfFitSession,
  fitSessionDraftSchema,
  fitSessionTroubles,
  newFitSession,
  readFitSession,
  type FitSessionDraft,
} from '../../drafts/fit-session.ts';
import { Choices } from '../../parts/controls/controls.tsx';
import { formatSize } from '../../parts/format.ts';
import { useKept } from '../../parts/kept.tsx';
import { clauses, p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import {
  DateTimeField,
  saveFromForm,
  SelectField,
  SmallForm,
  TextField,
} from '../parts/form-parts.tsx';
import type { SessionRecord } from './session-facts.ts';

/** The stages at which people try pairs on before anybody runs. */
const FIT_STAGES: readonly string[] = ['pullover', 'first-samples'];

/** The round that is most likely tried on: the latest one before its wear test, else the latest. */
const likelyRound = ({ rounds }: TabProps['review']): RecordId | '' =>
  (rounds.findLast(({ stage }) => FIT_STAGES.includes(stage)) ?? rounds.at(-1))?.id ?? '';

const pairsOf = ({ pairs }: TabProps['review'], round: string): readonly RecordId[] =>
  pairs.filter((pair) => pair.round === round).map(({ id }) => id);

export const SessionForm = (
  props: TabProps & { readonly of?: SessionRecord; readonly close: () => void },
) => {
  const { review, of, close } = props;
  const words = p().fitting;
  const links = linksOf(review.project.id);
  const { route } = useLocation();
  const [tried, setTried] = useState(false);
  const kept = useKept<FitSessionDraft>({
    key: of ? `fit session ${of.revision.id}` : `new fit session ${review.project.id}`,
    of: of?.revision.stamp,
    schema: fitSessionDraftSchema,
    begin: () => {
      if (of) return draftOfFitSession(of.body);
      const round = likelyRound(review);
      return newFitSession(review.nowMs, round, pairsOf(review, round));
    },
  });
  const { draft, setDraft } = kept;
  const change = (part: Partial<FitSessionDraft>) => setDraft((now) => ({ ...now, ...part }));
  const troubles = tried ? fitSessionTroubles(draft) : [];
  const error = (field: (typeof troubles)[number]) =>
    troubles.includes(field) ? words.errors[field] : undefined;
  const offered = review.pairs.filter(({ round }) => round === draft.round);
  const save = async () => {
    setTried(true);
    const body = readFitSession(draft, review.project.id, of?.body ?? null);
    if (!body) return '';
    const saved = await saveFromForm('fit-session', body, of?.revision.id);
    if (typeof saved === 'string') return saved;
    await kept.done();
    close();
    if (!of) route(links.place('fitting', saved.revision.id));
    return null;
  };
  return (
    <SmallForm save={save} kept={kept}>
      <div class="field-row">
        <TextField
          label={words.name}
          value={draft.name}
          onInput={(name) => change({ name })}
          error={error('name')}
        />
        <DateTimeField
          label={words.at}
          value={draft.at}
          onInput={(at) => change({ at })}
          error={error('at')}
        />
        <SelectField<RecordId>
          label={words.round}
          value={draft.round as RecordId}
          options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(round) => change({ round, pairs: pairsOf(review, round) })}
        />
      </div>
      {offered.length === 0 ? (
        <p>
          {words.noPairs}{' '}
          {draft.round !== '' && (
            <a href={links.round(draft.round as RecordId)}>{words.addPairs}</a>
          )}
        </p>
      ) : (
        <Choices
          label={words.pairs}
          options={offered.map(({ id, code, sizeMm }) => ({
            value: id,
            label: clauses(code, formatSize(sizeMm)),
          }))}
          values={new Set(draft.pairs as RecordId[])}
          onToggle={(id) =>
            change({
              pairs: draft.pairs.includes(id)
                ? draft.pairs.filter((one) => one !== id)
                : [...draft.pairs, id],
            })
          }
        />
      )}
      {error('pairs') !== undefined && (
        <p class="field-error" role="alert" tabIndex={-1} aria-invalid>
          {words.errors.pairs}
        </p>
      )}
      <p class="soft small">{words.onPhones}</p>
    </SmallForm>
  );
};
