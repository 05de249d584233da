/**
 * What does each column of the tables mean, in which unit, between which ends, and what do its words stand for? Made of
 * the columns themselves, the ranges of the records and the glossary, so that it says what the tables say.
 */
import {
  hardnessUnits,
  measures,
  rangeOf,
  ranges,
  unitsOf,
  type Range,
} from '../../../core/records/index.ts';
import { columns as english, notSaid } from '../../words/say-columns/en.ts';
import { columns as chinese, notSaid as notSaidInChinese } from '../../words/say-columns/zh.ts';
import type { Glossary, TalkWords } from '../../words/types.ts';
import { markMeaning, questionOf } from './mark-columns.ts';
import { tableOf, type Table } from './table.ts';

/** The glossaries of the two languages in which the meanings are written. */
export type Glossaries = Readonly<
  Record<'en' | 'zh', { readonly glossary: Glossary; readonly talk: TalkWords }>
>;

export interface Entry {
  readonly table: string;
  readonly column: string;
  readonly meaning: { readonly en: string; readonly zh: string };
  /** Empty: a plain number, a word or a text. */
  readonly unit: string;
  readonly least: number | null;
  readonly most: number | null;
  /** What its words stand for, in both languages; empty where they are no fixed ones. */
  readonly values: readonly {
    readonly value: string;
    readonly en: string;
    readonly zh: string;
  }[];
}

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/(?:^|_)km(?:_|$)/, 'km'],
  [/_mm$/, 'mm'],
  [/_of_100$/, '0 to 100'],
  [/_of_10$/, '0 to 10'],
  [/_kg$/, 'kg'],
  [/_kn$/, 'kN'],
  [/_n$/, 'N'],
  [/_c$/, '°C'],
  [/_days$/, 'd'],
  [/^weeks_/, 'week'],
  [/_s$/, 's'],
  [/_h$/, 'h'],
  [/_m$/, 'm'],
  [/(?:^|_)(?:at|until|from|over)$/, 'date and time, ISO 8601'],
];

/** Columns whose unit is the one that the row names. */
const IN_UNIT_OF_ROW =
  /^(?:value|nominal|deviation|difference|median|.*_deviation_allowed|left_right_allowed|.*uncertainty|tolerance_width|repeatability|reproducibility|gauge_spread)$/;

const unitOf = (column: string): string =>
  IN_UNIT_OF_ROW.test(column)
    ? 'as in the column unit'
    : (UNITS.find(([name]) => name.test(column))?.[1] ?? '');

const inKm = ({ least, most }: Range): Range => ({
  least: least / 1000,
  most: most / 1000,
  unit: 'km',
});

/** What the records can hold, by column. */
const rangesByColumn: Readonly<Record<string, Range>> = {
  distance_km: inKm(ranges.distanceM),
  carried_in_km: inKm(ranges.distanceM),
  track_km: inKm(ranges.distanceM),
  from_km: inKm(ranges.distanceM),
  brief_km: inKm(ranges.briefDistanceM),
  duration_s: ranges.durationS,
  track_moving_s: ranges.durationS,
  track_steps_per_shoe: ranges.steps,
  temperature_c: ranges.temperatureC,
  comfort_overall_of_100: ranges.lineScore,
  score_of_100: ranges.lineScore,
  mean_of_100: ranges.lineScore,
  mark: ranges.twoSided,
  mean_mark: ranges.twoSided,
  mean_mark_before: ranges.twoSided,
  pain_of_10: ranges.ten,
  severity_of_10: ranges.ten,
  severity_mean_of_10: ranges.ten,
  severity_most_of_10: ranges.ten,
  most_of_10: ranges.ten,
  mass_kg: ranges.massKg,
  height_m: ranges.heightM,
  size_mm: ranges.footLengthMm,
  foot_length_left_mm: ranges.footLengthMm,
  foot_length_right_mm: ranges.footLengthMm,
  foot_length_least_mm: ranges.footLengthMm,
  foot_length_most_mm: ranges.footLengthMm,
  foot_width_left_mm: ranges.footWidthMm,
  foot_width_right_mm: ranges.footWidthMm,
  foot_width_least_mm: ranges.footWidthMm,
  foot_width_most_mm: ranges.footWidthMm,
  ball_girth_left_mm: ranges.ballGirthMm,
  ball_girth_right_mm: ranges.ballGirthMm,
  ball_girth_mm: ranges.ballGirthMm,
  ball_width_mm: ranges.footWidthMm,
  last_size_mm: ranges.footLengthMm,
  last_length_mm: ranges.lastLengthMm,
  width_per_step_mm: ranges.widthPerStepMm,
  girth_per_step_mm: ranges.girthPerStepMm,
  midsole_hardness: ranges.hardness,
  outsole_hardness: ranges.hardness,
  wanted_mm: ranges.wantedMm,
  change_amount: ranges.changeAmount,
  off_mm: ranges.fitMm,
  rested_h: ranges.restedH,
  load_n: ranges.loadN,
  uncertainty: ranges.benchWidth,
  tolerance_width: ranges.toleranceWidth,
  order: ranges.roundOrder,
  weeks_per_period: ranges.weeks,
  period: { least: 1, most: ranges.periods.most, unit: null },
  allowed_rate: ranges.share,
  allowed_complaint_rate: ranges.share,
  allowed_pain_rate: ranges.share,
  run_share: ranges.share,
  chance_to_conform: ranges.share,
  risk: ranges.share,
};

type Terms = Readonly<Record<string, string | { readonly name: string }>>;

/** The two scales that a compound's hardness is ordered in. */
const hardnessScales = ({ units }: Glossary): Terms =>
  Object.fromEntries(hardnessUnits.map((unit) => [unit, units[unit]]));

