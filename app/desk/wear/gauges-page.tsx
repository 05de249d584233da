/** How far can each gauge be trusted? */
import { gaugesHeadline } from '../../../core/headlines/index.ts';
import { p } from '../../words/index.ts';
import { Gauges } from '../bench/gauges.tsx';
import type { PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';

export const GaugesPage = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().wear;
  const say = sayOf(props);
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.wear, href: linksOf(review.project.id).place('wear') },
          { words: words.gauges },
        ]}
        headline={say.upper(words.gaugesPlace.headline(gaugesHeadline(review.gauges), say.list))}
        sub={words.gaugesPlace.sub}
      />
      <Gauges records={records} review={review} />
    </>
  );
};
