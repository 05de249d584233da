/** Complaints: what is felt most, in one sentence; the shoe of each round; the list that proves it. */
import { sureness, type Sureness } from '../../../core/complaints/index.ts';
import { sureIn, type ShoeHeadline } from '../../../core/headlines/index.ts';
import type { ShoeLook } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { p, t } from '../../words/index.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { sayOf } from '../frame/say.ts';
import { SureLegend, SureStamp } from '../frame/stamp.tsx';
import { ComplaintsProof } from './complaints-proof.tsx';
import { FeltList } from './felt-list.tsx';
import { Pains } from './pains.tsx';
import { RoundMaps } from './round-maps.tsx';
import { ShoeParts } from './shoe-parts.tsx';

/** The stamp that a headline may carry: how sure it is, where it claims that at all. */
export const surenessOfClaim = ({ claims }: Pick<ShoeHeadline, 'claims'>): Sureness | null =>
  sureness.find((word) => word === claims) ?? null;

/** Complaints that were clear in a round before the latest, and are not in it. */
const clearBefore = ({ latest, complaints }: ShoeLook) =>
  complaints.flatMap(({ zone, kind, surest, rounds }) => {
    const now = rounds.find(({ round }) => round === latest);
    const isNow = now && sureIn(now) === 'clear';
    return surest.word === 'recurs-across-testers' && !isNow
      ? [{ zone, kind, round: surest.round }]
      : [];
  });

const subOf = (props: TabProps, headline: ShoeHeadline, look: ShoeLook): string => {
  const words = p().shoe;
  const say = sayOf(props);
  const round = props.review.rounds.find(({ id }) => id === look.latest);
  if (!round) return '';
  const { asked } = round.complaints;
  const before = clearBefore(look);
  return [
    words.sub(round.name, asked.runs, asked.testers),
    ...(headline.case === 'watch' ? [words.nothingClear] : []),
    ...('more' in headline && headline.case === 'recurs' && headline.more > 0
      ? [words.moreClear(headline.more)]
      : []),
    ...(before.length > 0
      ? [
          words.clearBefore(
            say.list(before.map((one) => words.inRound(say.felt(one), say.round(one.round)))),
          ),
        ]
      : []),
  ].join(words.between);
};

export const ComplaintsPart = (props: TabProps) => {
  const { review, records } = props;
  const words = p().shoe;
  const { id } = review.project;
  const answer = useWork((desk) => desk.shoe(id), records, [id]);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { headline, look } = answer;
  const sure = surenessOfClaim(headline);
  const isClearSaid = look.complaints.some(({ rounds }) =>
    rounds.some((felt) => sureIn(felt) === 'clear'),
  );
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, sayOf(props))}
        sub={subOf(props, headline, look)}
        stamp={sure && <SureStamp word={sure} />}
        actions={
          <Button kind="quiet" onClick={() => window.print()}>
            {words.print}
          </Button>
        }
      />
      <ShoeParts project={id} at="complaints" />
      {isClearSaid && <SureLegend />}
      <Pains {...props} />
      {review.rounds.length > 0 && <RoundMaps {...props} />}
      {look.latest !== null && <FeltList {...props} complaints={look.complaints} />}
      <HowSure>
        <ComplaintsProof {...props} />
      </HowSure>
    </>
  );
};
