/** What does a tester read of what came of their report? The same on the phone and where a lead sends it. */
import type { Thanks } from '../../core/records/index.ts';
import { changeInWords, type ChangeSpeaker } from './say-talk.ts';

export interface SaidThanks {
  readonly title: string;
  /** What they reported, and in how many runs; null: the record does not say. */
  readonly told: string | null;
  /** What came of it, then what was changed where that is told, then the thanks. */
  readonly lines: readonly string[];
  /** The lead's own, as typed. */
  readonly words: string | null;
}

/** What a thank-you is about and how it ended. */
export type ThanksFacts = Pick<Thanks, 'zone' | 'kind' | 'runs' | 'result' | 'change' | 'words'>;

/** "heel slip, heel cup", within a sentence; null: the record names no complaint. */
export const feltInThanks = (
  { zone, kind }: Pick<Thanks, 'zone' | 'kind'>,
  { talk, glossary }: Pick<ChangeSpeaker, 'talk' | 'glossary'>,
): string | null =>
  zone && kind ? talk.thanks.felt(glossary.kinds[kind].name, glossary.zones[zone].name) : null;

export const toldInThanks = (
  facts: Pick<Thanks, 'zone' | 'kind' | 'runs'>,
  speaker: Pick<ChangeSpeaker, 'talk' | 'glossary'>,
): string | null => {
  const felt = feltInThanks(facts, speaker);
  return felt === null ? null : speaker.talk.thanks.told(felt, facts.runs ?? null);
};

export const thanksInWords = (facts: ThanksFacts, speaker: ChangeSpeaker): SaidThanks => {
  const { thanks } = speaker.talk;
  const { result, change, words } = facts;
  return {
    title: thanks.titles[result],
    told: toldInThanks(facts, speaker),
    lines: [
      thanks.came[result],
      ...(change ? [thanks.changed(changeInWords(change, speaker))] : []),
      thanks.thank,
    ],
    words: words ?? null,
  };
};
