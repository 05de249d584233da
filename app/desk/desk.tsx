/** The lead's desk: the frame, and in it the place that the address names. */
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../core/records/index.ts';
import { LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { session } from '../parts/state.ts';
import { d, p, t } from '../words/index.ts';
import { useDeskRecords, useReview, useWork, workTrouble } from './desk-state.ts';
import { GroupFrame, ProjectFrame } from './frame/frame.tsx';
import { PlaceHead } from './frame/place.tsx';
import { routeOf, type Route } from './frame/route.ts';
import { Group } from './group/group.tsx';
import { screens } from './places.ts';
import { NewShoe } from './rounds/new-shoe.tsx';
import { InTolerance } from './frame/in-tolerance.tsx';
import { Shoes } from './shoes/shoes.tsx';
import { GuideContext } from './start/guide.ts';
import { StartStrip } from './start/start-strip.tsx';
import { Unread } from './unread/unread.tsx';
import type { DeskRecords } from './worker/desk-work.ts';
import '../parts/charts/charts.css';
import '../parts/foot-map/foot-map.css';
import './desk.css';
import './print.css';

/** Has the worker think ahead of the other places, after the one that is shown; draws nothing. */
const Prepare = ({
  records,
  project,
}: {
  readonly records: DeskRecords;
  readonly project: RecordId;
}) => {
  useWork((desk) => desk.prepare(project), records, [project]);
  return null;
};

const ProjectDesk = (props: {
  readonly records: DeskRecords;
  readonly route: Extract<Route, { at: 'project' }>;
}) => {
  const { records, route } = props;
  const answer = useReview(records, route.project);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { review, start } = answer;
  if (!review)
    return (
      <GroupFrame records={records} name={d().title}>
        <PlaceHead headline={t().notFound} />
      </GroupFrame>
    );
  const Screen = screens[route.place];
  return (
    <ProjectFrame records={records} review={review} place={route.place}>
      <Unread records={records} />
      <InTolerance records={records} review={review} />
      {start && route.place !== 'sheet' && <StartStrip {...route} start={start} />}
      <GuideContext.Provider value={{ project: route.project, start }}>
        <Screen
          key={`${route.place}/${route.rest.join('/')}`}
          records={records}
          review={review}
          rest={route.rest}
        />
      </GuideContext.Provider>
      <Prepare records={records} project={route.project} />
    </ProjectFrame>
  );
};

const Place = ({ records, route }: { readonly records: DeskRecords; readonly route: Route }) => {
  switch (route.at) {
    case 'shoes':
      return (
        <GroupFrame records={records} name={d().title}>
          <Unread records={records} />
          <Shoes records={records} />
        </GroupFrame>
      );
    case 'new':
      return (
        <GroupFrame records={records} name={p().shoes.add}>
          <NewShoe key={route.like} records={records} route={route} />
        </GroupFrame>
      );
    case 'group':
      return (
        <GroupFrame records={records} name={d().groupTitle}>
          <PlaceHead headline={d().groupTitle} />
          <Group records={records} />
        </GroupFrame>
      );
    case 'project':
      return <ProjectDesk key={route.project} records={records} route={route} />;
  }
};

export const Desk = () => {
  const { path } = useLocation();
  const records = useDeskRecords();
  if (session.value?.role !== 'lead')
    return (
      <Page title={d().title} back={{ href: '/', label: t().back }}>
        <p>{d().onlyLeads}</p>
        <LinkButton href="/">{t().toToday}</LinkButton>
      </Page>
    );
  if (workTrouble() !== null)
    return (
      <Page title={d().title} back={{ href: '/', label: t().back }}>
        <Notice tone="danger" live>
          {d().workTrouble}
        </Notice>
      </Page>
    );
  if (records === null) return <p class="soft">{t().loading}</p>;
  return <Place records={records} route={routeOf(path)} />;
};
