/** The second page: what was changed in this round, did it arrive, did it work, what else moved. */
import { isOnSheet, tradeOf } from '../../core/foot/index.ts';
import { changesHeadline, type WorseName } from '../../core/headlines/index.ts';
import type { ChangesLook, FeltMove } from '../../core/review/index.ts';
import { percentOf } from '../words/figures.ts';
import { foundLine } from '../words/say-arrival.ts';
import { questionName } from '../words/say-question.ts';
import type { PartProps } from './document-props.ts';
import { arrivedLine, Change, Word, type StoryProps } from './one-change.tsx';
import { Own } from './own-words.tsx';
import { Lines, Say, type Spoken } from './spoken.tsx';

/** Beyond these nobody reads on; the appendix has them all. */
const MOST_MOVES = 6;

export const ChangesPage = (props: PartProps) => {
  const { report, languages } = props;
  const { story, round } = report;
  if (!story)
    return (
      <p class="soft">
        <Say in={languages} of={({ paper }) => paper.changes.first} />
      </p>
    );
  return (
    <section class="changes-page">
      <h2 class="page-title">
        <Say in={languages} of={(spoken) => headline(story, spoken)} />
      </h2>
      <p class="soft">
        <Say
          in={languages}
          of={({ paper, speaker }) =>
            paper.changes.against(
              speaker.round(story.comparison.earlier),
              speaker.round(story.comparison.later),
              story.comparison.testers.both,
            )
          }
        />
      </p>
      {round.changes.length === 0 && (
        <p>
          <Say in={languages} of={({ paper }) => paper.changes.noted} />
        </p>
      )}
      {story.comparison.changes.map((_, at) => (
        <Change {...props} story={story} at={at} level={3} key={at} />
      ))}
      {story.comparison.changes.length > 0 && (
        <p class="key">
          <Say in={languages} of={({ paper }) => paper.changes.arrivedKey} />
        </p>
      )}
      <Unlisted {...props} story={story} />
      <Else {...props} story={story} />
    </section>
  );
};

/** Places whose drawing was changed though no change on the list is of a trade that checks them. */
const Unlisted = ({ story, languages }: StoryProps) => {
  const own = story.arrivals.filter(
    (one) => !story.comparison.changes.some(({ part }) => isOnSheet(one, tradeOf[part])),
  );
  if (own.length === 0) return null;
  return (
    <section class="whole">
      <h3>
        <Say in={languages} of={({ paper }) => paper.changes.unlisted} />
      </h3>
      <Lines in={languages} of={(spoken) => own.map((one) => arrivedLine(one, spoken))} />
    </section>
  );
};

/** By the desk's own rule (`core/headlines/changes.ts`): it never says more than was proved. */
const headline = (story: ChangesLook, spoken: Spoken): string => {
  const { paper, speaker, list } = spoken;
  const name = (one: WorseName): string =>
    'attribute' in one
      ? questionName(speaker.glossary, one.attribute)
      : one.zone === null
        ? speaker.glossary.kinds[one.kind].name
        : paper.felt(speaker.glossary.kinds[one.kind].name, paper.places[one.zone]);
  return paper.changes.headline(changesHeadline(story), {
    round: speaker.round,
    names: (some) => list(some.map(name)),
  });
};

