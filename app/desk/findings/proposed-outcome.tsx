/** The form of an outcome, begun with what the comparison of the rounds says, where they can be compared. */
import { toInstant } from '../../parts/instant.ts';
import { t } from '../../words/index.ts';
import { outcomeOf } from '../../words/say-change.ts';
import { useWork } from '../desk-state.ts';
import { speakerOf } from '../speaker.ts';
import type { FindingProps } from './finding-props.ts';
import { OutcomeForm, type laterRounds } from './outcome-form.tsx';

export const ProposedOutcome = (
  props: FindingProps & {
    readonly later: ReturnType<typeof laterRounds>;
    readonly close: () => void;
  },
) => {
  const { review, records, finding } = props;
  const { body, revision } = finding;
  const answer = useWork(
    async (desk) => ({ found: await desk.proposeOutcome(review.project.id, revision.id) }),
    records,
    [revision.id],
  );
  if (!answer) return <p class="soft">{t().loading}</p>;
  return answer.found ? (
    <OutcomeForm
      {...props}
      proposed={outcomeOf(answer.found, body, toInstant(review.nowMs), speakerOf(props))}
    />
  ) : (
    <OutcomeForm {...props} />
  );
};
