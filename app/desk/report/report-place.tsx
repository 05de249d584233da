/** The report of a round: has it gone out? */
import { reportHeadline } from '../../../core/headlines/index.ts';
import { p } from '../../words/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { ReportPage } from './report-page.tsx';
import './report-place.css';

export const ReportPlace = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().report;
  const sent = records.report
    .map(({ body }) => body)
    .filter(({ project }) => project === review.project.id);
  return (
    <>
      {/* On paper the report stands alone. */}
      <div class="no-print">
        <PlaceHead
          crumbs={[
            { words: p().frame.places.verdict, href: linksOf(review.project.id).place('verdict') },
          ]}
          headline={words.headline(reportHeadline(review, sent), sayOf(props))}
          sub={words.sub}
        />
      </div>
      <div class="stack report-paper">
        <ReportPage {...props} />
      </div>
    </>
  );
};
