/** The six steps to a shoe's first run: their cards, and the strip that leads from one to the next. */
import type { Start, StartStep } from '../../../../core/review/index.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

interface Step {
  readonly name: string;
  /** What the step answers. */
  readonly ask: string;
  /** What it leaves behind. */
  readonly leaves: string;
  /** What its button does. */
  readonly act: string;
}

export const start = {
  sub: 'No shoe yet. The pictures are examples of what each step leaves behind.',
  /** Under a picture that is not the shoe's own. */
  example: 'Example',
  guide: 'Six steps to the first run',
  steps: {
    brief: {
      name: 'Brief',
      ask: 'What must the shoe do, and for whom?',
      leaves: 'Limits that every pair is held against.',
      act: 'Write the brief',
    },
    round: {
      name: 'Round',
      ask: 'Which samples are tested first?',
      leaves: 'The shoe with its dimensions.',
      act: 'Add the first round',
    },
    pairs: {
      name: 'Pairs',
      ask: 'Which pairs arrived, in which sizes?',
      leaves: 'A list. Codes can be drawn, or pasted from a table.',
      act: 'Add the pairs',
    },
    testers: {
      name: 'Testers',
      ask: 'Who runs, and how long are their feet?',
      leaves: 'Each foot in its last, with the room in front.',
      act: 'Add the testers',
    },
    plan: {
      name: 'Plan',
      ask: 'Who wears which pair, and when?',
      leaves: 'A calendar of who has which pair.',
      act: 'Plan the hand-outs',
    },
    invites: {
      name: 'Invites',
      ask: 'Whose phone joins as which tester?',
      leaves: 'A code for each tester to scan.',
      act: 'Invite the testers',
    },
  } satisfies Readonly<Record<StartStep, Step>>,
  agree: 'Agree the plan',
  done: {
    brief: () => 'The brief is written.',
    round: ({ rounds }) => `${count(rounds, 'round', 'rounds')}.`,
    pairs: ({ pairs }) => `${count(pairs, 'pair', 'pairs')}.`,
    testers: ({ testers }) => `${count(testers, 'tester', 'testers')} in the group.`,
    plan: ({ handOuts }) => `${count(handOuts, 'hand-out', 'hand-outs')}, each on its day.`,
    invites: () => 'Something has come from every tester.',
  } satisfies Readonly<Record<StartStep, (counts: Start['counts']) => string>>,
  drawn: 'A plan is drawn. Nothing is handed out yet.',
  unheard: (n: number) => `Nothing has come from ${count(n, 'tester', 'testers')} yet.`,
  isDone: 'done',
  next: 'Next:',
  first: 'First:',
  then: (name: string) => `Then: ${name.toLowerCase()}`,
  thenRun: 'Then: the first run',
  nothingLogged: 'Nobody has run yet.',
  allDone: 'All is set up. The first run is still to come.',
  seeJoined: 'See who has joined',
  /** Of a new shoe. */
  enough: 'A name and the distance are enough to go on. The rest can follow.',
  stop: 'Stop here?',
  stopHow: 'The shoe waits under “All shoes”, and its sheet names the next step.',
  orFrom: 'Or begin from',
  from: {
    table: 'an old spreadsheet',
    tableNext: 'A name and the distance are enough. Then the tables come in.',
    file: 'a file of this group',
    demo: 'the demo',
    demoHow:
      'npm start, without further words, starts a second Pairlog with an invented test. Your group is not touched.',
  },
  pictures: {
    ofNew: (percent: string) => `${percent} of new`,
    feet: (from: string, to: string) => `feet ${from} to ${to}`,
    room: (mm: string) => `${mm} mm`,
    joins: 'joins as tester T01',
    run: 'Run 1',
  },
  /** A new shoe, as another one. */
  like: {
    open: (shoe: string) => `New shoe as ${shoe}, but …`,
    headline: (shoe: string) => `A new shoe as ${shoe}. Give it a name.`,
    taken: 'Taken over',
    notTaken: 'Not taken over',
    brief: (limits: number) =>
      limits === 0
        ? 'the brief, which has no limits'
        : `the brief with ${count(limits, 'limit', 'limits')}`,
    round: (round: string, parts: readonly string[]) =>
      parts.length === 0
        ? `${round} as the first round`
        : `of ${round}, as the first round: ${parts.join(', ')}`,
    foam: (foam: string) => `${foam} foam`,
    dimensions: (n: number) => count(n, 'dimension', 'dimensions'),
    last: (name: string) => `last ${name}`,
    layers: (n: number) => `layers in ${count(n, 'zone', 'zones')}`,
    noRound: 'no round: there is none yet',
    not: 'pairs, hand-outs, plans, runs, checks, findings and reports. What changed from round to round stays with the old shoe. Testers belong to the group and are there already.',
  },
};
