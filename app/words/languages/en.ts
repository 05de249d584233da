/** Everything that Pairlog says, in English. Every other language is one file with the same exports. */
import type { GpxProblem } from '../../../core/track/index.ts';
import type { RunOddity } from '../../../core/mileage/index.ts';
import type {
  Advice,
  Foot,
  Kind,
  LeftOut,
  Refusal,
  UnpackProblem,
} from '../../../core/records/index.ts';
import type { Glossary, LanguageName, NamedRecord, TerminalWords } from '../types.ts';

const runs = (count: number) => `${count} ${count === 1 ? 'run' : 'runs'}`;
const testers = (count: number) => `${count} ${count === 1 ? 'tester' : 'testers'}`;
const pairs = (count: number) => `${count} ${count === 1 ? 'pair' : 'pairs'}`;
/** All testers of the group, and how many of them have run in the pairs at hand. */
const panel = (all: number, haveRun: number) =>
  `${testers(all)} in the group (${haveRun} ${haveRun === 1 ? 'has' : 'have'} run)`;

export const about: LanguageName = { name: 'English', locale: 'en-GB' };

/** Terms of the trade */
export const glossary: Glossary = {
  zones: {
    P1: { name: 'big toe', trade: 'forepart, big-toe pad', anatomy: 'hallux' },
    P2: { name: 'lesser toes', trade: 'forepart', anatomy: 'toes 2 to 5' },
    P3: { name: 'medial ball', trade: 'ball, medial forefoot', anatomy: 'first metatarsal head' },
    P4: { name: 'central ball', trade: 'forefoot, tread', anatomy: 'metatarsal heads 2 to 4' },
    P5: { name: 'lateral ball', trade: 'lateral forefoot', anatomy: 'fifth metatarsal head' },
    P6: {
      name: 'medial arch',
      trade: 'arch, shank, medial sidewall',
      anatomy: 'medial longitudinal arch',
    },
    P7: {
      name: 'lateral midfoot',
      trade: 'lateral waist',
      anatomy: 'cuboid, base of fifth metatarsal',
    },
    P8: { name: 'medial heel', trade: 'medial rearfoot, post side', anatomy: 'medial calcaneus' },
    P9: {
      name: 'lateral heel',
      trade: 'lateral rearfoot, landing bevel',
      anatomy: 'lateral calcaneus',
    },
    U1: {
      name: 'toe tip',
      trade: 'toe cap, toe bumper, toe spring',
      anatomy: 'tips and nails of the toes',
    },
    U2: {
      name: 'medial toe box',
      trade: 'toe box, medial mudguard',
      anatomy: 'bunion area, first toe joint',
    },
    U3: {
      name: 'lateral toe box',
      trade: 'toe box, lateral mudguard',
      anatomy: 'little toe, fifth toe joint',
    },
    U4: {
      name: 'vamp flex line',
      trade: 'vamp, toe break, overlay edge',
      anatomy: 'top of the toe joints',
    },
    U5: {
      name: 'instep',
      trade: 'throat, eyestay, tongue, laces',
      anatomy: 'instep: navicular, first ray, talus',
    },
    U6: {
      name: 'medial midfoot wall',
      trade: 'medial quarter, saddle',
      anatomy: 'medial midfoot, navicular side',
    },
    U7: {
      name: 'lateral midfoot wall',
      trade: 'lateral quarter, saddle',
      anatomy: 'lateral midfoot, base of fifth metatarsal',
    },
    U8: { name: 'ankle bones', trade: 'collar, topline', anatomy: 'medial and lateral malleolus' },
    U9: {
      name: 'Achilles tendon',
      trade: 'heel tab, heel notch, back collar',
      anatomy: 'Achilles tendon',
    },
    U10: {
      name: 'heel cup',
      trade: 'heel counter, foxing, backstay',
      anatomy: 'back and sides of the heel bone',
    },
  },
  rollUps: {
    forefoot: 'forefoot',
    midfoot: 'midfoot',
    rearfoot: 'rearfoot',
    'forepart-upper': 'forepart of the upper',
    'midfoot-upper': 'midfoot of the upper',
    'rear-upper': 'rear of the upper',
  },
  kinds: {
    'heel-slip': { name: 'Heel slip', meaning: 'the heel lifts out of the shoe' },
    'hot-spot': { name: 'Hot spot', meaning: 'a burning spot, before a blister' },
    rubbing: { name: 'Rubbing', meaning: 'something moves against the skin' },
    pressure: { name: 'Pressure', meaning: 'presses in one place, without movement' },
    'toe-bang': { name: 'Toe bang', meaning: 'toes hit the front; black nails' },
    'lace-bite': { name: 'Lace bite', meaning: 'laces or tongue press on the instep' },
    numbness: { name: 'Numbness', meaning: 'numb, or pins and needles' },
    'arch-pressure': { name: 'Arch pressure', meaning: 'the shoe pushes into the arch' },
    'bottoming-out': { name: 'Bottoming out', meaning: 'the foam gives way to the ground' },
    harsh: { name: 'Harsh landing', meaning: 'too firm when landing' },
    unstable: { name: 'Unstable', meaning: 'rolls or tips to a side' },
    'harsh-edge': { name: 'Harsh edge', meaning: 'an edge or a lip is felt' },
    overheating: { name: 'Overheating', meaning: 'hot or sweaty' },
    'too-tight': { name: 'Too tight', meaning: 'squeezes the foot' },
    'too-loose': { name: 'Too loose', meaning: 'the foot moves about' },
    slipping: { name: 'Poor grip', meaning: 'the outsole slips on the ground' },
    stiff: { name: 'Stiff', meaning: 'does not bend where the foot bends' },
    catching: { name: 'Catching', meaning: 'an edge or the toe catches the ground' },
    noise: { name: 'Noise', meaning: 'squeaks, clicks or slaps' },
    debris: { name: 'Debris gets in', meaning: 'stones or sand in the shoe or the tread' },
    pain: { name: 'Pain', meaning: 'it hurts' },
  },
  attributes: {
    overall: {
      name: 'Overall comfort',
      low: 'not comfortable at all',
      high: 'most comfortable imaginable',
    },
    'heel-cushioning': {
      name: 'Heel cushioning',
      low: 'far too hard or too soft',
      high: 'just right',
    },
    'forefoot-cushioning': {
      name: 'Forefoot cushioning',
      low: 'far too hard or too soft',
      high: 'just right',
    },
    flexibility: {
      name: 'Flexibility of the forefoot',
      low: 'fights my stride',
      high: 'bends just as I do',
    },
    stability: { name: 'Stability', low: 'rolls under me', high: 'perfectly steady' },
    arch: { name: 'Arch', low: 'presses or is missing', high: 'fits my arch' },
    'fit-length': { name: 'Fit in length', low: 'far too short or too long', high: 'just right' },
    'toe-room': { name: 'Toe room', low: 'toes cramped or swimming', high: 'just right' },
    'heel-hold': { name: 'Heel hold', low: 'slips or bites', high: 'holds without a thought' },
    'midfoot-hold': {
      name: 'Midfoot hold',
      low: 'foot slides or is squeezed',
      high: 'locked down in comfort',
    },
    ventilation: { name: 'Ventilation', low: 'hot and sweaty', high: 'cool and dry' },
    'inside-feel': { name: 'Inside feel', low: 'rough, seams felt', high: 'smooth all round' },
    'weight-feel': {
      name: 'Weight in use',
      low: 'heavy on the foot',
      high: 'forgotten on the foot',
    },
  },
  parts: {
    last: { name: 'last', role: 'last maker' },
    'upper-pattern': { name: 'upper pattern', role: 'pattern engineer' },
    'upper-material': { name: 'upper material', role: 'material developer' },
    'midsole-geometry': { name: 'midsole geometry', role: 'sole-unit designer' },
    'midsole-foam': { name: 'midsole foam', role: 'foam compounder' },
    outsole: { name: 'outsole', role: 'outsole and rubber developer' },
    sockliner: { name: 'sockliner', role: 'sockliner developer' },
    lacing: { name: 'lacing', role: 'pattern and trims engineer' },
    tooling: { name: 'tooling', role: 'mould engineer' },
  },
  trades: {
    last: 'last',
    upper: 'upper',
    materials: 'materials',
    foam: 'foam',
    tooling: 'tooling',
  },
  surfaces: {
    road: 'road',
    track: 'running track',
    treadmill: 'treadmill',
    gravel: 'gravel',
    trail: 'trail',
    grass: 'grass',
    sand: 'sand',
    snow: 'snow',
  },
  grounds: { dry: 'dry', damp: 'damp', wet: 'wet', mud: 'mud', 'snow-ice': 'snow or ice' },
  socks: { none: 'none', thin: 'thin', medium: 'medium', thick: 'thick' },
  painSigns: {
    swelling: 'swelling',
    limp: 'a limp',
    numbness: 'numbness',
    'night-pain': 'pain at night',
    'cannot-bear-weight': 'cannot put weight on it',
  },
  damages: {
    'sole-peeling': 'sole peels off',
    'plate-cracked': 'plate cracked',
    'heel-counter-broken': 'heel counter broken',
    'upper-torn': 'upper torn',
    'eyelet-torn': 'eyelet torn out',
    'tread-torn': 'tread torn off',
    other: 'something else',
  },
  runners: { neutral: 'neutral', stability: 'stability' },
  uses: {
    'daily-training': 'daily training',
    'long-run': 'long run',
    tempo: 'tempo',
    'race-day': 'race day',
    trail: 'trail',
    walking: 'walking',
  },
  stages: {
    pullover: 'pullover',
    'first-samples': 'first samples',
    'wear-test-samples': 'wear-test samples',
    'confirmation-samples': 'confirmation samples',
    production: 'production',
  },
  measures: {
    'stack-height': 'Stack height',
    hardness: 'Hardness',
    mass: 'Mass',
    'tread-depth': 'Tread depth',
    'impact-peak': 'Impact peak',
    'energy-absorbed': 'Energy absorbed',
    'energy-returned': 'Energy returned',
    dimension: 'Dimension',
  },
  units: {
    mm: 'mm',
    g: 'g',
    'asker-c': 'Asker C',
    'shore-a': 'Shore A',
    N: 'N',
    J: 'J',
    '%': '%',
    kPa: 'kPa',
  },
  roles: { lead: 'lead', tester: 'tester', specialist: 'specialist' },
  evidence: {
    'recurs-across-testers': {
      name: 'recurs across testers',
      meaning: 'proven: at least two testers have it more often than the brief allows',
    },
    'recurs-for-one-tester': {
      name: 'recurs for one tester',
      meaning: 'proven for the testers named, open for the others: a question of fit on that foot',
    },
    'early-sign': { name: 'early sign', meaning: 'reported in several runs, not proven' },
    'seen-once': { name: 'seen once', meaning: 'reported in one run' },
    'not-seen': {
      name: 'not seen',
      meaning:
        'nobody reported it, and so long a silence would be rare if half of the testers had it',
    },
    'too-few-runs': {
      name: 'too few runs to say',
      meaning: 'nobody reported it, but so few runs would often be silent anyway',
    },
  },
  trends: {
    fades: 'fades with the kilometres on the pair',
    grows: 'grows with the kilometres on the pair',
    'no-trend-shown': 'no change with the kilometres on the pair is shown',
    'too-few-runs': 'too few runs to say whether it changes with kilometres',
  },
  factors: {
    size: { more: 'larger sizes', less: 'smaller sizes' },
    'foot-length-against-last': {
      more: 'feet that are long for their size',
      less: 'feet that are short for their size',
    },
    'foot-width': { more: 'wide feet', less: 'narrow feet' },
    'left-or-right': { more: 'the left foot', less: 'the right foot' },
    'soft-ground': { more: 'soft surfaces', less: 'hard surfaces' },
    'wet-ground': { more: 'wet ground', less: 'dry ground' },
    temperature: { more: 'warm runs', less: 'cold runs' },
    sock: { more: 'thick socks', less: 'thin socks' },
    'forefoot-strike': {
      more: 'landing on the midfoot or forefoot',
      less: 'landing on the heel',
    },
    'out-of-tolerance': { more: 'pairs out of tolerance', less: 'pairs within tolerance' },
    layers: {
      more: 'more layers of material there',
      less: 'fewer layers of material there',
    },
  },
  comfortChanges: {
    better: 'better',
    worse: 'worse',
    'no-relevant': 'no difference that matters',
    open: 'too little to say',
  },
  changeVerdicts: {
    mended: {
      name: 'mended',
      meaning: 'proved to be rarer, and shown to come no more often than the brief allows',
    },
    better: {
      name: 'better',
      meaning: 'proved to be rarer; that it is within what the brief allows is not shown',
    },
    'no-different': {
      name: 'no different',
      meaning: 'shown: a change that would matter is ruled out',
    },
    worse: { name: 'worse', meaning: 'proved to be more frequent' },
    'too-little': {
      name: 'too little to say',
      meaning: 'the answers so far leave open whether it changed',
    },
  },
  foams: {
    eva: 'EVA',
    pu: 'PU (polyurethane)',
    peba: 'PEBA',
    tpu: 'TPU',
    other: 'another foam',
  },
  holds: {
    holds: 'holds',
    'does-not-hold': 'does not hold',
    'not-known-yet': 'not known yet',
  },
  directions: {
    falls: 'falls with distance',
    rises: 'rises with distance',
    'no-change-shown': 'no change with distance is shown',
  },
  forms: {
    power: 'fast at first, then slower and slower',
    plateau: 'fast at first, then level',
    line: 'evenly',
  },
  doses: { distance: 'distance', steps: 'steps', load: 'force over the steps' },
};

/** The fault screen. It stands in index.html, so it must be short, and knows nothing of what went wrong but its kind. */
export const fault = {
  title: {
    store: 'Pairlog cannot save on this device',
    code: 'A part of Pairlog did not arrive',
    broken: 'Pairlog has stopped',
  },
  why: {
    store: 'The browser refuses its storage.',
    code: 'There is no network, or a newer version has just taken over.',
    broken: 'The fault is in Pairlog, not in what you did.',
  },
  kept: 'What you saved before is still there: this screen has changed nothing.',
  storeSteps: [
    'Leave private browsing, then open Pairlog again.',
    'Is the device full? Free some space, then reload.',
  ],
  otherSteps: [
    'Check that you have a network, then reload.',
    'Close Pairlog wherever it is open, then open it again.',
  ],
  tell: 'Still here? Note your run on paper, and send your lead this line:',
  sign: { store: 'storage refused', code: 'part not fetched', broken: 'stopped' },
  reload: 'Reload',
  send: 'Send my log as a file',
  sendHint: 'The file of your log has no photos or tracks: they stay on this device.',
};

