/** The tests in which I ran, each with what I found in it. */
import { session, useStored } from '../../parts/state.ts';
import { ownWords } from '../../words/index.ts';
import { readOwnTests, TEST_KINDS } from './own-test.ts';

export const OwnTests = () => {
  const member = session.value?.member;
  const tests = useStored(
    (from) => (member ? readOwnTests(from, member, Date.now()) : Promise.resolve([])),
    TEST_KINDS,
    [member],
  );
  if (!tests || tests.length === 0) return null;
  const words = ownWords().test;
  return (
    <nav class="stack" aria-label={words.found}>
      {tests.map(({ project, isOver }) => (
        <a key={project.revision.id} class="button" href={`/test/${project.revision.id}`}>
          {(isOver ? words.foundIn : words.foundSoFar)(project.body.name)}
        </a>
      ))}
    </nav>
  );
};
