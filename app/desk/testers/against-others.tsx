/** A tester's mean scores among those of the others in the same rounds, each of them a dot that leads to its tester. */
import type { RecordId } from '../../../core/records/index.ts';
import type { TesterLook } from '../../../core/review/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { entryWords, p, saidOf, terms } from '../../words/index.ts';
import { markInWords } from '../../words/say-mark.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { linksOf } from '../frame/route.ts';

interface Line {
  readonly name: string;
  /** Both in percent of the line. */
  readonly own: number;
  readonly ownWords: string;
  readonly others: readonly {
    readonly tester: RecordId;
    readonly at: number;
    readonly says: string;
  }[];
  readonly range: string;
  /** What stands at both ends of a line with the good point in the middle. */
  readonly ends?: readonly [low: string, high: string];
}

/** From the lowest to the highest, as they are written; a dash where there is none. */
const rangeOf = (
  values: readonly { readonly at: number }[],
  write: (value: number) => string,
): string =>
  values.length === 0
    ? '–'
    : [Math.min, Math.max].map((pick) => write(pick(...values.map(({ at }) => at)))).join(' – ');

const whole = (value: number): string => formatNumber(value, 0);

/** A line from 0 to 100. */
const plainLine = (
  name: string,
  own: number,
  ownWords: string,
  others: readonly { readonly tester: RecordId; readonly at: number }[],
): Line => ({
  name,
  own,
  ownWords,
  others: others.map((one) => ({ ...one, says: whole(one.at) })),
  range: rangeOf(others, whole),
});

const scoreLines = (look: TesterLook): readonly Line[] => [
  ...look.comfort.map(({ attribute, mean, others }) =>
    plainLine(
      terms().attributes[attribute].name,
      mean,
      whole(mean),
      others.map(({ tester, mean: at }) => ({ tester, at })),
    ),
  ),
  ...(look.asked > 0
    ? [
        plainLine(
          p().testers.page.complainedRow,
          (100 * look.complained) / look.asked,
          p().pairs.ofAsked(look.complained, look.asked),
          look.othersComplained.map(({ tester, share }) => ({ tester, at: 100 * share })),
        ),
      ]
    : []),
];

/** Lines with the good point in the middle, as the answers to these questions say it. */
const markLines = ({ marks }: TesterLook): readonly Line[] =>
  marks.map(({ attribute, mean, others }) => {
    const { name, low, high } = terms().twoSided[attribute];
    const says = (value: number) =>
      markInWords({ value, low, high, words: entryWords().twoSided }) ?? '';
    return {
      name,
      own: (mean + 100) / 2,
      ownWords: says(mean),
      others: others.map(({ tester, mean: at }) => ({
        tester,
        at: (at + 100) / 2,
        says: says(at),
      })),
      range: rangeOf(
        others.map(({ mean: at }) => ({ at })),
        says,
      ),
      ends: [low, high] as const,
    };
  });

export const AgainstOthers = (props: TabProps & { readonly look: TesterLook }) => {
  const { look, review, records } = props;
  const words = p().testers.page;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const [scores, marks] = [scoreLines(look), markLines(look)];
  if (scores.length + marks.length === 0) return null;
  const draw = ({ name, own, ownWords, others, ends }: Line) => (
    <div class={ends ? 'against against-two-sided' : 'against'} key={name}>
      <span>{name}</span>
      <span class="against-line">
        {others.map(({ tester, at, says }) => (
          <a
            key={tester}
            class="against-other"
            href={links.tester(tester)}
            tabIndex={-1}
            title={saidOf(names.tester(tester), says)}
            style={{ insetInlineStart: `${at}%` }}
          >
            <span class="hidden-words">{names.tester(tester)}</span>
          </a>
        ))}
        <b class="against-own" style={{ insetInlineStart: `${own}%` }} />
      </span>
      <b class="against-figure">{ownWords}</b>
      {ends && (
        <span class="against-ends soft small" aria-hidden="true">
          <span>{ends[0]}</span>
          <span>{ends[1]}</span>
        </span>
      )}
    </div>
  );
  return (
    <section aria-label={words.against}>
      <h2>{words.against}</h2>
      <Picture
        says={words.againstSays(look.code)}
        table={() => ({
          head: [words.attribute, words.mean, words.range],
          rows: [...scores, ...marks].map(({ name, ownWords, range, ends }) => [
            ends ? words.twoSidedRow(name) : name,
            ownWords,
            range,
          ]),
        })}
      >
        {scores.length > 0 && <p class="soft small">{words.againstNote}</p>}
        {scores.map(draw)}
        {marks.length > 0 && <p class="soft small">{words.marksNote}</p>}
        {marks.map(draw)}
        <p class="against-legend soft small" aria-hidden="true">
          <b class="against-own" /> {look.code} <i class="against-other" /> {words.another}
        </p>
      </Picture>
    </section>
  );
};
