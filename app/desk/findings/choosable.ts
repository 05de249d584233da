/** What can a finding be made of, beside complaints: wear, readings out of tolerance, comfort. */
import type { PartId } from '../../../core/foot/index.ts';
import type { EvidenceFigures, Finding, Measure, RecordId } from '../../../core/records/index.ts';
import {
  freezeComfort,
  freezeCourse,
  freezeReading,
  freezeWear,
  placeOf,
  type WearLook,
  type WearPlaceSize,
} from '../../../core/review/index.ts';
import { isOut } from '../../../core/rounds/index.ts';
import type { Metres } from '../../../core/units/index.ts';
import { clauses, terms } from '../../words/index.ts';
import { placeTitle } from '../../words/say-wear.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';

export type Source = Exclude<NonNullable<Finding['source']>, 'complaint'>;

/** One thing that a finding can be made of. */
export interface Choosable {
  readonly key: string;
  readonly title: string;
  /** What is frozen with it. */
  readonly figures: EvidenceFigures;
  /** Whose part it usually is: common practice, no source. */
  readonly part: PartId;
}

export const sources = [
  'wear',
  'blueprint',
  'comfort',
  'other',
] as const satisfies readonly Source[];

/** With what its curve is drawn from: a specialist has no checks. */
const wearFigures = (look: WearLook, briefM: Metres): EvidenceFigures => {
  const figures = freezeWear(look, briefM);
  const course = freezeCourse(look);
  return course ? { ...figures, wear: { ...figures.wear, course } } : figures;
};

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

/** What of one source the log has in a round; null while it is asked for. */
export const useChoosable = (
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
          figures: wearFigures(look, review.project.brief.distanceM),
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
            title: clauses(terms().measures[measure], site),
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
