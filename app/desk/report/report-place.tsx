import { d } from '../../words/index.ts';
import { ReportPage } from './report-page.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const ReportPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={d().tabs.report} />
    <ReportPage {...props} />
  </>
);
