/** What is to be asked of testers, and what was said about a run, a report, a pair, a zone, a tester or all of them. */
import { talkOf, toAskOf, type TalkItem, type ToAsk } from '../../../core/review/index.ts';
import { hangsOn, type TalkSubject } from '../../../core/talk/index.ts';
import type { Opened } from './opened.ts';

export interface Talk {
  readonly items: readonly TalkItem[];
  /** What nobody asked about it yet. */
  readonly toAsk: readonly ToAsk[];
}

const talk = ({ log, review }: Opened, subject: TalkSubject): Talk => ({
  items: talkOf(log, subject),
  toAsk: toAskOf(log, review).filter((doubt) => hangsOn(doubt, subject)),
});

export const talkQuestions = { talk };
