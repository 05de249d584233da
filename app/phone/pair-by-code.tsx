/** The address on a pair's slip: straight to "log a run" of that pair, where it is in this person's hands. */
import { useEffect } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { LinkButton, Page } from '../parts/controls/controls.tsx';
import { session, store, useRecords } from '../parts/state.ts';
import { joinWords, t } from '../words/index.ts';
import { heldPairs } from './own-mileage.ts';

/** @param code as it stands on the tongue label */
export const PairByCode = ({ code: typed = '' }: { readonly code?: string }) => {
  const code = decodeURIComponent(typed).toUpperCase();
  const words = t();
  const { route } = useLocation();
  const pairs = useRecords('pair');
  const handOuts = useRecords('hand-out');
  const { member, role } = session.value ?? {};
  const isRead = pairs !== null && handOuts !== null;
  const held =
    isRead && member
      ? heldPairs(member, pairs, handOuts, [], Date.now()).find(
          ({ pair }) => pair.body.code === code,
        )
      : undefined;
  const own = role === 'lead' ? pairs?.find(({ body }) => body.code === code) : undefined;
  const to = held
    ? `/log/${held.pair.revision.id}`
    : own
      ? `/desk/${own.body.project}/pairs/${own.revision.id}`
      : null;
  useEffect(() => {
    if (to !== null) route(to, true);
    // It may have been handed out a moment ago.
    else if (isRead) void store.sync();
    // `route` is a new function at each drawing.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [to, isRead]);
  if (!isRead || to !== null) return <p class="soft">{words.loading}</p>;
  return (
    <Page title={joinWords().notWithYou(code)} back={{ href: '/', label: words.back }}>
      <p>{joinWords().notWithYouHint}</p>
      <LinkButton href="/">{words.toToday}</LinkButton>
    </Page>
  );
};
