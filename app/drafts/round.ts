/** A round as it stands in its form: everything as typed, read back into a record, or why it cannot be. */
import { practiceDimensions, type PracticeDimension } from '../../core/rounds/index.ts';
import type { ComplaintKind, FoamId, PartId, ZoneCode } from '../../core/foot/index.ts';
import {
  editBody,
  type Change,
  type Dimension,
  type Foot,
  type Limit,
  type Measure,
  type MeasureUnit,
  type RecordId,
  type Round,
} from '../../core/records/index.ts';
import { draftOfChange, emptyChangeForm, type ChangeFormDraft } from './change.ts';
import { draftOfSole, type SoleDraft } from './compound.ts';

/** `kept`: what it was before, with any field of a newer app. */
export interface ChangeDraft {
  readonly part: PartId;
  readonly what: string;
  readonly mends: ComplaintKind | '';
  /** The same in figures; nothing said: in words alone. Its part is that of the change. */
  readonly figures: ChangeFormDraft;
  /** The limit of the brief that it is meant to keep, by `limitKey`; empty: none. */
  readonly limit: string;
  readonly kept?: Change;
}

/** A limit of the brief, as a form names it. */
export const limitKey = ({ measure, site }: Pick<Limit, 'measure' | 'site'>): string =>
  `${measure} ${site ?? ''}`;

/** A row of the table of dimensions, as typed. */
export interface DimensionDraft {
  /** Empty: not chosen yet. */
  readonly measure: Measure | '';
  readonly site: string;
  readonly foot: Foot | 'both';
  readonly unit: MeasureUnit | '';
  readonly nominal: string;
  /** How far below nominal, without a sign; in the unit, or a share of nominal such as `5%`. */
  readonly lower: string;
  readonly upper: string;
  /** Empty: not named. */
  readonly leftRight: string;
  /** Words that were pasted where only known ones can stand. */
  readonly notKnown?: Readonly<Partial<Record<'measure' | 'unit' | 'foot', string>>>;
  readonly kept?: Dimension;
}

/** The figures of a last, as typed; all empty: no last is noted. */
export const lastFields = [
  'sizeMm',
  'lengthMm',
  'ballWidthMm',
  'ballGirthMm',
  'widthPerStepMm',
  'girthPerStepMm',
] as const;
export type LastField = (typeof lastFields)[number];

export interface RoundDraft {
  readonly name: string;
  readonly stage: Round['stage'];
  readonly foam: FoamId | 'unsaid';
  readonly changes: readonly ChangeDraft[];
  readonly sole: SoleDraft;
  readonly dimensions: readonly DimensionDraft[];
  readonly last: Readonly<Record<'name' | LastField, string>>;
  /** Empty: not counted. */
  readonly layers: Readonly<Partial<Record<ZoneCode, string>>>;
}

export const emptyChange: ChangeDraft = {
  part: 'upper-pattern',
  what: '',
  mends: '',
  figures: emptyChangeForm('upper-pattern'),
  limit: '',
};

const written = (value: number | undefined): string => (value === undefined ? '' : String(value));

const emptyLast = {
  name: '',
  sizeMm: '',
  lengthMm: '',
  ballWidthMm: '',
  ballGirthMm: '',
  widthPerStepMm: '',
  girthPerStepMm: '',
};

/** A usual dimension, to be given its nominal. */
export const draftOfPractice = ({
  measure,
  site,
  unit,
  tolerance,
  leftRight,
}: PracticeDimension): DimensionDraft => {
  const either = tolerance.by === 'share' ? `${100 * tolerance.value}%` : String(tolerance.value);
  return {
    measure,
    site,
    foot: 'both',
    unit,
    nominal: '',
    lower: either,
    upper: either,
    leftRight: written(leftRight),
  };
};

/** A row in which nothing stands yet. */
export const emptyDimension: DimensionDraft = {
  measure: '',
  site: '',
  foot: 'both',
  unit: '',
  nominal: '',
  lower: '',
  upper: '',
  leftRight: '',
};

/** A row that nobody filled in: it is no dimension. */
export const isBlankDimension = (row: DimensionDraft): boolean =>
  row.measure === '' &&
  row.notKnown === undefined &&
  [row.site, row.nominal, row.lower, row.upper, row.leftRight].every((one) => one.trim() === '');

/** A lowest deviation as the table has it: what lies below nominal without a sign, above it with one. */
const writtenLower = (lower: number): string => (lower > 0 ? `+${lower}` : String(Math.abs(lower)));

