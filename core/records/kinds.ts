/** Which kinds of record are there, who may write them, and who receives them? */

/** The newest schema version of a body that this version reads. */
export const SCHEMA_VERSION = 2;

export const kinds = [
  'project',
  'round',
  'pair',
  'tester',
  'hand-out',
  'run',
  'ranking',
  'damage-report',
  'bench-check',
  'gauge-study',
  'hand-out-plan',
  'finding',
  'report',
  'stop-use',
  'acknowledgement',
  'reply',
  'decision',
  'quote',
  'question',
  'answer',
  'proposal',
  'proposal-reply',
  'thanks',
  'fit-session',
  'fit-trial',
  'attachment',
] as const;

export type Kind = (typeof kinds)[number];

/**
 * Schema version that a body is written with: 1, or 2 where it holds a value that an app from before cannot read, so
 * that such an app keeps the record and says that it needs a newer one.
 */
export const schemaVersionOf = (kind: string, body: Readonly<Record<string, unknown>>): number =>
  kind === 'quote' && body['sourceKind'] === 'ranking' ? 2 : 1;

export const isKind = (kind: string): kind is Kind => (kinds as readonly string[]).includes(kind);

/**
 * Who receives a record besides its author and the leads.
 * - `everyone`: each member of the group, because a phone cannot log without it;
 * - `named-tester`: the tester whom the body names;
 * - `specialists`: the members who get findings and reports, and nothing else but the project;
 * - `leads`: nobody else. A round lists what was changed, so it would unblind a tester;
 * - `specialists-when-sent`: the specialists from when a lead sent it, nobody else before.
 */
export type Audience =
  'everyone' | 'named-tester' | 'specialists' | 'leads' | 'specialists-when-sent';

export const audienceOf: Readonly<Record<Kind, Audience>> = {
  project: 'everyone',
  round: 'leads',
  pair: 'everyone',
  tester: 'named-tester',
  'hand-out': 'named-tester',
  run: 'named-tester',
  ranking: 'named-tester',
  'damage-report': 'named-tester',
  'bench-check': 'leads',
  'gauge-study': 'leads',
  'hand-out-plan': 'leads',
  finding: 'specialists',
  report: 'specialists',
  'stop-use': 'everyone',
  acknowledgement: 'named-tester',
  reply: 'named-tester',
  decision: 'leads',
  quote: 'specialists-when-sent',
  question: 'named-tester',
  answer: 'named-tester',
  proposal: 'specialists',
  'proposal-reply': 'specialists',
  thanks: 'named-tester',
  'fit-session': 'everyone',
  'fit-trial': 'named-tester',
  attachment: 'leads',
};

/** The kinds that a tester may write, about nobody but that tester; a fit trial also of somebody who is no member. */
export const kindsOfTesters: ReadonlySet<Kind> = new Set<Kind>([
  'run',
  'ranking',
  'damage-report',
  'acknowledgement',
  'answer',
  'fit-trial',
  'attachment',
]);

/** The kinds that a specialist may write: answers to findings that reach them, and sketches of their own. */
export const kindsOfSpecialists: ReadonlySet<Kind> = new Set<Kind>(['proposal', 'attachment']);

/** What leads wrote to a tester that goes when the tester takes everything back; a tester may do nothing else with it. */
export const kindsToTakeBack: ReadonlySet<Kind> = new Set<Kind>(['tester', 'question', 'thanks']);
