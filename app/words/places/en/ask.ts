/** What there is to ask testers, the form of a question, and what was said. */
import type { AskHeadline } from '../../../../core/headlines/index.ts';
import type { AnswerSet } from '../../../../core/talk/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const things = (n: number) => count(n, 'thing', 'things');
const runs = (n: number) => count(n, 'run', 'runs');

export const ask = {
  headline: (h: AskHeadline, say: Say): string => {
    switch (h.case) {
      case 'pain': {
        const whom =
          h.testers.length === 1 ? say.testers(h.testers) : `${h.testers.length} testers`;
        return h.more === 0
          ? `Ask ${whom} about the pain.`
          : `Ask ${whom} about the pain first, then ${things(h.more)} more.`;
      }
      case 'answers':
        return h.things === 0
          ? `${count(h.unread, 'new answer', 'new answers')} to read.`
          : `${count(h.unread, 'new answer', 'new answers')} to read, ${things(h.things)} to ask.`;
      case 'to-ask':
        return h.testers.length === 1
          ? `${things(h.things)} to ask ${say.testers(h.testers)}.`
          : `${things(h.things)} to ask ${h.testers.length} testers.`;
      case 'waiting':
        return `${count(h.questions, 'question waits', 'questions wait')} for an answer.`;
      case 'nothing':
        return 'Nothing to ask right now.';
    }
  },
  sub: 'A tester reads one question at a time, in their own language, and answers with a tap.',
  title: 'Questions and answers',
  crumb: 'to ask',
  toRead: (n: number) => `${count(n, 'answer', 'answers')} to read`,
  doubts: 'To ask',
  noDoubts: 'Odd runs, pain, silence and missing answers come here by themselves.',
  waiting: 'Waiting for an answer',
  said: 'All that was said',
  nothingSaid: 'Nobody has asked or written anything yet.',

  doubt: {
    pain: (tester: string, score: number) => `${tester} has pain, ${score} of 10.`,
    damage: (tester: string, what: string) => `${tester} reported damage: ${what}.`,
    'odd-run': (tester: string, whys: string) => `${tester}: ${whys}.`,
    'early-sign': (tester: string, felt: string, n: number) =>
      n > 1 ? `${tester} reports ${felt} in ${runs(n)}.` : `${tester} reports ${felt}.`,
    'outlying-score': (tester: string, attribute: string, score: string, usual: string) =>
      `${tester} scored ${attribute} ${score}, usually about ${usual}.`,
    feet: (tester: string, n: number) =>
      n > 1
        ? `${tester} did not say how the feet felt, in ${n} recent runs.`
        : `${tester} did not say how the feet felt.`,
    comfort: (tester: string, n: number) =>
      n > 1
        ? `${tester} gave no overall comfort, in ${n} recent runs.`
        : `${tester} gave no overall comfort.`,
    silence: (tester: string, days: number) =>
      `${tester} has logged nothing for ${count(days, 'day', 'days')}.`,
  },
  aboutRun: (date: string, pair: string, distance: string) =>
    `Run of ${date}, pair ${pair}, ${distance}`,
  aboutPair: (pair: string) => `Pair ${pair}`,
  aboutDamage: (pair: string) => `Damage of pair ${pair}`,
  aboutZone: (zone: string) => `About: ${zone}`,
  inGeneral: 'In general',

  button: (tester: string) => `Ask ${tester}`,
  edit: 'Edit first',
  editName: (question: string) => `Edit first: ${question}`,
  buttonName: (tester: string, question: string) => `Ask ${tester}: ${question}`,
  other: 'Another question',
  askRun: (tester: string) => `Ask ${tester} about this run`,
  askDamage: (tester: string) => `Ask ${tester} about this damage`,
  askPair: 'Ask about this pair',
  askZone: 'Ask about this zone',
  askedNow: (tester: string) => `Asked ${tester}`,
  form: {
    tester: 'Whom',
    question: 'Question',
    own: 'In your own words',
    words: 'What they read',
    readyMade: 'Ready-made: read in the tester’s language.',
    asTyped: 'Read as you type it.',
    answers: 'What can they tap?',
    sets: {
      words: 'Nothing, they write',
      'yes-no': 'Yes, no, partly',
      foot: 'Left, right, both',
      now: 'Gone, less, the same, worse',
      change: 'Better, the same, worse',
    } satisfies Readonly<Record<AnswerSet, string>>,
    always: '“I can’t tell” and “Skip” are always there.',
    missing: { tester: 'Choose whom to ask.', words: 'Type the question.' },
    tooLong: 'Make it shorter.',
    send: 'Send the question',
  },
  reveals: (tester: string, words: string) =>
    `This may tell ${tester} what was changed: ${words}. Ask what they feel, not where it comes from.`,
  quoted: (words: string) => `“${words}”`,

  asked: (tester: string, when: string) => `Asked ${tester} on ${when}`,
  answered: (tester: string, when: string) => `${tester} answered on ${when}`,
  wrote: (tester: string, when: string) => `${tester} wrote on ${when}`,
  replied: (when: string) => `Written back on ${when}`,
  unanswered: (days: number) =>
    days < 1 ? 'No answer yet.' : `No answer for ${count(days, 'day', 'days')}.`,
  withdrawn: (when: string) => `Withdrawn on ${when}.`,
  withdraw: 'Withdraw',
  withdrawName: (question: string) => `Withdraw: ${question}`,
  withdrawnNow: 'Question withdrawn',
  again: 'Ask again',
  againName: (question: string) => `Ask again: ${question}`,
  isNew: 'new',
  reply: (tester: string) => `Write back to ${tester}`,
  replyWords: 'A few words to the tester',
  replyMissing: 'Type a few words.',
};
