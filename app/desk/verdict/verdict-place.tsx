/** The verdict: does the shoe do what its brief asks, and what would decide the rest? */
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { p, t } from '../../words/index.ts';
import { useWork, type PlaceProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { BesideLimits } from './beside.tsx';
import { VerdictFigures } from './figures.tsx';
import { VerdictGrid } from './verdict-grid.tsx';
import './verdict.css';

export const VerdictPlace = ({ review, records }: PlaceProps) => {
  const words = p().verdict;
  const { id, brief } = review.project;
  const links = linksOf(id);
  const state = useWork((desk) => desk.verdictState(id), records, [id]);
  const verdicts = useWork((desk) => desk.verdicts(id), records, [id]);
  // It takes longer than the verdicts, which are shown meanwhile.
  const influences = useWork((desk) => desk.influences(id), records, [id]);
  if (!state) return <p class="soft">{t().loading}</p>;
  const { headline, stamp, grid } = state;
  const say = sayOf({ review, records });
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, say)}
        stamp={grid.latest !== null && <Stamp word={stamp} />}
        sub={
          <>
            {words.sub(say.distance(brief.distanceM), grid.rounds.length)}
            {brief.limits.length === 0 && (
              <>
                {' '}
                {words.noLimits} <a href={links.place('brief')}>{words.setLimits}</a>
              </>
            )}
          </>
        }
        actions={
          <>
            <Button onClick={() => window.print()}>{words.print}</Button>
            <LinkButton href={links.place('report')}>{words.report}</LinkButton>
          </>
        }
      />
      {grid.rounds.length > 0 && (
        <VerdictGrid records={records} review={review} grid={grid} influences={influences} />
      )}
      <BesideLimits records={records} review={review} latest={grid.latest} />
      {verdicts && verdicts.length > 0 && (
        <HowSure>
          <VerdictFigures
            records={records}
            review={review}
            verdicts={verdicts}
            influences={influences}
          />
        </HowSure>
      )}
    </>
  );
};
