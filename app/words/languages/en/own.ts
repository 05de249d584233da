/** What a tester reads about their own pair and runs, and how the app comes onto the phone's home screen. */
export const own = {
  shoe: (done: string, target: string) => `Seam around the shoe: ${done} of ${target} sewn`,
  course: (count: number) => `Your comfort, last ${count} runs`,
  courseSays: (scores: readonly string[]) => `Your comfort, oldest run first: ${scores.join(', ')}`,

  saved: {
    title: (distance: string, code: string) => `Saved: ${distance} in ${code}`,
    open: 'Read this run',
    close: 'Close',
  },

  run: {
    of: (distance: string, code: string) => `${distance} in ${code}`,
    said: 'What you said',
    comfort: 'Comfort',
    feet: 'Feet',
    noComfort: 'You gave no comfort answer.',
    notAnswered: 'not answered',
    change: 'Change this run',
    history: 'Earlier versions',
    gone: 'This run is not on this phone.',
    pace: 'Pace',
  },

  pair: {
    title: (code: string) => `Pair ${code}`,
    km: (done: string, target: string) => `You ran ${done} of the ${target} this pair is made for.`,
    over: (done: string, target: string) =>
      `You ran ${done}, past the ${target} this pair is made for.`,
    forTesters: 'What your lead asks of you',
    courseTitle: 'Your comfort over the kilometres',
    x: (unit: string) => `Your distance in this pair, ${unit}`,
    y: 'Overall comfort, 0 to 100',
    point: (score: string, at: string, when: string) => `${score} after ${at}, ${when}`,
    noCourse: 'The chart comes once two of your runs say how comfortable it was.',
    runs: 'Your runs in it',
    allRuns: 'All my runs',
    none: 'No run in it yet.',
    notYours: 'This pair is not in your hands.',
  },

  heard: {
    open: 'Read it',
    close: 'Close',
    from: (date: string) => `From your lead, ${date}`,
    cameOf: 'What came of your reports',
    seeTest: 'All that you found in this test',
    gone: 'This message is not on this phone.',
  },

  test: {
    over: 'The test is over. Thank you.',
    soFar: 'Your test so far',
    youRan: (project: string, distance: string, runs: number, pairs: number) =>
      `${project}: you ran ${distance} on ${runs} ${runs === 1 ? 'run' : 'runs'}, in ${pairs} ${pairs === 1 ? 'pair' : 'pairs'}.`,
    see: 'See what you found',
    span: (project: string, from: string, until: string) =>
      from === until ? `${project}, ${from}` : `${project}, ${from} to ${until}`,
    byYou: 'by you',
    runs: (n: number): string => (n === 1 ? 'run' : 'runs'),
    pairs: (n: number): string => (n === 1 ? 'pair' : 'pairs'),
    found: 'What you found',
    foundIn: (project: string) => `${project}: what you found`,
    foundSoFar: (project: string) => `${project}: your test so far`,
    upper: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`,
    onRuns: (n: number) => `on ${n} ${n === 1 ? 'run' : 'runs'}`,
    nothing: 'Nothing bothered you more than once.',
    noRuns: 'You have no run in this test.',
    stays: 'Your log stays on this phone until you remove it.',
  },

  install: {
    title: 'Keep Pairlog on your home screen',
    why: 'It then opens without a network, and the phone does not clear your log.',
    now: 'Put it there',
    how: 'Show me how',
    later: 'Not now',
    done: 'Pairlog is on your home screen.',
    page: 'Put Pairlog on your home screen',
    first: 'Everything you logged stays on this phone either way.',
    ios: 'On an iPhone or iPad',
    iosSteps: [
      'Tap Share, the square with the arrow.',
      'Scroll down and tap “Add to Home Screen”.',
      'Tap Add. From then on, open Pairlog from there.',
    ],
    iosNote:
      'The app on the home screen keeps its own log: it asks for a code once. Ask your lead for a new one.',
    other: 'On other phones',
    otherSteps: [
      'Open the browser’s menu, the three dots.',
      'Tap “Install app” or “Add to Home screen”.',
      'From then on, open Pairlog from there.',
    ],
  },

  last: {
    none: 'You hold no pair yet, so there is nothing to log.',
  },

  shared: {
    photoTitle: 'Where does this photo belong?',
    photoRun: (distance: string, code: string, when: string) =>
      `With my run of ${distance} in ${code}, ${when}`,
    photoDamage: (code: string) => `With a report of damage, pair ${code}`,
    photoNone: 'You have no run and no pair yet that it could belong to.',
    photoAdded: 'Photo added to the run',
    otherTrack: (name: string) =>
      `Pairlog cannot read ${name}. Open the run in your watch’s app, export it as a GPX file, and share that.`,
    otherFile: (name: string) =>
      `Pairlog cannot do anything with ${name}. It takes tracks (.gpx), photos, and Pairlog’s own files (.pairlog).`,
  },
};
