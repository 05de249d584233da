/** A lead's own words: as they were written, or in the other language where the finding gives them so. */
import type { Finding } from '../../core/records/index.ts';
import { isForeign, languageIn } from '../words/figures.ts';
import { Say, type Languages, type Spoken } from './spoken.tsx';

type Field = 'title' | 'wanted';

/** The words of a field in a reader's language; `as`: whose language they stay in where they are not given in it. */
const wordsIn = (
  { body, field }: { readonly body: Finding; readonly field: Field },
  { locale, paper, words }: Spoken,
): string => {
  const { otherWords, evidence } = body;
  const own = body[field] ?? '';
  const tag = evidence?.language ?? null;
  const other = otherWords?.[field];
  if (other !== undefined && !isForeign(otherWords?.language ?? null, [locale])) return other;
  if (tag !== null && !isForeign(tag, [locale])) return own;
  // Nobody knows the language of what was written without one.
  return tag === null
    ? own
    : `${paper.inLanguage(languageIn(tag, locale) || words.asWritten(null))} ${own}`;
};

/** Line under line; what stays in its own language says so. */
export const Own = ({
  of: body,
  field,
  in: languages,
}: {
  readonly of: Finding;
  readonly field: Field;
  readonly in: Languages;
}) => {
  const given = languages.filter(
    (one) => !isForeign(body.evidence?.language ?? null, [one.locale]),
  );
  const hasOther = (one: Spoken) =>
    body.otherWords?.[field] !== undefined && !isForeign(body.otherWords.language, [one.locale]);
  const missing = languages.filter((one) => !given.includes(one) && !hasOther(one));
  const [first] = languages;
  // In two languages the original stands once; the other says which language it is.
  if (languages.length > 1 && missing.length > 0 && missing.length < languages.length)
    return (
      <>
        {body[field]}
        {missing.map((one) => (
          <span class="second" lang={one.locale} key={one.locale}>
            {one.paper.asIn(languageIn(body.evidence?.language ?? first.locale, one.locale))}
          </span>
        ))}
      </>
    );
  return <Say in={languages} of={(spoken) => wordsIn({ body, field }, spoken)} />;
};
