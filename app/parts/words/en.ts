/** Everything the phone says, in English. The other languages have the same keys, or do not compile. */
import type {
  DamageReport,
  Foot,
  Refusal,
  Run,
  Surface,
  UnpackProblem,
} from '../../../core/records/index.ts';
import type { painSigns } from '../../../core/records/index.ts';

type Ground = NonNullable<Run['ground']>;
type Sock = NonNullable<Run['sock']>;

export const en = {
  app: 'Pairlog',
  back: 'Back',
  cancel: 'Cancel',
  save: 'Save',
  send: 'Send',
  close: 'Close',
  undo: 'Undo',
  change: 'Change',
  erase: 'Erase',
  remove: 'Remove',
  clear: 'No answer',
  unanswered: 'not answered',
  optional: 'optional',
  loading: 'One moment …',
  left: 'left',
  right: 'right',
  both: 'both',
  foot: { left: 'left', right: 'right' } as Readonly<Record<Foot, string>>,
  sole: 'sole',
  upper: 'upper',

  welcome: {
    title: 'Which test are you in?',
    intro: 'Pairlog keeps what you say about a pair on this phone, with or without a network.',
    code: 'Code from your lead',
    codeHint: 'Ten letters and digits; or scan the square code with your camera.',
    codeWrong: 'That is not a code: ten letters and digits, without I, L, O and U.',
    join: 'Join',
    joining: 'Joining …',
    file: 'Open a hand-out file',
    fileHint: 'A file ending in .pairlog that your lead sent you.',
    lead: 'I lead a wear test',
    groupName: 'Name of your group',
    start: 'Start a group on this device',
    refused:
      'The hub does not know this code, or it was used or is older than 72 hours. Ask your lead for a new one.',
    tooMany: 'Too many tries from here. Wait ten minutes and try again.',
    offline: 'No network. Joining needs one, once; after that you can log without.',
    notAHub:
      'Something else answered, not the hub. If this is a guest network, sign in to it first.',
  },

  today: {
    title: 'Today',
    myPairs: 'Pairs I hold',
    noPairs: 'You hold no pair yet. As soon as your lead hands one out, it stands here.',
    logRun: 'Log a run',
    logRunIn: (code: string) => `Log a run in ${code}`,
    logged: (distance: string, runs: number) =>
      runs === 0 ? 'no run yet' : `${distance} in ${runs} ${runs === 1 ? 'run' : 'runs'} by you`,
    size: (size: string) => `size ${size}`,
    runs: 'My runs',
    damage: 'Report damage',
    draft: 'A run is half filled in.',
    continue: 'Go on',
    settings: 'Settings',
    desk: 'To the desk',
    due: (days: number) => `No run for ${days} days. If you ran, it can still be logged.`,
    revoked:
      'This phone is no longer signed in. Your log is safe: go on logging, and send it as a file.',
  },

  unsent: {
    title: 'Not sent yet',
    none: 'Everything is with your group.',
    some: (count: number) =>
      count === 1 ? '1 entry is only on this phone' : `${count} entries are only on this phone`,
    since: (date: string) => `The oldest is from ${date}.`,
    photos: (count: number) =>
      count === 1 ? '1 photo or track waits' : `${count} photos or tracks wait`,
    syncNow: 'Send now',
    asFile: 'Send as a file',
    asFileHint: 'Works without the hub: your lead opens the file. It may arrive twice or late.',
    noHub: 'Your group works by files. Send yours to your lead after each run or once a week.',
    refusedTitle: 'The hub did not take these',
    refusedHint: 'They stay on this phone and go along in the file.',
    refused: {
      'not-a-revision': 'damaged',
      'newer-envelope': 'written by a newer app than the hub',
      'too-large': 'too large',
      'hash-differs': 'damaged',
      'not-allowed': 'not yours to write',
      unreadable: 'something in it is not valid',
      erased: 'was taken back for good',
      unknown: 'no reason given',
    } as Readonly<Record<Refusal | 'unknown', string>>,
    states: {
      idle: '',
      running: 'Sending …',
      offline: 'No network. It goes out by itself later.',
      'not-a-hub': 'Another page answered, not the hub: is this a guest network?',
      revoked: 'This phone is no longer signed in.',
      'hub-trouble': 'The hub has trouble. It is tried again by itself.',
      done: 'Up to date.',
    },
  },

  log: {
    title: 'Log a run',
    titleChange: 'Change a run',
    pair: 'Pair',
    distance: (unit: string) => `Distance, ${unit}`,
    time: 'Time',
    timeHint: 'Digits are enough: 5230 is 52:30.',
    when: 'Started',
    surface: 'Surface',
    surfaceHint: 'Several: shared evenly.',
    comfort: 'Comfort',
    moreComfort: 'More about comfort',
    feet: 'Feet',
    nothing: 'Nothing bothered me',
    something: 'Something did',
    pain: 'Pain, 0 none to 10 worst',
    painNew: 'Is it new?',
    yes: 'Yes',
    no: 'No',
    painSigns: 'With it',
    more: 'Weather, sock, words',
    ground: 'Ground',
    temperature: (unit: string) => `Air, ${unit}`,
    sock: 'Sock',
    words: 'In your words',
    saved: 'Saved on this phone',
    wrongDistance: (example: string) => `How far was it? For example ${example}.`,
    wrongTime: 'That is no time. For example 52:30 or 1:05:00.',
    wrongTemperature: 'That is no temperature. For example 14.',
    wrongWhen: 'That is no date and time.',
    full: 'This phone has no room left. Nothing is lost: your entry is kept as a draft. Free some space (photos, videos, unused apps), then save again.',
    lost: 'The browser did not write it. Your entry is kept as a draft: try again, or close the app and open it anew.',
    invalid: (field: string) => `Something is not valid: ${field}.`,
    stopped: (reason: string) => `This pair is withdrawn: ${reason}`,
    whyWorn: 'Why was it worn all the same?',
    whyWornMissing: 'Say why the pair was worn although it is withdrawn.',
    unknownPair: 'This pair is not on this phone.',
  },

  complaint: {
    title: 'What bothered you?',
    tapWhere: 'Tap where it was.',
    list: 'Zones as a list',
    felt: 'What was it like?',
    otherKinds: 'Something else',
    severity: 'How much, 0 hardly to 10 had to stop',
    from: (unit: string) => `From which ${unit}?`,
    fromHint: 'Of this run; empty if you do not know.',
    bothFeet: 'Both feet',
    skin: 'Skin',
    intact: 'intact',
    blister: 'blister',
    broken: 'broken',
    done: 'Done',
    add: 'Add another',
    wrongFrom: 'That is no distance within the run.',
    says: (foot: string, zone: string, kind: string) => `${kind}, ${foot} ${zone}`,
  },

  caution: {
    title: 'Stop this test for now',
    body: 'New pain of 3 or more, or pain with swelling, a limp, numbness, at night, or when you cannot put weight on the foot: stop running in this test and see a doctor or physiotherapist. If you cannot put weight on it, or it is badly swollen, today.',
    disclaimer:
      'This is no medical advice. What your clinician and your local rules say comes first.',
    lead: 'Your lead is told.',
  },

  runs: {
    title: 'My runs',
    none: 'No run yet.',
    erased: 'Run erased',
    restored: 'Run is back',
    erasedRuns: 'Erased',
    bringBack: 'Bring back',
    history: 'Earlier versions',
    savedAt: (date: string) => `saved ${date}`,
    beside: 'Changed on another device at the same time; this version lost:',
    takeBack: 'Take back for good',
    takeBackAsk: 'This run is then gone everywhere it went, for good. Take it back?',
    nothing: 'nothing bothered me',
    notAsked: 'feet not answered',
    complaints: (count: number) => (count === 1 ? '1 complaint' : `${count} complaints`),
    comfort: (score: number) => `comfort ${score}`,
  },

  damage: {
    title: 'The pair is coming apart',
    now: 'Take the pair off now and do not run in it again.',
    what: 'What broke?',
    which: 'Which shoe?',
    saved: 'Reported. Do not wear this pair.',
    missing: 'Say what broke.',
  },

  stop: {
    title: (code: string) => `Do not wear pair ${code}`,
    acknowledge: 'I have read it',
    acknowledged: 'Read',
  },

  settings: {
    title: 'Settings',
    language: 'Language',
    distance: 'Distances in',
    km: 'kilometres',
    mi: 'miles',
    temperature: 'Temperatures in',
    sizes: 'Shoe sizes in',
    mondopoint: 'mm (Mondopoint)',
    theme: 'Light or dark',
    themes: { system: 'like the phone', light: 'light', dark: 'dark' },
    storage: 'Storage',
    persisted: 'The browser keeps the log for good.',
    notPersisted:
      'The browser may clear the log when space runs short. Put Pairlog on the home screen to prevent it.',
    askPersist: 'Ask the browser to keep it',
    install: 'Put it on the home screen',
    installHint:
      'On an iPhone: Share, then Add to Home Screen. On Android: menu, then Install. Do it before the first log: each has a storage of its own.',
    you: 'You',
    member: (group: string) => `Member of ${group}`,
    takeBackAll: 'Take everything back',
    takeBackAllHint:
      'Erases all your runs and reports for good, here and wherever they went. Only that something was erased remains.',
    takeBackAllAsk: 'Take back everything you logged, for good?',
    takenBack: 'Everything was taken back. It leaves the hub at the next sync.',
    file: 'Open a file',
  },

  file: {
    title: 'Open a file',
    choose: 'Choose a file',
    contains: (fresh: number, known: number) =>
      `${fresh} new ${fresh === 1 ? 'entry' : 'entries'}, ${known} already here`,
    take: 'Take it in',
    taken: (fresh: number) => `${fresh} new ${fresh === 1 ? 'entry' : 'entries'} taken in`,
    problems: (count: number) =>
      count === 1
        ? '1 line of the file is damaged; the rest can be taken.'
        : `${count} lines of the file are damaged; the rest can be taken.`,
    wrong: {
      damaged: 'The file is damaged. Ask for it again.',
      'too-large': 'The file is too large.',
      'no-log': 'This zip holds no log of Pairlog.',
      'attachment-differs':
        'A photo or track in the file was changed on the way. Ask for it again.',
      'not-a-bundle': 'This is no file of Pairlog.',
      'newer-bundle': 'The file is from a newer app. Update this one first.',
      'for-nobody':
        'This file does not say whose phone it sets up. Ask your lead for a hand-out file.',
      'other-group': 'The file belongs to another group.',
    } as Readonly<
      Record<UnpackProblem | 'not-a-bundle' | 'newer-bundle' | 'for-nobody' | 'other-group', string>
    >,
  },

  update: { ready: 'A newer version is ready.', now: 'Use it' },
  evicted:
    'The browser has cleared what this phone held. Join again with a new code: what the hub had comes back.',
  notFound: 'There is nothing here.',
  toToday: 'To today',

  surfaces: {
    road: 'road',
    track: 'running track',
    treadmill: 'treadmill',
    gravel: 'gravel',
    trail: 'trail',
    grass: 'grass',
    sand: 'sand',
    snow: 'snow',
  } as Readonly<Record<Surface, string>>,
  grounds: {
    dry: 'dry',
    damp: 'damp',
    wet: 'wet',
    mud: 'mud',
    'snow-ice': 'snow or ice',
  } as Readonly<Record<Ground, string>>,
  socks: { none: 'none', thin: 'thin', medium: 'medium', thick: 'thick' } as Readonly<
    Record<Sock, string>
  >,
  painSigns: {
    swelling: 'swelling',
    limp: 'a limp',
    numbness: 'numbness',
    'night-pain': 'pain at night',
    'cannot-bear-weight': 'cannot put weight on it',
  } as Readonly<Record<(typeof painSigns)[number], string>>,
  damages: {
    'sole-peeling': 'sole peels off',
    'plate-cracked': 'plate cracked',
    'heel-counter-broken': 'heel counter broken',
    'upper-torn': 'upper torn',
    'eyelet-torn': 'eyelet torn out',
    'tread-torn': 'tread torn off',
    other: 'something else',
  } as Readonly<Record<DamageReport['what'], string>>,
};

/** The same keys, the same kinds of values, in any language. */
export type Words = typeof en;
