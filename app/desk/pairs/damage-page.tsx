/** One report of damage: what was said and shown, where it is, what was answered, and how the report read before. */
import { damageHeadline } from '../../../core/headlines/index.ts';
import {
  damages as kinds,
  stampParts,
  type DamageReport,
  type RecordId,
} from '../../../core/records/index.ts';
import { zones, type FootView } from '../../../core/foot/index.ts';
import { zoneOfDamageAt } from '../../../core/review/index.ts';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { ShoeDrawing } from '../../parts/foot-map/shoe-drawing.tsx';
import { useStored, store } from '../../parts/state.ts';
import { clauses, p, t, terms } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { TalkSection } from '../ask/talk.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { DamageItem } from '../people/pain-answers.tsx';

type Report = TabProps['records']['damage-report'][number];

/** What an earlier version said, in one line. */
const versionInWords = (body: Readonly<Record<string, unknown>>): string => {
  const { what, foot, words } = body as Partial<DamageReport>;
  return clauses(
    ...[
      what && kinds.includes(what) ? terms().damages[what] : '',
      foot ? p().pairs.damage.shoe[foot] : '',
      words ? p().pairs.page.quoted(words) : '',
    ].filter((one) => one !== ''),
  );
};

const Versions = ({ id }: { readonly id: RecordId }) => {
  const words = p().pairs.damage;
  const history = useStored(() => store.history(id), ['damage-report'], [id]);
  const earlier = (history?.older ?? []).flatMap(({ body, stamp, hash }) =>
    body === null ? [] : [{ body, stamp, hash }],
  );
  return (
    <section aria-label={words.versions}>
      <h2>{words.versions}</h2>
      {earlier.length === 0 ? (
        <p class="soft">{words.noVersions}</p>
      ) : (
        <ul class="plain-list">
          {earlier.map(({ body, stamp, hash }) => (
            <li key={hash}>
              {words.version(formatDateTime(stampParts(stamp).ms), versionInWords(body))}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

const Where = ({ report }: { readonly report: Report }) => {
  const words = p().pairs.damage;
  const zone = zoneOfDamageAt(report.body.what);
  const view: FootView = zones[zone].view;
  const foot = report.body.foot ?? 'left';
  return (
    <figure class="damage-where">
      <figcaption>
        <b>{words.where}</b>
        <br />
        <span class="soft small">
          {report.body.foot ? words.shoe[report.body.foot] : p().sheet[foot][view]}
        </span>
      </figcaption>
      <ShoeDrawing
        view={view}
        foot={foot}
        zones={
          new Map([[zone, { level: 3 as const, marked: true, says: terms().zones[zone].name }]])
        }
        label={p().sheet[foot][view]}
      />
    </figure>
  );
};

export const DamagePage = (props: TabProps & { readonly damage: RecordId }) => {
  const { records, review, damage } = props;
  const words = p().pairs.damage;
  const links = linksOf(review.project.id);
  const names = namesIn(review, records);
  const report = records['damage-report'].find(({ revision }) => revision.id === damage);
  const one = review.damages.find(({ id }) => id === damage);
  const answer = useWork(
    async (desk) => ({
      page: one ? (await desk.pairPage(review.project.id, one.pair)).page : null,
    }),
    records,
    [review.project.id, one?.pair],
  );
  const crumbs = [{ words: p().frame.places.pairs, href: links.place('pairs') }];
  if (!report || !one) return <PlaceHead headline={words.notFound} crumbs={crumbs} />;
  if (!answer) return <p class="soft">{t().loading}</p>;
  const at = answer.page?.look.damages.find((each) => each.damage === damage);
  const code = names.code(one.pair);
  return (
    <>
      <PlaceHead
        crumbs={[
          ...crumbs,
          { words: code, href: links.pair(one.pair) },
          { words: words.crumb(formatDate(one.at)) },
        ]}
        headline={words[damageHeadline(one).case](code, terms().damages[one.what])}
        sub={
          <>
            <a href={links.tester(one.tester)}>{names.tester(one.tester)}</a>{' '}
            {words.sub(formatDate(one.at), at ? roundDistance(at.m) : '–')}
          </>
        }
        stamp={one.stands ? <Mark tone="danger">{p().frame.doNotRun}</Mark> : undefined}
      />
      <div class="page-columns">
        <div class="stack">
          <section class="paper" aria-label={words.report}>
            <ul class="plain-list">
              <DamageItem {...props} of={one} />
            </ul>
          </section>
          <TalkSection
            records={records}
            review={review}
            subject={{ record: damage }}
            isHere
            label={p().ask.askDamage(names.tester(one.tester))}
            asking={{
              testers: [one.tester],
              about: () => ({ record: { id: damage, kind: 'damage-report' }, pair: one.pair }),
              run: null,
            }}
          />
          <Versions id={damage} />
        </div>
        <Where report={report} />
      </div>
    </>
  );
};
