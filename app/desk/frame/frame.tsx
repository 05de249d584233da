/** The bar over every place of a project: all shoes, this one, its places, and of which pairs the figures speak. */
import type { ComponentChildren } from 'preact';
import type { ReviewSummary } from '../../../core/review/index.ts';
import { isOutOfTolerance } from '../../../core/review/index.ts';
import { useFollowSvgLink } from '../../parts/follow-svg-link.ts';
import { formatDate } from '../../parts/format.ts';
import { d, p } from '../../words/index.ts';
import { readInTolerance } from '../desk-state.ts';
import { SearchBox } from '../search/search-box.tsx';
import type { DeskRecords } from '../worker/desk-work.ts';
import { addressOf, tabOf, tabs, type Place } from './route.ts';
import './frame.css';
import './place.css';
import './stamp.css';
import './how-sure.css';
import './picture.css';

const Mark = () => (
  <svg class="frame-mark" viewBox="0 0 24 24" aria-hidden="true">
    <path class="frame-mark-sheet" d="M3 3h18v18H3z" />
    <path class="frame-mark-notch" d="M9 3h6l-3 5z" />
    <path class="frame-mark-stitch" d="M6 16h12" />
  </svg>
);

/** Whether the pairs out of tolerance count: shown where there are any. */
const WhichPairs = ({ review }: { readonly review: ReviewSummary }) => {
  const { id } = review.project;
  const isOn = readInTolerance.value === id;
  const out = review.pairs.filter(({ outOfTolerance }) => isOutOfTolerance(outOfTolerance));
  if (!isOn && out.length === 0) return null;
  return (
    <select
      class="which-pairs"
      aria-label={d().blueprint.only}
      value={isOn ? 'in' : 'all'}
      onChange={(event) => (readInTolerance.value = event.currentTarget.value === 'in' ? id : null)}
    >
      <option value="all">{p().frame.allPairs}</option>
      <option value="in">{p().frame.inTolerance}</option>
    </select>
  );
};

/** The shoes of the group, to be found by name. */
const shoesOf = (records: DeskRecords) =>
  records.project.map(({ revision, body }) => ({
    name: body.name,
    href: addressOf(revision.id, 'sheet'),
  }));

export const ProjectFrame = (props: {
  readonly records: DeskRecords;
  readonly review: ReviewSummary;
  readonly place: Place;
  readonly children: ComponentChildren;
}) => {
  const { records, review, place, children } = props;
  const words = p().frame;
  const { id, name } = review.project;
  return (
    <div class="frame">
      <header class="frame-bar">
        <a class="frame-home" href="/desk">
          <Mark />
          <span>{words.allShoes}</span>
        </a>
        <b class="frame-name">{name}</b>
        <nav class="frame-tabs" aria-label={name}>
          {tabs.map((tab) => (
            <a
              key={tab}
              href={addressOf(id, tab)}
              {...(tab === tabOf(place) && { 'aria-current': 'page' as const })}
            >
              {words.places[tab]}
            </a>
          ))}
        </nav>
        <SearchBox project={id} shoes={shoesOf(records)} />
        <span class="frame-as-of">
          {words.asOf(formatDate(review.nowMs))}
          <WhichPairs review={review} />
        </span>
      </header>
      <main class="place" onClick={useFollowSvgLink()}>
        {children}
      </main>
    </div>
  );
};

/** The same frame over what belongs to no project. */
export const GroupFrame = (props: {
  readonly records: DeskRecords;
  readonly name: string;
  readonly children: ComponentChildren;
}) => (
  <div class="frame">
    <header class="frame-bar">
      <a class="frame-home" href="/desk">
        <Mark />
        <span>{p().frame.allShoes}</span>
      </a>
      <b class="frame-name">{props.name}</b>
      <SearchBox project={null} shoes={shoesOf(props.records)} />
      <a class="frame-as-of" href="/">
        {d().phone}
      </a>
    </header>
    <main class="place" onClick={useFollowSvgLink()}>
      {props.children}
    </main>
  </div>
);
