/** The list of runs, the page of a run, and what waits for a decision. */
import type {
  RunHeadline,
  RunsHeadline,
  WaitingHeadline,
} from '../../../../core/headlines/index.ts';
import type { RunField, RunFilter, RunSort, RunState } from '../../../../core/review/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

export const runs = {
  headline: (h: RunsHeadline, say: Say): string => {
    switch (h.case) {
      case 'none':
        return 'Nobody has logged a run yet.';
      case 'pain':
        if (!h.unanswered)
          return h.testers.length === 1
            ? `${say.testers(h.testers)} still stays out because of pain.`
            : `${h.testers.length} testers still stay out because of pain.`;
        return h.testers.length === 1
          ? `${say.testers(h.testers)} reports pain. Answer that first.`
          : `${h.testers.length} testers report pain. Answer them first.`;
      case 'damage':
        return h.pairs.length === 1
          ? `Pair ${say.list(h.pairs.map(say.pair))} comes apart. Answer its tester.`
          : `${h.pairs.length} pairs come apart. Answer their testers.`;
      case 'waiting':
        return h.runs === h.entries
          ? `${count(h.runs, 'run waits', 'runs wait')} for your decision.`
          : `${count(h.entries, 'entry waits', 'entries wait')} for your decision.`;
      case 'odd':
        return `No entry waits for your decision. ${h.odd} of ${count(h.runs, 'run', 'runs')} ${h.odd === 1 ? 'looks' : 'look'} odd.`;
      case 'quiet':
        return `${count(h.runs, 'run', 'runs')}. No entry waits for your decision.`;
    }
  },
  howTheyCome: 'Testers log on their phones. Runs of a spreadsheet come in as a table.',
  sub: (all: number, counted: number, distance: string, testers: number) =>
    all === counted
      ? `${count(all, 'run', 'runs')} by ${count(testers, 'tester', 'testers')}, ${distance}.`
      : `${count(all, 'run', 'runs')} by ${count(testers, 'tester', 'testers')}; ${counted} count: ${distance}.`,
  waitingHeadline: (h: WaitingHeadline): string => {
    switch (h.case) {
      case 'nothing':
        return h.aside === 0
          ? 'No entry waits for your decision.'
          : `No entry waits for your decision. You set ${h.aside} aside.`;
      case 'out': {
        const parts = [
          ...(h.runs > 0 ? [count(h.runs, 'run', 'runs')] : []),
          ...(h.readings > 0 ? [count(h.readings, 'reading', 'readings')] : []),
        ];
        const one = h.runs + h.readings === 1;
        return `${parts.join(' and ')} ${one ? 'is' : 'are'} in no figure until you decide.`;
      }
      case 'meanwhile':
        return `${count(h.entries, 'odd entry counts', 'odd entries count')} until you decide.`;
    }
  },
  runHeadline: (h: RunHeadline, say: Say): string => {
    const who = say.tester(h.tester);
    const day = say.date(h.at);
    switch (h.case) {
      case 'pain':
        return `${who} reports pain on ${day}: ${h.score} of 10.`;
      case 'off-day':
        return `An off day for ${who}, ${day}: comfort ${say.number(h.score, 0)}, usually ${say.number(h.usual, 0)}.`;
      case 'best-day':
        return `A good day for ${who}, ${day}: comfort ${say.number(h.score, 0)}, usually ${say.number(h.usual, 0)}.`;
      case 'felt':
        return h.more === 0
          ? `${who} felt ${say.felt(h.felt)} on ${day}.`
          : `${who} felt ${say.felt(h.felt)} and ${h.more} more on ${day}.`;
      case 'nothing':
        return `Nothing bothered ${who} on ${day}.`;
      case 'not-asked':
        return `${who} said nothing about the feet on ${day}.`;
    }
  },
  all: 'All runs',
  needsYou: 'Needs you',
  decide: (n: number) =>
    n === 1 ? 'Decide whether one entry counts' : `Decide whether ${n} entries count`,
  oddRuns: (n: number) => count(n, 'odd run', 'odd runs'),
  columns: {
    date: 'Day',
    tester: 'Tester',
    pair: 'Pair',
    distance: (unit: string) => `Distance, ${unit}`,
    pace: (unit: string) => `Pace, min/${unit}`,
    surface: 'Surface',
    comfort: 'Comfort',
    complaints: 'Complaints',
    pain: 'Pain',
    said: 'In their words',
    state: 'State',
  } satisfies Readonly<Record<RunSort | 'surface' | 'said' | 'state', unknown>>,
  filters: {
    all: 'all runs',
    complaint: 'with a complaint',
    pain: 'with pain',
    words: 'with words',
    photos: 'with a photo or track',
    apart: 'odd, corrected or not counted',
  } satisfies Readonly<Record<RunFilter, string>>,
  show: 'Show',
  everyRound: 'every round',
  everyTester: 'every tester',
  everyPair: 'every pair',
  search: 'Words, tester or pair',
  found: (found: number, all: number) =>
    found === all ? count(all, 'run', 'runs') : `${found} of ${count(all, 'run', 'runs')}`,
  noneFound: 'No run is like that.',
  /** Where the list ends before the runs do. */
  tooMany: (listed: number, left: number) =>
    `The list holds the first ${listed}. ${count(left, 'run is', 'runs are')} not in it: narrow it down.`,
  select: (date: string, tester: string) => `Select the run of ${tester}, ${date}`,
  asideSelected: (n: number) => `Set ${count(n, 'run', 'runs')} aside`,
  countSelected: (n: number) => `Count ${count(n, 'run', 'runs')}`,
  asideNow: (n: number) => `${count(n, 'run', 'runs')} set aside`,
  countedNow: (n: number) => `${count(n, 'run counts', 'runs count')} now`,
  notAsked: 'not asked',
  marks: {
    photos: (n: number) => count(n, 'photo', 'photos'),
    track: 'track',
    odd: 'odd',
    corrected: 'corrected',
    despiteStop: 'run in spite of the notice',
  },
  states: {
    counts: 'counts',
    waits: 'waits',
    'set-aside': 'set aside',
    twice: 'logged twice',
  } satisfies Readonly<Record<RunState, string>>,
  stateMeaning: {
    counts: 'In every figure.',
    waits: 'In no figure until you decide whether it counts.',
    'set-aside': 'On record, in no figure.',
    twice: 'The same run was logged again; the other one counts.',
  } satisfies Readonly<Record<RunState, string>>,
  openRun: (date: string, tester: string) => `Open the run of ${tester}, ${date}`,

  nth: (nth: number, of: number) => `run ${nth} of ${of} in this pair`,
  before: (date: string) => `before: ${date}`,
  after: (date: string) => `after: ${date}`,
  pairCrumb: (code: string) => `Pair ${code}`,
  gone: 'This run is not here.',
  goneNote: 'Its tester took it back, or its pair is left out of the figures you read.',
  erased: (tester: string) => `${tester} took this run back.`,
  comfort: (tester: string) => `Comfort, beside ${tester}’s other runs in this pair`,
  comfortSays: (tester: string, others: number) =>
    `Comfort from 0 to 100: this run, and ${count(others, 'other run', 'other runs')} of ${tester} in the pair`,
  ends: '0 to 100',
  thisRun: 'this run',
  otherRuns: (tester: string) => `${tester}’s other runs`,
  usually: 'Usually',
  attribute: 'Attribute',
  noComfort: 'No comfort was given.',
  feet: 'Feet',
  nothingBothered: 'nothing bothered them',
  feetSays: (n: number) => `Where on the feet: ${count(n, 'complaint', 'complaints')}`,
  severity: (n: number) => `${n} of 10`,
  from: (distance: string) => `from ${distance} on`,
  skin: { blister: 'blister', broken: 'broken skin' },
  said: 'All that was said',
  labels: {
    pair: 'Pair',
    startedAt: 'Start',
    distanceM: 'Distance',
    durationS: 'Time',
    surfaces: 'Surface',
    ground: 'Ground',
    temperatureC: 'Temperature',
    sock: 'Sock',
    comfort: 'Comfort',
    comfort2: 'Too much or too little',
    feet: 'Feet',
    pain: 'Pain',
    words: 'Words',
    photos: 'Photos',
    track: 'Track',
    wornDespiteStop: 'Why in spite of the notice',
  } satisfies Readonly<Record<RunField, string>>,
  pace: 'Pace',
  tester: 'Tester',
  round: 'Round',
  inRound: (round: string, at: string) => `${round}, ${at} on it before this run`,
  byTrack: 'by the track',
  otherFigure: (distance: string) => `the track says ${distance}`,
  firstImpression: 'first run in the pair',
  painOf: (n: number) => `${n} of 10`,
  painIsNew: 'new',
  none: 'none',
  notSaid: 'not said',
  photoCount: (n: number) => count(n, 'photo', 'photos'),
  complaintCount: (n: number) => count(n, 'complaint', 'complaints'),
  caution: 'This pain calls for caution: no more runs in this test until a clinician says so.',
  painTitle: 'Pain: answer the tester',
  track: 'Track',
  trackNote: (sent: string) => `${sent} of the way were sent; both ends stay on the phone.`,
  trackSays: (distance: string) => `The way of the run, ${distance}, with kilometres`,
  start: 'begins',
  noTrack: 'The track is not on this device yet.',
  paceByKm: 'Pace by kilometre',
  paceSays: (n: number) => `Pace of ${count(n, 'kilometre', 'kilometres')}`,
  kilometre: 'Kilometre',

  correct: 'Correct this run',
  correctOf: (tester: string) => `Correct this run for ${tester}`,
  correctHint: (tester: string) =>
    `${tester} sees the run as you save it, marked as corrected by the lead, and why.`,
  why: 'Why is it corrected?',
  whyMissing: 'Say why: the tester reads it.',
  saveCorrection: 'Save the correction',
  corrected: 'Run corrected',
  undone: 'The earlier version is back',
  correctedOn: (who: string, date: string, why: string) => `Corrected by ${who} on ${date}: ${why}`,
  undoCorrection: 'Undo the correction',
  changedMeanwhile: 'The run was changed meanwhile. Look at it anew.',
  noReason: 'Say why.',
  aLead: 'the lead',
  setAside: 'Set this run aside',
  setAsideHint: 'It stays on record, marked, and is in no figure.',
  asideSince: (date: string, why: string) =>
    why === ''
      ? `Set aside on ${date}; in no figure.`
      : `Set aside on ${date}; in no figure: ${why}`,
  countedSince: (date: string, why: string) =>
    why === '' ? `Counted after a check on ${date}.` : `Counted after a check on ${date}: ${why}`,
  takeBackDecision: 'Take the decision back',
  decisionBack: 'Decision taken back',
  countIt: 'Count this run',
  history: 'Earlier versions',
  loggedOn: (who: string, when: string) => `${who} logged it, ${when}.`,
  changedOn: (who: string, when: string) => `${who} changed it, ${when}.`,
  erasedOn: (who: string, when: string) => `${who} took it back, ${when}.`,
  neverChanged: 'Never changed since.',
  nothingShown: 'Nothing that is shown here.',
  fromTo: (before: string, after: string) => `${before} → ${after}`,
  form: {
    distance: (unit: string) => `Distance, ${unit}`,
    time: 'Time (h:mm:ss or minutes)',
    start: 'Start',
    pair: 'Pair',
    surfaces: 'Surface',
    ground: 'Ground',
    temperature: (unit: string) => `Temperature, ${unit}`,
    sock: 'Sock',
    comfort: 'Comfort; empty: not said',
    feet: 'Feet',
    feetAnswers: {
      unasked: 'not said',
      nothing: 'nothing bothered them',
      something: 'something did',
    },
    foot: 'Foot',
    zone: 'Where',
    kind: 'What',
    severity: 'How bad, 0 to 10',
    from: (unit: string) => `From, ${unit}`,
    skin: 'Skin',
    skinWhole: 'intact',
    addComplaint: 'Add a complaint',
    removeComplaint: 'Remove',
    pain: 'Pain, 0 to 10',
    painIsNew: 'Is it new?',
    yes: 'yes',
    no: 'no',
    painSigns: 'Signs',
    words: 'Their words',
    unsaid: 'not said',
    wrong: {
      pair: 'Choose the pair.',
      distance: 'Type a distance such as 10.5.',
      time: 'Type a time such as 52:30.',
      start: 'Choose day and hour.',
      ahead: 'That is still to come.',
      temperature: 'Type a temperature such as 12.',
      worn: 'Say why the pair was worn.',
      from: 'It begins within the run.',
      where: 'Add a complaint, or say that nothing bothered them.',
      kind: 'Choose what was felt.',
    },
  },
};
