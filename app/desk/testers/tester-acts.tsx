/** What can be done with the testers that are selected: print their invites, take their pairs back. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { TesterRow } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { session } from '../../parts/state.ts';
import { p } from '../../words/index.ts';
import { isOutNow } from '../../drafts/hand-out.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { TakeBackForm } from '../pairs/take-back.tsx';
import { inviteOnly } from '../plan/invite-only.ts';

export const TesterActs = (
  props: TabProps & { readonly chosen: readonly TesterRow[]; readonly none: () => void },
) => {
  const { records, review, chosen, none } = props;
  const words = p();
  const { route } = useLocation();
  const [isTaking, setTaking] = useState(false);
  const testers = new Set(chosen.map(({ tester }) => tester));
  const held = records['hand-out'].filter(
    ({ body }) =>
      body.project === review.project.id &&
      testers.has(body.tester) &&
      isOutNow(body, review.nowMs),
  );
  if (isTaking && held.length > 0)
    return (
      <div class="list-form">
        <TakeBackForm
          records={records}
          review={review}
          rows={held.map(({ revision }) => ({ handOut: revision.id }))}
          done={() => {
            setTaking(false);
            none();
          }}
          cancel={() => setTaking(false)}
        />
      </div>
    );
  return (
    <>
      {session.value?.hub && (
        <Button
          onClick={() => {
            inviteOnly.value = testers;
            route(linksOf(review.project.id).place('plan', 'invites'));
          }}
        >
          {words.testers.inviteSelected(chosen.length)}
        </Button>
      )}
      {held.length > 0 && (
        <Button onClick={() => setTaking(true)}>{words.testers.takeBack(held.length)}</Button>
      )}
    </>
  );
};
