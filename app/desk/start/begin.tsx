/** A group without a shoe: the six steps, and what else one can begin from. */
import { LinkButton } from '../../parts/controls/controls.tsx';
import { p } from '../../words/index.ts';
import { PlaceHead } from '../frame/place.tsx';
import { newShoe } from '../frame/route.ts';
import type { DeskRecords } from '../worker/desk-work.ts';
import { StartCards } from './start-cards.tsx';
import { nothingDone } from './start-strip.tsx';

export const Begin = ({ records }: { readonly records: DeskRecords }) => {
  const words = p().start;
  const start = {
    ...nothingDone,
    done: { ...nothingDone.done, testers: records.tester.length > 0 },
    counts: { ...nothingDone.counts, testers: records.tester.length },
  };
  return (
    <>
      <PlaceHead
        headline={p().shoes.headline({ case: 'none', claims: 'nothing' }, String)}
        sub={words.sub}
      />
      <StartCards start={start} project={null} records={records} />
      <section class="start-or">
        <p>
          <b>{words.stop}</b> {words.stopHow}
        </p>
        <div>
          <b>{words.orFrom}</b>
          <LinkButton kind="quiet" href={newShoe('tables')}>
            {words.from.table}
          </LinkButton>
          <LinkButton kind="quiet" href="/file">
            {words.from.file}
          </LinkButton>
          <details>
            <summary class="button button-quiet">{words.from.demo}</summary>
            <p class="soft small">{words.from.demoHow}</p>
          </details>
        </div>
      </section>
    </>
  );
};
