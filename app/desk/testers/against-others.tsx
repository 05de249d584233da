/** A tester's mean scores among those of the others in the same rounds, each of them a dot that leads to its tester. */
import type { RecordId } from '../../../core/records/index.ts';
import type { TesterLook } from '../../../core/review/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { p, saidOf, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { linksOf } from '../frame/route.ts';

interface Line {
  readonly name: string;
  /** Both in percent of the line. */
  readonly own: number;
  readonly ownWords: string;
  readonly others: readonly { readonly tester: RecordId; readonly at: number }[];
}

const linesOf = (look: TesterLook): readonly Line[] => [
  ...look.comfort.map(({ attribute, mean, others }) => ({
    name: terms().attributes[attribute].name,
    own: mean,
    ownWords: formatNumber(mean, 0),
    others: others.map(({ tester, mean: at }) => ({ tester, at })),
  })),
  ...(look.asked > 0
    ? [
        {
          name: p().testers.page.complainedRow,
          own: (100 * look.complained) / look.asked,
          ownWords: p().pairs.ofAsked(look.complained, look.asked),
          others: look.othersComplained.map(({ tester, share }) => ({ tester, at: 100 * share })),
        },
      ]
    : []),
];

const rangeOf = (others: Line['others']): string =>
  others.length === 0
    ? '–'
    : [Math.min, Math.max]
        .map((pick) => formatNumber(pick(...others.map(({ at }) => at)), 0))
        .join(' – ');

export const AgainstOthers = (props: TabProps & { readonly look: TesterLook }) => {
  const { look, review, records } = props;
  const words = p().testers.page;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const lines = linesOf(look);
  if (lines.length === 0) return null;
  return (
    <section aria-label={words.against}>
      <h2>{words.against}</h2>
      <Picture
        says={words.againstSays(look.code)}
        table={() => ({
          head: [words.attribute, words.mean, words.range],
          rows: lines.map(({ name, ownWords, others }) => [name, ownWords, rangeOf(others)]),
        })}
      >
        <p class="soft small">{words.againstNote}</p>
        {lines.map(({ name, own, ownWords, others }) => (
          <div class="against" key={name}>
            <span>{name}</span>
            <span class="against-line">
              {others.map(({ tester, at }) => (
                <a
                  key={tester}
                  class="against-other"
                  href={links.tester(tester)}
                  tabIndex={-1}
                  title={saidOf(names.tester(tester), formatNumber(at, 0))}
                  style={{ insetInlineStart: `${at}%` }}
                >
                  <span class="hidden-words">{names.tester(tester)}</span>
                </a>
              ))}
              <b class="against-own" style={{ insetInlineStart: `${own}%` }} />
            </span>
            <b class="against-figure">{ownWords}</b>
          </div>
        ))}
        <p class="against-legend soft small" aria-hidden="true">
          <b class="against-own" /> {look.code} <i class="against-other" /> {words.another}
        </p>
      </Picture>
    </section>
  );
};
