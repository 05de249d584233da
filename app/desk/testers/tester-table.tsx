/** The list of testers as a table; on a narrow screen each row stands in two lines. */
import type { TesterRow } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { session } from '../../parts/state.ts';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import type { Invite } from '../parts/invite-card.tsx';
import { SortHead, type SortColumn } from '../people/sort-head.tsx';
import type { Order } from '../people/sorting.ts';
import { Some } from '../parts/some.tsx';
import { inviteTester, sendHandOutFile } from './invite.ts';
import type { TesterColumn } from './tester-order.ts';

const Getting = (props: {
  readonly row: TesterRow;
  readonly onInvite: (invite: Invite) => void;
}) => {
  const { row, onInvite } = props;
  const words = d().testers;
  const invite = async () => {
    const made = await inviteTester(row.tester, row.code);
    if (made) onInvite(made);
  };
  return (
    <span class="row">
      {session.value?.hub && (
        <Button
          kind="quiet"
          aria-label={`${words.invite} ${row.code}`}
          onClick={() => void invite()}
        >
          {words.invite}
        </Button>
      )}
      <Button
        kind="quiet"
        aria-label={`${words.file} ${row.code}`}
        onClick={() => void sendHandOutFile(row.tester)}
      >
        {words.file}
      </Button>
    </span>
  );
};

export const TesterTable = (
  props: TabProps & {
    readonly rows: readonly TesterRow[];
    readonly columns: readonly SortColumn<TesterColumn>[];
    readonly order: Order<TesterColumn>;
    readonly onOrder: (order: Order<TesterColumn>) => void;
    readonly onInvite: (invite: Invite) => void;
  },
) => {
  const { review, records, rows, columns, order, onOrder, onInvite } = props;
  const words = p().testers;
  const names = namesIn(review, records);
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  return (
    <table class="place-table people-table tester-table" aria-label={p().frame.places.testers}>
      <SortHead columns={columns} order={order} onOrder={onOrder} after={words.actions} />
      <tbody>
        <Some of={rows} columns={columns.length + 1}>
          {(row) => (
            <tr key={row.tester}>
              <th scope="row" class="cell-name">
                <a href={links.tester(row.tester)}>{row.code}</a>
                {row.name && <span class="soft small">{` ${row.name}`}</span>}
              </th>
              <td class="cell-pairs">
                {row.pairs.map((pair, at) => (
                  <span key={pair}>
                    {at > 0 && ', '}
                    <a href={links.pair(pair)}>{names.code(pair)}</a>
                  </span>
                ))}
              </td>
              <td class="right cell-runs">{row.runs}</td>
              <td class="right one-line cell-distance">{roundDistance(row.distanceM)}</td>
              <td class="one-line cell-last">
                {row.lastRunMs === null ? '–' : formatDate(row.lastRunMs)}
              </td>
              <td class="right one-line cell-silent">
                {row.silentDays !== null &&
                  // The silence of the whole test is said once, above.
                  (review.quiet?.testers.includes(row.tester) ? (
                    <span class="soft">{words.silentFor(row.silentDays)}</span>
                  ) : (
                    <Mark tone="open">{words.silentFor(row.silentDays)}</Mark>
                  ))}
              </td>
              <td class="cell-most">
                {row.most && (
                  <a href={links.tester(row.tester)}>
                    {words.feltIn(say.upper(say.felt(row.most)), row.most.runs)}
                  </a>
                )}
              </td>
              <td class="right cell-complaints">
                {row.asked === 0 ? '–' : p().pairs.ofAsked(row.complained, row.asked)}
              </td>
              <td class="one-line cell-pain">
                {row.pain && (
                  <>
                    {row.pain.stands && <Mark tone="danger">{p().frame.doNotRun}</Mark>}{' '}
                    <a href={links.run(row.pain.run)}>{words.pain(row.pain.score)}</a>
                  </>
                )}
              </td>
              <td class="cell-acts no-print">
                <Getting row={row} onInvite={onInvite} />
              </td>
            </tr>
          )}
        </Some>
      </tbody>
    </table>
  );
};
