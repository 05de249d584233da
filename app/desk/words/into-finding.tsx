/** The chosen remarks become quotes of a finding, one that is there or a new one. */
import { useState } from 'preact/hooks';
import { partIds, suspectsOf, type PartId } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { FoundRemark } from '../../../core/words/index.ts';
import { newFinding, readFinding } from '../../drafts/finding.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, p, t, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { SelectField, SmallForm, TextField } from '../parts/form-parts.tsx';
import { saveQuotes, type ChosenRemark } from './quote-writes.ts';

interface IntoProps extends TabProps {
  readonly chosen: readonly ChosenRemark[];
  readonly done: () => void;
}

/** What all the chosen remarks are about; null: they differ, or say nothing of it. */
const commonIn = (chosen: readonly FoundRemark[]) => {
  const felt = chosen.map(({ tapped, untapped }) => [...tapped, ...untapped]);
  return (
    felt[0]?.find(({ zone }) =>
      felt.every((own) => zone !== null && own.some((one) => one.zone === zone)),
    ) ?? null
  );
};

const partFor = (chosen: readonly FoundRemark[]): PartId => {
  const common = commonIn(chosen);
  if (!common?.zone || !common.kind) return 'last';
  return suspectsOf(common.kind, common.zone).first[0] ?? 'last';
};

const NEW = 'new';

export const IntoFinding = (props: IntoProps) => {
  const { records, review, chosen, done } = props;
  const words = p().words;
  const project = review.project.id;
  const own = records.finding.filter(({ body }) => body.project === project);
  const [into, setInto] = useState<RecordId | typeof NEW>(NEW);
  const [title, setTitle] = useState('');
  const [missing, setMissing] = useState(false);
  const [part, setPart] = useState<PartId | null>(null);

  /** Saves a new finding. @returns it; null: not saved, and said */
  const begin = async () => {
    const round = chosen.find((one) => one.round !== null)?.round ?? review.rounds.at(-1)?.id;
    const zone = commonIn(chosen)?.zone;
    const read = readFinding(newFinding(title, part ?? partFor(chosen)), {
      ...{ project, round: round as RecordId, source: 'other' },
      ...(zone && { zone }),
    });
    if (!read.ok) {
      setMissing(true);
      return null;
    }
    const saved = await store.save('finding', read.body);
    return saved.ok ? saved.value : d().trouble;
  };

  const save = async () => {
    const finding = into === NEW ? await begin() : own.find(({ revision }) => revision.id === into);
    if (finding === null || finding === undefined) return '';
    if (typeof finding === 'string') return finding;
    const { id } = finding.revision;
    const undo = await saveQuotes(chosen, project, id);
    if (!undo) return d().trouble;
    const undoAll = async () => {
      await undo();
      if (into === NEW) await store.erase(id);
    };
    showToast({
      text: words.quotedNow(chosen.length, finding.body.title),
      action: { label: t().undo, run: () => void undoAll() },
    });
    setTitle('');
    done();
    return null;
  };

  return (
    <section class="paper into-finding no-print" aria-label={words.into}>
      <h2>{words.into}</h2>
      {chosen.length === 0 ? (
        <p class="soft small">{words.intoHelp}</p>
      ) : (
        <SmallForm save={save} label={words.quote(chosen.length)}>
          <SelectField<RecordId | typeof NEW>
            label={words.which}
            value={into}
            options={[
              { value: NEW, label: words.newOne },
              ...own.map(({ revision, body }) => ({ value: revision.id, label: body.title })),
            ]}
            onChange={setInto}
          />
          {into === NEW && (
            <>
              <TextField
                label={words.newTitle}
                value={title}
                error={missing ? words.noTitle : undefined}
                onInput={(typed) => {
                  setMissing(false);
                  setTitle(typed);
                }}
              />
              <SelectField
                label={words.part}
                value={part ?? partFor(chosen)}
                options={partIds.map((value) => ({ value, label: terms().parts[value].name }))}
                onChange={setPart}
              />
            </>
          )}
        </SmallForm>
      )}
      <p class="soft small">{words.keeps}</p>
    </section>
  );
};
