/** What the list of testers shows of each tester. */
import type { TesterRow } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { session } from '../../parts/state.ts';
import { comma, d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import type { ListColumn } from '../list/list-column.ts';
import type { Invite } from '../parts/invite-card.tsx';
import { inviteTester, sendHandOutFile } from './invite.ts';
import type { TesterColumn } from './tester-order.ts';

const Getting = (props: {
  readonly row: TesterRow;
  readonly onInvite: (invite: Invite) => void;
}) => {
  const { row, onInvite } = props;
  const words = d().testers;
  // Of whoever has logged a phone has joined; a code is for a further one.
  const invites = row.runs > 0 ? words.inviteAgain : words.invite;
  const invite = async () => {
    const made = await inviteTester(row.tester, row.code);
    if (made) onInvite(made);
  };
  return (
    <span class="row">
      {session.value?.hub && (
        <Button kind="quiet" aria-label={`${invites} ${row.code}`} onClick={() => void invite()}>
          {invites}
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

export const columnsOfTesters = (
  props: TabProps,
  onInvite: (invite: Invite) => void,
): readonly ListColumn<TesterRow, TesterColumn | 'acts'>[] => {
  const { review, records } = props;
  const words = p().testers;
  const { columns } = words;
  const names = namesIn(review, records);
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  return [
    {
      column: 'tester',
      title: columns.tester,
      first: 'ascending',
      width: 6,
      stays: true,
      cell: ({ tester, code, name }) => (
        <>
          <a href={links.tester(tester)}>{code}</a>
          {name && <span class="soft small">{` ${name}`}</span>}
        </>
      ),
    },
    {
      column: 'pairs',
      title: columns.pairs,
      first: 'descending',
      width: 6.5,
      card: 'first',
      bare: true,
      cell: ({ pairs }) =>
        pairs.map((pair, at) => (
          <span key={pair}>
            {at > 0 && comma()}
            <a href={links.pair(pair)}>{names.code(pair)}</a>
          </span>
        )),
    },
    {
      column: 'runs',
      title: columns.runs,
      first: 'descending',
      right: true,
      width: 4,
      cell: ({ runs }) => runs,
    },
    {
      column: 'distance',
      title: columns.distance,
      first: 'descending',
      right: true,
      width: 5.5,
      cell: ({ distanceM }) => roundDistance(distanceM),
    },
    {
      column: 'lastRun',
      title: columns.lastRun,
      first: 'descending',
      width: 8.25,
      cell: ({ lastRunMs }) => (lastRunMs === null ? '–' : formatDate(lastRunMs)),
    },
    {
      column: 'silent',
      title: columns.silent,
      first: 'descending',
      width: 5.25,
      card: 'corner',
      bare: true,
      cell: ({ tester, silentDays }) =>
        silentDays !== null &&
        // The silence of the whole test is said once, above.
        (review.quiet?.testers.includes(tester) ? (
          <span class="soft">{words.silentFor(silentDays)}</span>
        ) : (
          <Mark tone="open">{words.silentFor(silentDays)}</Mark>
        )),
    },
    {
      column: 'most',
      title: columns.most,
      first: 'descending',
      card: 'wide',
      bare: true,
      cell: ({ tester, most }) =>
        most && (
          <a href={links.tester(tester)}>{words.feltIn(say.upper(say.felt(most)), most.runs)}</a>
        ),
    },
    {
      column: 'complaints',
      title: columns.complaints,
      first: 'descending',
      right: true,
      width: 6.5,
      cell: ({ asked, complained }) => (asked === 0 ? '–' : p().pairs.ofAsked(complained, asked)),
    },
    {
      column: 'pain',
      title: columns.pain,
      first: 'descending',
      width: 5,
      cell: ({ pain }) =>
        pain && (
          <>
            {pain.stands && <Mark tone="danger">{p().frame.doNotRun}</Mark>}{' '}
            <a href={links.run(pain.run)}>{words.pain(pain.score)}</a>
          </>
        ),
    },
    {
      column: 'acts',
      title: words.actions,
      width: 12.25,
      card: 'wide',
      bare: true,
      cell: (row) => <Getting row={row} onInvite={onInvite} />,
    },
  ];
};
