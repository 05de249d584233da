/** What the specialists answered to a finding, and what the lead makes of it: accept, ask again, put it into a round. */
import { useState } from 'preact/hooks';
import type { RecordOf } from '../../../core/records/index.ts';
import {
  acceptedOf,
  daysOfTurn,
  isLate,
  proposalsTo,
  storyOf,
  type Turn,
} from '../../../core/talk/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { FindingStory } from '../../parts/finding-story.tsx';
import { session } from '../../parts/state.ts';
import { d, proposeWords, talkWords } from '../../words/index.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { SmallForm, TextField } from '../parts/form-parts.tsx';
import type { FindingProps } from './finding-props.ts';
import { replyTo, takeReplyBack } from './reply-writes.ts';
import { RoundChange } from './round-change.tsx';

/** Whose turn the findings of the project are, by finding; null until it is known. */
export const useTurns = ({ review, records }: TabProps): ReadonlyMap<string, Turn> | null =>
  useWork((desk) => desk.turns(review.project.id), records, []);

/** Whose turn it is, for what, since how many days. */
export const TurnLine = ({ turn, nowMs }: { readonly turn: Turn; readonly nowMs: number }) => {
  const words = proposeWords();
  const talk = talkWords();
  return (
    <>
      {words.turnIs(talk.whose[turn.who], talk.turns[turn.for])}{' '}
      <span class="soft">{words.since(daysOfTurn(turn, nowMs))}</span>
      {isLate(turn, nowMs) && <b class="turn-late"> {words.lateTurn}</b>}
    </>
  );
};

export const FindingTalk = (props: FindingProps) => {
  const { finding, records, review } = props;
  const words = proposeWords();
  const standing = proposalsTo(finding.revision.id, records.proposal, records['proposal-reply']);
  const accepted = acceptedOf(standing);
  const turn = useTurns(props)?.get(finding.revision.id);
  const wrote = new Set(standing.map(({ proposal }) => proposal.revision.author));
  const links = linksOf(review.project.id);
  const round = (id: string) => review.rounds.find((one) => one.id === id);
  return (
    <section class="paper finding-talk" aria-label={words.story}>
      <h2>{words.story}</h2>
      {turn && (
        <p>
          <b>
            <TurnLine turn={turn} nowMs={review.nowMs} />
          </b>
        </p>
      )}
      <FindingStory
        finding={finding.body}
        items={storyOf(finding, standing)}
        who={(author) =>
          author === session.value?.member
            ? words.you
            : wrote.has(author)
              ? words.specialist
              : d().report.board.otherLead
        }
        round={(id) => {
          const carrier = round(id);
          return (
            <>
              <a href={links.round(id)}>{words.carries(carrier?.name ?? '?')}</a>{' '}
              <span class="soft">{words.storyRan(carrier?.size.runs ?? 0)}</span>
            </>
          );
        }}
        acts={(proposal) => {
          const one = standing.find((of) => of.proposal === proposal);
          if (one?.reply)
            return (
              <div class="no-print">
                <Button
                  kind="quiet"
                  onClick={() => void takeReplyBack(one.reply?.revision.id ?? ('' as never))}
                >
                  {words.undoReply}
                </Button>
              </div>
            );
          return finding.body.state === 'closed' ? null : <Reply proposal={proposal} />;
        }}
      />
      {standing.length === 0 && <p class="soft">{words.noAnswer}</p>}
      {(accepted || finding.body.change) && finding.body.state !== 'closed' && (
        <RoundChange key={(accepted ?? finding).revision.stamp} {...props} proposal={accepted} />
      )}
    </section>
  );
};

/** An answer that waits: taken with one press, or asked about again in words. */
const Reply = ({ proposal }: { readonly proposal: RecordOf<'proposal'> }) => {
  const words = proposeWords();
  const [again, setAgain] = useState(false);
  const [typed, setTyped] = useState('');
  const [tried, setTried] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  if (again)
    return (
      <div class="stack no-print">
        <SmallForm
          label={words.askAgain}
          save={async () => {
            setTried(true);
            return typed.trim() === '' ? '' : replyTo(proposal, 'ask-again', typed);
          }}
        >
          <TextField
            label={words.replyWords}
            value={typed}
            onInput={setTyped}
            most={4000}
            error={tried && typed.trim() === '' ? words.needsWords : undefined}
          />
        </SmallForm>
        <Button kind="quiet" onClick={() => setAgain(false)}>
          {words.cancel}
        </Button>
      </div>
    );
  return (
    <>
      <div class="row no-print">
        {proposal.body.answer !== 'cannot' && (
          <Button
            kind="main"
            onClick={() => void replyTo(proposal, 'accepted', '').then(setTrouble)}
          >
            {words.accept}
          </Button>
        )}
        <Button onClick={() => setAgain(true)}>{words.askAgain}</Button>
      </div>
      {trouble !== null && <p role="alert">{trouble}</p>}
    </>
  );
};
