/** What became of a finding, line under line: the lead and the specialist read the same. */
import type { ComponentChildren } from 'preact';
import type { Finding, RecordId, RecordOf } from '../../core/records/index.ts';
import { offeredChange, type StoryItem } from '../../core/talk/index.ts';
import { locale, proposeWords, saidOf, talkWords, terms } from '../words/index.ts';
import { isForeign } from '../words/figures.ts';
import { sayChange } from './change-speaker.ts';
import { formatDate } from './format.ts';
import { PhotoRow } from './photos/photo-view.tsx';
import './finding-story.css';

export interface StoryProps {
  readonly finding: Finding;
  readonly items: readonly StoryItem[];
  /** Who wrote it, as this reader knows them. */
  readonly who: (author: RecordId) => string;
  /** Null: this reader does not know the rounds. */
  readonly round: ((id: RecordId) => ComponentChildren) | null;
  /** What can be done with a proposal; absent: nothing. */
  readonly acts?: (proposal: RecordOf<'proposal'>) => ComponentChildren;
}

/** What somebody wrote, as it was written; a reader of another language hears from the page's `lang` which it is. */
const Written = ({
  words,
  language,
}: {
  readonly words: string | undefined;
  readonly language: string | undefined;
}) =>
  words === undefined ? null : (
    <p
      class="story-words"
      {...(language !== undefined && isForeign(language, [locale()]) && { lang: language })}
    >
      {words}
    </p>
  );

const ProposalLine = (props: StoryProps & { readonly proposal: RecordOf<'proposal'> }) => {
  const { finding, proposal, who, acts } = props;
  const { body, revision } = proposal;
  const words = proposeWords();
  const change = offeredChange(finding, body);
  return (
    <>
      <p class="soft small">{`${who(revision.author)} · ${formatDate(body.at)}`}</p>
      <p>
        <b>
          {change
            ? saidOf(talkWords().proposalAnswers[body.answer], sayChange(change))
            : talkWords().proposalAnswers[body.answer]}
        </b>
      </p>
      {body.sampleAt !== undefined && <p>{words.sampleOn(formatDate(body.sampleAt))}</p>}
      <Written words={body.words} language={body.language} />
      <PhotoRow photos={body.photos ?? []} label={words.sketch} />
      {acts?.(proposal)}
    </>
  );
};

const Item = (props: StoryProps & { readonly item: StoryItem }) => {
  const { item, round } = props;
  const words = proposeWords();
  switch (item.what) {
    case 'asked':
      return (
        <p class="soft">
          {(item.isAsked ? words.storyAsked : words.storyWritten)(formatDate(item.atMs))}
        </p>
      );
    case 'proposal':
      return <ProposalLine {...props} proposal={item.proposal} />;
    case 'reply': {
      const { body, revision } = item.reply;
      return (
        <>
          <p class="soft small">{`${props.who(revision.author)} · ${formatDate(item.atMs)}`}</p>
          <p>
            <b>{talkWords().proposalReplies[body.answer]}</b>
          </p>
          <Written words={body.words} language={body.language} />
        </>
      );
    }
    case 'carried':
      return <p>{round ? round(item.round) : words.taken}</p>;
    case 'outcome':
      return (
        <p>
          {words.storyOutcome(
            terms().changeVerdicts[item.outcome.verdict].name,
            formatDate(item.atMs),
          )}
        </p>
      );
  }
};

export const FindingStory = (props: StoryProps) => (
  <ol class="story">
    {props.items
      // Which round carries it is told to those who know the rounds.
      .filter(({ what }) => what !== 'carried' || props.round !== null)
      .map((item, at) => (
        <li key={at} class={`story-${item.what}`}>
          <Item {...props} item={item} />
        </li>
      ))}
  </ol>
);
