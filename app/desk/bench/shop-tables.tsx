/** The tables for the shop, a round each: to be saved, filled in and read back, or to be printed and written on. */
import { useState } from 'preact/hooks';
import type { RecordOf } from '../../../core/records/index.ts';
import { lastGauges } from '../../drafts/check-gauges.ts';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { sendFile } from '../../parts/send-file.ts';
import { session } from '../../parts/state.ts';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Unfold } from '../parts/form-parts.tsx';

export const ShopTables = ({ review, records }: TabProps) => {
  const words = d().bench;
  const links = linksOf(review.project.id);
  const [failed, setFailed] = useState(false);
  const doing = (work: () => Promise<void>) => {
    setFailed(false);
    work().catch(() => setFailed(true));
  };
  const save = async (round: RecordOf<'round'>) => {
    // The writer of tables is fetched with the first table.
    const { filledBenchTable } = await import('../../drafts/check-table.ts');
    const { askedOf } = await import('../../drafts/shop-table.ts');
    const { blueprint, name } = round.body;
    const own = review.pairs.filter((pair) => pair.round === round.revision.id);
    const text = filledBenchTable(
      own.map(({ code }) => code),
      askedOf(blueprint, review.project.brief.limits),
      lastGauges(
        records['bench-check'].filter(({ body }) => body.project === review.project.id),
        new Set(own.map(({ id }) => id)),
        session.value?.member ?? null,
      ),
    );
    await sendFile(words.tableName(name), new TextEncoder().encode(text));
  };
  const saveEmpty = async () => {
    const { emptyBenchTable } = await import('../../drafts/check-table.ts');
    await sendFile('bench-checks.csv', new TextEncoder().encode(emptyBenchTable()));
  };
  const rounds = records.round
    .filter(({ body }) => body.project === review.project.id)
    .sort((a, b) => b.body.order - a.body.order);
  return (
    <Unfold label={words.shopTables}>
      {() => (
        <div class="stack">
          <p class="soft small">{words.tableHint}</p>
          {rounds.map((round) => (
            <div class="row" key={round.revision.id}>
              <Button onClick={() => doing(() => save(round))}>
                {words.saveTable(round.body.name)}
              </Button>
              <LinkButton
                kind="quiet"
                href={links.place('wear', 'checks', 'paper', round.revision.id)}
              >
                {words.paperTable(round.body.name)}
              </LinkButton>
            </div>
          ))}
          <div class="row">
            <Button kind="quiet" onClick={() => doing(saveEmpty)}>
              {words.template}
            </Button>
          </div>
          {failed && (
            <Notice tone="danger" live>
              {d().trouble}
            </Notice>
          )}
        </div>
      )}
    </Unfold>
  );
};
