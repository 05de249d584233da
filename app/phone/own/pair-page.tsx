/** A pair in my hands: how far it has come, what the lead asks of me, how comfortable it was, and my runs in it. */
import type { RecordId } from '../../../core/records/index.ts';
import { fromMetres } from '../../../core/units/index.ts';
import { DistanceChart } from '../../parts/charts/distance-chart.tsx';
import { LinkButton, Page } from '../../parts/controls/controls.tsx';
import {
  formatDate,
  formatStart,
  formatDistance,
  formatNumber,
  formatSize,
  wholeDistance,
} from '../../parts/format.ts';
import { latePart } from '../../parts/late.tsx';
import { settings } from '../../parts/settings.ts';
import { session, useStored } from '../../parts/state.ts';
import { need, ownWords, t } from '../../words/index.ts';
import { CameOf } from '../heard/came-of.tsx';
import { heldPairs } from '../own-mileage.ts';
import { courseOf, type OwnRun } from './own-runs.ts';
import { PairShoe } from './pair-shoe.tsx';
import '../../parts/charts/charts.css';
import './own.css';

/** At most so many runs are listed; the rest stand under "My runs". */
const MOST_RUNS = 5;

const Course = ({ course }: { readonly course: readonly OwnRun[] }) => {
  const words = ownWords().pair;
  const { distance: unit } = settings.value;
  const points = course.flatMap(({ run, afterM }) => {
    const score = run.body.comfort?.overall;
    if (score === undefined) return [];
    const at = formatDistance(afterM);
    return [
      {
        x: fromMetres(afterM, unit),
        y: score,
        label: words.point(formatNumber(score, 0), at, formatDate(run.body.startedAt)),
      },
    ];
  });
  if (points.length < 2) return <p class="soft">{words.noCourse}</p>;
  return (
    <DistanceChart
      title={words.courseTitle}
      xTitle={words.x(unit)}
      yTitle={words.y}
      series={[{ name: words.courseTitle, points }]}
      yCovers={[0, 100]}
      formatX={(value) => formatNumber(value, 0)}
      formatY={(value) => formatNumber(value, 0)}
    />
  );
};

const Talk = latePart(async () => {
  const [{ PairTalk }] = await Promise.all([
    import('../talk/own-talk.tsx'),
    need('talk', 'glossary', 'entry'),
  ]);
  return PairTalk;
});

export const OwnPairPage = ({ pair: id }: { readonly pair: string }) => {
  const words = ownWords().pair;
  const member = session.value?.member;
  const found = useStored(
    async (from) => {
      const [pairs, handOuts, runs] = await Promise.all([
        from.list('pair'),
        from.list('hand-out'),
        from.list('run'),
      ]);
      const held = member
        ? heldPairs(member, pairs, handOuts, runs, Date.now()).find(
            ({ pair }) => pair.revision.id === id,
          )
        : undefined;
      return { held, project: held && (await from.get('project', held.pair.body.project)) };
    },
    ['pair', 'hand-out', 'run', 'project'],
    [id, member],
  );
  const back = { href: '/', label: t().back };
  if (found === null) return <p class="soft">{t().loading}</p>;
  const { held, project } = found;
  if (!held)
    return (
      <Page title={t().today.myPairs} back={back}>
        <p>{words.notYours}</p>
      </Page>
    );
  const { body } = held.pair;
  const target = project?.body.brief.distanceM;
  const done = formatDistance(held.distanceM);
  const whole = target === undefined ? '' : wholeDistance(target);
  const course = courseOf(held.ownRuns);
  const forTesters = project?.body.brief.forTesters;
  return (
    <Page
      title={words.title(body.code)}
      back={back}
      aside={<span class="soft">{t().today.size(formatSize(body.sizeMm))}</span>}
    >
      {target !== undefined && (
        <section class="own-pair-head">
          <PairShoe distanceM={held.distanceM} targetM={target} label={words.km(done, whole)} />
          <div class="stack">
            <p>{(held.distanceM > target ? words.over : words.km)(done, whole)}</p>
            <p class="soft small">{t().today.stitch}</p>
          </div>
        </section>
      )}
      {forTesters !== undefined && (
        <section class="sheet">
          <h2>{words.forTesters}</h2>
          <p class="own-lead-words">{forTesters}</p>
        </section>
      )}
      <section class="stack" aria-label={words.courseTitle}>
        <Course course={course} />
      </section>
      {member && <CameOf runs={held.ownRuns} tester={member} />}
      <section class="stack">
        <h2>{words.runs}</h2>
        {course.length === 0 ? (
          <p class="soft">{words.none}</p>
        ) : (
          <ul class="plain-list stack">
            {course
              .slice(-MOST_RUNS)
              .reverse()
              .map(({ run }) => (
                <li key={run.revision.id}>
                  <a href={`/run/${run.revision.id}`}>
                    {`${formatDistance(run.body.distanceM)} · ${formatStart(run.body)}`}
                  </a>
                </li>
              ))}
          </ul>
        )}
        <a class="button button-quiet" href="/runs">
          {words.allRuns}
        </a>
        <a class="button button-quiet" href={`/damage/${id}`}>
          {t().today.damage}
        </a>
      </section>
      <Talk pair={held.pair} />
      <div class="foot-bar">
        <LinkButton kind="main" big href={`/log/${id as RecordId}`}>
          {t().today.logRunIn(body.code)}
        </LinkButton>
      </div>
    </Page>
  );
};
