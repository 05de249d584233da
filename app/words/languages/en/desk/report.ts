import { countPairs, countRuns, countTesters } from '../count.ts';

/** Findings board, report of a round, and what the specialists see of both. */
export const report = {
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
    carried: 'Earlier findings that this round changes',
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
    `${countPairs(p)}, ${countTesters(t)} with runs, ${countRuns(r)}, ${distance} in this round.`,
  mapOf: (what: string, t: number, r: number) =>
    `${what}, reported at least twice: testers of ${t} asked, ${countRuns(r)}`,
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
  carriedBy: (round: string) => `To be changed in ${round}.`,
  shownBy: (round: string) => `Shown by ${round}.`,
  frozenTesters: (twice: number, once: number, of: number) =>
    `${twice} of ${countTesters(of)} reported it at least twice, ${once} at least once.`,
  frozenRuns: (count: number, of: number) => `It came in ${count} of ${of} asked runs.`,
  asWritten: (language: string | null) =>
    language === null
      ? 'As it was written, in the language it was written in:'
      : `As it was written, in ${language}:`,
  noEvidence: 'No evidence was frozen with it.',
  outcome: (round: string | null, verdict: string, date: string) =>
    `Outcome in ${round ?? 'the round that made the change'}: ${verdict} (data up to ${date}).`,
  sources: {
    complaint: 'from a complaint',
    wear: 'from wear',
    blueprint: 'from the blueprint',
    comfort: 'from comfort',
    damage: 'from damage',
    other: 'in the lead’s own words',
  },

  page: {
    trade: 'For',
    whole: 'the whole round',
    language: 'Language',
    print: 'Print or save as PDF',
    html: 'Save as one file (HTML)',
    csv: 'Save everything as tables',
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
    quotes: 'What testers say',
    open: 'Open',
    save: 'Save as a file',
    missing: 'The report is not on this device yet. Open this page once with a network.',
    unreadable: 'This file is not a report that Pairlog can show. Save it and open it by itself.',
    sentAt: (date: string, languages: string) => `Sent ${date}, ${languages}`,
    sheetFor: (trade: string) => `sheet for ${trade}`,
  },
};