/** The usual dimensions that are not in the draft yet, by their place in the list. */
export const usualLeft = (draft: RoundDraft): readonly number[] =>
  practiceDimensions.flatMap((one, at) =>
    draft.dimensions.some(({ measure, site }) => measure === one.measure && site === one.site)
      ? []
      : [at],
  );

/** The draft of a round, or of a new one. */
export const draftOfRound = (round: Round | null): RoundDraft => ({
  name: round?.name ?? '',
  stage: round?.stage ?? 'first-samples',
  foam: round?.foam ?? 'unsaid',
  sole: draftOfSole(round),
  changes: (round?.changes ?? []).map((kept) => ({
    part: kept.part,
    what: kept.what,
    mends: kept.mends?.kind ?? '',
    figures: kept.structured ? draftOfChange(kept.structured, String) : emptyChangeForm(kept.part),
    limit: kept.structured?.limit ? limitKey(kept.structured.limit) : '',
    kept,
  })),
  dimensions: (round?.blueprint ?? []).map((kept) => ({
    measure: kept.measure,
    site: kept.site,
    foot: kept.foot ?? 'both',
    unit: kept.unit,
    nominal: String(kept.nominal),
    lower: writtenLower(kept.lower),
    upper: String(kept.upper),
    leftRight: written(kept.leftRight),
    kept,
  })),
  last: round?.last
    ? {
        name: round.last.name,
        sizeMm: written(round.last.sizeMm),
        lengthMm: written(round.last.lengthMm),
        ballWidthMm: written(round.last.ballWidthMm),
        ballGirthMm: written(round.last.ballGirthMm),
        widthPerStepMm: written(round.last.widthPerStepMm),
        girthPerStepMm: written(round.last.girthPerStepMm),
      }
    : emptyLast,
  layers: Object.fromEntries((round?.layers ?? []).map(({ zone, count }) => [zone, String(count)])),
});

/**
 * A draft of the next round, "as the last one, but …": stage, foam, rubber, blueprint, last and layers are those of `round`;
 * what is different is for the lead to say. What a newer app wrote into a dimension comes along.
 */
export const duplicateOf = (round: Round, name: string): RoundDraft => ({
  ...draftOfRound(round),
  name,
  changes: [],
});

/**
 * A draft of the next round. It is mostly of the same foam and rubber; blueprint, last and layers are taken over when
 * asked to.
 * @param before the round before it; null: there is none
 */
export const newRound = (name: string, before: Round | null): RoundDraft => ({
  ...draftOfRound(null),
  name,
  foam: before?.foam ?? 'unsaid',
  sole: draftOfSole(before),
});

/** Does the round say what its sole is made of? */
export const saysSole = ({ foam, midsole, outsole }: Round): boolean =>
  foam !== undefined || midsole !== undefined || outsole !== undefined;

/** Does the round say anything that the next one could start from? */
export const canBeTakenOver = ({ blueprint, last, layers }: Round): boolean =>
  blueprint.length > 0 || last !== undefined || (layers ?? []).length > 0;

/** The draft with the blueprint, last and layers of an earlier round; what is typed already stays. */
export const takeOver = (draft: RoundDraft, earlier: Round): RoundDraft => {
  const from = draftOfRound(earlier);
  const typed = Object.entries(draft.layers).filter(([, count]) => count.trim() !== '');
  const rows = draft.dimensions.filter((row) => !isBlankDimension(row));
  return {
    ...draft,
    dimensions: [
      ...rows,
      ...from.dimensions.filter(
        ({ measure, site, unit, foot }) =>
          !rows.some(
            (one) =>
              one.measure === measure &&
              one.site === site &&
              one.unit === unit &&
              one.foot === foot,
          ),
      ),
    ],
    last: Object.values(draft.last).every((one) => one.trim() === '') ? from.last : draft.last,
    layers: { ...from.layers, ...Object.fromEntries(typed) },
  };
};

/**
 * The first round of a project that begins where another ended: what is built as the other's latest round is, with
 * what a newer app noted of the build. What had changed there, and what was written, belong to the other project.
 * @param round the latest round of the other project
 */
export const firstRoundLike = (round: Round, project: RecordId, name: string): Round =>
  editBody<'round'>(round, {
    project,
    name,
    order: 1,
    stage: newRound(name, null).stage,
    changes: [],
    words: undefined,
  });