/** What a tester must know before a shoe goes on: pain, and damage. Not on the first page unless a pair needs it. */
export const care = {
  caution: {
    title: 'Stop this test for now',
    body: 'New pain of 3 or more, or pain with swelling, a limp, numbness, at night, or when you cannot put weight on the foot: stop running in this test and see a doctor or physiotherapist. If you cannot put weight on it, or it is badly swollen, today.',
    disclaimer:
      'This is no medical advice. What your clinician and your local rules say comes first.',
    lead: 'Your lead is told.',
    read: 'I have read this',
  },

  pain: {
    of: (score: number, when: string) => `Pain ${score} of 10, run of ${when}`,
    over: 'It is over',
    overHint: 'Tap this only once the pain has gone. Your lead is told.',
    overSaved: 'Noted: the pain is over.',
    overTrouble: 'This could not be saved. Try again.',
    run: (when: string) => `See or correct the run of ${when}`,
  },

  damage: {
    title: 'The pair is coming apart',
    titleChange: 'Your report',
    now: 'Take the pair off now and do not run in it again.',
    what: 'What broke?',
    which: 'Which shoe?',
    saved: 'Reported. Do not wear this pair.',
    corrected: 'Report corrected',
    missing: 'Say what broke.',
    keep: 'Do not wear this pair',
    reported: (what: string, shoe: string | null, when: string) =>
      `Reported ${when}: ${what}${shoe === null ? '' : `, ${shoe} shoe`}.`,
    open: 'See or correct the report',
    takeBack: 'Take the report back',
    takeBackAsk: 'The report and its photos are then gone everywhere, for good. Take it back?',
    takenBack: 'Report taken back',
    gone: 'This report is no longer on this phone.',
  },

  lead: {
    none: 'Your lead has not answered yet.',
    says: {
      'go-on': (when: string) => `Your lead, ${when}: you can run in this pair again.`,
      'stay-out': (when: string) => `Your lead, ${when}: stay out of this pair.`,
    } as Readonly<Record<Advice, (when: string) => string>>,
    words: (words: string) => `“${words}”`,
  },
};

export const phone = {
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
  scale: {
    towards: (value: number, end: string) => `${value}, towards ${end}`,
    middle: (value: number) => `${value}, in the middle`,
  },
  loading: 'One moment …',
  partNotFetched: 'A part of this screen did not arrive. What you typed is kept: reload.',
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
    goOnIn: (code: string) => `Go on with the run in ${code}`,
    logEarlierIn: (code: string) => `Log an earlier run in ${code}`,
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
    photosHeld:
      'They wait for a network without a data limit, as you chose in the settings. “Send now” sends them over any.',
    syncNow: 'Send now',
    asFile: 'Send as a file',
    asFileHint: 'Works without the hub: your lead opens the file. It may arrive twice or late.',
    noHub: 'Your group works by files. Send yours to your lead after each run or once a week.',
    damagedTitle: (count: number) =>
      count === 1
        ? 'A photo or track is damaged on this phone'
        : `${count} photos or tracks are damaged on this phone`,
    damagedHint:
      'What this phone kept is no longer what you added, so it cannot be sent. The rest of the entry is not affected. If it is of a run, open the run, take the damaged one out and add it again. If it is of a damage report, report the damage again with a new photo.',
    savedAt: (date: string) => `Entry saved ${date}`,
    giveUp: 'Do without it',
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
      'device-trouble':
        'This phone could not keep what came. Has it room left? It is tried again by itself.',
      done: 'Up to date.',
    },
  },

  log: {
    title: 'Log a run',
    titleChange: 'Change a run',
    pair: 'Pair',
    distance: (unit: string) => `Distance, ${unit}`,
    time: 'Time',
    day: 'Day of the run',
    today: 'Today',
    earlier: 'Today, earlier',
    yesterday: 'Yesterday',
    otherDay: 'Another day',
    when: 'Started',
    surface: 'Surface',
    otherSurface: 'other',
    surfaceHint: 'Several: shared evenly.',
    comfort: 'Comfort',
    moreComfort: 'More about comfort',
    feet: 'Feet',
    nothing: 'Nothing bothered me',
    something: 'Something did',
    pain: 'Pain',
    painEnds: { low: 'none', high: 'worst' },
    painNew: 'Is it new?',
    yes: 'Yes',
    no: 'No',
    painSigns: 'With it',
    more: 'Weather, sock, words, photo',
    afresh: 'Start afresh',
    afreshDone: 'Form emptied',
    ground: 'Ground',
    temperature: (unit: string) => `Air, ${unit}`,
    sock: 'Sock',
    words: 'In your words',
    saved: 'Saved on this phone',
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
    severity: 'How much',
    severityEnds: { low: 'hardly', high: 'had to stop' },
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
    wrongWhere: 'Tap where it was, or choose “Nothing bothered me”.',
    wrongKind: 'What was it like? Choose one.',
    says: (foot: string, zone: string, kind: string) => `${kind}, ${foot} ${zone}`,
  },

  photo: {
    add: 'Photo',
    addOf: (what: string) => `Add a photo: ${what}`,
    of: (what: string) => `Photo, ${what}`,
    unreadable: (file: string) =>
      `${file} cannot be read here. Take it anew, or choose a JPEG or PNG.`,
    full: 'This phone has no room for the photo. Free some space, then add it again; the rest of your entry is kept.',
    missing: 'not here yet',
  },

  rank: {
    title: 'Which pair is more comfortable?',
    ask: 'You have run in more than one pair. Which is more comfortable?',
    answer: 'Put them in order',
    how: 'Tap the most comfortable pair first, then the next.',
    place: (place: number, code: string) => `${place}. ${code}`,
    equal: (code: string) => `as good as ${code}`,
    takeOut: (code: string) => `Take ${code} out of the order`,
    put: (code: string) => `Next: ${code}`,
    saved: 'Order saved',
    later: 'Not now',
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
    corrected: (date: string, why: string) => `Corrected by your lead on ${date}: ${why}`,
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
    usMen: 'US men’s (M)',
    usWomen: 'US women’s (W)',
    mondopoint: 'mm (Mondopoint)',
    theme: 'Light or dark',
    themes: { system: 'like the phone', light: 'light', dark: 'dark' },
    photos: 'Send photos over',
    photosOver: { any: 'any network', unmetered: 'only without a data limit' },
    photosHint:
      'Not every browser knows which network it is on. Where it does not, photos wait until you send them by hand.',
    privateEnds: 'Cut off sent tracks at either end',
    privateEndsHint:
      'So that nobody sees where you live. Distance, pace and climb are worked out before the cut.',
    trackTimes: 'Times of sent tracks',
    trackTimesKept: { exact: 'to the second', minutes: 'whole minutes' },
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
    backupsHold: (days: number) =>
      `Backups of the hub still hold it for up to ${days} ${days === 1 ? 'day' : 'days'}; then they are dropped.`,
    backupsUnknown:
      'How long backups of the hub still hold what was taken back, only who runs the hub can say.',
    exportMine: 'Save everything of mine as a file',
    devices: {
      title: 'Your devices',
      thisOne: 'this one',
      seen: (at: string) => `last seen ${at}`,
      signOut: 'Sign out',
      ask: 'Sign this device out? What it has not sent stays on it and can be saved there as a file.',
      askOwn:
        'Sign out the device in your hand? It keeps its log, and needs a new code to send again.',
      needsHub: 'Shown when the hub can be reached.',
    },
    file: 'Open a file',
  },

  update: { ready: 'A newer version is ready.', now: 'Use it' },
  evicted:
    'The browser has cleared what this phone held. Join again with a new code: what the hub had comes back.',
  evictedWait: 'The browser has cleared what this phone held. It is being fetched from the hub …',
  evictedBack:
    'The browser had cleared this phone. What the hub had is back; what was not sent is not. Put Pairlog on the home screen to prevent it.',
  notFound: 'There is nothing here.',
  toToday: 'To today',
};

/** What is said of a file that is opened, before anything of it is taken in. */
export const file = {
  title: 'Open a file',
  choose: 'Choose a file',
  contains: (fresh: number, known: number) =>
    `${fresh} new ${fresh === 1 ? 'entry' : 'entries'}, ${known} already here`,
  nothingNew: 'Everything in this file is already here.',
  take: 'Take it in',
  taken: (fresh: number) => `${fresh} new ${fresh === 1 ? 'entry' : 'entries'} taken in`,
  problems: (count: number) =>
    count === 1
      ? '1 line of the file is damaged; the rest can be taken.'
      : `${count} lines of the file are damaged; the rest can be taken.`,
  attachments: (count: number) =>
    count === 1 ? '1 photo, track or report' : `${count} photos, tracks or reports`,
  madeBy: (who: string, when: string) => `The file says: made by ${who}, ${when}.`,
  madeByNobody: (when: string) => `The file does not say who made it. Date: ${when}.`,
  people: {
    self: 'you',
    tester: (code: string, name: string) => (name === '' ? code : `${code} (${name})`),
    lead: 'a lead of your group',
    unknown: 'somebody this device does not know',
  },
  setsUp: {
    tester: (code: string, group: string) => `Sets this phone up for ${code} in “${group}”.`,
    lead: (group: string) => `A lead’s backup of “${group}”.`,
  },
  backupHint:
    'Take it in only if you made it yourself. Nothing in a file proves who wrote what is in it.',
  backup: 'This is my own backup: I lead this group on this device.',
  takes: 'Taken in',
  erases: 'Erased',
  asks: 'Only if you agree',
  asksHint: {
    tester: (who: string) =>
      `${who} may not write what follows. A file can be changed by anyone who had it: agree only if you know that an entry is real.`,
    nobody:
      'This device cannot tell who put these entries into the file. Agree only if you trust where it comes from.',
  },
  agree: (who: string, entries: number) =>
    `Take in ${entries === 1 ? '1 entry' : `${entries} entries`} in the name of ${who}`,
  agreeErase: (who: string, entries: number) =>
    `Erase ${entries === 1 ? '1 entry' : `${entries} entries`} in the name of ${who}`,
  later: 'What you leave out now is not lost: open the file again to take it in later.',
  away: (count: number) =>
    count === 1
      ? '1 entry is not meant for you and stays out.'
      : `${count} entries are not meant for you and stay out.`,
  more: (count: number) => `See ${count} more`,
  notListed: (count: number) => `${count} more are not listed here.`,
  /** What stands for a record in a sentence, such as “run of 3 May, pair 637, 10 km”. */
  record: ({ kind, name, at, pairs, tester, distance }: NamedRecord) =>
    [
      [kind, name, at && `of ${at}`].filter(Boolean).join(' '),
      pairs.length > 0 && `${pairs.length === 1 ? 'pair' : 'pairs'} ${pairs.join(', ')}`,
      tester,
      distance,
    ]
      .filter(Boolean)
      .join(', '),
  quoted: (name: string) => `“${name}”`,
  effects: {
    adds: (record: string) => `Adds ${record}`,
    changes: (record: string) => `Changes ${record}`,
    erases: (record: string) => `Erases ${record}`,
    'erases-for-good': (record: string) => `Erases ${record} for good`,
    'brings-back': (record: string) => `Brings back ${record}`,
    'adds-erased': (record: string) => `Adds ${record}, already erased`,
    earlier: (record: string) => `Adds an earlier version of ${record}`,
  },
  renames: (kind: string, from: string, to: string) => `Renames ${kind} ${from} to ${to}`,
  addsMany: (count: number, kinds: string) => `Adds ${count} ${kinds}`,
  /** One, and several. */
  kinds: {
    project: ['project', 'projects'],
    round: ['round', 'rounds'],
    pair: ['pair', 'pairs'],
    tester: ['tester', 'testers'],
    'hand-out': ['hand-out', 'hand-outs'],
    run: ['run', 'runs'],
    ranking: ['ranking', 'rankings'],
    'damage-report': ['damage report', 'damage reports'],
    'bench-check': ['bench check', 'bench checks'],
    'gauge-study': ['gauge study', 'gauge studies'],
    'hand-out-plan': ['hand-out plan', 'hand-out plans'],
    finding: ['finding', 'findings'],
    report: ['report', 'reports'],
    'stop-use': ['stop-use notice', 'stop-use notices'],
    acknowledgement: ['acknowledgement', 'acknowledgements'],
    reply: ['reply', 'replies'],
    decision: ['decision', 'decisions'],
    attachment: ['photo, track or file', 'photos, tracks or files'],
  } as Readonly<Record<Kind, readonly [string, string]>>,
  unknownKind: ['entry of a newer app', 'entries of a newer app'] as readonly [string, string],
  wrong: {
    damaged: 'The file is damaged. Ask for it again.',
    'too-large': 'The file is too large.',
    'no-log': 'This zip holds no log of Pairlog.',
    'attachment-differs': 'A photo or track in the file was changed on the way. Ask for it again.',
    'not-a-bundle': 'This is no file of Pairlog.',
    'newer-bundle': 'The file is from a newer app. Update this one first.',
    'for-nobody':
      'This file does not say whose phone it sets up. Ask your lead for a hand-out file.',
    'other-group': 'The file belongs to another group.',
  } as Readonly<
    Record<UnpackProblem | 'not-a-bundle' | 'newer-bundle' | 'for-nobody' | 'other-group', string>
  >,
  otherGroup: (theirs: string, own: string) =>
    `The file belongs to the group “${theirs}”, this device to “${own}”. Nothing was taken in.`,
};