/** The terms of the glossary that a column's words are; `table.column` before `column`. */
const termsByColumn: Readonly<Record<string, (glossary: Glossary, talk: TalkWords) => Terms>> = {
  zone: ({ zones }) => zones,
  kind: ({ kinds }) => kinds,
  attribute: ({ attributes }) => attributes,
  ...Object.fromEntries(
    ['comfort-two-sided', 'comfort-two-sided-changes', 'run-comfort-two-sided'].map((table) => [
      `${table}.attribute`,
      ({ twoSided }: Glossary) => twoSided,
    ]),
  ),
  part: ({ parts }) => parts,
  trade: ({ trades }) => trades,
  surface: ({ surfaces }) => surfaces,
  ground: ({ grounds }) => grounds,
  sock: ({ socks }) => socks,
  pain_signs: ({ painSigns }) => painSigns,
  lacing: ({ lacings }) => lacings,
  walked: ({ walkWays }) => walkWays,
  fit_place: ({ fitPlaces }) => fitPlaces,
  fit_pain: ({ fitPains }) => fitPains,
  damage: ({ damages }) => damages,
  runner: ({ runners }) => runners,
  use: ({ uses }) => uses,
  stage: ({ stages }) => stages,
  measure: ({ measures: names }) => names,
  unit: ({ units }) => units,
  midsole_hardness_unit: hardnessScales,
  outsole_hardness_unit: hardnessScales,
  evidence: ({ evidence }) => evidence,
  foam: ({ foams }) => foams,
  outcome: ({ changeVerdicts }) => changeVerdicts,
  'changes.verdict': ({ changeVerdicts }) => changeVerdicts,
  'wear-limits.verdict': ({ holds }) => holds,
  'verdicts.verdict': ({ holds }) => holds,
  'findings.evidence': () => ({}),
  change_part: ({ parts }) => parts,
  change_measure: ({ measures: names }) => names,
  change_line: (_, { lines }) => lines,
  change_direction: (_, { moves }) => moves,
  change_unit: ({ units }, { otherUnits }) => ({ ...units, ...otherUnits }),
  change_side: (_, { sides }) => sides,
  option: (_, { options }) => options,
  'proposals.answer': (_, { proposalAnswers }) => proposalAnswers,
  'proposal-replies.answer': (_, { proposalReplies }) => proposalReplies,
  'thanks.result': (_, { thanksResults }) => thanksResults,
};

const nameOf = (term: string | { readonly name: string } | undefined): string =>
  typeof term === 'object' ? term.name : (term ?? '');

const valuesOf = (table: string, column: string, { en, zh }: Glossaries): Entry['values'] => {
  // A reading's ends are those of its measure and unit.
  if (`${table}.${column}` === 'checks.value')
    return measures.flatMap((measure) =>
      unitsOf[measure].map((unit) => {
        const { least, most } = rangeOf(measure, unit);
        const ends = `${least}…${most}`;
        return {
          value: `${measure} ${unit}`,
          en: `${en.glossary.measures[measure]}, ${ends} ${en.glossary.units[unit]}`,
          zh: `${zh.glossary.measures[measure]}，${ends} ${zh.glossary.units[unit]}`,
        };
      }),
    );
  const terms = termsByColumn[`${table}.${column}`] ?? termsByColumn[column];
  if (!terms) return [];
  const [own, other] = [terms(en.glossary, en.talk), terms(zh.glossary, zh.talk)];
  const named = Object.keys(own).map((value) => ({
    value,
    en: nameOf(own[value]),
    zh: nameOf(other[value]),
  }));
  return table === 'pair-surfaces' && column === 'surface'
    ? [...named, { value: 'unknown', en: notSaid, zh: notSaidInChinese }]
    : named;
};

const meaningIn = (words: Readonly<Record<string, string>>, table: string, column: string) =>
  words[`${table}.${column}`] ?? words[column] ?? '';

/** An entry for each column of each table; its meaning is empty where nobody wrote one. */
export const dictionaryOf = (
  tables: readonly Pick<Table, 'name' | 'columns'>[],
  glossaries: Glossaries,
): readonly Entry[] =>
  tables.flatMap(({ name: table, columns }) =>
    columns.map((column): Entry => {
      const question = questionOf(column);
      const range = question === null ? rangesByColumn[column] : ranges.twoSided;
      return {
        table,
        column,
        meaning:
          question === null
            ? { en: meaningIn(english, table, column), zh: meaningIn(chinese, table, column) }
            : {
                en: markMeaning(question, glossaries.en.glossary),
                zh: markMeaning(question, glossaries.zh.glossary),
              },
        unit: unitOf(column),
        least: range?.least ?? null,
        most: range?.most ?? null,
        values: valuesOf(table, column, glossaries),
      };
    }),
  );

/** The dictionary as a table of its own. */
export const dictionaryTable = (entries: readonly Entry[]): Table =>
  tableOf('dictionary', entries, {
    table: ({ table }) => table,
    column: ({ column }) => column,
    meaning_en: ({ meaning }) => meaning.en,
    meaning_zh: ({ meaning }) => meaning.zh,
    unit: ({ unit }) => unit,
    least: ({ least }) => least,
    most: ({ most }) => most,
    values: ({ values }) => values.map(({ value, en, zh }) => `${value}: ${en} / ${zh}`).join('; '),
  });

/** The dictionary as JSON: `{ format: "pairlog-dictionary", v, columns: [entry, …] }`. */
export const dictionaryJson = (entries: readonly Entry[]): string =>
  JSON.stringify({ format: 'pairlog-dictionary', v: 1, columns: entries }, null, 2);
