/** Wear, and what lies in it: the list of checks, one check, a new one, the shop's sheet, and the gauges. */
import type { RecordId } from '../../../core/records/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { CheckPage } from './check-page.tsx';
import { CheckTablePage } from './check-table-page.tsx';
import { ChecksPage } from './checks-page.tsx';
import { GaugesPage } from './gauges-page.tsx';
import { NewCheckPage } from './new-check-page.tsx';
import { ShopSheet } from './shop-sheet.tsx';
import { WearHome } from './wear-home.tsx';
import './wear.css';
import './checks.css';

export const WearPlace = (props: PlaceProps) => {
  const [within, id, round] = props.rest;
  if (within === 'gauges') return <GaugesPage {...props} />;
  if (within !== 'checks') return <WearHome {...props} />;
  if (id === undefined) return <ChecksPage {...props} />;
  if (id === 'paper' && round !== undefined)
    return <ShopSheet {...props} round={round as RecordId} />;
  if (id === 'table') return <CheckTablePage {...props} />;
  return id === 'new' ? (
    <NewCheckPage {...props} />
  ) : (
    <CheckPage {...props} check={id as RecordId} />
  );
};
