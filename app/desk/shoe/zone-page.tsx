/** One zone of one shoe: who felt what there, when, in which words, and one press to a finding. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { ComplaintKind } from '../../../core/foot/index.ts';
import type { ZoneLook } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatNumber } from '../../parts/format.ts';
import { p, t, terms } from '../../words/index.ts';
import { namesIn, useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { TalkSection } from '../ask/talk.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { SureStamp } from '../frame/stamp.tsx';
import { surenessOfClaim } from './complaints-part.tsx';
import { FindingForm } from './finding-form.tsx';
import { wordsAddress } from '../words/words-address.ts';
import { kindToShow, zoneAddress, type ZoneAddress } from './zone-address.ts';
import { ZoneAside } from './zone-aside.tsx';
import { roundsWith, ZoneProof, type RoundCell } from './zone-proof.tsx';
import { ZoneReports } from './zone-reports.tsx';
import { ZoneStrip } from './zone-strip.tsx';

/** So many testers and reports at first. */
const FIRST = { testers: 12, reports: 8 };

/** The round that tells most: proved, the latest of several; else the latest with a report. */
const tellingRound = (cells: readonly RoundCell[]): RoundCell | undefined =>
  cells.findLast(({ cell }) => cell.word === 'recurs-across-testers') ??
  cells.findLast(({ cell }) => cell.word === 'recurs-for-one-tester') ??
  cells.at(-1);

/** From so far on the foot and the size of the pair are told beside each other: a size in steps of 5 mm. */
const OFF_MM = 5;

/** A pair that makes half of a round's reports, and its size beside the foot of who wore it. */
const PairRemark = (props: TabProps & { readonly look: ZoneLook }) => {
  const { review, records, look } = props;
  const { pairShare } = look;
  if (!pairShare) return null;
  const words = p().shoe.zone;
  const names = namesIn(review, records);
  const { pair, round, runs, of, tester, sizeMm, footMm } = pairShare;
  const mm = (value: number) => `${formatNumber(value, 1)} mm`;
  return (
    <>
      {' '}
      <a href={linksOf(review.project.id).pair(pair)}>
        {words.pairShare(names.code(pair), runs, of, names.round(round))}
      </a>
      {footMm !== null &&
        Math.abs(footMm - sizeMm) >= OFF_MM &&
        ` ${words.sizeAndFoot(names.tester(tester), mm(sizeMm), mm(footMm))}`}
    </>
  );
};

const Circumstances = (
  props: TabProps & { readonly look: ZoneLook; readonly telling: RoundCell | undefined },
) => {
  const { review, records, telling, look } = props;
  const words = p().shoe.zone;
  const round = telling?.round.id ?? null;
  const { zone, kind } = look;
  const closer = useWork(
    async (desk) =>
      round && kind ? desk.zoneProof(review.project.id, round, { zone, kind }) : null,
    records,
    [round, zone, kind],
  );
  const trend = closer?.trend.word;
  return (
    <div class="zone-circumstances">
      <p>
        {closer?.onset && words.onset(roundDistance(closer.onset.medianM))}{' '}
        {(trend === 'grows' || trend === 'fades') && words.trend[trend]}
        <PairRemark {...props} />
      </p>
      {telling && closer && (
        <FindingForm {...props} round={telling.round} cell={telling.cell} look={closer} />
      )}
    </div>
  );
};

/** What was asked about the zone; whoever told of it latest can be asked first, about the pair that they told it of. */
const ZoneTalk = (props: TabProps & { readonly look: ZoneLook }) => {
  const { records, review, look } = props;
  const { zone, kind, foot, reports } = look;
  return (
    <TalkSection
      records={records}
      review={review}
      subject={{ zone }}
      label={p().ask.askZone}
      asking={{
        testers: [...new Set(reports.map(({ tester }) => tester))],
        about: (tester) => {
          const pair = reports.find((one) => one.tester === tester)?.pair;
          return { zone, foot, ...(pair && { pair }), ...(kind && { complaint: kind }) };
        },
        run: null,
      }}
    />
  );
};

const Zone = (
  props: TabProps & { readonly at: ZoneAddress; readonly kind: ComplaintKind | null },
) => {
  const { review, records, at, kind } = props;
  const words = p().shoe;
  const { id } = review.project;
  const [most, setMost] = useState(FIRST);
  const answer = useWork((desk) => desk.zone(id, { ...at, kind, ...most }), records, [
    at.foot,
    at.zone,
    kind,
    most.testers,
    most.reports,
  ]);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { headline, look } = answer;
  const links = linksOf(id);
  const sure = surenessOfClaim(headline);
  const cells = kind === null ? [] : roundsWith(review.rounds, { zone: at.zone, kind });
  const telling = tellingRound(cells);
  const view = at.zone.startsWith('P') ? 'sole' : 'upper';
  const zoneName = terms().zones[at.zone].name;
  const sum = (of: 'left' | 'right') => look.rounds.reduce((all, one) => all + one[of], 0);
  const felt =
    kind === null
      ? p().frame.feltTitle(words.anything, zoneName)
      : p().frame.feltTitle(terms().kinds[kind].name, zoneName);
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.shoe, href: links.place('shoe') },
          { words: words.view[at.foot][view] },
          { words: zoneName },
        ]}
        headline={words.zone.headline(headline, sayOf(props), zoneName)}
        sub={[
          words.zone.sub(felt, look.allReports, look.tellers),
          words.zone.feet(sum('left'), sum('right')),
        ].join(words.between)}
        stamp={sure && <SureStamp word={sure} />}
        actions={
          <Button kind="quiet" onClick={() => window.print()}>
            {words.print}
          </Button>
        }
      />
      <div class="zone-page">
        <ZoneAside {...props} look={look} />
        <div class="zone-main">
          <ZoneStrip {...props} look={look} />
          {look.allTesters > look.rows.length && (
            <Button kind="quiet" onClick={() => setMost({ ...most, testers: look.allTesters })}>
              {words.zone.allTesters(look.allTesters)}
            </Button>
          )}
          <Circumstances {...props} look={look} telling={telling} />
          <ZoneReports
            {...props}
            look={look}
            onAll={() => setMost({ ...most, reports: look.allReports })}
          />
          <ZoneTalk {...props} look={look} />
          <p class="no-print">
            <a href={wordsAddress(links.place('words'), { zone: at.zone })}>{p().words.ofZone}</a>
          </p>
          {telling && (
            <HowSure>
              <ZoneProof {...props} cells={cells} first={telling.round.id} />
            </HowSure>
          )}
        </div>
      </div>
    </>
  );
};

export const ZonePage = (props: PlaceProps) => {
  const { query } = useLocation();
  const at = zoneAddress(props.rest);
  if (!at) return <PlaceHead headline={p().shoe.zone.unknown} />;
  const cells = props.review.rounds.flatMap(({ complaints }) => complaints.cells);
  const kind = kindToShow(query['kind'], at.zone, cells);
  return <Zone key={kind} {...props} at={at} kind={kind} />;
};
