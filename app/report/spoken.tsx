/** In which languages is a report written, and how do two of them share a page: line under line. */
import type { ComponentChildren } from 'preact';
import type { RecordId, Surface } from '../../core/records/index.ts';
import type { RoundReport } from '../../core/review/index.ts';
import { fromMetres, type DistanceUnit, type Metres } from '../../core/units/index.ts';
import { languageIn } from '../words/figures.ts';
import type { Speaker } from '../words/say-complaint.ts';
import type { LanguageFile } from '../words/types.ts';

/** What of a language file a report reads. */
export type ReportWords = Pick<LanguageFile, 'about' | 'glossary' | 'phone' | 'desk' | 'paper'>;

/** One language of a report, with the names that stand in its records. */
export interface Spoken {
  readonly locale: string;
  /** The language's own name. */
  readonly language: string;
  readonly words: ReportWords['desk']['report'];
  readonly paper: ReportWords['paper'];
  readonly phone: ReportWords['phone'];
  readonly speaker: Speaker;
  readonly unit: DistanceUnit;
  readonly date: (at: number | string) => string;
  readonly surface: (surface: Surface) => string;
  /** A distance as one says it: whole from 100 on. */
  readonly far: (distance: Metres) => string;
  /** Names joined as the language joins them: "a, b and c". */
  readonly list: (names: readonly string[]) => string;
}

/**
 * One language, ready to speak about the records of a report.
 * @param timeZone absent: that of the machine
 */
export const spokenIn = (
  { about, glossary, phone, desk, paper }: ReportWords,
  names: RoundReport['names'],
  unit: DistanceUnit,
  timeZone?: string,
): Spoken => {
  const { locale } = about;
  const number = (value: number, most: number, least = 0) =>
    new Intl.NumberFormat(locale, {
      maximumFractionDigits: most,
      minimumFractionDigits: least,
    }).format(value);
  const dates = new Intl.DateTimeFormat(locale, {
    dateStyle: 'medium',
    ...(timeZone !== undefined && { timeZone }),
  });
  return {
    locale,
    language: about.name,
    words: desk.report,
    paper,
    phone,
    unit,
    speaker: {
      desk,
      glossary,
      number,
      distance: (distance) => `${number(fromMetres(distance, unit), 1, 1)} ${unit}`,
      tester: (id: RecordId) => names.testers[id] ?? '?',
      pair: (id) => names.pairs[id] ?? '?',
      round: (id) => names.rounds[id] ?? '?',
      foot: (foot) => phone.foot[foot],
      language: (tag) => languageIn(tag, locale),
    },
    date: (at) => dates.format(new Date(at)),
    surface: (surface) => glossary.surfaces[surface],
    far: (distance) => {
      const value = fromMetres(distance, unit);
      return `${number(value, value >= 100 ? 0 : 1)}\u00a0${unit}`;
    },
    list: (some) => new Intl.ListFormat(locale, { type: 'conjunction' }).format(some),
  };
};

/** The languages that a document is written in; the first leads. */
export type Languages = readonly [Spoken, ...Spoken[]];

const distinct = (texts: readonly string[]): readonly string[] => [...new Set(texts)];

/** The same in every language, in one line: for titles, axes and labels. Said once where it is the same. */
export const joined = (languages: Languages, of: (spoken: Spoken) => string): string =>
  distinct(languages.map(of)).join(' / ');

/** The same in every language, line under line; said once where it is the same. */
export const Say = ({
  in: languages,
  of,
}: {
  readonly in: Languages;
  readonly of: (spoken: Spoken) => string;
}) => {
  const [lead, ...others] = languages;
  const first = of(lead);
  const rest = others.filter((other) => of(other) !== first);
  if (rest.length === 0) return <>{first}</>;
  return (
    <>
      <span lang={lead.locale}>{first}</span>
      {rest.map((other) => (
        <span class="second" lang={other.locale} key={other.locale}>
          {of(other)}
        </span>
      ))}
    </>
  );
};

/** Lists of the same lines in every language: the first lines together, then the second ones. */
export const Lines = ({
  in: languages,
  of,
  as = 'ul',
}: {
  readonly in: Languages;
  readonly of: (spoken: Spoken) => readonly string[];
  readonly as?: 'ul' | 'p';
}): ComponentChildren => {
  const lines = new Map(languages.map((spoken) => [spoken, of(spoken)]));
  const count = Math.max(...[...lines.values()].map(({ length }) => length));
  if (count === 0) return null;
  const each = Array.from({ length: count }, (_, at) => (
    <Say in={languages} of={(spoken) => lines.get(spoken)?.[at] ?? ''} />
  ));
  return as === 'ul' ? (
    <ul>
      {each.map((line, at) => (
        <li key={at}>{line}</li>
      ))}
    </ul>
  ) : (
    each.map((line, at) => <p key={at}>{line}</p>)
  );
};
