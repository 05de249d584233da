/** Which testers were invited, have joined and log: a line each, with a new code on one press. */
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { Some } from '../parts/some.tsx';
import { inviteStateOf, type InviteKnowledge } from './invite-states.ts';

export const WhoIsIn = (props: {
  readonly testers: readonly RecordOf<'tester'>[];
  readonly known: InviteKnowledge;
  /** Testers whose code stands on this page. */
  readonly here: ReadonlySet<RecordId>;
  readonly busy: boolean;
  readonly make: (tester: RecordOf<'tester'>) => void;
}) => {
  const { testers, known, here, busy, make } = props;
  const words = p().plan.invites;
  const lines = testers.map((tester) => {
    const { id } = tester.revision;
    const state = inviteStateOf(id, known);
    const until = formatDateTime(known.until.get(id) ?? 0);
    const isElsewhere = state === 'invited' && !here.has(id);
    const said = {
      logs: words.logs(known.runs.get(id) ?? 0),
      joined: words.joined,
      'by-file': words.byFile(known.runs.get(id) ?? 0),
      invited: isElsewhere ? words.invitedElsewhere(until) : words.invited(until),
      lapsed: words.lapsed,
      none: words.notInvited,
    }[state];
    return { tester, id, state, said };
  });
  return (
    <section class="no-print who-is-in" aria-label={words.who}>
      <h2>{words.who}</h2>
      <ul class="plain-list">
        <Some of={lines} step={50}>
          {({ tester, id, state, said }) => (
            <li key={id} class="row" data-state={state}>
              <strong>{[tester.body.code, tester.body.name].filter(Boolean).join(' ')}</strong>
              <span>{said}</span>
              <Button
                kind="quiet"
                disabled={busy}
                aria-label={`${words.newCode} ${tester.body.code}`}
                onClick={() => make(tester)}
              >
                {words.newCode}
              </Button>
            </li>
          )}
        </Some>
      </ul>
      <p class="soft small">{words.codesKept}</p>
    </section>
  );
};
