/** What the search found, as groups of lines, each with the page that it opens. */
import type { ComponentChildren } from 'preact';
import type { RecordId } from '../../../core/records/index.ts';
import type { Everything, FoundOf } from '../../../core/search/index.ts';
import { formatDate, formatDistance } from '../../parts/format.ts';
import { d, p } from '../../words/index.ts';
import { linksOf, tabs, type Links } from '../frame/route.ts';
import { MarkedText } from '../words/marked-text.tsx';
import { sourceLink } from '../words/source-link.ts';
import { wordsAddress } from '../words/words-address.ts';
import type { NamedPlace } from './places-found.ts';

export interface Result {
  readonly href: string;
  readonly says: ComponentChildren;
  /** Beside it, softer. */
  readonly more?: ComponentChildren;
}

export interface ResultGroup {
  readonly name: string;
  readonly results: readonly Result[];
  /** More than are shown; absent: all are. */
  readonly found?: number;
}

/** Every place of a project by name. */
export const placesOf = (project: RecordId): readonly NamedPlace[] => {
  const links = linksOf(project);
  const words = p();
  return [
    ...tabs.map((tab) => ({ name: words.frame.places[tab], href: links.place(tab) })),
    { name: words.sheet.editRounds, href: links.place('rounds') },
    { name: words.brief.title, href: links.place('brief') },
    { name: words.verdict.report, href: links.place('report') },
    { name: words.plan.name, href: links.place('plan') },
    { name: words.plan.slips.name, href: links.place('plan', 'slips') },
    { name: words.plan.invites.name, href: links.place('plan', 'invites') },
    { name: words.search.waiting, href: links.place('waiting') },
    { name: words.words.title, href: links.place('words') },
    { name: words.tables.title, href: links.place('tables') },
    { name: words.changes.findings, href: links.place('changes') },
    { name: words.wear.checks.title, href: links.place('wear', 'checks') },
    { name: words.wear.gauges, href: links.place('wear', 'gauges') },
    { name: words.shoe.part.comfort, href: links.place('shoe', 'comfort') },
    { name: words.shoe.part.arrival, href: links.place('shoe', 'arrival') },
  ];
};

const groupOf = <T,>(
  name: string,
  { rows, found }: FoundOf<T>,
  resultOf: (row: T) => Result,
): ResultGroup => ({
  name,
  results: rows.map(resultOf),
  ...(found > rows.length && { found }),
});

const remarksGroup = (
  { rows, found }: Everything['remarks'],
  text: string,
  links: Links,
): ResultGroup => {
  const words = p().search;
  const group = groupOf(words.groups.remarks, { rows, found }, (remark) => ({
    href: sourceLink(remark, links),
    says: <MarkedText text={remark.text} hits={remark.hits} />,
    more: words.of(
      words.of(remark.testerCode, words.pair(remark.pairCodes.join(' · '))),
      formatDate(remark.atMs),
    ),
  }));
  if (group.found === undefined) return group;
  const all = {
    href: wordsAddress(links.place('words'), { text }),
    says: words.more(words.groups.remarks, found),
  };
  return { ...group, results: [...group.results, all] };
};

/** The groups that have a result, in the order in which they are most likely meant. */
export const groupsOf = (
  found: Everything,
  project: RecordId,
  text: string,
): readonly ResultGroup[] => {
  const links = linksOf(project);
  const words = p().search;
  const { groups } = words;
  return [
    groupOf(groups.pairs, found.pairs, ({ id, code, round }) => ({
      href: links.pair(id),
      says: words.pair(code),
      more: round,
    })),
    groupOf(groups.testers, found.testers, ({ id, code, name }) => ({
      href: links.tester(id),
      says: code,
      more: name,
    })),
    groupOf(groups.rounds, found.rounds, ({ id, name }) => ({
      href: links.round(id),
      says: name,
    })),
    groupOf(groups.findings, found.findings, ({ id, title, state }) => ({
      href: links.finding(id),
      says: title,
      more: d().finding.states[state],
    })),
    remarksGroup(found.remarks, text, links),
    groupOf(groups.runs, found.runs, ({ id, startMs, tester, pair, distanceM }) => ({
      href: links.run(id),
      says: words.of(formatDate(startMs), tester),
      more: words.of(words.pair(pair), formatDistance(distanceM)),
    })),
    groupOf(groups.checks, found.checks, ({ id, at, pair }) => ({
      href: links.check(id),
      says: words.of(formatDate(at), words.pair(pair)),
    })),
  ].filter(({ results }) => results.length > 0);
};
