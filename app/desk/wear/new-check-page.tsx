/** A new bench check, written down. */
import { useLocation } from 'preact-iso';
import { p } from '../../words/index.ts';
import { CheckForm } from '../bench/check-form.tsx';
import type { PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';

export const NewCheckPage = ({ records, review }: PlaceProps) => {
  const words = p().wear;
  const links = linksOf(review.project.id);
  const { route } = useLocation();
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.wear, href: links.place('wear') },
          { words: words.checks.title, href: links.place('wear', 'checks') },
          { words: words.newCheck.crumb },
        ]}
        headline={words.newCheck.headline}
      />
      <div class="paper">
        <CheckForm records={records} review={review} close={(saved) => route(links.check(saved))} />
      </div>
    </>
  );
};
