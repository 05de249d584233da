/** What shows a finding: its counts as they were frozen, and the records behind them. */
import type { Evidence, Foot } from '../../../core/records/index.ts';
import { formatDate } from '../../parts/format.ts';
import { SaidLines } from '../../parts/said-lines.tsx';
import { d, halves, p, terms } from '../../words/index.ts';
import { findingInWords } from '../../words/say-finding.ts';
import { placeName } from '../../words/say-place.ts';
import { namesIn, useWork } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { linksOf } from '../frame/route.ts';
import { speakerOf } from '../parts/speaker.ts';
import type { FindingProps } from './finding-props.ts';

/** Of more runs only the latest are named; the zone's page has all. */
const MOST_RUNS = 6;
/** Reports of every round are asked for, and those of the finding's own are kept. */
const MOST_ASKED = 500;

export const Shows = (props: FindingProps) => {
  const { finding } = props;
  const { body } = finding;
  const { evidence } = body;
  const words = p().changes;
  const speaker = speakerOf(props);
  const said = findingInWords(body, speaker, speaker.round, formatDate);
  return (
    <section class="paper" aria-label={words.shows}>
      <h2>{words.shows}</h2>
      {body.kind && body.zone && (
        <p>{p().frame.feltTitle(terms().kinds[body.kind].name, terms().zones[body.zone].name)}</p>
      )}
      {said.source !== null && <p class="soft">{said.source}</p>}
      {evidence && <Counts {...props} evidence={evidence} />}
      {said.evidence ? (
        <HowSure title={words.frozen(formatDate(evidence?.until ?? ''))}>
          <SaidLines {...said.evidence} />
        </HowSure>
      ) : (
        <p class="soft">{words.noEvidence}</p>
      )}
      <Behind {...props} />
    </section>
  );
};

/** The counts, in words that need no method. */
const Counts = (props: FindingProps & { readonly evidence: Evidence }) => {
  const { evidence } = props;
  const { complaint, place } = evidence;
  const words = p().changes;
  const own = evidence.own ?? [];
  return (
    <>
      {complaint && (
        <p>
          {words.counts(
            complaint.testersOnce,
            complaint.askedTesters,
            complaint.runs,
            complaint.askedRuns,
          )}
          {halves(['', words.onFoot(complaint.left, complaint.right)])}
        </p>
      )}
      {place && <p>{placeName(place, speakerOf(props))}</p>}
      {evidence.comfort && <p>{terms().attributes[evidence.comfort.attribute].name}</p>}
      {evidence.twoSided && <p>{terms().twoSided[evidence.twoSided.attribute].name}</p>}
      {own.length > 0 && (
        <>
          <p class="soft small">{words.ownWords}</p>
          <ul lang={evidence.language}>
            {own.map((line, at) => (
              <li key={at}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
};

/** The records behind it: zone and runs of a complaint, the pair of a reading, the curves of wear, comfort. */
const Behind = (props: FindingProps) => {
  const { finding, review, records } = props;
  const { kind, zone, evidence, source, damage } = finding.body;
  const broken = records['damage-report'].find(({ revision }) => revision.id === damage);
  const words = p().changes;
  const links = linksOf(review.project.id);
  const measured = records.pair.find(
    ({ body }) => body.project === review.project.id && body.code === evidence?.reading?.pair,
  );
  return (
    <ul class="plain-list">
      {kind && zone && (
        <>
          <li>
            <a href={links.zone(sideOf(evidence), zone)}>
              {words.zonePage(terms().zones[zone].name)}
            </a>
          </li>
          <Runs {...props} zone={zone} kind={kind} foot={sideOf(evidence)} />
        </>
      )}
      {broken && (
        <li>
          {words.damage.caution}{' '}
          <a href={links.damage(broken.revision.id)}>{words.damage.report}</a>
        </li>
      )}
      {measured && (
        <li>
          <a href={links.pair(measured.revision.id)}>{words.pairPage(measured.body.code)}</a>
        </li>
      )}
      {(source === 'wear' || evidence?.wear) && (
        <li>
          <a href={links.place('wear')}>{words.wearPage}</a>
        </li>
      )}
      {(source === 'comfort' || evidence?.comfort || evidence?.twoSided) && (
        <li>
          <a href={links.place('shoe', 'comfort')}>{words.comfortPage}</a>
        </li>
      )}
    </ul>
  );
};

/** The foot with more reports. */
const sideOf = (evidence: Evidence | undefined): Foot =>
  (evidence?.complaint?.right ?? 0) > (evidence?.complaint?.left ?? 0) ? 'right' : 'left';

const Runs = (
  props: FindingProps & {
    readonly zone: NonNullable<FindingProps['finding']['body']['zone']>;
    readonly kind: NonNullable<FindingProps['finding']['body']['kind']>;
    readonly foot: Foot;
  },
) => {
  const { finding, review, records, zone, kind, foot } = props;
  const { round } = finding.body;
  const felt = useWork(
    (desk) => desk.zone(review.project.id, { foot, zone, kind, testers: 0, reports: MOST_ASKED }),
    records,
    [foot, zone, kind],
  );
  const behind = felt?.look.reports.filter((one) => one.round === round).slice(0, MOST_RUNS) ?? [];
  if (behind.length === 0) return null;
  const links = linksOf(review.project.id);
  const names = namesIn(review, records);
  return (
    <li>
      {p().changes.runsBehind}
      <ul class="runs-behind">
        {behind.map(({ run, tester, atMs }) => (
          <li key={run}>
            <a href={links.run(run)}>
              {d().joined.clauses([names.tester(tester), formatDate(atMs)])}
            </a>
          </li>
        ))}
      </ul>
    </li>
  );
};
