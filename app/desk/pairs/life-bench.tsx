/** What the bench read on a pair: a diamond a check on its round's band, with the brief's limit. */
import type { Measure } from '../../../core/records/index.ts';
import type { PairBench } from '../../../core/review/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { p, saidOf } from '../../words/index.ts';
import { placeName } from '../../words/say-place.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { speakerOf } from '../parts/speaker.ts';
import { Behind, Lane, line, type Axis, type LaneProps } from './life-lane.tsx';

/** The lowest and the highest that is drawn of readings, with some room. */
const rangeOf = ({ marks, others, curve, limit }: PairBench): readonly [number, number] => {
  const values = [
    ...marks.map(({ value }) => value),
    ...others.map(({ value }) => value),
    ...curve.flatMap(({ lower, upper }) => [lower, upper]),
    ...(limit ? [limit.value] : []),
  ];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = 0.06 * (high - low || Math.abs(high) || 1);
  return [low - room, high + room];
};

export const Bench = ({ look, axis, ...tab }: LaneProps & { readonly axis: Axis }) => {
  const words = p().pairs.page;
  const links = linksOf(tab.review.project.id);
  const speaker = speakerOf(tab);
  const x = (m: number) => (100 * m) / axis.endM;
  return (
    <>
      {look.bench.map((bench) => {
        const [low, high] = rangeOf(bench);
        const y = (value: number) => (100 * (high - value)) / (high - low);
        const [measure] = bench.kind.split(' ') as [Measure];
        const band = [
          ...bench.curve.map(({ m, upper }) => [x(m), y(upper)] as const),
          ...bench.curve.toReversed().map(({ m, lower }) => [x(m), y(lower)] as const),
        ];
        return (
          <Lane
            key={`${bench.kind}${bench.site}`}
            kind="bench"
            title={
              <a href={links.place('wear')}>{placeName({ measure, site: bench.site }, speaker)}</a>
            }
            note={words.benchNote(bench.marks.length)}
          >
            <Behind>
              {band.length > 0 && <path class="life-band" d={`${line(band)}Z`} />}
              <path
                class="life-curve"
                d={line(bench.curve.map(({ m, median }) => [x(m), y(median)]))}
              />
              {bench.limit && <path class="life-limit" d={`M0,${y(bench.limit.value)}H100`} />}
            </Behind>
            {bench.limit && (
              <span class="life-limit-name" style={{ insetBlockStart: `${y(bench.limit.value)}%` }}>
                {words.limit(formatNumber(bench.limit.value, 1))}
              </span>
            )}
            {bench.others.map(({ check, m, value }) => (
              <span
                key={`${check}${m}`}
                class="life-other"
                style={{ insetInlineStart: axis.at(m), insetBlockStart: `${y(value)}%` }}
              />
            ))}
            {bench.marks.map(({ check, m, value }) => (
              <a
                key={`${check}${m}`}
                class="life-check"
                href={links.check(check)}
                tabIndex={-1}
                style={{ insetInlineStart: axis.at(m), insetBlockStart: `${y(value)}%` }}
                title={saidOf(roundDistance(m), formatNumber(value, 2))}
              >
                <span class="hidden-words">{formatNumber(value, 2)}</span>
              </a>
            ))}
          </Lane>
        );
      })}
    </>
  );
};
