/** One change: what it was meant to mend, what came of it, and for whom. */
import { isAbsent, type ComparedChange } from '../../../core/review/index.ts';
import type { CellComparison } from '../../../core/rounds/index.ts';
import type { UnitCount } from '../../../core/statistics/index.ts';
import { SlopeLines } from '../../parts/charts/slope-lines.tsx';
import { formatPercent } from '../../parts/format.ts';
import { d, terms } from '../../words/index.ts';
import { arrivalLines } from '../../words/say-arrival.ts';
import {
  changeTitle,
  comparisonLines,
  feltTitle,
  type RoundNames,
} from '../../words/say-change.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { Judged } from '../parts/judged.tsx';

type Props = TabProps & { readonly change: ComparedChange; readonly rounds: RoundNames };

export const ChangeSheet = (props: Props) => {
  const { change, rounds } = props;
  const words = d().changes;
  const speaker = speakerOf(props);
  const { found, mends, round, arrival } = change;
  return (
    <article class="sheet">
      <div class="row row-apart">
        <h3>{changeTitle(change, speaker)}</h3>
        {found && !isAbsent(arrival) && (
          <Judged word={found.verdict}>{terms().changeVerdicts[found.verdict].name}</Judged>
        )}
      </div>
      {round !== rounds.later && <p class="soft small">{words.since(speaker.round(round))}</p>}
      {arrivalLines(change, speaker).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {found && mends ? (
        <>
          <p>{words.mends(feltTitle(mends, speaker))}</p>
          {!isAbsent(arrival) && (
            <p class="soft small">{terms().changeVerdicts[found.verdict].meaning}</p>
          )}
          {comparisonLines(found, rounds, speaker).map((line) => (
            <p key={line}>{line}</p>
          ))}
          <ByTester {...props} found={found} />
        </>
      ) : (
        <p class="soft">{words.mendsNothing}</p>
      )}
    </article>
  );
};

/** More lines than this nobody can tell apart; the table has all. */
const MOST_LINES = 40;

const percentIn = ({ x, n }: UnitCount): number => (100 * x) / n;

const ByTester = (props: Props & { found: CellComparison }) => {
  const { found, rounds } = props;
  const words = d().changes;
  const speaker = speakerOf(props);
  const [earlier, later] = [speaker.round(rounds.earlier), speaker.round(rounds.later)];
  const lines = found.byTester
    .filter(({ first }) => first !== null || found.basis === 'all-testers')
    .slice(0, MOST_LINES)
    .flatMap(({ tester, first, ...all }) => {
      const from = first?.earlier ?? all.earlier;
      const to = first?.later ?? all.later;
      const ends = { from: from && percentIn(from), to: to && percentIn(to) };
      return ends.from === null && ends.to === null
        ? []
        : [{ name: speaker.tester(tester), ...ends }];
    });
  const shown = (unit: UnitCount | null) => (unit ? words.ofRuns(unit.x, unit.n) : words.notAsked);
  return (
    <>
      {lines.length > 0 && (
        <SlopeLines
          title={words.slopes(earlier, later)}
          from={earlier}
          to={later}
          lines={lines}
          format={(percent) => formatPercent(percent / 100)}
        />
      )}
      {found.byTester.length > 0 && (
        <details>
          <summary class="button button-quiet">{words.byTester}</summary>
          <div class="table-wrap" tabIndex={0} role="region" aria-label={words.byTester}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.tester}</th>
                  <th scope="col" class="right">
                    {words.allRuns(earlier)}
                  </th>
                  <th scope="col" class="right">
                    {words.allRuns(later)}
                  </th>
                  <th scope="col" class="right">
                    {words.firstRuns}
                  </th>
                </tr>
              </thead>
              <tbody>
                <Some of={found.byTester} columns={4}>
                  {(one) => (
                    <tr key={one.tester}>
                      <th scope="row">{speaker.tester(one.tester)}</th>
                      <td class="right">{shown(one.earlier)}</td>
                      <td class="right">{shown(one.later)}</td>
                      <td class="right">
                        {one.first
                          ? `${shown(one.first.earlier)} → ${shown(one.first.later)}`
                          : words.notCompared}
                      </td>
                    </tr>
                  )}
                </Some>
              </tbody>
            </table>
          </div>
        </details>
      )}
    </>
  );
};
