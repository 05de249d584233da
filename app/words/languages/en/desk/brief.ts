export const brief = {
  name: 'Name of the project',
  runner: 'For which runner',
  use: 'For what',
  surfaces: 'On which surfaces',
  distance: 'Distance a pair must carry, km',
  attributes: 'Comfort questions',
  forTesters: 'For your testers, in your words',
  forTestersHint:
    'They read it on their phones, with each of their pairs. Do not say what was changed.',
  tellTesters: 'Tell testers what came of their reports',
  tellTestersHint:
    'You are asked before anything goes, and nothing goes to a tester who wears a pair blind.',
  attributesHint: 'Overall comfort is always asked.',
  edit: 'Change the brief',
  allowed: 'Allowed complaints, % of runs',
  allowedPain: 'Allowed pain, % of runs',
  limits: 'What a pair must keep',
  addLimit: 'One more limit',
  bounds: { 'at-least': 'must stay at least', 'at-most': 'must stay at most' },
  value: 'Limit',
  bound: 'At least or at most',
  basis: 'Percent or unit',
  ofNew: '% of new',
  otherSite: 'another site…',
  siteName: 'Name of the site',
  fromTo: 'Give both ends, the smaller one first.',
  doubts: {
    'above-new': (typed: string) =>
      `At least ${typed} % of new? A new pair has 100 %, so every pair fails at once.`,
    'below-new': (typed: string) =>
      `At most ${typed} % of new? A new pair has 100 %, so every pair fails at once.`,
    'never-reached': (typed: string) =>
      `At most ${typed} % of new? No pair gets there, so this limit fails nothing.`,
    'share-typed': (typed: string, meant: string) =>
      `${typed} % of new? Perhaps ${meant} % was meant.`,
    'above-drawn': (typed: string, drawn: string) =>
      `At least ${typed}? The blueprint has ${drawn}, so a new pair fails at once.`,
    'below-drawn': (typed: string, drawn: string) =>
      `At most ${typed}? The blueprint has ${drawn}, so a new pair fails at once.`,
  },
};
