/** Imports run downward only. `npm run check:imports` proves it, and proves that it would notice. */
module.exports = {
  forbidden: [
    {
      name: 'no-circle',
      severity: 'error',
      from: {},
      to: { circular: true, dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'core-never-imports-app',
      severity: 'error',
      from: { path: '^core/' },
      to: { path: '^(app|service-worker|tests|demo-data)/' },
    },
    {
      name: 'core-has-no-platform',
      severity: 'error',
      from: { path: '^core/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-packages',
      severity: 'error',
      comment: 'core is built on these packages and no others',
      from: { path: '^core/' },
      to: {
        path: 'node_modules/',
        pathNot:
          'node_modules/(zod|uuid|canonicalize|@noble/hashes|fflate|saxes|xmlchars|geographiclib-geodesic|ml-matrix|stemmer)/',
      },
    },
    {
      name: 'statistics-know-nothing-of-shoes',
      severity: 'error',
      from: { path: '^core/statistics/' },
      to: { path: '^core/', pathNot: '^core/statistics/' },
    },
    {
      name: 'units-and-foot-at-the-bottom',
      severity: 'error',
      from: { path: '^core/(units|foot)/' },
      to: { path: '^core/', pathNot: '^core/(units|foot)/' },
    },
    {
      name: 'records-below-the-rest',
      severity: 'error',
      from: { path: '^core/records/' },
      to: { path: '^core/', pathNot: '^core/(records|units|foot)/' },
    },
    {
      name: 'rooms-stand-side-by-side',
      severity: 'error',
      comment: 'only review puts the rooms together',
      from: { path: '^core/(track|mileage|complaints|wear|rounds|panel|talk|fitting)/' },
      to: {
        path: '^core/',
        pathNot: '^core/($1|statistics|records|units|foot)/',
      },
    },
    {
      name: 'headlines-above-the-review',
      severity: 'error',
      comment: 'a headline is made of what the review says, never the other way round',
      from: { path: '^core/', pathNot: '^core/headlines/' },
      to: { path: '^core/headlines/' },
    },
    {
      name: 'words-above-the-review',
      severity: 'error',
      comment:
        'what people wrote is read from an opened project; only headlines say it and the search looks through it',
      from: { path: '^core/', pathNot: '^core/(words|headlines|search)/' },
      to: { path: '^core/words/' },
    },
    {
      name: 'search-on-top',
      severity: 'error',
      comment: 'it looks through all rooms; none of them looks into it',
      from: { path: '^core/', pathNot: '^core/search/' },
      to: { path: '^core/search/' },
    },
    {
      name: 'phone-and-desk-apart',
      severity: 'error',
      from: { path: '^app/(phone|desk|reader)/' },
      to: { path: '^app/(phone|desk|reader|hub|terminal)/', pathNot: '^app/$1/' },
    },
    {
      name: 'parts-and-store-below-screens',
      severity: 'error',
      from: { path: '^app/(parts|store)/' },
      to: { path: '^app/(phone|desk|reader|report|hub|terminal)/' },
    },
    {
      name: 'report-needs-no-page',
      severity: 'error',
      comment: 'the desk and the terminal make the same document: drawings and sentences only',
      from: { path: '^app/report/' },
      to: {
        path: '^app/',
        pathNot:
          '^app/(report/|parts/(charts|foot-map|opened-shoe)/|words/(types|languages/|say-|figures))',
      },
    },
    {
      name: 'hub-and-terminal-know-no-screen',
      severity: 'error',
      from: { path: '^app/(hub|terminal)/' },
      to: { path: '^app/', pathNot: '^app/($1/|report/|words/(types|languages/|say-|figures))' },
    },
    {
      name: 'hub-writes-no-report',
      severity: 'error',
      from: { path: '^app/hub/' },
      to: { path: '^app/report/' },
    },
    {
      name: 'words-know-no-screen',
      severity: 'error',
      from: { path: '^app/words/' },
      to: { path: '^app/', pathNot: '^app/words/' },
    },
    {
      name: 'leaflet-only-in-the-map',
      severity: 'error',
      from: { path: '^app/', pathNot: '^app/parts/map/' },
      to: { path: 'node_modules/leaflet/' },
    },
    {
      name: 'product-never-imports-tests',
      severity: 'error',
      from: { path: '^(app|core|service-worker)/' },
      to: { path: '^tests/' },
    },
    {
      name: 'no-unresolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
    },
  },
};
