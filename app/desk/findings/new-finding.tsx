/**
 * A finding from wear, from the blueprint, from comfort, or in the lead's own words. What the data said is
 * frozen with it. One from a complaint is made where the complaint is shown.
 */
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../../core/records/index.ts';
import {
  carriersOf,
  linesOf,
  newFinding,
  type FindingDraft,
  type NewFindingDraft,
} from '../../drafts/finding.ts';
import { newFindingSchema } from '../../drafts/kept.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d, p, t } from '../../words/index.ts';
import { frozenEvidence, sayFigures } from '../../words/say-evidence.ts';
import type { TabProps } from '../desk-state.ts';
import { SelectField, SmallForm } from '../parts/form-parts.tsx';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { useKept } from '../../parts/kept.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { sources, useChoosable, type Choosable, type Source } from './choosable.ts';
import { FindingFields } from './finding-form.tsx';
import { LinesField } from './lines-field.tsx';
import { useFindingForm } from './use-finding.ts';

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
  const kept = useKept<NewFindingDraft>({
    key: `new finding ${review.project.id}`,
    schema: newFindingSchema,
    begin: () => ({
      finding: newFinding('', 'last', settings.value.language),
      round: (withRuns.at(-1) ?? review.rounds.at(-1))?.id ?? ('' as RecordId),
      source: 'wear',
      key: '',
      lines: '',
      typed: { title: false, part: false },
    }),
  });
  const { round, source, key, lines, typed } = kept.draft;
  const put = (part: Partial<NewFindingDraft>) => kept.setDraft((now) => ({ ...now, ...part }));
  const choosable = useChoosable(props, source, round);
  const chosen = choosable?.find((one) => one.key === key) ?? choosable?.[0] ?? null;
  const { draft, change, troubles, save } = useFindingForm(
    withChosen(kept.draft.finding, typed, chosen),
    (next) => kept.setDraft((now) => ({ ...now, finding: next(now.finding) })),
    kept.done,
  );
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
    const saved = await save(origin);
    if (typeof saved === 'string') return saved;
    route(linksOf(review.project.id).finding(saved.revision.id), true);
    return null;
  };

  return (
    <SmallForm save={saveNew} kept={kept}>
      <div class="field-row">
        <SelectField
          label={board.from}
          value={source}
          options={sources.map((value) => ({ value, label: sourceNames[value] }))}
          onChange={(chosenSource) => put({ source: chosenSource })}
        />
        <SelectField
          label={d().complaints.round}
          value={round}
          options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(of) => put({ round: of })}
        />
        {chosen && source !== 'other' && (
          <SelectField
            label={chooseBy(source)}
            value={chosen.key}
            options={(choosable ?? []).map((one) => ({
              value: one.key,
              label: source === 'blueprint' ? (saying(one)[0] ?? one.title) : one.title,
            }))}
            onChange={(of) => put({ key: of })}
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
      <LinesField
        label={board.lines}
        value={lines}
        onInput={(said) => put({ lines: said })}
        optional
      />
      <FindingFields
        draft={draft}
        troubles={troubles}
        change={(part) => {
          put({
            typed: {
              title: typed.title || part.title !== undefined,
              part: typed.part || part.part !== undefined,
            },
          });
          change(part);
        }}
        carriers={carriersOf(review.rounds, round)}
        photos
      />
    </SmallForm>
  );
};