/** What is said of an entry while it is typed and before it is saved. */
export const entry = {
  timeHint: 'Digits are enough: 10500 is 1:05:00.',
  understood: (h: string, m: string, s: string, pace: string, unit: string) =>
    `${h && `${h} h `}${m} min ${s} s${pace && `, ${pace} per ${unit}`}`,
  wrongDistance: (example: string) => `How far was it? For example ${example}.`,
  wrongTime: 'That is no time. For example 52:30, 10500 or 1 h 05 min.',
  wrongTemperature: 'That is no temperature. For example 14.',
  wrongWhen: 'When did it start? Date and time.',
  aheadOfNow: 'This is in the future: when did it start?',
  doubt: (distance: string, time: string | null) =>
    `${distance}${time === null ? '' : ` in ${time}`}: is that right?`,
  doubtDay: (pair: string, when: string) =>
    `By the log, pair ${pair} was not with you then: ${when}. Is the day right?`,
  doubtPair: (pair: string, when: string, others: string) =>
    `By the log, pair ${pair} was not with you then: ${when}. You had ${others}. Is it the right pair?`,
  doubtTwice: (distance: string, pair: string, when: string) =>
    `You already logged ${distance} in ${pair}, started ${when}. Is this another run?`,
  doubtClock: (phone: string, others: string) =>
    `This phone says it began ${phone}, your group’s clock ${others}. Is the phone right?`,
  doubtSame: 'Same run: drop this one',
  doubtSure: 'Yes, save it',
  doubtChange: 'Change it',
  limit: {
    left: (count: number) => `${count} ${count === 1 ? 'character' : 'characters'} left`,
    reached: (most: string) => `The limit of ${most} characters is reached.`,
    cut: (most: string, cut: string) =>
      `The limit of ${most} characters is reached: the last ${cut} of what you pasted did not fit.`,
  },

  track: {
    add: 'Track (GPX file)',
    title: 'Track',
    moving: (time: string) => `moving ${time}`,
    climb: (metres: string) => `climb ${metres} m`,
    made: {
      smoothed:
        'On the WGS84 ellipsoid, noise taken out, bends between fixes put in. Standing does not count; climb from 3 m.',
      'as-recorded':
        'On the WGS84 ellipsoid, bends between fixes put in. Standing does not count; climb from 3 m.',
    },
    noTimes:
      'This file has no usable times: they are missing, or all the same. Only the distance was taken. Type your time above.',
    skipped: (points: number) =>
      points === 1
        ? 'One point has an impossible place and was left out. Check the distance.'
        : `${points} points have an impossible place and were left out. Check the distance.`,
    again: (when: string) => `This track was logged before, as the run of ${when}.`,
    differs: (track: string, typed: string, percent: string) =>
      `The track says ${track}, you typed ${typed} (${percent} %). Both are kept; what stands above counts.`,
    useTrack: 'Take the track’s',
    paint: 'Surfaces along the way',
    base: 'The surface chosen below holds wherever nothing else is painted.',
    from: (unit: string) => `From ${unit}`,
    to: (unit: string) => `To ${unit}`,
    surface: 'Surface there',
    paintIt: 'Paint',
    clean: 'Take the paint off',
    stretch: (from: string, to: string, surface: string) => `${from} to ${to}: ${surface}`,
    openMap: 'Open the map',
    mapOf: 'Map of the run; the stretches are listed above',
    tiles: (host: string) => `The ground comes from ${host}, which sees where you look.`,
    north: 'N',
    tapFirst: 'Tap the line where another surface begins.',
    tapSecond: 'Tap where it ends.',
    chooseSurface: 'What is it between the two marks?',
    unknown: 'not said',
    send: 'Send the track to my lead',
    sendHint: (metres: string, times: 'exact' | 'minutes') =>
      `Otherwise it stays on this phone. What is sent lacks the first and last ${metres} m and everything that near to either end${times === 'minutes' ? ', and its times are whole minutes' : ''}.`,
    choosePair: 'In which pair was this run?',
    wrong: {
      'not-gpx': () => 'This is no GPX file. Export the run from your watch as GPX.',
      'broken-xml': (line: number) => `The file is damaged at line ${line}. Export it anew.`,
      doctype: () => 'The file has a document type, which no watch writes. It was not opened.',
      'too-deep': () => 'The file is nested as no track is. It was not opened.',
      'too-large': () => 'The file is too large: at most 50 million characters.',
      'too-many-points': () => 'The track has more than half a million points.',
      'no-track': () =>
        'There is no track in this file, only places or a route. Export the run itself as GPX.',
      'no-points': () => 'There is no recorded point in this file. Export the run again.',
      'no-places': (line: number) =>
        `No point in this file has a possible latitude and longitude; the first is at line ${line}. Export the run again.`,
      'storage-full': () =>
        'This phone has no room for the track. Free some space, then add it again.',
    } as Readonly<Record<GpxProblem['why'] | 'storage-full', (line: number) => string>>,
  },
};