const Else = (props: StoryProps) => {
  const { story, languages, report } = props;
  const { found } = story.differences;
  const { knew } = story.comparison;
  const who = [...new Set([...knew.earlier, ...knew.later])];
  return (
    <>
      <section class="whole">
        <h3>
          <Say in={languages} of={({ paper }) => paper.changes.else} />
        </h3>
        <p class="soft">
          <Say in={languages} of={({ paper }) => paper.changes.elseKey} />
        </p>
        <table class="moves">
          <tbody>
            {story.felt.slice(0, MOST_MOVES).map((one) => (
              <Move {...props} key={`${one.zone} ${one.kind}`} one={one} />
            ))}
          </tbody>
        </table>
      </section>
      <div class="two">
        <section class="whole">
          <h3>
            <Say in={languages} of={({ paper }) => paper.changes.found} />
          </h3>
          <Lines
            in={languages}
            of={(spoken) =>
              found.length > 0
                ? found.map((one) => foundLine(one, spoken.speaker))
                : [spoken.paper.changes.foundNothing]
            }
          />
        </section>
        <section class="whole">
          <h3>
            <Say in={languages} of={({ paper }) => paper.changes.comfort} />
          </h3>
          <Lines
            in={languages}
            of={({ speaker, paper }) =>
              [
                ...story.comfort.map(({ attribute, earlier, later, word }) => ({
                  name: speaker.glossary.attributes[attribute].name,
                  figures: [speaker.number(earlier, 0), speaker.number(later, 0)] as const,
                  word,
                })),
                ...story.comparison.twoSided.map(
                  ({ attribute, earlier, later, testers, word }) => ({
                    name: paper.changes.rightNow(speaker.glossary.twoSided[attribute].name),
                    figures: [
                      paper.changes.ofAll(earlier.right, testers),
                      paper.changes.ofAll(later.right, testers),
                    ] as const,
                    word,
                  }),
                ),
              ].map(({ name, figures: [before, now], word }) =>
                speaker.desk.joined.of(
                  name,
                  speaker.desk.joined.clauses([
                    paper.sheet.newToNow(before, now),
                    paper.changes.comfortWord[word],
                  ]),
                ),
              )
            }
          />
          {who.length > 0 && (
            <p class="soft">
              <Say
                in={languages}
                of={({ paper, speaker, list }) => paper.changes.knew(list(who.map(speaker.tester)))}
              />
            </p>
          )}
          {story.findings.map(({ id, written, found }) => {
            const own = report.carried.find((one) => one.id === id);
            return (
              own && (
                <p class="in-line" key={id}>
                  <strong>
                    <Say in={languages} of={({ paper }) => paper.changes.close} />
                  </strong>{' '}
                  <Own of={own.body} field="title" in={languages} />{' '}
                  <Word languages={languages} word={written ?? found ?? 'too-little'} />
                </p>
              )
            );
          })}
        </section>
      </div>
    </>
  );
};

const [LINE, END] = [120, 116];

/** One complaint in both rounds: a hollow dot before, a full one now. */
const Move = ({ one, languages, report }: PartProps & { readonly one: FeltMove }) => {
  const share = ({ reported, runs }: FeltMove['earlier']) => (runs > 0 ? reported / runs : 0);
  const [from, to] = [share(one.earlier), share(one.later)];
  const { allowedRate } = report.project.brief;
  const [{ speaker, paper }] = languages;
  const x = (value: number) => 4 + Math.min(1, value / 0.5) * (END - 8);
  return (
    <tr>
      <th scope="row">
        <Say
          in={languages}
          of={({ paper, speaker }) =>
            paper.felt(speaker.glossary.kinds[one.kind].name, paper.places[one.zone])
          }
        />
      </th>
      <td>
        <svg class="dumb-bell" viewBox={`0 0 ${LINE} 14`} aria-hidden="true">
          <path class="grid" d={`M4,7H${END - 4}`} />
          <path class="limit" d={`M${x(allowedRate.complaint)},1V13`} />
          <path class="bar" d={`M${x(from)},7H${x(to)}`} />
          <circle class="before" cx={x(from)} cy="7" r="3.6" />
          <circle class="now" cx={x(to)} cy="7" r="3.6" />
        </svg>
      </td>
      <td>
        {paper.sheet.newToNow(percentOf(from, speaker.number), percentOf(to, speaker.number))}
      </td>
      <td>
        <Say in={languages} of={({ paper }) => paper.changes.word[one.word]} />
      </td>
    </tr>
  );
};
