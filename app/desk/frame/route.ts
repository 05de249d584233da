/** Which place of the desk stands at which address? Pure, so that every address can be tested and shared. */
import type { Trade } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';

/** The places in the bar, in its order: five ask about the shoe, three about the test. */
export const tabs = [
  'sheet',
  'shoe',
  'wear',
  'changes',
  'verdict',
  'pairs',
  'testers',
  'runs',
] as const;
export type Tab = (typeof tabs)[number];

/** Places that are reached from one in the bar, with the tab that stays marked. */
const furtherPlaces = {
  rounds: 'sheet',
  brief: 'sheet',
  report: 'verdict',
  plan: 'testers',
  waiting: 'runs',
  ask: 'testers',
  words: 'testers',
  tables: 'sheet',
} as const satisfies Readonly<Record<string, Tab>>;
export type Further = keyof typeof furtherPlaces;
export type Place = Tab | Further;

export type Route =
  | { readonly at: 'shoes' | 'group' }
  | {
      readonly at: 'new';
      /** The shoe that the new one begins as. */
      readonly like?: RecordId;
      /** Tables of a spreadsheet come in once the brief is saved. */
      readonly tables?: true;
    }
  | {
      readonly at: 'project';
      readonly project: RecordId;
      readonly place: Place;
      /** What follows the place in the address, such as the id of a pair. */
      readonly rest: readonly string[];
    };

const isPlace = (name: string | undefined): name is Place =>
  name !== undefined && ((tabs as readonly string[]).includes(name) || name in furtherPlaces);

/** Addresses that leads have in their messages from before the places had these names. */
const formerPlaces: Readonly<Record<string, readonly [Place, ...string[]]>> = {
  overview: ['sheet'],
  complaints: ['shoe'],
  comfort: ['shoe', 'comfort'],
  bench: ['wear'],
  findings: ['changes'],
};

/** The tab that a place belongs to. */
export const tabOf = (place: Place): Tab =>
  place in furtherPlaces ? furtherPlaces[place as Further] : (place as Tab);

const newAt = (what: string | undefined, of: string | undefined): Route =>
  what === 'tables'
    ? { at: 'new', tables: true }
    : what === 'as' && of
      ? { at: 'new', like: of as RecordId }
      : { at: 'new' };

/** The address of a new shoe, as another or of a spreadsheet where it is said. */
export const newShoe = (from?: { readonly like: RecordId } | 'tables'): string =>
  ['/desk/new', ...(from === 'tables' ? ['tables'] : from ? ['as', from.like] : [])].join('/');

/** @param path such as `/desk/<project>/pairs/<pair>`; an unknown place is the sheet */
export const routeOf = (path: string): Route => {
  const [, , first, place, ...rest] = path.split('/').map(decodeURIComponent);
  if (first === undefined || first === '') return { at: 'shoes' };
  if (first === 'group') return { at: first };
  if (first === 'new') return newAt(place, rest[0]);
  const project = first as RecordId;
  if (isPlace(place))
    return { at: 'project', project, place, rest: rest.filter((part) => part !== '') };
  const [now, ...within] = formerPlaces[place ?? ''] ?? (['sheet'] as const);
  return { at: 'project', project, place: now, rest: within };
};

/** The address of a place of a project, and of what lies in it. */
export const addressOf = (project: RecordId, place: Place, ...rest: readonly string[]): string =>
  ['/desk', project, ...(place === 'sheet' && rest.length === 0 ? [] : [place]), ...rest]
    .map((part, at) => (at === 0 ? part : encodeURIComponent(part)))
    .join('/');

/** Addresses of single records and of a zone, as links use them. */
export const linksOf = (project: RecordId) => ({
  place: (place: Place, ...rest: readonly string[]) => addressOf(project, place, ...rest),
  pair: (id: RecordId) => addressOf(project, 'pairs', id),
  tester: (id: RecordId) => addressOf(project, 'testers', id),
  run: (id: RecordId) => addressOf(project, 'runs', id),
  check: (id: RecordId) => addressOf(project, 'wear', 'checks', id),
  damage: (id: RecordId) => addressOf(project, 'pairs', 'damage', id),
  finding: (id: RecordId) => addressOf(project, 'changes', 'findings', id),
  round: (id: RecordId) => addressOf(project, 'rounds', id),
  /** The report's sheet of a trade. */
  sheet: (round: RecordId, trade: Trade) =>
    `${addressOf(project, 'report')}?${new URLSearchParams({ round, trade }).toString()}`,
  zone: (foot: string, zone: string) => addressOf(project, 'shoe', 'zones', foot, zone),
});
export type Links = ReturnType<typeof linksOf>;
