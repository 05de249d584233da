/** Right after a run was saved: what it was, and how comfortable the last runs in that pair were. */
import type { RecordId } from '../../../core/records/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { formatDistance, formatPace } from '../../parts/format.ts';
import { ownWords } from '../../words/index.ts';
import { justSaved } from '../just-saved.ts';
import type { HeldPair } from '../own-mileage.ts';
import { ComfortCourse } from './comfort-course.tsx';
import { courseOf, lastScores } from './own-runs.ts';

const MOST_SCORES = 8;

/** Nothing where the run is in none of the pairs: it was taken back meanwhile. */
export const SavedCard = (props: {
  readonly run: RecordId;
  readonly held: readonly HeldPair[];
}) => {
  const words = ownWords().saved;
  const pair = props.held.find(({ ownRuns }) =>
    ownRuns.some(({ revision }) => revision.id === props.run),
  );
  const run = pair?.ownRuns.find(({ revision }) => revision.id === props.run)?.body;
  if (!pair || !run) return null;
  const scores = lastScores(courseOf(pair.ownRuns), MOST_SCORES);
  return (
    <section class="sheet">
      <h2>{words.title(formatDistance(run.distanceM), pair.pair.body.code)}</h2>
      {run.durationS !== undefined && (
        <p class="soft">{formatPace(run.distanceM, run.durationS)}</p>
      )}
      {scores.length > 1 && <ComfortCourse scores={scores} />}
      <div class="row">
        <LinkButton href={`/run/${props.run}`}>{words.open}</LinkButton>
        <Button kind="quiet" onClick={() => (justSaved.value = null)}>
          {words.close}
        </Button>
      </div>
    </section>
  );
};
