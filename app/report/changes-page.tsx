/** The second page: what was changed in this round, did it arrive, did it work, what else moved. */
import { isOnSheet, tradeOf, type Trade } from '../../core/foot/index.ts';
import { changesHeadline, type WorseName } from '../../core/headlines/index.ts';
import type { ChangeVerdict } from '../../core/records/index.ts';
import type { Arrival, ChangesLook, FeltMove, ReportedFinding } from '../../core/review/index.ts';
import { percentOf, signed } from '../words/figures.ts';
import { feltTitle } from '../words/say-change.ts';
import { siteName } from '../words/say-place.ts';
import type { PartProps } from './document-props.ts';
import { AsWritten, Own } from './own-words.tsx';
import { Lines, Say, type Spoken } from './spoken.tsx';

/** Beyond these nobody reads on; the appendix has them all. */
const MOST_MOVES = 6;

type StoryProps = PartProps & { readonly story: ChangesLook };

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
        <Change {...props} story={story} at={at} key={at} />
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
    (one) =>
      one.wanted !== null &&
      !story.comparison.changes.some(({ part }) => isOnSheet(one, tradeOf[part])),
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
      ? speaker.glossary.attributes[one.attribute].name
      : one.zone === null
        ? speaker.glossary.kinds[one.kind].name
        : paper.felt(speaker.glossary.kinds[one.kind].name, paper.places[one.zone]);
  return paper.changes.headline(changesHeadline(story), {
    round: speaker.round,
    names: (some) => list(some.map(name)),
  });
};

const write = (value: number, unit: Arrival['unit'], { speaker }: Spoken) =>
  `${speaker.number(value, 1)}\u00a0${speaker.glossary.units[unit]}`;

const arrivalLine = (one: Arrival, spoken: Spoken): string => {
  const { paper, speaker } = spoken;
  const place = siteName(one.site, speaker);
  const { measured } = one;
  return measured === null
    ? speaker.desk.joined.of(place, paper.changes.arrivedWord['not-measured'])
    : paper.changes.arrivedLine(
        one.measure === 'dimension'
          ? place
          : speaker.desk.joined.clauses([speaker.glossary.measures[one.measure], place]),
        write(measured.earlier.mean, one.unit, spoken),
        write(measured.later.mean, one.unit, spoken),
        `${signed(measured.difference, (size) => speaker.number(size, 1))}\u00a0${speaker.glossary.units[one.unit]}`,
      );
};

/** The same with whether it is what was wanted. */
const arrivedLine = (one: Arrival, spoken: Spoken): string =>
  one.measured === null
    ? arrivalLine(one, spoken)
    : spoken.paper.changes.arrivedAs(
        arrivalLine(one, spoken),
        spoken.paper.changes.arrivedWord[one.word],
      );

const countOf = ({ reported, runs }: FeltMove['earlier'], { paper }: Spoken) =>
  paper.so.share(reported, runs);

/**
 * The places whose drawing was changed, of those that the trade of the changed part checks: nothing in a log links a change
 * to a dimension more closely.
 */
const arrivalsOf = ({ arrivals }: ChangesLook, trade: Trade): readonly Arrival[] =>
  arrivals.filter((one) => one.wanted !== null && isOnSheet(one, trade));

const Change = ({ story, at, languages }: StoryProps & { readonly at: number }) => {
  const change = story.comparison.changes[at];
  if (!change) return null;
  const { found, mends } = change;
  const wanted = arrivalsOf(story, tradeOf[change.part]);
  return (
    <section class="change whole">
      <div>
        <h4>
          <Say in={languages} of={({ speaker }) => speaker.glossary.parts[change.part].name} />
        </h4>
        <p class="wanted">
          <AsWritten in={languages} text={change.what} />
        </p>
        <p class="soft">
          <Say
            in={languages}
            of={({ paper, speaker }) =>
              mends ? paper.changes.meant(feltTitle(mends, speaker)) : paper.changes.mendsNothing
            }
          />
        </p>
      </div>
      <div>
        <h4>
          <Say in={languages} of={({ paper }) => paper.changes.arrived} />
        </h4>
        {wanted.length === 0 ? (
          <p class="soft">
            <Say in={languages} of={({ paper }) => paper.changes.notOnBlueprint} />
          </p>
        ) : (
          <Lines in={languages} of={(spoken) => wanted.map((one) => arrivedLine(one, spoken))} />
        )}
      </div>
      <div>
        <h4>
          <Say in={languages} of={({ paper }) => paper.changes.worked} />
        </h4>
        {found ? (
          <>
            <p>
              <Word languages={languages} word={found.verdict} />
            </p>
            <p>
              <Say
                in={languages}
                of={(spoken) =>
                  spoken.paper.changes.workedLine(
                    countOf(found.earlier, spoken),
                    countOf(found.later, spoken),
                  )
                }
              />
            </p>
          </>
        ) : (
          <p>
            <Say
              in={languages}
              of={({ paper }) => (mends ? paper.changes.notJudged : paper.changes.noAim)}
            />
          </p>
        )}
      </div>
    </section>
  );
};

const Word = ({
  languages,
  word,
}: Pick<PartProps, 'languages'> & { readonly word: ChangeVerdict }) => (
  <span class={`stamp stamp-word-${word}`}>
    <Say in={languages} of={({ paper }) => paper.changes.word[word]} />
  </span>
);

/** On a trade's sheet: the changes of its parts against the round before, and the findings that led to them. */
export const TradeChanges = (
  props: PartProps & { readonly trade: Trade; readonly carried: readonly ReportedFinding[] },
) => {
  const { report, languages, trade, carried } = props;
  const { story } = report;
  const own = story?.comparison.changes.flatMap(({ part }, at) =>
    tradeOf[part] === trade ? [at] : [],
  );
  const outcomes = carried.flatMap(({ id, body }) => {
    const known = story?.findings.find((one) => one.id === id);
    const word = body.outcome?.verdict ?? known?.written ?? known?.found ?? null;
    return word === null ? [] : [{ id, body, word }];
  });
  return (
    <section class={story && own && own.length > 0 ? '' : 'whole'}>
      <h3>
        <Say
          in={languages}
          of={({ paper, speaker }) =>
            story
              ? paper.sheet.lastChange(speaker.round(story.comparison.earlier))
              : paper.sheet.firstRound
          }
        />
      </h3>
      {story && own?.length === 0 && (
        <p>
          <Say in={languages} of={({ paper }) => paper.sheet.noChange} />
        </p>
      )}
      {story && own?.map((at) => <Change {...props} story={story} at={at} key={at} />)}
      {outcomes.map(({ id, body, word }) => (
        <p key={id}>
          <Say in={languages} of={({ paper }) => paper.sheet.askedBefore} />{' '}
          <Own of={body} field="title" in={languages} /> <Word languages={languages} word={word} />
        </p>
      ))}
    </section>
  );
};

const Else = (props: StoryProps) => {
  const { story, languages, report } = props;
  const moved = story.arrivals.filter(({ word, wanted }) => word === 'moved' && wanted === null);
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
              moved.length > 0
                ? moved.map((one) => arrivalLine(one, spoken))
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
              story.comfort.map(({ attribute, earlier, later, word }) =>
                speaker.desk.joined.of(
                  speaker.glossary.attributes[attribute].name,
                  speaker.desk.joined.clauses([
                    paper.sheet.newToNow(speaker.number(earlier, 0), speaker.number(later, 0)),
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
                <p key={id}>
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
