/** One change: what it is, whether it arrived on the samples, whether it worked; and those of one trade on its sheet. */
import { isOnSheet, tradeOf, type Trade } from '../../core/foot/index.ts';
import type { ChangeVerdict } from '../../core/records/index.ts';
import {
  isAbsent,
  type Arrival,
  type ChangesLook,
  type FeltMove,
  type ReportedFinding,
} from '../../core/review/index.ts';
import { signed, written } from '../words/figures.ts';
import { absentLine, arrivalDetails, arrivalLine as arrivalLineOf } from '../words/say-arrival.ts';
import { feltTitle } from '../words/say-change.ts';
import { siteName } from '../words/say-place.ts';
import type { PartProps } from './document-props.ts';
import { AsWritten, Own } from './own-words.tsx';
import { Lines, Say, type Spoken } from './spoken.tsx';

export type StoryProps = PartProps & { readonly story: ChangesLook };

const write = (value: number, unit: Arrival['unit'], { speaker }: Spoken) =>
  `${speaker.number(value, 1)}\u00a0${speaker.glossary.units[unit]}`;

export const arrivalLine = (one: Arrival, spoken: Spoken): string => {
  const { paper, speaker } = spoken;
  const place = siteName(one.site, speaker);
  const { measured } = one;
  return measured === null
    ? speaker.desk.joined.of(place, speaker.desk.arrival.words['not-measured'])
    : paper.changes.arrivedLine(
        one.measure === 'dimension'
          ? place
          : speaker.desk.joined.clauses([speaker.glossary.measures[one.measure], place]),
        write(measured.earlier.mean, one.unit, spoken),
        write(measured.later.mean, one.unit, spoken),
        `${signed(written(measured.later.mean, 1) - written(measured.earlier.mean, 1), (size) => speaker.number(size, 1))}\u00a0${speaker.glossary.units[one.unit]}`,
      );
};

/** The same with whether it is what was wanted. */
export const arrivedLine = (one: Arrival, spoken: Spoken): string =>
  one.measured === null
    ? arrivalLine(one, spoken)
    : spoken.paper.changes.arrivedAs(
        arrivalLine(one, spoken),
        spoken.speaker.desk.arrival.words[one.word],
      );

const countOf = ({ reported, runs }: FeltMove['earlier'], { paper }: Spoken) =>
  paper.so.share(reported, runs);

/**
 * The places whose drawing was changed, of those that the trade of the changed part checks: nothing in a log links a change
 * to a dimension more closely.
 */
const arrivalsOf = ({ arrivals }: ChangesLook, trade: Trade): readonly Arrival[] =>
  arrivals.filter((one) => isOnSheet(one, trade));

export const Change = ({
  story,
  at,
  languages,
  level,
}: StoryProps & {
  readonly at: number;
  /** Of its headings, one below that of what they stand under. */
  readonly level: 3 | 4;
}) => {
  const change = story.comparison.changes[at];
  if (!change) return null;
  const { found, mends, arrival } = change;
  const absent = isAbsent(arrival);
  const wanted = arrivalsOf(story, tradeOf[change.part]);
  return (
    <section class="change whole">
      <div>
        <h4 aria-level={level}>
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
        <h4 aria-level={level}>
          <Say in={languages} of={({ paper }) => paper.changes.arrived} />
        </h4>
        {arrival ? (
          <Lines
            in={languages}
            of={({ speaker }) => [
              arrivalLineOf(arrival, speaker),
              ...arrivalDetails(arrival, speaker),
            ]}
          />
        ) : wanted.length === 0 ? (
          <p class="soft">
            <Say in={languages} of={({ paper }) => paper.changes.notOnBlueprint} />
          </p>
        ) : (
          <Lines in={languages} of={(spoken) => wanted.map((one) => arrivedLine(one, spoken))} />
        )}
      </div>
      <div>
        <h4 aria-level={level}>
          <Say in={languages} of={({ paper }) => paper.changes.worked} />
        </h4>
        {found ? (
          <>
            <p>
              {absent ? (
                <Say
                  in={languages}
                  of={({ speaker }) => absentLine(change, speaker) ?? speaker.desk.arrival.absent}
                />
              ) : (
                <Word languages={languages} word={found.verdict} />
              )}
            </p>
            <p>
              <Say
                in={languages}
                of={(spoken) =>
                  spoken.speaker.desk.joined.sentence(
                    spoken.paper.so.better(
                      countOf(found.earlier, spoken),
                      spoken.speaker.round(story.comparison.earlier),
                      countOf(found.later, spoken),
                      spoken.speaker.round(story.comparison.later),
                    ),
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

export const Word = ({
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
          <Say
            in={languages}
            of={({ paper, speaker: { glossary }, list }) => {
              const others = [
                ...new Set(story.comparison.changes.map(({ part }) => glossary.parts[part])),
              ].map(({ name, role }) => paper.sheet.otherPart(name, role));
              return paper.sheet.noChange(others.length === 0 ? null : list(others));
            }}
          />
        </p>
      )}
      {story && own?.map((at) => <Change {...props} story={story} at={at} level={4} key={at} />)}
      {outcomes.map(({ id, body, word }) => (
        <p class="in-line" key={id}>
          <Say in={languages} of={({ paper }) => paper.sheet.askedBefore} />{' '}
          <Own of={body} field="title" in={languages} /> <Word languages={languages} word={word} />
        </p>
      ))}
    </section>
  );
};
