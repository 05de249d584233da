import type { Kind, UnpackProblem } from '../../../../core/records/index.ts';
import type { NamedRecord } from '../../types.ts';

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
    specialist: (group: string) => `Sets this device up for a specialist of “${group}”.`,
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
    quote: ['quote', 'quotes'],
    question: ['question to a tester', 'questions to testers'],
    answer: ['answer or message', 'answers and messages'],
    proposal: ['proposal', 'proposals'],
    'proposal-reply': ['reply to a proposal', 'replies to proposals'],
    thanks: ['thank-you', 'thank-yous'],
    'fit-session': ['fitting session', 'fitting sessions'],
    'fit-trial': ['fit trial', 'fit trials'],
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
