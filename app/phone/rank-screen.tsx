/** Pairs in order of comfort: tapped best first; a pair may share the place of the one before it. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../core/records/index.ts';
import { Button, Notice, Page } from '../parts/controls/controls.tsx';
import { LimitedField } from '../parts/controls/limited-field.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { toInstant } from '../parts/instant.ts';
import { session, store, useRecords } from '../parts/state.ts';
import { t } from '../words/index.ts';
import { heldPairs, type HeldPair } from './own-mileage.ts';
import { RUNS_TO_COMPARE } from './ranking-due.ts';

interface Placed {
  readonly pair: RecordId;
  /** As good as the pair before it. */
  readonly equal: boolean;
}

/** Places as a ranking keeps them: pairs that share a place stand together. */
const orderOf = (placed: readonly Placed[]): RecordId[][] => {
  const order: RecordId[][] = [];
  for (const { pair, equal } of placed) {
    const last = order.at(-1);
    if (equal && last) last.push(pair);
    else order.push([pair]);
  }
  return order;
};

const Order = ({ project, pairs }: { project: RecordId; pairs: readonly HeldPair[] }) => {
  const words = t();
  const { route } = useLocation();
  const [placed, setPlaced] = useState<readonly Placed[]>([]);
  const [why, setWhy] = useState('');
  const [trouble, setTrouble] = useState<string | null>(null);
  const code = (id: RecordId) =>
    pairs.find(({ pair }) => pair.revision.id === id)?.pair.body.code ?? '?';
  const open = pairs
    .map(({ pair }) => pair.revision.id)
    .filter((id) => !placed.some(({ pair }) => pair === id));
  const order = orderOf(placed);
  const placeOf = (id: RecordId) => order.findIndex((place) => place.includes(id)) + 1;
  const save = async () => {
    const tester = session.value?.member;
    if (!tester) return;
    const saved = await store.save('ranking', {
      project,
      tester,
      at: toInstant(Date.now()),
      question: 'comfort',
      order,
      ...(why.trim() !== '' && { words: why.trim() }),
    });
    if (!saved.ok)
      return setTrouble(saved.why === 'storage-full' ? words.log.full : words.log.lost);
    showToast({ text: words.rank.saved });
    route('/', true);
  };
  return (
    <>
      <p>{words.rank.how}</p>
      <ol class="plain-list stack" aria-live="polite">
        {placed.map(({ pair, equal }, at) => {
          const before = placed[at - 1];
          return (
            <li class="sheet" key={pair}>
              <div class="row row-apart">
                <strong>{words.rank.place(placeOf(pair), code(pair))}</strong>
                <Button
                  kind="quiet"
                  aria-label={words.rank.takeOut(code(pair))}
                  onClick={() => setPlaced(placed.filter((one) => one.pair !== pair))}
                >
                  {words.undo}
                </Button>
              </div>
              {before && (
                <label class="row">
                  <input
                    type="checkbox"
                    class="tick"
                    checked={equal}
                    onChange={(event) => {
                      const { checked } = event.currentTarget;
                      setPlaced(
                        placed.map((one) => (one.pair === pair ? { pair, equal: checked } : one)),
                      );
                    }}
                  />
                  {words.rank.equal(code(before.pair))}
                </label>
              )}
            </li>
          );
        })}
      </ol>
      <div class="stack">
        {open.map((id) => (
          <Button
            key={id}
            big
            aria-label={words.rank.put(code(id))}
            onClick={() => setPlaced([...placed, { pair: id, equal: false }])}
          >
            {code(id)}
          </Button>
        ))}
      </div>
      {open.length === 0 && (
        <LimitedField label={words.rank.why} value={why} onInput={setWhy} most={4000} rows={2} />
      )}
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      <div class="foot-bar">
        <Button kind="main" big disabled={open.length > 0} onClick={() => void save()}>
          {words.save}
        </Button>
      </div>
    </>
  );
};

export const RankScreen = ({ project }: { project: string }) => {
  const words = t();
  const pairs = useRecords('pair');
  const handOuts = useRecords('hand-out');
  const runs = useRecords('run');
  const member = session.value?.member;
  const mine =
    pairs && handOuts && runs && member
      ? heldPairs(member, pairs, handOuts, runs, Date.now())
          .filter((one) => one.pair.body.project === project && one.runs >= RUNS_TO_COMPARE)
          // The pair worn last must not always be offered first.
          .sort((a, b) => (a.pair.body.code < b.pair.body.code ? -1 : 1))
      : null;
  return (
    <Page title={words.rank.title} back={{ href: '/', label: words.back }}>
      {mine === null ? (
        <p class="soft">{words.loading}</p>
      ) : mine.length < 2 ? (
        <p>{words.today.noPairs}</p>
      ) : (
        <Order project={project as RecordId} pairs={mine} />
      )}
    </Page>
  );
};
