/** What showed while walking: whether heels stay down, and where it presses, rubs or gapes. */
import { heelCounts, type FeetLooked } from '../../../core/fitting/index.ts';
import { groupBy } from '../../../core/statistics/index.ts';
import { listed, p, t, terms } from '../../words/index.ts';
import { fitterName } from './names.ts';
import type { SessionProps } from './session-props.ts';

export const WalkingPart = (props: SessionProps & { readonly foot: FeetLooked }) => {
  const { facts, foot } = props;
  const words = p().fitting;
  const heel = heelCounts(facts.fitters, foot);
  const asked = facts.fitters.filter(({ best }) => best.body.spots !== undefined);
  const said = asked.flatMap((one) =>
    (one.best.body.spots ?? []).map((spot) => ({ ...spot, who: fitterName(one, props) })),
  );
  const shown = said.filter((one) => foot === 'both' || one.foot === foot);
  const spots = [...groupBy(shown, (one) => `${one.foot} ${one.zone} ${one.what}`).values()].sort(
    (a, b) => b.length - a.length,
  );
  return (
    <section class="paper" aria-label={words.walking}>
      <h2>{words.walking}</h2>
      <p>{words.heel(heel.lifts, heel.slipsOut, heel.answered)}</p>
      {spots.length === 0 ? (
        <p class="soft">{asked.length === 0 ? words.spotsOpen : words.noSpots}</p>
      ) : (
        <ul>
          {spots.map((some) => {
            const [first] = some;
            if (!first) return null;
            return (
              <li key={`${first.foot} ${first.zone} ${first.what}`}>
                {words.spot(
                  t().foot[first.foot],
                  terms().zones[first.zone].name,
                  terms().fitSpots[first.what],
                  listed(some.map(({ who }) => who)),
                )}
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
};
