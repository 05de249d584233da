/** The two pictures of a pair of rounds: complaints in shares of runs, comfort in points. */
import type { ChangesLook, ComfortMove, FeltMove } from '../../../core/review/index.ts';
import type { RoundCount } from '../../../core/rounds/index.ts';
import { formatNumber, formatPercent } from '../../parts/format.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { SlopeChart, type Slope } from './slope-chart.tsx';

/** More lines than this beside each other are not told apart; the table has all. */
const MOST_LINES = 10;

const tones: Readonly<Record<FeltMove['word'] | ComfortMove['word'], Slope['tone']>> = {
  mended: 'good',
  better: 'good',
  worse: 'bad',
  'no-different': 'open',
  'no-relevant': 'open',
  look: 'look',
  'too-little': 'open',
  open: 'open',
};

const shareOf = ({ reported, runs }: RoundCount): number => (runs > 0 ? reported / runs : 0);

export const FeltSlopes = (props: TabProps & { readonly look: ChangesLook }) => {
  const { look, review, records } = props;
  const words = p().changes;
  const links = linksOf(review.project.id);
  const names = namesIn(review, records);
  const [earlier, later] = [
    names.round(look.comparison.earlier),
    names.round(look.comparison.later),
  ];
  const named = (one: FeltMove) =>
    p().frame.feltTitle(terms().kinds[one.kind].name, terms().zones[one.zone].name);
  // Nothing can be drawn of a complaint that one of the rounds was never asked about.
  const drawn = look.felt.filter(({ earlier: a, later: b }) => a.runs > 0 && b.runs > 0);
  if (drawn.length === 0) return <p>{words.noComplaint}</p>;
  const shown = drawn.slice(0, MOST_LINES);
  const whole = (share: number) => formatNumber(100 * share, share > 0 && share < 0.1 ? 1 : 0);
  const cells = ({ earlier: a, later: b }: FeltMove) =>
    [a, b].flatMap((count) => [
      words.of(count.reporters, count.testers),
      words.of(count.reported, count.runs),
    ]);
  return (
    <SlopeChart
      title={words.slopes(earlier, later)}
      says={words.slopeSays(earlier, later, drawn.length)}
      rounds={[earlier, later]}
      fromZero
      tick={(value) => formatPercent(value / 100)}
      slopes={shown.map((one) => ({
        key: `${one.zone} ${one.kind}`,
        name: named(one),
        href: links.zone('left', one.zone),
        from: 100 * shareOf(one.earlier),
        to: 100 * shareOf(one.later),
        figures: `${words.fromTo(whole(shareOf(one.earlier)), whole(shareOf(one.later)))}\u00a0%`,
        word: words.words[one.word],
        tone: tones[one.word],
      }))}
      table={() => ({
        head: [
          words.complaint,
          words.testersOf(earlier),
          words.runsOf(earlier),
          words.testersOf(later),
          words.runsOf(later),
          words.word,
        ],
        rows: look.felt.map((one) => [
          <a key={one.kind} href={links.zone('left', one.zone)}>
            {named(one)}
          </a>,
          ...cells(one),
          words.words[one.word],
        ]),
      })}
      more={
        drawn.length > MOST_LINES && (
          <p class="soft small">{words.moreLines(drawn.length - MOST_LINES)}</p>
        )
      }
    />
  );
};

export const ComfortSlopes = (props: TabProps & { readonly look: ChangesLook }) => {
  const { look, review, records } = props;
  const words = p().changes;
  const names = namesIn(review, records);
  const [earlier, later] = [
    names.round(look.comparison.earlier),
    names.round(look.comparison.later),
  ];
  const href = linksOf(review.project.id).place('shoe', 'comfort');
  if (look.comfort.length === 0) return <p class="soft">{words.noComfort}</p>;
  const whole = (value: number) => formatNumber(value, 0);
  const nameOf = ({ attribute }: ComfortMove) => terms().attributes[attribute].name;
  return (
    <SlopeChart
      title={words.comfortSlopes}
      says={words.comfortSays(earlier, later)}
      rounds={[earlier, later]}
      fromZero={false}
      tick={whole}
      slopes={look.comfort.map((one) => ({
        key: one.attribute,
        name: nameOf(one),
        href,
        from: one.earlier,
        to: one.later,
        figures: words.fromTo(whole(one.earlier), whole(one.later)),
        word: words.comfortWords[one.word],
        tone: tones[one.word],
      }))}
      table={() => ({
        head: [words.question, earlier, later, words.word],
        rows: look.comfort.map((one) => [
          nameOf(one),
          whole(one.earlier),
          whole(one.later),
          words.comfortWords[one.word],
        ]),
      })}
    />
  );
};
