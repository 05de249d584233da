/** Who has not said that they read a stop-use notice, and could their phone tell them while the app is closed? */
import type { Reach, RecordId } from '../../../core/records/index.ts';
import { formatDateTime } from '../../parts/format.ts';
import { store, useStored } from '../../parts/state.ts';
import { comma, d } from '../../words/index.ts';

/** What the hub says of one tester's phone; null where it cannot be asked. */
const sayReach = (reach: Reach | null, tester: RecordId): string | null => {
  const words = d().pairs;
  if (!reach) return null;
  const woken = reach.woken.find(({ member }) => member === tester);
  if (woken?.sentAt) return words.toldAt(formatDateTime(woken.sentAt));
  return reach.on.includes(tester) ? words.notTold : words.noNotices;
};

/** @param testers holders who have not acknowledged it, with the code by which the desk calls them */
export const NotRead = (props: {
  readonly notice: RecordId;
  readonly testers: readonly {
    readonly id: RecordId;
    readonly code: string;
    readonly href: string;
  }[];
}) => {
  const { notice, testers } = props;
  const reach = useStored(
    async () => {
      const answer = await (await store.hub())?.reach(notice);
      return answer?.ok ? answer.value : null;
    },
    ['acknowledgement', 'stop-use'],
    [notice],
  );
  if (testers.length === 0) return null;
  return (
    <span class="soft small">
      {` ${d().pairs.notReadYet} `}
      {testers.map(({ id, code, href }, at) => {
        const said = sayReach(reach, id);
        return (
          <span key={id}>
            {at > 0 && comma()}
            <a href={href}>{code}</a>
            {said !== null && ` (${said})`}
          </span>
        );
      })}
    </span>
  );
};