export const desk = {
  title: 'Desk',
  phone: 'To the phone',
  projects: 'Projects',
  noProjects: 'No project yet. Begin with its brief.',
  newProject: 'New project',
  groupTitle: 'Group',
  onlyLeads: 'The desk is for leads. Your screens are on the phone side.',
  evidence: (p: number, t: number, haveRun: number, r: number, distance: string) =>
    `${pairs(p)}, ${panel(t, haveRun)}, ${runs(r)}, ${distance}`,
  save: 'Save',
  add: 'Add',
  cancel: 'Cancel',
  wrongNumber: 'A number is missing or wrong.',
  mustBe: (least: string, most: string) => `Must be from ${least} to ${most}.`,
  missing: 'This is missing.',
  optional: (label: string, more: string | null) =>
    `${label} (optional${more === null ? '' : `; ${more}`})`,
  notACode: 'Only capitals, digits and hyphens, 12 at most, for example T07.',
  trouble: 'It was not saved. Nothing is lost: try again.',
  saved: 'Saved',
  none: '–',
  workTrouble:
    'The log could not be reviewed. Nothing is lost: close this page and open it again. If that does not help, save the log as a file and tell your lead.',
  notPrinted: (left: number) => `${left} more are not shown here.`,
  more: (next: number, left: number) =>
    next === left ? `Show the other ${left}` : `Show ${next} more of ${left}`,

  unread: {
    title: (count: number) =>
      count === 1 ? 'One record cannot be read' : `${count} records cannot be read`,
    what: 'They are kept and count in no figure. Look up the right number and correct it here; whoever wrote it keeps the old one in the history.',
    record: (kind: string, called: string) => `${kind} ${called}`,
    wrong: (field: string, expected: string) => `${field}: ${expected}`,
    notValid: 'Not valid. Ask whoever wrote it to write it again.',
    correct: 'Correct this record',
    kinds: {
      project: 'Project',
      round: 'Round',
      pair: 'Pair',
      tester: 'Tester',
      'hand-out': 'Hand-out',
      run: 'Run',
      ranking: 'Ranking',
      'damage-report': 'Damage report',
      'bench-check': 'Bench check',
      'gauge-study': 'Gauge study',
      'hand-out-plan': 'Hand-out plan',
      finding: 'Finding',
      report: 'Report',
      'stop-use': 'Stop-use notice',
      acknowledgement: 'Answer to a stop-use notice',
      reply: 'Reply to a tester',
      decision: 'Decision',
      attachment: 'Photo or track',
    } as Readonly<Record<Kind, string>>,
    /** By the name of the field in the record, and of the list it stands in. */
    fields: {
      readings: 'Reading',
      blueprint: 'Dimension',
      limits: 'Limit',
      complaints: 'Complaint',
      layers: 'Layers of zone',
      places: 'Place',
      last: 'Last',
      track: 'Track',
      distanceM: 'Distance',
      otherDistanceM: 'The other distance',
      durationS: 'Time',
      fromM: 'Distance at which it began',
      temperatureC: 'Temperature',
      massKg: 'Body mass',
      heightM: 'Height',
      footLengthMm: 'Foot length',
      footWidthMm: 'Foot width',
      ballGirthMm: 'Girth at the ball',
      left: 'left',
      right: 'right',
      sizeMm: 'Foot length of the size',
      carriedInM: 'Distance before the test',
      lengthMm: 'Length',
      widthMm: 'Foot width',
      ballWidthMm: 'Width at the ball',
      widthPerStepMm: 'Growth of the width',
      girthPerStepMm: 'Growth of the girth',
      value: 'Value',
      uncertainty: 'Uncertainty',
      loadN: 'Load',
      restedH: 'Hours since the last run',
      nominal: 'Nominal value',
      lower: 'Lower deviation',
      upper: 'Upper deviation',
      leftRight: 'Difference of left and right',
      toleranceWidth: 'Width of the tolerance',
      allowedMm: 'How far a size may lie from the foot',
      wantedMm: 'Wanted, mm',
      order: 'Number of the round',
      count: 'Layers',
      severity: 'Severity',
      score: 'Score',
      complaint: 'Allowed complaints',
      pain: 'Allowed pain',
      climbM: 'Climb',
      movingS: 'Moving time',
      stepsPerShoe: 'Steps',
      paceByKmS: 'Time by kilometre',
      weeksPerPeriod: 'Weeks of a period',
      period: 'Period',
      bytes: 'Size of the file',
    },
  },

  tabs: {
    overview: 'Overview',
    pairs: 'Pairs',
    comfort: 'Comfort',
    complaints: 'Complaints',
    bench: 'Bench checks',
    rounds: 'Rounds',
    verdict: 'Verdict',
    changes: 'Changes',
    findings: 'Findings',
    report: 'Report',
    testers: 'Testers',
  },

  brief: {
    name: 'Name of the project',
    runner: 'For which runner',
    use: 'For what',
    surfaces: 'On which surfaces',
    distance: 'Distance a pair must carry, km',
    attributes: 'Comfort questions',
    attributesHint: 'Overall comfort is always asked.',
    edit: 'Change the brief',
    allowed: 'Allowed complaints, % of runs',
    allowedPain: 'Allowed pain, % of runs',
    limits: 'What a pair must keep',
    addLimit: 'One more limit',
    bounds: { 'at-least': 'must stay at least', 'at-most': 'must stay at most' },
    value: 'Limit',
    bases: { reading: 'as read', 'share-of-new': '% of the same pair when new' },
    everySite: 'empty: every site',
  },

  pairs: {
    none: 'No pair yet. Add a round, then its pairs.',
    pair: 'Pair',
    round: 'Round',
    size: 'Size',
    distance: 'On the pair',
    ofBrief: 'Of the brief',
    runs: 'Runs',
    surfaces: 'By surface',
    overTime: 'Pairs over time',
    ofWhat: 'What',
    days: (first: string) => `Days since ${first}`,
    steps: 'Steps per shoe',
    stepsThousand: 'Steps per shoe, thousands',
    stepsFrom: (cadence: number, regression: number, unknown: number) =>
      [
        cadence > 0 ? `${cadence} % counted` : '',
        regression > 0 ? `${regression} % by height and pace` : '',
        unknown > 0 ? `${unknown} % unknown` : '',
      ]
        .filter(Boolean)
        .join(', '),
    mostWorn: (shown: number, all: number) => `The ${shown} pairs of ${all} with most kilometres.`,
    load: 'Load per shoe, MN',
    handOut: 'Hand out',
    handOutTo: 'Hand out to',
    handOutSeveral: 'Hand out several pairs',
    severalHint:
      'For each pair that nobody has, a tester: those whom its size fits come first. A pair without one stays where it is.',
    fit: {
      fits: 'The size fits',
      'other-size': 'Another size',
      'size-unknown': 'Foot length not known',
    },
    has: (tester: string, codes: string) => `${tester} (has ${codes})`,
    willBeHandedOut: (count: number) =>
      count === 0 ? 'Nothing is chosen yet.' : `${pairs(count)} will be handed out.`,
    nobodyChosen: 'Choose a tester for at least one pair.',
    noneFree: 'No pair is free: each is with a tester, or withdrawn.',
    handedOut: (count: number) => `${pairs(count)} handed out`,
    someNot: (done: number, left: number) =>
      `${pairs(done)} handed out, ${left} not: the list says why.`,
    foot: (length: string) => `foot ${length} mm`,
    since: 'Since',
    sinceHint: 'Noted late? Put the time before the first run in the pair.',
    notYet: 'This is in the future.',
    heldUntil: (at: string) => `The pair came back from somebody else on ${at}.`,
    blind: 'The tester does not know what was changed',
    stopReason: 'Why must nobody wear it?',
    readBy: (read: number, holders: number) =>
      holders === 0 ? 'in nobody’s hands' : `read by ${read} of ${holders} who hold one`,
    unknownSurface: 'not said',
  },

  ask: {
    pain: (tester: string, score: number, pair: string, date: string) =>
      `${tester}: pain ${score} of 10 in pair ${pair} on ${date}. Ask how they are; no more runs in this test until a clinician says so.`,
    damage: (tester: string, pair: string, what: string, date: string) =>
      `${tester}: pair ${pair} came apart (${what}) on ${date}.`,
    answer: {
      give: (tester: string) => `Answer ${tester}`,
      change: (tester: string) => `Change the answer to ${tester}`,
      advice: 'May they run in this pair?',
      advices: { 'go-on': 'Go on in this pair', 'stay-out': 'Stay out of this pair' } as Readonly<
        Record<Advice, string>
      >,
      words: 'A few words to the tester',
      missing: 'Choose whether they may run in this pair.',
      given: (advice: string, when: string) => `Answered on ${when}: ${advice}.`,
      quoted: (words: string) => `“${words}”`,
      over: (tester: string, when: string) => `${tester} said on ${when} that it is over.`,
      pain: (tester: string, score: number, pair: string, date: string) =>
        `${tester}: pain ${score} of 10 in pair ${pair} on ${date}.`,
      settled: (count: number) => `Settled: ${count} ${count === 1 ? 'report' : 'reports'}`,
    },
    oddity: {
      'logged-twice': 'logged twice; counted once',
      'tester-overlap': 'overlaps with another run of the same tester',
      'pair-overlap': 'two testers in one pair at the same time',
      pace: 'implausible pace',
      distance: 'implausible distance',
      'not-handed-out': 'the pair was not handed out to this tester then',
      'in-the-future': 'lies in the future',
      'unknown-pair': 'the pair is not in the log',
    } as Readonly<Record<RunOddity['why'], string>>,
    run: (tester: string, pair: string, distance: string, date: string) =>
      `${tester}, pair ${pair}, ${distance}, ${date}`,
    notedLate: 'Was a hand-out noted late? “Edit dates” on the page of its pair puts it right.',
    leftOut: {
      'unknown-kind': (count: number) =>
        `${count} ${count === 1 ? 'record is' : 'records are'} of a kind that needs a newer app; kept, and in no figure.`,
      'newer-schema': (count: number) =>
        `${count} ${count === 1 ? 'record was' : 'records were'} written by a newer app; kept, and in no figure.`,
    } as Readonly<Record<Exclude<LeftOut['why'], 'unreadable'>, (count: number) => string>>,
  },

  /** Runs and readings that a lead counts or sets aside. */
  waiting: {
    out: 'In no figure until you decide',
    meanwhile: 'Odd, but in the figures until you decide',
    decided: 'Decided',
    setAside: 'Set aside, in no figure',
    counted: 'Counted after a check',
    reading: (pair: string, place: string, value: string, date: string) =>
      `Pair ${pair}, ${place}: ${value}, ${date}`,
    gauge: (round: string, measure: string, gauge: string, than: string, by: string) =>
      `${round}, ${measure}: “${gauge}” reads ${by} than “${than}”`,
    higher: (share: string) => `${share} higher`,
    lower: (share: string) => `${share} lower`,
    gaugePlaces: (count: number) =>
      count === 1
        ? 'Seen at one place of one shoe, beyond what wear explains.'
        : `Seen at ${count} places of shoes, beyond what wear explains.`,
    pace: (pace: string) => `implausible pace, ${pace} per km`,
    heldThen: (tester: string, codes: string) =>
      `${tester} had ${codes} then. Is it noted in the wrong pair?`,
    canBe: (measure: string, least: string, most: string) =>
      `${measure} can only be ${least} to ${most}.`,
    expected: {
      'same-shoe': (range: string) => `Other readings of this shoe here: ${range}.`,
      'other-shoe': (range: string) => `The other shoe here: ${range}.`,
      'other-pairs': (range: string) => `Other pairs of the round here: ${range}.`,
      blueprint: (range: string) => `The blueprint allows ${range}.`,
    },
    range: (least: string, most: string) => (least === most ? least : `${least} to ${most}`),
    isIt: (value: string) => `Is it ${value}?`,
    countRun: 'Count this run',
    countReading: 'Count this reading',
    countReadings: 'Count its readings',
    setRunAside: 'Set this run aside',
    setReadingAside: 'Set this reading aside',
    setReadingsAside: 'Set its readings aside',
    correctRun: 'Correct this run',
    correctReading: 'Correct this reading',
    rightValue: (unit: string) => `Right value, ${unit}`,
    saveCorrection: 'Save the correction',
    reason: 'Why is it set aside?',
    reasons: {
      run: 'This cannot be right',
      'wrong-pair': 'Noted in the wrong pair',
      reading: 'A typing error',
      gauge: 'The gauge reads apart from the first',
    },
    checked: 'Checked: it is right',
    confirmed: 'Confirmed when it was typed',
    countedNow: 'It counts.',
    setAsideNow: 'Set aside.',
    corrected: 'Corrected.',
    /** Asked when a reading is typed or read from a table. */
    typed: (value: string, place: string) => `You typed ${value} for ${place}.`,
    isRight: 'It is right',
    correct: 'Correct it',
    newGauge: (gauge: string, than: string, by: string) =>
      `With “${gauge}” these readings are ${by} than those with “${than}” let expect. Put both gauges on one shoe before you trust the difference.`,
    ofLine: (line: number, said: string) => `Line ${line}: ${said}`,
    tableAsks: (count: number) =>
      count === 1
        ? 'One reading looks wrong. Correct it in the table and read it again, or tick it if it is right.'
        : `${count} readings look wrong. Correct them in the table and read it again, or tick those that are right.`,
    unticked: (count: number): string =>
      count === 1
        ? 'The one without a tick is taken in too, and waits for your decision.'
        : 'Those without a tick are taken in too, and wait for your decision.',
    inFile: (runs: number, readings: number) =>
      `Waits for your decision once it is taken in: ${[
        runs > 0 ? `${runs} ${runs === 1 ? 'run' : 'runs'}` : '',
        readings > 0 ? `${readings} ${readings === 1 ? 'reading' : 'readings'}` : '',
      ]
        .filter(Boolean)
        .join(', ')}.`,
    outside: (waiting: number, aside: number) =>
      `Not in these figures: ${[
        waiting > 0 ? `${waiting} that ${waiting === 1 ? 'waits' : 'wait'} for a decision` : '',
        aside > 0 ? `${aside} set aside` : '',
      ]
        .filter(Boolean)
        .join(', ')} (runs and readings).`,
  },

  comfort: {
    nobody: 'Nobody has scored the comfort yet.',
    wear: 'After wearing',
    firstImpressions: 'First impressions',
    attribute: 'Attribute',
    of: (t: number, scores: number) =>
      `${testers(t)}, ${scores} ${scores === 1 ? 'score' : 'scores'}`,
    how: '0 to 100, 100 is good. Mean of the testers’ own means, each tester once, with the 95 % interval (Student). First wearings are kept apart, because many change their mind within a day (Anderson 2020). The change per 100 km gives each tester a start and a slope of their own, and is the same on every screen (mixed model, REML). Between rounds, a difference counts from 10 on (Mills 2010; Bishop 2020) and only if its interval leaves zero out.',
    scored: (attribute: string, mean: string, of: string) => `${attribute}: ${mean} of 100; ${of}.`,
    between: (mean: string, lower: string, upper: string) =>
      `${mean} (95 % interval ${lower} to ${upper})`,
    changed: (rounds: string, points: string, word: string) =>
      `${rounds}, points: ${points}: ${word}.`,
    changes: (earlier: string, later: string) => `${later} against ${earlier}`,
    change: 'Change',
    by: { 'same-testers': 'same testers', 'different-testers': 'different testers' },
    drift: 'Change per 100 km (95 %)',
    driftOf: (t: number) => testers(t),
    preferred: 'Which pair they prefer',
    noOrder:
      'Nobody has put pairs of two rounds in order yet. Whoever holds two pairs is asked now and then.',
    prefer: (
      first: { name: string; testers: number },
      second: { name: string; testers: number },
      equal: number,
    ) =>
      `${testers(first.testers)} prefer ${first.name}, ${testers(second.testers)} prefer ${second.name}, ${testers(equal)} find them equal.`,
    unblinded: (count: number) =>
      `${count === 1 ? '1 of them' : `${count} of them`} knew what was changed: a description alone has moved scores by 15 of 100.`,
  },

  complaints: {
    round: 'Round',
    any: 'Any complaint',
    legend: 'Share of the testers asked',
    levels: ['none', 'up to 10 %', 'up to 25 %', 'up to 50 %', 'more'],
    savePicture: (form: string) => `Save the map as ${form}`,
    print: 'Print',
    nothingProven: 'Nothing is proven to recur in this round.',
    all: 'All reported complaints',
    unreported: {
      complaint: (word: string, asked: number, upTo: string, chance: string) =>
        `Every other complaint: ${word} in ${runs(asked)}; up to ${upTo} of testers may still have it (95 %). If half of the testers had one in a fifth of their runs, a test would be this silent about it in ${chance} of cases.`,
      pain: (word: string, asked: number, upTo: string, chance: string) =>
        `Pain in other zones: ${word} in ${runs(asked)}; up to ${upTo} of testers may still have it (95 %). If half of the testers had it in a fifth of their runs, a test would be this silent about it in ${chance} of cases.`,
    },
    proof: 'What the log says',
    suspects: (first: string, second: string) =>
      `Usually looked at first: ${first || 'nothing in particular'}${second ? `; then: ${second}` : ''}. Common practice, not a measured cause.`,
    firstRepeat: 'Testers without it twice, by their own kilometres in the pair',
    withItTwice: 'Testers had it twice here',
    withoutIt: 'Testers without it, %',
    look: 'When, where and with whom',
    asked: (r: number, t: number) => `${runs(r)} of ${testers(t)} were asked about their feet.`,
    unanswered: (open: number, of: number) =>
      `The question was left open after ${open} of ${runs(of)}. If it is answered mainly when something hurts, complaints look more frequent than they are, and too much is called proven.`,
    nobodyAsked: 'Nobody was asked yet. That is not the same as no complaint.',
    none: 'Asked, and nobody named a zone that bothered.',
    zone: 'Zone',
    kind: 'Complaint',
    testers: 'Testers',
    twice: 'twice or more',
    runs: 'Runs',
    feet: 'left / right',
    severity: 'Severity, mean / most',
    unasked: 'nobody asked',
    how: (complaint: string, pain: string) =>
      `A run counts as asked if the feet question was answered. Proof: the brief allows ${complaint} of the asked runs (pain: ${pain}); e-values against that rate, valid however often one looks (Ramdas 2023; Vovk & Wang 2021), for at least two testers (Benjamini & Heller 2008), of what one reading of all complaints calls proven at most 10 % is false on average, for each of the two claims (Wang & Ramdas 2022); findings frozen on different days are not held together by that. It leans on two things. Complaints must not linger: one that stays on in every third run or more is called too often, for single testers most of all. And the question must be answered after good runs too. The share at the moment of proof is too high: in simulations by a sixth to a third, the more the weaker the complaint. Intervals, 95 %: testers by Wilson; runs with the tester as the unit (Rao & Scott 1992).`,
  },

  /** The answers to the question after pain, the same at the desk, in the report and in the terminal. */
  pain: {
    title: 'Question about pain',
    nobodyAsked: 'Nobody answered the question about pain. That is not the same as no pain.',
    asked: (r: number, t: number) =>
      `${runs(r)} of ${testers(t)} answered the question about pain.`,
    none: 'No pain was reported.',
    onlyLight: (count: number, most: number, from: number) =>
      `Pain below ${from} of 10 and without a sign such as swelling in ${runs(count)}, ${most} of 10 at most; none above that.`,
    silence: (upTo: string, allowed: string, chance: string) =>
      `In the long run more may still be in up to ${upTo} of runs (95 %); the brief allows ${allowed}. If half of the testers had it in a fifth of their runs, a test would be this silent in ${chance} of cases.`,
    testers: (once: number, twice: number, of: number, from: number) =>
      `${once} of ${testers(of)} had pain of ${from} of 10 or more, or any pain with a sign such as swelling; ${twice} of them at least twice.`,
    runs: (count: number, of: number, interval: string, allowed: string) =>
      `It was in ${count} of ${of} answers. In the long run it may be in ${interval} of runs; the brief allows ${allowed}.`,
    beside: (any: number, most: number, caution: number) =>
      `Any pain at all: ${runs(any)}, ${most} of 10 at most. The caution was due after ${runs(caution)}.`,
    ask: 'Ask these testers how they are. This is a count of answers, not medical advice.',
    clause: (count: number, of: number, t: number, asked: number, from: number, word: string) =>
      `question about pain: ${from} of 10 or more, or with a sign, in ${count} of ${of} answers of ${t} of ${testers(asked)}: ${word}`,
  },

  finding: {
    make: 'Make it a finding',
    title: 'Finding',
    part: 'Part that can act',
    priority: 'Priority',
    priorities: { high: 'high', medium: 'medium', low: 'low' },
    wanted: 'Wanted change',
    wantedMm: 'in mm, if it has a size',
    carriedBy: 'Round that shall carry it',
    undecided: 'not decided',
    frozen: (date: string) => `Evidence as of ${date}, frozen`,
    states: {
      open: 'open',
      'asked-for': 'asked for',
      'carried-out': 'carried out',
      closed: 'closed',
    },
  },

  /** How a language puts words and figures together. */
  joined: {
    names: (names: readonly string[]) => names.join(', '),
    clauses: (parts: readonly string[]) => parts.join(', '),
    apart: (parts: readonly string[]) => parts.join('; '),
    of: (what: string, said: string) => `${what}: ${said}`,
    aside: (said: string, more: string) => `${said} (${more})`,
    sentence: (said: string) => `${said}.`,
  },

  /** Sentences on a complaint, the same at the desk, in the terminal and in a finding. */
  proof: {
    testers: (twice: number, once: number, of: number, interval: string) =>
      `${twice} of ${testers(of)} reported it at least twice${once > twice ? `, ${once} at least once` : ''}. Of all such runners it may be ${interval}.`,
    runs: (count: number, of: number, interval: string, allowed: string) =>
      `It came in ${count} of ${of} asked runs. In the long run it may be in ${interval} of runs; the brief allows ${allowed}.`,
    ratherHigh:
      'It is named because it stood out, so this share is rather too high: at the moment of proof by a sixth to a third in simulations.',
    feet: (left: number, right: number) =>
      `Runs with it on the left foot: ${left}, on the right foot: ${right}.`,
    severity: (mean: string, most: number) => `Severity ${mean} of 10 on average, ${most} at most.`,
    who: (names: string) => `Proven for ${names}, each by their own runs.`,
    value: (value: string, needed: string) =>
      `How strongly the runs prove that at least two testers have it more often than allowed: e-value ${value}; from ${needed} on that is enough by itself.`,
    interval: (lower: string, upper: string) => `${lower} to ${upper} (95 % interval)`,
    trend: (word: string, count: number, p: string) =>
      `Whether it changes: ${word} (${testers(count)} had runs with it and runs without; p ${p}, over all reported complaints and allowing for complaints that linger from run to run). This names no cause.`,
    onset: (median: string, lower: string, upper: string, count: number) =>
      `It begins after ${median} of a run (the middle one of ${testers(count)}); for half of them between ${lower} and ${upper}.`,
    repeated: (median: string | null, repeated: number, of: number) =>
      median === null
        ? `${repeated} of ${testers(of)} have had it twice so far.`
        : `By ${median} of their own in the pair half of the testers are expected to have had it twice (so far ${repeated} of ${of}).`,
    hint: (factor: string, p: string, count: number) =>
      `Worth a look: more often with ${factor} (${testers(count)}, adjusted p ${p}). This names no cause.`,
    noHint: (count: number) =>
      count === 0
        ? 'Nothing to compare it with yet.'
        : `Set against ${count} ${count === 1 ? 'circumstance' : 'circumstances'} such as size, sock and ground: none stands out.`,
  },

  bench: {
    none: 'No bench check yet.',
    choose: 'Measure and site',
    xTitle: (unit: string) => `Distance on the pair, ${unit}`,
    point: (pair: string, value: string, distance: string) =>
      `Pair ${pair}: ${value} at ${distance}`,
    limit: (value: string) => `limit of the brief ${value}`,
    load: 'Load, N',
    method: 'Method',
    uncertainty: 'Standard uncertainty',
    distance: 'Distance on the pair if it is known, km',
    photos: 'Photos',
    readFile: 'Read checks from a table (CSV)',
    template: 'Save an empty table',
    chooseFile: 'Choose the table',
    fromFile: (checks: number, readings: number) =>
      `${checks} ${checks === 1 ? 'check' : 'checks'} with ${readings} ${readings === 1 ? 'reading' : 'readings'}`,
    knownChecks: (count: number) =>
      `${count} ${count === 1 ? 'check is' : 'checks are'} in the log already and not taken again.`,
    takeIn: 'Take them in',
    lineTrouble: (line: number, column: string, what: string) => `Line ${line}, ${column}: ${what}`,
    tableTroubles: {
      'missing-column': 'this column is missing',
      'open-quote': 'a quotation mark is not closed; nothing was read from here on',
      'number-of-cells':
        'this line has more or fewer cells than the heading; put numbers with a decimal comma in quotation marks',
      differs: 'differs from an earlier line of the same check',
      'unknown-pair': 'no pair has this code',
      'no-date': 'not a date and time such as 2026-05-01T09:30+02:00',
      'no-number': 'not a number',
      'unknown-word': (words: string) => `one of ${words}`,
      'no-site': 'small letters, digits and hyphens, such as heel-centre',
      'too-many': 'more than 200 readings in one check',
      'too-long': 'longer than 200 letters',
    },
    table: 'As a table',
    pair: 'Pair',
    foot: 'Foot',
    readings: 'Reading at distance',
    at: 'Measured',
    temperature: 'Room, °C',
    rested: 'Hours since the last run',
    operator: 'By whom',
    site: 'Site',
    siteHint: 'One word for one place, such as heel-centre.',
    value: 'Value',
    gauge: 'Gauge',
    reading: 'Measure',
    addReading: 'One more reading',
    arrival: 'Arrival (before the first run)',
    arrivalCarried: (distance: string) =>
      `Arrival (before the first run; ${distance} were on the pair already)`,
    addBlueprint: 'Add the dimensions of the blueprint',
    emptyRows: 'A row without a value is not saved.',
    deviations: 'Arrival against the blueprint',
    noBlueprint: 'No blueprint or no arrival check yet.',
    nominal: 'Nominal',
    deviation: 'Deviation',
  },

  wear: {
    round: 'Round',
    place: 'Measure and site',
    against: 'Against',
    curveOf: 'Curve of',
    newPair: 'a new pair of the round',
    pairName: (code: string) => `pair ${code}`,
    xTitles: { steps: 'Steps per shoe, thousands', load: 'Load per shoe, MN' },
    amounts: {
      steps: (thousands: string) => `${thousands} thousand steps per shoe`,
      load: (meganewtons: string) => `${meganewtons} MN per shoe`,
    },
    curve: 'estimate',
    beyond: 'estimate beyond the checks',
    band: '90 % interval',
    key: 'Shaded: where the value of a pair lies with 90 % probability; single readings scatter more. Dotted: beyond the checks, never beyond twice their distance.',
    priorOnly:
      'No two checks at different distances yet. What you see is what is known of such foams beforehand, not this foam.',
    leftOut: (count: number) =>
      `${count} ${count === 1 ? 'check is' : 'checks are'} left out: steps or force before it are not known.`,
    change: (word: string, at: string, change: string, lower: string, upper: string) =>
      `${word}. By ${at} a new pair will have changed by ${change} (90 % interval ${lower} to ${upper}).`,
    value: (at: string, value: string, lower: string, upper: string) =>
      `At ${at} a new pair will have ${value} (90 % interval ${lower} to ${upper}).`,
    limit: (what: string, bound: string, value: string) => `${what} ${bound} ${value}`,
    ofNew: (percent: string) => `${percent} of new`,
    hold: (limit: string, at: string, chance: string, word: string) =>
      `${limit} at ${at}: ${word}. A new pair keeps it with a probability of ${chance}.`,
    crossing: (lower: string, median: string, upper: string) =>
      `Where the limit is reached: ${median} as the middle estimate; at the earliest (5 % probability) ${lower}, at the latest (95 %) ${upper}.`,
    crossedAfter: (lower: string) =>
      `Where the limit is reached: ${lower} at the earliest (5 % probability); by when, the checks cannot tell yet.`,
    tooFar: (limit: string, at: string) =>
      `${limit} at ${at}: nothing can be said yet. That is more than twice as far as any check went.`,
    beyondChecks: 'farther than the checks can tell',
    notCrossed: 'At what distance the limit is reached the checks cannot tell yet.',
    toldApart: (form: string, others: string) => `It goes ${form}; ${others} fits worse.`,
    notToldApart: (weights: string) =>
      `How it goes on cannot be told yet (probability of each form: ${weights}); the interval allows for all of them.`,
    basis: {
      published: (source: string) =>
        `Part of the estimate is what was known beforehand, published: ${source}.`,
      judgement: (source: string) =>
        `Part of the estimate is what was assumed beforehand, judgement, no source: ${source}.`,
    },
    foamUnknown: 'The round does not say which foam it has; what is known beforehand is wide.',
    outlying: (pair: string, change: string, p: string) =>
      `Pair ${pair} wears otherwise than the rest (${change}, adjusted p ${p}).`,
    outlier: { lower: 'its change lies lower', higher: 'its change lies higher' },
    leftRight: (difference: string, lower: string, upper: string, count: number) =>
      `The left shoe changed by ${difference} against the right one (90 % interval ${lower} to ${upper}, ${pairs(count)}).`,
    againstRound: (round: string, at: string, difference: string, lower: string, upper: string) =>
      `By ${at} the pairs of this round changed by ${difference} against those of ${round} (90 % interval ${lower} to ${upper}).`,
    next: (pair: string, distance: string, narrowing: string) =>
      `Measure pair ${pair} at ${distance}: that should make the interval ${narrowing} narrower.`,
    warningsTitle: 'Checks to read with care',
    warning: {
      'short-rest': (rested: string, left: string) =>
        `rested ${rested} h; up to ${left} of the last run’s change may still be there`,
      temperature: (celsius: string, points: string | null) =>
        `measured at ${celsius}${points === null ? '' : `, Asker C reads about ${points} off`}`,
      'temperature-missing': 'the temperature was not noted',
      'no-start': 'this pair has no reading at 0 km',
      'measured-otherwise': (what: string) => `measured otherwise than before (${what})`,
      'impossible-value': 'a value that cannot be; left out',
    },
    ways: {
      site: 'site',
      foot: 'foot',
      unit: 'unit',
      method: 'method',
      gauge: 'gauge',
      load: 'load',
    },
    felt: 'How it feels over the same distance',
    feltLine: (attribute: string, mean: string, lower: string, upper: string, count: number) =>
      `${attribute}: ${mean} of 100 per 100 km (95 % interval ${lower} to ${upper}, ${testers(count)}).`,
    feltNone: 'Too few scores to say how it feels over distance.',
    feltScore: 'Score, 0 to 100',
    feltPart:
      'Felt and measured cushioning often part: what the bench shows is not what a foot notices.',
    sites: 'Where it goes first, mean change',
  },

  verdict: {
    of: (round: string, word: string) => `${round} ${word}`,
    items: {
      structure: 'Structure',
      'allowed-rate': (complaint: string, pain: string) =>
        `Complaints in at most ${complaint} of runs, pain in ${pain}`,
      complaints: 'Complaints that grow with kilometres',
      'stop-use': 'Stop-use notices',
    },
    notMeasured: 'nothing was measured for it',
    evidence: (count: number, checks: number) =>
      `${pairs(count)}, ${checks} ${checks === 1 ? 'check' : 'checks'}`,
    structureShort: (failed: number, count: number, upper: string) =>
      `${failed} of ${pairs(count)} came apart, and none has gone the brief’s distance yet. Of all such pairs at most ${upper} hold (with 95 % certainty).`,
    pairsDiffer:
      'More checks would hardly tell more: nearly all that is not known is how much pairs differ, and about so many of them hold.',
    onePairDiffers: (pair: string) =>
      `Pair ${pair} alone keeps this open: without it the pairs hardly differ, or the verdict is another. Look at that pair first.`,
    oneReadingDiffers: (pair: string, at: string) =>
      `One reading alone keeps this open: pair ${pair} at ${at}. Check that number before you measure more.`,
    structureNone: (count: number) =>
      `None of ${pairs(count)} came apart, but none has gone the brief’s distance yet.`,
    structure: (failed: number, count: number, share: string, lower: string, upper: string) =>
      `${failed} of ${pairs(count)} came apart. At the brief’s distance ${share} of such pairs hold (90 % interval ${lower} to ${upper}); 90 % must.`,
    weibull: (shape: string, share: string, lower: string, upper: string) =>
      `By a Weibull curve ${share} hold (90 % interval ${lower} to ${upper}); its shape is ${shape}, and above 1 pairs break the more the farther they go.`,
    noLimits: 'The brief names no limit of foam or tread yet.',
    holding: 'Pairs that hold, by kilometres on the pair',
    holdingShare: 'Pairs that hold, %',
    cameApart: 'Pairs came apart here',
    tooFewPairs: (count: number) =>
      `${pairs(count)}: too few to show that it holds, even if no other breaks.`,
    recurs: (cells: string) => `proven to recur across testers: ${cells}`,
    nobodyAsked: 'nobody was asked yet',
    noneRecurs: (asked: number, who: number, complaint: string, pain: string) =>
      `no complaint of a zone is proven to recur across testers; by ${runs(asked)} of ${testers(who)}, a complaint may still be in up to ${complaint} of runs, pain in up to ${pain} (upper ends of the 95 % intervals)`,
    growing: (cells: string) => `grows: ${cells}`,
    noneGrows: (tested: number) =>
      tested === 0
        ? 'no complaint was reported'
        : `of ${tested} reported ${tested === 1 ? 'complaint' : 'complaints'} none is shown to grow`,
    mayGrow: (cells: string, more: number) =>
      `not ruled out that it grows: ${cells}${more > 0 ? ` and ${more} more` : ''}`,
    nobodyThere: 'nobody was asked at the brief’s distance yet',
    askedThere: (r: number, t: number, p: number, chance: string) =>
      `asked at the brief’s distance: ${runs(r)} of ${testers(t)} in ${pairs(p)}. If half of these testers had a complaint there in a fifth of their runs, none would be reported in ${chance} of tests`,
    stopped: (codes: string) => `in force for pair: ${codes}`,
    notStopped: 'none is in force',
    settle: 'What would settle it',
    alone: {
      tester: {
        holds: (name: string) => `Without the answers of ${name} this would hold.`,
        'does-not-hold': (name: string) => `Without the answers of ${name} this would not hold.`,
        'not-known-yet': (name: string) => `Without the answers of ${name} this would be open.`,
      },
      pair: {
        holds: (code: string) => `Without pair ${code} this would hold.`,
        'does-not-hold': (code: string) => `Without pair ${code} this would not hold.`,
        'not-known-yet': (code: string) => `Without pair ${code} this would be open.`,
      },
    },
    aloneNotTried: 'Not tried, for so many: whether one tester or one pair alone decides this.',
    caution:
      'A verdict is for the makers. Whether a shoe may be sold is for the standards and the law where it is sold.',
    how: 'Wear holds if the probability that a new pair is within the limit at the brief’s distance is 95 % or more, and does not if it is 5 % or less. Structure: 90 % of pairs must hold, with 95 % certainty: while none breaks, 29 must have gone so far. Allowed rate: does not hold with a complaint proven to recur across testers; holds if the upper end of every share, of kinds that nobody reported as well, is at or below it and three testers were asked. With 5 % and no report at all that takes 73 testers: the silence of a small panel settles nothing. Complaints that grow: every reported one is tested. It holds only where each is shown to fade or so rare at the brief’s distance, on three pairs at least, that this would be seldom (5 %) if half of the testers had it there in a fifth of their runs (judgement, no source).',
  },

  changes: {
    against: (later: string, earlier: string) => `${later} against ${earlier}`,
    worn: (both: number, earlier: string, onlyEarlier: number, later: string, onlyLater: number) =>
      `${testers(both)} wore both. Only ${earlier}: ${onlyEarlier}. Only ${later}: ${onlyLater}.`,
    oneOrder: (earlier: string) =>
      `Everybody who wore both wore ${earlier} first: part of what is better now may be getting used to it, or the season. A plan that crosses the rounds tells the two apart.`,
    knew: (earlier: string, whoEarlier: string, later: string, whoLater: string) =>
      `Not blind: some knew what was changed (${[whoEarlier && `${earlier}: ${whoEarlier}`, whoLater && `${later}: ${whoLater}`].filter(Boolean).join('; ')}). A description alone has moved comfort by 15 of 100: identical shoes gained 14.6 ± 15.0 (24 runners; Hébert-Losier 2025; see also Chan 2020). What is better here may be that.`,
    blindRead: 'Read with blind hand-outs only.',
    list: 'What was changed, and what came of it',
    noChanges: 'No change is noted for this round.',
    mends: (what: string) => `Meant to mend: ${what}`,
    mendsNothing:
      'The list does not say what it was meant to mend, so there is nothing to compare.',
    anywhere: (kind: string) => `${kind}, in any zone`,
    since: (round: string) => `since ${round}`,
    slopes: (earlier: string, later: string) =>
      `Share of each tester’s runs with it, ${earlier} to ${later}, %`,
    byTester: 'Tester by tester',
    tester: 'Tester',
    firstRuns: 'Of as many first runs',
    allRuns: (round: string) => `${round}, all asked runs`,
    notAsked: 'not asked',
    ofRuns: (reported: number, of: number) => `${reported} of ${of}`,
    notCompared: 'too few to compare',
    newTitle: 'What came with the round',
    nothingNew: 'No complaint is proved to have come with this round, and none is worth a look.',
    newWords: { proved: 'proved', look: 'worth a look' },
    newLine: (cell: string, before: string, now: string, p: string | null) =>
      `${cell}: ${before} before, ${now} now${p === null ? '' : ` (adjusted p ${p})`}.`,
    newHow:
      'Proved: the rise over the same testers by flipped signs, or over all testers; of what is called proved at most 10 % is false on average (Benjamini & Hochberg 1995). Worth a look: it recurs now and did not before, or two testers have it at least twice and nobody had it, or its rise would be rare by itself. That proves nothing.',
    comfortSame: 'Comfort, those who wore both',
    comfortOne: 'Comfort, those who wore only one',
    noComfort: 'Nobody has scored the comfort of both rounds.',
    bench: 'Stack height, hardness and mass of new pairs',
    noBench: 'The rounds have no first bench check in common.',
    measuredLate: (count: number) =>
      `${pairs(count)} had been run in by more than 20 km at the first bench check and ${count === 1 ? 'is' : 'are'} left out.`,
    benchWords: {
      differs: 'differs',
      open: 'no difference is shown',
      single: 'one pair alone: no interval',
    },
    difference: 'Difference (95 %)',
    ofPairs: (count: number) => pairs(count),
    benchLine: (place: string, earlier: string, later: string, difference: string, word: string) =>
      `${place}: ${earlier} → ${later}; difference with its 95 % interval ${difference}: ${word}.`,
    meanOfPairs: (round: string) => `${round}, mean`,
    allCells: 'Every complaint of both rounds',
    noCells: 'Neither round has a complaint.',
    testersOf: (round: string) => `${round}: testers`,
    runsOf: (round: string) => `${round}: runs`,
    rise: 'Change, points (95 %)',
    how: 'The tester is the unit. Of those who wore both rounds the first asked runs are compared, as many of one as of the other, so that break-in meets break-in. Their changes are tested by flipping signs (Fisher 1935), with the interval that this test leaves (Hartigan 1969), never narrower than that of as many independent runs. Where nothing but the round changed, a false “better” comes in at most 1 of 32 comparisons, a false “worse” in 1 of 64, however testers differ and however long a complaint lingers. Where everybody wore the earlier round first, getting used to the shoe comes on top: in simulations where complaints fade by 8 % a run, a third of unchanged rounds were called better. With fewer than five who wore both, all testers are taken as two panels (Zou & Donner 2008; Donner & Klar 2000). “No different” needs the interval within half of the earlier share, at most 15 points (judgement, no source). Changes are in points of 100 of the share of runs; each interval holds by itself.',
  },

  /** Sentences on a change, the same at the desk, in the terminal and in a finding. */
  changed: {
    count: (
      round: string,
      reporters: number,
      of: number,
      reported: number,
      asked: number,
      share: string,
    ) => `${round}: ${reporters} of ${testers(of)}, ${reported} of ${asked} asked runs (${share}).`,
    nobodyAsked: (round: string) => `${round}: nobody was asked.`,
    same: (count: number, runsEach: number, change: string, interval: string) =>
      `${testers(count)} wore both. Over their first runs, ${runsEach} of each round in all, the share of runs with it changed by ${change} (${interval}).`,
    flips: (changed: number, p: string, falls: boolean) =>
      `${testers(changed)} changed; how often chance alone makes such a ${falls ? 'fall' : 'rise'}: p ${p}.`,
    reporters: (gone: number, come: number, p: string) =>
      `Testers who had it before only: ${gone}; now only: ${come}. How often chance alone makes such a difference: p ${p} (exact McNemar test).`,
    panels: (change: string, interval: string) =>
      `Fewer than five wore both, so all testers of one round are set against all of the other: the share of runs with it changed by ${change} (${interval}). That takes both groups of testers to be alike.`,
    onlyOne: (earlier: string, before: string, later: string, now: string, change: string | null) =>
      `Testers who wore only one: ${earlier}: ${before}; ${later}: ${now}${change === null ? '' : `; the share of runs with it changed by ${change}`}.`,
    nobody: 'nobody',
    onlyCount: (count: number, reported: number, asked: number) =>
      `${testers(count)}, ${reported} of ${asked} runs`,
    points: (value: string) => `${value} percentage points`,
    withInterval: (change: string, interval: string) => `${change} (${interval})`,
    interval: (lower: string, upper: string) => `95 % interval ${lower} to ${upper}`,
    allowed: (upTo: string, allowed: string) =>
      `In the later round it may still be in up to ${upTo} of runs (with 95 % certainty); the brief allows ${allowed}.`,
    settle: (moreRuns: number | null, moreTesters: number | null) =>
      moreRuns === null && moreTesters === null
        ? 'Clean runs of this panel will not show that it is mended: too much hangs on who wears it.'
        : `To show that it is mended it takes, without one more report: ${[
            moreRuns === null ? '' : `${runs(moreRuns)} more of each tester`,
            moreTesters === null
              ? ''
              : `${moreTesters} more ${moreTesters === 1 ? 'tester' : 'testers'} with as many runs`,
          ]
            .filter(Boolean)
            .join(', or ')}.`,
    margin: (points: string) => `A change of less than ${points} counts as none.`,
    why: {
      'nobody-asked-earlier':
        'Nobody was asked in the earlier round. That is not the same as no complaint.',
      'nobody-asked-later':
        'Nobody was asked in the later round yet. That is not the same as no complaint.',
      'never-reported': 'Nobody reported it before either, so there is nothing to mend.',
      'too-few-testers':
        'Too few testers: five who wore both are needed, or four in each round, with two asked runs each.',
      'too-few-changed':
        'Fewer than five testers changed at all, and fewer can prove nothing, however often they ran.',
      'not-decided': 'The interval leaves room both for a change that matters and for none.',
    },
  },

  /** Findings board, report of a round, and what the specialists see of both. */
  report: {
    title: (project: string, round: string) => `${project}, ${round}: report of the round`,
    sheetTitle: (project: string, round: string, trade: string) =>
      `${project}, ${round}: sheet for ${trade}`,
    printed: (title: string, date: string) => `${title}, ${date}`,
    sections: {
      brief: 'Brief',
      sample: 'Sample',
      changes: 'What changed in this round',
      verdict: 'Verdict',
      findings: 'Findings and wanted changes',
      carried: 'Earlier findings whose change this round carries',
      maps: 'Where it bothered',
      recurring: 'Complaints that recur',
      comfort: 'Comfort',
      wear: 'Wear',
      deviations: 'Arrival against the blueprint',
      damages: 'Pairs that came apart',
      reading: 'How to read the figures',
      methods: 'Methods and limits',
    },
    briefOf: (runner: string, use: string, surfaces: string) =>
      `Runner: ${runner}. Use: ${use}. Surfaces: ${surfaces}.`,
    briefDistance: (distance: string) => `A pair must carry ${distance}.`,
    briefAllowed: (complaint: string, pain: string) =>
      `A complaint is accepted in ${complaint} of the asked runs, pain in ${pain}.`,
    stage: (stage: string) => `Stage: ${stage}.`,
    sample: (p: number, t: number, r: number, distance: string) =>
      `${pairs(p)}, ${testers(t)} with runs, ${runs(r)}, ${distance} in this round.`,
    mapOf: (what: string, t: number, r: number) =>
      `${what}, reported at least twice: testers of ${t} asked, ${runs(r)}`,
    nobodyScored: 'Nobody has scored the comfort of this round yet.',
    thisRound: (round: string) => `${round}, mean of 0 to 100 (95 % interval)`,
    change: (earlier: string) => `Change against ${earlier}, points (95 % interval)`,
    noEarlier: 'no scores to compare with',
    deviation: (pair: string, what: string, value: string, deviation: string, limits: string) =>
      `Pair ${pair}, ${what}: ${value}, that is ${deviation} from nominal (allowed ${limits})`,
    noCheck: 'No bench check yet: nothing is known of wear.',
    noFinding: 'No finding is written down for this round.',
    reading: {
      interval:
        'Interval: so much may be chance. The true figure, of all runners or pairs like these, lies between both ends in 95 (or 90) of 100 such tests. Wide means: few data.',
      p: 'p: how often chance alone would show as much if nothing were behind it. 0.05 is one time in twenty; only below that is something called shown. Adjusted: already made stricter, because many questions are asked at once.',
      eValue:
        'e-value: how strongly the runs speak for “more often than the brief allows”. 1 says nothing, 100 is strong; the value that is enough stands beside it. It may be looked at after every run.',
      points:
        'Percentage points: from 33 % of the runs to 13 % of the runs is −20 percentage points.',
    },
    suspects:
      'Which part is usually looked at for a complaint is common practice, not a measured cause.',
    silence: 'Where nobody was asked nothing is known; that is not the same as no complaint.',
    leftOut: (count: number) =>
      `${count} ${count === 1 ? 'record' : 'records'} could not be read and count in no figure.`,
    photo: (title: string, at: number) => `Photo ${at}: ${title}`,
    photosLeftOut: (count: number) =>
      count === 1 ? '1 photo is not in this file.' : `${count} photos are not in this file.`,

    part: (part: string, trade: string) => `Part: ${part}. Trade: ${trade}.`,
    urgency: (priority: string, state: string) => `Priority: ${priority}. State: ${state}.`,
    wanted: (what: string) => `Wanted: ${what}`,
    carriedBy: (round: string) => `To be carried by ${round}.`,
    shownBy: (round: string) => `Shown by ${round}.`,
    frozenTesters: (twice: number, once: number, of: number) =>
      `${twice} of ${testers(of)} reported it at least twice, ${once} at least once.`,
    frozenRuns: (count: number, of: number) => `It came in ${count} of ${of} asked runs.`,
    asWritten: (language: string | null) =>
      language === null
        ? 'As it was written, in the language it was written in:'
        : `As it was written, in ${language}:`,
    noEvidence: 'No evidence was frozen with it.',
    outcome: (round: string | null, verdict: string, date: string) =>
      `Outcome in ${round ?? 'the round that carried it'}: ${verdict} (data up to ${date}).`,
    sources: {
      complaint: 'from a complaint',
      wear: 'from wear',
      blueprint: 'from the blueprint',
      comfort: 'from comfort',
      other: 'in the lead’s own words',
    },

    page: {
      trade: 'For',
      whole: 'the whole round',
      language: 'Language',
      print: 'Print or save as PDF',
      html: 'Save as one file (HTML)',
      csv: 'Figures as tables (CSV)',
      json: 'Figures as JSON',
      send: 'Send to the specialists',
      sent: 'Sent. Specialists receive it with their next sync.',
      sentAhead: 'It is kept for the specialists: they receive it once they have joined.',
      noSpecialist: 'No specialist in this group yet.',
      inviteOne: 'Invite one',
      tooLarge: 'The report is too large to send, even without its photos. Save it as a file.',
      withoutPhotos: 'Sent without its photos, which would make it too large.',
      earlier: 'Sent so far',
      noneSent: 'Nothing was sent yet.',
    },

    board: {
      state: 'State',
      any: 'all',
      noneShown: 'No finding fits this choice.',
      history: 'History',
      photos: 'Photos',
      erase: 'Erase',
      you: 'you',
      otherLead: 'another lead',
      saved: (date: string, who: string) => `${date}, ${who}`,
      written: 'Written down.',
      erased: 'Erased.',
      restored: 'Brought back.',
      same: 'Saved without a change.',
      change: (field: string, from: string, to: string) => `${field}: ${from} → ${to}`,
      beside: 'Saved elsewhere at the same time, and not in the current state:',
      nothing: 'nothing',
      evidence: 'Evidence',
      outcome: 'Outcome',
      titleField: 'Title',
      from: 'What shows it',
      reading: 'Reading out of tolerance',
      place: 'Measure and site',
      attribute: 'Attribute',
      lines: 'Evidence in your own words, a line each',
      nothingToShow: 'The log has nothing of the kind in this round.',
      evidenceIs: 'This is frozen with it:',
      outcomeRound: 'Round that was compared',
      verdict: 'What the change did',
      outcomeLines: 'What shows it, a line each',
      missing: 'Write what shows it.',
    },

    reader: {
      findings: 'Findings',
      reports: 'Reports',
      noFindings: 'No finding has reached you yet.',
      noReports: 'No report has reached you yet.',
      mine: 'Trade',
      open: 'Open',
      save: 'Save as a file',
      missing: 'The report is not on this device yet. Open this page once with a network.',
      unreadable: 'This file is not a report that Pairlog can show. Save it and open it by itself.',
      sentAt: (date: string, languages: string) => `Sent ${date}, ${languages}`,
      sheetFor: (trade: string) => `sheet for ${trade}`,
    },
  },

  rounds: {
    foam: 'Foam of the midsole',
    foamUnsaid: 'not said',
    none: 'No round yet.',
    add: 'Add a round',
    nth: (order: number) => `Round ${order}`,
    name: 'Name',
    stage: 'Stage',
    changes: 'What changed',
    noChanges: 'Nothing is noted as changed.',
    part: 'Part',
    what: 'What is different',
    mends: 'Meant to mend',
    mendsHint: 'Say what each is meant to mend: “Changes” then compares it.',
    addChange: 'One more change',
    blueprint: 'Blueprint',
    addDimension: 'One more dimension',
    lower: 'Lower',
    upper: 'Upper',
    unit: 'Unit',
    addPair: 'Add a pair',
    code: 'Code on the tongue label',
    codeHint: 'Capitals and digits; it must not tell the build.',
    size: 'Size, EU',
    carriedIn: 'Kilometres before the test',
    carried: (distance: string) => `${distance} before the test`,
    pairWrong: {
      'no-code': 'The code is missing.',
      'not-a-code': 'Only capitals, digits and hyphens, 12 at most, for example 417.',
      taken: 'This code is another pair’s in this project.',
      'not-a-size': 'EU sizes go from 17 to 56. For example 42 or 42.5.',
      'wrong-carried':
        'Kilometres before the test are a number up to 1000, without a mark for thousands, or empty.',
      'too-many-cells': 'More than code, size and kilometres.',
    },
    addPairs: 'Add several pairs',
    list: 'Pairs, a line each',
    listHint:
      'Code, size EU, kilometres before the test if there are any: 417 42.5. Cells of a table can be pasted.',
    usualSizeHint: 'Of drawn codes, and of lines without a size.',
    howMany: 'How many',
    drawCodes: 'Draw codes',
    pairs,
  },

  lines: {
    check: 'What will be added',
    nothingYet: 'What will be added stands here before it is saved.',
    willBeAdded: (what: string) => `${what} will be added.`,
    putRight: (count: number) =>
      count === 1 ? '1 line must be put right first.' : `${count} lines must be put right first.`,
    wrong: (line: number, text: string, why: string) => `Line ${line}, “${text}”: ${why}`,
    twice: (line: number) => `The same code stands in line ${line}.`,
    unclear:
      'A comma here may part two answers or be a decimal one. Put tabs, semicolons or spaces between them.',
    added: (what: string) => `${what} added`,
  },

  testers: {
    none: 'No tester yet.',
    add: 'Add a tester',
    addSeveral: 'Add several testers',
    list: 'Testers, a line each',
    listHint:
      'Code, name, foot length in mm, left/right where they differ: T07 Ada 265/267. Name and length may be missing. Cells of a table can be pasted.',
    taken: 'This code is another tester’s.',
    wrongLength: 'A foot length is from 100 to 400 mm, left/right where they differ: 265/267.',
    tooManyCells:
      'More than code, name and foot length. Two lengths stand together, left/right: 265/267.',
    testers,
    code: 'Code',
    codeHint: 'Capitals and digits, for example T07.',
    name: 'Name',
    nameStays: 'stays in the group',
    length: 'Foot length, mm (left / right)',
    mass: 'Body mass, kg',
    height: 'Height, cm',
    invite: 'Invite',
    file: 'Hand-out file',
    scan: (code: string) => `${code} scans this, or types the code:`,
    localOnly:
      'This address works on this machine only. For phones start the hub with --lan, or behind a web server.',
    validUntil: (date: string) => `Good once, until ${date}.`,
    needsHub: 'Without a hub, send the hand-out file.',
    silent: (days: number) => `silent for ${days} days`,
  },

  blueprint: {
    /** Of a reading, a mean of readings, or a difference. */
    conformity: {
      conforming: 'conforms (proved)',
      undecided: 'undecided: too near the limit for this gauge',
      'not-conforming': 'does not conform (proved)',
      inside: 'read inside; the gauge’s uncertainty is not known',
      outside: 'read outside; the gauge’s uncertainty is not known',
    },
    disagree: 'the readings contradict each other: read again',
    mark: 'out of tolerance',
    counted: {
      conforming: (count: number) => `${count} proved within tolerance`,
      inside: (count: number) => `${count} read within it, the gauge’s uncertainty not known`,
    },
    counts: (proved: number, outside: number, undecided: number) =>
      [
        proved > 0
          ? `${proved} ${proved === 1 ? 'dimension' : 'dimensions'} proved out of tolerance`
          : '',
        outside > 0
          ? `${outside} ${outside === 1 ? 'dimension' : 'dimensions'} read out of tolerance (gauge’s uncertainty not known)`
          : '',
        undecided > 0 ? `${undecided} undecided` : '',
      ]
        .filter(Boolean)
        .join(', '),
    summary: (judged: number, counts: string) =>
      `${judged} ${judged === 1 ? 'dimension was' : 'dimensions were'} read on arrival: ${counts}.`,
    nothingOut: 'Nothing was read out of tolerance, and nothing is undecided.',
    showAll: 'Show all dimensions',
    how: 'Conformity is proved from a probability of 95 % on that the true value lies within the limits (JCGM 106:2012), which is a guard band of 1.65 standard uncertainties inside each limit (ISO 14253-1:2017); out of tolerance is proved beyond a limit and its guard band. Of several readings the mean counts; repeating makes only the repeatable part of the uncertainty smaller.',
    reading: 'Read',
    readings: (count: number) => `mean of ${count}`,
    uncertainty: 'Standard uncertainty',
    from: { reading: 'as stated', 'gauge-study': 'from the gauge study' },
    notKnown: 'not known',
    guard: 'Guard band',
    chance: 'Probability to conform',
    decision: 'Decision',
    risk: (risk: string) => `risk of error ${risk}`,
    sides: 'Left against right on arrival',
    difference: 'Left less right',
    allowed: 'Allowed',
    allowedFrom: {
      blueprint: 'by the blueprint',
      practice: 'half of the tolerance’s width (common practice, no source)',
    },
    noSides: 'No dimension was read on both shoes.',
    sidesFine: (count: number) =>
      `${count} ${count === 1 ? 'difference' : 'differences'} of left and right: none is out or undecided.`,
    sidesHow:
      'The uncertainty of a difference is √2 of one reading’s. A pair is marked only for differences that its blueprint limits.',
    only: 'Only pairs in tolerance',
    without: (count: number, codes: string) =>
      `Read without the ${pairs(count)} out of tolerance: ${codes}.`,
    withoutNone: 'Read without pairs out of tolerance; there is none.',
    stays: (count: number) =>
      `${pairs(count)} ${count === 1 ? 'was' : 'were'} not measured against a blueprint and ${count === 1 ? 'stays' : 'stay'}.`,
    isOn: 'All figures of this project are read so, until this is switched off.',
    outPairs: (codes: string) => `Out of tolerance on arrival: ${codes}.`,

    takeOver: (round: string) => `Take over blueprint, last and layers of ${round}`,
    takenOver: (round: string) =>
      `Blueprint, last and layers are those of ${round}: change what is different.`,
    dimension: (at: number) => `Dimension ${at}`,
    forFoot: 'Foot',
    both: 'both',
    leftRight: 'Left to right, at most',
    usual: 'Add a usual dimension',
    usualHint: 'Tolerances of common practice, no source: change them as your drawing says.',
    percentHint:
      'Lower and upper are deviations from nominal, in the unit or in percent of nominal such as 5%.',
    sites: {
      'internal-length': 'inner length of the shoe',
      'back-height': 'back height',
      'collar-height-medial': 'collar height, medial',
      'collar-height-lateral': 'collar height, lateral',
      'heel-cup-width': 'width of the heel cup',
      'toe-cap-length': 'toe cap length',
      'vamp-length': 'vamp length',
      'eyestay-length': 'eyestay length',
      'eyelet-pitch': 'eyelet pitch',
      'tongue-length': 'tongue length',
      'stitch-margin': 'stitch margin',
      'heel-centre': 'centre of the heel',
      'forefoot-centre': 'centre of the forefoot',
      'sockliner-thickness': 'sockliner thickness',
      'outsole-length': 'outsole length',
      'outsole-width': 'outsole width',
      'last-stick-length': 'stick length of the last',
      'last-ball-girth': 'ball girth of the last',
      'last-instep-girth': 'instep girth of the last',
      'last-bottom-width': 'bottom width of the last',
      'heel-lateral': 'lateral heel',
      'heel-medial': 'medial heel',
      'forefoot-lateral': 'lateral forefoot',
      'forefoot-medial': 'medial forefoot',
      shoe: 'one shoe',
    } as Readonly<Record<string, string>>,
    last: 'Last',
    lastName: 'Name of the last',
    lastSize: 'Measured at size, mm of foot length',
    lastLength: 'Length of the last, mm',
    lastWidth: 'Width at the ball, mm',
    lastGirth: 'Girth at the ball, mm',
    widthStep: 'Width more per 5 mm, mm',
    girthStep: 'Girth more per 5 mm, mm',
    lastLine: (name: string, size: string, parts: string) => `Last ${name} at ${size} mm: ${parts}`,
    lastParts: {
      length: (mm: string, eu: string, uk: string) =>
        `length ${mm} mm (EU ${eu}, UK ${uk} by last length)`,
      width: (mm: string) => `width ${mm} mm`,
      girth: (mm: string) => `girth ${mm} mm`,
    },
    layers: 'Layers of material',
    layersHint: 'Counted on the sample, zone by zone; empty: not counted.',

    layersTitle: 'Layers of material against heat and wet',
    layersNone: 'No layers are counted for this round: note them with the round.',
    layersZone: 'Zone',
    layersCount: 'Layers',
    layersRuns: 'Hot or wet, of asked runs',
    layersTesters: 'Testers',
    layersAsked: (askedRuns: number, askedTesters: number) =>
      `${runs(askedRuns)} of ${testers(askedTesters)} were asked about all zones.`,
    layersNobody: 'Nobody was asked.',
    layersFound: {
      more: 'Zones with more layers were called hot or wet more often',
      less: 'Zones with more layers were called hot or wet less often',
      neither: 'That layers and hot or wet runs go together is not shown',
    },
    layersFigures: (found: string, tau: string, p: string, zones: number) =>
      `${found}: Kendall’s τ ${tau} over ${zones} zones (p ${p}, normal approximation). At best a hint where to look: zones of one foot are not independent, and the air’s warmth is not in it.`,
    layersWhy: {
      'nobody-asked': () => 'Nobody was asked, so nothing can be said of heat and wet.',
      'too-few-zones': (zones: number) =>
        `Layers are counted in ${zones} ${zones === 1 ? 'zone' : 'zones'}: at least five are needed before their order tells anything.`,
      'same-layers': (zones: number) => `All ${zones} zones have as many layers.`,
      'same-shares': (zones: number) =>
        `All ${zones} zones were called hot or wet equally often, so there is no order to compare.`,
    },

    gauges: 'Gauge studies',
    gaugesNone:
      'No gauge study yet. Without one, or an uncertainty stated with the reading, no dimension is proved in or out.',
    gaugeAdd: 'Add a gauge study',
    gaugeOf: (gauge: string, what: string, date: string) => `${gauge}: ${what}, ${date}`,
    anySite: 'every site',
    everySite: 'empty: every site of the measure',
    toleranceWidth: 'Width of the tolerance to decide',
    parts: 'Parts',
    operators: 'Operators',
    trials: 'Trials',
    part: (at: number) => `Part ${at}`,
    operator: (at: number) => `Operator ${at}`,
    trial: (at: number) => `trial ${at}`,
    cell: (operator: string, trial: number, part: string) => `${operator}, trial ${trial}, ${part}`,
    operatorName: (at: number) => `Name of operator ${at}`,
    sameName: 'Two operators have the same name.',
    typeIn: 'Type the readings',
    grid: 'Readings by operator, trial and part',
    paste: 'Or paste a table: part, operator, value; one reading a line, with a heading',
    gaugeFile: 'Or choose a table (CSV)',
    gaugeRead: (readings: number, parts: number, operators: number) =>
      `${readings} readings of ${parts} parts by ${operators} operators.`,
    gaugeTroubles: {
      'missing-column': (line: number, column: string) =>
        `Line ${line}: the column ${column} is missing.`,
      'no-number': (line: number, column: string) => `Line ${line}, ${column}: not a number.`,
      'no-name': (line: number, column: string) => `Line ${line}, ${column}: this is missing.`,
      'too-many': (line: number) => `Line ${line}: more than 1000 readings.`,
    },
    gaugeTemplate: 'Save an empty table',
    gaugeWord: {
      good: 'good',
      conditional: 'conditional',
      'not-good-enough': 'not good enough',
    },
    gaugeVerdict: (word: string, share: string, of: string) =>
      `The gauge is ${word}: ${share} ${of}.`,
    gaugeOfWhat: {
      tolerance: 'of the tolerance',
      total: 'of the study’s spread',
    },
    gaugeRule:
      'Below 10 % is good, to 30 % conditional (AIAG, Measurement Systems Analysis, 4th ed. 2010). By the tolerance where its width is given: six standard deviations of the gauge against it.',
    gaugeUncertainty: (sd: string, lower: string, upper: string, unit: string) =>
      `Its standard uncertainty is ${sd} ${unit} (95 % interval ${lower} to ${upper}), and it is used for readings of this kind with this gauge that state none.`,
    gaugeDesign: (parts: number, operators: number, trials: number) =>
      `${parts} parts, ${operators} operators, ${trials} trials each.`,
    pooled: (p: string) =>
      `Operators and parts do not interact noticeably (p ${p}, above 0.25): pooled with repeatability.`,
    notPooled: (p: string) =>
      `Operators read some parts unlike each other (interaction p ${p}): counted with the operators.`,
    categories: (count: number) =>
      `Distinct categories of parts that it tells apart: ${count}${count < 5 ? '; five are asked for' : ''}.`,
    above: (list: string) => `Unlike the rest (range above its limit): ${list}.`,
    noRanges: 'Average and range is left out: beyond the handbook’s constants.',
    method: 'Method',
    methods: { anova: 'Analysis of variance', ranges: 'Average and range' },
    repeatability: 'Repeatability',
    reproducibility: 'Reproducibility',
    gaugeTotal: 'Gauge',
    partSpread: 'Parts',
    shareOfTotal: 'Of the spread',
    shareOfTolerance: 'Of the tolerance',
    gaugeWhy: {
      'too-few-parts': 'At least two parts are needed, better ten.',
      'too-few-operators': 'At least two operators are needed, better three.',
      'too-few-trials': 'Every operator must read every part at least twice.',
      'nothing-varies': 'All readings are the same: the gauge shows no difference at all.',
    },
    gaugeUnbalanced: (operator: string, part: string, have: number, need: number) =>
      `${operator} read ${part} ${have} ${have === 1 ? 'time' : 'times'}, others ${need}: every operator must read every part equally often.`,

    feet: 'Feet, lasts and sizes',
    feetNone: 'No tester of this project yet.',
    foot: 'Foot length, mm',
    footWidth: 'Width, mm',
    footGirth: 'Ball girth, mm',
    widthField: 'Foot width at the ball, mm (left / right)',
    girthField: 'Ball girth, mm (left / right)',
    asymmetry: 'Left less right, mm',
    size: 'Size of the longer foot',
    between: (step: string) => `between two sizes of ${step} mm`,
    nearest: (mm: string, step: string) => `${mm} (steps of ${step} mm)`,
    inLast: 'Feet in the lasts they wear',
    pair: 'In pair',
    toe: 'Toe allowance, mm',
    widthOver: 'Last less foot, width, mm',
    girthOver: 'Last less foot, girth, mm',
    toes: { short: 'short', usual: 'usual', long: 'long' },
    noLast: 'no last noted',
    leftThenRight: 'left / right',
    notMeasured: 'not measured',
    betweenCount: (between: number, measured: number, step: string) =>
      `${between} of ${measured} measured testers lie between two sizes of ${step} mm.`,
    coverage: {
      length: 'foot length',
      width: 'foot width',
    },
    coverageLine: (what: string, from: string, to: string, inside: number, measured: number) =>
      `The brief is for a ${what} of ${from} to ${to} mm; ${inside} of ${measured} measured testers lie in it.`,
    coverageEmpty: (list: string) => `Nobody between ${list}.`,
    coverageFull: 'Every step of 5 mm has a tester.',
    coverageNot: (count: number, what: string) =>
      `The ${what} of ${testers(count)} was not measured.`,
    stretch: (from: string, to: string) => `${from} and ${to} mm`,
    noRange: (what: string) => `The brief names no range of ${what}.`,
    feetHow:
      'Sizes by ISO 9407 (steps of 5 or of 7.5 mm); EU, UK and US (M men’s, W women’s) by the open arithmetic; makers differ by half a size. The last is graded by 5 mm of length a size. A toe allowance of 10 to 15 mm is usual in running shoes (common practice, no source). A foot counts as between sizes when it is nearer to the middle than to either (judgement).',
    briefFeet: 'Feet that the shoe is for',
    lengthFrom: 'Foot length from, mm',
    lengthTo: 'Foot length to, mm',
    widthFrom: 'Foot width from, mm',
    widthTo: 'Foot width to, mm',
  },

  /** Hand-out plan, size of a test, and the check of the panel. */
  panel: {
    plan: {
      title: 'Hand-out plan',
      go: 'Hand-out plan',
      lead: 'Who wears which pair when: by chance from a seed, and as even as sizes and absences allow. Only leads see it, because it tells pairs apart.',
      none: 'No plan yet.',
      needsRounds: 'A plan compares rounds. Add a round and its pairs first.',
      make: 'Draw a new plan',
      rounds: 'Rounds to compare',
      periods: 'Periods',
      periodsHint: 'A tester wears one pair a period; at most as many periods as rounds.',
      weeks: 'Weeks a period',
      from: 'First day',
      allowed: 'Pair and foot may differ by, mm',
      allowedHint: 'Size of the pair against the longer foot.',
      outComeBack: 'Pairs that are out now are back by the first day',
      who: 'Who takes part, and who is away when',
      takesPart: 'takes part',
      awayIn: (tester: string, period: number) => `${tester} is away in period ${period}`,
      takesPartName: (tester: string) => `${tester} takes part`,
      awayShort: (period: number) => `away in ${period}`,
      draw: 'Draw the plan',
      drawAgain: 'Draw with another seed',
      drawing: 'Drawing …',
      save: 'Save the plan',
      saved: (date: string) => `Plan of ${date}`,
      which: 'Plan',
      seed: (seed: number) => `Seed ${seed}: the same question and seed draw the same plan.`,
      trouble: {
        'no-round': 'Choose at least one round.',
        'no-tester': 'Choose at least one tester.',
        'more-periods-than-rounds':
          'There are more periods than rounds: nobody wears a round twice.',
        'no-pair': 'No pair of these rounds can be handed out.',
      },
      leftOut: (out: number, withdrawn: number) =>
        [
          out > 0 ? `${pairs(out)} left out because they are still out` : '',
          withdrawn > 0 ? `${pairs(withdrawn)} left out because they are withdrawn` : '',
        ]
          .filter(Boolean)
          .join('; '),
      withoutSize: (names: string) =>
        `No size is known of ${names}: note the foot length, or they get no pair.`,
      tester: 'Tester',
      period: (number: number) => `Period ${number}`,
      away: 'away',
      gone: 'no longer takes part',
      emptyPlace: 'no pair',
      handedOut: 'handed out',
      empty: (count: number) =>
        `${count} ${count === 1 ? 'place has' : 'places have'} no pair, because none that fits was left.`,
      basis: {
        'carry-over-balanced':
          'Every round comes equally often in each period and equally often after each other round (Williams 1949).',
        'balanced-blocks':
          'Every round is worn equally often, and every two rounds by equally many testers (balanced incomplete blocks).',
        'best-found': 'The evenest order that was found for these testers.',
      },
      evenness: 'How even it is',
      table: {
        inPeriod: 'Same round in a period',
        inAll: 'Round in all',
        together: 'Two rounds worn by the same tester',
        after: 'One round right after another',
      },
      count: (least: number, most: number, differ: number) =>
        least === most
          ? `${most} times`
          : `${least} to ${most} times, ${differ === 0 ? 'the same where it should be' : `at most ${differ} apart`}`,
      line: (table: string, count: string, state: string) => `${table}: ${count}; ${state}`,
      even: 'as even as can be',
      over: (imbalance: number) => `${imbalance} above the least possible`,
      whole: (imbalance: number, least: number | null) =>
        imbalance === 0
          ? 'Imbalance 0: the theoretical optimum. No plan can be more even.'
          : least === imbalance
            ? `Imbalance ${imbalance}: no plan of so many testers, rounds and periods has less (proven).`
            : least === null
              ? `Imbalance ${imbalance}; 0 would be perfectly even. Whether these sizes and absences allow less is not known.`
              : `Imbalance ${imbalance}; without limits of size the least would be ${least}.`,
      how: 'Imbalance: sum of the squared counts above what counts that differ by at most 1 would give, over the four tables.',
      handOut: (period: number) => `Hand out period ${period}`,
      handOutHow: 'Takes back the pairs of the periods before and makes blind hand-outs.',
      handedOutNow: (count: number) => `${pairs(count)} handed out`,
      cannot: {
        withdrawn: (pair: string, tester: string) => `Pair ${pair} for ${tester}: withdrawn.`,
        out: (pair: string, tester: string) =>
          `Pair ${pair} for ${tester}: still in somebody’s hands. Take it back, then hand out again.`,
      },
      takeAllBack: 'These pairs are back: take them back and hand out',
      allHandedOut: 'All periods were handed out.',
      dropOut: 'Drop out',
      dropOutName: (tester: string) => `${tester} drops out`,
      dropOutFrom: (tester: string, period: number) =>
        `${tester} takes no part from period ${period} on. What was handed out stays; the rest is drawn anew for the others.`,
      imbalances: (before: number, untouched: number, after: number) =>
        `Imbalance before: ${before}. Without the tester and with nothing else changed: ${untouched}. Drawn anew: ${after}.`,
      keep: 'Save the new plan',
      print: 'Print',
      notDrawn: 'No plan can be drawn for the rest.',
      drawCode: 'Draw a code',
      noCode: 'All three-digit codes are used.',
    },
    power: {
      title: 'How many testers and runs does it take?',
      testers: 'Testers',
      runs: 'Runs of each, in each round',
      before: 'Runs with the complaint before, %',
      after: 'and after the change, %',
      comfort: 'Difference of comfort, points of 100',
      fall: (t: number, r: number, before: string, after: string, share: string) =>
        `With ${testers(t)} and ${runs(r)} each you would see a fall from ${before} to ${after} in ${share} of tests.`,
      about: (share: string) => `about ${share}`,
      nearlyAll: 'more than 99 %',
      hardlyAny: 'less than 1 %',
      noFall: 'There is no fall to see.',
      comfortLine: (t: number, points: string, share: string) =>
        `With ${testers(t)} you would see a difference of comfort of ${points} points in ${share} of tests.`,
      seen: (t: number, share: string, of: string) =>
        `A complaint that ${of} of testers have would be seen by at least one of ${testers(t)} in ${share} of tests.`,
      needed: (count: number | null) =>
        count === null
          ? 'More than 200 testers would be needed for 80 %.'
          : `For 80 % it takes ${testers(count)}.`,
      neededOnce: (count: number | null) =>
        count === null
          ? 'More than 200 testers would be needed for 95 %.'
          : `For 95 % it takes ${testers(count)}.`,
      how: (alike: string, sd: string) =>
        `Exact, two-sided at 5 %, the same testers in both rounds. Complaint: sign test over testers of their shares of runs; testers differ (two runs of one tester correlate by ${alike}: judgement, no source), each round drawn on its own. Comfort: paired t test; testers’ differences have a standard deviation of ${sd} (Hébert-Losier 2025).`,
    },
    check: {
      title: 'Does the panel answer steadily?',
      nobody: 'Nobody has logged a run yet.',
      few: 'Too little to compare: at least two testers must have scored at least two rounds in two sessions each.',
      same: 'No tester’s scores differ between the rounds: there is nothing to agree on.',
      alike:
        'All testers’ scores move by exactly the same from round to round. Without any difference nobody can say how much of that is chance.',
      icc: (t: number, rounds: string) =>
        `${testers(t)} scored ${rounds}. Share of the spread of overall comfort that comes from the rounds:`,
      correlation: {
        shown: (icc: string, lower: string, upper: string) =>
          `${icc} (95 % interval ${lower} to ${upper})`,
        open: (icc: string, upper: string) =>
          `${icc}, but it may be 0: agreement is not shown yet (95 % interval 0 to ${upper})`,
        none: (upper: string | null) =>
          `no agreement shown${upper === null ? '' : ` (95 % interval 0 to ${upper})`}`,
      },
      one: (correlation: string) => `one tester’s score: ${correlation}`,
      oneLevelled: (correlation: string) =>
        `after each tester’s own level is taken off: ${correlation}`,
      panel: (correlation: string) => `the panel’s mean: ${correlation}`,
      error: (
        se: string,
        lower: string,
        upper: string,
        change: string,
        groups: number,
        scores: number,
      ) =>
        `From session to session one tester’s score in the same pair moves by ${se} of 100 (standard error; 95 % interval ${lower} to ${upper}; ${scores} scores in ${groups} ${groups === 1 ? 'pair' : 'pairs'} in one tester’s hands). Two single scores that differ by less than ${change} are not told apart.`,
      noError:
        'No tester has scored the same pair twice: how far a score moves by itself is not known.',
      ask: 'Worth a friendly question',
      agreement: 'How well scores agree',
      none: (t: number, enough: number) =>
        enough === 0
          ? 'Nobody has five logs yet.'
          : `Nothing to ask: ${enough} of ${testers(t)} have five logs or more.`,
      question: {
        'same-score': (tester: string, logs: number, least: string, most: string) =>
          `${tester}: overall comfort between ${least} and ${most} in all ${logs} logs. Ask whether the pairs really felt alike, or whether the line is hard to use.`,
        'no-complaint': (tester: string, asked: number, share: string, others: number, p: string) =>
          `${tester}: no complaint in ${asked} asked runs; ${testers(others)} have one in ${share} (adjusted p ${p}). Ask whether all is well, or whether small things seem not worth a word.`,
        'many-complaints': (
          tester: string,
          reported: number,
          asked: number,
          share: string,
          others: number,
          p: string,
        ) =>
          `${tester}: a complaint in ${reported} of ${asked} asked runs; the other ${others} in ${share} (adjusted p ${p}). Ask about feet, size and socks: they may feel what others miss.`,
        'written-late': (tester: string, late: number, logs: number, median: string) =>
          `${tester}: ${late} of ${logs} logs were written more than two days after the run (half of them after ${median} h). Ask what would make it easier on the doorstep.`,
        clock: (tester: string, logs: number) =>
          `${tester}: ${runs(logs)} written down before they began. Ask them to look at the phone’s clock and the date they typed.`,
        'other-way-round': (
          tester: string,
          r: string,
          lower: string,
          upper: string,
          cells: number,
        ) =>
          `${tester}: scores rise where those of the others fall (r ${r}, 95 % interval ${lower} to ${upper}, ${cells} attributes of rounds). Ask which end of the line means good.`,
      },
      how: 'Questions, not marks: who answers otherwise may be the one who is right. Agreement: intraclass correlations (2,1), (3,1), (2,k) of Shrout & Fleiss 1979, means of at least two sessions after the first wearing; intervals by McGraw & Wong 1996, from 0 up. Error: Bland & Altman 1986, with whatever kilometres change in it. Complaints: what the other testers foretell (beta-binomial, Skellam 1948), Holm over testers. Late: when the phone first saved it. Limits without a source: judgement.',
    },
  },

  group: {
    devices: 'Devices',
    device: 'Device',
    role: 'Role',
    seen: 'Last seen',
    revoke: 'Sign out',
    revoked: 'signed out',
    inviteLead: 'Invite another lead',
    inviteSpecialist: 'Invite a specialist',
    specialistHint:
      'A specialist of the factory reads findings and the reports that you send, and nothing else.',
    files: 'Files',
    exportAll: 'Save the whole log as a file',
    open: 'Open a file',
    noHub: 'This group works by files: no hub.',
    sync: 'Sync now',
  },

  overview: {
    next: 'What to do next',
    nothing: 'Nothing waits for you.',
    more: (count: number) => `and ${count} more`,
    steps: {
      'ask-about-pain': (count: number) =>
        count === 1 ? 'Ask about one report of pain' : `Ask about ${count} reports of pain`,
      'look-at-damage': (count: number) =>
        count === 1 ? 'Look at one damaged pair' : `Look at ${count} reports of damage`,
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
        `Invite ${testers(count)}, or ask whether the phone is set up: nothing has come from them yet`,
      'ask-the-silent': (count: number) =>
        `Ask ${count} ${count === 1 ? 'tester' : 'testers'} how it goes: no run for a week or more`,
      'write-findings': (count: number) =>
        count === 1
          ? 'Write a finding for one proven complaint'
          : `Write findings for ${count} proven complaints`,
      'assign-findings': (count: number) =>
        `Say which round carries the change of ${count} ${count === 1 ? 'finding' : 'findings'}`,
      'judge-findings': (count: number) =>
        `Judge what came of ${count} ${count === 1 ? 'finding' : 'findings'}`,
      'set-limits': () => 'Say in the brief which limits count as failure',
      'settle-verdict': (count: number) =>
        `See what would settle ${count} open ${count === 1 ? 'point' : 'points'} of the verdict`,
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
  },

  audit: {
    title: 'Who did what',
    hint: 'Who came in, who was signed out, who invited whom. What somebody logged stands nowhere in it.',
    show: 'Show',
    when: 'When',
    who: 'Who',
    what: 'What',
    lead: 'lead or specialist',
    deeds: {
      join: 'came in',
      return: 'came back on a cleared device',
      renew: 'renewed a token',
      invite: 'invited:',
      revoke: 'signed out device',
    },
  },
};

export const terminal: TerminalWords = {
  usage: (
    languages,
    trades,
  ) => `Usage: npm run review -- FILE [--json] [--project NAME] [--language ${languages}] [--without-out-of-tolerance]
       npm run review -- FILE --report OUT.html [--round N] [--trade ${trades}] [--language en+zh]
       npm run review -- FILE [--csv FOLDER] [--json OUT.json]
       npm run review -- --schema
Reads a bundle (.pairlog) and prints the review of its project, or writes it as a report or as data.`,
  cannotRead: (file, why) => `${file}: ${why}`,
  unpack: {
    damaged: 'The file is damaged and cannot be unpacked. Ask for it again.',
    'too-large': 'The file unpacks to more than a bundle may hold.',
    'no-log': 'This zip holds no log (log.ndjson), so it is no bundle.',
    'attachment-differs': 'A photo or track in the file was changed on the way. Ask for it again.',
  },
  problem: (problem) => {
    const at = `line ${problem.line}: `;
    switch (problem.why) {
      case 'not-a-bundle':
        return `${at}format: this is no bundle of Pairlog.`;
      case 'newer-bundle':
        return `${at}v: the bundle has version ${problem.v}; this program reads version 1. Use a newer one.`;
      case 'not-json':
        return `${at}this is no JSON; the line was damaged on the way.`;
      case 'cut-off':
        return `${at}the file ends early: its closing line is missing. Ask for it again.`;
      case 'digest-differs':
        return `${at}digest: the closing line does not fit the lines before it; some were changed, lost or added.`;
      case 'not-a-revision':
        return `${at}${problem.field || 'revision'}: missing or of the wrong form.`;
      case 'newer-envelope':
        return `${at}v: the record has version ${problem.v}; use a newer program.`;
      case 'too-large':
        return `${at}body: ${problem.characters} characters, at most ${problem.most} are allowed.`;
      case 'hash-differs':
        return `${at}hash: the record was changed after it was saved.`;
    }
  },
  unreadable: (line, record, problem) => `line ${line}: ${record}: ${problem} It is left out.`,
  noProject: (name, names) =>
    name === undefined
      ? names.length === 0
        ? 'The bundle holds no project.'
        : `The bundle holds several projects; choose one with --project: ${names.join(', ')}`
      : `There is no project "${name}". There are: ${names.join(', ') || 'none'}`,
  wrote: (file) => `Written: ${file}`,
  noRound: (order, rounds) =>
    order === undefined
      ? 'The project has no round yet.'
      : `There is no round ${order}. There are: ${rounds.join(', ')}.`,
  evidence: (p, t, haveRun, r, km) => `${pairs(p)}, ${panel(t, haveRun)}, ${runs(r)}, ${km} km`,
  brief: (km) => `The brief asks ${km} km of a pair.`,
  pairs: 'Pairs',
  silent: (days) => `silent for ${days} days`,
  pair: 'Pair',
  round: 'Round',
  size: 'Size mm',
  distance: 'km',
  ofBrief: 'of brief',
  runs: 'Runs',
  surfaces: 'Surfaces',
  holder: 'Held by',
  note: 'Note',
  stopUse: 'STOP USE',
  complaints: (round) => `Complaints, ${round}`,
  noComplaint: 'Nobody named a zone that bothered.',
  zone: 'Zone',
  complaint: 'Complaint',
  testersOnce: 'Testers',
  testersTwice: 'twice+',
  reportedRuns: 'Runs',
  leftRight: 'left/right',
  severity: 'Severity mean/most',
  proof: 'Says the log',
  bench: 'Bench checks over distance',
  noBench: 'No pair was measured.',
  measure: 'Measure, site, foot',
  readings: 'Reading at km',
  deviations: 'Arrival against the blueprint',
  deviation: 'Deviation',
  nominal: 'Nominal',
  reading: 'Reading',
  damages: 'Samples that came apart',
  oddities: 'Runs to ask about',
  oddity: {
    'logged-twice': 'logged twice, counted once',
    'tester-overlap': 'overlaps with another run of the same tester',
    'pair-overlap': 'two testers in one pair at the same time',
    pace: 'implausible pace',
    distance: 'implausible distance',
    'not-handed-out': 'the pair was not handed out to this tester then',
    'in-the-future': 'lies in the future',
    'unknown-pair': 'the pair is not in the log',
  },
  leftOut: {
    'unknown-kind': (count) => `${count} of a kind that needs a newer program`,
    'newer-schema': (count) => `${count} written by a newer program`,
  },
  changes: 'Changes',
  unread: 'They count in no figure. Look up the right numbers and correct them on the desk.',
};
