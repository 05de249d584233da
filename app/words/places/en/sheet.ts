/** The sheet, and the cards of all shoes. */
import type { RoundCardLine, SheetHeadline } from '../../../../core/headlines/index.ts';
import type { NextStep } from '../../../../core/review/index.ts';
import type { Say } from '../../say-names.ts';

type SureOnCard = Extract<RoundCardLine, { case: 'felt' }>['sure'];

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const days = (n: number) => count(n, 'day', 'days');

/** Such as "both runs of T01" or "3 of T01’s 4 runs". */
const shareOf = (n: number, of: number, tester: string): string =>
  n < of ? `${n} of ${tester}’s ${of} runs` : `${n === 2 ? 'both' : `all ${n}`} runs of ${tester}`;

export const sheet = {
  headline: (h: SheetHeadline, say: Say): string => {
    switch (h.case) {
      case 'no-round':
        return 'No round yet. Add the first one.';
      case 'nobody-ran':
        return h.pairs === 0
          ? `${say.round(h.round)} has no pairs yet.`
          : `${say.round(h.round)} has ${count(h.pairs, 'pair', 'pairs')}. Nobody has run yet.`;
      case 'pain':
        return h.testers.length === 1
          ? `${say.testers(h.testers)} reports pain. Answer that first.`
          : `${h.testers.length} testers report pain. Answer them first.`;
      case 'damage':
        return `Pair ${say.pair(h.pair)} comes apart. Look at it first.`;
      case 'recurs':
        return h.felt.length > 1
          ? `${say.upper(say.list(h.felt.map(say.felt)))} recur in ${say.round(h.round)}.`
          : `${say.upper(say.list(h.felt.map(say.felt)))} recurs: ${h.testers} of ${h.askedTesters} testers.`;
      case 'one-tester':
        return h.testers.length === 1
          ? `Only ${say.testers(h.testers)} keeps having ${say.felt(h.felt)}.`
          : `${say.upper(say.felt(h.felt))}: proved for single testers only.`;
      case 'fails':
        return `${say.round(h.round)} fails at least one limit of the brief.`;
      case 'holds':
        return `${say.round(h.round)} holds for everything the brief asks.`;
      case 'better':
        return `${say.upper(say.list(h.felt.map(say.felt)))} ${h.felt.length > 1 ? 'are' : 'is'} better. Nothing is settled yet.`;
      case 'watch':
        return `Nothing is proved in ${say.round(h.round)}. Watch ${say.felt(h.felt)}.`;
      case 'early':
        return `Too early: ${say.felt(h.felt)} in ${shareOf(h.reported, h.asked, say.tester(h.tester))}.`;
      case 'nothing-recurs':
        return `Nothing recurs in ${say.round(h.round)} so far.`;
    }
  },
  sub: (
    use: string,
    briefDistance: string,
    pairs: number,
    testers: number,
    runs: number,
    distance: string,
  ) =>
    `${use}, ${briefDistance} a pair. ${count(pairs, 'pair', 'pairs')}, ${count(testers, 'tester', 'testers')}, ${count(runs, 'run', 'runs')}, ${distance} so far.`,
  subStart: (use: string, briefDistance: string) => `${use}, ${briefDistance} a pair.`,
  brief: 'Read or change the brief',
  rounds: 'Rounds',
  editRounds: 'Rounds, blueprints and pairs',
  farthest: (distance: string, brief: string) => `farthest ${distance} of ${brief}`,
  roundBars: (round: string, stamp: string, farthest: string, brief: string) =>
    `${round}: ${stamp}; the farthest pair has run ${farthest} of ${brief}`,
  /** A round's surest complaint, and how sure it is that it recurs. */
  recurs: (felt: string, sure: SureOnCard, testers: number, asked: number) => {
    const of = `${testers} of ${asked} testers`;
    return {
      clear: `${felt}: ${of}.`,
      'one-tester': `${felt}: recurs for one tester.`,
      likely: `${felt}: likely, ${of}.`,
    }[sure];
  },
  /** One tester's, in more than one run. */
  early: (felt: string, n: number) =>
    `${felt}: one tester, in ${count(n, 'run', 'runs')}. Too few to say it recurs.`,
  nothingRecurs: 'Nothing recurs so far.',
  nobodyRan: 'Nobody has run in it yet.',
  shoe: 'What shows on the shoe',
  left: { sole: 'left sole', upper: 'left upper' },
  right: { sole: 'right sole', upper: 'right upper' },
  nothingShows: 'Nothing is known to recur, wear out early, come apart or be out of tolerance.',
  callout: {
    /** `sure`: how sure it is that it recurs. */
    felt: (sure: string, testers: number, of: number, runs: number, ofRuns: number) =>
      `${sure}: ${testers} of ${of} testers, ${runs} of ${ofRuns} runs`,
    oneTester: (tester: string, runs: number, ofRuns: number) =>
      `Only ${tester}: ${runs} of ${ofRuns} runs`,
    side: { left: ', left shoe only', right: ', right shoe only', both: '' },
    rounds: (rounds: number) => (rounds > 1 ? `, in ${rounds} rounds` : ''),
    better: (before: string, earlier: string, after: string, later: string) =>
      `Better: ${before} runs in ${earlier}, ${after} in ${later}`,
    share: (runs: number, of: number) => `${runs} of ${of}`,
    tolerance: (site: string, by: string, unit: string) => `${site} ${by} ${unit} off`,
    toleranceNote: (pair: string, measured: number) =>
      `Out of tolerance: pair ${pair}, of ${measured} pairs measured`,
    damageNote: (pair: string, distance: string) => `Damage: pair ${pair} at ${distance}`,
    wear: (limit: string) => `${limit} wears too fast`,
    wearNote: (site: string, value: string, at: string, brief: string) =>
      `${site}: ${value} at about ${at}; ${brief} asked`,
  },
  next: 'What to do next',
  steps: {
    'ask-about-pain': (who: string) => `Answer ${who}: pain`,
    'look-at-damage': (which: string) => `Look at ${which}: it comes apart`,
    'answer-damage': (which: string) => `Answer ${which} with a finding: it came apart`,
    'measure-change': (change: string, n: number) =>
      `Did it arrive? Measure “${change}” on ${count(n, 'pair', 'pairs')}`,
    'reach-about-stop-use': (who: string) => `Tell ${who}: do not run`,
    'decide-what-counts': (_: string, n: number) =>
      n === 1 ? 'Decide whether one entry counts' : `Decide whether ${n} entries count`,
    'add-round': () => 'Add the first round',
    'add-pairs': () => 'Add the pairs of this round',
    'add-testers': () => 'Add the testers',
    'measure-on-arrival': (round: string, n: number) =>
      `Measure ${count(n, 'pair', 'pairs')} of ${round} against the blueprint`,
    'hand-out': (which: string) => `Hand out ${which}`,
    'set-up-phones': (who: string) => `Invite ${who}: nothing has come yet`,
    'ask-all': (since: string, n: number) => `Nobody has logged since ${since} (${days(n)})`,
    'ask-the-silent': (who: string) => `Write to ${who}: no run for a week`,
    'write-findings': (_: string, n: number) =>
      n === 1
        ? 'Write a finding for a clear complaint'
        : `Write findings for ${n} clear complaints`,
    'answer-proposals': (_: string, n: number) => `${count(n, 'proposal', 'proposals')} to answer`,
    'assign-findings': (_: string, n: number) =>
      `Assign ${count(n, 'finding', 'findings')} to a round`,
    'judge-findings': (_: string, n: number) =>
      `${count(n, 'finding', 'findings')} to close: did the change work?`,
    'thank-testers': (_: string, n: number) =>
      `Thank ${count(n, 'tester', 'testers')}: what they reported was acted on`,
    'set-limits': () => 'Set the limits in the brief',
    'settle-verdict': (_: string, n: number) =>
      `${count(n, 'limit', 'limits')} still open: see what to measure`,
    'ask-testers': (who: string, n: number) => `${count(n, 'thing', 'things')} to ask ${who}`,
    'ask-about-odd-runs': (_: string, n: number) => `Check ${count(n, 'odd run', 'odd runs')}`,
  } satisfies Readonly<Record<NextStep['step'], (which: string, count: number) => string>>,
  testers: (n: number) => count(n, 'tester', 'testers'),
  pairs: (n: number) => count(n, 'pair', 'pairs'),
  pairNamed: (code: string) => `pair ${code}`,
  nothingToDo: 'Nothing to do right now.',
  more: (n: number) => `and ${n} more`,
  calendar: 'The test, day by day',
  calendarSays: (pairs: number, from: string, until: string) =>
    `${count(pairs, 'pair', 'pairs')} from ${from} to ${until}: hands, runs, checks, damage`,
  legend: {
    hand: 'in hand',
    run: 'run',
    complaint: 'run with a complaint',
    check: 'bench check',
    damage: 'damage',
    stop: 'do not run',
    planned: 'planned',
  },
  pair: 'Pair',
  hands: 'In whose hands',
  runs: 'Runs',
  complaints: 'With a complaint',
  checks: 'Bench checks',
  distance: 'Distance',
  note: 'Note',
  span: 'Span',
  spans: { whole: 'whole test', weeks: 'last 4 weeks', week: 'last week' },
  openRound: (round: string, pairs: number) =>
    `${round}: show its ${count(pairs, 'pair', 'pairs')}`,
  closeRound: (round: string) => `${round}: fold`,
  firstRows: (rows: number, of: number) => `The ${rows} pairs that have run farthest, of ${of}.`,
  runMark: (pair: string, date: string, distance: string) => `pair ${pair}, ${date}${distance}`,
};
