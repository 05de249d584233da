/** "Log a run" from the home screen's menu: straight to the pair that was worn last, if it may be worn. */
import { useEffect } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { standingStop } from '../../../core/mileage/index.ts';
import { standingReplies } from '../../../core/records/index.ts';
import { LinkButton, Page } from '../../parts/controls/controls.tsx';
import { session, useStored } from '../../parts/state.ts';
import { ownWords, t } from '../../words/index.ts';
import { byLastWorn } from '../card-order.ts';
import { heldPairs } from '../own-mileage.ts';
import { isOff } from '../pair-off.ts';

export const LastPair = () => {
  const { route } = useLocation();
  const member = session.value?.member;
  const found = useStored(
    async (from) => {
      const [pairs, handOuts, runs, stops, reports, replies] = await Promise.all([
        from.list('pair'),
        from.list('hand-out'),
        from.list('run'),
        from.list('stop-use'),
        from.list('damage-report'),
        from.list('reply'),
      ]);
      const nowMs = Date.now();
      const standing = standingReplies(replies);
      const held = member ? heldPairs(member, pairs, handOuts, runs, nowMs) : [];
      const wearable = held.filter(
        ({ pair, ownRuns }) =>
          standingStop(stops, pair.revision.id, nowMs) === null &&
          !isOff({
            runs: ownRuns,
            reports: reports.filter(({ body }) => body.pair === pair.revision.id),
            replies: standing,
          }),
      );
      return {
        some: held.length > 0,
        pair: wearable.sort(byLastWorn)[0]?.pair.revision.id ?? null,
      };
    },
    ['pair', 'hand-out', 'run', 'stop-use', 'damage-report', 'reply'],
    [member],
  );
  // Where none may be worn, the first screen says why.
  const to = found && (found.pair ? `/log/${found.pair}` : found.some ? '/' : null);
  useEffect(() => {
    if (to) route(to, true);
    // `route` is a new function at each drawing.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [to]);
  if (found === null || to) return <p class="soft">{t().loading}</p>;
  return (
    <Page title={t().log.title} back={{ href: '/', label: t().back }}>
      <p>{ownWords().last.none}</p>
      <LinkButton href="/">{t().toToday}</LinkButton>
    </Page>
  );
};
