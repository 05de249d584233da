/**
 * A finding from wear, from the blueprint, from comfort, or in the lead's own words. What the data said is
 * frozen with it. One from a complaint is made where the complaint is shown.
 */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../../core/records/index.ts';
import { carriersOf, linesOf, newFinding, type FindingDraft } from '../../drafts/finding.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d, p, t } from '../../words/index.ts';
import { frozenEvidence, sayFigures } from '../../words/say-evidence.ts';
import type { TabProps } from '../desk-state.ts';
import { SelectField, SmallForm } from '../parts/form-parts.tsx';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { speakerOf } from '../parts/speaker.ts';
import { sources, useChoosable, type Choosable, type Source } from './choosable.ts';
import { FindingFields } from './finding-form.tsx';
import { LinesField } from './lines-field.tsx';
import { useFinding } from './use-finding.ts';

export const NewFinding = (props: TabProps) => {
  const words = p().changes;
  const links = linksOf(props.review.project.id);
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.changes, href: links.place('changes') },
          { words: words.findings },
        ]}
        headline={words.newFinding}
      />
      <section class="paper" aria-label={words.newFinding}>
        <Form {...props} />
      </section>
    </>
  );
};

/** What a source is chosen by. */
const chooseBy = (source: Exclude<Source, 'other'>): string => {
  const { board } = d().report;
  return { wear: board.place, blueprint: board.reading, comfort: board.attribute }[source];
};

/** The draft with what was chosen, in place of what was not typed. */
const withChosen = (
  draft: FindingDraft,
  typed: { readonly title: boolean; readonly part: boolean },
  chosen: Choosable | null,
): FindingDraft => ({
  ...draft,
  title: typed.title ? draft.title : (chosen?.title ?? ''),
  part: typed.part ? draft.part : (chosen?.part ?? 'last'),
});

const Form = (props: TabProps) => {
  const { review } = props;
  const { board, sources: sourceNames } = d().report;
  const { route } = useLocation();
  const withRuns = review.rounds.filter(({ size }) => size.runs > 0);
  const [round, setRound] = useState<RecordId>(
    (withRuns.at(-1) ?? review.rounds.at(-1))?.id ?? ('' as RecordId),
  );
  const [source, setSource] = useState<Source>('wear');
  const [key, setKey] = useState<string>('');
  const [lines, setLines] = useState('');
  /** What of the draft was typed; the rest is as what the finding is made of. */
  const [typed, setTyped] = useState({ title: false, part: false });
  const { draft, change, troubles, save } = useFinding(() =>
    newFinding('', 'last', settings.value.language),
  );
  const choosable = useChoosable(props, source, round);
  const chosen = choosable?.find((one) => one.key === key) ?? choosable?.[0] ?? null;
  const shown = withChosen(draft, typed, chosen);
  const speaker = speakerOf(props);
  const saying = (one: Choosable) => sayFigures(one.figures, speaker) ?? [];

  const saveNew = async () => {
    if (source !== 'other' && !chosen) return board.nothingToShow;
    const evidence = frozenEvidence(
      chosen?.figures ?? {},
      linesOf(lines),
      toInstant(review.nowMs),
      settings.value.language,
      speaker,
    );
    const origin = { project: review.project.id, round, source, ...(evidence && { evidence }) };
    const saved = await save(origin, undefined, shown);
    if (typeof saved === 'string') return saved;
    route(linksOf(review.project.id).finding(saved.revision.id), true);
    return null;
  };

  return (
    <SmallForm save={saveNew}>
      <div class="field-row">
        <SelectField
          label={board.from}
          value={source}
          options={sources.map((value) => ({ value, label: sourceNames[value] }))}
          onChange={setSource}
        />
        <SelectField
          label={d().complaints.round}
          value={round}
          options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setRound}
        />
        {chosen && source !== 'other' && (
          <SelectField
            label={chooseBy(source)}
            value={chosen.key}
            options={(choosable ?? []).map((one) => ({
              value: one.key,
              label: source === 'blueprint' ? (saying(one)[0] ?? one.title) : one.title,
            }))}
            onChange={setKey}
          />
        )}
      </div>
      {choosable === null ? (
        <p class="soft">{t().loading}</p>
      ) : source !== 'other' && !chosen ? (
        <p>{board.nothingToShow}</p>
      ) : null}
      {chosen && (
        <HowSure title={board.evidenceIs}>
          <ul>
            {saying(chosen).map((line, at) => (
              <li key={at}>{line}</li>
            ))}
          </ul>
        </HowSure>
      )}
      <LinesField label={board.lines} value={lines} onInput={setLines} optional />
      <FindingFields
        draft={shown}
        troubles={troubles}
        change={(part) => {
          setTyped((now) => ({
            title: now.title || part.title !== undefined,
            part: now.part || part.part !== undefined,
          }));
          change(part);
        }}
        carriers={carriersOf(review.rounds, round)}
        photos
      />
    </SmallForm>
  );
};
