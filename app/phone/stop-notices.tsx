/** Stop-use notices on pairs that this tester holds: above everything, until they are acknowledged and after. */
import { noticesOf } from '../../core/mileage/index.ts';
import type { RecordOf } from '../../core/records/index.ts';
import { Button, Notice } from '../parts/controls/controls.tsx';
import { session, store, useRecords } from '../parts/state.ts';
import { t } from '../words/index.ts';
import { toInstant } from '../parts/instant.ts';

export const StopNotices = () => {
  const words = t().stop;
  const stops = useRecords('stop-use');
  const pairs = useRecords('pair');
  const handOuts = useRecords('hand-out');
  const read = useRecords('acknowledgement');
  const tester = session.value?.member;
  if (!stops || !pairs || !handOuts || !read || !tester) return null;
  const acknowledge = (stop: RecordOf<'stop-use'>) =>
    store.save('acknowledgement', {
      project: stop.body.project,
      tester,
      stopUse: stop.revision.id,
      at: toInstant(Date.now()),
    });
  return (
    <>
      {noticesOf(tester, stops, handOuts, Date.now()).flatMap(({ stop, pair: id }) => {
        const pair = pairs.find(({ revision }) => revision.id === id);
        if (!pair) return [];
        const isRead = read.some((one) => one.body.stopUse === stop.revision.id);
        return [
          <Notice tone="danger" live={!isRead} key={stop.revision.id}>
            <h2>{words.title(pair.body.code)}</h2>
            <p>{stop.body.reason}</p>
            {isRead ? (
              <p class="soft small">{words.acknowledged}</p>
            ) : (
              <Button onClick={() => void acknowledge(stop)}>{words.acknowledge}</Button>
            )}
          </Notice>,
        ];
      })}
    </>
  );
};
