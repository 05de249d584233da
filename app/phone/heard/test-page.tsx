/** A test as I ran it: how far, in which pairs, and what I found, with what came of it as far as I was told. */
import { useEffect } from 'preact/hooks';
import { latestThanks, type FoundComplaint } from '../../../core/talk/index.ts';
import type { RecordOf } from '../../../core/records/index.ts';
import { LinkButton, Page } from '../../parts/controls/controls.tsx';
import { formatDate, formatDistance, wholeDistance } from '../../parts/format.ts';
import { session, store, useStored } from '../../parts/state.ts';
import { ownWords, t, talkWords, terms } from '../../words/index.ts';
import { PairShoe } from '../own/pair-shoe.tsx';
import { noteHeard } from './heard-read.ts';
import { readOwnTests, TEST_KINDS, type OwnTest } from './own-test.ts';
import '../own/own.css';

const Figures = ({ summary }: Pick<OwnTest, 'summary'>) => {
  const words = ownWords().test;
  const rows = [
    [wholeDistance(summary.distanceM), words.byYou],
    [String(summary.runs), words.runs(summary.runs)],
    [String(summary.pairs.length), words.pairs(summary.pairs.length)],
  ] as const;
  return (
    <dl class="heard-figures">
      {rows.map(([figure, what]) => (
        <div key={what}>
          <dt class="small soft">{what}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  );
};

const Pairs = (props: { readonly test: OwnTest; readonly pairs: readonly RecordOf<'pair'>[] }) => {
  const { project, summary } = props.test;
  const { distanceM: targetM } = project.body.brief;
  const words = ownWords();
  return (
    <ul class="plain-list heard-pairs">
      {summary.pairs.map(({ pair, distanceM }) => {
        const code = props.pairs.find(({ revision }) => revision.id === pair)?.body.code ?? '?';
        const done = formatDistance(distanceM);
        return (
          <li key={pair}>
            <PairShoe
              distanceM={distanceM}
              targetM={targetM}
              label={words.shoe(done, wholeDistance(targetM))}
            />
            <b>{code}</b>
            <span class="small soft">{done}</span>
          </li>
        );
      })}
    </ul>
  );
};

const Found = (props: {
  readonly found: readonly FoundComplaint[];
  readonly thanks: readonly RecordOf<'thanks'>[];
}) => {
  const words = ownWords().test;
  const talk = talkWords();
  return (
    <section class="stack" aria-label={words.found}>
      <h2>{words.found}</h2>
      {props.found.length === 0 ? (
        <p class="soft">{words.nothing}</p>
      ) : (
        <ul class="plain-list heard-found">
          {props.found.map(({ zone, kind, runs, result }) => {
            const felt = talk.thanks.felt(terms().kinds[kind].name, terms().zones[zone].name);
            const thanks = props.thanks.find(
              ({ body }) => body.zone === zone && body.kind === kind,
            );
            return (
              <li key={`${zone} ${kind}`}>
                {thanks ? (
                  <a href={`/thanks/${thanks.revision.id}`}>{words.upper(felt)}</a>
                ) : (
                  words.upper(felt)
                )}
                <span class="small soft">
                  {words.onRuns(runs)}
                  {result !== null && <> · {talk.thanksResults[result]}</>}
                </span>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
};

export const TestPage = ({ project: id }: { readonly project: string }) => {
  const words = ownWords().test;
  const member = session.value?.member;
  const found = useStored(
    async (from) => {
      if (!member) return { test: undefined, pairs: [], thanks: [] };
      const [tests, pairs, thanks] = await Promise.all([
        readOwnTests(from, member, Date.now()),
        from.list('pair'),
        from.list('thanks'),
      ]);
      return {
        test: tests.find(({ project }) => project.revision.id === id),
        pairs,
        thanks: latestThanks(
          thanks.filter(({ body }) => body.tester === member && body.project === id),
        ).toReversed(),
      };
    },
    [...TEST_KINDS, 'pair'],
    [id, member],
  );
  const isOver = found?.test?.isOver === true;
  useEffect(() => {
    if (isOver) void noteHeard(store, 'tests', id);
  }, [id, isOver]);
  const back = { href: '/runs', label: t().back };
  if (found === null) return <p class="soft">{t().loading}</p>;
  const { test, pairs, thanks } = found;
  if (!test)
    return (
      <Page title={words.found} back={back}>
        <p>{words.noRuns}</p>
      </Page>
    );
  const { summary, project } = test;
  const span =
    summary.fromMs === null || summary.untilMs === null
      ? project.body.name
      : words.span(project.body.name, formatDate(summary.fromMs), formatDate(summary.untilMs));
  return (
    <Page title={isOver ? words.over : words.soFar} back={back}>
      <p class="soft">{span}</p>
      <Figures summary={summary} />
      <Pairs test={test} pairs={pairs} />
      <Found found={summary.found} thanks={thanks} />
      <p class="soft small">{words.stays}</p>
      <div class="foot-bar">
        <LinkButton big href="/runs">
          {ownWords().pair.allRuns}
        </LinkButton>
      </div>
    </Page>
  );
};
