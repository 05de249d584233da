/** What testers wrote and photographed of their runs, each with the run behind it. */
import type { Note } from '../../../core/review/index.ts';
import { formatDate } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Some } from '../parts/some.tsx';

/** At first so many; a press shows more. */
const FIRST = 5;

/** @param by what tells the notes apart: who wrote them, or of which pair */
export const Notes = (
  props: TabProps & {
    readonly title: string;
    readonly empty: string;
    readonly notes: readonly Note[];
    readonly by: 'tester' | 'pair';
    /** The same words in the list where they can be searched and quoted, and what that is called. */
    readonly all: { readonly href: string; readonly words: string };
  },
) => {
  const { review, records, title, empty, notes, by, all } = props;
  const names = namesIn(review, records);
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  return (
    <section class="notes" aria-label={title}>
      <h2>{title}</h2>
      {notes.length === 0 ? (
        <p class="soft">{empty}</p>
      ) : (
        <ul class="plain-list">
          <Some of={notes} step={FIRST}>
            {(note) => (
              <li key={note.run} class="note">
                <span class="soft small">
                  <a href={links.run(note.run)}>{formatDate(note.atMs)}</a>
                  {' · '}
                  {by === 'tester' ? (
                    <a href={links.tester(note.tester)}>{names.tester(note.tester)}</a>
                  ) : (
                    <a href={links.pair(note.pair)}>{names.pair(note.pair)}</a>
                  )}
                  {note.felt.map((felt) => ` · ${say.felt(felt)}`)}
                </span>
                {note.words.map((text) => (
                  <span key={text}>{p().pairs.page.quoted(text)}</span>
                ))}
                <PhotoRow photos={note.photos} label={formatDate(note.atMs)} />
              </li>
            )}
          </Some>
        </ul>
      )}
      <a class="no-print" href={all.href}>
        {all.words}
      </a>
    </section>
  );
};
