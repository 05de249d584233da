/** The tables for the shop, a round each: to be saved, filled in and read back, or to be printed and written on. */
import { useState } from 'preact/hooks';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Unfold } from '../parts/form-parts.tsx';
import { roundsOf, saveEmptyTable, saveShopTable } from './save-shop-table.ts';

export const ShopTables = (props: TabProps) => {
  const { review } = props;
  const words = d().bench;
  const links = linksOf(review.project.id);
  const [failed, setFailed] = useState(false);
  const doing = (work: () => Promise<void>) => {
    setFailed(false);
    work().catch(() => setFailed(true));
  };
  const rounds = roundsOf(props);
  return (
    <Unfold label={words.shopTables}>
      {() => (
        <div class="stack">
          <p class="soft small">{words.tableHint}</p>
          {rounds.map((round) => (
            <div class="row" key={round.revision.id}>
              <Button onClick={() => doing(() => saveShopTable(props, round))}>
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
            <Button kind="quiet" onClick={() => doing(saveEmptyTable)}>
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
