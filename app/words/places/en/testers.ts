/** Testers: the list, and a tester's page. */
import type { TesterHeadline, TestersHeadline } from '../../../../core/headlines/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const runs = (n: number) => count(n, 'run', 'runs');
const days = (n: number) => count(n, 'day', 'days');
const testerCount = (n: number) => count(n, 'tester', 'testers');

export const testers = {
  headline: (h: TestersHeadline, say: Say): string => {
    switch (h.case) {
      case 'none':
        return 'No tester yet. Add the first ones.';
      case 'pain':
        return h.testers.length > 3
          ? `${h.testers.length} testers report pain. Answer them first.`
          : `${say.testers(h.testers)} ${h.testers.length === 1 ? 'reports' : 'report'} pain. Answer that first.`;
      case 'silent':
        return h.testers.length > 3
          ? `${h.testers.length} testers are silent, the longest for ${days(h.days)}.`
          : `${say.testers(h.testers)} ${h.testers.length === 1 ? 'is' : 'are'} silent${h.testers.length === 1 ? '' : ', the longest'} for ${days(h.days)}.`;
      case 'all-quiet':
        return `Nobody has logged since ${say.date(h.sinceMs)} (${days(h.days)}).`;
      case 'nobody-holds':
        return `Nobody holds a pair. ${testerCount(h.of)} could run.`;
      case 'all-heard':
        return h.holders === 1
          ? 'The one tester with a pair has run, and has not gone silent.'
          : `All ${h.holders} testers with a pair have run. Nobody has gone silent.`;
      case 'some-ran':
        return `${h.ran} of ${h.holders} testers with a pair ${h.ran === 1 ? 'has' : 'have'} run. Nobody has gone silent.`;
      case 'nobody-ran':
        return h.holders === 1
          ? 'One tester has a pair. Nobody has run yet.'
          : `${h.holders} testers have a pair. Nobody has run yet.`;
    }
  },
  sub: (all: number, holders: number, ran: number, runCount: number, distance: string) =>
    `${testerCount(all)} in the group, ${holders} with a pair, ${ran} ${ran === 1 ? 'has' : 'have'} run: ${runs(runCount)}, ${distance}.`,
  columns: {
    tester: 'Tester',
    pairs: 'Pairs in hand',
    runs: 'Runs',
    distance: 'Distance',
    lastRun: 'Last run',
    silent: 'Silent',
    most: 'Felt most',
    complaints: 'With a complaint',
    pain: 'Pain',
  },
  states: {
    all: 'All testers',
    holds: 'With a pair',
    silent: 'Silent',
    pain: 'With pain to look at',
    'never-ran': 'Never ran',
  },
  stateFilter: 'Show',
  find: 'Tester or pair',
  nothingFound: 'No tester fits. Change the filters.',
  counted: (n: number, of: number) => (n === of ? testerCount(n) : `${n} of ${testerCount(of)}`),
  select: (tester: string) => `Select tester ${tester}`,
  inviteSelected: (n: number) => `Print ${count(n, 'invite', 'invites')}`,
  takeBack: (n: number) => `Take back their ${count(n, 'pair', 'pairs')}`,
  actions: 'Invite, hand-out file',
  silentFor: days,
  pain: (score: number) => `${score} of 10`,
  feltIn: (felt: string, n: number) => `${felt}, ${runs(n)}`,
  plan: 'Plan who runs in what',
  feet: 'Feet in their lasts, and whom the brief is for',
  steady: 'Does the panel answer steadily?',
  power: 'How many testers it takes',
  page: {
    headline: (h: TesterHeadline, say: Say): string => {
      const who = say.tester(h.tester);
      switch (h.case) {
        case 'pain':
          return `${who} reports pain, ${h.score} of 10. Answer that first.`;
        case 'not-run':
          return h.pairs.length === 0
            ? `${who} has no pair and has not run yet.`
            : `${who} has ${h.pairs.length === 1 ? 'pair' : 'pairs'} ${say.list(h.pairs.map(say.pair))} and has not run yet.`;
        case 'alone':
          return `${who}: ${say.felt(h.felt)} in ${h.runs} of ${h.of} runs, others ${h.others.runs} of ${h.others.askedRuns}.`;
        case 'shared':
          return h.others.testers === 1
            ? `${who} and one other felt ${say.felt(h.felt)}.`
            : `${who} and ${h.others.testers} others felt ${say.felt(h.felt)}.`;
        case 'felt':
          return `${who} felt ${say.felt(h.felt)} in ${h.runs} of ${h.of} runs.`;
        case 'silent':
          return `${who} has been silent for ${days(h.days)}.`;
        case 'quiet':
          return h.once === 0
            ? `${who} felt nothing in ${runs(h.asked)}.`
            : `Nothing came twice in ${h.asked} runs of ${who}.`;
        case 'not-asked':
          return `${who} ran ${h.runs} times and never said what they felt.`;
      }
    },
    sub: (runCount: number, distance: string, list: string, last: string | null) =>
      `${runs(runCount)}, ${distance}${list === '' ? '' : `, now with pair ${list}`}${last === null ? '' : `. Last run ${last}`}.`,
    previous: (code: string) => `Previous: ${code}`,
    next: (code: string) => `Next: ${code}`,
    notFound: 'This tester is not in the group.',
    where: 'Where it is felt',
    whereSays: (tester: string) => `Where ${tester} feels something, and whether others do`,
    nothingFelt: 'Nothing was reported.',
    ownRuns: (n: number, of: number) => `${n} of ${of} runs`,
    others: (testerN: number, of: number, n: number, ofRuns: number) =>
      `others: ${testerN} of ${of} testers, ${n} of ${ofRuns} runs`,
    own: 'Own runs',
    otherTesters: 'Other testers',
    otherRuns: 'Their runs',
    sure: 'How sure',
    against: 'Against the others',
    againstNote: 'Mean score in the same rounds, 0 to 100; first wearings apart',
    marksNote: 'Too much or too little, in the same rounds: just right is in the middle',
    twoSidedRow: (question: string) => `${question}, too much or too little`,
    againstSays: (tester: string) => `Mean scores of ${tester} beside the other testers’`,
    attribute: 'Attribute',
    mean: 'Mean',
    range: 'Others, lowest to highest',
    complainedRow: 'Runs with a complaint',
    another: 'another tester',
    course: 'Overall comfort, run by run (0 to 100)',
    courseSays: (tester: string, n: number) => `Overall comfort of ${tester} in ${runs(n)}`,
    words: (tester: string) => `In ${tester}’s own words`,
    noWords: 'Nothing was written yet.',
    noteOf: (date: string, pair: string) => `${date}, pair ${pair}`,
    feet: 'Feet in the last',
    feetSays: (tester: string, pair: string) =>
      `The feet of ${tester} in the last of pair ${pair}, to scale`,
    feetOf: (pair: string, size: string) => `Pair ${pair}, ${size}`,
    feetNone: 'The feet were not measured. Edit this tester to add them.',
    feetOnly: 'No last is noted for these rounds; feet alone are drawn.',
    room: (mm: string) => `${mm} mm`,
    footSize: (length: string, width: string | null) =>
      width === null ? `${length} long` : `${length} × ${width}`,
    scale:
      'To scale, in mm. Figures at the tip: room at the toe; 10 to 15 is usual. Outlines are schematic: only length and width are measured.',
    foot: 'Foot',
    footLength: 'Foot length',
    footWidth: 'Foot width',
    last: 'Last',
    toe: 'Room at the toe',
    ofSide: (name: string, side: string) => `${name}, ${side}`,
    left: 'left',
    right: 'right',
    edit: 'Edit this tester',
    remove: 'Remove this tester',
    removeAsk: (tester: string) =>
      `Remove ${tester} from the group? Nothing was logged of them; it can be undone.`,
    removed: (tester: string) => `${tester} removed`,
    takeAll: (n: number) => (n === 1 ? 'Take the pair back' : `Take ${n} pairs back`),
    pains: 'Pain and damage they told of',
    invite: (tester: string) => `Invite ${tester}`,
    file: 'Hand-out file',
  },
};
