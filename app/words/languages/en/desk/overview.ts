import { countTesters } from '../count.ts';

export const overview = {
  next: 'What to do next',
  nothing: 'Nothing waits for you.',
  more: (count: number) => `and ${count} more`,
  steps: {
    'ask-about-pain': (count: number) =>
      count === 1 ? 'Ask about one report of pain' : `Ask about ${count} reports of pain`,
    'look-at-damage': (count: number) =>
      count === 1 ? 'Look at one damaged pair' : `Look at ${count} reports of damage`,
    'answer-damage': (count: number) =>
      count === 1 ? 'Answer one damage with a finding' : `Answer ${count} damages with findings`,
    'measure-change': (count: number) =>
      `Measure whether a change arrived: ${count} ${count === 1 ? 'pair' : 'pairs'} can tell`,
    'reach-about-stop-use': (count: number) =>
      count === 1
        ? 'Reach one tester who has not read a stop-use notice'
        : `Reach ${count} testers who have not read a stop-use notice`,
    'decide-what-counts': (count: number) =>
      count === 1
        ? 'Decide about one run or reading: does it count?'
        : `Decide about ${count} runs or readings: do they count?`,
    'add-round': () => 'Add the first round: what it is, its blueprint, its last',
    'add-pairs': () => 'Add the pairs of this round',
    'add-testers': () => 'Add the testers',
    'measure-on-arrival': (count: number) =>
      `Measure ${count} ${count === 1 ? 'pair' : 'pairs'} before anybody runs in ${count === 1 ? 'it' : 'them'}`,
    'hand-out': (count: number) => `Hand out ${count} ${count === 1 ? 'pair' : 'pairs'}`,
    'set-up-phones': (count: number) =>
      `Invite ${countTesters(count)}, or ask whether the phone is set up: nothing has come from them yet`,
    'ask-all': (count: number) =>
      `Ask ${count} testers how it goes: nobody has logged for a week or more`,
    'ask-the-silent': (count: number) =>
      `Ask ${count} ${count === 1 ? 'tester' : 'testers'} how it goes: no run for a week or more`,
    'write-findings': (count: number) =>
      count === 1
        ? 'Write a finding for one proven complaint'
        : `Write findings for ${count} proven complaints`,
    'answer-proposals': (count: number) =>
      `Answer ${count} ${count === 1 ? 'proposal' : 'proposals'} of specialists`,
    'assign-findings': (count: number) =>
      `Assign ${count} ${count === 1 ? 'finding' : 'findings'} to a round`,
    'judge-findings': (count: number) =>
      `Judge what came of ${count} ${count === 1 ? 'finding' : 'findings'}`,
    'thank-testers': (count: number) =>
      `Thank ${countTesters(count)}: what they reported was acted on`,
    'set-limits': () => 'Say in the brief which limits count as failure',
    'settle-verdict': (count: number) =>
      `See what would settle ${count} open ${count === 1 ? 'point' : 'points'} of the verdict`,
    'ask-testers': (count: number) =>
      count === 1 ? 'Ask a tester about one thing' : `Ask testers about ${count} things`,
    'ask-about-odd-runs': (count: number) =>
      count === 1
        ? 'Ask about one odd run of the last two weeks'
        : `Ask about ${count} odd runs of the last two weeks`,
  },
  rounds: 'Rounds',
  round: 'Round',
  pairs: 'Pairs',
  out: 'Out now',
  runs: 'Runs',
  distance: 'Distance',
  farthest: 'Farthest pair',
  recurs: 'Recurs',
  verdict: 'Verdict',
  nobodyRan: 'nobody has run yet',
  nothingProven: 'nothing proven',
  inHands: 'In whose hands',
  nobodyHolds: 'No pair is out.',
  silent: 'Silent for a week or more',
  nobodySilent: 'Nobody who holds a pair is silent.',
  days: (days: number) => `${days} ${days === 1 ? 'day' : 'days'}`,
};
