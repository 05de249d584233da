/** Where the bench of the desk goes, in its order, and how it sees that the answer is there. */
export interface BenchPlace {
  readonly name: string;
  /** What follows the project in the address, or a link that is there when the place before it is. */
  readonly to: { readonly path: string } | { readonly link: string } | 'all-shoes';
  /** Is there once the answer is. */
  readonly shows: string;
  /** The tab that asked the same before places replaced tabs. */
  readonly tab?: string;
  /** The address is loaded anew: reading the log is part of it. */
  readonly cold?: true;
}

export const places: readonly BenchPlace[] = [
  {
    name: 'sheet, opened anew',
    to: { path: '' },
    shows: '.calendar',
    tab: 'overview, opened anew',
    cold: true,
  },
  { name: 'all shoes', to: 'all-shoes', shows: '.shoe-card h2', tab: 'projects' },
  { name: 'sheet', to: { path: '' }, shows: '.calendar', tab: 'overview' },
  { name: 'shoe', to: { path: 'shoe' }, shows: '.felt-list, .place-table', tab: 'complaints' },
  { name: 'zone', to: { link: 'a[href*="/shoe/zones/"]' }, shows: '.place-head h1' },
  { name: 'comfort', to: { path: 'shoe/comfort' }, shows: '.comforts', tab: 'comfort' },
  { name: 'arrival', to: { path: 'shoe/arrival' }, shows: '.arrival', tab: 'bench' },
  { name: 'wear', to: { path: 'wear' }, shows: '.wear-card', tab: 'bench' },
  { name: 'checks', to: { path: 'wear/checks' }, shows: '.place-table tbody tr' },
  { name: 'changes', to: { path: 'changes' }, shows: '.slope-chart', tab: 'changes' },
  { name: 'verdict', to: { path: 'verdict' }, shows: '.place-head h1', tab: 'verdict' },
  { name: 'pairs', to: { path: 'pairs' }, shows: '.pairs-table tbody tr', tab: 'pairs' },
  { name: 'a pair', to: { link: '.pairs-table tbody th a' }, shows: '.life' },
  { name: 'testers', to: { path: 'testers' }, shows: '.testers-table tbody tr', tab: 'testers' },
  { name: 'a tester', to: { link: '.testers-table tbody th a' }, shows: '.tester-columns' },
  { name: 'runs', to: { path: 'runs' }, shows: '.runs-table tbody tr' },
  { name: 'a run', to: { link: '.runs-table tbody th a' }, shows: '.run-body' },
  { name: 'waiting', to: { path: 'waiting' }, shows: 'h1', tab: 'waiting' },
  { name: 'to ask', to: { path: 'ask' }, shows: '.place-head h1' },
  { name: 'rounds', to: { path: 'rounds' }, shows: '.round-list', tab: 'rounds' },
  { name: 'brief', to: { path: 'brief' }, shows: '.place-head h1', tab: 'brief' },
];

/** The tabs before, at commit f7e5468. */
export const formerPlaces: readonly BenchPlace[] = [
  {
    name: 'overview, opened anew',
    to: { path: 'overview' },
    shows: '.next-steps, .sheet',
    cold: true,
  },
  { name: 'projects', to: 'all-shoes', shows: 'main .button-big' },
  { name: 'overview', to: { path: 'overview' }, shows: '.next-steps, .sheet' },
  {
    name: 'complaints',
    to: { path: 'complaints' },
    shows: '.foot-map-zone:not([data-level=unasked])',
  },
  { name: 'comfort', to: { path: 'comfort' }, shows: 'tbody tr' },
  { name: 'bench', to: { path: 'bench' }, shows: 'main figure svg, main .chart' },
  { name: 'changes', to: { path: 'changes' }, shows: 'tbody tr' },
  { name: 'verdict', to: { path: 'verdict' }, shows: '.sheet' },
  { name: 'pairs', to: { path: 'pairs' }, shows: 'tbody tr' },
  { name: 'testers', to: { path: 'testers' }, shows: 'tbody tr' },
  { name: 'waiting', to: { path: 'waiting' }, shows: 'h2, main p' },
  { name: 'rounds', to: { path: 'rounds' }, shows: '.sheet' },
  { name: 'brief', to: { path: 'brief' }, shows: 'form' },
];
