/** Where something was felt in a pair, and how it fits the foot that wears it, or wore it last. */
import type { ComponentChildren } from 'preact';
import type { FootFit } from '../../../core/rounds/index.ts';
import type { PairLook } from '../../../core/review/index.ts';
import { formatDate, formatNumber, formatSize } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { signed } from '../../words/figures.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { FeltDrawing } from '../people/felt-drawing.tsx';

type Fact = readonly [string, ComponentChildren];

const mm = (value: number | null | undefined): string =>
  value === null || value === undefined ? '–' : formatNumber(value, 0);

const both = (
  fit: PairLook['fit'][number],
  of: (one: FootFit) => number | null,
): readonly [number | null, number | null] | null => {
  const values = [fit.left && of(fit.left), fit.right && of(fit.right)] as const;
  return values.every((value) => value === null) ? null : values;
};

/** What is known of the last wearer's feet in this pair. */
const fitFacts = ({ look, records, review }: Props): readonly Fact[] => {
  const words = p().pairs.page;
  const names = namesIn(review, records);
  const wearer = look.hands.at(-1)?.tester;
  const tester = records.tester.find(({ revision }) => revision.id === wearer);
  if (!tester) return [];
  const { footLengthMm } = tester.body;
  const fit = look.fit.find((one) => one.tester === wearer);
  const toe = fit && both(fit, ({ toeMm }) => toeMm);
  const width = fit && both(fit, ({ widthMm }) => widthMm);
  const write = (value: number | null) =>
    value === null ? '–' : signed(value, (size) => formatNumber(size, 0));
  return [
    ...(footLengthMm
      ? [
          [
            words.feet(names.tester(tester.revision.id)),
            words.feetValue(mm(footLengthMm.left), mm(footLengthMm.right)),
          ] as const,
        ]
      : []),
    ...(toe ? [[words.toe, words.toeValue(mm(toe[0]), mm(toe[1]))] as const] : []),
    ...(width ? [[words.width, words.feetValue(write(width[0]), write(width[1]))] as const] : []),
  ];
};

const arrivalOf = ({ judged, outOfTolerance }: PairLook): string => {
  const words = p().pairs.page;
  return outOfTolerance
    ? words.arrivalOut
    : judged > 0
      ? words.arrivalIn(judged)
      : words.arrivalNone;
};

type Props = TabProps & { readonly look: PairLook };

export const PairFacts = (props: Props) => {
  const { look, records, review } = props;
  const words = p().pairs.page;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const held = look.hands.find(({ untilMs }) => untilMs === null);
  const facts: readonly Fact[] = [
    [words.size, formatSize(look.sizeMm)],
    ...fitFacts(props),
    [words.arrival, arrivalOf(look)],
    [
      words.now,
      held ? (
        <a key="now" href={links.tester(held.tester)}>
          {words.nowWith(names.tester(held.tester), formatDate(held.fromMs))}
        </a>
      ) : (
        words.nowIn
      ),
    ],
  ];
  return (
    <aside class="paper pair-facts" aria-label={words.facts}>
      <h2>{words.felt}</h2>
      <FeltDrawing project={review.project.id} felt={look.felt} asked={look.asked} />
      <dl>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </aside>
  );
};
