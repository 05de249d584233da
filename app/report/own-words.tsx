/** A lead's own words: as they were written, or in the other language where the finding gives them so. */
import type { Finding } from '../../core/records/index.ts';
import { mentionsIn } from '../../core/words/index.ts';
import { isForeign, languageIn } from '../words/figures.ts';
import { Say, type Languages, type Spoken } from './spoken.tsx';

type Field = 'title' | 'wanted';

/** The language that a finding is written in: as it was noted, else the one of the two that its other words are not in. */
const ownLanguage = ({ evidence, otherWords }: Finding): string | null =>
  evidence?.language ??
  (otherWords === undefined ? null : isForeign(otherWords.language, ['en']) ? 'en' : 'zh');

/** The words of a field in a reader's language; `as`: whose language they stay in where they are not given in it. */
const wordsIn = (
  { body, field }: { readonly body: Finding; readonly field: Field },
  { locale, paper }: Spoken,
): string => {
  const { otherWords } = body;
  const own = body[field] ?? '';
  const tag = ownLanguage(body);
  const other = otherWords?.[field];
  if (other !== undefined && !isForeign(otherWords?.language ?? null, [locale])) return other;
  if (tag !== null && !isForeign(tag, [locale])) return own;
  return `${paper.inLanguage(languageIn(tag ?? '', locale))} ${own}`;
};

/** Line under line; what stays in its own language stands once and says which that is. */
export const Own = ({
  of: body,
  field,
  in: languages,
}: {
  readonly of: Finding;
  readonly field: Field;
  readonly in: Languages;
}) => {
  const tag = ownLanguage(body);
  const isGiven = ({ locale }: Spoken): boolean =>
    (tag !== null && !isForeign(tag, [locale])) ||
    (body.otherWords?.[field] !== undefined && !isForeign(body.otherWords.language, [locale]));
  const missing = languages.filter((one) => !isGiven(one));
  if (tag !== null && (languages.length === 1 || missing.length === 0))
    return <Say in={languages} of={(spoken) => wordsIn({ body, field }, spoken)} />;
  return tag === null ? (
    <AsWritten in={languages} text={body[field] ?? ''} />
  ) : (
    <>
      {body[field]}
      {missing.map(({ locale, paper }) => (
        <span class="second" lang={locale} key={locale}>
          {paper.asIn(languageIn(tag, locale))}
        </span>
      ))}
    </>
  );
};

/** Nobody said in which language a text is: Chinese signs are one to a reader of another, and the other way round. */
export const isOtherScript = (text: string, { locale }: Spoken): boolean =>
  /\p{Script=Han}/u.test(text) !== locale.startsWith('zh');

/** The language of a text as far as its signs tell it; null: Latin and other letters are of many. */
const languageOfSigns = (text: string): string | null =>
  /\p{Script=Han}/u.test(text) &&
  !/[\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u.test(text)
    ? 'zh'
    : null;

/**
 * The language of several texts that no reader reads, so that it is said once for all of them.
 * @returns absent: one text alone, one that somebody reads, or several languages; null: nobody knows which
 */
export const foreignOfAll = (
  texts: readonly string[],
  languages: Languages,
): string | null | undefined => {
  const [first, ...others] = new Set(texts.map(languageOfSigns));
  return texts.length > 1 &&
    others.length === 0 &&
    texts.every((text) => languages.every((one) => isOtherScript(text, one)))
    ? first
    : undefined;
};

/** Says in a reader's language in which one a text is written. */
const languageMark = (text: string, { locale, paper }: Spoken): string => {
  const tag = languageOfSigns(text);
  return paper.asIn(tag === null ? null : languageIn(tag, locale));
};

/**
 * What the dictionary finds in words that nobody who reads the report reads: complaints with their place, as names.
 * Empty where somebody reads them, or where it finds nothing.
 */
export const namedIn = (
  text: string,
  languages: Languages,
  { paper, speaker: { glossary } }: Spoken,
): readonly string[] =>
  languages.every((one) => isOtherScript(text, one))
    ? mentionsIn(text).flatMap(({ zone, kind }) =>
        kind && zone
          ? [paper.felt(glossary.kinds[kind].name, paper.places[zone])]
          : kind
            ? [glossary.kinds[kind].name]
            : zone
              ? [paper.places[zone]]
              : [],
      )
    : [];

/** The same beside the words, said to be a word list's and no translation. */
const Named = ({ text, in: languages }: { readonly text: string; readonly in: Languages }) =>
  namedIn(text, languages, languages[0]).length === 0 ? null : (
    <span class="soft in-line">
      {' '}
      <Say
        in={languages}
        of={(spoken) => spoken.paper.named(spoken.list(namedIn(text, languages, spoken)))}
      />
    </span>
  );

/** What a tester wrote, as it is; marked where nobody who reads the report reads its language, with what it names. */
export const Quote = ({
  text,
  in: languages,
  marked = true,
}: {
  readonly text: string;
  readonly in: Languages;
  /** False: its language is said above. */
  readonly marked?: boolean;
}) => (
  <>
    <q lang={languageOfSigns(text) ?? undefined}>{text}</q>
    {marked && languages.every((one) => isOtherScript(text, one)) && (
      <span class="soft in-line">
        {' '}
        <Say in={languages} of={(spoken) => languageMark(text, spoken)} />
      </span>
    )}
    <Named in={languages} text={text} />
  </>
);

/** Words whose language nobody noted: said to be as written where they look foreign to a reader. */
export const AsWritten = ({
  text,
  in: languages,
  marked = true,
}: {
  readonly text: string;
  readonly in: Languages;
  /** False: its language is said once for all beside it. */
  readonly marked?: boolean;
}) => (
  <>
    {text}
    {marked &&
      text !== '' &&
      languages
        .filter((one) => isOtherScript(text, one))
        .map((one) => (
          <span class="second" lang={one.locale} key={one.locale}>
            {languageMark(text, one)}
          </span>
        ))}
  </>
);
