/** A new bench check, written down. */
import { useLocation } from 'preact-iso';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { p } from '../../words/index.ts';
import { CheckForm } from '../bench/check-form.tsx';
import type { PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { NEW } from '../start/guide.ts';

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
        headline={review.pairs.length === 0 ? words.newCheck.noPair : words.newCheck.headline}
        actions={
          review.pairs.length > 1 && (
            <LinkButton href={links.place('wear', 'checks', 'table')}>
              {words.checkTable.open}
            </LinkButton>
          )
        }
      />
      {review.pairs.length === 0 ? (
        <div class="row">
          <LinkButton href={links.place('pairs', NEW)}>{p().pairs.add}</LinkButton>
        </div>
      ) : (
        <div class="paper">
          <CheckForm
            records={records}
            review={review}
            close={(saved) => route(links.check(saved))}
          />
        </div>
      )}
    </>
  );
};
