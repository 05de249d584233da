/**
 * A finding from wear, from the blueprint, from comfort, or in the lead's own words. What the data said is
 * frozen with it. One from a complaint is made where the complaint is shown.
 */
import { useState } from 'preact/hooks';
import type { PartId } from '../../../core/foot/index.ts';
import type { EvidenceFigures, Finding, Measure, RecordId } from '../../../core/records/index.ts';
import {
  freezeComfort,
  freezeReading,
  freezeWear,
  placeOf,
  type WearLook,
  type WearPlaceSize,
} from '../../../core/review/index.ts';
import { isOut } from '../../../core/rounds/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { settings } from '../../parts/settings.ts';
import { d, t, terms } from '../../words/index.ts';
import { frozenEvidence, sayFigures } from '../../words/say-evidence.ts';
import { placeTitle } from '../../words/say-wear.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm, TextField, Unfold } from '../form-parts.tsx';
import { PartAndPriority, readWanted, WantedFields } from './finding-fields.tsx';
import { speakerOf } from '../speaker.ts';
import { LinesField, linesOf } from './lines-field.tsx';

type Source = Exclude<NonNullable<Finding['source']>, 'complaint'>;

/** One thing that a finding can be made of. */
interface Choosable {
  readonly key: string;
  readonly title: string;
  /** What is frozen with it. */
  readonly figures: EvidenceFigures;
  /** Whose part it usually is: common practice, no source. */
  readonly part: PartId;
}

const sources = ['wear', 'blueprint', 'comfort', 'other'] as const satisfies readonly Source[];

/** Which part a measure is of (common practice, no source). */
const partOf: Readonly<Record<Measure, PartId>> = {
  'stack-height': 'midsole-foam',
  hardness: 'midsole-foam',
  mass: 'midsole-geometry',
  'tread-depth': 'outsole',
  'impact-peak': 'midsole-foam',
  'energy-absorbed': 'midsole-foam',
  'energy-returned': 'midsole-foam',
  dimension: 'last',
};

export const NewFinding = (props: TabProps) => (
  <div class="no-print">
    <Unfold label={d().report.board.add}>{(close) => <Fields {...props} close={close} />}</Unfold>
  </div>
);

/** What of one source the log has in a round; null while it is asked for. */
const useChoosable = (
  props: TabProps,
  source: Source,
  round: RecordId,
): readonly Choosable[] | null => {
  const { review, records } = props;
  const speaker = speakerOf(props);
  const { code } = namesIn(review, records);
  const project = review.project.id;
  const looks = useWork(
    async (desk): Promise<readonly WearLook[]> => {
      if (source !== 'wear') return [];
      const places = await desk.wearPlaces(project);
      const own = places.filter((place: WearPlaceSize) => place.round === round);
      const found = await Promise.all(
        own.map((place) => desk.wear(project, place, 'distance', null)),
      );
      return found.flatMap((look) => look ?? []);
    },
    records,
    [source, round],
  );
  switch (source) {
    case 'wear':
      return (
        looks &&
        looks.map((look) => ({
          key: `${look.kind} ${look.site}`,
          title: placeTitle(look, speaker),
          figures: freezeWear(look, review.project.brief.distanceM),
          part: partOf[placeOf(look).measure],
        }))
      );
    case 'blueprint':
      return review.deviations
        .filter(({ round: of, word }) => of === round && isOut(word))
        .map((one) => {
          const { pair, measure, site, foot } = one;
          return {
            key: `${pair} ${measure} ${site} ${foot}`,
            title: `${terms().measures[measure]}, ${site}`,
            figures: freezeReading(one, code(pair)),
            part: partOf[measure],
          };
        });
    case 'comfort': {
      const at = review.rounds.findIndex(({ id }) => id === round);
      const [before, own] = [review.rounds[at - 1], review.rounds[at]];
      if (!own) return [];
      return own.comfort.flatMap((score) => {
        const { attribute } = score;
        const change = own.comfortChanges.find((one) => one.attribute === attribute);
        const figures = freezeComfort(score, change, {
          earlier: before?.name ?? '',
          later: own.name,
        });
        return figures
          ? [
              {
                key: attribute,
                title: terms().attributes[attribute].name,
                figures,
                part: attribute.includes('cushioning')
                  ? ('midsole-foam' as const)
                  : ('last' as const),
              },
            ]
          : [];
      });
    }
    case 'other':
      return [];
  }
};

const Fields = (props: TabProps & { readonly close: () => void }) => {
  const { review, close } = props;
  const { board, sources: sourceNames } = d().report;
  const withRuns = review.rounds.filter(({ size }) => size.runs > 0);
  const [round, setRound] = useState<RecordId>(
    (withRuns.at(-1) ?? review.rounds.at(-1))?.id ?? ('' as RecordId),
  );
  const [source, setSource] = useState<Source>('wear');
  const [key, setKey] = useState<string>('');
  /** Null: as what it is made of. */
  const [title, setTitle] = useState<string | null>(null);
  const [part, setPart] = useState<PartId | ''>('');
  const [priority, setPriority] = useState<Finding['priority']>('medium');
  const [wanted, setWanted] = useState('');
  const [mm, setMm] = useState('');
  const [lines, setLines] = useState('');
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const choosable = useChoosable(props, source, round);
  const chosen = choosable?.find((one) => one.key === key) ?? choosable?.[0] ?? null;
  const shownTitle = title ?? chosen?.title ?? '';
  const named = shownTitle.trim();
  const own = part || chosen?.part || 'last';
  const speaker = speakerOf(props);
  const saying = (one: Choosable) => sayFigures(one.figures, speaker) ?? [];

  const save = async () => {
    const change = readWanted(wanted, mm);
    if (typeof change === 'string') return change;
    if (named === '') return `${board.titleField}: ${d().missing}`;
    if (source !== 'other' && !chosen) return board.nothingToShow;
    const evidence = frozenEvidence(
      chosen?.figures ?? {},
      linesOf(lines),
      toInstant(review.nowMs),
      settings.value.language,
      speaker,
    );
    const saved = await saveFromForm('finding', {
      project: review.project.id,
      round,
      title: named.slice(0, 200),
      part: own,
      priority,
      source,
      ...change,
      ...(evidence && { evidence }),
      ...(photos.length > 0 && { photos: [...photos] }),
      state: 'open',
    });
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };

  return (
    <SmallForm save={save}>
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
            label={
              source === 'wear'
                ? board.place
                : source === 'blueprint'
                  ? board.reading
                  : board.attribute
            }
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
        <div>
          <p class="soft small">{board.evidenceIs}</p>
          <ul class="small">
            {saying(chosen).map((line, at) => (
              <li key={at}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      <LinesField label={board.lines} value={lines} onInput={setLines} optional />
      <TextField label={board.titleField} value={shownTitle} onInput={setTitle} />
      <div class="field-row">
        <PartAndPriority part={own} onPart={setPart} priority={priority} onPriority={setPriority} />
      </div>
      <WantedFields wanted={wanted} onWanted={setWanted} mm={mm} onMm={setMm} />
      <PhotoPicker label={named} photos={photos} onChange={setPhotos} />
    </SmallForm>
  );
};
