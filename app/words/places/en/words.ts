/** What testers say: the list of remarks, its search and filters, and what is quoted. */
import type { WordsHeadline } from '../../../../core/headlines/index.ts';
import type { QuoteState, RemarkPlace, RemarkSort } from '../../../../core/words/index.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const remarks = (n: number) => count(n, 'remark', 'remarks');
const small = [
  ...['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten'],
];
const testers = (n: number) => `${small[n] ?? n} ${n === 1 ? 'tester' : 'testers'}`;

/** A longer search is cut in a headline. */
const MOST_SEARCHED = 40;
const cut = (text: string) =>
  text.length > MOST_SEARCHED ? `${text.slice(0, MOST_SEARCHED)} …` : text;

export const words = {
  title: 'What testers say',
  headline: (h: WordsHeadline): string => {
    switch (h.case) {
      case 'none':
        return 'Nobody has written anything yet.';
      case 'nothing':
        return h.searched === null
          ? 'No remark fits these filters.'
          : `No remark here holds “${cut(h.searched)}”.`;
      case 'mention':
        return h.testers === 0
          ? `Only the shop mentions “${cut(h.searched)}”.`
          : `${testers(h.testers)} ${h.testers === 1 ? 'mentions' : 'mention'} “${cut(h.searched)}”.`;
      case 'some':
        return `${h.remarks} of ${remarks(h.of)} fit, from ${count(h.testers, 'tester', 'testers')}.`;
      case 'all':
        return h.untapped === 0
          ? `${remarks(h.remarks)} from ${count(h.testers, 'tester', 'testers')}.`
          : `${remarks(h.remarks)} from ${count(h.testers, 'tester', 'testers')}; ${h.untapped} may name something nobody tapped.`;
    }
  },
  sub: (found: number, all: number, untapped: number) =>
    `${found} of ${remarks(all)}; ${untapped} may name something that was not tapped on the run.`,
  subAll: 'Search them, narrow them, and quote what a finding needs.',
  nothingYet: 'Testers write on the phone, below a run, a complaint or a damage.',
  search: 'Search the words',
  also: (list: string) => `also finds ${list}`,
  filters: 'Search and filters',
  any: 'all',
  option: (name: string, n: number) => `${name} (${n})`,
  round: 'Round',
  zone: 'Zone, tapped or named',
  on: 'Said on',
  tester: 'Tester',
  pair: 'Pair',
  distance: (unit: string) => `On the pair before, ${unit}`,
  from: 'from',
  to: 'below',
  stretch: (from: string, to: string, unit: string, n: number) =>
    `${from} to ${to} ${unit}: ${remarks(n)}`,
  photo: 'with a photo',
  untapped: 'may name more than was tapped',
  marked: 'marked or quoted',
  sort: 'Order',
  sorts: { newest: 'newest first', distance: 'by distance on the pair' } satisfies Record<
    RemarkSort,
    string
  >,
  clear: 'Clear search and filters',
  places: {
    run: 'a run',
    complaint: 'a complaint',
    pain: 'pain',
    stop: 'a run against a notice',
    damage: 'damage',
    check: 'a bench check',
    ranking: 'an order of pairs',
  } satisfies Record<RemarkPlace, string>,
  list: 'Remarks',
  theShop: 'the shop',
  pairOf: (pair: string, round: string) =>
    round === '' ? `pair ${pair}` : `pair ${pair}, ${round}`,
  notTapped: 'nothing tapped',
  choose: (who: string, date: string) => `Choose the remark of ${who}, ${date}`,
  chosen: (n: number) => `${remarks(n)} chosen`,
  chooseNone: 'Choose none',
  mark: 'Mark them',
  markedNow: (n: number) => `${remarks(n)} marked`,
  isMarked: 'marked',
  unmark: 'Remove the mark',
  unmarked: 'Mark removed',
  quotedIn: (title: string) => `quoted in “${title}”`,
  perhaps: (what: string) => `Perhaps also ${what}?`,
  perhapsAt: (zone: string) => `Perhaps something at the ${zone}?`,
  perhapsWho: (who: string) => `${who} did not tap it. It is counted nowhere.`,
  leave: 'No, leave it',
  leftNow: 'Left alone on this device',
  more: (n: number) => `Show ${n} more`,
  into: 'Quote into a finding',
  quoteWhat: 'What to quote',
  wholeRemark: 'All of it',
  intoHelp: 'Choose remarks, then quote them here. Each quote keeps its run, pair and tester.',
  which: 'Finding',
  newOne: 'a new finding',
  newTitle: 'Title of the finding',
  noTitle: 'Give the finding a title.',
  part: 'Part',
  quote: (n: number) => (n === 1 ? 'Quote 1 remark' : `Quote ${n} remarks`),
  quotedNow: (n: number, title: string) => `${remarks(n)} quoted in “${title}”`,
  allWords: 'All of their words',
  ofZone: 'All that was written of this zone',
  ofPair: 'All that was written of this pair',
  quotes: 'What testers say of it',
  noQuotes: 'Nothing is quoted here yet.',
  findMore: 'Find remarks to quote',
  states: {
    'as-said': '',
    changed: 'These words were changed since.',
    aside: 'The record they are from counts in no figure now.',
  } satisfies Record<QuoteState, string>,
  send: 'Send to specialists',
  sent: (date: string) => `Specialists can read it since ${date}.`,
  sentNow: 'Specialists can read it now. Report files that were sent keep what they held.',
  unsend: 'Withdraw from specialists',
  unsentNow: 'Withdrawn. Report files that were sent before keep what they held.',
  onlyLeads: 'Only leads read it.',
  keeps:
    'A quote goes for good when its tester takes the record back. Report files that were sent keep theirs.',
  remove: 'Remove this quote',
  removed: 'Quote removed',
};
