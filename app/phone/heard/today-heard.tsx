/**
 * On Today, one at a time and below the pairs: what came of a report of this tester's, then that a test is over. It goes
 * once it is opened or closed, and stays to be read with the pair, the run, and the test.
 */
import { nextThanks } from '../../../core/talk/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { wholeDistance } from '../../parts/format.ts';
import { session, store, useStored } from '../../parts/state.ts';
import { ownWords, talkWords, terms } from '../../words/index.ts';
import { toldInThanks } from '../../words/say-thanks.ts';
import { useState } from 'preact/hooks';
import { noteHeard, readHeard } from './heard-read.ts';
import { readOwnTests, TEST_KINDS } from './own-test.ts';

const Card = (props: {
  readonly title: string;
  readonly children: preact.ComponentChildren;
  readonly open: { readonly href: string; readonly label: string };
  readonly close: () => void;
}) => (
  <section class="sheet" aria-label={props.title}>
    <h2>{props.title}</h2>
    {props.children}
    <div class="row">
      <LinkButton href={props.open.href}>{props.open.label}</LinkButton>
      <Button kind="quiet" onClick={props.close}>
        {ownWords().heard.close}
      </Button>
    </div>
  </section>
);

export const Heard = () => {
  const words = ownWords();
  const member = session.value?.member;
  const [closed, setClosed] = useState(0);
  const found = useStored(
    async (from) => {
      if (!member) return null;
      const [thanks, tests, read] = await Promise.all([
        from.list('thanks'),
        readOwnTests(from, member, Date.now()),
        readHeard(from),
      ]);
      return {
        next: nextThanks(
          thanks.filter(({ body }) => body.tester === member),
          new Set(read.thanks),
        ),
        over: tests.find(
          ({ isOver, project }) => isOver && !read.tests.includes(project.revision.id),
        ),
      };
    },
    TEST_KINDS,
    [member, closed],
  );
  if (!found) return null;
  const { next, over } = found;
  const close = (what: 'thanks' | 'tests', id: string) =>
    void noteHeard(store, what, id).then(() => setClosed(closed + 1));
  if (next) {
    const { id } = next.revision;
    const told = toldInThanks(next.body, { talk: talkWords(), glossary: terms() });
    return (
      <Card
        title={talkWords().thanks.titles[next.body.result]}
        open={{ href: `/thanks/${id}`, label: words.heard.open }}
        close={() => close('thanks', id)}
      >
        {told !== null && <p>{told}</p>}
      </Card>
    );
  }
  if (!over) return null;
  const { project, summary } = over;
  const { id } = project.revision;
  return (
    <Card
      title={words.test.over}
      open={{ href: `/test/${id}`, label: words.test.see }}
      close={() => close('tests', id)}
    >
      <p>
        {words.test.youRan(
          project.body.name,
          wholeDistance(summary.distanceM),
          summary.runs,
          summary.pairs.length,
        )}
      </p>
    </Card>
  );
};
