/** On what each pair was run, and what was on each shoe. */
import type { Surface } from '../../../core/records/index.ts';
import type { PairSummary } from '../../../core/review/index.ts';
import { formatDistance, formatNumber, formatPercent } from '../../parts/format.ts';
import { d, halves, terms } from '../../words/index.ts';
import { toleranceInWords } from '../../words/say-blueprint.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Some } from '../parts/some.tsx';

const surfacesInWords = (pair: PairSummary): readonly string[] =>
  Object.entries(pair.bySurface)
    .sort(([, a], [, b]) => b - a)
    .map(([surface, distance]) => {
      const name =
        surface === 'unknown' ? d().pairs.unknownSurface : terms().surfaces[surface as Surface];
      return `${name} ${formatDistance(distance)}`;
    });

const stepsInWords = ({ load }: PairSummary): string =>
  load.stepsPerShoe > 0 ? formatNumber(Math.round(load.stepsPerShoe / 100) * 100, 0) : d().none;

/** How the steps are known, in percent of the distance. */
const stepsFrom = ({ load }: PairSummary): string => {
  const { cadence, 'height-and-pace': regression, unknown } = load.stepsFrom;
  const whole = cadence + regression + unknown;
  if (load.stepsPerShoe === 0 || whole === 0) return '';
  const percent = (part: number) => Math.round((100 * part) / whole);
  return d().pairs.stepsFrom(percent(cadence), percent(regression), percent(unknown));
};

/** @param pair of one pair alone; absent: of all */
export const PairLoads = ({ review, pair: only }: TabProps & { readonly pair?: string }) => {
  const words = d().pairs;
  const links = linksOf(review.project.id);
  const pairs = review.pairs.filter(({ id }) => only === undefined || id === only);
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.surfaces}>
      <table class="place-table">
        <thead>
          <tr>
            <th scope="col">{words.pair}</th>
            <th scope="col" class="right">
              {words.distance}
            </th>
            <th scope="col" class="right">
              {words.ofBrief}
            </th>
            <th scope="col">{words.surfaces}</th>
            <th scope="col" class="right">
              {words.steps}
            </th>
            <th scope="col" class="right">
              {words.load}
            </th>
          </tr>
        </thead>
        <tbody>
          <Some of={pairs} columns={6} step={12}>
            {(pair) => (
              <tr key={pair.id}>
                <th scope="row">
                  <a href={links.pair(pair.id)}>{pair.code}</a>
                  <div class="soft small">{toleranceInWords(pair.outOfTolerance, d())}</div>
                </th>
                <td class="right">{formatDistance(pair.totalM)}</td>
                <td class="right">{formatPercent(pair.shareOfBrief)}</td>
                <td>{halves(surfacesInWords(pair))}</td>
                <td class="right">
                  {stepsInWords(pair)} <span class="soft small">{stepsFrom(pair)}</span>
                </td>
                <td class="right">
                  {pair.load.loadKnownM > 0 ? formatNumber(pair.load.loadKN / 1000, 1) : d().none}
                </td>
              </tr>
            )}
          </Some>
        </tbody>
      </table>
    </div>
  );
};
