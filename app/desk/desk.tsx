/** The lead's desk: which of its screens stands at which address, and the frame around them. */
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../core/records/index.ts';
import { LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { formatDistance } from '../parts/format.ts';
import { session } from '../parts/state.ts';
import { d, t } from '../words/index.ts';
import { Bench } from './bench/bench.tsx';
import { Changes } from './changes/changes.tsx';
import { Comfort } from './comfort.tsx';
import { Complaints } from './complaints/complaints.tsx';
import { useDeskRecords, useReview, workTrouble } from './desk-state.ts';
import { InTolerance } from './in-tolerance.tsx';
import { FindingsBoard } from './findings/findings.tsx';
import { Group } from './group.tsx';
import { Overview } from './overview.tsx';
import { Pairs } from './pairs.tsx';
import { Plan } from './plan/plan.tsx';
import { ProjectForm } from './project-form.tsx';
import { ReportPage } from './report/report-page.tsx';
import { Rounds } from './rounds.tsx';
import { Testers } from './testers.tsx';
import { Unread } from './unread.tsx';
import { Verdict } from './verdict.tsx';
import { Waiting } from './waiting/waiting.tsx';
import type { DeskRecords } from './worker/desk-work.ts';
import '../parts/charts/charts.css';
import '../parts/foot-map/foot-map.css';
import './desk.css';

const tabs = {
  overview: Overview,
  pairs: Pairs,
  complaints: Complaints,
  comfort: Comfort,
  bench: Bench,
  verdict: Verdict,
  changes: Changes,
  findings: FindingsBoard,
  report: ReportPage,
  rounds: Rounds,
  testers: Testers,
} as const;
type Tab = keyof typeof tabs;

/** Screens of a project that are reached from a tab, each with the tab it belongs to. */
const furtherScreens = { plan: Plan, waiting: Waiting } as const;
type Further = keyof typeof furtherScreens;
const tabOf: Readonly<Record<Further, Tab>> = { plan: 'testers', waiting: 'overview' };

const Projects = ({ records }: { records: DeskRecords }) => (
  <>
    <Unread records={records} />
    {records.project.length === 0 ? (
      <p>{d().noProjects}</p>
    ) : (
      <ul class="plain-list stack">
        {records.project.map(({ body, revision }) => (
          <li key={revision.id}>
            <a class="button button-big" href={`/desk/${revision.id}`}>
              {body.name}
            </a>
          </li>
        ))}
      </ul>
    )}
    <div class="row">
      <LinkButton href="/desk/new" kind={records.project.length === 0 ? 'main' : 'plain'}>
        {d().newProject}
      </LinkButton>
      <LinkButton href="/desk/group">{d().groupTitle}</LinkButton>
      <LinkButton href="/settings" kind="quiet">
        {t().settings.title}
      </LinkButton>
    </div>
  </>
);

const isFurther = (name: string | undefined): name is Further =>
  name !== undefined && name in furtherScreens;

const ProjectDesk = (props: { records: DeskRecords; project: RecordId; screen: Tab | Further }) => {
  const answer = useReview(props.records, props.project);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { review } = answer;
  if (!review) return <p>{t().notFound}</p>;
  const { pairs, testers, runs, distanceM } = review.size;
  const { screen } = props;
  const Screen = isFurther(screen) ? furtherScreens[screen] : tabs[screen];
  const current = isFurther(screen) ? tabOf[screen] : screen;
  return (
    <>
      <p class="soft">
        {d().evidence(pairs, review.groupTesters, testers, runs, formatDistance(distanceM))}
      </p>
      <nav class="tabs" aria-label={review.project.name}>
        {(Object.keys(tabs) as Tab[]).map((tab) => (
          <a
            key={tab}
            href={`/desk/${props.project}/${tab}`}
            {...(tab === current && { 'aria-current': 'page' as const })}
          >
            {d().tabs[tab]}
          </a>
        ))}
      </nav>
      <Unread records={props.records} />
      <InTolerance records={props.records} review={review} />
      <Screen records={props.records} review={review} />
    </>
  );
};

export const Desk = () => {
  const { path } = useLocation();
  const records = useDeskRecords();
  const [, , place, tab] = path.split('/');
  const isTab = (name: string | undefined): name is Tab => name !== undefined && name in tabs;
  const project = records?.project.find(({ revision }) => revision.id === place);
  const title = project
    ? project.body.name
    : place === 'group'
      ? d().groupTitle
      : place === 'new'
        ? d().newProject
        : d().title;
  const back =
    place === undefined || place === ''
      ? { href: '/', label: d().phone }
      : tab === 'brief'
        ? { href: `/desk/${place}/rounds`, label: t().back }
        : isFurther(tab)
          ? { href: `/desk/${place}/${tabOf[tab]}`, label: t().back }
          : { href: '/desk', label: t().back };
  return (
    <Page title={title} wide back={back}>
      {session.value?.role !== 'lead' ? (
        <>
          <p>{d().onlyLeads}</p>
          <LinkButton href="/">{t().toToday}</LinkButton>
        </>
      ) : workTrouble() !== null ? (
        <Notice tone="danger" live>
          {d().workTrouble}
        </Notice>
      ) : records === null ? (
        <p class="soft">{t().loading}</p>
      ) : place === undefined || place === '' ? (
        <Projects records={records} />
      ) : place === 'new' ? (
        <ProjectForm />
      ) : place === 'group' ? (
        <Group records={records} />
      ) : tab === 'brief' && project ? (
        <ProjectForm project={project} />
      ) : (
        <ProjectDesk
          key={place}
          records={records}
          project={place as RecordId}
          screen={isTab(tab) || isFurther(tab) ? tab : 'overview'}
        />
      )}
    </Page>
  );
};
